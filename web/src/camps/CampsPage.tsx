// The cook's own camps, the demo camps, and the way in and out as files.

import { useEffect, useId, useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import { Page } from '../parts/Page.tsx';
import { ask } from '../planning/planner.ts';
import type { OwnCamp } from '../storage/browser-store.ts';
import { newCampId, renamedFile, todayOf } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import type { CampEntry, PlaceTrouble } from '../worker/messages.ts';
import { dayWords } from './day-words.ts';
import { KeptHere } from './KeptHere.tsx';

export default function CampsPage() {
  return (
    <Page title="Camps" lead="Place, weather, mouths, hands, ovens, fuel and menu, kept together.">
      <div className="camps">
        <OwnCamps />
        <OpenFile />
        <DemoCamps />
        <KeptHere />
      </div>
    </Page>
  );
}

function OwnCamps() {
  const shelf = useShelf();
  const [camps, setCamps] = useState<readonly OwnCamp[]>();
  const [isLasting, setLasting] = useState(true);
  useEffect(() => {
    void shelf.then(async (open) => {
      setLasting(open.isLasting);
      setCamps(await open.list());
    });
  }, [shelf]);
  return (
    <section aria-labelledby="own">
      <h2 id="own">Your own</h2>
      {isLasting ? null : (
        <p className="word is-trouble">
          This browser keeps nothing for this page: save a camp as a file before you close it.
        </p>
      )}
      {camps?.length === 0 ? (
        <p className="quiet">
          None yet. <Link href="/">Start with one bread tonight</Link>, copy a demo camp, or open a
          camp file.
        </p>
      ) : (
        <CampRows camps={camps ?? []} shelf="camp" />
      )}
    </section>
  );
}

function DemoCamps() {
  const [demos, setDemos] = useState<readonly CampEntry[]>([]);
  useEffect(() => {
    void ask({ ask: 'demos', today: todayOf(new Date()) }).then(setDemos);
  }, []);
  return (
    <section aria-labelledby="demos">
      <h2 id="demos">Demo camps</h2>
      <p className="quiet">Invented, complete, to look round in. Nothing of them is kept.</p>
      <CampRows camps={demos} shelf="demo" />
    </section>
  );
}

interface CampRowsProps {
  readonly camps: readonly Pick<CampEntry, 'id' | 'title' | 'date'>[];
  readonly shelf: 'camp' | 'demo';
}

function CampRows({ camps, shelf }: CampRowsProps) {
  return (
    <ul className="camp-rows">
      {camps.map((camp) => (
        <li key={camp.id}>
          <Link href={`/${shelf}/${camp.id}`}>
            <strong>{camp.title === '' ? 'A camp without a name' : camp.title}</strong>
            <span>{dayWords(camp.date)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** A file from elsewhere becomes an own camp; one that can't be read says where and why. */
function OpenFile() {
  const shelf = useShelf();
  const id = useId();
  const [, go] = useLocation();
  const [trouble, setTrouble] = useState<FileOutcome>();
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    const opened = await ask({ ask: 'open', text: await file.text() });
    if (!opened.ok) return setTrouble({ name: file.name, troubles: opened.troubles });
    const { camp } = opened;
    const campId = (await (await shelf).read(camp.id)) ? newCampId(camp.title) : camp.id;
    const text = renamedFile(camp.file, { id: campId });
    await (await shelf).keep({ ...camp, id: campId, file: text, changedAt: Date.now() });
    go(`/camp/${campId}`);
  };
  return (
    <section aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Open a camp file</h2>
      <div className="field">
        <label className="field-label" htmlFor={id}>
          A file that was saved from here or written by hand (JSON)
        </label>
        <input
          id={id}
          type="file"
          accept=".json,application/json"
          onChange={(event) => void open(event.currentTarget.files?.[0])}
        />
      </div>
      {trouble === undefined ? null : <FileTroubles {...trouble} />}
    </section>
  );
}

interface FileOutcome {
  readonly name: string;
  readonly troubles: readonly PlaceTrouble[];
}

const MOST_SHOWN = 12;

function FileTroubles({ name, troubles }: FileOutcome) {
  return (
    <div className="word is-trouble" role="alert">
      <p>
        <strong>{name}</strong> can’t be opened as it stands. The file is left as it is.
      </p>
      <ul>
        {troubles.slice(0, MOST_SHOWN).map((each) => (
          <li key={each.path + each.code}>
            {each.path === '' ? 'The file' : <code>{each.path}</code>}: found {each.found}, wanted{' '}
            {each.wanted}. {each.next}
          </li>
        ))}
      </ul>
      {troubles.length > MOST_SHOWN ? <p>And {troubles.length - MOST_SHOWN} more.</p> : null}
    </div>
  );
}
