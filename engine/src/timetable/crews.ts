// Who may do what? Turns skills into the seats of a task. New hands never have lids or coals alone;
// the first seat is the one that answers for the job.

import type { Camp, Hand, Skill } from '../camp/camp.ts';
import { type Notice, notice } from '../notice/notice.ts';
import type { Seat } from '../solver/problem.ts';
import type { timetableCodes } from './codes.ts';

const RANK: Readonly<Record<Skill, number>> = { new: 0, steady: 1, 'camp-cook': 2 };

export interface Crews {
  /** Seats for `count` people, the first with the skill; `hand` (an id) takes the first seat. */
  seats(skill: Skill, count?: number, hand?: string): readonly Seat[];
  /** What had to be given to less than was wanted, once each. */
  notices(): readonly Notice[];
}

export function crewsOf(camp: Camp): Crews {
  const said = new Map<string, Notice>();
  const say = (each: Notice) => said.set(JSON.stringify(each), each);
  return {
    seats: (skill, count = 1, hand) => {
      const first = firstSeat(camp.hands, skill, hand, say);
      const others = byRank(camp.hands).map((each) => each.index);
      const wanted = Math.max(0, Math.ceil(count));
      if (wanted > camp.hands.length) {
        const values = { wanted, found: camp.hands.length };
        say(notice(nameOf('TIMETABLE_TOO_FEW_HANDS'), 'danger', {}, values));
      }
      const seats = Array.from({ length: Math.min(wanted, camp.hands.length) }, () => others);
      return seats.map((seat, at) => (at === 0 ? first : seat));
    },
    notices: () => [...said.values()],
  };
}

const nameOf = (code: keyof typeof timetableCodes) => code;

function firstSeat(
  hands: readonly Hand[],
  skill: Skill,
  hand: string | undefined,
  say: (notice: Notice) => void,
): Seat {
  const pinned = hands.findIndex((each) => each.id === hand);
  if (pinned >= 0) return [pinned];
  const ranked = byRank(hands);
  const able = ranked.filter((each) => RANK[each.hand.skill] >= RANK[skill]);
  if (able.length > 0) return able.map((each) => each.index);
  const best = Math.max(...ranked.map((each) => RANK[each.hand.skill]));
  say(notice(nameOf('TIMETABLE_ONLY_LESS_SKILLED'), 'doubt', {}, { skill }));
  return ranked.filter((each) => RANK[each.hand.skill] === best).map((each) => each.index);
}

/** The least skilled that will do comes first: it keeps the camp cook free. */
function byRank(hands: readonly Hand[]) {
  return hands
    .map((hand, index) => ({ hand, index }))
    .sort((a, b) => RANK[a.hand.skill] - RANK[b.hand.skill] || a.index - b.index);
}
