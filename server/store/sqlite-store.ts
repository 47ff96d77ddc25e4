// The embedded store: one SQLite file, write-ahead log, full synchronising, versions only added.

import type Database from 'better-sqlite3';
import type { CampStore, CampToKeep, KeptCamp } from './camp-store.ts';
import { migrations } from './migrations.ts';

interface VersionRow {
  readonly camp: string;
  readonly version: number;
  readonly title: string;
  readonly date: string;
  readonly kept_at: string;
}

/**
 * A store of camps in an open SQLite database; brings its tables up to date first.
 *
 * @throws Error — the file was written by a newer version of the app
 */
export function sqliteStore(database: Database.Database): CampStore {
  prepareDatabase(database);
  const listRows = database.prepare<[], VersionRow>(
    `SELECT camp, version, title, date, kept_at FROM camp_version AS newest
     WHERE version = (SELECT MAX(version) FROM camp_version WHERE camp = newest.camp)
     ORDER BY kept_at DESC, camp`,
  );
  const readRow = database.prepare<[{ id: string; version: number | null }], { file: string }>(
    `SELECT file FROM camp_version WHERE camp = @id AND (@version IS NULL OR version = @version)
     ORDER BY version DESC LIMIT 1`,
  );
  const addRow = database.prepare<[CampToKeep], VersionRow>(
    `INSERT INTO camp_version (camp, version, title, date, kept_at, file)
     SELECT @id, COALESCE(MAX(version), 0) + 1, @title, @date, @keptAt, @file
     FROM camp_version WHERE camp = @id
     RETURNING camp, version, title, date, kept_at`,
  );
  return {
    list: () => listRows.all().map(keptCampFrom),
    keep: (camp: CampToKeep) => keptCampFrom(addRow.get(camp)!),
    read: (id, version) => readRow.get({ id, version: version ?? null })?.file,
    close: () => database.close(),
  };
}

const keptCampFrom = (row: VersionRow): KeptCamp => ({
  id: row.camp,
  version: row.version,
  title: row.title,
  date: row.date,
  keptAt: row.kept_at,
});

function prepareDatabase(database: Database.Database): void {
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.pragma('foreign_keys = ON');
  database.exec(
    'CREATE TABLE IF NOT EXISTS migration (id INTEGER PRIMARY KEY, what TEXT NOT NULL) STRICT',
  );
  const done = database.prepare<[], { id: number }>('SELECT id FROM migration').all();
  const newest = Math.max(0, ...done.map((row) => row.id));
  if (newest > migrations.length) {
    throw new Error('the kept camps were written by a newer Emberwright: start that one');
  }
  const note = database.prepare('INSERT INTO migration (id, what) VALUES (?, ?)');
  for (const step of migrations.filter((each) => each.id > newest)) {
    database.transaction(() => {
      database.exec(step.sql);
      note.run(step.id, step.what);
    })();
  }
}
