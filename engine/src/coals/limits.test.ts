import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import { isRefusal } from '../notice/notice.ts';
import { grams } from '../quantity/unit.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { ovenBody } from './geometry.ts';
import { layCoals } from './lay-coals.ts';
import { coalWidth, roomFor } from './room.ts';
import { simpleLoad } from './simple-load.ts';

const SEED = 20263;

const anySite = fc.record({
  inches: fc.double({ min: 8, max: 16, noNaN: true }),
  heatFahrenheit: fc.integer({ min: 210, max: 500 }),
  stay: fc.integer({ min: 1, max: 200 }),
  method: fc.constantFrom<HeatMethod>('bake', 'roast', 'simmer', 'boil', 'fry', 'keep-warm'),
  airKelvin: fc.double({ min: 253.15, max: 318.15, noNaN: true }),
  wind: fc.double({ min: 0, max: 15, noNaN: true }),
  wood: fc.boolean(),
  loadGrams: fc.integer({ min: 50, max: 6000 }),
});

const laidOrThrow = (request: CoalRequest): CoalPlan => {
  const plan = layCoals(request);
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

/** Stays too short for two looks five minutes apart keep their looks; all others are held to it. */
const LONG_ENOUGH_MINUTES = 20;

describe('what a person can do', () => {
  it('is one visit to an oven in five minutes: turns, additions and checks are apart or at once', () => {
    fc.assert(
      fc.property(anySite, (change) => {
        const plan = layCoals(coalRequest(change));
        if (isRefusal(plan) || change.stay < LONG_ENOUGH_MINUTES) return;
        const acts = [...plan.turns, ...plan.additions, ...plan.checks].map((act) => act.minute);
        const visits = [...new Set(acts)].sort((one, other) => one - other);
        const gaps = visits.slice(1).map((minute, index) => minute - (visits[index] ?? 0));
        expect(Math.min(5, ...gaps)).toBeGreaterThanOrEqual(5);
      }),
      { seed: SEED, numRuns: 80 },
    );
  });
});

describe('what fits', () => {
  it('on the lid and under the floor is never exceeded unless the cook pins more', () => {
    fc.assert(
      fc.property(anySite, (change) => {
        const request = coalRequest(change);
        const plan = layCoals(request);
        if (isRefusal(plan)) return;
        const body = ovenBody(request.oven);
        const room = roomFor(body, request.oven.diameter, coalWidth(request.fuel));
        expect(plan.above.pieces).toBeLessThanOrEqual(room.lidAll);
        expect(plan.below.pieces).toBeLessThanOrEqual(room.floorAll);
      }),
      { seed: SEED + 1, numRuns: 60 },
    );
  });
});

describe('fuel at hand', () => {
  const withFuel = (coals: number): CoalRequest => {
    const request = coalRequest();
    const fuel = { kind: 'briquettes', pieceMass: grams(24.5), isMeasured: true } as const;
    return { ...request, fuel: { ...fuel, onHand: grams(coals * 24.5) } };
  };
  const shortFor = (coals: number) =>
    laidOrThrow(withFuel(coals)).notices.find((each) => each.code === 'COALS_FUEL_SHORT_FOR_THIS');

  it('that is too little is said with what it can do, hotter the more there is', () => {
    const [few, more] = [shortFor(8), shortFor(15)];
    expect(few?.values.coals).toBe(8);
    expect(Number(more?.values.hottestKelvin)).toBeGreaterThan(Number(few?.values.hottestKelvin));
  });

  it('that is enough is not spoken of', () => {
    expect(shortFor(200)).toBeUndefined();
  });

  it('of not one coal is answered too', () => {
    expect(shortFor(0)?.values.kinds).toBe('');
  });
});

/** Stew or water wets the iron: four mouths of area at 40 W/m2K, as in with-these-coals.ts. */
const potted = (change: Change): CoalRequest => {
  const request = coalRequest(change);
  const isPot = ['simmer', 'boil', 'fry'].includes(request.wish.method);
  if (!isPot) return request;
  const load = simpleLoad({
    massGrams: change.loadGrams ?? 900,
    heatCapacityJoulesPerGramKelvin: 3.76,
    startKelvin: 294,
    boilKelvin: 373.12,
    planAreaSquareMetres: 4 * 0.073,
  });
  return { ...request, load };
};

describe('each method of heat', () => {
  it.each<[HeatMethod, Change, number, number]>([
    ['bake', {}, 0.6, 0.75],
    ['roast', { stay: 60, inches: 14 }, 0.4, 0.6],
    ['simmer', { heatFahrenheit: 220, stay: 120, loadGrams: 2500 }, 0.2, 0.45],
    ['boil', { heatFahrenheit: 230, stay: 150, loadGrams: 1500 }, 0, 0.1],
    ['fry', { heatFahrenheit: 230, stay: 150, loadGrams: 600 }, 0, 0.1],
    ['keep-warm', { heatFahrenheit: 210, stay: 40 }, 0.99, 1],
  ])(
    '%s gives a finite plan split as published (splitByMethod; keep-warm: common practice, no source)',
    (method, change, least, most) => {
      const plan = laidOrThrow(potted({ ...change, method }));
      const share = plan.above.pieces / (plan.above.pieces + plan.below.pieces);
      expect(share).toBeGreaterThanOrEqual(least);
      expect(share).toBeLessThanOrEqual(most);
      expect(plan.curve.every((point) => Number.isFinite(point.oven))).toBe(true);
      expect(plan.outMinute).toBeGreaterThan(plan.loadInMinute);
    },
  );
});
