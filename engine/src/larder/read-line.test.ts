import { describe, expect, it } from 'vitest';
import table from '../../data/larder.json' with { type: 'json' };
import choices from '../../data/larder-choices.json' with { type: 'json' };
import doubts from '../../data/larder-doubt.json' with { type: 'json' };
import portions from '../../data/larder-portions.json' with { type: 'json' };
import words from '../../data/larder-words.json' with { type: 'json' };
import { isRefusal } from '../notice/notice.ts';
import { grams } from '../quantity/unit.ts';
import { allFoods, anyFoodWithKey } from './all-foods.ts';
import { allAllergens } from './allergens.ts';
import { calledIn, findFood, readAsIn } from './find-food.ts';
import { foodWithKey } from './larder.ts';
import { nearestFoods } from './nearest.ts';
import { type FoodLabel, foodFromLabel } from './own-food.ts';
import { readLine } from './read-line.ts';

const line = (text: string, manner: 'us' | 'british' = 'us') =>
  readLine(text, { from: 0, to: text.length }, { manner });
const find = (text: string) => findFood(text, { from: 0, to: text.length }, { manner: 'us' });
const codes = (text: string) => line(text).notices.map(({ code }) => code);

describe('a line of a recipe', () => {
  it.each([
    ['2 cups flour', 'all-purpose-flour', 2 * 125, '20081'],
    ['1 cup bread flour', 'bread-flour', 137, '20083'],
    ['3 large eggs, beaten', 'egg', 3 * 50, '01123'],
    ['2 small eggs', 'egg', 2 * 38, '01123'],
    ['1 stick butter', 'butter-salted', 113, '01001'],
    ['1 packet active dry yeast', 'active-dry-yeast', 7.2, '18375'],
    ['1/2 cup brown sugar, packed', 'brown-sugar', 110, '19334'],
    ['1 cup loose brown sugar', 'brown-sugar', 145, '19334'],
    ['1 cup sifted powdered sugar', 'powdered-sugar', 100, '19336'],
    ['1 cup instant nonfat dry milk', 'dry-milk-instant', 68, '01092'],
    ['1 cup dry milk', 'dry-milk', 120, '01154'],
    ['1 cup shredded cheddar', 'cheddar', 113, '01009'],
    ['1 medium onion, chopped', 'onion', 110, '11282'],
    ['1 cup onions, chopped', 'onion', 160, '11282'],
    ['2 cloves garlic, minced', 'garlic', 6, '11215'],
    ['juice of 1 lemon', 'lemon-juice', 48, '09152'],
    ['4 slices bacon', 'bacon-raw', 4 * 28, '10123'],
    ['1 cup mashed banana', 'banana', 225, '09040'],
    ['1 tsp baking powder', 'baking-powder', 4.6, '18369'],
    ['2 T. lard', 'lard', 25.6, '04002'],
    ['1 cup walnuts, chopped', 'walnuts', 117, '12155'],
    ['flour ........ 2 cups', 'all-purpose-flour', 250, '20081'],
  ])('%s weighs what sr28 WEIGHT says', (text, key, wanted, ndb) => {
    const read = line(text);
    expect(read.search.food?.key).toBe(key);
    expect(read.search.food?.ndb).toBe(ndb);
    expect(read.weight?.likely).toBeCloseTo(wanted, 6);
  });

  it('tells flour sifted into the cup from flour sifted after it (herr41: 116 g, sr28: 125 g)', () => {
    expect(line('1 cup sifted flour').weight?.likely).toBe(116);
    expect(line('1 cup flour, sifted').weight?.likely).toBe(125);
  });

  it('weighs a scale as it stands, and pounds and ounces by nist-hb44', () => {
    expect(line('250 g flour').weight).toMatchObject({ low: 250, high: 250, doubt: 0 });
    expect(line('1 lb 4 oz beef').weight?.likely).toBeCloseTo(453.59237 + 4 * 28.349523125, 6);
    expect(line('1 cup (130 g) flour').weight?.likely).toBe(130);
  });

  it('keeps a range and adds the doubt of the cup to both ends', () => {
    const { weight } = line('3/4-1 cup milk');
    expect(weight?.low).toBeCloseTo(0.75 * 244 * 0.97, 6);
    expect(weight?.high).toBeCloseTo(244 * 1.03, 6);
    expect(codes('3/4-1 cup milk')).toContain('LARDER_AMOUNT_RANGE');
  });

  it('weighs drained tins by 277 g of solids to a 15-oz tin (sr28 NDB 16146)', () => {
    const { weight } = line('2 (15 oz) cans pinto beans, drained');
    expect(weight?.likely).toBeCloseTo(2 * 277, 0);
  });

  it('says what it could not do, and keeps the line', () => {
    expect(codes('1 cup zucchini, grated')).toEqual(['LARDER_FOOD_UNKNOWN']);
    expect(codes('a knob of butter')).toContain('LARDER_AMOUNT_LOOSE');
    expect(codes('salt to taste')).toContain('LARDER_AMOUNT_UNSAID');
    expect(codes('1 pint milk')).toContain('LARDER_US_OR_IMPERIAL');
    expect(codes('1 cup (240 g) flour')).toContain('LARDER_WEIGHT_DISAGREES');
    expect(codes('1/2 cup butter or lard')).toContain('LARDER_SECOND_FOOD');
    expect(codes('l/2 cup sugar')).toContain('LARDER_AMOUNT_MENDED');
    expect(codes('2 cups heritage flour')).toContain('LARDER_WORD_UNREAD');
  });
});

