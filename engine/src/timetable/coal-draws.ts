// Draws on lit coals: how long may each wait before it is laid, and what has to last too long?

import { notice } from '../notice/notice.ts';
import * as habits from './habits.ts';
import { cookMinutes, type OvenWork } from './oven-work.ts';
import { spreadOf } from './round.ts';

/** Lit coals: they must outlast the stretch until more are added or the load comes out. */
export function drawCoals(
  at: OvenWork,
  task: number,
  draw: { readonly minute: number; readonly amount: number },
): void {
  const amount = Math.round(draw.amount) * at.wave.loads.length;
  if (amount <= 0) return;
  const out = Math.round(at.work.coals.loadInMinute) + cookMinutes(at.dish, at.work);
  const next = at.work.coals.additions.find((each) => each.minute > draw.minute + 1)?.minute ?? out;
  const needed = Math.min(next, out) - draw.minute;
  const isFed = at.making.request.camp.fuel.kind === 'wood-coals';
  sayIfOld(at, Math.max(needed, longestOn(at, out)));
  // The last oven of a round gets its coals so much later.
  const life = Math.max(0, Math.floor(at.making.request.coalLife) - spreadOf(at.wave));
  const left = life - Math.ceil(needed);
  if (isFed) {
    at.making.uses.push({ task, amount, waitMost: Number.POSITIVE_INFINITY });
    return;
  }
  const waitWell = Math.min(life, Math.max(habits.COALS_WAIT_ALWAYS, left));
  at.making.uses.push({ task, amount, waitMost: life, waitWell });
}

/** Above and below each by itself: coals that are added above do nothing for those under the floor. */
function longestOn({ work: { coals } }: OvenWork, out: number): number {
  const stretches = (['above', 'below'] as const).flatMap((side) => {
    const laid = coals[side].pieces > 0 ? [0] : [];
    const added = coals.additions.flatMap((each) => (each[side] > 0 ? [each.minute] : []));
    const on = [...laid, ...added].filter((minute) => minute < out);
    return on.map((minute, index) => (on[index + 1] ?? out) - minute);
  });
  return Math.max(0, ...stretches);
}

/** Once for each load: coals that must last well past their life before fresh ones come. */
function sayIfOld(at: OvenWork, neededMinutes: number): void {
  const { notices, request } = at.making;
  const isKnown = notices.some(
    (each) => each.code === 'TIMETABLE_COALS_OLD' && each.about.task === at.work.load.id,
  );
  if (isKnown || neededMinutes <= request.coalLife + habits.COALS_WAIT_ALWAYS) return;
  const about = { dish: at.dish.dish.id, oven: at.work.load.oven, task: at.work.load.id };
  const values = { neededMinutes, lifeMinutes: request.coalLife };
  notices.push(notice('TIMETABLE_COALS_OLD', 'doubt', about, values));
}
