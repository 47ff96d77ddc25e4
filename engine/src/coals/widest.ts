// What makes most of a band? The factor whose step moves the heat farthest while the load is in.
// Source: factors.ts, jcgm100 5.1.2 (effects add in squares, so the largest rules).

import type { CurvePoint } from './coal-plan.ts';
import type { FactorName } from './factors.ts';

export interface Widest<Name extends string = FactorName> {
  readonly factor: Name;
  /** Of the band's square, by this factor alone. */
  readonly share: number;
}

/** A band of less than a step of the charts to each side needs no word. */
const WIDE_KELVIN = 14;

/** Undefined where the band is narrow, or no runs are known. */
export const widestFactor = <Name extends string = FactorName>(
  curve: readonly CurvePoint[],
  runs: readonly { readonly factor: Name; readonly curve: readonly CurvePoint[] }[] = [],
): Widest<Name> | undefined => {
  const isCounted = curve.map(({ load }) => load !== undefined);
  const wide = curve.filter(({ low, high }, at) => isCounted[at] && high - low > 2 * WIDE_KELVIN);
  if (wide.length === 0) return;
  const squares = runs.map(({ factor, curve: moved }) => ({
    factor,
    square: curve.reduce(
      (sum, { oven }, at) => sum + (isCounted[at] ? ((moved[at]?.oven ?? oven) - oven) ** 2 : 0),
      0,
    ),
  }));
  const all = squares.reduce((sum, { square }) => sum + square, 0);
  const [first] = squares.toSorted((one, other) => other.square - one.square);
  return first === undefined || all === 0
    ? undefined
    : { factor: first.factor, share: first.square / all };
};
