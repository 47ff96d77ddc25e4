// Sentences for the codes of the formula bench: figures, targets, swaps, effects.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Words } from '../say.ts';
import { kindWords } from '../sheet/bench/figures-part.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);
const grams = (values: NoticeValues, key: string) =>
  `${Math.round(num(values, key) * 10) / 10}\u00a0g`;

/** `At 25 °C the first rise takes about 1 h 10 min, not 5 h.` */
function paceText(values: NoticeValues, say: Say): string {
  const told = (key: string) =>
    values[key] === undefined ? 'for ever' : say.minutes(num(values, key));
  return (
    `With the dough at ${say.degrees(num(values, 'doughKelvin'))} the first rise takes about ` +
    `${told('nowMinutes')}, not ${told('wasMinutes')}.`
  );
}

/** Of what is published for its kind, else one batch, else the last that is a dough at all. */
function nearestWord(by: NoticeValues[string] | undefined): string {
  if (by === 'batch') return 'One batch of this recipe is';
  const kind = Object.entries(kindWords).find(([key]) => key === by)?.[1];
  return kind === undefined ? 'The nearest that is:' : `The nearest in published ${kind}:`;
}

export const formulaBenchWords: Words = {
  FORMULA_AMOUNT_IMPOSSIBLE: (values, about) =>
    `${about.ingredient} can't weigh ${grams(values, 'massGrams')}: write what it weighs, or leave ` +
    'the line out.',
  FORMULA_NO_DOUGH: (_values, about) =>
    `${about.recipe} has no dough in it: there is no flour to count shares, a thickness or a swap ` +
    'from. Ask for it without such a wish to see its weights.',
  FORMULA_FLOUR_MISSING: (values) =>
    0 < num(values, 'flourGrams')
      ? `There is no flour in this. With the water in it, ${grams(values, 'flourGrams')} of flour ` +
        'would make a soft dough.'
      : 'There is no flour in this, so nothing to count the rest against. Add flour.',
  FORMULA_WETTER_THAN_BATTER: (values, _about, say) =>
    `${say.percent(num(values, 'hydrationRatio'))} water is wetter than any batter that was ever ` +
    `printed. A batter that still pours has ${grams(values, 'waterGrams')} of water with this flour.`,
  FORMULA_TARGET_OUT_OF_RANGE: (values, _about, say) =>
    `${wishWord(values.wish)} of ${spoken(values, 'wanted', say)} is no dough. ` +
    `${nearestWord(values.by)} ${spoken(values, 'nearest', say)}.`,
  FORMULA_TARGETS_CONFLICT: (values, _about, say) =>
    `${conflictWord(values)} can't stand together. ` +
    `${values.others === '' ? 'The nearest' : 'With the others kept, the nearest'} for ` +
    `${wishWord(values.wish)} is ${spoken(values, 'nearest', say)}, not ` +
    `${spoken(values, 'wanted', say)}.`,
  FORMULA_SWAP_UNKNOWN: (values, about) =>
    `${num(values, 'known') === 1 ? `${values.food} can't do the work of` : `We don't know ${values.food}, in place of`} ` +
    `${about.ingredient}. ${values.offers === '' ? 'Nothing in the larder stands in for it.' : `What would do: ${values.offers}.`}`,
  FORMULA_SWAP_NO_ROOM: (values, about) =>
    `${values.food} brings more water or leavening than the rest of the bowl can give up, even for ` +
    `a quarter of the ${about.ingredient}.`,
  FORMULA_SWAP_PART: (values, about, say) =>
    `Only ${say.percent(num(values, 'shareRatio'))} of the ${about.ingredient} can become ` +
    `${values.food}; more would bring more water or leavening than there is to take away.`,
  FORMULA_SWAP_FAT_LEFT: (values) => leftWord(num(values, 'massGrams'), 'fat'),
  FORMULA_SWAP_SALT_LEFT: (values) => leftWord(num(values, 'massGrams'), 'salt'),
  FORMULA_SWAP_OIL_FOR_SOLID: () =>
    'Oil leaves no solid bits between the layers: a tender crumb, but no flakes.',
  FORMULA_SWAP_TASTE: () => 'The taste changes; that can not be kept.',
  FORMULA_SWAP_BUTTER_OUT: () =>
    'The taste of butter can not be kept, nor the little its water lifts.',
  FORMULA_SWAP_BUTTER_IN: () =>
    'Butter tastes of itself; its water and salt are taken out of the rest.',
  FORMULA_SWAP_MILK_SOLIDS_LESS: (values) =>
    `${grams(values, 'wasGrams')} of milk solids become ${grams(values, 'nowGrams')}: a paler, crisper ` +
    'crust and a chewier crumb.',
  FORMULA_SWAP_MILK_SOLIDS_MORE: (values) =>
    `${grams(values, 'wasGrams')} of milk solids become ${grams(values, 'nowGrams')}: a darker crust ` +
    'and a finer crumb.',
  FORMULA_SWAP_SOUR: (values) =>
    `Acid for ${grams(values, 'massGrams')} of soda is left over: it tastes a little sour.`,
  FORMULA_SWAP_LESS_SOUR: () => 'Less sour than before; that taste can not be kept.',
  FORMULA_SWAP_SODA_TO_POWDER: (values) =>
    `The acid goes, so ${grams(values, 'sodaGrams')} of soda goes with it: ` +
    `${grams(values, 'powderGrams')} of powder makes the same gas.`,
  FORMULA_SWAP_DRY_BUTTERMILK: () =>
    'Stirred up it is reckoned as sour as cultured buttermilk. What is dried from churned sweet ' +
    'cream is hardly sour: 0.10 to 0.18 % by the grades, not 0.8 %. Where the label says neither ' +
    'cultured nor sour, use powder instead of the soda.',
  FORMULA_SWAP_SYRUP: () =>
    'Sweetness and water are kept; colour and taste are not: honey and syrups brown sooner than sugar.',
  FORMULA_SWAP_WORKS_AT_ONCE: () =>
    'This works the moment it is wet, with nothing held back for the heat: mix last and bake at once.',
  FORMULA_SWAP_YEAST_PACE: () =>
    'The same work by weight; the pace differs a little, so judge the rise by double.',
  FORMULA_SWAP_KITCHEN_RULE: (values) => kitchenRules[String(values.rule)] ?? '',
  FORMULA_EFFECT_WETTER: () =>
    'Wetter: softer to handle; past 65 % bakers speak of a high dough, with a more open crumb.',
  FORMULA_EFFECT_STIFFER: () => 'Drier: stiffer to handle, and a closer crumb.',
  FORMULA_EFFECT_FAT_MORE: () =>
    'More fat: more tender. A little makes a yeast loaf larger, much makes it rise less; the sources ' +
    'differ on where that turns.',
  FORMULA_EFFECT_FAT_LESS: () => 'Less fat: less tender, more chew.',
  FORMULA_EFFECT_SALT_MORE: () => 'More salt: more taste, and yeast works slower.',
  FORMULA_EFFECT_SUGAR_MORE: () =>
    'More sugar: sweeter, browner and more tender, and it stays moist longer.',
  FORMULA_EFFECT_POWDER_MORE: () =>
    'More baking powder: higher. In one study biscuits stood 3.0 to 3.4 cm high with it, 2.1 without.',
  FORMULA_EFFECT_POWDER_LESS: () =>
    'Less baking powder: flatter. In one study biscuits stood 3.0 to 3.4 cm high with it, 2.1 without.',
  FORMULA_EFFECT_MILK: () =>
    'Milk: a finer crumb and a darker crust; with water the crust is crisper and the crumb chewier.',
  FORMULA_EFFECT_BUTTER: () => 'Butter: a little more rise by its water, and its taste.',
  FORMULA_EFFECT_PURE_FAT: () =>
    'Lard or shortening: all fat, so more tender, with a little less rise.',
  FORMULA_EFFECT_YEAST_PACE: (values, _about, say) => paceText(values, say),
  FORMULA_EFFECT_STARTER_OUT: (values, _about, say) =>
    `The starter goes: no acid any more, so the bread is mild and not sour. ${paceText(values, say)}`,
  FORMULA_EFFECT_STARTER_IN: (values, _about, say) =>
    `A starter in place of yeast: its bacteria make acid, so the bread is sour. ${paceText(values, say)}`,
  FORMULA_EFFECT_EGG: () => 'Eggs: a yellow crumb, a brown crust, lighter.',
  FORMULA_EFFECT_WHOLEMEAL: () =>
    'Wholemeal or rye: less of the web that holds gas, so it rises less.',
};

