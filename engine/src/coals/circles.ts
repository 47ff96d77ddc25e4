// Places on circles: a ring all round, a ring between three legs, coals spread inside a ring.
// Sources: none needed, plain geometry; ringMethod says what a ring is.

import { metres } from '../quantity/unit.ts';
import type { CoalPlace } from './coal-plan.ts';
import { HANDLE, LEG_ANGLES, LEG_WIDTH, LEGS } from './room.ts';

export type Spot = Pick<CoalPlace, 'x' | 'y'>;

/** `angle` clockwise from north, seen from above. */
const spotAt = (radius: number, angle: number): Spot => ({
  x: metres(radius * Math.sin(angle)),
  y: metres(radius * Math.cos(angle)),
});

/** Evenly round a circle; `phase` in parts of one gap. */
export const circle = (count: number, radius: number, phase = 0.5): readonly Spot[] =>
  Array.from({ length: count }, (_, index) =>
    spotAt(radius, (2 * Math.PI * (index + phase)) / count),
  );

export interface RingBetweenLegs {
  readonly radius: number;
  readonly coalWidth: number;
  /** The third that gets the first odd coal; the next the second. */
  readonly firstThird?: number;
}

/**
 * Coals between the legs: as many in each third as in the others, or one more; in each third at
 * equal angles. Where there is room the whole ring is even, legs or no legs; where it is tight, coals
 * at the ends of a third come as near to the leg as its width lets them.
 */
export const betweenLegs = (
  count: number,
  { radius, coalWidth, firstThird = 0 }: RingBetweenLegs,
): readonly Spot[] => {
  if (count === 0 || radius <= coalWidth / 2) return circle(count, Math.max(0, radius));
  const third = (2 * Math.PI) / LEGS;
  const clear = Math.asin(coalWidth / 2 / radius) + LEG_WIDTH / 2 / radius;
  return LEG_ANGLES.flatMap((leg, at) => {
    const turn = (at + LEGS - firstThird) % LEGS;
    const here = Math.floor((count + LEGS - 1 - turn) / LEGS);
    const end = Math.min(third / 2, Math.max(third / (2 * here), clear));
    const step = here > 1 ? (third - 2 * end) / (here - 1) : 0;
    return Array.from({ length: here }, (_, index) =>
      spotAt(radius, leg + (here > 1 ? end + index * step : third / 2)),
    );
  });
};

export interface InnerWish {
  readonly count: number;
  /** No coal's middle lies farther out. */
  readonly outermost: number;
  readonly coalWidth: number;
  /** On a lid the handle stays free. */
  readonly hasHandle: boolean;
}

/** Ways to spread coals inside a ring, none on another and the handle free; none where too full. */
export const innerWays = (wish: InnerWish): readonly (readonly Spot[])[] => {
  if (wish.count === 0) return [[]];
  if (wish.outermost <= 0) return [];
  const ways = waysOfRadii(wish).flatMap((radii) => onCircles(radii, wish) ?? []);
  return ways.filter((spots) => isLoose(spots, wish.coalWidth)).slice(0, MOST_WAYS);
};

const MOST_WAYS = 2;

/** Too many to lie flat: circles as close as coals, the rest heaped on them. */
export const heaped = ({ count, outermost, coalWidth }: InnerWish): readonly Spot[] => {
  const radii = packedRadii(Math.max(0, outermost), coalWidth, MOST_CIRCLES);
  return sharedOut(count, radii).flatMap((share, index) => circle(share, radii[index] ?? 0));
};

const MOST_CIRCLES = 12; // a 16 inch lid under the smallest briquettes

// Evenly from the middle to the ring; or pushed out against the ring; a lone coal in the middle.
const waysOfRadii = (wish: InnerWish): readonly (readonly number[])[] => {
  const { count, outermost, coalWidth } = wish;
  const reach = outermost + coalWidth / 2;
  const pitch = reach * Math.sqrt(Math.PI / count);
  const circles = Math.min(MOST_CIRCLES, Math.max(1, Math.round(reach / pitch)));
  const even = Array.from({ length: circles }, (_, index) =>
    Math.min(outermost, (reach * (circles - index - 0.5)) / circles),
  );
  const packed = [2, 1, 3].map((most) => packedRadii(outermost, coalWidth, most));
  const middle = count === 1 && !wish.hasHandle ? [[0]] : [];
  return [...middle, even, ...packed];
};

const packedRadii = (outermost: number, step: number, most: number): readonly number[] =>
  Array.from({ length: most }, (_, index) => outermost - index * step).filter(
    (radius, index) => radius >= 0 && (index === 0 || radius > step / 2),
  );

const onCircles = (
  radii: readonly number[],
  { count, coalWidth, hasHandle }: InnerWish,
): readonly (readonly Spot[])[] | undefined => {
  const circles = sharedOut(count, radii).map((share, index) => {
    const phases = hasHandle ? HANDLE_PHASES : [0.5];
    return phases
      .map((phase) => circle(share, radii[index] ?? 0, phase))
      .find((spots) => !hasHandle || spots.every((spot) => isOffHandle(spot, coalWidth)));
  });
  return circles.every((spots) => spots !== undefined) ? [circles.flat()] : undefined;
};

const HANDLE_PHASES = [0.5, 0, 0.25, 0.75]; // parts of a gap; the first that leaves the handle free

const isOffHandle = ({ x, y }: Spot, coalWidth: number): boolean =>
  Math.hypot(
    Math.max(0, Math.abs(x) - HANDLE.halfLength),
    Math.max(0, Math.abs(y) - HANDLE.halfWidth),
  ) >=
  coalWidth / 2;

const TOUCHING = 0.97; // charcoal is not cut to the millimetre

const isLoose = (spots: readonly Spot[], coalWidth: number): boolean =>
  spots.every((one, index) =>
    spots
      .slice(index + 1)
      .every((other) => Math.hypot(one.x - other.x, one.y - other.y) >= TOUCHING * coalWidth),
  );

/** Whole coals for each circle, by its radius. */
const sharedOut = (count: number, radii: readonly number[]): readonly number[] => {
  const whole = radii.reduce((sum, radius) => sum + radius, 0);
  let [left, ahead] = [count, whole];
  return radii.map((radius, index) => {
    const isLast = index === radii.length - 1;
    const share = isLast || ahead <= 0 ? left : Math.round((left * radius) / ahead);
    left -= share;
    ahead -= radius;
    return share;
  });
};
