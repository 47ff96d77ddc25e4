// What a hand does to the coals: add, take, move, knock the ash off. A set is a list of groups, each
// of one place and one age, so half a ring added is half a ring: nothing is averaged.
// Source: ringMethod for the ring. Weak spot: coals are taken as they lie, old and young alike.

import { LAID_BURNT } from './burn.ts';
import type { CoalGroup } from './run.ts';

export type CoalSide = CoalGroup['place'];

/** Coals of one place, spent ones left out. */
export const liveCoals = (coals: readonly CoalGroup[], place: CoalSide): number =>
  coals.reduce((sum, group) => sum + (isLive(group, place) ? group.count : 0), 0);

const isLive = (group: CoalGroup, place: CoalSide) => group.place === place && group.burnt < 1;

/** The list with more in it; groups of none are dropped. */
export const coalsAdded = (
  coals: readonly CoalGroup[],
  more: readonly CoalGroup[],
): readonly CoalGroup[] => [...coals, ...more.filter((group) => group.count > 0)];

/** Fewer of one place, each age giving its share; never more than are there. */
export const coalsTaken = (
  coals: readonly CoalGroup[],
  from: { readonly place: CoalSide; readonly count: number },
): readonly CoalGroup[] => {
  const all = liveCoals(coals, from.place);
  const left = all > 0 ? Math.max(0, 1 - Math.max(0, from.count) / all) : 1;
  return coals
    .map((group) => (isLive(group, from.place) ? { ...group, count: group.count * left } : group))
    .filter((group) => group.count > 0);
};

/** Coals carried from one place to the other; they keep their age. */
export const coalsMoved = (
  coals: readonly CoalGroup[],
  from: { readonly place: CoalSide; readonly count: number },
): readonly CoalGroup[] => {
  const all = liveCoals(coals, from.place);
  const share = all > 0 ? Math.min(1, Math.max(0, from.count) / all) : 0;
  const to: CoalSide = from.place === 'above' ? 'below' : 'above';
  const carried = coals
    .filter((group) => isLive(group, from.place))
    .map((group) => ({ ...withoutArc(group), place: to, count: group.count * share }));
  return coalsAdded(coalsTaken(coals, from), carried);
};

const withoutArc = ({ arc: _, ...group }: CoalGroup): CoalGroup => group;

/** Ash knocked off, above or below or both. */
export const ashKnockedOff = (
  coals: readonly CoalGroup[],
  place?: CoalSide,
): readonly CoalGroup[] =>
  coals.map((group) =>
    place === undefined || group.place === place ? { ...group, isClear: true } : group,
  );

/**
 * A part of a touching ring, freshly ashed over: half a ring of 17 is 8.5 coals on half the round,
 * which is what the heat sees; a hand lays 8 or 9.
 */
export const ringPart = (ring: {
  readonly place: CoalSide;
  /** Coals that close the ring, from room.ts. */
  readonly closed: number;
  /** Clockwise from the handle [rad]. */
  readonly arc: { readonly from: number; readonly to: number };
  readonly burnt?: number;
}): CoalGroup => ({
  place: ring.place,
  count: (ring.closed * Math.abs(ring.arc.to - ring.arc.from)) / (2 * Math.PI),
  burnt: ring.burnt ?? LAID_BURNT,
  arc: ring.arc,
});
