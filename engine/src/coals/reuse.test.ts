import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { kelvin, minutes } from '../quantity/unit.ts';
import { HALF_COOLED_MINUTES, ironAfter } from './reuse.ts';
import { minuteLater, startMoment } from './run.ts';
import { siteFor } from './site.ts';

/** Share of its heat that an empty oven still has after the half-time, by the network. */
const leftByNetwork = (inches: number, openSeconds: number): number => {
  const setting = siteFor(coalRequest({ inches }));
  const air = setting.outside.airKelvin;
  let moment = startMoment({ ironKelvin: 450, coals: [] });
  while (moment.minute < HALF_COOLED_MINUTES)
    moment = minuteLater(setting, moment, { openSeconds });
  return (moment.iron.wall - air) / (450 - air);
};

describe('iron that stands empty', () => {
  it.each([8, 12, 16])(
    'of a %i inch oven has about half its heat left, lid on or off',
    (inches) => {
      expect(leftByNetwork(inches, 60)).toBeGreaterThan(0.4);
      expect(leftByNetwork(inches, 0)).toBeLessThan(0.6);
    },
  );

  it('comes down to the air and no further', () => {
    const air = kelvin(290);
    const iron = kelvin(450);
    expect(ironAfter({ iron, air, minutes: minutes(0) })).toBe(450);
    expect(ironAfter({ iron, air, minutes: minutes(12) })).toBeCloseTo(370, 6);
    expect(ironAfter({ iron, air, minutes: minutes(600) })).toBeCloseTo(290, 6);
  });
});
