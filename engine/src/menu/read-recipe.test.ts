import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import cases from '../../validation/menu/pasted-recipes.json' with { type: 'json' };
import { percentagesOf } from '../formula/dough.ts';
import { isRefusal } from '../notice/notice.ts';
import { fromCelsius, fromFahrenheit } from '../quantity/index.ts';
import { MOST_TEXT, type RecipeReadOptions, readRecipeText } from './read-recipe.ts';

interface Case {
  readonly hand: string;
  readonly text: string;
  readonly kind: string;
  readonly foods: readonly (readonly [string, number, number])[];
  readonly pieces?: number;
  readonly portions?: number;
  readonly ovenFahrenheit?: number;
  readonly ovenCelsius?: number;
  readonly cookMinutes?: number;
  readonly ovenInches?: number;
}
const rows = cases.rows as unknown as readonly Case[];

function read(text: string, options: RecipeReadOptions = {}) {
  const found = readRecipeText(text, options);
  if (isRefusal(found)) throw new Error(found.code);
  return found;
}

describe('ten messy recipes of our own invention', () => {
  const foodsIn = (text: string) =>
    Object.fromEntries(
      read(text).ingredients.map(({ line, grams }) => [line.search.food?.key ?? 'none', grams]),
    );

  it('has a title that is no food, without marks, bars, dashes or its yield', () => {
    const list =
      '\n2 cups flour\n1 cup milk\n1 tbsp baking powder\n\nMix. Bake at 400 F for 20 minutes.';
    for (const [line, title] of [
      [
        'SODA BREAD (from the back of an envelope!!)',
        'SODA BREAD (from the back of an envelope!!)',
      ],
      ['**Camp bread** — serves 10-12', 'Camp bread'],
      ['Scones (makes a dozen)', 'Scones'],
      ['Trail biscuits  |  6 servings  |  Prep 10m', 'Trail biscuits'],
    ] as const) {
      const found = read(line + list);
      expect(found.title).toBe(title);
      expect(found.ingredients).toHaveLength(3);
    }
  });

  it('takes foods that only the work tells, once, and not the water that is poured away', () => {
    const roast = foodsIn(
      'Pot roast for 8: get a 4 lb chuck roast. Sear in 2 tablespoons of lard. Throw in 6 carrots, ' +
        '2 onions and a cup of beef broth. 3 hrs slow.',
    );
    // sr28 WEIGHT: a tablespoon of lard 12.8 g, a medium carrot 61 g, a medium onion 110 g.
    expect(roast.lard).toBeCloseTo(2 * 12.8, 3);
    expect(roast.carrot).toBeCloseTo(6 * 61, 3);
    expect(roast.onion).toBeCloseTo(2 * 110, 3);
    expect(roast['stock-meat']).toBeGreaterThan(200);
    const beans = foodsIn(
      'Beans\n1 lb dry pinto beans\n1 tsp salt\n\nSoak in 8 cups of water. Add 1 tsp salt. Simmer in 2 T. lard 2 hours.',
    );
    expect(Object.keys(beans).toSorted()).toEqual(['beans-pinto-dry', 'lard', 'salt']);
    expect(beans.salt).toBeCloseTo(6, 3); // once, sr28 NDB 02047
  });

  it('knows SR flour, yeast with its kind behind the amount, and a box by its brackets', () => {
    const foods = foodsIn(
      'Things\n8 oz SR flour\nyeast 1/4 tsp instant\n1 box yellow cake mix (15.25 oz)\nsalt & pepper\n2 (21-oz) cans blueberry pie filling',
    );
    expect(foods['self-rising-flour']).toBeCloseTo(226.8, 1);
    expect(foods['instant-yeast']).toBeGreaterThan(0.5);
    expect(foods['cake-mix']).toBeCloseTo(15.25 * 28.349523125, 3); // nist-hb44
    expect(Object.keys(foods)).toContain('black-pepper');
    expect(Object.keys(foods)).not.toContain('blueberries'); // starch and sugar, no berries alone
  });

  it('reads a night on the counter, a pot heated before, and a lid taken off half way', () => {
    const { steps, heat } = read(
      'Bread\n430 g flour\n345 ml water\n8 g salt\n1 g instant yeast\n\nEvening before: mix all in a bowl, cover. Leave 12-18h on the counter.\nMorning: shape into ball. Proof 2 hrs on a towel.\nHeat the pot w/ lid 30min at 450F. Lid on 30 min, lid off 15 min more.',
    );
    const kinds = steps.map(({ kind }) => kind);
    expect(kinds).toEqual(['mix', 'rise', 'shape', 'second-rise', 'cook']);
    expect(steps.at(-1)!.minutes).toEqual([45, 45]);
    expect(heat?.low).toBeCloseTo(fromFahrenheit(450), 6);
  });

  it('counts rolls that are cut from a roll, and does not take the sheet for their thickness', () => {
    const found = read(
      'Cinnamon rolls\n500 g bread flour\n300 g milk\n7 g instant yeast\n\nMix. Let rise 1 hour. Roll out 1/4 inch thick. Spread butter. Roll up and slice into 12. Let rise 30 min. Bake 375 F 25 minutes.',
    );
    expect(found.recipe!.division).toMatchObject([{ shape: 'roll', count: 12 }]);
    expect(found.recipe!.portions).toBe(12);
    expect(found.recipe!.target.thickness).toBeUndefined();
  });

  it('drops no work for the coals that stand behind it', () => {
    const { steps } = read(
      'Biscuits\n2 cups flour\n3/4 cup milk\n1 tbsp baking powder\n\nmix, drop by spoonfuls on paper in the oven; hot lid (20 briquettes), 8 underneath. done in ~15m when golden.',
    );
    const said = steps.map(({ say }) => say).join(' ');
    expect(said).toMatch(/drop by spoonfuls/);
    expect(steps.find(({ kind }) => kind === 'cook')?.minutes).toEqual([15, 15]);
  });
});

