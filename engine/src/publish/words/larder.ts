// Sentences for the codes of larder/.

import type { Say, Words } from '../say.ts';

const num = (value: number | string | undefined) => Number(value);
const what = (ingredient: string | undefined) => ingredient ?? 'This line';

/** Grams as a person says them, small ones too. */
const between = (say: Say, low: number, high: number) => `${say.mass(low)} to ${say.mass(high)}`;

export const larderWords: Words = {
  LARDER_FOOD_UNKNOWN: ({ name, nearest }, about) =>
    `"${name ?? what(about.ingredient)}" is not in the larder` +
    (nearest ? `; near it: ${nearest}.` : '. Its allergens are not known: read the label.'),
  LARDER_FOOD_CHOICE: ({ name, taken, others }) =>
    `"${name}" is taken as ${taken}; it may be ${others}.`,
  LARDER_SECOND_FOOD: ({ name, second }) =>
    `${name} is weighed here; ${second} stands in the same line and is not.`,
  LARDER_WORD_UNREAD: ({ words }, about) =>
    `"${words}" beside ${what(about.ingredient)} was not understood.`,
  LARDER_AMOUNT_UNSAID: (values, about, say) =>
    `No amount of ${what(about.ingredient)} is said` +
    (values.massGrams === undefined ? '.' : `: ${say.mass(num(values.massGrams))} is assumed.`),
  LARDER_AMOUNT_LOOSE: ({ written }, about) =>
    `"${written}" of ${what(about.ingredient)} is no measure: weigh it once.`,
  LARDER_SPOON: ({ written }, about) =>
    `Which spoon "${written}" of ${what(about.ingredient)} means is not said: two teaspoons each are ` +
    'taken, and it may be one, or three (a tablespoon).',
  LARDER_AMOUNT_RANGE: (values, about, say) =>
    `${what(about.ingredient)} is written as a range, ` +
    `${between(say, num(values.lowGrams), num(values.highGrams))}: the middle is reckoned with.`,
  LARDER_AMOUNT_MENDED: ({ written, readAs }) => `"${written}" was read as ${readAs}.`,
  LARDER_US_OR_IMPERIAL: (values) =>
    `A ${values.unit} is taken as ${values.taken === 'us' ? 'the US one' : 'the imperial one'}; ` +
    `the other is ${num(values.otherOver) < 1 ? 'smaller' : 'larger'} by ` +
    `${Math.round(Math.abs(num(values.otherOver) - 1) * 100)} %.`,
  LARDER_WEIGHT_UNKNOWN: ({ written }, about) =>
    `What "${written}" of ${what(about.ingredient)} weighs is not known: weigh it.`,
  LARDER_WEIGHT_DISAGREES: (values, about, say) =>
    `${what(about.ingredient)}: the line says ${say.mass(num(values.scaleGrams))}, and by its ` +
    `measure it would be ${say.mass(num(values.measureGrams))}. The scale is trusted.`,
  LARDER_OWN_IMPOSSIBLE: ({ field, found }, about) =>
    `${what(about.ingredient)}: ${field} of ${found} can not be. Look at the label again.`,
  LARDER_OWN_SUM: ({ sumGrams }, about) =>
    `${what(about.ingredient)}: its parts add up to ${Math.round(num(sumGrams))} g in 100 g. ` +
    'Is the label per serving?',
  LARDER_OWN_ENERGY: (values, about) =>
    `${what(about.ingredient)}: the label says ${Math.round(num(values.saidKilocalories))} kcal in ` +
    `100 g, its fat, carbohydrate and protein give ${Math.round(num(values.reckonedKilocalories))}.`,
  LARDER_OWN_WATER: (values, about) =>
    `${what(about.ingredient)}: ${Math.round(num(values.waterGrams))} g of water in 100 g is what ` +
    'the label leaves over.',
  LARDER_OWN_ALLERGENS_UNSAID: (_values, about) =>
    `${what(about.ingredient)}: nothing is said about allergens, so read the label for all of them.`,
  LARDER_OWN_ALLERGEN_LIKELY: ({ allergens }, about) =>
    `${what(about.ingredient)} sounds like ${allergens}: read the label.`,
};
