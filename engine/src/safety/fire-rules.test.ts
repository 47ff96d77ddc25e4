import { describe, expect, it } from 'vitest';
import { madeCamp, madeDish, madeIngredient, madeRecipe } from '../../validation/bake/made.ts';
import stages from '../../validation/safety/fire-stages.json' with { type: 'json' };
import type { WeatherHour } from '../camp/camp.ts';
import type { Ingredient, Recipe } from '../menu/recipe.ts';
import { fromFahrenheit, metresPerSecond, ratio } from '../quantity/unit.ts';
import { campSafety } from './camp-safety.ts';
import { CLEAR_SPACE, FIRE_PAN, FIRE_STAGES, fireHours, stageOf } from './fire-rules.ts';
import { noFireMenu } from './no-fire.ts';

describe('fire stages', () => {
  it('allow charcoal, wood and stoves as the orders do, row by row (fire-stages)', () => {
    const rows = stages.rows as unknown as readonly (readonly [number, string, string, string])[];
    expect(rows).toHaveLength(4);
    expect(FIRE_STAGES.map((each) => [each.stage, each.charcoal, each.wood, each.stove])).toEqual(
      rows,
    );
  });

  it('are none where nobody asked, or where coals are allowed in spite', () => {
    expect(stageOf('unknown')).toBeUndefined();
    expect(stageOf('coals-allowed-here')).toBeUndefined();
    expect(stageOf('stage-1')?.charcoal).toBe('built-in-grate');
  });
});

describe('space and pan', () => {
  it('are 10, 15 and 30 ft (usfs-campfire, fire-departments), 12 in wide with a lip of 3 (river-fire-pan)', () => {
    expect(CLEAR_SPACE.bare).toBeCloseTo(3.048, 9);
    expect(CLEAR_SPACE.tents).toBeCloseTo(4.572, 9);
    expect(CLEAR_SPACE.structures).toBeCloseTo(9.144, 9);
    expect(FIRE_PAN.side).toBeCloseTo(0.3048, 9);
    expect(FIRE_PAN.lip).toBeCloseTo(0.0762, 9);
  });
});

describe('hours over a level', () => {
  const [calm] = madeCamp().weather;
  const hour = (milesPerHour: number, humidity: number, gust = milesPerHour): WeatherHour => ({
    ...calm!,
    wind: metresPerSecond(milesPerHour * 0.44704),
    gust: metresPerSecond(gust * 0.44704),
    humidity: ratio(humidity),
    air: fromFahrenheit(80),
  });

  it('stop at 15 mph, and are Red Flag with air at most 25 % damp (red-flag-example)', () => {
    const told = (each: WeatherHour) =>
      fireHours([each]).map(({ level, because }) => [level, because]);
    expect(told(hour(15, 0.25))).toEqual([['stop', 'red-flag']]);
    expect(told(hour(15, 0.6))).toEqual([['stop', 'wind']]);
    expect(told(hour(14.9, 0.25))).toEqual([['watch', 'dry']]);
    expect(told(hour(10, 0.6))).toEqual([['watch', 'wind']]);
    expect(told(hour(5, 0.6, 15))).toEqual([['watch', 'gust']]);
    expect(told(hour(5, 0.6))).toEqual([]);
  });
});

describe('the menu without fire', () => {
  const menuOf = (ingredients: readonly Ingredient[], own: Partial<Recipe>) =>
    noFireMenu({ dishes: [madeDish()], recipes: [madeRecipe({ ingredients, ...own })] });
  const wayOf = (ingredients: readonly Ingredient[], own: Partial<Recipe>) =>
    menuOf(ingredients, own).dishes[0]?.way;
  const food = madeIngredient;

  it('keeps what never needed fire, and no raw flour, meat, egg or dry bean (fda-flour, foodsafety-chart, fda-bad-bug-book)', () => {
    expect(wayOf([food('cabbage', 500, { part: 'vegetable' })], { method: 'none' })).toBe(
      'as-it-is',
    );
    for (const [name, part] of [
      ['bread flour', 'flour'],
      ['beef chuck', 'meat'],
      ['eggs', 'egg'],
      ['kidney beans, dry', 'bean'],
      ['rice', 'grain'],
      ['potatoes', 'vegetable'],
      ['something nobody knows', 'other'],
    ] as const) {
      expect(wayOf([food(name, 500, { part })], { method: 'bake' }), name).toBe('not');
    }
  });

  it('eats tinned beans and fruit cold, home-cooked ones only if kept cold (common practice; fsis-two-hours)', () => {
    const tinned = [food('pinto beans, canned', 500, { part: 'bean' })];
    expect(wayOf(tinned, { kind: 'beans', method: 'simmer' })).toBe('cold');
    const cooked = menuOf([food('pinto beans, cooked', 500, { part: 'bean' })], {
      kind: 'beans',
      method: 'simmer',
    });
    expect(cooked.dishes[0]).toMatchObject({ way: 'cold', keptCold: ['pinto beans, cooked'] });
    expect(
      wayOf([food('pinto beans, uncooked', 500, { part: 'bean' })], { method: 'simmer' }),
    ).toBe('stove');
  });

  it('sends a pot to the stove with a valve, and tells what of a cobbler can be eaten (fire-stages)', () => {
    expect(wayOf([food('beef chuck', 500, { part: 'meat' })], { method: 'simmer' })).toBe('stove');
    const cobbler = menuOf(
      [
        food('peaches, canned', 900, { part: 'fruit' }),
        food('bread flour', 200, { part: 'flour' }),
        food('cheddar', 100, { part: 'cheese' }),
      ],
      { kind: 'cobbler', method: 'bake' },
    );
    expect(cobbler.dishes[0]).toMatchObject({ way: 'not', needsHeat: ['bread flour'] });
    expect(cobbler.asTheyAre).toEqual(['cheddar', 'peaches, canned']);
  });
});

describe('coals under a roof', () => {
  const roofs = (say: string, kind: 'cook' | 'rise' = 'cook', place = 'a meadow') => {
    const camp = madeCamp();
    const step = {
      ...{ id: 's', kind, say, minutes: 10, hands: 1, skill: 'new', needsTable: false },
      after: [],
    };
    const recipe = madeRecipe({ steps: [step] as unknown as Recipe['steps'] });
    return campSafety({
      camp: { ...camp, place: { ...camp.place, name: place } },
      menu: { dishes: [madeDish()], recipes: [recipe] },
    }).cautions.filter(({ code }) => code === 'SAFETY_UNDER_ROOF');
  };

  it('are a danger wherever a step or the place says tent, car, cave, fly or room (cpsc-5012)', () => {
    for (const say of [
      'Bake it in the tent, out of the wind.',
      'Carry the oven into the big kitchen tent with its coals.',
      'Set it under the fly.',
      'Keep warm in your car.',
      'Bake inside a cave.',
      'Cook in a closed room.',
    ]) {
      expect(roofs(say), say).toHaveLength(1);
    }
    expect(roofs('Bake.', 'cook', 'Supper under a tarp')).toHaveLength(1);
  });

  it('are no matter for a dough that rises in a room, or for an oven in the open', () => {
    expect(roofs('Let it rise in a warm room overnight.', 'rise')).toEqual([]);
    expect(roofs('Let it rise in the kitchen, then bake.', 'rise')).toEqual([]);
    expect(roofs('Let it rise in the tent beside the coals.', 'rise')).toHaveLength(1);
    expect(roofs('Bake in the oven until brown, in full sun.')).toEqual([]);
  });
});
