// Who eats how much: mouths by appetite, who comes late, what is held back.
// Sources: calorieNeeds (child, over 65), hardWorkRations; the reserve is common practice, no source.

import table from '../../../data/portions.json' with { type: 'json' };
import type { Appetite, MouthGroup } from '../../camp/camp.ts';

export const mouthsIn = (groups: readonly MouthGroup[]) =>
  groups.reduce((sum, group) => sum + group.count, 0);

/** Ordinary portions that one mouth of this appetite eats. */
export function appetiteFactor(appetite: Appetite): number {
  const row = table.appetites.find((each) => each.appetite === appetite);
  if (row === undefined) throw new RangeError(`no appetite ${appetite}`);
  return row.factor;
}

/** Ordinary portions for one of these mouths on the mean; 0 without any. */
export function meanAppetite(groups: readonly MouthGroup[]): number {
  const mouths = mouthsIn(groups);
  return mouths === 0 ? 0 : hungerOf(groups) / mouths;
}

/** Ordinary portions that all of them eat. */
export const hungerOf = (groups: readonly MouthGroup[]) =>
  groups.reduce((sum, each) => sum + each.count * appetiteFactor(each.appetite), 0);

/** Part of the portions that is added for so many eaters, where nobody says how much. */
export const usualReserve = (eaters: number) =>
  table.reserves.reduce((reserve, row) => (row.fromMouths <= eaters ? row.reserve : reserve), 0);

export interface AppetiteRow {
  readonly appetite: Appetite;
  readonly mouths: number;
  readonly factor: number;
}

/** One row an appetite, in the order in which the camp first names it. */
export function appetiteRows(groups: readonly MouthGroup[]): readonly AppetiteRow[] {
  const kinds = [...new Set(groups.map(({ appetite }) => appetite))];
  return kinds.map((appetite) => ({
    appetite,
    mouths: mouthsIn(groups.filter((group) => group.appetite === appetite)),
    factor: appetiteFactor(appetite),
  }));
}

export interface Latecomers {
  readonly mouths: number;
  /** Their part of everybody's hunger, 0 … 1. */
  readonly share: number;
  /** The last of them, so long after the serving. */
  readonly minutes: number;
}

/** Those who come after the serving; undefined where all are there. */
export function latecomersIn(groups: readonly MouthGroup[]): Latecomers | undefined {
  const late = groups.filter((group) => 0 < (group.late ?? 0) && 0 < group.count);
  if (late.length === 0) return undefined;
  return {
    mouths: mouthsIn(late),
    share: hungerOf(late) / hungerOf(groups),
    minutes: Math.max(...late.map((group) => group.late ?? 0)),
  };
}
