import { describe, expect, it } from 'vitest';
import { madeCamp, madeDish, madeIngredient, madeRecipe } from '../../validation/bake/made.ts';
import type { Allergen, Camp, Need } from '../camp/camp.ts';
import type { Menu } from '../menu/menu.ts';
import { fromFahrenheit, metres, metresPerSecond, ratio } from '../quantity/unit.ts';
import { campSafety } from './camp-safety.ts';

const none: Menu = { dishes: [], recipes: [] };
const codes = (camp: Camp, menu: Menu = none) =>
  campSafety({ camp, menu }).cautions.map((each) => each.code);

describe('may coals be lit', () => {
  it('is forbidden at stage 1 outside built-in grates and at stage 2 (fire-stages)', () => {
    const fire = (restriction: Camp['restriction']) =>
      campSafety({ camp: madeCamp({ restriction }), menu: none }).fire;
    expect(fire('none')).toBe('allowed');
    expect(fire('stage-1')).toBe('forbidden');
    expect(fire('stage-2')).toBe('forbidden');
    expect(fire('coals-allowed-here')).toBe('allowed');
  });

  it('is to be asked where nobody has said; unknown is not none', () => {
    const found = campSafety({ camp: madeCamp({ restriction: 'unknown' }), menu: none });
    expect(found.fire).toBe('ask');
    expect(found.cautions[0]).toMatchObject({ code: 'SAFETY_FIRE_ASK', level: 'danger' });
  });
});

describe('wind', () => {
  const [hour] = madeCamp().weather;
  const blowing = (milesPerHour: number, humidity?: number, fahrenheit = 80) =>
    madeCamp({
      weather: [
        {
          ...hour!,
          wind: metresPerSecond(milesPerHour * 0.44704),
          air: fromFahrenheit(fahrenheit),
          ...(humidity === undefined ? {} : { humidity: ratio(humidity) }),
        },
      ],
    });

  it('of 15 mph with air at most 25 % damp and above 75 F is Red Flag weather (red-flag-example)', () => {
    expect(codes(blowing(15.01, 0.25))).toContain('SAFETY_WIND_RED_FLAG');
    expect(codes(blowing(15.01, 0.4))).not.toContain('SAFETY_WIND_RED_FLAG');
    expect(codes(blowing(15.01, 0.2, 70))).not.toContain('SAFETY_WIND_RED_FLAG');
  });

  it('of 15 mph is said even where the damp is not known, and 10 mph wants a screen (judged)', () => {
    expect(codes(blowing(16))).toContain('SAFETY_WIND_STRONG');
    expect(codes(blowing(12))).toContain('SAFETY_WIND_FRESH');
    expect(codes(blowing(5)).filter((code) => code.includes('WIND'))).toEqual([]);
  });
});

describe('the strip', () => {
  it('always says carbon monoxide, hot iron, clear ground, water at hand (cpsc-5012, usfs-campfire)', () => {
    const { strip } = campSafety({ camp: madeCamp(), menu: none });
    expect(strip.map((each) => each.code)).toEqual([
      'SAFETY_CARBON_MONOXIDE',
      'SAFETY_HOT_IRON',
      'SAFETY_CLEAR_GROUND',
      'SAFETY_WATER_AT_HAND',
    ]);
    expect(strip[2]?.values.circleMetres).toBeCloseTo(3.048, 9);
  });

  it('is joined by a fire pan on grass and by boiling for wild water, 3 min at 2,100 m', () => {
    const { place } = madeCamp();
    const camp = madeCamp({
      place: {
        ...place,
        ground: 'grass',
        hearth: 'ground',
        elevation: metres(2100),
        water: 'spring, filtered',
      },
    });
    const { cautions } = campSafety({ camp, menu: none });
    expect(cautions.map((each) => each.code)).toContain('SAFETY_FIRE_PAN');
    const treat = cautions.find((each) => each.code === 'SAFETY_TREAT_WATER');
    expect(treat?.values.boilMinutes).toBe(3);
    expect(treat?.level).toBe('note'); // the camp says that it is filtered
    const raw = campSafety({
      camp: { ...camp, place: { ...camp.place, water: 'creek' } },
      menu: none,
    });
    const boil = raw.cautions.find((each) => each.code === 'SAFETY_TREAT_WATER');
    expect(boil?.level).toBe('danger');
  });
});

describe('who can not eat what', () => {
  const menuWith = (allergens: readonly Allergen[], checkLabel: readonly Allergen[] = []) => ({
    dishes: [madeDish()],
    recipes: [
      madeRecipe({
        ingredients: [madeIngredient('our own thing', 100, { allergens, checkLabel })],
      }),
    ],
  });
  const unfit = (need: Omit<Need, 'who'>, menu: Menu) =>
    campSafety({ camp: madeCamp({ needs: [{ who: 'a guest', ...need }] }), menu }).unfit.map(
      (each) => each.because,
    );

  it('wheat is unfit without gluten; other gluten leaves a label to read for wheat', () => {
    expect(unfit({ kind: 'gluten', strictness: 'avoid' }, menuWith(['wheat']))).toEqual(['wheat']);
    expect(unfit({ kind: 'wheat', strictness: 'avoid' }, menuWith(['gluten']))).toEqual([
      'label not read: gluten',
    ]);
  });

  it('a label that is not read is never taken as absent', () => {
    const menu = menuWith([], ['milk']);
    expect(unfit({ kind: 'milk', strictness: 'avoid' }, menu)).toEqual([
      'label not read: our own thing',
    ]);
    expect(unfit({ kind: 'egg', strictness: 'avoid' }, menu)).toEqual([]);
  });

  it('strict means kept apart, a preference is not counted', () => {
    const menu = menuWith([]);
    expect(unfit({ kind: 'milk', strictness: 'strict' }, menu)).toEqual(['not kept apart']);
    expect(unfit({ kind: 'milk', strictness: 'preference' }, menuWith(['milk']))).toEqual([]);
  });

  it('meat is unfit for a vegetarian, milk for a vegan only', () => {
    const meat = {
      dishes: [madeDish()],
      recipes: [madeRecipe({ ingredients: [madeIngredient('beef chuck', 100, { part: 'meat' })] })],
    };
    expect(unfit({ kind: 'vegetarian', strictness: 'avoid' }, meat)).toEqual(['beef chuck']);
    const milk = menuWith(['milk']);
    expect(unfit({ kind: 'vegetarian', strictness: 'avoid' }, milk)).toEqual([]);
    expect(unfit({ kind: 'vegan', strictness: 'avoid' }, milk)).toHaveLength(1);
  });

  it('a guest with nothing left to eat is named', () => {
    const camp = madeCamp({ needs: [{ who: 'a guest', kind: 'milk', strictness: 'avoid' }] });
    expect(codes(camp, menuWith(['milk']))).toContain('SAFETY_NOTHING_TO_EAT');
  });
});
