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
}

export interface CampShelf {
  readonly isLasting: boolean;
  list(): Promise<readonly OwnCamp[]>;
  read(id: string): Promise<OwnCamp | undefined>;
  keep(camp: OwnCamp): Promise<void>;
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
  const change = (make: (store: IDBObjectStore) => void) => written(database, make);
  return {
    isLasting: true,
    list: async () => newestFirst(await answerOf<OwnCamp[]>(camps().getAll())),
    read: (id) => answerOf<OwnCamp | undefined>(camps().get(id)),
    keep: (camp) => change((store) => store.put(camp)),
    remove: (id) => change((store) => store.delete(id)),
  };
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
    keep: async (camp) => void camps.set(camp.id, camp),
    remove: async (id) => void camps.delete(id),
  };
}

const newestFirst = (camps: readonly OwnCamp[]) =>
  [...camps].sort((one, other) => other.changedAt - one.changedAt);
