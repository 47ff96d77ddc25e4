// One camp: what to change on one side, its sheets on the other.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useHistoryState } from 'wouter-preact/use-browser-location';
import { dayWords } from '../camps/day-words.ts';
import type { DraftForm } from '../draft/DraftField.tsx';
import { OpenedCamp } from '../draft/OpenedCamp.tsx';
import { valueAt } from '../draft/path.ts';
import { type Draft, type DraftFile, ownCampFrom } from '../draft/use-draft.ts';
import { Computing } from '../parts/Computing.tsx';
import { Page } from '../parts/Page.tsx';
import { UndoWord } from '../parts/UndoWord.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { newCampId } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import type { MealAnswer, MealSheets, PlaceTrouble, Question } from '../worker/messages.ts';
import { BenchWord } from './BenchWord.tsx';
import { CampActions } from './CampActions.tsx';
import { ChangeForms } from './ChangeForms.tsx';
import { PinPart } from './PinPart.tsx';
import { SheetChooser, Sheets } from './Sheets.tsx';

interface CampPageProps {
  readonly shelf: 'camp' | 'demo';
  readonly id: string;
}

export default function CampPage({ shelf, id }: CampPageProps) {
  return (
    <OpenedCamp shelf={shelf} id={id}>
      {(draft) => <OpenCamp draft={draft} root={`/${shelf}/${id}`} />}
    </OpenedCamp>
  );
}

interface OpenCampProps {
  readonly draft: Extract<Draft, { state: 'open' }>;
  readonly root: string;
}

function OpenCamp({ draft, root }: OpenCampProps) {
  const { reader } = useReader();
  const { measures, clock } = reader;
  const question = useMemo(
    (): MealQuestion => ({
      ask: 'meal',
      file: JSON.stringify(draft.file),
      voice: { measures, clock },
    }),
    [draft.file, measures, clock],
  );
  const { answer, isStale, failure } = useMeal(question);
  const sheets = useLastSheets(answer);
  const form: DraftForm = { ...draft, troubles: answer?.troubles ?? [] };
  const isSettled = failure === undefined || isStale;
  useCopyMove(draft.copyId);
  return (
    <Page
      title={titleOf(draft.file)}
      isCompact
      eyebrow={
        <>
          <WhenAndWhere file={draft.file} />
          {isSettled ? <Computing isBusy={isStale} isBehind={form.troubles.length > 0} /> : null}
        </>
      }
    >
      {draft.isKept ? <CopyWord /> : <DemoWord file={draft.file} />}
      {draft.keepTrouble === undefined ? null : (
        <p className="word is-trouble" role="alert">
          This browser could not keep the last change ({draft.keepTrouble}). Save the camp as a
          file.
        </p>
      )}
      <UndoWord undo={draft.undo} />
      <div className="camp">
        <div className="camp-side">
          {sheets === undefined ? null : <SheetChooser sheets={sheets} root={root} />}
          <ChangeForms form={form} foodWords={answer?.foodWords ?? []} />
        </div>
        <div className={isStale ? 'is-stale' : undefined} aria-busy={isStale}>
          {isSettled ? null : <Computing isBusy={false} failure={failure} />}
          <Troubles answer={answer} />
          {sheets === undefined ? null : (
            <>
              <PinPart form={form} sheets={sheets} />
              <BenchWord file={draft.file} root={root} />
              <Sheets sheets={sheets} root={root} />
            </>
          )}
        </div>
      </div>
      <CampActions file={draft.file} isOwn={draft.isKept} />
    </Page>
  );
}

type MealQuestion = Extract<Question, { ask: 'meal' }>;

/** The day first; where it is late, what would help after it. */
function useMeal(first: MealQuestion) {
  const [advised, setAdvised] = useState<MealQuestion>();
  const isAsked = advised?.file === first.file && advised.voice === first.voice;
  const answered = useAnswer(isAsked ? advised : first);
  const { answer, isStale } = answered;
  const isPending = answer?.sheets?.isAdvicePending === true;
  if (!isStale && isPending && !isAsked) setAdvised({ ...first, isAdvised: true });
  // A day that is shown is no old answer while only advice is still looked for.
  return { ...answered, isStale: isStale && !(isAsked && isPending) };
}

const titleOf = (file: DraftFile) => String(file.title ?? '').trim() || 'A camp without a name';

function WhenAndWhere({ file }: { readonly file: DraftFile }) {
  const place = String(valueAt(file, ['place', 'name']) ?? '');
  return (
    <span>
      {dayWords(String(file.date ?? ''))}
      {place === '' ? null : <span className="page-place"> · {place}</span>}
    </span>
  );
}

/** Where another page kept this camp in between, what is typed here goes on as a copy. */
function useCopyMove(copyId: string | undefined): void {
  const [, go] = useLocation();
  useEffect(() => {
    if (copyId !== undefined) go(`/camp/${copyId}`, { replace: true, state: COPY_STATE });
  }, [copyId, go]);
}

const COPY_STATE = { isCopy: true } as const;

function CopyWord() {
  const state: unknown = useHistoryState();
  const isCopy = typeof state === 'object' && state !== null && 'isCopy' in state;
  if (!isCopy) return null;
  return (
    <p className="word is-trouble no-print" role="alert">
      This camp was changed on another page too. Both are kept: the other page’s under the old name,
      yours here as a copy.
    </p>
  );
}

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
        {[...new Set(answer.troubles.map(troubleWords))].slice(0, 6).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </div>
  );
}

const troubleWords = ({ path, found, wanted }: PlaceTrouble) =>
  `${placeWords(path)}: found ${found}, wanted ${wanted}.`;

/** The group of fields that a place of the file stands in. */
function placeWords(path: string): string {
  const [first = ''] = path.split(/[.[]/);
  return groupWords[first] ?? path;
}

const groupWords: Readonly<Record<string, string>> = {
  mouths: 'Mouths',
  needs: 'Needs',
  menu: 'Dishes and their times',
  hands: 'Hands',
  weather: 'Weather',
  ovens: 'Ovens',
  fuel: 'Fuel',
  gear: 'Fuel',
  recipes: 'Recipes',
  foods: 'Own foods',
  pantry: 'Pantry',
  stores: 'Stores',
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
      <p>A demo, not kept.</p>
      <button type="button" className="button is-quiet" onClick={() => void copy()}>
        Make it a camp of my own
      </button>
    </div>
  );
}
