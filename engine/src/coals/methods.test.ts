import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import published from '../../validation/coals/method-splits.json' with { type: 'json' };
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import { isRefusal } from '../notice/notice.ts';
import { kelvin } from '../quantity/unit.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { layCoals } from './lay-coals.ts';
import { usualLoad } from './usual-load.ts';

const SEED = 20266;
const BOIL = 373.12;

const asked = (method: HeatMethod, change: Change = {}): CoalRequest => {
  const request = coalRequest({ ...change, method });
  const isPot = method === 'simmer' || method === 'boil';
  return {
    ...request,
    load: usualLoad(request, method),
    ironAtStart: method === 'keep-warm' ? request.wish.wanted : request.ironAtStart,
    wish: { ...request.wish, ...(isPot ? { wanted: kelvin(BOIL + 4) } : {}) },
  };
};

const planOf = (method: HeatMethod, change: Change = {}): CoalPlan => {
  const plan = layCoals(asked(method, change));
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

const codesOf = (plan: CoalPlan) => plan.notices.map(({ code }) => code);
const set = ({ above, below }: CoalPlan) => above.pieces + below.pieces;
const noticeOf = (plan: CoalPlan, code: string) => plan.notices.find((each) => each.code === code);

const LONG: Readonly<Partial<Record<HeatMethod, Change>>> = {
  bake: { heatFahrenheit: 350, stay: 40 },
  roast: { heatFahrenheit: 350, stay: 90 },
  simmer: { stay: 180 },
  boil: { stay: 240 },
  fry: { heatFahrenheit: 400, stay: 20 },
};

describe('coals shared by the method of heat', () => {
  const sharesOf = (method: string) =>
    published.rows.filter((row) => row[0] === method).map((row) => Number(row[1]));

  it.each(['bake', 'roast', 'simmer', 'boil', 'fry'] as const)(
    '%s lies in a 14 inch oven as some page has it, to within rounding (splitByMethod)',
    (method) => {
      const plan = planOf(method, { ...LONG[method], inches: 14 });
      const share = plan.above.pieces / set(plan);
      const nearest = Math.min(...sharesOf(method).map((each) => Math.abs(each - share)));
      expect(nearest).toBeLessThanOrEqual(1 / set(plan));
    },
  );

  it('never lays a coal on the lid of a boil or a fry, first or later, whatever the site (splitByMethod: 0 above)', () => {
    fc.assert(
      fc.property(
        fc.record({
          inches: fc.constantFrom(8, 10, 12, 14, 16),
          wind: fc.double({ min: 0, max: 5, noNaN: true }),
          airKelvin: fc.double({ min: 260, max: 310, noNaN: true }),
          stay: fc.integer({ min: 10, max: 180 }),
          heatFahrenheit: fc.integer({ min: 325, max: 475 }),
          wood: fc.boolean(),
        }),
        fc.constantFrom<HeatMethod>('boil', 'fry'),
        (change, method) => {
          const plan = layCoals(asked(method, change));
          if (isRefusal(plan)) return;
          expect(plan.above.pieces).toBe(0);
          for (const addition of plan.additions) expect(addition.above).toBe(0);
          for (const { ifCool } of plan.checks)
            expect(ifCool.map((move) => move.do)).not.toContain('add-above');
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('keeps a dish warm from above alone, with fewer than a third of a bake’s coals (common practice, no source)', () => {
    const warm = planOf('keep-warm', { heatFahrenheit: 194, stay: 60 });
    expect(warm.below.pieces).toBe(0);
    expect(warm.above.pieces).toBeLessThanOrEqual(set(planOf('bake')) / 3);
    expect(warm.curve.at(-1)!.load).toBeGreaterThan(333.15); // 60 °C, foodsafety-chart's 140 °F
  });
});

describe('a fry', () => {
  it.each([10, 12, 14, 16])(
    'of %i inch wants about as many coals as inches: fewer for a 375 F floor, more for a 475 F one (splitByMethod: count = D)',
    (inches) => {
      const low = planOf('fry', { inches, heatFahrenheit: 375, stay: 30 });
      const high = planOf('fry', { inches, heatFahrenheit: 475, stay: 30 });
      expect(set(low)).toBeLessThanOrEqual(inches);
      expect(set(high)).toBeGreaterThanOrEqual(inches);
    },
  );

  it('loses more with its lid off than a bake at that heat with it on, and no heat from the books (0.1 %)', () => {
    const plan = planOf('fry', { stay: 30 });
    expect(Math.abs(plan.energy.errorRatio)).toBeLessThan(1e-3);
    expect(plan.curve.every((point) => point.oven === point.floor)).toBe(true);
    expect(plan.curve.at(-1)!.lid).toBeLessThan(plan.curve.at(-1)!.floor - 100);
  });

  it('reckons its count with the lid off from the first line on: no line moves more than a third of it', () => {
    const { because, below } = planOf('fry', { heatFahrenheit: 400, stay: 30 }).reckoning;
    for (const { coals } of because) expect(Math.abs(coals)).toBeLessThanOrEqual(below / 3);
  });

  it('goes into a hot oven, since fat is heated first (common practice, no source)', () => {
    expect(planOf('fry', { stay: 20 }).loadInMinute).toBeGreaterThanOrEqual(10);
  });

  it('that wants more than lies under an 8 inch floor says so, and how soon the lid heats it', () => {
    const plan = planOf('fry', { inches: 8, heatFahrenheit: 400, stay: 30 });
    const limit = noticeOf(plan, 'COALS_BELOW_IS_FULL');
    expect(limit?.values.below).toBe(plan.below.pieces);
    expect(Number(limit?.values.minute)).toBeLessThan(plan.loadInMinute);
  });
});

describe('a boil', () => {
  it('that is slow for want of room says when it boils, and what coals on the lid would do', () => {
    const plan = planOf('boil', { stay: 100 });
    const limit = noticeOf(plan, 'COALS_BELOW_IS_FULL');
    const boils = plan.curve.find((point) => (point.load ?? 0) >= BOIL - 2)!.minute;
    expect(Math.abs(Number(limit?.values.minute) - boils)).toBeLessThanOrEqual(1);
    expect(Number(limit?.values.lidCoals)).toBeGreaterThan(0);
    const sooner = planOf('simmer', { stay: 100 });
    expect(sooner.curve.find((point) => (point.load ?? 0) >= BOIL - 2)!.minute).toBeLessThan(boils);
  });

  it('that fits is not spoken of, and comes up in half its time or five quarters of an hour', () => {
    const plan = planOf('boil', { inches: 14, stay: 240 });
    expect(codesOf(plan)).not.toContain('COALS_BELOW_IS_FULL');
    expect(plan.curve.find((point) => (point.load ?? 0) >= BOIL - 2)!.minute).toBeLessThan(80);
  });

  it('that no coals below can keep is refused, and the heat that they give is named', () => {
    const answer = layCoals(asked('boil', { inches: 8, wind: 8, airKelvin: 255, stay: 180 }));
    expect(isRefusal(answer) && answer.code).toBe('COALS_HEAT_OUT_OF_REACH');
    expect(isRefusal(answer) && Number(answer.values.nearestKelvin)).toBeLessThan(BOIL);
  });
});

describe('the fewest coals', () => {
  it.each<[HeatMethod, number]>([
    ['bake', 350],
    ['bake', 425],
    ['roast', 350],
    ['fry', 400],
  ])(
    'for a %s at %i F: with two fewer, pinned, the heat stays below what ours holds',
    (method, heatFahrenheit) => {
      const change = { heatFahrenheit, stay: 60, preheat: false }; // so that both go in at once
      const ours = planOf(method, change);
      const { pieces: above } = ours.above;
      const { pieces: below } = ours.below;
      const fewer = planOf(method, {
        ...change,
        pins: { above: Math.max(0, above - 1), below: below - (above > 0 ? 1 : 2) },
      });
      const mean = (plan: CoalPlan) => {
        const half = (plan.loadInMinute + plan.outMinute) / 2; // as a cold start is counted
        const inside = plan.curve.filter(({ minute }) => minute > half);
        return inside.reduce((sum, point) => sum + point.oven, 0) / inside.length;
      };
      const { low, high } = ours.wanted;
      expect(Math.abs(mean(ours) - (low + high) / 2)).toBeLessThan(14); // one chart step, 25 F
      expect(mean(fewer)).toBeLessThan(mean(ours));
    },
  );
});
