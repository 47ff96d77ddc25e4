import { describe, expect, it } from 'vitest';
import {
  madeCamp,
  madeDish,
  madeFormula,
  madeIngredient,
  madeRecipe,
} from '../../validation/bake/made.ts';
import type { Ingredient, Recipe } from '../menu/recipe.ts';
import { clockMinutes, fromCelsius, fromFahrenheit } from '../quantity/unit.ts';
import { bibliography } from '../sources/index.ts';
import { dishSafety } from './dish-safety.ts';
import { type FoodCheck, foodClock } from './food-clock.ts';

function clockOf(ingredients: readonly Ingredient[], own: Partial<Recipe>, celsius = 18) {
  const [hour] = madeCamp().weather;
  const camp = madeCamp({ weather: [{ ...hour!, air: fromCelsius(celsius) }] });
  const safety = dishSafety({
    dish: madeDish(),
    recipe: madeRecipe({ ingredients, ...own }),
    formula: madeFormula(ingredients),
    camp,
  });
  const times = { served: clockMinutes(1110), out: clockMinutes(1080) };
  const isCold = own.method === 'none';
  return foodClock({
    safety,
    isPerishable: true,
    times: isCold ? { served: times.served } : times,
    event: camp.event,
  });
}

const of = (checks: readonly FoodCheck[], kind: FoodCheck['kind']) =>
  checks.find((each) => each.kind === kind);

describe('the clock of a dish', () => {
  const beef = madeIngredient('beef chuck roast', 2000, { part: 'meat' });
  const roast = clockOf([beef], { kind: 'roast', method: 'roast' });

  it('asks a roast for 145 F and 3 min of rest (foodsafety-chart), then 140 F until served', () => {
    expect(of(roast, 'core')?.least).toBeCloseTo(fromFahrenheit(145), 9);
    expect(of(roast, 'core')?.at).toBe(1080);
    expect(of(roast, 'rest')?.lasts).toBe(3);
    expect(of(roast, 'hot-until-served')?.least).toBeCloseTo(fromFahrenheit(140), 9);
  });

  it('has it gone 2 h after the fire, 1 h in hot air (fsis-two-hours)', () => {
    expect(of(roast, 'gone-by')?.at).toBe(1080 + 120);
    const hot = clockOf([beef], { kind: 'roast', method: 'roast' }, 34);
    expect(of(hot, 'gone-by')?.at).toBe(1080 + 60);
  });

  it('cools what is left to 70 F in 2 h and to 40 F by 6, heats it to 165 F (food-code-3-501-14, food-code-3-403)', () => {
    expect(of(roast, 'cooled-between')?.most).toBeCloseTo(fromFahrenheit(70), 9);
    expect(of(roast, 'cooled-between')?.lasts).toBe(120);
    expect(of(roast, 'cooled')?.most).toBeCloseTo(fromFahrenheit(40), 9);
    expect(of(roast, 'cooled')?.lasts).toBe(360);
    expect(of(roast, 'heated-again')?.least).toBeCloseTo(fromFahrenheit(165), 9);
  });

  it('boils dry kidney beans 30 min hard before all else (fda-bad-bug-book)', () => {
    const beans = madeIngredient('red kidney beans, dry', 500, { part: 'bean' });
    const pot = clockOf([beans], { kind: 'beans', method: 'simmer' });
    expect(of(pot, 'full-boil')?.lasts).toBe(30);
  });

  it('keeps a cold dish at 40 F until served and cools nothing of it afterwards (foodsafety-chart)', () => {
    const slaw = clockOf([madeIngredient('cabbage', 900, { part: 'vegetable' })], {
      kind: 'cold-dish',
      method: 'none',
    });
    expect(of(slaw, 'cold-until-served')?.most).toBeCloseTo(fromFahrenheit(40), 9);
    expect(of(slaw, 'cooled')).toBeUndefined();
    expect(of(slaw, 'gone-by')?.at).toBe(1110 + 120);
  });

  it('asks nothing of plain bread but that it was carried well, and names a known work for each check', () => {
    const flour = madeIngredient('bread flour', 500, { part: 'flour' });
    const bread = clockOf([flour], { kind: 'yeast-bread' });
    expect(bread.map(({ kind }) => kind)).toEqual(['carried-cold']);
    for (const { source } of roast) expect(Object.keys(bibliography)).toContain(source);
  });
});
