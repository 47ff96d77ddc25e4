// A camp being changed: every edit is kept at once, readable or not, so that nothing typed is lost.

import { useCallback, useEffect, useRef, useState } from 'react';
import { ask } from '../planning/planner.ts';
import type { OwnCamp } from '../storage/browser-store.ts';
import { todayOf } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import { type Path, withValueAt } from './path.ts';

/** A camp file as it is being typed: any place may hold text that can't be read yet. */
export type DraftFile = Readonly<Record<string, unknown>>;

export type Draft =
  | { readonly state: 'opening' }
  | { readonly state: 'missing' }
  | {
      readonly state: 'open';
      readonly file: DraftFile;
      readonly set: (path: Path, value: unknown) => void;
      /** Several places at once, as one edit. */
      readonly setAll: (edits: readonly (readonly [Path, unknown])[]) => void;
      readonly isKept: boolean;
      readonly keepTrouble?: string;
    };

/** The camp at an address: an own one is kept with every edit, a demo only as long as the page. */
export function useDraft(from: 'camp' | 'demo', id: string): Draft {
  const shelf = useShelf();
  const [file, setFile] = useState<DraftFile | 'opening' | 'missing'>('opening');
  const [keepTrouble, setKeepTrouble] = useState<string>();
  const keptFile = useRef<DraftFile>(undefined);

  useEffect(() => {
    let isCurrent = true;
    void fileOf(from, id, shelf).then((found) => {
      if (!isCurrent) return;
      keptFile.current = found;
      setFile(found ?? 'missing');
    });
    return () => {
      isCurrent = false;
    };
  }, [from, id, shelf]);

  useEffect(() => {
    if (from !== 'camp' || typeof file === 'string' || file === keptFile.current) return;
    keptFile.current = file;
    shelf
      .then((open) => open.keep(ownCampFrom(file)))
      .then(
        () => setKeepTrouble(undefined),
        (reason) => setKeepTrouble(reason instanceof Error ? reason.message : String(reason)),
      );
  }, [from, file, shelf]);

  const setAll = useCallback((edits: readonly (readonly [Path, unknown])[]) => {
    setFile((old) =>
      typeof old === 'string'
        ? old
        : edits.reduce((next, [path, value]) => withValueAt(next, path, value), old),
    );
  }, []);
  const set = useCallback((path: Path, value: unknown) => setAll([[path, value]]), [setAll]);
  if (file === 'opening' || file === 'missing') return { state: file };
  return {
    state: 'open',
    file,
    set,
    setAll,
    isKept: from === 'camp',
    ...(keepTrouble === undefined ? {} : { keepTrouble }),
  };
}

async function fileOf(
  from: 'camp' | 'demo',
  id: string,
  shelf: ReturnType<typeof useShelf>,
): Promise<DraftFile | undefined> {
  const text = from === 'camp' ? (await (await shelf).read(id))?.file : await demoFile(id);
  return text === undefined ? undefined : (JSON.parse(text) as DraftFile);
}

async function demoFile(id: string): Promise<string | undefined> {
  const demos = await ask({ ask: 'demos', today: todayOf(new Date()) });
  return demos.find((demo) => demo.id === id)?.file;
}

/** The record on the shelf; its title and date may be half typed. */
export function ownCampFrom(file: DraftFile): OwnCamp {
  return {
    id: String(file.id),
    title: String(file.title ?? ''),
    date: String(file.date ?? ''),
    file: JSON.stringify(file),
    changedAt: Date.now(),
  };
}
