import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestByExhaustion } from '../../validation/timetable/exhaustive.ts';
import { problemDraw } from '../../validation/timetable/random-problem.ts';
import { faultsOf } from './check.ts';
import type { Plan, Problem } from './problem.ts';
import { searchPlan } from './search.ts';

const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);

const waitIn = (problem: Problem, plan: Plan) =>
  sum(problem.prices.map((p) => p.price * (plan.starts[p.to]! - plan.starts[p.from]!)));

/** Faults that the plan did not itself declare; a batch (-1) is declared at its first use. */
function undeclared(problem: Problem, plan: Plan) {
  const declared = new Set(plan.broken.map((each) => each.task));
  return faultsOf(problem, plan).filter(
    (fault) =>
      !fault.tasks.some((task) => task === -1 || declared.has(task)) || plan.broken.length === 0,
  );
}

describe('searching for a plan', () => {
  it('is as little late as exhaustive search on 60 tiny problems, and waits within half a minute of it', () => {
    const tiny = { groups: 2, tasks: 2, to: 26, due: [4, 14] as const, isSupplied: false };
    const gaps: number[] = [];
    const waits: number[] = [];
    for (const problem of fc.sample(problemDraw(tiny), { seed: 21, numRuns: 60 })) {
      const best = bestByExhaustion(problem, 10);
      if (best === undefined) continue;
      const { plan } = searchPlan(problem, { seed: 1, decodes: 400 });
      expect(plan.broken).toEqual([]);
      const late = sum(plan.lateBy);
      expect(late).toBeGreaterThanOrEqual(best.late);
      gaps.push(late - best.late);
      if (late === best.late) waits.push(waitIn(problem, plan) - best.wait);
    }
    expect(gaps.length).toBeGreaterThan(45);
    expect(Math.max(...gaps)).toBe(0);
    expect(Math.min(...waits)).toBeGreaterThanOrEqual(0);
    expect(sum(waits) / waits.length).toBeLessThanOrEqual(0.5);
  });

  it('passes the independent check, or declares what it breaks, on random problems', () => {
    const small = { groups: 4, tasks: 4, to: 90, due: [10, 60] as const, isSupplied: true };
    fc.assert(
      fc.property(problemDraw(small), fc.nat(1000), (problem, seed) => {
        const { plan } = searchPlan(problem, { seed, decodes: 6 });
        expect(undeclared(problem, plan)).toEqual([]);
        expect(plan.starts.every((start) => Number.isInteger(start))).toBe(true);
      }),
      { seed: 22, numRuns: 300 },
    );
  });

  it('gives the same plan for the same seed', () => {
    const small = { groups: 4, tasks: 4, to: 90, due: [10, 60] as const, isSupplied: true };
    for (const problem of fc.sample(problemDraw(small), { seed: 23, numRuns: 10 })) {
      const wish = { seed: 5, decodes: 12 };
      expect(searchPlan(problem, wish)).toEqual(searchPlan(problem, wish));
    }
  });
});
