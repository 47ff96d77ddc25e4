// Appetites, published portions, ladles and scoops, cooked yields, each against a table from outside.

import { describe, expect, it } from 'vitest';
import energy from '../../../validation/menu/appetite-energy.json' with { type: 'json' };
import guide from '../../../validation/menu/buying-guide.json' with { type: 'json' };
import { campMade, dishMade, recipeMade } from '../../../validation/menu/made.ts';
import cards from '../../../validation/menu/published-portions.json' with { type: 'json' };
import tools from '../../../validation/menu/serving-tools.json' with { type: 'json' };
import type { Appetite } from '../../camp/camp.ts';
import { fromUnit, inUnit } from '../../quantity/convert.ts';
import { cubicMetres, minutes, ratio } from '../../quantity/unit.ts';
import { portionsFor } from '../portions.ts';
import { menuTrouble } from '../trouble.ts';
import { appetiteFactor, appetiteRows, hungerOf, latecomersIn } from './appetites.ts';
import { boiledVolume, cookYieldOf, rawByGuide, rawForCooked } from './cooked.ts';
import { publishedBeside, publishedPortions } from './published.ts';
import { inCups, servedWith, toolHolds } from './serving-tools.ts';

type EnergyRow = readonly [Appetite, number, number, number];
const ordinary = 2300; // kcal, mean of the first row of calorieNeeds

describe('appetites', () => {
  it.each(energy.rows as unknown as readonly EnergyRow[])(
    'a %s eats as calorieNeeds table A2-1 says that he or she needs',
    (appetite, men, women, tolerance) => {
      const expected = (men + women) / 2 / ordinary;
      expect(Math.abs(appetiteFactor(appetite) / expected - 1)).toBeLessThanOrEqual(tolerance);
    },
  );

  it('hard work is 4,200 over 3,000 kcal (hardWorkRations)', () => {
    expect(appetiteFactor('hard-work')).toBeCloseTo(4200 / 3000, 9);
  });

  it('are told one row each and add up to the hunger of the camp', () => {
    const groups = [
      { count: 3, appetite: 'child' },
      { count: 10, appetite: 'ordinary' },
      { count: 2, appetite: 'child' },
    ] as const;
    const rows = appetiteRows(groups);
    expect(rows.map(({ appetite, mouths }) => [appetite, mouths])).toEqual([
      ['child', 5],
      ['ordinary', 10],
    ]);
    const sum = rows.reduce((all, { mouths, factor }) => all + mouths * factor, 0);
    expect(sum).toBeCloseTo(hungerOf(groups), 12);
  });
});

describe('latecomers and reserve', () => {
  const stew = recipeMade('stew', { beef: 1000 }, { kind: 'stew', portions: 10 });
  const late = [
    { count: 15, appetite: 'ordinary' },
    { count: 5, appetite: 'ordinary', late: minutes(30) },
  ] as const;

  it('who come late eat a quarter of it when they are a quarter, and nothing is added for them', () => {
    const all = portionsFor(
      dishMade(stew),
      stew,
      campMade({ mouths: [{ count: 20, appetite: 'ordinary' }] }),
    );
    const found = portionsFor(dishMade(stew), stew, campMade({ mouths: late }));
    expect(found.portions).toBe(all.portions);
    expect(found.late).toBe(5);
    expect(latecomersIn(late)).toEqual({ mouths: 5, share: 0.25, minutes: 30 });
  });

  it('are told apart where they come later than the dish waits', () => {
    const codes = (mayWait: number) =>
      portionsFor(dishMade(stew, { mayWait: minutes(mayWait) }), stew, campMade({ mouths: late }))
        .notices.map(({ code }) => code)
        .filter((code) => code.startsWith('MENU_LATE'));
    expect(codes(60)).toEqual(['MENU_LATECOMERS']);
    expect(codes(10)).toEqual(['MENU_LATE_LONGER']);
  });

  it('a reserve that the cook says wins over the usual one, none included', () => {
    const camp = campMade({ mouths: [{ count: 20, appetite: 'ordinary' }] });
    const held = (reserve?: number) =>
      portionsFor(
        dishMade(stew, reserve === undefined ? {} : { reserve: ratio(reserve) }),
        stew,
        camp,
      ).reserve;
    expect([held(), held(0.25), held(0)]).toEqual([1, 5, 0]);
  });

  it('negative portions are refused by the path of the dish, with the number found', () => {
    const dish = dishMade(stew, { portions: -4 });
    const { refusals } = menuTrouble({ dishes: [dish], recipes: [stew] }, campMade());
    expect(refusals).toMatchObject([
      {
        code: 'MENU_PORTIONS_NEGATIVE',
        conflicts: [`menu.${dish.id}.portions`],
        values: { portions: -4 },
      },
    ]);
  });
});