describe('the food that a line means', () => {
  it.each([
    ['2 tsp cumin', 'cumin', 'cumin, as ground spice'],
    ['1 lb cod', 'cod', 'cod, as white fish'],
    ['1 cup hazelnuts', 'hazelnuts', 'hazelnuts, as cashews'],
    ['2 tbsp canola oil', 'canola oil', 'canola oil'],
    ['1 cup flour', 'all-purpose flour', 'all-purpose flour'],
    ['1 cup raisins', 'raisins', 'raisins'],
  ])('%s stays what the cook called it where a row serves several', (text, called, readAs) => {
    const { search } = line(text);
    expect([calledIn(search), readAsIn(search)]).toEqual([called, readAs]);
  });

  it('shows what else a word may mean, with one of them taken', () => {
    expect(find('milk').choices.map(({ key }) => key)).toContain('milk-reduced-fat');
    expect(find('dry milk').choices.map(({ key }) => key)).toContain('dry-milk-instant');
    expect(find('whole milk').choices).toEqual([]);
  });

  it('is not the plain one where a word beside it makes another food of it', () => {
    for (const name of [
      'apple butter',
      'chicken soup',
      'vegan butter',
      'cocoa butter',
      'cashew milk',
    ]) {
      expect([name, find(name).food?.key]).toEqual([name, undefined]);
    }
    expect(find('almond flour').food?.allergens).toEqual(['tree-nut']);
  });

  it('is found whichever way round its words stand', () => {
    expect(find('yeast, active dry').food?.key).toBe('active-dry-yeast');
    expect(find('dry milk, instant').food?.key).toBe('dry-milk-instant');
    expect(find('azúcar').food?.key).toBe('sugar');
  });

  it('offers the nearest names for a slip of the pen', () => {
    expect(nearestFoods('buter').map(({ key }) => key)).toContain('butter-salted');
    expect(nearestFoods('baking powdr')[0]?.key).toBe('baking-powder');
    expect(nearestFoods('xqzv')).toEqual([]);
  });

  it('takes the British cornflour for starch and the American for flour', () => {
    expect(line('1 tbsp cornflour', 'british').search.food?.key).toBe('cornstarch');
    expect(line('1 tbsp corn flour').search.food?.key).toBe('corn-flour-whole');
  });
});

