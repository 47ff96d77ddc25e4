// What formula/ has to say about a dough.

import type { CodeList } from '../notice/notice.ts';

export const formulaCodes = {
  FORMULA_HEIGHT_CUT: {
    kind: 'notice',
    when: 'Powder, soda or yeast was cut because the air is thinner up here.',
    next: 'Weigh the new amount; the old one stands beside it.',
  },
  FORMULA_HEIGHT_RAISED: {
    kind: 'notice',
    when: 'The recipe was written for thinner air than here, so its leavening was raised.',
    next: 'Weigh the new amount; the old one stands beside it.',
  },
  FORMULA_ALREADY_TRIMMED: {
    kind: 'notice',
    when: 'The recipe says that its leavening is already cut for height, so it is left alone.',
    next: 'Nothing to do. At another height, start from the uncut recipe.',
  },
  FORMULA_HEIGHT_ABOVE_RANGE: {
    kind: 'notice',
    when: 'The place is higher than any published adjustment for baking.',
    next: 'Bake a small piece first.',
  },
  FORMULA_SALT_UNUSUAL: {
    kind: 'notice',
    when: 'A yeast dough has less than half a percent or more than four percent of salt on flour.',
    next: 'Look for tea spoons written as table spoons.',
  },
  FORMULA_LEAVENING_HIGH: {
    kind: 'notice',
    when: 'More powder, soda or yeast than any published formula we know.',
    next: 'Look for tea spoons written as table spoons.',
  },
  FORMULA_LEAVENING_MISSING: {
    kind: 'notice',
    when: 'A bread has neither yeast nor powder nor soda.',
    next: 'It will not rise; say so if that is meant.',
  },
  FORMULA_DOUGH_WET: {
    kind: 'notice',
    when: 'The dough is too wet to be shaped into the pieces asked for.',
    next: 'Bake it as one in the oven, or hold back some of the water.',
  },
  FORMULA_FOOD_UNKNOWN: {
    kind: 'notice',
    when: 'An ingredient was not found in the larder, so its water, fat and salt are not counted.',
    next: 'Name it the plain way, or trust the grams alone.',
  },
  FORMULA_RISE_COLD: {
    kind: 'notice',
    when: 'The dough is so cold that yeast hardly works.',
    next: 'Bring the dough into a warm box, or mix with warmer water.',
  },
  FORMULA_RISE_WARM: {
    kind: 'notice',
    when: 'The dough is warmer than yeast likes; the law for its speed ends here.',
    next: 'Put it into the shade and look early.',
  },
  FORMULA_WATER_OUT_OF_REACH: {
    kind: 'refusal',
    when: 'Water would have to be below freezing or hotter than yeast bears.',
    next: 'Warm or cool the flour, or be content with a dough of another temperature.',
  },
} satisfies CodeList;