describe('recipes in many hands', () => {
  it('are at least 25', () => expect(rows.length).toBeGreaterThanOrEqual(25));

  it.each(rows.map((row) => [row.hand, row] as const))(
    'weigh, line by line, what was counted by hand from sr28 WEIGHT: %s',
    (_hand, row) => {
      const found = read(row.text).ingredients.map(({ line, grams }) => [
        line.search.food?.key,
        Math.round(grams * 10) / 10,
      ]);
      const wanted = row.foods.map(([key, amount, each]) => [
        key,
        Math.round(amount * each * 10) / 10,
      ]);
      expect(found.map(([key]) => key)).toEqual(wanted.map(([key]) => key));
      for (const [at, [key, mass]] of wanted.entries()) {
        const off = Math.abs(Number(found[at]![1]) / Number(mass) - 1);
        expect([key, mass, found[at]![1], off < 0.006]).toEqual([key, mass, found[at]![1], true]);
      }
    },
  );

  it.each(rows.map((row) => [row.hand, row] as const))(
    'say kind, heat, minutes, yield and oven as they are written: %s',
    (_hand, row) => {
      const { kind, recipe, heat, ovenSize, yield: said } = read(row.text);
      const { ovenFahrenheit, ovenCelsius, cookMinutes } = row;
      expect(kind.kind).toBe(row.kind);
      if (ovenFahrenheit !== undefined)
        expect(heat?.low).toBeCloseTo(fromFahrenheit(ovenFahrenheit), 6);
      if (ovenCelsius !== undefined) expect(heat?.low).toBeCloseTo(fromCelsius(ovenCelsius), 6);
      const cook = recipe?.steps.find((step) => step.kind === 'cook');
      if (cookMinutes !== undefined) expect(cook?.minutes).toBe(cookMinutes);
      if (row.pieces !== undefined) expect(said?.pieces?.count).toBe(row.pieces);
      if (row.portions !== undefined) expect(recipe?.portions).toBe(row.portions);
      if (row.ovenInches !== undefined) {
        expect(ovenSize?.diameter).toBeCloseTo(row.ovenInches * 0.0254, 9);
      }
    },
  );
});

describe('every letter of a text', () => {
  const covers = (text: string) => {
    const { pieces } = read(text);
    return pieces.map(({ span }) => text.slice(span.from, span.to)).join('');
  };

  it('stands in exactly one piece, in order, in every recipe of the table', () => {
    for (const { text } of rows) expect(covers(text)).toBe(text);
  });

  it('stands in exactly one piece whatever the text is (seed 1887)', () => {
    const scraps = fc.constantFrom(
      ...rows.flatMap(({ text }) => text.split(/(?<=[\s,.])/u)),
      '\r\n',
      '\u2028',
      '½',
      '(',
      ')',
      '\0',
      '😀',
      'ﬁ',
      '1/0',
      '  ',
      '-',
      '•',
      'Method:',
      'For the topping:',
    );
    const texts = fc.oneof(
      fc.array(scraps, { maxLength: 60 }).map((all) => all.join('')),
      fc.string({ unit: 'binary', maxLength: 300 }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        fc.pre(text.trim() !== '');
        expect(covers(text)).toBe(text);
        const { recipe } = read(text);
        for (const { grams, isUnweighed } of recipe?.ingredients ?? [])
          expect(isUnweighed ? grams === 0 : 0 < grams && Number.isFinite(grams)).toBe(true);
        for (const { minutes } of recipe?.steps ?? []) expect(Number.isFinite(minutes)).toBe(true);
      }),
      { seed: 1887, numRuns: 400 },
    );
  }, 60_000);

  it('is kept where it was not understood, word for word', () => {
    const text =
      'Loaf\n2 cups flour\nxyzzy plugh the frobnitz, they said.\n1 cup milk\nMix. Bake 30 min at 375 F.';
    const { unread, ingredients } = read(text);
    const kept = unread.map(({ span }) => text.slice(span.from, span.to).trim());
    expect(kept).toEqual(['xyzzy plugh the frobnitz, they said.']);
    expect(ingredients.length).toBe(2);
  });
});

