import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { kelvin, minutes } from '../quantity/unit.ts';
import type { CoalPlan } from './coal-plan.ts';
import { layCoals } from './lay-coals.ts';
import { simpleLoad } from './simple-load.ts';

const BOIL = 373.12;
const BROWN_MINUTES = 25;

const pot = (brownFirst?: number): CoalPlan => {
  const request = coalRequest({ stay: 120, method: 'simmer' });
  const plan = layCoals({
    ...request,
    load: simpleLoad({
      massGrams: 4000,
      heatCapacityJoulesPerGramKelvin: 3.8, // a stew
      startKelvin: 288,
      boilKelvin: BOIL,
      planAreaSquareMetres: 4 * request.oven.diameter ** 2,
    }),
    wish: {
      ...request.wish,
      wanted: kelvin(BOIL + 4),
      ...(brownFirst === undefined ? {} : { brownFirst: minutes(brownFirst) }),
    },
  });
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

describe('a pot that is browned first', () => {
  const plan = pot(BROWN_MINUTES);

  it('has no coals on its lid while it browns: all coals below (common practice, splitByMethod: fry 0 above)', () => {
    expect(plan.above.pieces).toBe(0);
    expect(plan.below.pieces).toBeGreaterThan(0);
    const early = plan.additions.filter((each) => each.minute < BROWN_MINUTES);
    expect(early.map((each) => each.above)).toEqual([]);
  });

  it('gets the lid’s whole set at the minute when browning ends', () => {
    const lid = plan.additions.find((each) => each.minute === BROWN_MINUTES);
    expect(lid?.above).toBe(plan.browning?.thenAbove.pieces);
    expect(lid?.above).toBe(plan.reckoning.above);
  });

  it('counts each coal once: laid and added are all there are', () => {
    const added = plan.additions.reduce((sum, each) => sum + each.above + each.below, 0);
    expect(plan.coalsInAll).toBe(plan.below.pieces + added);
  });

  it('has a lid that hardly warms before its coals are on, over a floor hot enough to brown', () => {
    const before = plan.curve[BROWN_MINUTES - 1]!;
    expect(before.lid).toBeLessThan(373);
    expect(before.floor).toBeGreaterThan(413); // browning begins near 140 °C (Maillard, common practice)
    expect(plan.curve[BROWN_MINUTES + 20]!.lid).toBeGreaterThan(before.lid + 50);
  });

  it('boils sooner after its lid goes on than a pot that starts in cold iron', () => {
    const up = (of: CoalPlan) => of.curve.find((point) => (point.load ?? 0) >= BOIL - 1)!.minute;
    expect(up(plan) - BROWN_MINUTES).toBeLessThan(up(pot()));
  });

  it('loses no heat from the books: within 0.1 %', () => {
    expect(Math.abs(plan.energy.errorRatio)).toBeLessThan(0.001);
  });

  it('stays in for its whole time after the lid goes on', () => {
    expect(plan.loadInMinute).toBe(0);
    expect(plan.outMinute).toBe(120 + BROWN_MINUTES);
  });
});
