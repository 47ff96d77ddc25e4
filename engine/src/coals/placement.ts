// Where does each coal lie? A ring under the rim of the floor; rim and spread on the lid.
// Sources: ringMethod, splitByMethod. Which of the lid's layouts is the evenest: evenness.ts.

import { metres } from '../quantity/unit.ts';
import { betweenLegs, circle, heaped, innerWays, type Spot } from './circles.ts';
import type { CoalPlace, CoalSet } from './coal-plan.ts';
import { shovelsFor } from './fuel.ts';
import { LEGS, ringsOf, ringUnderFloor, touchingRing } from './room.ts';

export interface PlaceWish {
  readonly pieces: number;
  readonly outerRadius: number;
  readonly coalWidth: number;
  readonly isWood: boolean;
}

/** Shares of the lid's coals on its rim that are tried, the usual one first. */
const RIM_SHARES = [0.61, 0.54, 0.47, 0.68, 0.75, 0.85, 1];

/**
 * Ways to lay the lid: the rim evenly, the rest spread evenly inside it, the handle left clear. At
 * least one; where the lid is too full to lie flat, the one with the rest heaped.
 */
export const lidLayouts = (wish: PlaceWish): readonly CoalSet[] => {
  const most = touchingRing(wish);
  const rings = new Set(
    RIM_SHARES.map((share) => Math.min(most, Math.max(1, Math.round(wish.pieces * share)))),
  );
  const layouts = [...rings]
    .filter((ring) => ring <= wish.pieces)
    .flatMap((ring) => innerWays(insideLid(wish, ring)).map((inner) => lidSet(wish, ring, inner)));
  if (layouts.length > 0) return layouts;
  const ring = Math.min(most, wish.pieces);
  const flat = innerWays(insideLid(wish, ring))[0];
  return [lidSet(wish, ring, flat ?? heaped(insideLid(wish, ring)))];
};

/** Coals on the lid, as the caller likes them best; without a liking the usual share on the rim. */
export const setAbove = (
  wish: PlaceWish,
  best: (layouts: readonly CoalSet[]) => CoalSet | undefined = (layouts) => layouts[0],
): CoalSet => {
  const layouts = lidLayouts(wish);
  return best(layouts) ?? (layouts[0] as CoalSet);
};

const insideLid = (wish: PlaceWish, ring: number) => ({
  count: wish.pieces - ring,
  outermost: ringRadius(wish) - wish.coalWidth,
  coalWidth: wish.coalWidth,
  hasHandle: true,
});

const lidSet = (wish: PlaceWish, ring: number, inner: readonly Spot[]): CoalSet => ({
  ...told(wish, ringsOf(wish, wish.pieces)),
  ring,
  spread: wish.pieces - ring,
  places: [...named('ring', circle(ring, ringRadius(wish))), ...named('spread', inner)],
});

type BelowWish = PlaceWish & { readonly isBaked: boolean };

/**
 * Coals below, legs left clear: a ring under the rim of the floor. What it does not hold lies spread
 * inside it under a pot; under a bread it makes a second ring, and the middle stays empty.
 */
export const setBelow = (
  wish: BelowWish,
  best: (layouts: readonly CoalSet[]) => CoalSet | undefined = (layouts) => layouts[0],
): CoalSet => {
  const layouts = THIRDS.map((firstThird) => floorSet(wish, firstThird));
  return best(layouts) ?? (layouts[0] as CoalSet);
};

/** Which third of the ring gets the coal that is over. */
const THIRDS = Array.from({ length: LEGS }, (_, third) => third);

const floorSet = (wish: BelowWish, firstThird: number): CoalSet => {
  const first = Math.min(ringUnderFloor(wish), wish.pieces);
  const left = wish.pieces - first;
  const inner = { ...wish, outerRadius: wish.outerRadius - wish.coalWidth };
  const second = wish.isBaked ? Math.min(left, touchingRing(inner)) : 0;
  const ring = { radius: ringRadius(wish), coalWidth: wish.coalWidth, firstThird };
  return {
    ...told(wish, ringsOf(wish, wish.pieces, ringUnderFloor)),
    ring: first + second,
    spread: left - second,
    places: [
      ...named('ring', betweenLegs(first, ring)),
      ...named('ring', circle(second, ringRadius(inner))),
      ...named('spread', underPot(second > 0 ? inner : wish, left - second)),
    ],
  };
};

const underPot = (wish: PlaceWish, count: number): readonly Spot[] => {
  const inside = {
    count,
    outermost: ringRadius(wish) - wish.coalWidth,
    coalWidth: wish.coalWidth,
    hasHandle: false,
  };
  return innerWays(inside)[0] ?? heaped(inside);
};

const told = ({ pieces, coalWidth, isWood }: PlaceWish, rings: number) => ({
  pieces,
  pieceWidth: metres(coalWidth),
  rings,
  ...(isWood ? { shovels: shovelsFor(pieces) } : {}),
});

const ringRadius = ({ outerRadius, coalWidth }: PlaceWish) => outerRadius - coalWidth / 2;

const named = (how: CoalPlace['in'], spots: readonly Spot[]): readonly CoalPlace[] =>
  spots.map((spot) => ({ ...spot, in: how }));
