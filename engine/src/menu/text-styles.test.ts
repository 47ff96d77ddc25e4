import { describe, expect, it } from 'vitest';
import { isRefusal } from '../notice/notice.ts';
import { readRecipeText } from './read-recipe.ts';

// Texts of our own invention in the styles that cooks paste; order of work is common practice, no source.

function read(text: string) {
  const found = readRecipeText(text);
  if (isRefusal(found)) throw new Error(found.code);
  return found;
}
const steps = (text: string) =>
  read(text).recipe!.steps.map(({ kind, minutes }) => `${kind} ${minutes}`);
const foods = (text: string) => read(text).ingredients.map(({ line }) => line.search.food?.key);

describe('recipes in other styles', () => {
  it('takes no food from the number of a line: "1. 2 cups flour"', () => {
    const found = foods(
      'Biscuits\n\nIngredients:\n1. 2 cups (250 g) flour\n2. 3 tbs shortening\n3. 1⅓ cups buttermilk\n',
    );
    expect(found).toEqual([
      'all-purpose-flour',
      expect.stringContaining('shortening'),
      expect.stringContaining('buttermilk'),
    ]);
  });

  it('says that two breads stand in one text, and stops', () => {
    const one = 'Corn bread\n1 cup cornmeal\n1 cup milk\nMix, bake 25 minutes at 400 F.\n';
    const two = `${one}\nSoda bread\n450 g plain flour\n350 ml buttermilk\nMix, bake 40 minutes at 200 C.\n`;
    const codes = (text: string) => read(text).notices.map(({ code }) => code);
    expect(codes(two)).toContain('MENU_TEXT_TWO');
    expect(codes(one)).not.toContain('MENU_TEXT_TWO');
  });

  it('keeps the times above a recipe as prose: neither a title nor a second baking', () => {
    const text =
      'Prep time: 15 minutes\nCook time: 45 minutes\nServes: 8\n\nBanana bread\n\nIngredients\n3 bananas\n1½ cups flour\n1 tsp baking soda\n\nInstructions\nMix. Bake for 1 hour at 350 F.\n';
    expect(read(text).title).toBe('Banana bread');
    expect(read(text).kind.kind).toBe('quick-bread');
    expect(steps(text)).toContain('cook 60');
  });

  it('knows groups in bold, and a heading in two languages', () => {
    const text =
      '## Focaccia\n**For the dough**\n- 400 g bread flour\n- 300 g water\n- 4 g instant yeast\n**For the top**\n- 1 T. olive oil\n';
    const { unread, ingredients } = read(text);
    expect(unread).toEqual([]);
    expect(ingredients.at(-1)!.group).toBe('topping');
    expect(read('Bread\nZutaten / Ingredients:\n0,5 kg flour\n0,33 l water\n').unread).toEqual([]);
  });

  it('wakes the yeast before it rises, and counts rolls that its title makes', () => {
    const text =
      'DINNER ROLLS (makes 16)\n4 c flour\n1 c. milk\n1 env. dry yeast\n1 t salt\nProof yeast 5 min in water. Add rest, knead 8 min. Rise 1 hr. Divide into 16. Rise 30-45 min. Bake 20-25 min.';
    expect(steps(text).slice(0, 3)).toEqual(['rest 5', 'mix 8', 'rise 60']);
    expect(read(text).recipe!.division).toMatchObject([{ shape: 'roll', count: 16 }]);
    expect(read(text).ingredients.find(({ line }) => /yeast/.test(line.search.name))!.from).toBe(
      'weighed',
    );
  });

  it('reads the terse notes of a baker: autolyse, bulk, fridge', () => {
    const text =
      'Country loaf\nLevain: 100 g\nFlour 450g\nWater 350 g\nSalt 10 g\nAutolyse 1h. Add levain + salt. Bulk till 50% up, ~5h @ 24C. Shape, fridge 12 h. Bake 45 min @ 240C.';
    expect(steps(text)).toEqual([
      'rest 60',
      'mix 6',
      'rise 300',
      'shape 8',
      'rest 720',
      'load 3',
      'cook 45',
      'take-out 3',
    ]);
  });

  it('bakes by the heat and time of a sentence without a verb', () => {
    const text =
      'Scones\n2 cups self-rising flour\n1 cup milk\nRub in. Hot oven for ten minutes.\n';
    expect(read(text).recipe!.target.writer!.minutes).toEqual([10, 10]);
    expect(read(text).title).toBe('Scones');
  });
});
