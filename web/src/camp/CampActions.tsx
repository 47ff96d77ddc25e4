// Taking a camp elsewhere: as a file, on this computer, or out of this browser.

import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { keepCamp } from '../camps/kept.ts';
import type { DraftFile } from '../draft/use-draft.ts';
import { useShelf } from '../storage/ShelfContext.tsx';

interface CampActionsProps {
  readonly file: DraftFile;
  readonly isOwn: boolean;
}

export function CampActions({ file, isOwn }: CampActionsProps) {
  const [word, setWord] = useState('');
  const keep = async () => setWord(await keepCamp(String(file.id), JSON.stringify(file)));
  return (
    <section className="camp-ends no-print" aria-labelledby="camp-ends">
      <h2 id="camp-ends">Take it with you</h2>
      <div className="button-row">
        <button type="button" className="button" onClick={() => saveFile(file)}>
          Save camp file
        </button>
        {isOwn ? (
          <>
            <button type="button" className="button" onClick={() => void keep()}>
              Keep a copy on this computer
            </button>
            <RemoveButton id={String(file.id)} />
          </>
        ) : null}
      </div>
      <p role="status" className="quiet">
        {word}
      </p>
    </section>
  );
}

/** Two taps: the second one, on another word, does it. */
function RemoveButton({ id }: { readonly id: string }) {
  const shelf = useShelf();
  const [, go] = useLocation();
  const [isAsked, setAsked] = useState(false);
  const remove = async () => {
    await (await shelf).remove(id);
    go('/camps');
  };
  if (!isAsked) {
    return (
      <button type="button" className="button is-quiet" onClick={() => setAsked(true)}>
        Remove from this browser
      </button>
    );
  }
  return (
    <>
      <button type="button" className="button is-main" onClick={() => void remove()}>
        Remove it for good
      </button>
      <button type="button" className="button" onClick={() => setAsked(false)}>
        Leave it here
      </button>
    </>
  );
}

function saveFile(file: DraftFile): void {
  const url = URL.createObjectURL(
    new Blob([`${JSON.stringify(file, undefined, 2)}\n`], { type: 'application/json' }),
  );
  const link = document.createElement('a');
  link.href = url;
  link.download = `${String(file.id)}.camp.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