describe('hostile and huge texts', () => {
  it('of 10 kB are read, and of 1 MB are refused by name', () => {
    const long = rows.map(({ text }) => text).join('\n\n');
    const tenKilobytes = long.repeat(3).slice(0, 10_240);
    expect(read(tenKilobytes).ingredients.length).toBeGreaterThan(20);
    const refused = readRecipeText('1 cup flour\n'.repeat(90_000));
    expect(isRefusal(refused) && refused.code).toBe('MENU_TEXT_TOO_LONG');
    const empty = readRecipeText(' \n\t ');
    expect(isRefusal(empty) && empty.code).toBe('MENU_TEXT_EMPTY');
  });

  it('as long as is taken are read to their end or refused by name, whatever stands in them', () => {
    const scraps = [
      '1 cup flour\n',
      '1',
      '1/',
      ' ',
      '(',
      'a ',
      '1 and ',
      '½ ',
      'bake ',
      '. ',
      'x\n',
      '\n',
      '2 (15 oz',
      'flour, ',
      '1-',
      'an hour and ',
      'serves ',
      'oven ',
      '9x',
      '°',
      'for the ',
    ];
    for (const scrap of scraps) {
      const text = scrap.repeat(Math.floor(MOST_TEXT / scrap.length));
      if (text.trim() === '') continue;
      const found = readRecipeText(text);
      if (isRefusal(found)) expect(found.code).toMatch(/^MENU_TEXT_/);
      else expect(found.pieces.at(-1)?.span.to).toBe(text.length);
    }
  }, 60_000);
});

describe('what a text leaves open', () => {
  it('fills an unmeasured liquid up to the published range of biscuits, 52 to 68 % of the flour', () => {
    const { recipe, notices } = read(
      'Bread\n500 g flour\n10 g salt\n15 g baking powder\nmilk to mix\nBake 30 min at 375 F.',
    );
    const lines = recipe!.ingredients.map((ingredient) => ({
      ingredient,
      grams: ingredient.grams,
    }));
    const hydration = percentagesOf(lines)!.hydration;
    expect(0.52 <= hydration && hydration <= 0.68).toBe(true);
    expect(notices.map(({ code }) => code)).toContain('MENU_TEXT_LIQUID');
  });

  it('is corrected by the cook: kind, portions, name, food of a line, and what a line is', () => {
    const text = 'Something\n2 cups flour\n1 cup milk\nA line that is a step to us.';
    const own = read(text, {
      corrections: {
        kind: 'corn-bread',
        portions: 9,
        name: 'Mine',
        foods: { 2: 'milk-reduced-fat' },
        roles: { 3: 'note' },
      },
    });
    expect([own.kind.kind, own.kind.because, own.recipe?.portions, own.title]).toEqual([
      'corn-bread',
      'cook-said',
      9,
      'Mine',
    ]);
    expect(own.ingredients[1]?.line.search.food?.key).toBe('milk-reduced-fat');
    expect(own.pieces[3]?.role).toBe('note');
  });

  it('takes a British pint for a British recipe, and says so', () => {
    const british = read('Loaf\n450 g plain flour\n1 pint milk\n1 tsp bicarbonate of soda');
    expect(british.manner).toBe('british');
    expect(british.ingredients[1]?.grams).toBeCloseTo((244 / 236.5882365) * 568.26125, 3);
    expect(british.notices.map(({ code }) => code)).toContain('LARDER_US_OR_IMPERIAL');
  });

  it('reads the trade example (common practice, no source) as 250 g, 2 spoons and thirds of cups', () => {
    const { ingredients } = read(
      '250 g flour\n2 tablespoons lard\na third of a cup of oil\nthree quarters to a cup of milk',
    );
    const weights = ingredients.map(({ grams }) => Math.round(grams));
    expect(weights).toEqual([
      250,
      Math.round(2 * 12.8),
      Math.round(218 / 3),
      Math.round(0.875 * 244),
    ]);
  });
});
