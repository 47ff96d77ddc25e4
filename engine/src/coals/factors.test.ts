import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { bandOf, EIGHTY_PERCENT, halfBands } from './band.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { countCoals } from './count.ts';
import { beliefsFor, type FactorName, factorNames, factors, settingWith } from './factors.ts';
import { layCoals } from './lay-coals.ts';
import { replayed } from './replay.ts';
import { siteFor } from './site.ts';

const planOf = (request: CoalRequest): CoalPlan => {
  const plan = layCoals(request);
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

const widthOf = (plan: CoalPlan) => {
  const inside = plan.curve.filter((point) => point.minute > plan.loadInMinute);
  return inside.reduce((sum, point) => sum + point.high - point.low, 0) / inside.length;
};

const width = (change: Change) => widthOf(planOf(coalRequest(change)));

const endOf = (logs: Partial<Record<FactorName, number>>, change: Change = {}) => {
  const request = coalRequest({ stay: 45, wind: 1, ...change });
  const setting = siteFor(request);
  const counted = countCoals(request, setting);
  const moments = replayed(request, settingWith(setting, logs), counted);
  return moments.at(-1)!.ovenKelvin;
};

describe('a factor', () => {
  it('changes nothing at 1', () => {
    expect(endOf({})).toBe(endOf({ coalStrength: 0, coalLife: 0, windExposure: 0, ovenLoss: 0 }));
  });

  it.each([
    ['stronger coals', { coalStrength: 0.1 }, 1],
    ['coals that last longer', { coalLife: 0.1 }, 1],
    ['more wind than forecast', { windExposure: 0.3 }, -1],
    ['an oven that loses more', { ovenLoss: 0.1 }, -1],
  ] as const)('%s: the oven follows (first law)', (_what, logs, sign) => {
    expect(Math.sign(endOf(logs) - endOf({}))).toBe(sign);
  });

  it('wind exposure does nothing in still air', () => {
    expect(endOf({ windExposure: 0.5 }, { wind: 0 })).toBe(endOf({}, { wind: 0 }));
  });

  it('ten per cent more coal is about a step of the charts at 350 F: 21 to 36 F a pair (coalsOvenModelNotes 5.3)', () => {
    const more = endOf({ coalStrength: Math.log(27 / 25) }) - endOf({});
    expect(more * 1.8).toBeGreaterThan(15);
    expect(more * 1.8).toBeLessThan(36);
  });
});

describe('the band', () => {
  it('adds independent effects in quadrature (jcgm100 5.1.2 eq. 10)', () => {
    const moment = (ovenKelvin: number) => [{ ovenKelvin }] as never;
    const runs = [
      { factor: 'coalStrength' as const, moments: moment(403) },
      { factor: 'ovenLoss' as const, moments: moment(396) },
    ];
    expect(halfBands(moment(400), runs)[0]).toBeCloseTo(EIGHTY_PERCENT * 5, 9);
    const { low, high } = bandOf(400, [403, 396, undefined]);
    expect(high - low).toBeCloseTo(2 * EIGHTY_PERCENT * 5, 9);
  });

  it('holds its own curve, is finite, and has one run for each factor that can matter', () => {
    for (const wind of [0, 1, 3]) {
      const plan = planOf(coalRequest({ wind, stay: 50 }));
      for (const { oven, low, high } of plan.curve) {
        expect(Number.isFinite(low + high)).toBe(true);
        expect(low <= oven && oven <= high).toBe(true);
      }
      expect(plan.factorRuns?.map((run) => run.factor)).toEqual(
        wind === 0 ? factorNames.filter((name) => name !== 'windExposure') : factorNames,
      );
    }
  });

  it('is wider in wind, for wood coals and high up, where less is known', () => {
    expect(width({ wind: 1.5 })).toBeGreaterThan(width({}));
    expect(width({ wood: true })).toBeGreaterThan(width({}));
    expect(width({ pressure: 75_000 })).toBeGreaterThan(width({}));
  });

  it('is narrower once a logbook knows the coals better, and moves where it says', () => {
    const learnt = {
      ...factors,
      coalStrength: { log: 0.1, spread: 0.02 },
    };
    const request = coalRequest({});
    const [prior, after] = [planOf(request), planOf({ ...request, beliefs: learnt })];
    expect(widthOf(after)).toBeLessThan(0.8 * widthOf(prior));
    const total = ({ above, below }: CoalPlan) => above.pieces + below.pieces;
    expect(total(after)).toBeLessThan(total(prior)); // stronger coals, fewer of them
  });

  it('doubles its coal doubts for wood, which nobody measured', () => {
    const wood = beliefsFor(coalRequest({ wood: true }));
    expect(wood.coalLife.spread).toBeCloseTo(2 * factors.coalLife.spread, 9);
  });
});
