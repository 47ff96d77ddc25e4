// What of a bake's inside is kept in the plan: its figures minute by minute and a few cuts through it.

import { kelvin, metres, minutes, ratio } from '../quantity/unit.ts';
import type { InsideCutPlan, InsidePlan } from './bake-plan.ts';
import type { BreadOutcome } from './bread-inside.ts';
import type { InsideCut } from './inside/index.ts';

/** Cuts at a quarter, a half and three quarters of the bake, and when it is done. */
const CUT_SHARES = [0.25, 0.5, 0.75, 1];

/** As the plan carries it: the run up to some minutes after `done`. */
export function insidePlan(found: BreadOutcome, done: number, coreKelvin: number): InsidePlan {
  const { run, topBurnt, bottomBurnt } = found;
  const wanted = new Set(CUT_SHARES.map((share) => Math.max(1, Math.round(share * done))));
  const last = run.moments[Math.min(run.moments.length - 1, Math.round(done))];
  const first = firstToBurn(topBurnt, bottomBurnt);
  return {
    core: kelvin(coreKelvin),
    moments: run.moments.map((now) => ({
      minute: minutes(now.minute),
      core: kelvin(now.coreKelvin),
      top: kelvin(now.topKelvin),
      bottom: kelvin(now.bottomKelvin),
      topColour: now.topColour,
      bottomColour: now.bottomColour,
      topCrust: metres(now.topCrust),
      bottomCrust: metres(now.bottomCrust),
      height: metres(now.height),
    })),
    cuts: run.cuts.filter((cut) => wanted.has(cut.minute)).map(cutPlan),
    ...(found.through === undefined ? {} : { through: minutes(found.through) }),
    ...(found.topBrown === undefined ? {} : { topBrown: minutes(found.topBrown) }),
    ...(found.bottomBrown === undefined ? {} : { bottomBrown: minutes(found.bottomBrown) }),
    ...(first === undefined ? {} : { firstToBurn: first }),
    loss: ratio(last?.loss ?? 0),
  };
}

const cutPlan = ({ minute, edges, kelvins }: InsideCut): InsideCutPlan => ({
  minute: minutes(minute),
  edges: edges.map(metres),
  kelvins: kelvins.map(kelvin),
});

function firstToBurn(top: number | undefined, bottom: number | undefined) {
  if (bottom !== undefined && bottom <= (top ?? bottom))
    return { face: 'bottom' as const, minute: minutes(bottom) };
  return top === undefined ? undefined : { face: 'top' as const, minute: minutes(top) };
}
