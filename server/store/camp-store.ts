// Where camps are kept on this computer, when the cook asks for it. Versions are only ever added:
// keeping a camp again never overwrites what was kept before.

export interface KeptCamp {
  readonly id: string;
  /** 1 for the first time it was kept. */
  readonly version: number;
  readonly title: string;
  readonly date: string;
  /** ISO 8601, UTC. */
  readonly keptAt: string;
}

export interface CampToKeep {
  readonly id: string;
  readonly title: string;
  readonly date: string;
  /** The camp file as JSON text, exactly as it came. */
  readonly file: string;
  readonly keptAt: string;
}

export interface CampStore {
  /** The newest version of each camp, the most recently kept first. */
  list(): readonly KeptCamp[];
  /** Adds a version; the answer is written through to the disk before this returns. */
  keep(camp: CampToKeep): KeptCamp;
  /** The camp file's text; the newest version unless one is asked for. */
  read(id: string, version?: number): string | undefined;
  close(): void;
}

/** What the server found when it looked for a store. */
export type StoreState =
  | { readonly kind: 'sqlite'; readonly store: CampStore }
  | { readonly kind: 'none'; readonly why: string };
