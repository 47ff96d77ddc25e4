// One camp: what to change on one side, its sheets on the other.

import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { dayWords } from '../camps/day-words.ts';
import type { DraftForm } from '../draft/DraftField.tsx';
import { type Draft, type DraftFile, ownCampFrom, useDraft } from '../draft/use-draft.ts';
import { Computing } from '../parts/Computing.tsx';
import { Page } from '../parts/Page.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { newCampId } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import type { MealAnswer, MealSheets, Question } from '../worker/messages.ts';
import { CampActions } from './CampActions.tsx';
import { ChangeForms } from './ChangeForms.tsx';
import { Sheets, SheetTabs } from './Sheets.tsx';

interface CampPageProps {
  readonly shelf: 'camp' | 'demo';
  readonly id: string;
}

export function CampPage({ shelf, id }: CampPageProps) {
  const draft = useDraft(shelf, id);
  if (draft.state === 'opening') return <p className="computing is-busy">Opening the camp</p>;
  if (draft.state === 'missing') {
    return (
      <Page title="No such camp in this browser">
        <p>
          It may be in another browser, or saved as a file. <Link href="/camps">All camps</Link>
        </p>
      </Page>
    );
  }
  return <OpenCamp draft={draft} root={`/${shelf}/${id}`} />;
}

interface OpenCampProps {
  readonly draft: Extract<Draft, { state: 'open' }>;
  readonly root: string;
}

function OpenCamp({ draft, root }: OpenCampProps) {
  const { reader } = useReader();
  const { measures, clock } = reader;
  const question = useMemo(
    (): Extract<Question, { ask: 'meal' }> => ({
      ask: 'meal',
      file: JSON.stringify(draft.file),
      voice: { measures, clock },
    }),
    [draft.file, measures, clock],
  );
  const { answer, isStale, failure } = useAnswer(question);
  const sheets = useLastSheets(answer);
  const form: DraftForm = { ...draft, troubles: answer?.troubles ?? [] };
  return (
    <Page title={titleOf(draft.file)} eyebrow={dayWords(String(draft.file.date ?? ''))}>
      {draft.isKept ? null : <DemoWord file={draft.file} />}
      {draft.keepTrouble === undefined ? null : (
        <p className="word is-trouble" role="alert">
          This browser could not keep the last change ({draft.keepTrouble}). Save the camp as a
          file.
        </p>
      )}
      <div className="camp">
        <ChangeForms form={form} />
        <div className={isStale ? 'is-stale' : undefined} aria-busy={isStale}>
          <Computing isBusy={isStale} failure={failure} isBehind={form.troubles.length > 0} />
          <Troubles answer={answer} />
          {sheets === undefined ? null : (
            <>
              <SheetTabs sheets={sheets} root={root} />
              <Sheets sheets={sheets} root={root} />
            </>
          )}
        </div>
      </div>
      <CampActions file={draft.file} isOwn={draft.isKept} />
    </Page>
  );
}

const titleOf = (file: DraftFile) => String(file.title ?? '').trim() || 'A camp without a name';

/** The last sheets that could be made stay, while something typed can't be read. */
function useLastSheets(answer: MealAnswer | undefined): MealSheets | undefined {
  const [last, setLast] = useState<MealSheets>();
  const sheets = answer?.sheets;
  if (sheets !== undefined && sheets !== last) setLast(sheets);
  return sheets ?? last;
}

function Troubles({ answer }: { readonly answer: MealAnswer | undefined }) {
  if (answer === undefined || answer.troubles.length === 0) return null;
  return (
    <div className="word is-trouble" role="alert">
      <p>
        <strong>Something typed can’t be read yet.</strong> The sheets below are from before it.
      </p>
      <ul>
        {answer.troubles.slice(0, 6).map((each) => (
          <li key={each.path + each.code}>
            {placeWords(each.path)}: found {each.found}, wanted {each.wanted}.
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The group of fields that a place of the file stands in. */
function placeWords(path: string): string {
  const [first = ''] = path.split(/[.[]/);
  return groupWords[first] ?? path;
}

const groupWords: Readonly<Record<string, string>> = {
  mouths: 'Mouths',
  menu: 'Serving time',
  hands: 'Hands',
  weather: 'Weather',
  ovens: 'Ovens',
  fuel: 'Fuel',
  gear: 'Fuel',
  recipes: 'Recipes',
  place: 'Place and name',
  title: 'Place and name',
  date: 'Place and name',
};

function DemoWord({ file }: { readonly file: DraftFile }) {
  const shelf = useShelf();
  const [, go] = useLocation();
  const copy = async () => {
    const title = String(file.title ?? 'camp');
    const id = newCampId(title);
    await (await shelf).keep(ownCampFrom({ ...file, id }));
    go(`/camp/${id}`);
  };
  return (
    <div className="camp-actions no-print">
      <p className="word">
        A demo camp: change what you like, nothing of it is kept when you leave the page.
      </p>
      <div>
        <button type="button" className="button is-main" onClick={() => void copy()}>
          Make it a camp of my own
        </button>
      </div>
    </div>
  );
}
