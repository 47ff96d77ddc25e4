// Where does a function of one number become zero?
// Source: brent1973 ch. 4. Weakness: finds one root of the bracket, not all.

export interface RootQuestion {
  readonly low: number;
  readonly high: number;
  /** The root is known at least this well when the search ends. */
  readonly tolerance: number;
  /** Evaluations after the first two; bisection alone needs 50 to lose 15 digits. */
  readonly mostRounds?: number;
}

/** Why there is no root to give. */
export interface NoRoot {
  readonly noRoot: 'same-sign' | 'not-a-number' | 'too-many-rounds';
  readonly low: number;
  readonly high: number;
}

export const isNoRoot = (outcome: number | NoRoot): outcome is NoRoot =>
  typeof outcome !== 'number';

const USUAL_ROUNDS = 100;

interface Bracket {
  /** Best so far. */
  best: number;
  bestValue: number;
  /** The other side of the root. */
  other: number;
  otherValue: number;
  /** Best before. */
  last: number;
  lastValue: number;
  step: number;
  stepBefore: number;
}

/**
 * A root between two ends at which the function has different signs.
 *
 * Inverse quadratic steps where they behave, halving where they don't: usually some eight rounds.
 *
 * @returns   the root, or why there is none to give
 * @throws    RangeError — ends out of order or tolerance not positive
 * @source    brent1973 ch. 4, procedure zero
 */
export function rootOf(
  rise: (at: number) => number,
  { low, high, tolerance, mostRounds = USUAL_ROUNDS }: RootQuestion,
): number | NoRoot {
  if (!(low <= high && 0 < tolerance)) throw new RangeError('need low <= high, tolerance > 0');
  const [lowValue, highValue] = [rise(low), rise(high)];
  if (Number.isNaN(lowValue) || Number.isNaN(highValue)) {
    return { noRoot: 'not-a-number', low, high };
  }
  if (lowValue === 0) return low;
  if (highValue === 0) return high;
  if (Math.sign(lowValue) === Math.sign(highValue)) return { noRoot: 'same-sign', low, high };
  return search(rise, startBracket(low, lowValue, high, highValue), tolerance, mostRounds);
}

function startBracket(low: number, lowValue: number, high: number, highValue: number): Bracket {
  return {
    best: high,
    bestValue: highValue,
    other: low,
    otherValue: lowValue,
    last: low,
    lastValue: lowValue,
    step: high - low,
    stepBefore: high - low,
  };
}

function search(
  rise: (at: number) => number,
  bracket: Bracket,
  tolerance: number,
  mostRounds: number,
): number | NoRoot {
  for (let round = 0; round < mostRounds; round += 1) {
    keepBestNearest(bracket);
    const near = 2 * Number.EPSILON * Math.abs(bracket.best) + tolerance / 2;
    const half = (bracket.other - bracket.best) / 2;
    if (Math.abs(half) <= near || bracket.bestValue === 0) return bracket.best;
    chooseStep(bracket, half, near);
    bracket.last = bracket.best;
    bracket.lastValue = bracket.bestValue;
    bracket.best += Math.abs(bracket.step) > near ? bracket.step : Math.sign(half) * near;
    bracket.bestValue = rise(bracket.best);
    if (Number.isNaN(bracket.bestValue)) return noRoot('not-a-number', bracket);
    keepSignsApart(bracket);
  }
  return noRoot('too-many-rounds', bracket);
}

const noRoot = (why: NoRoot['noRoot'], { best, other }: Bracket): NoRoot => ({
  noRoot: why,
  low: Math.min(best, other),
  high: Math.max(best, other),
});

function keepSignsApart(bracket: Bracket): void {
  if (Math.sign(bracket.bestValue) !== Math.sign(bracket.otherValue)) return;
  bracket.other = bracket.last;
  bracket.otherValue = bracket.lastValue;
  bracket.step = bracket.best - bracket.last;
  bracket.stepBefore = bracket.step;
}

function keepBestNearest(bracket: Bracket): void {
  if (Math.abs(bracket.bestValue) <= Math.abs(bracket.otherValue)) return;
  bracket.last = bracket.best;
  bracket.lastValue = bracket.bestValue;
  bracket.best = bracket.other;
  bracket.bestValue = bracket.otherValue;
  bracket.other = bracket.last;
  bracket.otherValue = bracket.lastValue;
}

function chooseStep(bracket: Bracket, half: number, near: number): void {
  const isSlow =
    Math.abs(bracket.stepBefore) < near ||
    Math.abs(bracket.lastValue) <= Math.abs(bracket.bestValue);
  const [above, below] = isSlow ? [1, 0] : interpolated(bracket, half);
  const limit = Math.min(
    3 * half * below - Math.abs(near * below),
    Math.abs(bracket.stepBefore * below),
  );
  if (!isSlow && 2 * above < limit) {
    bracket.stepBefore = bracket.step;
    bracket.step = above / below;
  } else {
    bracket.step = half;
    bracket.stepBefore = half;
  }
}

/** brent1973 ch. 4 eq. 2.7 ff.: the step as a quotient, its numerator not negative. */
function interpolated(bracket: Bracket, half: number): readonly [number, number] {
  const { best, bestValue, other, otherValue, last, lastValue } = bracket;
  const s = bestValue / lastValue;
  let above = 2 * half * s;
  let below = 1 - s;
  if (last !== other) {
    const q = lastValue / otherValue;
    const r = bestValue / otherValue;
    above = s * (2 * half * q * (q - r) - (best - last) * (r - 1));
    below = (q - 1) * (r - 1) * (s - 1);
  }
  return above > 0 ? [above, -below] : [-above, below];
}
