// Chance that repeats: the same numbers everywhere for the same seed.

/** Lehmer generator, modulus 2^31 - 1; numbers in 0 … 1. @source parkMiller1988 (grade D) */
export function randomFrom(seed: number): () => number {
  let state = (Math.abs(Math.trunc(seed)) % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
