import { describe, expect, it } from 'vitest';
import { isRefusal } from '../notice/notice.ts';
import { fromFahrenheit } from '../quantity/index.ts';
import { readRecipeText } from './read-recipe.ts';

// Letters and notes of our own invention; weights of a cup by hand from sr28 (flour 125 g, NDB 20081).

function read(text: string) {
  const found = readRecipeText(text);
  if (isRefusal(found)) throw new Error(found.code);
  return found;
}

const LETTER = `Dear all,
Here's the bread I promised. You want about two cups of flour, heaped, a good
knob of butter and a tablespoon of baking powder. Salt to taste.
1 c. dry milk
Milk to make a soft dough
3 blorps of frumious
It ought to go in a 10 inch oven for 30 minutes at 375.
Love, the aunt up the road
`;

describe('a recipe in a letter', () => {
  const found = read(LETTER);
  const said = (role: string) =>
    found.pieces
      .filter((piece) => piece.role === role)
      .map(({ span }) => LETTER.slice(span.from, span.to).trim());
  const food = (key: string) => found.ingredients.find(({ line }) => line.search.food?.key === key);

  it('keeps greeting and signature as prose, none of them a food or a title', () => {
    expect(said('note').at(0)).toBe('Dear all,');
    expect(said('note').at(-1)).toBe('Love, the aunt up the road');
    expect(found.recipe!.steps.map(({ kind }) => kind)).toEqual([
      'mix',
      'load',
      'cook',
      'take-out',
    ]);
    expect(found.title).toBe('Pasted recipe');
    expect(found.ingredients.map(({ written }) => written).join()).not.toMatch(/Love|Dear/);
  });

  it('takes the flour that only its prose tells, and how full its cups are', () => {
    const flour = food('all-purpose-flour')!;
    expect(flour.grams).toBeGreaterThan(1.1 * 2 * 125);
    expect(flour.grams).toBeLessThan(1.3 * 2 * 125);
  });

  it('takes heat, oven and minutes from one sentence of talk', () => {
    expect(found.heat!.low).toBeCloseTo(fromFahrenheit(375), 6);
    expect(found.ovenSize!.diameter).toBeCloseTo(0.254, 6);
    expect(found.recipe!.target.writer!.minutes).toEqual([30, 30]);
    expect(found.unread).toEqual([]);
  });

  it('fills up milk that is to make a soft dough, 63 to 71 % (battersAndDoughs), as assumed', () => {
    const milk = food('milk')!;
    expect(milk.from).toBe('filled-up');
    expect(milk.line.search.forms.measured).toEqual([]);
    const flour = food('all-purpose-flour')!.grams;
    const share = (milk.grams + food('dry-milk')!.grams * 0.03) / flour;
    expect(share).toBeGreaterThan(0.6);
    expect(share).toBeLessThan(0.71);
    const stiff = read(LETTER.replace('soft', 'stiff'));
    const less = stiff.ingredients.find(({ line }) => line.search.food?.key === 'milk')!;
    expect(less.grams).toBeLessThan(0.9 * milk.grams);
  });

  it('keeps what nobody can weigh with its line', () => {
    expect(found.ingredients.filter(({ from }) => from === 'unknown').length).toBe(2);
  });
});

describe('number words and how full', () => {
  const grams = (line: string) =>
    read(`Bread\nIngredients:\n${line}\n1 cup water`).ingredients[0]!.grams;

  it.each([
    ['one', 1],
    ['two', 2],
    ['three', 3],
    ['four', 4],
    ['five', 5],
    ['six', 6],
    ['seven', 7],
    ['eight', 8],
    ['nine', 9],
    ['ten', 10],
    ['eleven', 11],
    ['twelve', 12],
  ] as const)('are read from one to twelve: %s cups', (word, count) => {
    expect(grams(`${word} cups flour`)).toBeCloseTo(125 * count, 6);
    expect(grams(`about ${word} cups of flour`)).toBeCloseTo(125 * count, 6);
  });

  it('lie above a level cup or below it', () => {
    expect(grams('2 scant cups flour')).toBeLessThan(250);
    expect(grams('a good cup of flour')).toBeGreaterThan(125);
    expect(grams('1 heaped cup flour')).toBeCloseTo(grams('1 cup flour, heaped'), 6);
    // A spoon's heap is as big as the spoon, a cup's is small beside it: common practice, no source.
    expect(grams('1 heaped tbsp flour') / grams('1 tbsp flour')).toBeGreaterThan(1.5);
    expect(grams('1 heaped cup flour') / grams('1 cup flour')).toBeLessThan(1.31);
  });
});

describe('how much it makes', () => {
  it.each([
    ['Bannock', '1 tbsp baking powder', 'round'],
    ['Loaf', '7 g instant yeast', 'loaf'],
  ])('is understood from a number alone: %s', (title, leaven, shape) => {
    const found = read(
      `${title}\nmakes 1\n\n2 cups flour\n1 cup milk\n${leaven}\n\nBake 25 minutes.`,
    );
    expect(found.recipe!.division).toMatchObject([{ shape, count: 1 }]);
    expect(found.unread).toEqual([]);
  });
});