describe('tables of the larder', () => {
  it('name only foods that there are', () => {
    const keys = [
      ...portions.rows.map(({ food }) => food),
      ...words.rows.map(({ food }) => food),
      ...choices.rows.flatMap(({ usual, others }) => [usual, ...others]),
    ];
    expect(keys.filter((key) => anyFoodWithKey(key) === undefined)).toEqual([]);
    expect(new Set(allFoods.map(({ key }) => key)).size).toBe(allFoods.length);
  });

  it('doubt a cup by at least the gap between sr28 and herr41 where both weigh it', () => {
    const both = doubts.rows.filter((row) => 'herr41Grams' in row);
    expect(both.length).toBe(4);
    for (const { doubt, sr28Grams, herr41Grams } of both) {
      expect(doubt).toBeGreaterThanOrEqual(
        Math.abs(sr28Grams! - herr41Grams!) / sr28Grams! - 0.005,
      );
    }
  });

  it('have an example of every class of allergen, and no class that is not one of the fifteen', () => {
    const named = new Set(
      allFoods.flatMap(({ allergens, checkLabel }) => [...allergens, ...checkLabel]),
    );
    expect([...named].toSorted()).toEqual([...allAllergens].toSorted());
    const sure = new Set(allFoods.flatMap(({ allergens }) => allergens));
    expect([...sure].toSorted()).toEqual([...allAllergens].toSorted());
  });

  it('hold the three foods whose makers must say sulphite or fish (sr28 NDB 09032; from memory)', () => {
    expect(foodWithKey('apricots-dried')?.allergens).toEqual(['sulphite']);
    expect(anyFoodWithKey('worcestershire')?.allergens).toEqual(['fish']);
    expect(anyFoodWithKey('wine')?.allergens).toEqual(['sulphite']);
  });
});

