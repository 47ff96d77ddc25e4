// The looks of the coals door follow the curve, not the clock.

import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import type { CoalPlan } from '../coals/coal-plan.ts';
import { layCoals } from '../coals/lay-coals.ts';
import { usualLoad } from '../coals/usual-load.ts';
import { isRefusal } from '../notice/notice.ts';
import { usualLooks } from './usual-looks.ts';

const SHADES = ['pale', 'straw', 'brown', 'dark'];

function looksOf(change: Change, pins: { readonly above?: number; readonly below?: number } = {}) {
  const plain = coalRequest(change);
  const request = { ...plain, load: usualLoad(plain, change.method ?? 'bake'), pins };
  const plan = layCoals(request);
  if (isRefusal(plan)) throw new Error(plan.code);
  const { oven, air } = request;
  const looks = usualLooks({ ...plan, wanted: request.wish.wanted, oven, air });
  return { plan, looks };
}

const topsOf = (checks: CoalPlan['checks']) =>
  checks.flatMap(({ ways }) =>
    ways.flatMap((way) => (way.by === 'top-colour' ? [way.colour] : [])),
  );

describe('what the top of a usual dough looks like at a check', () => {
  it('is pale at 200 F however long it bakes: a crust browns from about 140 °C on (Maillard, common practice)', () => {
    const { looks } = looksOf({ heatFahrenheit: 200, stay: 60 });
    expect(topsOf(looks.checks).length).toBeGreaterThan(0);
    expect(new Set(topsOf(looks.checks))).toEqual(new Set(['pale']));
    expect(looks.atEnd).toBe('pale');
  });

  it('is dark under 60 pinned on the lid, and nobody is told that it smells of no scorch', () => {
    const { plan, looks } = looksOf({ heatFahrenheit: 350, stay: 40 }, { above: 60 });
    expect(Math.max(...plan.curve.map(({ oven }) => oven))).toBeGreaterThan(530); // 494 F
    expect(topsOf(looks.checks).at(-1)).toBe('dark');
    expect(looks.burns).toBeLessThan(plan.outMinute);
    const late = looks.checks.filter(({ minute }) => minute >= (looks.burns ?? 0));
    expect(late.flatMap(({ ways }) => ways.map(({ by }) => by))).not.toContain('nose');
  });

  it.each([
    [350, 40],
    [375, 35],
    [325, 50],
  ])(
    'is brown at the end of an ordinary bake of %i F and %i min (common practice, no source)',
    (heatFahrenheit, stay) => {
      const { looks } = looksOf({ heatFahrenheit, stay });
      expect(looks.atEnd).toBe('brown');
      expect(looks.burns).toBeUndefined();
    },
  );

  it('never gets paler, and is no paler in a hotter oven', () => {
    const last = [300, 350, 400, 450].map((heatFahrenheit) => {
      const tops = topsOf(looksOf({ heatFahrenheit, stay: 40 }).looks.checks);
      const shades = tops.map((top) => SHADES.indexOf(top));
      expect(shades).toEqual([...shades].sort((one, other) => one - other));
      return shades.at(-1)!;
    });
    expect(last).toEqual([...last].sort((one, other) => one - other));
  });

  it('is left out for a roast, and the bottom’s for a bake: neither has a model here', () => {
    const ways = (method: 'bake' | 'roast') =>
      looksOf({ method, stay: 60 }).looks.checks.flatMap((check) => check.ways.map(({ by }) => by));
    expect(ways('roast')).not.toContain('top-colour');
    expect(ways('roast')).not.toContain('bottom-corner');
    expect(ways('bake')).toContain('top-colour');
    expect(ways('bake')).not.toContain('bottom-corner');
  });
});
