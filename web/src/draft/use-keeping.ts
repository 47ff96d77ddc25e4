// Keeps a draft on the shelf with every edit, one after the other. Where another page has kept the
// same camp in between, this page's state goes on as a copy: neither is dropped.

import { useEffect, useRef, useState } from 'preact/hooks';
import type { CampShelf } from '../storage/browser-store.ts';
import { newCampId } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import { type DraftFile, type Opened, ownCampFrom } from './use-draft.ts';

export interface Keeping {
  readonly keepTrouble?: string;
  readonly copyId?: string;
}

/** `opened` is what lies on the shelf already; undefined for a draft that isn't to be kept. */
export function useKeeping(file: DraftFile | undefined, opened: Opened | undefined): Keeping {
  const shelf = useShelf();
  const [keeping, setKeeping] = useState<Keeping>({});
  const newest = useRef<DraftFile>(undefined);
  const revision = useRef(0);
  const line = useRef<Promise<void>>(Promise.resolve());
  useEffect(() => {
    if (opened === undefined) return;
    newest.current = opened.file;
    revision.current = opened.revision;
  }, [opened]);
  useEffect(() => {
    if (file === undefined || newest.current === undefined || file === newest.current) return;
    newest.current = file;
    const keep = async () => {
      if (file !== newest.current) return; // a newer edit stands in line behind this one
      const open = await shelf;
      const kept = await open.keep(ownCampFrom(file), revision.current);
      if (kept === 'changed-elsewhere') {
        setKeeping({ copyId: await keepCopy(open, newest.current) });
      } else {
        revision.current = kept.revision;
        setKeeping({});
      }
    };
    line.current = line.current.then(keep).catch((reason) => {
      setKeeping({ keepTrouble: reason instanceof Error ? reason.message : String(reason) });
    });
  }, [file, shelf]);
  return keeping;
}

async function keepCopy(shelf: CampShelf, file: DraftFile): Promise<string> {
  const title = `${String(file.title ?? '')} (copy)`.trim();
  const id = newCampId(title);
  await shelf.keep(ownCampFrom({ ...file, id, title }));
  return id;
}
