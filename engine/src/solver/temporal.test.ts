import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lag, Problem, Task } from './problem.ts';
import { contradictionIn, longestPaths, ORIGIN } from './temporal.ts';

const task = (id: string, more: Partial<Task> = {}): Task => ({
  id,
  group: 0,
  minutes: 5,
  seats: [],
  takes: [],
  ...more,
});

const problem = (tasks: readonly Task[], lags: readonly Lag[]): Problem => ({
  from: 0,
  to: 200,
  tasks,
  lags,
  pools: [],
  units: [],
  holds: [],
  stores: [],
  groups: [{ id: 'all', towards: 'late', mayBeLeft: false, latePrice: 1 }],
  prices: [],
});

describe('contradictions between lags', () => {
  it('names the two tasks of a rise that must and must not end (by hand: 60 > 40)', () => {
    const lags = [
      { from: 0, to: 1, least: 60 },
      { from: 0, to: 1, least: 0, most: 40 },
      { from: 1, to: 2, least: 5 },
    ];
    const cycle = contradictionIn(problem([task('a'), task('b'), task('c')], lags), {
      isDueFixed: false,
    });
    expect([...cycle!].sort()).toEqual([0, 1]);
  });

  it('names the clock when a pin leaves too little room (by hand: 10 + 30 > 35)', () => {
    const tasks = [task('a', { release: 10 }), task('b', { fixed: 35 })];
    const cycle = contradictionIn(problem(tasks, [{ from: 0, to: 1, least: 30 }]), {
      isDueFixed: false,
    });
    expect([...cycle!].sort()).toEqual([ORIGIN, 0, 1]);
  });

  it('is silent where a cycle adds up to exactly nothing (by hand: 30 - 30)', () => {
    const lags = [{ from: 0, to: 1, least: 30, most: 30 }];
    const none = contradictionIn(problem([task('a'), task('b')], lags), { isDueFixed: true });
    expect(none).toBeUndefined();
  });

  it('does not hold a due time against what may be late', () => {
    const tasks = [task('a', { release: 50 }), task('b', { due: 60 })];
    const late = problem(tasks, [{ from: 0, to: 1, least: 30 }]);
    expect(contradictionIn(late, { isDueFixed: false })).toBeUndefined();
    expect(contradictionIn(late, { isDueFixed: true })).toBeDefined();
  });

  it('never calls lags impossible that were read off a plan', () => {
    const draw = fc.record({
      starts: fc.array(fc.integer({ min: 0, max: 150 }), { minLength: 2, maxLength: 8 }),
      pairs: fc.array(fc.tuple(fc.nat(7), fc.nat(7), fc.nat(20), fc.nat(20)), { maxLength: 20 }),
    });
    fc.assert(
      fc.property(draw, ({ starts, pairs }) => {
        const lags = pairs
          .filter(([from, to]) => from !== to && from < starts.length && to < starts.length)
          .map(([from, to, under, over]) => {
            const apart = starts[to]! - starts[from]!;
            return { from, to, least: apart - under, most: apart + over };
          });
        const tasks = starts.map((_, index) => task(`${index}`));
        expect(contradictionIn(problem(tasks, lags), { isDueFixed: false })).toBeUndefined();
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('proves every contradiction it names: the lags round the cycle add up to more than nothing', () => {
    const draw = fc.array(fc.tuple(fc.nat(5), fc.nat(5), fc.integer({ min: -30, max: 30 })), {
      minLength: 4,
      maxLength: 18,
    });
    let found = 0;
    fc.assert(
      fc.property(draw, (pairs) => {
        const lags = pairs
          .filter(([from, to]) => from !== to)
          .map(([from, to, least]) => ({ from, to, least }));
        const tasks = [0, 1, 2, 3, 4, 5].map((index) => task(`${index}`));
        const cycle = contradictionIn(problem(tasks, lags), { isDueFixed: false });
        if (cycle === undefined || cycle.includes(ORIGIN)) return;
        found += 1;
        const sum = cycle.reduce((total, from, at) => {
          const to = cycle[(at + 1) % cycle.length]!;
          const least = lags.filter((lag) => lag.from === from && lag.to === to);
          return total + Math.max(...least.map((lag) => lag.least));
        }, 0);
        expect(sum).toBeGreaterThan(0);
      }),
      { seed: 12, numRuns: 400 },
    );
    expect(found).toBeGreaterThan(50);
  });
});

describe('longest paths', () => {
  it('adds up the longer of two ways round (by hand)', () => {
    const paths = longestPaths(3, [
      { from: 0, to: 1, least: 10 },
      { from: 1, to: 2, least: 10 },
      { from: 0, to: 2, least: 15 },
    ]);
    expect(paths[2]).toBe(20);
    expect(paths[6]).toBe(Number.NEGATIVE_INFINITY);
  });
});
