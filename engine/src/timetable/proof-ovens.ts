// Proof that one oven would have to be in two places: neither of two loads can be out in time for the
// other, whichever goes first.

import { type Refusal, refusal } from '../notice/notice.ts';
import type { ProofDay } from './proof.ts';

interface Stay {
  readonly dish: string;
  readonly isPinned: boolean;
  /** Soonest that it can be empty again, and latest that it must be begun. */
  readonly emptied: number;
  readonly begun: number;
}

export function ovenProofs({ day, soonest, latest }: ProofDay): readonly Refusal[] {
  const { problem } = day;
  return problem.pools.flatMap((pool, index) => {
    const oven = /^oven (.+)$/.exec(pool.id)?.[1];
    if (oven === undefined || pool.capacity !== 1) return [];
    const stays = problem.holds
      .filter((hold) => hold.pool === index)
      .map((hold): Stay => {
        const dish = day.meanings[hold.first]!.dish ?? '';
        const work = day.dishes.find((each) => each.work.dish.id === dish)?.work;
        return {
          dish,
          isPinned: work?.dish.pins.oven === oven,
          emptied: soonest[hold.last]! + problem.tasks[hold.last]!.minutes,
          begun: latest[hold.first]!,
        };
      });
    return pairsIn(stays).map(([one, other]) => twice(oven, one, other));
  });
}

function pairsIn(stays: readonly Stay[]): readonly (readonly [Stay, Stay])[] {
  return stays.flatMap((one, at) =>
    stays
      .slice(at + 1)
      .filter((other) => one.emptied > other.begun && other.emptied > one.begun)
      .map((other) => [one, other] as const),
  );
}

function twice(oven: string, one: Stay, other: Stay): Refusal {
  const wish = (stay: Stay) => `menu.${stay.dish}.${stay.isPinned ? 'pins.oven' : 'serveAt'}`;
  const conflicts = [...new Set([wish(one), wish(other), `ovens.${oven}`])];
  const values = {
    other: other.dish,
    emptiedClockMinutes: Math.min(one.emptied, other.emptied),
    neededClockMinutes: Math.max(one.begun, other.begun),
  };
  return refusal('TIMETABLE_OVEN_TWICE', conflicts, { dish: one.dish, oven }, values);
}
