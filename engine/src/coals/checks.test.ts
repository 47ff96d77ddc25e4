// Checks are only those of use: time for the reading, time for a move to act before the food is out.

import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { kelvin } from '../quantity/unit.ts';
import type { CoalPlan } from './coal-plan.ts';
import { layCoals } from './lay-coals.ts';
import { wantedAtFire } from './usual-fire.ts';
import { usualLoad } from './usual-load.ts';
import { warmWithFew } from './warm-few.ts';

const asked = ({ method = 'bake', ...change }: Change) => {
  const request = coalRequest({ ...change, method });
  return {
    ...request,
    load: usualLoad(request, method),
    wish:
      method === 'simmer'
        ? { ...request.wish, wanted: wantedAtFire('simmer', request.air) }
        : request.wish,
  };
};

const planOf = (change: Change): CoalPlan => {
  const plan = layCoals(asked(change));
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

describe('checks of a plan', () => {
  it.each([8, 10, 12, 15, 20, 25, 40, 60])(
    'of a bake of %i min leave time for the reading and for a move to act (common practice, no source)',
    (stay) => {
      const { checks, outMinute, loadInMinute } = planOf({ stay, heatFahrenheit: 425 });
      for (const { minute, ways, oven, ifHot, ifCool } of checks) {
        expect(ifHot.length + ifCool.length).toBeGreaterThan(0);
        for (const { after, effect } of [...ifHot, ...ifCool]) {
          expect(minute + after).toBeLessThanOrEqual(outMinute);
          expect(Math.abs(effect)).toBeGreaterThanOrEqual(2.8); // 5 F
        }
        // flourTest: five minutes in the empty oven, over coals that have lain as long
        if (ways.some(({ by }) => by === 'flour')) {
          expect(oven).toBe('empty');
          expect(minute).toBeGreaterThanOrEqual(5);
          expect(minute + 5).toBeLessThanOrEqual(loadInMinute);
        }
      }
      const full = checks.filter(({ oven }) => oven === 'full').map(({ minute }) => minute);
      for (let at = 1; at < full.length; at++)
        expect(full[at]! - full[at - 1]!).toBeGreaterThanOrEqual(5);
    },
  );

  it('of a pot ask for what its own curve has it do by then, never for a simmer it has not reached (the plan’s curve)', () => {
    for (const stay of [40, 60, 120]) {
      const plan = planOf({ method: 'simmer', stay });
      for (const { minute, ways } of plan.checks) {
        const pot = plan.curve[minute]?.load ?? 0;
        const looks = ways.map((way) => (way.by === 'simmer' ? way.looks : ''));
        if (pot < asked({ method: 'simmer' }).air.boiling - 15) expect(looks).toEqual(['still']);
        else expect(looks).not.toContain('still');
      }
    }
  });

  it('have coals that change their side told by the floor, which is what they are moved for', () => {
    const move = planOf({ stay: 40 }).moves.find((each) => each.do === 'below-to-above');
    expect(move?.floor).toBeLessThan(-2.8);
    expect(Math.abs(move!.floor!)).toBeGreaterThan(Math.abs(move!.effect));
  });
});

describe('a dish kept warm', () => {
  it('on the four coals of practice cools sooner than on ours, and later than on none (common practice, no source)', () => {
    const request = coalRequest({ method: 'keep-warm', heatFahrenheit: 194, stay: 60 });
    const warm = { ...request, load: usualLoad(request, 'keep-warm'), ironAtStart: kelvin(363) };
    const plan = layCoals(warm);
    if (isRefusal(plan)) throw new Error(plan.code);
    const few = warmWithFew(warm, plan);
    expect(few?.coals).toBe(4);
    expect(few?.until ?? 180).toBeGreaterThan(15);
    expect(plan.curve.every(({ load }) => load === undefined || load > 333.15)).toBe(true);
  });
});
