// The outline of a loaf that is cut through its middle: as high in the middle as it stands, and as
// full towards its edge as its load says. Plane geometry: a body of revolution under the curve
// (1 - r^n)^(1/n); n = 2 is half an ellipsoid, the larger n the flatter its top.

import { shortNumber } from './svg.ts';

export interface Loaf {
  readonly x: number;
  readonly foot: number;
  readonly width: number;
  /** Of its middle. */
  readonly height: number;
  readonly fullness: number;
}

/** A slab keeps a little roundness at its edge. */
const FLATTEST = 12;
const ROUNDEST = 1.5;

export const loafOf = (box: Omit<Loaf, 'fullness'>, profile = 1): Loaf => ({
  ...box,
  fullness: fullnessFor(profile),
});

/** The n whose body has this mean height over middle height; 30 halvings. */
export function fullnessFor(profile: number): number {
  let [round, flat] = [ROUNDEST, FLATTEST];
  for (let halving = 0; halving < 30; halving++) {
    const middle = (round + flat) / 2;
    if (meanHeight(middle) < profile) round = middle;
    else flat = middle;
  }
  return (round + flat) / 2;
}

const RINGS = 64;

/** Mean height of the body over its middle height, by the midpoints of rings of equal area. */
export function meanHeight(fullness: number): number {
  let sum = 0;
  for (let ring = 0; ring < RINGS; ring++)
    sum += heightAt(Math.sqrt((ring + 0.5) / RINGS), fullness);
  return sum / RINGS;
}

/** The curve falls so steeply there that a lost digit would show. */
const AT_THE_EDGE = 1 - 1e-9;

/** At a distance from the middle, 0 … 1. */
const heightAt = (distance: number, fullness: number) =>
  distance < AT_THE_EDGE ? (1 - distance ** fullness) ** (1 / fullness) : 0;

/** How high it stands at this place of the drawing. */
export const topAt = ({ x, width, height, fullness }: Loaf, at: number): number =>
  height * heightAt(Math.abs((2 * (at - x)) / width - 1), fullness);

const STEPS = 14;

/** Between two shares of the loaf's own height at each place, as a closed path. */
export function band(loaf: Loaf, low: number, high: number): string {
  const along = Array.from({ length: 2 * STEPS + 1 }, (_, step) => {
    // Closer together towards the edge, where it is steep.
    const turned = Math.sin((Math.PI / 2) * (step / STEPS - 1));
    return loaf.x + (loaf.width / 2) * (1 + turned);
  });
  const at = (x: number, share: number) =>
    `${shortNumber(x)} ${shortNumber(loaf.foot - share * topAt(loaf, x))}`;
  const there = along.map((x) => at(x, high));
  const back = low === 0 ? [] : along.toReversed().map((x) => at(x, low));
  return `M${[...there, ...back].join('L')}Z`;
}
