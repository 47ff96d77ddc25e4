// When does something that goes at a rate reach its end? Sums a rate over an oven's curve.
// Source: ours; the lid's lead over the inside is a judgement.

import type { CurvePoint } from '../coals/coal-plan.ts';
import { type Kelvin, kelvin, type Minutes } from '../quantity/unit.ts';

export interface OvenNow {
  readonly oven: Kelvin;
  readonly lid: Kelvin;
}

/** An oven that stays as it is, or one that runs along a curve from the minute of loading. */
export type Pace =
  | { readonly steady: OvenNow; readonly longest: number }
  | { readonly curve: readonly CurvePoint[]; readonly from: number; readonly longest: number };

/** With most coals above, the lid's face is this much hotter than the inside: a judgement. */
const LID_OVER_OVEN_KELVIN = 50;

/** The simulated oven where there is one, else an oven that stands at the wanted temperature. */
export function paceOf(
  asked: {
    readonly wanted: Kelvin;
    readonly curve?: readonly CurvePoint[];
    readonly loadInMinute?: Minutes;
  },
  longest: number,
): Pace {
  const { curve, wanted } = asked;
  if (curve !== undefined && curve.length > 0) {
    return { curve, from: asked.loadInMinute ?? 0, longest };
  }
  return { steady: { oven: wanted, lid: kelvin(wanted + LID_OVER_OVEN_KELVIN) }, longest };
}

/**
 * Minutes after loading until the shares add up to 1; undefined if not within `longest`.
 *
 * Trapezoids between the curve's points; past its end the last point holds.
 */
export function minutesUntil(pace: Pace, shareAt: (now: OvenNow) => number): number | undefined {
  if ('steady' in pace) return within(1 / shareAt(pace.steady), pace.longest);
  const { curve, from, longest } = pace;
  let done = 0;
  let before: CurvePoint | undefined;
  for (const point of curve) {
    if (before !== undefined && from < point.minute) {
      const start = Math.max(from, before.minute);
      const left = mixed(before, point, start);
      const gained = ((shareAt(left) + shareAt(point)) / 2) * (point.minute - start);
      if (1 <= done + gained) {
        return within(start - from + ((1 - done) / gained) * (point.minute - start), longest);
      }
      done += gained;
    }
    before = point;
  }
  if (before === undefined) return undefined;
  const start = Math.max(from, before.minute);
  return within(start - from + (1 - done) / shareAt(before), longest);
}

const within = (found: number, longest: number) => (found <= longest ? found : undefined);

function mixed(before: CurvePoint, after: CurvePoint, minute: number): OvenNow {
  const span = after.minute - before.minute;
  const share = span > 0 ? (minute - before.minute) / span : 1;
  return {
    oven: (before.oven + (after.oven - before.oven) * share) as Kelvin,
    lid: (before.lid + (after.lid - before.lid) * share) as Kelvin,
  };
}
