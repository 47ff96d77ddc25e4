// What was kept on the computer that serves the app, and bringing it back into this browser.

import { useEffect, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { ask } from '../planning/planner.ts';
import { newCampId, renamedFile } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import { dayWords } from './day-words.ts';
import { type KeptCamp, keptCamps, keptFile, type ServerStatus, serverStatus } from './kept.ts';

export function KeptHere() {
  const [status, setStatus] = useState<ServerStatus>();
  const [camps, setCamps] = useState<readonly KeptCamp[]>([]);
  useEffect(() => {
    void serverStatus().then(async (found) => {
      setStatus(found);
      if (found?.store === 'sqlite') setCamps(await keptCamps());
    });
  }, []);
  return (
    <section aria-labelledby="kept">
      <h2 id="kept">Kept on this computer</h2>
      <p className="quiet">
        {status?.why ?? 'The server can’t be reached; the app works without.'}
      </p>
      <ul className="camp-rows">
        {camps.map((camp) => (
          <KeptRow key={camp.id} camp={camp} />
        ))}
      </ul>
    </section>
  );
}

function KeptRow({ camp }: { readonly camp: KeptCamp }) {
  const shelf = useShelf();
  const [, go] = useLocation();
  const [word, setWord] = useState<string>();
  const bring = async () => {
    const text = await keptFile(camp.id);
    const opened = text === undefined ? undefined : await ask({ ask: 'open', text });
    if (!opened?.ok) return setWord('It can’t be read; nothing was changed.');
    const open = await shelf;
    const id = (await open.read(camp.id)) ? newCampId(camp.title) : camp.id;
    await open.keep({
      ...opened.camp,
      id,
      file: renamedFile(opened.camp.file, { id }),
      changedAt: Date.now(),
    });
    go(`/camp/${id}`);
  };
  return (
    <li>
      <button type="button" onClick={() => void bring()}>
        <strong>{camp.title}</strong>
        <span>
          {dayWords(camp.date)} · version {camp.version}
        </span>
        {word === undefined ? null : <span role="alert">{word}</span>}
      </button>
    </li>
  );
}
