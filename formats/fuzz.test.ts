// A seeded share of the long fuzz (`fuzz-run.ts`), small enough for every test run.

import { describe, expect, it } from 'vitest';
import { planMeal } from '#engine';
import { smallDemoSources } from './demo.ts';
import { mutantOf } from './fuzz.ts';
import { faultOfPlan, faultOfRead, notFiniteIn } from './fuzz-judge.ts';
import { readCampFile } from './index.ts';

const MUTANTS = 500;
const PLANNED = 300;

describe('500 broken camp files', () => {
  const mutants = Array.from({ length: MUTANTS }, (_, index) =>
    mutantOf(smallDemoSources[index % smallDemoSources.length], index + 1),
  );
  const reads = mutants.map((mutant) => ({ mutant, read: readCampFile(mutant.text) }));

  it('are each read or refused with found, wanted and next, never thrown at', () => {
    for (const { mutant, read } of reads)
      expect(faultOfRead(read), `seed ${mutant.seed}: ${mutant.done.join(', ')}`).toBeUndefined();
  });

  it('are a fair mix: many are refused, some survive, many kinds of trouble are met', () => {
    const refused = reads.flatMap(({ read }) => (read.ok ? [] : [read]));
    const codes = new Set(refused.flatMap(({ troubles }) => troubles.map(({ code }) => code)));
    expect(refused.length).toBeGreaterThan(MUTANTS / 3);
    expect(MUTANTS - refused.length).toBeGreaterThan(MUTANTS / 20);
    expect(codes.size).toBeGreaterThan(15);
  });

  it('that survive among the first 300 are planned: no throw, no NaN, no dish gone unsaid', () => {
    const survivors = reads.slice(0, PLANNED).flatMap(({ mutant, read }) => {
      return read.ok ? [{ mutant, read }] : [];
    });
    expect(survivors.length).toBeGreaterThan(PLANNED / 5);
    for (const { mutant, read } of survivors) {
      const plan = planMeal(read.camp, read.menu, { assumed: read.assumed });
      expect(faultOfPlan(plan), `seed ${mutant.seed}: ${mutant.done.join(', ')}`).toBeUndefined();
    }
  });

  it('are the same for the same seed', () => {
    expect(mutantOf(smallDemoSources[0], 7)).toEqual(mutantOf(smallDemoSources[0], 7));
  });

  it('are judged by a walk that does find a NaN', () => {
    expect(notFiniteIn({ a: [{ b: Number.NaN }] })).toBe('.a.0.b (NaN)');
    expect(notFiniteIn({ a: [1, 'NaN', null] })).toBeUndefined();
  });
});
