// Hands the reader's choices to every screen, and keeps them when they change.

import { type ComponentChildren, createContext } from 'preact';
import { useContext, useEffect, useMemo, useState } from 'preact/hooks';
import { applyGround, type Reader, rememberedReader, rememberReader } from './reader.ts';

interface ReaderChoice {
  readonly reader: Reader;
  readonly choose: (change: Partial<Reader>) => void;
}

const Choice = createContext<ReaderChoice | undefined>(undefined);

export function ReaderProvider({ children }: { readonly children: ComponentChildren }) {
  const [reader, setReader] = useState(() =>
    rememberedReader(localStorage, navigator.language ?? ''),
  );
  useEffect(() => {
    applyGround(document.documentElement, reader.ground);
    rememberReader(localStorage, reader);
  }, [reader]);
  const choice = useMemo(
    () => ({
      reader,
      choose: (change: Partial<Reader>) => setReader((old) => ({ ...old, ...change })),
    }),
    [reader],
  );
  return <Choice.Provider value={choice}>{children}</Choice.Provider>;
}

export function useReader(): ReaderChoice {
  const choice = useContext(Choice);
  if (choice === undefined) throw new Error('useReader outside ReaderProvider');
  return choice;
}
