// "Gluten-free", "dairy-free", "without nuts": what a dish is called is a claim that someone trusts
// with their health. It is held against what goes in, and nothing here makes it true.
// Sources: the words are common practice, no source; allergens by the larder.

import type { Allergen } from '../camp/camp.ts';
import { type Notice, notice } from '../notice/notice.ts';
import type { MenuDish } from './menu.ts';
import { allergensIn, labelsToCheck } from './needs.ts';
import type { Ingredient, Recipe } from './recipe.ts';

const CLAIMED: readonly (readonly [RegExp, Allergen])[] = [
  [/gluten|coeliac|celiac/iu, 'gluten'],
  [/wheat/iu, 'wheat'],
  [/dairy|milk|lactose/iu, 'milk'],
  [/eggs?\b/iu, 'egg'],
  [/peanuts?/iu, 'peanut'],
  [/(?<!pea)nuts?\b/iu, 'tree-nut'],
  [/soya?\b/iu, 'soy'],
  [/sesame/iu, 'sesame'],
];
const FOOD = 'gluten|wheat|dairy|milk|lactose|eggs?|peanuts?|nuts?|soya?|sesame';
const FREE = new RegExp(
  `\\b(${FOOD})(?:(?: ?, ?| ?/ ?| ?& ?| and )(?:${FOOD}))*[- ]?free\\b|\\bfree (?:of|from) (?:${FOOD})(?:(?:,| and| or) (?:${FOOD}))*|\\b(?:no|without) (?:${FOOD})\\b|\\beggless\\b|\\bflourless\\b`,
  'giu',
);
const LONGEST_TITLE = 200;

/** Allergens that a title says are not in it. */
export function claimedFree(title: string): readonly Allergen[] {
  const said = [...title.slice(0, LONGEST_TITLE).matchAll(FREE)].map(([words]) => words).join(' ');
  const claimed = CLAIMED.filter(([pattern]) => pattern.test(said)).map(([, allergen]) => allergen);
  return [...new Set<Allergen>(/eggless/iu.test(said) ? [...claimed, 'egg'] : claimed)];
}

type Titled = Pick<MenuDish, 'id' | 'name' | 'freeFrom'>;

/** What the ingredients say against the title, or that nothing keeps the dish apart. */
export function titleNotices(dish: Titled, recipe: Recipe): readonly Notice[] {
  const claimed = claimedFree(`${dish.name} ${recipe.name}`);
  return claimed.flatMap((allergen) => {
    const about = { dish: dish.id };
    if (allergensIn(recipe).some((each) => isSame(each, allergen))) {
      const ingredient = recipe.ingredients.find((each) => holds(each, allergen))?.name;
      const where = ingredient === undefined ? about : { ...about, ingredient };
      return [notice('MENU_TITLE_CONTRADICTED', 'danger', where, { allergen, title: dish.name })];
    }
    const doubted = labelsToCheck(recipe).filter((each) => isSame(each.allergen, allergen));
    const labels = [...new Set(doubted.map(({ ingredient }) => ingredient))].join(', ');
    return dish.freeFrom && labels === ''
      ? []
      : [notice('MENU_TITLE_NOT_CHECKED', 'doubt', about, { allergen, labels, title: dish.name })];
  });
}

const isSame = (found: Allergen, claimed: Allergen) =>
  found === claimed || (claimed === 'gluten' && found === 'wheat');

const holds = (ingredient: Ingredient, allergen: Allergen) =>
  allergensIn({ ingredients: [ingredient], contains: [] }).some((each) => isSame(each, allergen));
