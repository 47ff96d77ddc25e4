// What is different from the sheet that everybody has in their head, and how much of a nuisance is it?

import type { DaySheet, Job } from '../day-sheet.ts';
import type { Move } from './slip.ts';
import type { DayState } from './state.ts';

export function movesBetween(old: DaySheet, next: DaySheet, state: DayState): readonly Move[] {
  const isOpen = ({ id }: Job) => (state.get(id)?.state ?? 'open') === 'open';
  const were = new Map(old.jobs.filter(isOpen).map((job) => [job.id, job]));
  const are = new Map(next.jobs.filter(isOpen).map((job) => [job.id, job]));
  const moves = [...new Set([...were.keys(), ...are.keys()])].flatMap((id): readonly Move[] => {
    const was = were.get(id);
    const is = are.get(id);
    const handsWere = was?.hands ?? [];
    const hands = is?.hands ?? [];
    const isSame =
      was?.start === is?.start && handsWere.toSorted().join() === hands.toSorted().join();
    if (isSame) return [];
    return [
      {
        job: id,
        ...(was === undefined ? {} : { was: was.start }),
        ...(is === undefined ? {} : { now: is.start }),
        handsWere,
        hands,
      },
    ];
  });
  return moves.sort((one, other) => (one.now ?? one.was ?? 0) - (other.now ?? other.was ?? 0));
}

/** Nobody minds so little [min]. */
const DEAD_BAND = 3;
/** Another pair of hands, work that is new or falls away: as much as so many minutes. */
const HAND_PRICE = 5;

/** Less is better; minutes past the dead band, and people who have to be told. */
export function changeCost(moves: readonly Move[]): number {
  return moves.reduce((sum, { was, now, handsWere, hands }) => {
    const isKnown = was !== undefined && now !== undefined;
    const off = isKnown ? Math.max(0, Math.abs(now - was) - DEAD_BAND) : HAND_PRICE;
    const isHanded = handsWere.toSorted().join() !== hands.toSorted().join();
    return sum + off + (isHanded ? HAND_PRICE : 0);
  }, 0);
}
