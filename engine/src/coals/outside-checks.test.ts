// The checks from outside that hold at every site, before rounding and over whole bakes.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import { isRefusal } from '../notice/notice.ts';
import { metres, minutes } from '../quantity/unit.ts';
import type { CoalRequest } from './coal-plan.ts';
import type { SiteConditions } from './conditions.ts';
import { coalsToHold } from './hold.ts';
import { layCoals } from './lay-coals.ts';
import { coalLifeMinutes } from './lighting.ts';
import { holdCaseFor } from './need.ts';
import { siteFor } from './site.ts';
import { shareAboveFor } from './split.ts';
import { usualLoad } from './usual-load.ts';

const SEED = 20267;

const conditions = fc.record({
  rain: fc.double({ min: 0, max: 5, noNaN: true }),
  sun: fc.double({ min: 0, max: 1, noNaN: true }),
  riser: fc.double({ min: 0, max: 0.05, noNaN: true }).map(metres),
  groundIsWet: fc.boolean(),
});

const site = fc.record({
  inches: fc.constantFrom(8, 10, 12, 14, 16),
  heatFahrenheit: fc.integer({ min: 300, max: 425 }),
  airKelvin: fc.double({ min: 260, max: 305, noNaN: true }),
  pressure: fc.double({ min: 70_000, max: 102_000, noNaN: true }),
});

const asked = (change: Change, said: SiteConditions = {}): CoalRequest => ({
  ...coalRequest({ hearth: 'ground', ...change }),
  conditions: said,
});

/** Mid-life coals at the strength of this air, so heat: delivery does not depend on wind. */
const steadyCoals = (change: Change, said: SiteConditions) => {
  const request = asked(change, said);
  const share = shareAboveFor(request.wish.method);
  return coalsToHold(holdCaseFor(request, siteFor(request), share));
};

const rising = (values: readonly number[]) =>
  values.every((value, index) => index === 0 || value >= values[index - 1]! - 1e-6);

describe('steady heat needed, before rounding, at default factors', () => {
  const METHODS = fc.constantFrom<HeatMethod>('bake', 'roast', 'fry');

  it('rises with wind, at every size, heat, height, in rain, sun and on a riser (forced convection, bergman2011)', () => {
    fc.assert(
      fc.property(site, conditions, METHODS, (change, said, method) => {
        const at = (wind: number) => steadyCoals({ ...change, method, wind }, said);
        expect(rising([0, 0.5, 1, 2, 4, 8].map(at))).toBe(true);
        expect(at(4)).toBeGreaterThan(at(0));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('rises with cold, at every size, heat, height and wind (first law)', () => {
    fc.assert(
      fc.property(site, conditions, METHODS, (change, said, method) => {
        const at = (airKelvin: number) => steadyCoals({ ...change, method, airKelvin }, said);
        expect(rising([310, 300, 290, 280, 270, 260].map(at))).toBe(true);
        expect(at(260)).toBeGreaterThan(at(310));
      }),
      { seed: SEED + 1, numRuns: 60 },
    );
  });

  it('falls with sun and rises with rain and with a riser (signs: coalsOvenModelNotes 5.4, common practice)', () => {
    fc.assert(
      fc.property(site, (change) => {
        expect(rising([1, 0.5, 0].map((sun) => steadyCoals(change, { sun })))).toBe(true);
        expect(rising([0, 1, 3].map((rain) => steadyCoals(change, { rain })))).toBe(true);
        const risers = [0, 0.02, 0.05].map((riser) =>
          steadyCoals(change, { riser: metres(riser) }),
        );
        expect(rising(risers)).toBe(true);
      }),
      { seed: SEED + 2, numRuns: 40 },
    );
  });
});

describe('a coal', () => {
  it('lives the shorter the harder it blows, at every height (burnWind)', () => {
    fc.assert(
      fc.property(site, fc.double({ min: 0, max: 12, noNaN: true }), (change, wind) => {
        const life = (more: number) => {
          const { fuel, air } = asked({ ...change, wind: wind + more });
          return coalLifeMinutes({ fuel, wind: air.wind, pressure: air.pressure });
        };
        expect(life(1)).toBeLessThanOrEqual(life(0));
        expect(life(3)).toBeLessThan(life(0));
      }),
      { seed: SEED + 3, numRuns: 60 },
    );
  });
});

describe('a whole bake', () => {
  it('burns no fewer coals in more wind, whatever else (issue of heat: first law and burnWind)', () => {
    fc.assert(
      fc.property(site, fc.integer({ min: 20, max: 90 }), (change, stay) => {
        const all = [0, 1, 2, 4].map((wind) => {
          const plan = layCoals(asked({ ...change, stay, wind }));
          return isRefusal(plan) ? Number.POSITIVE_INFINITY : plan.coalsInAll;
        });
        expect(rising(all)).toBe(true);
      }),
      { seed: SEED + 4, numRuns: 30 },
    );
  });
});

describe('heat', () => {
  it('is never made nor lost: 0.1 % in every plan, in rain, sun, on wet ground and a riser, for every method', () => {
    fc.assert(
      fc.property(
        site,
        conditions,
        fc.record({
          method: fc.constantFrom<HeatMethod>(
            'bake',
            'roast',
            'simmer',
            'boil',
            'fry',
            'keep-warm',
          ),
          wind: fc.double({ min: 0, max: 6, noNaN: true }),
          stay: fc.integer({ min: 15, max: 120 }),
          brown: fc.boolean(),
          wood: fc.boolean(),
        }),
        (change, said, { brown, ...more }) => {
          const plain = asked({ ...change, ...more }, said);
          const isPot = more.method === 'simmer' || more.method === 'boil';
          const request = {
            ...plain,
            load: usualLoad(plain, more.method),
            wish: {
              ...plain.wish,
              ...(isPot ? { wanted: plain.air.boiling } : {}),
              ...(brown && more.method === 'simmer' ? { brownFirst: minutes(15) } : {}),
            },
          };
          const plan = layCoals(request);
          if (isRefusal(plan)) return;
          expect(Math.abs(plan.energy.errorRatio)).toBeLessThan(1e-3);
        },
      ),
      { seed: SEED + 5, numRuns: 80 },
    );
  });
});
