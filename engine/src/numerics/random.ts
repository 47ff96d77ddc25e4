// Numbers that look like chance and are the same for the same seed, on every machine.
// Source: steele2014 (splitmix, 32-bit form with the finaliser of murmur3). Not for secrets.

/** A number at least 0 and below 1. */
export type Random = () => number;

/**
 * A generator of numbers from a seed.
 *
 * @param seed   any whole number; the same seed gives the same numbers
 * @throws       RangeError — the seed is not a whole number
 * @source       steele2014
 */
export function randomFrom(seed: number): Random {
  if (!Number.isInteger(seed)) throw new RangeError(`seed must be a whole number, got ${seed}`);
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

/** A whole number from `least` to `most`, both included. */
export const wholeFrom = (random: Random, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));
