import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { grams, kelvin } from '../quantity/unit.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { layCoals } from './lay-coals.ts';
import { simpleLoad } from './simple-load.ts';

const SEED = 20263;
const BOIL = 373.12;
const START = 288;
const SPECIFIC_HEAT = 3.8; // a stew

interface Pot {
  readonly inches?: number;
  readonly loadGrams?: number;
  readonly stay?: number;
  readonly wind?: number;
  readonly airKelvin?: number;
}

/** A pot whose food wets floor and wall: it takes up what the iron offers. */
const potRequest = ({ inches = 12, loadGrams = 4000, stay = 180, ...site }: Pot): CoalRequest => {
  const request = coalRequest({ ...site, inches, stay, method: 'simmer' });
  const load = simpleLoad({
    massGrams: loadGrams,
    heatCapacityJoulesPerGramKelvin: SPECIFIC_HEAT,
    startKelvin: START,
    boilKelvin: BOIL,
    planAreaSquareMetres: 4 * request.oven.diameter ** 2, // 15 W/K and no cap that matters
  });
  return {
    ...request,
    load,
    air: { ...request.air, boiling: kelvin(BOIL) },
    wish: { ...request.wish, wanted: kelvin(BOIL + 4) },
  };
};

const planOf = (pot: Pot): CoalPlan => {
  const plan = layCoals(potRequest(pot));
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

const upMinute = (plan: CoalPlan) =>
  plan.curve.find((point) => (point.load ?? 0) >= BOIL - 2)?.minute ?? Number.POSITIVE_INFINITY;

const anyPot = fc.record({
  inches: fc.constantFrom(10, 12, 14),
  loadGrams: fc.integer({ min: 1500, max: 5000 }),
  stay: fc.integer({ min: 90, max: 300 }),
  wind: fc.double({ min: 0, max: 1.5, noNaN: true }),
  airKelvin: fc.double({ min: 268, max: 303, noNaN: true }),
});

describe('a pot held at its boil', () => {
  it('never falls more than 3 K below it once it has come up', () => {
    fc.assert(
      fc.property(anyPot, (pot) => {
        const plan = planOf(pot);
        const isLate = plan.notices.some(({ code }) => code === 'COALS_BOIL_LATE');
        expect(isLate || upMinute(plan) < plan.outMinute).toBe(true);
        const held = plan.curve.filter((point) => point.minute > upMinute(plan));
        for (const point of held) expect(point.load).toBeGreaterThan(BOIL - 3);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('is left alone 20 minutes or more between additions, half an hour in still air (coalLife: every 30 min)', () => {
    fc.assert(
      fc.property(anyPot, (pot) => {
        const marks = [0, ...planOf(pot).additions.map((addition) => addition.minute)];
        const gaps = marks.slice(1).map((mark, index) => mark - (marks[index] ?? 0));
        for (const gap of gaps) expect(gap).toBeGreaterThanOrEqual(pot.wind < 0.05 ? 30 : 20);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('takes at most half a set again in one addition, while wind does not burn a set away between', () => {
    fc.assert(
      fc.property(anyPot, (site) => {
        const plan = planOf({ ...site, wind: Math.min(0.5, site.wind) });
        const set = plan.above.pieces + plan.below.pieces;
        for (const { minute, above, below } of plan.additions)
          if (minute > upMinute(plan)) expect(above + below).toBeLessThanOrEqual(set / 2 + 1);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('turns into steam what it took beyond its own warming: first law, 2257 J/g (if97)', () => {
    const plan = planOf({});
    const warming = 4000 * SPECIFIC_HEAT * (BOIL - START);
    const spare = (plan.energy.loadJoules - warming) / 2257;
    expect(plan.boiledOff).toBeDefined();
    expect(Math.abs((plan.boiledOff ?? 0) - spare)).toBeLessThan(
      20 + (2 * 4000 * SPECIFIC_HEAT) / 2257,
    );
    expect(plan.boiledOff).toBeGreaterThan(0);
  });
});

describe('a bread', () => {
  it('boils nothing off', () => {
    const plan = layCoals({ ...coalRequest(), fuel: { ...coalRequest().fuel } });
    if (isRefusal(plan)) throw new Error(plan.code);
    expect(plan.boiledOff).toBeUndefined();
    expect(plan.fuelMass).toBeGreaterThan(grams(0));
  });
});

describe('a move', () => {
  it('is never more than a cook picks up at once: six coals or a quarter of the set', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(8, 10, 12, 14, 16),
        fc.integer({ min: 300, max: 450 }),
        (inches, heatFahrenheit) => {
          const plan = layCoals(coalRequest({ inches, heatFahrenheit }));
          if (isRefusal(plan)) return;
          const set = plan.above.pieces + plan.below.pieces;
          const all = [
            ...plan.moves,
            ...plan.checks.flatMap((check) => [...check.ifHot, ...check.ifCool]),
          ];
          for (const { coals } of all) expect(coals).toBeLessThanOrEqual(Math.min(6, set / 4));
        },
      ),
      { seed: SEED, numRuns: 20 },
    );
  });

  it('stands before those that do less', () => {
    const plan = layCoals(coalRequest({ wind: 1 }));
    if (isRefusal(plan)) throw new Error(plan.code);
    for (const { ifHot, ifCool } of plan.checks)
      for (const moves of [ifHot, ifCool]) {
        const sizes = moves.map((move) => Math.abs(move.effect));
        expect(sizes).toEqual([...sizes].sort((one, other) => other - one));
      }
  });
});
