// What does something that stands still see of a plate while plate, coals and it are turned against
// each other? The mean over its stay, in its own frame. Sources: plate.ts; turning is a phase.

import type { Harmonics } from './patch.ts';
import {
  coolPlate,
  meanBetween,
  type PlateSolver,
  plateLater,
  settledPlate,
  turnedBy,
} from './plate.ts';

/** A while in which nothing is turned. */
export interface Dwell {
  readonly seconds: number;
  /** On the plate, in the plate's own frame [W/m2]. */
  readonly flux: Harmonics;
  /** From the plate's frame to that of the one who looks, anticlockwise. */
  readonly toSeen: number;
  /** False while nobody looks yet: the plate only warms. */
  readonly isSeen: boolean;
}

const STEP_SECONDS = 200; // under the time constant of the slowest one-sided pattern: 0.5 K (tests)
const MOST_STEPS = 5; // of longer ones: after the first the plate has all but settled

/** Mean of the seen dwells [K above the air], from a cool plate on. */
export const meanSeen = (
  solverFor: (stepSeconds: number) => PlateSolver,
  dwells: readonly Dwell[],
): Harmonics => {
  let kelvins = coolPlate(solverFor(STEP_SECONDS));
  const sum = coolPlate(solverFor(STEP_SECONDS));
  const whole = dwells.reduce((sum, dwell) => sum + (dwell.isSeen ? dwell.seconds : 0), 0);
  for (const dwell of dwells) {
    if (dwell.seconds <= 0) continue;
    const passed = dwelt(solverFor, kelvins, dwell);
    kelvins = passed.kelvins;
    if (!dwell.isSeen) continue;
    add(sum, turnedBy(passed.mean, dwell.toSeen), dwell.seconds / whole);
  }
  return whole > 0 ? sum : kelvins;
};

/** Harmonics from here on settle within half a minute on any oven's iron: no steps for them. */
const QUICK = 5;

const dwelt = (
  solverFor: (stepSeconds: number) => PlateSolver,
  start: Harmonics,
  { seconds, flux }: Dwell,
) => {
  const steps = Math.min(MOST_STEPS, Math.ceil(seconds / STEP_SECONDS));
  const solver = solverFor(seconds / steps);
  let slow = someOf(start, 0, QUICK);
  const slowFlux = someOf(flux, 0, QUICK);
  for (let step = 0; step < steps; step++) slow = plateLater(solver, slow, slowFlux);
  const quick = someOf(settledPlate(solver, flux), QUICK);
  const kelvins = {
    along: [...slow.along, ...quick.along],
    across: [...slow.across, ...quick.across],
  };
  return { kelvins, mean: meanBetween(solver, flux, { start, end: kelvins, seconds }) };
};

const someOf = ({ along, across }: Harmonics, from: number, to?: number): Harmonics => ({
  along: along.slice(from, to),
  across: across.slice(from, to),
});

const add = (to: Harmonics, what: Harmonics, weight: number): void => {
  for (const part of ['along', 'across'] as const)
    for (const [harmonic, values] of what[part].entries()) {
      const target = to[part][harmonic]!;
      for (let ring = 0; ring < target.length; ring++) target[ring]! += weight * values[ring]!;
    }
};
