// Where does each coal lie? A ring under the rim of the floor; rim and spread on the lid.
// Sources: ringMethod, splitByMethod; share on the rim from a simulated plate (coalsOvenModelNotes).

import { metres } from '../quantity/unit.ts';
import type { CoalPlace, CoalSet } from './coal-plan.ts';
import { shovelsFor } from './fuel.ts';
import { COAL_WIDTH, ringsOf, touchingRing } from './room.ts';

/** Share of the lid's coals on its rim; tuned on three layouts of a simulated 12 inch plate. */
const RIM_SHARE = 0.61;
const HANDLE_RADIUS = 0.03; // m, kept clear for the lifter
const LEGS = 3;

export interface PlaceWish {
  readonly pieces: number;
  readonly outerRadius: number;
  readonly isWood: boolean;
}

/** Coals on the lid: the rim first, the rest spread inside it, the handle left clear. */
export const setAbove = (wish: PlaceWish): CoalSet => {
  const most = touchingRing(wish.outerRadius);
  const ring = Math.min(most, Math.max(Math.round(wish.pieces * RIM_SHARE), 0));
  return coalSet(wish, { ring, legs: 0, innermost: HANDLE_RADIUS });
};

/** Coals below: a ring under the rim of the floor, more only inside it, legs left clear. */
export const setBelow = (wish: PlaceWish): CoalSet => {
  const most = Math.max(0, touchingRing(wish.outerRadius) - LEGS);
  return coalSet(wish, { ring: Math.min(most, wish.pieces), legs: LEGS, innermost: 0 });
};

const coalSet = (
  wish: PlaceWish,
  how: { readonly ring: number; readonly legs: number; readonly innermost: number },
): CoalSet => {
  const spread = wish.pieces - how.ring;
  const ringRadius = wish.outerRadius - COAL_WIDTH / 2;
  return {
    pieces: wish.pieces,
    ring: how.ring,
    spread,
    rings: ringsOf(wish.outerRadius, wish.pieces),
    ...(wish.isWood ? { shovels: shovelsFor(wish.pieces) } : {}),
    places: [
      ...circle(how.ring, ringRadius, how.legs).map((place) => ({ ...place, in: 'ring' as const })),
      ...inside(spread, ringRadius - COAL_WIDTH, how.innermost),
    ],
  };
};

// Legs stand at a third of the circle each, the first towards the cook (negative y).
const circle = (count: number, radius: number, legs: number) =>
  Array.from({ length: count }, (_, index) => {
    const angle = legs === 0 ? evenAngle(index, count) : angleBetweenLegs(index, count, legs);
    return { x: metres(radius * Math.sin(angle)), y: metres(radius * Math.cos(angle)) };
  });

const evenAngle = (index: number, count: number) => (2 * Math.PI * (index + 0.5)) / count;

const angleBetweenLegs = (index: number, count: number, legs: number): number => {
  const sector = Math.floor((index * legs) / count);
  const first = Math.ceil((sector * count) / legs);
  const next = Math.ceil(((sector + 1) * count) / legs);
  const within = (index - first + 1) / (next - first + 1);
  return Math.PI + ((sector + within) * 2 * Math.PI) / legs;
};

/** Spread coals on circles inside the ring, more on the wider ones. */
const inside = (count: number, outermost: number, innermost: number): readonly CoalPlace[] => {
  const radii: number[] = [];
  for (let radius = outermost; radius >= Math.max(innermost, 0) && radii.length < 8; )
    radius = pushed(radii, radius);
  const shares = sharedOut(count, radii);
  return radii.flatMap((radius, index) =>
    circle(shares[index] ?? 0, radius, 0).map((place) => ({ ...place, in: 'spread' as const })),
  );
};

const pushed = (radii: number[], radius: number): number => {
  radii.push(radius);
  return radius - COAL_WIDTH;
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
