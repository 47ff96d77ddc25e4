import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { minuteLater, startMoment } from '../coals/run.ts';
import { siteFor } from '../coals/site.ts';
import { kelvin, metres } from '../quantity/unit.ts';
import { ASH_BAG_HOURS, ASH_LIVE_DAYS, coolMinutes, TOUCH_LIMIT } from './cool-down.ts';

const AT_START = 475;

/** Minutes until the hottest iron of an empty oven with its lid on is at a limit, by the network. */
function byNetwork(inches: number, limit: number) {
  const setting = siteFor(coalRequest({ inches }));
  let moment = startMoment({ ironKelvin: AT_START, coals: [] });
  const hottest = () => Math.max(moment.iron.lid, moment.iron.wall, moment.iron.floor);
  while (hottest() > limit && moment.minute < 400) {
    moment = minuteLater(setting, moment, { openSeconds: 0 });
  }
  return { minute: moment.minute, air: setting.outside.airKelvin };
}

describe('the cool-down clock', () => {
  it.each([8, 10, 12, 14, 16])(
    'of a %i inch oven is not sooner than the network, and at most a fifth later',
    (inches) => {
      for (const limit of [373.15, TOUCH_LIMIT]) {
        const { minute, air } = byNetwork(inches, limit);
        const found = coolMinutes({
          iron: kelvin(AT_START),
          air: kelvin(air),
          limit: kelvin(limit),
          diameter: metres(inches * 0.0254),
        });
        expect(found).toBeGreaterThanOrEqual(minute - 1); // the network counts whole minutes
        expect(found).toBeLessThan(1.2 * minute + 1);
      }
    },
  );

  it('is nothing for iron that is cool, and has no end in air as hot as the limit', () => {
    const ask = (iron: number, air: number) =>
      coolMinutes({
        iron: kelvin(iron),
        air: kelvin(air),
        limit: TOUCH_LIMIT,
        diameter: metres(0.3),
      });
    expect(ask(310, 290)).toBe(0);
    expect(ask(400, 325)).toBeUndefined();
    expect(ask(Number.NaN, 290)).toBeUndefined();
  });

  it('is later for hotter iron, warmer air and a wider oven', () => {
    const ask = (iron: number, air: number, diameter: number) =>
      coolMinutes({
        iron: kelvin(iron),
        air: kelvin(air),
        limit: TOUCH_LIMIT,
        diameter: metres(diameter),
      })!;
    fc.assert(
      fc.property(
        fc.double({ min: 330, max: 600, noNaN: true }),
        fc.double({ min: 250, max: 315, noNaN: true }),
        fc.double({ min: 0.2, max: 0.4, noNaN: true }),
        (iron, air, diameter) => {
          const now = ask(iron, air, diameter);
          expect(ask(iron + 10, air, diameter)).toBeGreaterThan(now);
          expect(ask(iron, air + 2, diameter)).toBeGreaterThan(now);
          expect(ask(iron, air, diameter + 0.05)).toBeGreaterThan(now);
        },
      ),
      { seed: 64, numRuns: 200 },
    );
  });
});

describe('ash', () => {
  it('is live for four days, and not bagged before three (fire-departments, hearth-ash)', () => {
    expect(ASH_LIVE_DAYS).toBe(4);
    expect(ASH_BAG_HOURS).toBe(72);
  });
});
