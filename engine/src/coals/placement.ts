// Where does each coal lie? A ring under the rim of the floor; rim and spread on the lid.
// Sources: ringMethod, splitByMethod; share on the rim from a simulated plate (coalsOvenModelNotes).

import { metres } from '../quantity/unit.ts';
import type { CoalPlace, CoalSet } from './coal-plan.ts';
import { shovelsFor } from './fuel.ts';
import { LEG_WIDTH, LEGS, ringsOf, ringUnderFloor, touchingRing } from './room.ts';

/** Share of the lid's coals on its rim; tuned on three layouts of a simulated 12 inch plate. */
const RIM_SHARE = 0.61;
const HANDLE_RADIUS = 0.03; // m, kept clear for the lifter

export interface PlaceWish {
  readonly pieces: number;
  readonly outerRadius: number;
  readonly coalWidth: number;
  readonly isWood: boolean;
}

/** Coals on the lid: the rim first, the rest spread inside it, the handle left clear. */
export const setAbove = (wish: PlaceWish): CoalSet => {
  const most = touchingRing(wish);
  const ring = Math.min(most, Math.round(wish.pieces * RIM_SHARE));
  return {
    ...told(wish, ringsOf(wish, wish.pieces)),
    ring,
    spread: wish.pieces - ring,
    places: [
      ...named('ring', circle(ring, ringRadius(wish))),
      ...spread(wish, { count: wish.pieces - ring, innermost: HANDLE_RADIUS }),
    ],
  };
};

/**
 * Coals below, legs left clear: a ring under the rim of the floor. What it does not hold lies spread
 * inside it under a pot; under a bread it makes a second ring, and the middle stays empty.
 */
export const setBelow = (wish: PlaceWish & { readonly isBaked: boolean }): CoalSet => {
  const first = Math.min(ringUnderFloor(wish), wish.pieces);
  const left = wish.pieces - first;
  const inner = { ...wish, outerRadius: wish.outerRadius - wish.coalWidth };
  const second = wish.isBaked ? Math.min(left, touchingRing(inner)) : 0;
  return {
    ...told(wish, ringsOf(wish, wish.pieces, ringUnderFloor)),
    ring: first + second,
    spread: left - second,
    places: [
      ...named('ring', betweenLegs(first, ringRadius(wish))),
      ...named('ring', circle(second, ringRadius(inner))),
      ...spread(second > 0 ? inner : wish, { count: left - second, innermost: 0 }),
    ],
  };
};

const told = ({ pieces, isWood }: PlaceWish, rings: number) => ({
  pieces,
  rings,
  ...(isWood ? { shovels: shovelsFor(pieces) } : {}),
});

const ringRadius = ({ outerRadius, coalWidth }: PlaceWish) => outerRadius - coalWidth / 2;

type Spot = Omit<CoalPlace, 'in'>;

const named = (how: CoalPlace['in'], spots: readonly Spot[]): readonly CoalPlace[] =>
  spots.map((spot) => ({ ...spot, in: how }));

const spotAt = (radius: number, angle: number): Spot => ({
  x: metres(radius * Math.sin(angle)),
  y: metres(radius * Math.cos(angle)),
});

const circle = (count: number, radius: number): readonly Spot[] =>
  Array.from({ length: count }, (_, index) =>
    spotAt(radius, (2 * Math.PI * (index + 0.5)) / count),
  );

// Legs stand at a third of the circle each, the first towards the cook (negative y).
const betweenLegs = (count: number, radius: number): readonly Spot[] => {
  const sector = (2 * Math.PI) / LEGS;
  const leg = radius > 0 ? LEG_WIDTH / radius : 0;
  return Array.from({ length: LEGS }, (_, at) => {
    const here = Math.floor((count + LEGS - 1 - at) / LEGS);
    const from = Math.PI + at * sector + leg / 2;
    return Array.from({ length: here }, (_, index) =>
      spotAt(radius, from + ((index + 0.5) * (sector - leg)) / here),
    );
  }).flat();
};

/** Spread coals on circles inside the ring, more on the wider ones. */
const spread = (
  wish: PlaceWish,
  { count, innermost }: { readonly count: number; readonly innermost: number },
): readonly CoalPlace[] => {
  const radii = innerRadii(ringRadius(wish) - wish.coalWidth, innermost, wish.coalWidth);
  const shares = sharedOut(count, radii);
  return named(
    'spread',
    radii.flatMap((radius, index) => circle(shares[index] ?? 0, radius)),
  );
};

const MOST_CIRCLES = 12; // a 16 inch lid under the smallest briquettes

const innerRadii = (outermost: number, innermost: number, step: number): readonly number[] => {
  const radii: number[] = [];
  let radius = Math.max(outermost, innermost);
  while (radius >= innermost && radii.length < MOST_CIRCLES) {
    radii.push(radius);
    radius -= step;
  }
  return radii;
};

const sharedOut = (count: number, radii: readonly number[]): readonly number[] => {
  const whole = radii.reduce((sum, radius) => sum + radius, 0);
  let left = count;
  return radii.map((radius, index) => {
    const isLast = index === radii.length - 1;
    const share =
      isLast || whole === 0 ? left : Math.min(left, Math.round((count * radius) / whole));
    left -= share;
    return share;
  });
};
