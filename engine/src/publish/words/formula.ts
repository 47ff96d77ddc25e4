// Sentences for the codes of formula/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);

export const formulaWords: Words = {
  FORMULA_HEIGHT_CUT: (values, _about, say) =>
    `At ${say.height(num(values, 'elevationMetres'))} the same gas takes more room, so the leavening ` +
    `is ${say.percent(num(values, 'cutRatio'))} less; the old amount stands beside the new.`,
  FORMULA_HEIGHT_RAISED: (values, _about, say) =>
    `The recipe was written for thinner air than at ${say.height(num(values, 'elevationMetres'))}, so ` +
    `the leavening is ${say.percent(-num(values, 'cutRatio'))} more; the old amount stands beside the new.`,
  FORMULA_ALREADY_TRIMMED: (_values, about) =>
    `${about.ingredient} is already cut for height, as the recipe says, and is left as it is.`,
  FORMULA_HEIGHT_ABOVE_RANGE: (values, _about, say) =>
    `No published advice for baking reaches ${say.height(num(values, 'elevationMetres'))}: bake a ` +
    'small piece first.',
  FORMULA_SALT_UNUSUAL: (values, _about, say) =>
    `The salt is ${say.percent(num(values, 'saltRatio'))} of the flour; bread has about 2 %. Was a ` +
    'spoon misread?',
  FORMULA_LEAVENING_HIGH: () =>
    'There is more leavening in this than in any published formula we know. Was a spoon misread?',
  FORMULA_LEAVENING_MISSING: () => 'Nothing in this makes it rise: no yeast, no powder, no soda.',
  FORMULA_DOUGH_WET: (values, _about, say) =>
    `With ${say.percent(num(values, 'hydrationRatio'))} water this pours and can't be shaped: hold ` +
    'some of the water back, or bake it as one.',
  FORMULA_FOOD_UNKNOWN: (_values, about) =>
    `${about.ingredient} is not in the larder: its grams count, its water, fat and salt don't.`,
  FORMULA_RISE_COLD: (values, _about, say) =>
    `At ${say.degrees(num(values, 'doughKelvin'))} the dough hardly rises: keep it in a warm box, or ` +
    'mix it with warmer water.',
  FORMULA_RISE_WARM: (values, _about, say) =>
    `At ${say.degrees(num(values, 'doughKelvin'))} the dough is too warm for a sound estimate: put it ` +
    'in the shade and look early.',
  FORMULA_WATER_OUT_OF_REACH: (values, _about, say) =>
    `No water between ice and what kills yeast makes a dough of ` +
    `${say.degrees(num(values, 'wantedKelvin'))} with flour at ` +
    `${say.degrees(num(values, 'flourKelvin'))}: warm or cool the flour.`,
};