describe("a cook's own food", () => {
  const label: FoodLabel = {
    key: 'mill-flour',
    name: 'Flour of our mill',
    part: 'flour',
    of: grams(100),
    manner: 'eu',
    energyKilocalories: 348,
    fatGrams: 1.4,
    carbohydrateGrams: 71,
    sugarGrams: 0.7,
    fibreGrams: 3.2,
    proteinGrams: 11.5,
    saltGrams: 0.01,
    measures: { cup: grams(132) },
    contains: ['wheat'],
  };
  const made = (more: Partial<FoodLabel>) => foodFromLabel({ ...label, ...more });
  const food = (more: Partial<FoodLabel> = {}) => {
    const own = made(more);
    if (isRefusal(own)) throw new Error(own.code);
    return own;
  };

  it('is per gram what its label says per 100 g, water being the rest', () => {
    const { food: own, notices } = food();
    expect(own.protein).toBeCloseTo(0.115, 12);
    expect(own.water).toBeCloseTo((100 - 1.4 - 71 - 3.2 - 11.5 - 0.0103) / 100, 4);
    expect(own.allergens).toEqual(['wheat', 'gluten']);
    expect(notices.map(({ code }) => code)).toEqual(['LARDER_OWN_WATER']);
  });

  it('is the same from an American serving, fibre counted as carbohydrate there', () => {
    const serving = food({
      of: grams(30),
      manner: 'us',
      energyKilocalories: 110,
      fatGrams: 0.5,
      carbohydrateGrams: 22,
      fibreGrams: 1,
      sugarGrams: 0,
      proteinGrams: 3,
      sodiumMilligrams: 0,
    });
    expect(serving.food.protein).toBeCloseTo(0.1, 12);
    expect(serving.notices.map(({ code }) => code)).toEqual(['LARDER_OWN_WATER']);
  });

  it('takes salt from sodium as sr28 table salt has it, and sodium from the salt of a label', () => {
    expect(food({ sodiumMilligrams: 387.58 }).food.salt).toBeCloseTo(0.01, 9);
    expect(food({ saltGrams: 1 }).food.salt).toBeCloseTo(400 / 38758, 9);
  });

  it('is refused where its parts are more than the whole, or a part can not be', () => {
    const codeOf = (more: Partial<FoodLabel>) => {
      const own = made(more);
      return isRefusal(own) ? own.code : 'made';
    };
    expect(codeOf({ proteinGrams: 40 })).toBe('LARDER_OWN_SUM');
    expect(codeOf({ fatGrams: -1 })).toBe('LARDER_OWN_IMPOSSIBLE');
    expect(codeOf({ fatGrams: 120 })).toBe('LARDER_OWN_IMPOSSIBLE');
    expect(codeOf({ of: grams(0) })).toBe('LARDER_OWN_IMPOSSIBLE');
    expect(codeOf({ energyKilocalories: 1200 })).toBe('LARDER_OWN_IMPOSSIBLE');
    expect(codeOf({ sugarGrams: 80 })).toBe('LARDER_OWN_IMPOSSIBLE');
    expect(codeOf({ energyKilocalories: Number.NaN })).toBe('LARDER_OWN_IMPOSSIBLE');
  });

  it('is doubted where its energy is more than a fifth from 4, 9 and 4 kcal/g (labelEnergy)', () => {
    const off = food({ energyKilocalories: 150 }).notices.map(({ code }) => code);
    expect(off).toContain('LARDER_OWN_ENERGY');
  });

  it('never leaves out an allergen that is doubtful', () => {
    const { contains: _, ...unread } = label;
    const open = foodFromLabel(unread);
    if (isRefusal(open)) throw new Error(open.code);
    expect(open.food.checkLabel).toEqual(allAllergens);
    const sounds = food({ name: 'Peanut milk bar', contains: [] });
    expect(sounds.food.checkLabel).toEqual(expect.arrayContaining(['peanut', 'milk']));
    expect(sounds.notices.map(({ code }) => code)).toContain('LARDER_OWN_ALLERGEN_LIKELY');
    const cleared = food({
      name: 'Peanut milk bar',
      contains: [],
      labelSaysFree: ['milk', 'peanut'],
    });
    expect(cleared.food.checkLabel).toEqual([]);
  });

  it('is found in a recipe by its name, before the foods of the larder', () => {
    const own = [food().food];
    const text = '2 cups flour of our mill';
    const read = readLine(text, { from: 0, to: text.length }, { manner: 'us', own });
    expect(read.search.food?.key).toBe('mill-flour');
    expect(read.weight?.likely).toBe(264);
  });

  it('takes every row of sr28 as a label, and doubts the energy of those alone that are not food for it', () => {
    const rows = table.rows.filter(({ ndb }) => ndb !== undefined);
    expect(rows.length).toBe(140);
    const read = rows.map((row) =>
      made({
        name: row.name,
        manner: 'us',
        energyKilocalories: row.kilocalories,
        fatGrams: row.fat,
        carbohydrateGrams: row.carbohydrate,
        sugarGrams: Math.min(row.sugar ?? 0, row.carbohydrate),
        fibreGrams: row.fibre ?? 0,
        proteinGrams: row.protein,
        sodiumMilligrams: row.sodiumMilligrams,
        waterGrams: row.water,
      }),
    );
    expect(rows.filter((_, at) => isRefusal(read[at]!)).map(({ key }) => key)).toEqual([]);
    const doubted = rows.filter((_, at) => {
      const own = read[at]!;
      return !isRefusal(own) && own.notices.some(({ code }) => code === 'LARDER_OWN_ENERGY');
    });
    // Salts of powder count as carbohydrate in the release, alcohol and acid are none of the three,
    // and cocoa has factors of its own.
    const known = [
      'baking-powder',
      'baking-powder-phosphate',
      'baking-powder-low-sodium',
      'vanilla',
      'vinegar-cider',
      'vinegar-distilled',
      'cocoa',
    ];
    expect(doubted.map(({ key }) => key).toSorted()).toEqual(known.toSorted());
  });
});
