// A camp being changed: every edit is kept at once, readable or not, so that nothing typed is lost.

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { ask } from '../planning/planner.ts';
import type { OwnCamp } from '../storage/browser-store.ts';
import { todayOf } from '../storage/new-id.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import { type Edit, type Path, takenOutWord, withEdits } from './path.ts';
import { useKeeping } from './use-keeping.ts';

/** A camp file as it is being typed: any place may hold text that can't be read yet. */
export type DraftFile = Readonly<Record<string, unknown>>;

export type Draft =
  | { readonly state: 'opening' }
  | { readonly state: 'missing' }
  | {
      readonly state: 'open';
      readonly file: DraftFile;
      readonly set: (path: Path, value: unknown) => void;
      /** Several places at once, as one edit; `word` says what it did, for the offer to undo it. */
      readonly setAll: (edits: readonly Edit[], word?: string) => void;
      /** Offered until the next edit, after something was taken out or added. */
      readonly undo?: Undo;
      readonly isKept: boolean;
      readonly keepTrouble?: string;
      /** Another page kept this camp in between: what is typed here went on as this copy. */
      readonly copyId?: string;
    };

export interface Undo {
  readonly word: string;
  readonly run: () => void;
}

interface Typed {
  readonly file: DraftFile;
  readonly before?: { readonly word: string; readonly file: DraftFile };
}

/** The camp at an address: an own one is kept with every edit, a demo only as long as the page. */
export function useDraft(from: 'camp' | 'demo', id: string): Draft {
  const [typed, setTyped] = useState<Typed | 'opening' | 'missing'>('opening');
  const opened = useOpened(from, id);
  useEffect(() => {
    if (opened !== undefined) setTyped(opened === 'missing' ? opened : { file: opened.file });
  }, [opened]);
  const { keepTrouble, copyId } = useKeeping(
    from === 'camp' && typeof typed !== 'string' ? typed.file : undefined,
    typeof opened === 'object' ? opened : undefined,
  );
  const setAll = useCallback((edits: readonly Edit[], word?: string) => {
    setTyped((old) => (typeof old === 'string' ? old : edited(old.file, edits, word)));
  }, []);
  const set = useCallback((path: Path, value: unknown) => setAll([[path, value]]), [setAll]);
  if (typed === 'opening' || typed === 'missing') return { state: typed };
  const { file, before } = typed;
  return {
    state: 'open',
    file,
    set,
    setAll,
    isKept: from === 'camp',
    ...(before === undefined
      ? {}
      : { undo: { word: before.word, run: () => setTyped({ file: before.file }) } }),
    ...(keepTrouble === undefined ? {} : { keepTrouble }),
    ...(copyId === undefined ? {} : { copyId }),
  };
}

function edited(file: DraftFile, edits: readonly Edit[], word: string | undefined): Typed {
  const said = word ?? takenOutWord(file, edits);
  const next = withEdits(file, edits);
  return said === undefined ? { file: next } : { file: next, before: { word: said, file } };
}

/** A camp as it was found, and the revision that edits of it are based on. */
export interface Opened {
  readonly file: DraftFile;
  readonly revision: number;
}

function useOpened(from: 'camp' | 'demo', id: string): Opened | 'missing' | undefined {
  const shelf = useShelf();
  const [opened, setOpened] = useState<Opened | 'missing'>();
  const asked = useRef<string>(undefined);
  useEffect(() => {
    const key = `${from}/${id}`;
    asked.current = key;
    void foundAt(from, id, shelf).then((found) => {
      if (asked.current === key) setOpened(found ?? 'missing');
    });
    return () => {
      asked.current = undefined;
    };
  }, [from, id, shelf]);
  return opened;
}

async function foundAt(
  from: 'camp' | 'demo',
  id: string,
  shelf: ReturnType<typeof useShelf>,
): Promise<Opened | undefined> {
  const own = from === 'camp' ? await (await shelf).read(id) : undefined;
  const text = from === 'camp' ? own?.file : await demoFile(id);
  if (text === undefined) return undefined;
  return { file: JSON.parse(text) as DraftFile, revision: own?.revision ?? 0 };
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
