// One shelf of own camps for the whole app.

import { type ComponentChildren, createContext } from 'preact';
import { useContext, useState } from 'preact/hooks';
import { type CampShelf, openShelf } from './browser-store.ts';

const Shelf = createContext<Promise<CampShelf> | undefined>(undefined);

export function ShelfProvider({ children }: { readonly children: ComponentChildren }) {
  const [shelf] = useState(() => openShelf(globalThis.indexedDB));
  return <Shelf.Provider value={shelf}>{children}</Shelf.Provider>;
}

export function useShelf(): Promise<CampShelf> {
  const shelf = useContext(Shelf);
  if (shelf === undefined) throw new Error('useShelf outside ShelfProvider');
  return shelf;
}
