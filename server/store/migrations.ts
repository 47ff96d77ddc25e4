// The shape of the store's file, step by step. A step is never changed once it has shipped.

export interface Migration {
  readonly id: number;
  readonly what: string;
  readonly sql: string;
}

export const migrations: readonly Migration[] = [
  {
    id: 1,
    what: 'camp versions, which can be added but neither changed nor removed',
    sql: `
      CREATE TABLE camp_version (
        camp TEXT NOT NULL,
        version INTEGER NOT NULL,
        title TEXT NOT NULL,
        date TEXT NOT NULL,
        kept_at TEXT NOT NULL,
        file TEXT NOT NULL,
        PRIMARY KEY (camp, version)
      ) STRICT;
      CREATE TRIGGER camp_version_is_never_changed BEFORE UPDATE ON camp_version
        BEGIN SELECT RAISE(ABORT, 'camp versions are only added'); END;
      CREATE TRIGGER camp_version_is_never_removed BEFORE DELETE ON camp_version
        BEGIN SELECT RAISE(ABORT, 'camp versions are only added'); END;
    `,
  },
];
