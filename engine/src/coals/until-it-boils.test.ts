// Nobody said how long the pot is in: then it is in until it boils, or it is refused.

import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { nominalOven } from '../menu/nominal-oven.ts';
import { isRefusal } from '../notice/notice.ts';
import { kelvin } from '../quantity/unit.ts';
import { simpleLoad } from './simple-load.ts';
import { laidUntilItBoils } from './until-it-boils.ts';
import { usualStay, wantedAtFire } from './usual-fire.ts';
import { usualAmount, usualLoad } from './usual-load.ts';

const potRequest = (change: Change) => {
  const method = change.method ?? 'boil';
  const asked = coalRequest({ stay: usualStay('boil'), ...change, method });
  const plain = { ...asked, oven: nominalOven(asked.oven.diameter) };
  return {
    ...plain,
    load: usualLoad(plain, method),
    wish: { ...plain.wish, wanted: wantedAtFire(method, plain.air), preheat: false },
  };
};

describe('a usual pot', () => {
  it.each([8, 10, 12, 14, 16])(
    'of %i inches boils for ten minutes before it comes out, in frost and in wind',
    (inches) => {
      for (const site of [{}, { airKelvin: 267 }, { wind: 1.5 }]) {
        const request = potRequest({ inches, ...site });
        const plan = laidUntilItBoils(request);
        if (isRefusal(plan)) throw new Error(plan.code);
        const codes = plan.notices.map(({ code }) => code);
        expect(codes).not.toContain('COALS_BOIL_LATE');
        const from = plan.curve.slice(plan.outMinute - 10);
        for (const { load } of from) expect(load).toBeGreaterThan(request.air.boiling - 3.5);
        const looks = plan.checks.flatMap(({ ways }) =>
          ways.map((way) => (way.by === 'simmer' ? way.looks : way.by)),
        );
        expect(looks).toEqual(['rolling']);
      }
    },
  );

  it('keeps the minutes that do, and the counts that are pinned', () => {
    const simmer = potRequest({ method: 'simmer', stay: 120 });
    const kept = laidUntilItBoils(simmer);
    expect(isRefusal(kept) ? 0 : kept.outMinute).toBe(120);
    const pinned = laidUntilItBoils({ ...potRequest({}), pins: { below: 6 } });
    expect(isRefusal(pinned) ? 0 : pinned.outMinute).toBe(60);
  });

  it('is refused where it never boils, with what helps', () => {
    const request = potRequest({ inches: 8 });
    const much = simpleLoad({
      massGrams: 40_000,
      heatCapacityJoulesPerGramKelvin: 4.18,
      startKelvin: kelvin(275),
      boilKelvin: request.air.boiling,
      planAreaSquareMetres: 0.2,
    });
    const refused = laidUntilItBoils({ ...request, load: much });
    expect(isRefusal(refused) ? refused.code : '').toBe('COALS_BOIL_NEVER');
  });

  it.each([
    [8, 2],
    [10, 4],
    [12, 6],
    [14, 8],
    [16, 12],
  ])('of %i inches is half of its %i quarts (ovenSizing)', (inches, quarts) => {
    const { oven } = potRequest({ inches });
    const { volume } = usualAmount(oven, 'boil');
    expect((volume ?? 0) / 0.000_946_352_946).toBeCloseTo(quarts / 2, 6);
  });
});
