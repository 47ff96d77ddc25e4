// What the engine has to say beside its numbers: codes and quantities, never sentences.
// Sentences are made in publish/words, so that units and language can change.

/** What a notice or refusal is about; ids as they stand in the camp. */
export interface About {
  readonly dish?: string;
  readonly recipe?: string;
  readonly oven?: string;
  readonly hand?: string;
  readonly ingredient?: string;
  readonly task?: string;
}

/**
 * How much it matters. 'danger' can hurt someone; 'stop' means the plan can't be carried out as
 * it stands; 'doubt' means a number is weaker than it looks; 'note' is worth knowing.
 */
export type NoticeLevel = 'danger' | 'stop' | 'doubt' | 'note';

/** Quantities a sentence needs; keys end in their SI unit (`airKelvin`, `massGrams`). */
export type NoticeValues = Readonly<Record<string, number | string>>;

/** A doubtful or notable result: the value stands, this says how it is to be read. */
export interface Notice {
  readonly code: string;
  readonly level: NoticeLevel;
  readonly about: About;
  readonly values: NoticeValues;
}

/** An impossible wish: nothing sensible can be returned. Names the wishes that conflict. */
export interface Refusal {
  readonly refused: true;
  readonly code: string;
  readonly about: About;
  readonly values: NoticeValues;
  /** The wishes that can't stand together, as camp paths (`ovens.A`, `menu.rolls.serveAt`). */
  readonly conflicts: readonly string[];
}

export type OrRefusal<Value> = Value | Refusal;

export const isRefusal = <Value>(outcome: OrRefusal<Value>): outcome is Refusal =>
  typeof outcome === 'object' && outcome !== null && 'refused' in outcome;

export const notice = (
  code: string,
  level: NoticeLevel,
  about: About = {},
  values: NoticeValues = {},
): Notice => ({ code, level, about, values });

export const refusal = (
  code: string,
  conflicts: readonly string[],
  about: About = {},
  values: NoticeValues = {},
): Refusal => ({ refused: true, code, about, values, conflicts });

/**
 * One row of the manual of codes. Every stage keeps its own list in `codes.ts`;
 * docs/errors.md is written from all of them and a test compares the two.
 */
export interface CodeEntry {
  readonly kind: 'notice' | 'refusal';
  /** When it is given. */
  readonly when: string;
  /** What to do next, in a cook's words. */
  readonly next: string;
}

export type CodeList = Readonly<Record<string, CodeEntry>>;
