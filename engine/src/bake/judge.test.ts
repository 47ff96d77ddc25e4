import { describe, expect, it } from 'vitest';
import { madeAir, madeDough, madeFormula, madeRecipe } from '../../validation/bake/made.ts';
import type { CurvePoint } from '../coals/coal-plan.ts';
import type { Recipe } from '../menu/recipe.ts';
import { fromCelsius, minutes } from '../quantity/unit.ts';
import { bakeFor } from './bake-for.ts';
import type { BakeRequest } from './bake-request.ts';
import { bakeJudge } from './judge.ts';

const asked = (own: Partial<Recipe> = {}): BakeRequest => ({
  load: madeDough({ millimetres: 40, rise: 1.3, density: 500 }),
  recipe: madeRecipe(own),
  formula: madeFormula(),
  air: madeAir(),
  wanted: fromCelsius(200),
});

const ovenOf = (lid: number, floor: number, inside = 180): { curve: CurvePoint[] } => ({
  curve: [0, 60, 120].map((minute) => ({
    minute: minutes(minute),
    oven: fromCelsius(inside),
    low: fromCelsius(inside - 15),
    high: fromCelsius(inside + 15),
    lid: fromCelsius(lid),
    floor: fromCelsius(floor),
    wall: fromCelsius(inside - 15),
  })),
});

const judge = bakeJudge(asked(), bakeFor(asked()))!;
const faultIn = (lid: number, floor: number, inside?: number) =>
  judge({ ...ovenOf(lid, floor, inside), loadInMinute: 0 }).fault;

describe('the judge of a bread', () => {
  it('minds a floor that burns and a floor that leaves the bottom pale (common practice, no source)', () => {
    const right = faultIn(260, 155);
    expect(faultIn(260, 240)).toBeGreaterThan(right + 10);
    expect(faultIn(260, 100)).toBeGreaterThan(right);
  });

  it('minds a lid that burns and a lid that makes it wait for colour', () => {
    const right = faultIn(260, 155);
    expect(faultIn(380, 155)).toBeGreaterThan(right);
    expect(faultIn(190, 155)).toBeGreaterThan(right);
  });

  it('has the minutes that the bake itself says of that oven, within 3 %', () => {
    const oven = ovenOf(260, 155);
    const whole = bakeFor({ ...asked(), ...oven, loadInMinute: minutes(0) });
    const { minutes: found } = judge({ ...oven, loadInMinute: 0 });
    expect(Math.abs(found / whole.minutes - 1)).toBeLessThan(0.03);
  });

  it('is none for what is not told by core and colour', () => {
    for (const kind of ['stew', 'roast', 'fruit', 'cobbler'] as const)
      expect(bakeJudge(asked({ kind }), bakeFor(asked({ kind })))).toBeUndefined();
    expect(bakeJudge(asked({ method: 'fry' }), bakeFor(asked()))).toBeUndefined();
  });
});
