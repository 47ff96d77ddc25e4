// Small made-up problems for property tests, drawn by fast-check.

import fc from 'fast-check';
import type { Lag, Problem, Task } from '../../src/solver/problem.ts';

interface GroupDraw {
  readonly minutes: readonly number[];
  readonly seats: readonly number[];
  readonly gaps: readonly number[];
  readonly due: number;
}

const groupDraw = (tasks: number, due: readonly [number, number]): fc.Arbitrary<GroupDraw> =>
  fc.record({
    minutes: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: tasks }),
    seats: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: tasks, maxLength: tasks }),
    gaps: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: tasks, maxLength: tasks }),
    due: fc.integer({ min: due[0], max: due[1] }),
  });

export interface ProblemWish {
  readonly groups: number;
  readonly tasks: number;
  readonly to: number;
  readonly due: readonly [number, number];
  readonly isSupplied: boolean;
}

/** Chains that end at a due milestone, two unlike units, one thing to hold, perhaps a store. */
export function problemDraw(wish: ProblemWish): fc.Arbitrary<Problem> {
  return fc
    .record({
      groups: fc.array(groupDraw(wish.tasks, wish.due), { minLength: 1, maxLength: wish.groups }),
      leaves: fc.integer({ min: Math.floor(wish.to / 2), max: wish.to }),
      size: fc.integer({ min: 3, max: 8 }),
      waitMost: fc.integer({ min: 2, max: 12 }),
    })
    .map((draw) => problemOf(wish, draw));
}

function problemOf(
  wish: ProblemWish,
  draw: {
    readonly groups: readonly GroupDraw[];
    readonly leaves: number;
    readonly size: number;
    readonly waitMost: number;
  },
): Problem {
  const tasks: Task[] = [];
  const lags: Lag[] = [];
  const chains = draw.groups.map((group, index) => chainOf(group, index, { tasks, lags }));
  const store = {
    id: 'store',
    size: draw.size,
    minutes: 1,
    lead: 3,
    seats: [[0]],
    holder: 1,
    waitLiked: 4,
    uses: chains.map((chain) => ({ task: chain[0]!, amount: 3, waitMost: draw.waitMost })),
  };
  return {
    from: 0,
    to: wish.to,
    tasks,
    lags,
    pools: [
      { id: 'place', capacity: 1 },
      { id: 'holder', capacity: 1 },
    ],
    units: [
      { id: 'long', windows: [{ from: 0, to: wish.to }] },
      { id: 'short', windows: [{ from: 2, to: draw.leaves }] },
    ],
    holds: chains.map((chain, index) => ({
      id: `hold ${index}`,
      pool: 0,
      first: chain[0]!,
      last: chain.at(-2)!,
    })),
    stores: wish.isSupplied ? [store] : [],
    groups: draw.groups.map((_, index) => ({
      id: `group ${index}`,
      towards: 'late',
      mayBeLeft: false,
      latePrice: 1000,
    })),
    prices: chains.map((chain) => ({ from: chain.at(-2)!, to: chain.at(-1)!, price: 1 })),
  };
}

function chainOf(
  draw: GroupDraw,
  group: number,
  into: { readonly tasks: Task[]; readonly lags: Lag[] },
): readonly number[] {
  const chain: number[] = [];
  draw.minutes.forEach((minutes, at) => {
    const seats = draw.seats[at] === 0 ? [] : draw.seats[at] === 1 ? [[0]] : [[0, 1]];
    into.tasks.push({ id: `${group}.${at}`, group, minutes, seats, takes: [] });
    chain.push(into.tasks.length - 1);
  });
  into.tasks.push({ id: `${group}.done`, group, minutes: 0, seats: [], takes: [], due: draw.due });
  chain.push(into.tasks.length - 1);
  chain.slice(1).forEach((to, at) => {
    const from = chain[at]!;
    const least = into.tasks[from]!.minutes;
    into.lags.push({ from, to, least, most: least + draw.gaps[at]! });
  });
  return chain;
}
