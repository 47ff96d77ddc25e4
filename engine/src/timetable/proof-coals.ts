// Proof that the chimneys can't make the coals in time: however they are shared out, each chimney gives
// one chimneyful for every lighting and ashing over since the first hand could begin.

import { type Refusal, refusal } from '../notice/notice.ts';
import type { Store } from '../solver/problem.ts';
import type { ProofDay } from './proof.ts';
import { startWish, unique } from './wishes.ts';

export function coalProofs(room: ProofDay): readonly Refusal[] {
  return room.day.problem.stores.flatMap((store) => tooFew(room, store));
}

/** The first minute by which more coals must be laid than can have been made. */
function tooFew({ request, day, latest }: ProofDay, store: Store): readonly Refusal[] {
  const { problem } = day;
  const made = store.minutes + store.lead;
  const chimneys = store.holder === undefined ? undefined : problem.pools[store.holder]?.capacity;
  if (chimneys === undefined || made <= 0 || !Number.isFinite(store.size)) return [];
  const opens = store.seats.map((seat) =>
    Math.min(...seat.map((unit) => problem.units[unit]!.windows[0]?.from ?? problem.from)),
  );
  const begins = Math.max(problem.from, ...opens);
  const uses = store.uses.toSorted((one, other) => latest[one.task]! - latest[other.task]!);
  let needed = 0;
  for (const use of uses) {
    needed += use.amount;
    const by = latest[use.task]!;
    const there = chimneys * store.size * Math.max(0, Math.floor((by - begins) / made));
    if (needed <= there) continue;
    const dish = day.meanings[use.task]!.dish;
    const conflicts = unique([`menu.${dish}.serveAt`, 'gear.chimneys', startWish(request)]);
    const values = { neededCoals: needed, thereCoals: there, byClockMinutes: by };
    return [
      refusal('TIMETABLE_COALS_TOO_FEW', conflicts, dish === undefined ? {} : { dish }, values),
    ];
  }
  return [];
}
