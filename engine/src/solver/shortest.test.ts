import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Project, searchShortest } from './shortest.ts';

/** By hand: three tasks between a beginning and an end, one place, 4 + 3 + 2 minutes one by one. */
const oneByOne: Project = {
  minutes: [0, 4, 3, 2, 0],
  takes: [[], one(), one(), one(), []],
  arcs: [1, 2, 3].flatMap((task) => [
    { from: 0, to: task, least: 0 },
    { from: task, to: 4, least: [0, 4, 3, 2][task]! },
  ]),
  capacities: [1],
  horizon: 40,
};

function one() {
  return [{ pool: 0, amount: 1 }];
}

const withArcs = (arcs: Project['arcs']): Project => ({
  ...oneByOne,
  arcs: [...oneByOne.arcs, ...arcs],
});

/** Shortest span by trying every start of every task up to the horizon. */
function shortestByTrying(project: Project, horizon: number): number | undefined {
  const count = project.minutes.length;
  let best: number | undefined;
  const starts = new Array<number>(count).fill(0);
  const isKept = (upTo: number) =>
    project.arcs.every(
      ({ from, to, least }) => from > upTo || to > upTo || starts[to]! - starts[from]! >= least,
    );
  const isRoom = (upTo: number) =>
    Array.from({ length: horizon }, (_, minute) => minute).every((minute) =>
      project.capacities.every((capacity, pool) => {
        let used = 0;
        for (let task = 0; task <= upTo; task += 1) {
          if (minute < starts[task]! || starts[task]! + project.minutes[task]! <= minute) continue;
          for (const take of project.takes[task]!) if (take.pool === pool) used += take.amount;
        }
        return used <= capacity;
      }),
    );
  const place = (task: number): void => {
    if (task === count) {
      best = Math.min(best ?? Number.POSITIVE_INFINITY, starts[count - 1]!);
      return;
    }
    for (let start = 0; start <= (task === 0 ? 0 : horizon); start += 1) {
      if (best !== undefined && start >= best) break;
      starts[task] = start;
      if (isKept(task) && isRoom(task)) place(task + 1);
    }
  };
  place(0);
  return best;
}

const tinyProject = fc
  .record({
    minutes: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 3, maxLength: 3 }),
    amounts: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 3, maxLength: 3 }),
    lags: fc.array(fc.tuple(fc.nat(2), fc.nat(2), fc.integer({ min: -4, max: 4 })), {
      maxLength: 4,
    }),
  })
  .map(({ minutes, amounts, lags }): Project => {
    const tasks = [1, 2, 3];
    return {
      minutes: [0, ...minutes, 0],
      takes: [[], ...amounts.map((amount) => [{ pool: 0, amount }]), []],
      arcs: [
        ...tasks.flatMap((task) => [
          { from: 0, to: task, least: 0 },
          { from: task, to: 4, least: minutes[task - 1]! },
        ]),
        ...lags
          .filter(([from, to]) => from !== to)
          .map(([from, to, least]) => ({ from: from + 1, to: to + 1, least })),
      ],
      capacities: [2],
      horizon: 40,
    };
  });

describe('the shortest plan of a project', () => {
  it('puts what shares one place one after the other, and proves it by the work (by hand: 9)', () => {
    const found = searchShortest(oneByOne, { seed: 1, passes: 50 });
    expect(found).toMatchObject({ status: 'proven', span: 9 });
  });

  it('proves that no plan exists where neither of two can be first (by hand)', () => {
    const close = [
      { from: 1, to: 2, least: -2 },
      { from: 2, to: 1, least: -2 },
    ];
    const found = searchShortest(withArcs(close), { seed: 1, passes: 50 });
    expect(found).toMatchObject({ status: 'impossible', why: { clash: [1, 2], pool: 0 } });
  });

  it('proves that no plan exists where the lags alone go round in a circle (by hand: 5 - 3 > 0)', () => {
    const round = [
      { from: 1, to: 2, least: 5 },
      { from: 2, to: 1, least: -3 },
    ];
    const found = searchShortest(withArcs(round), { seed: 1, passes: 50 });
    expect(found.status).toBe('impossible');
  });

  it('is as short as trying every start on 150 tiny projects with lags at most, and calls none impossible that has a plan', () => {
    let impossible = 0;
    fc.assert(
      fc.property(tinyProject, (project) => {
        const best = shortestByTrying(project, 14);
        const found = searchShortest(project, { seed: 3, passes: 400 });
        if (best === undefined) {
          expect('starts' in found).toBe(false);
          if (found.status === 'impossible') impossible += 1;
        } else expect(found).toMatchObject({ span: best });
      }),
      { seed: 31, numRuns: 150 },
    );
    expect(impossible).toBeGreaterThan(5);
  });

  it('gives the same plan for the same seed, and tells each better one on the way', () => {
    const told: number[] = [];
    const search = () =>
      searchShortest(withArcs([{ from: 1, to: 2, least: 6 }]), {
        seed: 8,
        passes: 200,
        onBetter: ({ cost }) => told.push(cost),
      });
    expect(search()).toEqual(search());
    expect(told.length).toBeGreaterThan(1);
  });
});
