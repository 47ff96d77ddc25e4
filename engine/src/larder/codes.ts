// Everything that larder/ can say beside its numbers. Names are never changed.

import type { CodeList } from '../notice/notice.ts';

export const larderCodes = {
  LARDER_FOOD_UNKNOWN: {
    kind: 'notice',
    when: 'A line of a recipe names a food that the larder does not know; the line is kept.',
    next: 'Choose one of the foods that come near, or give the food by its label.',
  },
  LARDER_FOOD_CHOICE: {
    kind: 'notice',
    when: 'A word means several foods, and the usual one was taken.',
    next: 'Choose another one if it is not that.',
  },
  LARDER_SECOND_FOOD: {
    kind: 'notice',
    when: 'A line names a second food beside the first, which alone is weighed.',
    next: 'Write it on a line of its own if both go in; or choose it instead.',
  },
  LARDER_WORD_UNREAD: {
    kind: 'notice',
    when: 'A word beside a food was not understood and is left as it stands.',
    next: 'Look whether it makes another food of it.',
  },
  LARDER_AMOUNT_UNSAID: {
    kind: 'notice',
    when: 'A line says no amount, or "to taste".',
    next: 'Weigh it once and write it down.',
  },
  LARDER_AMOUNT_LOOSE: {
    kind: 'notice',
    when: 'An amount is a handful, a knob or a splash, which is no measure.',
    next: 'Weigh it once and write it down.',
  },
  LARDER_SPOON: {
    kind: 'notice',
    when: 'A recipe says "a spoon" without saying which.',
    next: 'Say teaspoon or tablespoon: two teaspoons are taken, and it may be one to three.',
  },
  LARDER_AMOUNT_RANGE: {
    kind: 'notice',
    when: 'An amount is written as a range; the middle of it is reckoned with.',
    next: 'Begin with the lower end and add as the dough asks for.',
  },
  LARDER_AMOUNT_MENDED: {
    kind: 'notice',
    when: 'A figure looked like a mistake of a scanner and was mended.',
    next: 'Look at the page it came from.',
  },
  LARDER_US_OR_IMPERIAL: {
    kind: 'notice',
    when: 'A pint, quart, gallon, gill or fluid ounce may be of either side of the ocean.',
    next: 'Say whose measures the recipe uses.',
  },
  LARDER_WEIGHT_UNKNOWN: {
    kind: 'notice',
    when: 'An amount of a food can not be turned into a weight.',
    next: 'Weigh it and write "g" behind it.',
  },
  LARDER_WEIGHT_DISAGREES: {
    kind: 'notice',
    when: 'A line gives a weight and a measure of the same food that do not agree.',
    next: 'Trust the scale; look whether one of the two is misprinted.',
  },
  LARDER_OWN_IMPOSSIBLE: {
    kind: 'refusal',
    when: "A number on the label of a cook's own food can not be: below nothing, or more than the whole.",
    next: 'Look at the label again, and whether it is per 100 g or per serving.',
  },
  LARDER_OWN_SUM: {
    kind: 'refusal',
    when: "The parts of a cook's own food add up to more than the whole.",
    next: 'Look at the label again, and whether it is per 100 g or per serving.',
  },
  LARDER_OWN_ENERGY: {
    kind: 'notice',
    when: "The energy of a cook's own food is far from what its fat, carbohydrate and protein give.",
    next: 'Look at the label again; fibre, alcohol and sweeteners may explain it.',
  },
  LARDER_OWN_WATER: {
    kind: 'notice',
    when: "A label does not tell the water of a cook's own food, and it was taken as the rest.",
    next: 'Nothing; ash and other small parts count as water.',
  },
  LARDER_OWN_ALLERGENS_UNSAID: {
    kind: 'notice',
    when: "Nothing is said about the allergens of a cook's own food, so every one is doubtful.",
    next: 'Read the label and say what it contains and may contain.',
  },
  LARDER_OWN_ALLERGEN_LIKELY: {
    kind: 'notice',
    when: "The name of a cook's own food speaks of an allergen that is not said to be in it.",
    next: 'Read the label, and say so where it is free of it.',
  },
} satisfies CodeList;