const kitchenRules: Readonly<Record<string, string>> = {
  tartar:
    'The kitchen rule is 1 tsp of soda and 2 tsp of cream of tartar for a tablespoon of powder: half ' +
    'as much again of soda, with too little acid for it. What stands here is weighed to fit.',
  buttermilk:
    'The kitchen rule is half a teaspoon of soda for a cup of buttermilk; by its usual acid it takes ' +
    'about 0.4. Buttermilk differs from day to day, so this is a doubt.',
  'dry-milk':
    'The kitchen rule is a quarter cup of dry milk to a cup of water. By weight a cup of milk needs 21 g: ' +
    'that is under a fifth of a cup of the regular, a third of a cup of the instant.',
  evaporated:
    'The kitchen rule is half a cup with half a cup of water for a cup of milk; by protein it is a ' +
    'little less than half.',
  honey:
    'The kitchen rule is a cup of honey for a cup of sugar, less a quarter cup of liquid and sometimes ' +
    'a little soda. By sweetness it is under three quarters of a cup.',
  'self-rising':
    'The kitchen rule is 1 1/2 tsp of powder and 1/4 to 1/2 tsp of salt for a cup. What stands here is ' +
    'the least powder by law and the salt that is left of its sodium.',
  'dried-egg':
    'The kitchen rule is 2 tbsp of dried egg and 2 1/2 tbsp of water for a large egg. By dry matter it ' +
    'is 12 g, nearer 2 1/2 tbsp.',
};

const wishWords: Readonly<Record<string, string>> = {
  batch: 'the whole mass',
  hydration: 'water',
  fat: 'fat',
  salt: 'salt',
  sugar: 'sugar',
  powder: 'baking powder',
  soda: 'baking soda',
  yeast: 'yeast',
};

const wishWord = (wish: unknown) => wishWords[String(wish)] ?? `the held ${String(wish)}`;

function conflictWord({ wish, others }: NoticeValues): string {
  const names = String(others)
    .split(', ')
    .filter((each) => each !== '');
  const words = [...names, String(wish)].map(wishWord);
  const text = words.length === 1 ? `${words[0]} and what is in the bowl` : listed(words);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const listed = (words: readonly string[]) => `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

const spoken = (values: NoticeValues, which: 'wanted' | 'nearest', say: Say) =>
  values[`${which}Ratio`] === undefined
    ? grams(values, `${which}Grams`)
    : say.percent(num(values, `${which}Ratio`));

const leftWord = (mass: number, what: string) =>
  `${Math.round(Math.abs(mass) * 10) / 10}\u00a0g ${0 < mass ? 'more' : 'less'} ${what} than before: ` +
  'nothing in the bowl could take it up.';
