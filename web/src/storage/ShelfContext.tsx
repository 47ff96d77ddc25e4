// One shelf of own camps for the whole app.

import { createContext, type ReactNode, use, useState } from 'react';
import { type CampShelf, openShelf } from './browser-store.ts';

const Shelf = createContext<Promise<CampShelf> | undefined>(undefined);

export function ShelfProvider({ children }: { readonly children: ReactNode }) {
  const [shelf] = useState(() => openShelf(globalThis.indexedDB));
  return <Shelf value={shelf}>{children}</Shelf>;
}

export function useShelf(): Promise<CampShelf> {
  const shelf = use(Shelf);
  if (shelf === undefined) throw new Error('useShelf outside ShelfProvider');
  return shelf;
}
