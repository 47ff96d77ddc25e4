import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problemDraw } from '../../validation/timetable/random-problem.ts';
import { faultsOf } from './check.ts';
import { costOf } from './cost.ts';
import { learner } from './learned-plan.ts';
import { type Found, searchPlan } from './search.ts';

const supplied = { groups: 5, tasks: 4, to: 120, due: [30, 90] as const, isSupplied: true };

describe('improving a plan by large steps', () => {
  it('keeps lags, units, pools, holds and stores, and is never dearer, on 150 random problems', () => {
    let better = 0;
    fc.assert(
      fc.property(problemDraw(supplied), fc.nat(1000), (problem, seed) => {
        const first = searchPlan(problem, { seed, decodes: 1 });
        const found = searchPlan(problem, { seed, decodes: 40 });
        expect(found.cost).toBeLessThanOrEqual(first.cost);
        expect(found.cost).toBeCloseTo(costOf(problem, found.plan), 9);
        if (found.plan.broken.length === 0) expect(faultsOf(problem, found.plan)).toEqual([]);
        if (found.cost < first.cost) better += 1;
      }),
      { seed: 41, numRuns: 150 },
    );
    expect(better).toBeGreaterThan(15);
  });

  it('goes on by learning where there is work enough: sound, no dearer, the same for the same seed', () => {
    let proven = 0;
    const drawn = fc.sample(problemDraw({ ...supplied, groups: 4, tasks: 3 }), {
      seed: 43,
      numRuns: 300,
    });
    const late = drawn.filter(({ groups }) => groups.every(({ towards }) => towards === 'late'));
    for (const problem of late.slice(0, 25)) {
      const wish = { seed: 2, decodes: 250, learner };
      const steps = searchPlan(problem, { seed: 2, decodes: 1 });
      const found = searchPlan(problem, wish);
      expect(found.cost).toBeLessThanOrEqual(steps.cost);
      expect(found.cost).toBeCloseTo(costOf(problem, found.plan), 9);
      if (found.plan.broken.length === 0) expect(faultsOf(problem, found.plan)).toEqual([]);
      if (proven < 2) expect(searchPlan(problem, wish)).toEqual(found);
      // What is said to be the best is not beaten by other orders and seeds.
      if (found.gap !== 0) continue;
      proven += 1;
      for (const seed of [7, 8, 9]) {
        const other = searchPlan(problem, { seed, decodes: 60 });
        if (other.plan.batches.length > found.plan.batches.length + 1) continue;
        expect(other.cost).toBeGreaterThanOrEqual(found.cost - 1e-9);
      }
    }
    expect(proven).toBeGreaterThan(3);
  });

  it('tells of every better plan as it comes, and ends where it is stopped', () => {
    for (const problem of fc.sample(problemDraw(supplied), { seed: 42, numRuns: 20 })) {
      const told: Found[] = [];
      const wish = { seed: 3, decodes: 60, learner, onBetter: (found: Found) => told.push(found) };
      const whole = searchPlan(problem, wish);
      const costs = told.map(({ cost }) => cost);
      expect(costs).toEqual([...costs].sort((one, other) => other - one));
      expect(costs.at(-1)).toBe(whole.cost);
      let asked = 0;
      const isStopped = () => {
        asked += 1;
        return asked > 5;
      };
      const cut = searchPlan(problem, { seed: 3, decodes: 60, learner, isStopped });
      expect(cut.cost).toBeGreaterThanOrEqual(whole.cost);
      expect(asked).toBeLessThan(8);
    }
  });
});
