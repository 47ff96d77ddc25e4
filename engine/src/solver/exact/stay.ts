// Something that takes a place for a while: from one number to another and so much more, if it does
// at all.

import type { Field, Literal, Unknown } from './field.ts';

export interface Stay {
  readonly first: Unknown;
  readonly last: Unknown;
  /** From `last` to the end. */
  readonly more: number;
  /** Undefined: in any case. */
  readonly where: Literal | undefined;
}

export const soonest = ({ bound }: Field, stay: Stay) => bound[2 * stay.first]!;
export const latest = ({ bound }: Field, stay: Stay) => -bound[2 * stay.first + 1]!;
export const soonestEnd = ({ bound }: Field, stay: Stay) => bound[2 * stay.last]! + stay.more;
export const latestEnd = ({ bound }: Field, stay: Stay) => -bound[2 * stay.last + 1]! + stay.more;

export const isThere = ({ bound }: Field, { where }: Stay) =>
  where === undefined || bound[where.side]! >= where.least;

export const isAway = ({ bound }: Field, { where }: Stay) =>
  where !== undefined && -bound[where.side ^ 1]! < where.least;

export function becauseEndsFrom(field: Field, reason: number, stay: Stay, least: number): void {
  field.because(reason, 2 * stay.last, least - stay.more);
}

export function becauseBeginsBy(field: Field, reason: number, stay: Stay, most: number): void {
  field.because(reason, 2 * stay.first + 1, -most);
}

export function becauseThere(field: Field, reason: number, { where }: Stay): void {
  if (where !== undefined) field.because(reason, where.side, where.least);
}
