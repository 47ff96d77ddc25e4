import { describe, expect, it } from 'vitest';
import { readRecipeText } from '../../menu/read-recipe.ts';
import { isRefusal } from '../../notice/notice.ts';
import { metres } from '../../quantity/index.ts';
import { renderText } from '../render/text.ts';
import { sayFor } from '../speak.ts';
import { recipeReadSheet } from './recipe-read-sheet.ts';
import { drawnWord, rolledWidth } from './rolled-word.ts';

const NOWHERE = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };
const say = sayFor({ measures: 'us', clock: '24', plan: NOWHERE });

function sheet(text: string) {
  const read = readRecipeText(text);
  if (isRefusal(read)) throw new Error(read.code);
  return {
    read,
    flat: renderText(recipeReadSheet(read, say), { width: 200 }).replace(/\s+/g, ' '),
  };
}

describe('a pasted recipe on paper', () => {
  it('says small amounts in grams and spoons, as the formula does', () => {
    const { flat } = sheet('Bread\n2 cups flour\n1 cup water\n1 tsp salt\n');
    expect(flat).toContain('6 g, 1 tsp'); // sr28 NDB 02047: a teaspoon of salt is 6 g
    expect(flat).not.toMatch(/0\.\d+ oz/);
  });

  it('names an ingredient of which nothing is written, and stops', () => {
    const { read, flat } = sheet('Zero bread\n0 cups flour\n1 cup water\n1 tsp salt\n');
    const zero = read.notices.find(({ code }) => code === 'MENU_TEXT_ZERO');
    expect(zero).toMatchObject({
      level: 'stop',
      about: { ingredient: expect.stringContaining('flour') },
    });
    expect(flat).toContain('0 cups flour all-purpose flour nothing');
    expect(flat).not.toContain('not known');
  });

  it('gives the whole weight as the reason for its measures', () => {
    expect(sheet('Bread\n500 g bread flour\n310 g water\n').flat).toContain('metric (by "500 g")');
    expect(sheet('Bread\n500 g flour\n310 g water\n\nBake at 425 F.').read.manner).toBe('metric');
  });

  it('leaves creamed corn unknown rather than drained, with the weight of its tin', () => {
    const { read } = sheet('Corn bread\n1 cup flour\n1 (15 oz) can creamed corn\n1 cup milk\n');
    const corn = read.ingredients[1]!;
    expect(corn.line.search.food).toBeUndefined();
    expect(corn.grams).toBeCloseTo(15 * 28.349523125, 1); // nist-hb44
  });
});

describe('a dough that draws together', () => {
  it('is rolled so much wider as it is rolled thinner: the same dough', () => {
    const rolled = { rolledTo: metres(0.0127), thickness: metres(0.0156), across: metres(0.21) };
    const wide = rolledWidth(rolled);
    expect(wide ** 2 * rolled.rolledTo).toBeCloseTo(0.21 ** 2 * rolled.thickness, 9);
  });

  it('never says that it draws together to what it was rolled to', () => {
    const alike = { rolledTo: metres(0.0127), thickness: metres(0.0134), across: metres(0.21) };
    expect(drawnWord(alike, say).replace(/\u00a0/g, ' ')).toMatch(
      /^draws together to a little more: roll it/,
    );
  });
});
