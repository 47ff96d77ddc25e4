// What coals will give over the minutes ahead, and the room that they still take.
// Source: burn.ts (law of a shrinking piece).

import { LAID_BURNT, meanStrength } from './burn.ts';
import type { Addition } from './coal-plan.ts';
import type { CoalGroup } from './run.ts';

/** Minutes ahead, and how long a coal burns here. */
export interface Span {
  readonly minutes: number;
  readonly burnoutMinutes: number;
}

/** Mean strength of the coals of one place over the minutes ahead, as mid-life coals. */
export const aheadIn = (
  coals: readonly CoalGroup[],
  place: CoalGroup['place'],
  span: Span,
): number => {
  const burns = span.minutes / span.burnoutMinutes;
  return coals
    .filter((group) => group.place === place)
    .reduce((sum, group) => sum + group.count * meanStrength(group.burnt, group.burnt + burns), 0);
};

/** Mean strength of one coal between two minutes after it was laid. */
export const laidBetween = (
  between: { readonly from: number; readonly to: number },
  burnoutMinutes: number,
): number =>
  meanStrength(
    LAID_BURNT + between.from / burnoutMinutes,
    LAID_BURNT + between.to / burnoutMinutes,
  );

/** Mean strength of one coal that is laid now. */
export const freshAhead = ({ minutes, burnoutMinutes }: Span): number =>
  laidBetween({ from: 0, to: minutes }, burnoutMinutes);

/** Fresh coals of one addition. */
export const laid = (addition: Pick<Addition, 'above' | 'below'>): readonly CoalGroup[] => [
  { place: 'above', count: addition.above, burnt: LAID_BURNT },
  { place: 'below', count: addition.below, burnt: LAID_BURNT },
];

// Seen from above a coal shrinks with the two-thirds power of its mass, that is with 1 - burnt.
export const standingRoom = (coals: readonly CoalGroup[], place: CoalGroup['place']): number =>
  coals
    .filter((group) => group.place === place)
    .reduce((sum, group) => sum + group.count * Math.max(0, 1 - group.burnt), 0);
