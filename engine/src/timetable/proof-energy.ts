// Proof by adding up: the work that must lie in some stretch of time is more than the hands (or all
// who may do it) have minutes there, or the tables have room.

import { type Refusal, refusal } from '../notice/notice.ts';
import type { Task } from '../solver/problem.ts';
import type { ProofDay } from './proof.ts';
import { unique, wishOf } from './wishes.ts';

interface Demand {
  readonly task: number;
  readonly soonest: number;
  readonly latest: number;
  readonly minutes: number;
  readonly amount: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

export function energyProofs(room: ProofDay): readonly Refusal[] {
  for (const seat of kindsOfSeat(room)) {
    const found = handsShort(room, seat);
    if (found !== undefined) return [found];
  }
  const table = tableShort(room);
  return table === undefined ? [] : [table];
}

/** Distinct sets of people that some work is bound to; everybody first. */
function kindsOfSeat({ day }: ProofDay): readonly ReadonlySet<number>[] {
  const { problem } = day;
  const all = problem.units.map((_, unit) => unit);
  const seats = [all, ...problem.tasks.flatMap((task) => task.seats)];
  const byKey = new Map(seats.map((seat) => [[...seat].sort().join(), new Set(seat)]));
  return [...byKey.values()].sort((one, other) => other.size - one.size).slice(0, MOST_SEATS);
}

const MOST_SEATS = 8;

function handsShort(room: ProofDay, seat: ReadonlySet<number>): Refusal | undefined {
  const { problem } = room.day;
  const seatsIn = (task: Task) =>
    task.seats.filter((each) => each.every((unit) => seat.has(unit))).length;
  const demands = demandsOf(room, seatsIn);
  const there = ({ from, to }: Stretch) =>
    problem.units.reduce((sum, unit, index) => {
      const open = unit.windows.map((each) => overlap(each.from, each.to, from, to));
      return seat.has(index) ? sum + open.reduce((all, each) => all + each, 0) : sum;
    }, 0);
  const found = overfull(demands, there);
  if (found === undefined) return undefined;
  const { stretch, work, room: handMinutes, tasks } = found;
  const values = {
    workMinutes: work,
    handMinutes,
    fromClockMinutes: stretch.from,
    toClockMinutes: stretch.to,
    hands: [...seat].map((unit) => problem.units[unit]!.id).join(' '),
    isAll: seat.size === problem.units.length ? 1 : 0,
  };
  const dishes = unique(tasks.map((task) => room.day.meanings[task]!.dish));
  const conflicts = [
    ...[...seat].map((unit) => `hands.${problem.units[unit]!.id}`),
    ...dishes.map((dish) => `menu.${dish}.serveAt`),
  ];
  const about = dishes.length === 1 ? { dish: dishes[0]! } : {};
  const code = handMinutes <= 0 ? 'TIMETABLE_NOBODY_THERE' : 'TIMETABLE_HOURS_TOO_SHORT';
  return refusal(code, conflicts, about, values);
}

function tableShort(room: ProofDay): Refusal | undefined {
  const { problem } = room.day;
  const table = problem.pools.findIndex(({ id }) => id === 'table');
  const pool = problem.pools[table];
  if (pool === undefined) return undefined;
  const amountOf = (task: Task) =>
    task.takes.reduce((sum, take) => sum + (take.pool === table ? take.amount : 0), 0);
  const demands = demandsOf(room, amountOf);
  const found = overfull(demands, ({ from, to }) => pool.capacity * (to - from));
  if (found === undefined) return undefined;
  const { stretch, work, room: tableMinutes, tasks } = found;
  const values = {
    workMinutes: work,
    tableMinutes,
    fromClockMinutes: stretch.from,
    toClockMinutes: stretch.to,
  };
  const conflicts = unique(['gear.tables', ...tasks.map((task) => wishOf(room.day, task))]);
  return refusal('TIMETABLE_TABLE_TOO_SMALL', conflicts, {}, values);
}

function demandsOf(
  { day, soonest, latest }: ProofDay,
  amountOf: (task: Task) => number,
): readonly Demand[] {
  const { problem } = day;
  return problem.tasks.flatMap((task, index): readonly Demand[] => {
    const amount = amountOf(task);
    if (amount <= 0 || task.minutes <= 0 || problem.groups[task.group]!.mayBeLeft) return [];
    const own = { soonest: soonest[index]!, latest: latest[index]! };
    return [{ task: index, ...own, minutes: task.minutes, amount }];
  });
}

interface Overfull {
  readonly stretch: Stretch;
  readonly work: number;
  readonly room: number;
  readonly tasks: readonly number[];
}

/** Stretches between a soonest start and a latest end; on a long day only some of them are tried. */
function overfull(
  demands: readonly Demand[],
  there: (stretch: Stretch) => number,
): Overfull | undefined {
  const begins = thinned(demands.map((each) => each.soonest));
  const ends = thinned(demands.map((each) => each.latest + each.minutes));
  for (const from of begins) {
    for (const to of ends) {
      if (to <= from) continue;
      const parts = demands.map((each) => each.amount * mustLie(each, from, to));
      const work = parts.reduce((sum, part) => sum + part, 0);
      if (work === 0) continue;
      const room = there({ from, to });
      if (work <= room) continue;
      const tasks = demands.flatMap(({ task }, at) => (parts[at]! > 0 ? [task] : []));
      return { stretch: { from, to }, work, room, tasks };
    }
  }
  return undefined;
}

/** Any choice of stretches is sound; more of them prove more. */
function thinned(minutes: readonly number[]): readonly number[] {
  const sorted = [...new Set(minutes)].sort((one, other) => one - other);
  const step = Math.max(1, Math.ceil(sorted.length / MOST_ENDS));
  return sorted.filter((_, at) => at % step === 0 || at === sorted.length - 1);
}

const MOST_ENDS = 60;

/** Least part of the task that lies in the stretch, wherever in its room it stands. */
function mustLie({ soonest, latest, minutes }: Demand, from: number, to: number): number {
  const early = overlap(soonest, soonest + minutes, from, to);
  const late = overlap(latest, latest + minutes, from, to);
  return Math.min(early, late);
}

const overlap = (from: number, to: number, start: number, end: number) =>
  Math.max(0, Math.min(to, end) - Math.max(from, start));