describe('published portions', () => {
  it.each(cards.rows as unknown as readonly (readonly [string, number])[])(
    'the row %s weighs what the reference notes of its card say, to their rounding',
    (key, gramsEach) => {
      const row = publishedPortions().find((each) => each.key === key);
      expect(Math.abs((row?.gramsEach ?? 0) - gramsEach)).toBeLessThanOrEqual(0.051);
    },
  );

  it('leaves out no row of the cards', () => {
    expect(cards.rows).toHaveLength(publishedPortions().length);
  });

  it('stands beside a stew of the card itself as one to one (armedForcesRecipes L-23)', () => {
    const base = recipeMade('stew', { beef: 100 }, { kind: 'stew', portions: 100 });
    const [beef] = base.ingredients;
    const card = {
      ...base,
      ingredients: [{ ...beef!, part: 'meat' as const, grams: fromUnit(30, 'pound') }],
    };
    const [row] = publishedBeside(card);
    expect(row?.ours).toBeCloseTo(row?.gramsEach ?? 0, 9);
    expect(inCups(row?.volume ?? cubicMetres(0))).toBeCloseTo(1.25, 9);
  });
});

type ToolRow = readonly ['ladle' | 'scoop', number, number, number];

describe('ladles and scoops', () => {
  it.each(tools.rows as unknown as readonly ToolRow[])(
    'a %s of size %s holds what servingBasics prints, as far as it rounds',
    (tool, size, cups, tolerance) => {
      expect(Math.abs(inCups(toolHolds(tool, size)) / cups - 1)).toBeLessThanOrEqual(tolerance);
    },
  );

  it('eight scoops of number 8 are a quart (servingBasics)', () => {
    expect(8 * toolHolds('scoop', 8)).toBeCloseTo(fromUnit(1, 'us-quart'), 12);
  });

  it('serves half a cup by one scoop of number 8 and a cup and a half by one ladle of 12', () => {
    const cups = (amount: number) => fromUnit(amount, 'us-cup');
    expect(servedWith(cups(0.5), 'scoop')).toMatchObject({ size: 8, times: 1 });
    expect(servedWith(cups(1.5), 'ladle')).toMatchObject({ size: 12, times: 1 });
    expect(servedWith(cups(1.25), 'ladle')).toMatchObject({ size: 3, times: 3 }); // 9 of 10 fl oz
  });

  it('never serves an eighth more or less than the portion, and says nothing of what is too large', () => {
    for (let tenths = 1; tenths <= 45; tenths += 1) {
      const portion = fromUnit(tenths / 10, 'us-cup');
      const found = servedWith(portion, 'ladle');
      if (found === undefined) continue;
      expect(Math.abs((found.holds * found.times) / portion - 1)).toBeLessThanOrEqual(0.125);
    }
    expect(servedWith(fromUnit(10, 'us-cup'), 'ladle')).toBeUndefined();
    expect(servedWith(cubicMetres(0), 'scoop')).toBeUndefined();
  });
});

type GuideRow = readonly ['guide' | 'yield', number, number, number, number];

describe('what is left of meat', () => {
  it.each(guide.rows as unknown as readonly GuideRow[])(
    'by the %s: raw meat for %s servings (usdaBuyingGuide; the guide rounds)',
    (way, servings, ounces, pounds, tolerance) => {
      const asked = {
        servings,
        cookedEach: fromUnit(ounces, 'ounce'),
        factor: cookYieldOf('ground beef')?.factor ?? 0,
      };
      const raw = way === 'guide' ? rawByGuide(asked) : rawForCooked(asked);
      expect(Math.abs(inUnit(raw, 'pound') - pounds)).toBeLessThanOrEqual(tolerance);
    },
  );

  it('round of beef is 4 1/2 oz on the plate of 40 lb for 100 (armedForcesRecipes L-5)', () => {
    const cooked = (40 * 16 * (cookYieldOf('beef round')?.factor ?? 0)) / 100;
    expect(cooked).toBeCloseTo(4.5, 2);
  });

  it('refuses a yield over one or of nothing, with the yield in the message', () => {
    const asked = { servings: 1, cookedEach: fromUnit(1, 'ounce') };
    for (const factor of [1.19, 0, -1, Number.NaN])
      expect(() => rawForCooked({ ...asked, factor })).toThrow(String(factor));
  });

  it('a pound of dry beans is five to seven cups, of rice 8.33 (fns23, armedForcesRecipes E-5)', () => {
    const pound = fromUnit(1, 'pound');
    const cups = (name: string) => inCups(boiledVolume(name, pound) ?? cubicMetres(0));
    expect(cups('dry pinto beans')).toBeGreaterThanOrEqual(5);
    expect(cups('dry pinto beans')).toBeLessThanOrEqual(7);
    expect(cups('rice, long grain')).toBeCloseTo(8.33, 6);
    expect(boiledVolume('beef', pound)).toBeUndefined();
  });
});
