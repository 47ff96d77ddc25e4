// The bibliography: one entry per work, with the grade of our evidence for what we use of it.

/**
 * A: we read the primary work. B: quoted by another work that we read. C: measured by us.
 * D: common practice or memory, no source. Only A and B (to its rounding) and C may gate accuracy.
 */
export type Grade = 'A' | 'B' | 'C' | 'D';

export interface Source {
  readonly title: string;
  readonly by: string;
  readonly year?: number;
  /** Chapter, table, page, DOI. */
  readonly where?: string;
  readonly grade: Grade;
  /** How it was obtained, and what is doubtful about it. */
  readonly note?: string;
}

export type Bibliography = Readonly<Record<string, Source>>;
