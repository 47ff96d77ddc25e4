// Finds the store if this computer has one. The native module is optional: without it the server
// still serves the whole app, and says in words what is missing.

import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import type { StoreState } from './camp-store.ts';
import { sqliteStore } from './sqlite-store.ts';

type SqliteModule = { readonly default: typeof Database };
export type LoadSqlite = () => Promise<SqliteModule>;

const loadInstalled: LoadSqlite = () => import('better-sqlite3');

/** The store in a folder, or the reason why there is none. Never throws. */
export async function openStore(
  folder: string,
  load: LoadSqlite = loadInstalled,
): Promise<StoreState> {
  let sqlite: SqliteModule;
  try {
    sqlite = await load();
  } catch {
    return { kind: 'none', why: 'the optional SQLite module is not installed on this computer' };
  }
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    return { kind: 'sqlite', store: sqliteStore(new sqlite.default(join(folder, 'camps.sqlite'))) };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { kind: 'none', why: `kept camps can't be opened: ${reason}` };
  }
}
