// The cook's own camps, kept in this browser (IndexedDB): one record a camp, the newest state.
// Where the browser refuses to keep anything, camps live as long as the page, and it says so.

export interface OwnCamp {
  readonly id: string;
  readonly title: string;
  readonly date: string;
  /** The camp file as JSON text. */
  readonly file: string;
  /** Milliseconds since 1970. */
  readonly changedAt: number;
  /** Counts the times it was kept; 0 or left out before the first. Set by the shelf. */
  readonly revision?: number;
}

/** The revision it has now, or that another page has kept it since the one it was based on. */
export type Kept = { readonly revision: number } | 'changed-elsewhere';

export interface CampShelf {
  readonly isLasting: boolean;
  list(): Promise<readonly OwnCamp[]>;
  read(id: string): Promise<OwnCamp | undefined>;
  /**
   * Keeps the newest state of a camp.
   *
   * @param basedOn   the revision that was read before it was changed; left out for a new camp
   */
  keep(camp: OwnCamp, basedOn?: number): Promise<Kept>;
  remove(id: string): Promise<void>;
}

const DATABASE = 'emberwright';
const CAMPS = 'camps';

/** The shelf of this browser; one that forgets where there is no lasting one. */
export async function openShelf(factory: IDBFactory | undefined): Promise<CampShelf> {
  try {
    if (factory === undefined) return forgetfulShelf();
    return lastingShelf(await openDatabase(factory));
  } catch {
    return forgetfulShelf();
  }
}

function openDatabase(factory: IDBFactory): Promise<IDBDatabase> {
  const request = factory.open(DATABASE, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(CAMPS, { keyPath: 'id' });
  return answerOf(request);
}

function answerOf<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function lastingShelf(database: IDBDatabase): CampShelf {
  const camps = () => database.transaction(CAMPS, 'readonly').objectStore(CAMPS);
  return {
    isLasting: true,
    list: async () => newestFirst(await answerOf<OwnCamp[]>(camps().getAll())),
    read: (id) => answerOf<OwnCamp | undefined>(camps().get(id)),
    keep: (camp, basedOn) => keptIn(database, camp, basedOn),
    remove: (id) => written(database, (store) => store.delete(id)),
  };
}

/** Looked at and kept in one transaction, so that no other page comes in between. */
async function keptIn(database: IDBDatabase, camp: OwnCamp, basedOn: number | undefined) {
  let kept: Kept = 'changed-elsewhere';
  await written(database, (store) => {
    const request = store.get(camp.id) as IDBRequest<OwnCamp | undefined>;
    request.onsuccess = () => {
      kept = nextRevision(request.result, basedOn);
      if (kept !== 'changed-elsewhere') store.put({ ...camp, ...kept });
    };
  });
  return kept;
}

/** A camp that was taken out elsewhere is kept again: nothing typed is lost. */
function nextRevision(stored: OwnCamp | undefined, basedOn: number | undefined): Kept {
  const now = stored?.revision ?? 0;
  const isOlder = stored !== undefined && basedOn !== undefined && basedOn !== now;
  return isOlder ? 'changed-elsewhere' : { revision: Math.max(now, basedOn ?? 0) + 1 };
}

/** Done when it is on the disk, not only asked for. */
function written(database: IDBDatabase, change: (store: IDBObjectStore) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(CAMPS, 'readwrite', { durability: 'strict' });
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
    change(transaction.objectStore(CAMPS));
  });
}

/** For private windows that keep nothing, and for tests. */
export function forgetfulShelf(): CampShelf {
  const camps = new Map<string, OwnCamp>();
  return {
    isLasting: false,
    list: async () => newestFirst([...camps.values()]),
    read: async (id) => camps.get(id),
    keep: async (camp, basedOn) => {
      const kept = nextRevision(camps.get(camp.id), basedOn);
      if (kept !== 'changed-elsewhere') camps.set(camp.id, { ...camp, ...kept });
      return kept;
    },
    remove: async (id) => void camps.delete(id),
  };
}

const newestFirst = (camps: readonly OwnCamp[]) =>
  [...camps].sort((one, other) => other.changedAt - one.changedAt);
