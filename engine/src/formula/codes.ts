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
  FORMULA_UNWEIGHED: {
    kind: 'notice',
    when: 'What an ingredient weighs is not known, and the formula leaves it out.',
    next: 'Write its weight in grams, or add it as a food of your own with what a cup of it weighs.',
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
  FORMULA_RISE_STOPPED: {
    kind: 'notice',
    when: 'Where the dough stands it is not risen within a day.',
    next: 'Take the warm place that is named.',
  },
  FORMULA_RISE_LONG: {
    kind: 'notice',
    when: 'The first rise takes more than eight hours where the dough stands.',
    next: 'Mix it the evening before, or take the warm place that is named.',
  },
  FORMULA_WATER_CAPPED: {
    kind: 'notice',
    when: 'Water can not be hot or cold enough for the wanted dough without harm to the yeast.',
    next: 'Take the water that is named, and count on the dough that is named.',
  },
  FORMULA_POWDER_WEAK: {
    kind: 'notice',
    when: 'The powder fizzed weakly in hot water: how much strength is left nobody can say.',
    next: 'Buy new, or make it from soda and cream of tartar as given.',
  },
  FORMULA_POWDER_DEAD: {
    kind: 'notice',
    when: 'The powder did not fizz in hot water.',
    next: 'Leave it at home; soda and cream of tartar do its work.',
  },
  FORMULA_POWDER_OLD: {
    kind: 'notice',
    when: 'The tin of powder has been open for long, and nobody tested it.',
    next: 'Half a teaspoon into a quarter cup of hot water: it must fizz hard.',
  },
  FORMULA_SODA_LEFT: {
    kind: 'notice',
    when: 'Much more soda than the sour things in the dough can meet.',
    next: 'Less soda, or more of what is sour.',
  },
  FORMULA_WATER_OUT_OF_REACH: {
    kind: 'refusal',
    when: 'Water would have to be below freezing or hotter than yeast bears.',
    next: 'Warm or cool the flour, or be content with a dough of another temperature.',
  },
  FORMULA_NO_DOUGH: {
    kind: 'refusal',
    when: 'Shares of flour, a thickness or a swap are wished for in a dish without a dough.',
    next: 'Look at its weights and portions instead, or name a bread.',
  },
  FORMULA_AMOUNT_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'An amount of a formula is negative or no number.',
    next: 'Weigh it again; leave the line out if there is none of it.',
  },
  FORMULA_FLOUR_MISSING: {
    kind: 'refusal',
    when: 'There is no flour or meal to count the rest against.',
    next: 'Add flour; the sentence says how much would make a soft dough with this water.',
  },
  FORMULA_WETTER_THAN_BATTER: {
    kind: 'refusal',
    when: 'There is more water than any published batter has.',
    next: 'Look for a slipped decimal point; the sentence says what water still pours.',
  },
  FORMULA_TARGET_OUT_OF_RANGE: {
    kind: 'refusal',
    when: 'A target lies where no dough or batter lies.',
    next: 'Take the nearest one that does; the sentence names it.',
  },
  FORMULA_TARGETS_CONFLICT: {
    kind: 'refusal',
    when: 'Targets and held amounts can not stand together.',
    next: 'Let one of those it names go; the nearest formula stands beside it.',
  },
  FORMULA_SWAP_UNKNOWN: {
    kind: 'refusal',
    when: 'A food is to be swapped for one that we do not know, or that does other work.',
    next: 'Choose one of those it names.',
  },
  FORMULA_SWAP_NO_ROOM: {
    kind: 'refusal',
    when: 'What comes in brings more water or leavening than the rest of the bowl can give up.',
    next: 'Swap it for something drier, or hold some water back first.',
  },
  FORMULA_SWAP_PART: {
    kind: 'notice',
    when: 'Only a part of a food can be swapped without changing water or leavening.',
    next: 'Take the part; the rest stays what it was.',
  },
  FORMULA_SWAP_FAT_LEFT: {
    kind: 'notice',
    when: 'A swap brings or takes a little fat that no line could take up.',
    next: 'Nothing to do, or add or leave out that much fat elsewhere.',
  },
  FORMULA_SWAP_SALT_LEFT: {
    kind: 'notice',
    when: 'A swap brings or takes a little salt that no line could take up.',
    next: 'Nothing to do, or salt by that much less or more.',
  },
  FORMULA_SWAP_OIL_FOR_SOLID: {
    kind: 'notice',
    when: 'Oil stands in for a solid fat.',
    next: 'Expect a tender crumb without flakes.',
  },
  FORMULA_SWAP_TASTE: {
    kind: 'notice',
    when: 'One food stands in for another of its kind; the taste changes.',
    next: 'Nothing to do if that is meant.',
  },
  FORMULA_SWAP_BUTTER_OUT: {
    kind: 'notice',
    when: 'Butter goes out of a formula.',
    next: 'Its taste can not be kept.',
  },
  FORMULA_SWAP_BUTTER_IN: {
    kind: 'notice',
    when: 'Butter comes into a formula.',
    next: 'Look at the allergens: it brings milk.',
  },
  FORMULA_SWAP_MILK_SOLIDS_LESS: {
    kind: 'notice',
    when: 'A swap leaves less milk protein and milk sugar.',
    next: 'Expect a paler, crisper crust.',
  },
  FORMULA_SWAP_MILK_SOLIDS_MORE: {
    kind: 'notice',
    when: 'A swap brings more milk protein and milk sugar.',
    next: 'Expect a darker crust; look at the top early.',
  },
  FORMULA_SWAP_SOUR: {
    kind: 'notice',
    when: 'A swap leaves acid that no soda takes.',
    next: 'It tastes a little sour; that is no fault.',
  },
  FORMULA_SWAP_LESS_SOUR: {
    kind: 'notice',
    when: 'A swap takes away acid that was tasted.',
    next: 'The taste is milder.',
  },
  FORMULA_SWAP_SODA_TO_POWDER: {
    kind: 'notice',
    when: 'A swap takes away the acid that soda was there for.',
    next: 'The soda goes with it, and powder makes as much gas.',
  },
  FORMULA_SWAP_DRY_BUTTERMILK: {
    kind: 'notice',
    when: 'Dried buttermilk is to meet soda; some of it is churned from sweet cream and hardly sour.',
    next: 'Look for cultured or sour on its label; where it says neither, use powder.',
  },
  FORMULA_SWAP_SYRUP: {
    kind: 'notice',
    when: 'Syrup or honey stands in for sugar, or the other way round.',
    next: 'Look at the crust early.',
  },
  FORMULA_SWAP_WORKS_AT_ONCE: {
    kind: 'notice',
    when: 'Soda with a quick acid stands in for powder.',
    next: 'Have the oven ready and bake at once.',
  },
  FORMULA_SWAP_YEAST_PACE: {
    kind: 'notice',
    when: 'One yeast stands in for another.',
    next: 'Judge the rise by double, not by the clock.',
  },
  FORMULA_SWAP_KITCHEN_RULE: {
    kind: 'notice',
    when: 'A rule that goes round kitchens differs from what the formula needs.',
    next: 'Both are told; weigh the reckoned one, or follow the rule and know what changes.',
  },
  FORMULA_EFFECT_WETTER: {
    kind: 'notice',
    when: 'One version has more water than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_STIFFER: {
    kind: 'notice',
    when: 'One version has less water than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_FAT_MORE: {
    kind: 'notice',
    when: 'One version has more fat than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_FAT_LESS: {
    kind: 'notice',
    when: 'One version has less fat than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_SALT_MORE: {
    kind: 'notice',
    when: 'One version has more salt than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_SUGAR_MORE: {
    kind: 'notice',
    when: 'One version has more sugar than the other.',
    next: 'Look at the crust early.',
  },
  FORMULA_EFFECT_POWDER_MORE: {
    kind: 'notice',
    when: 'One version has more baking powder than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_POWDER_LESS: {
    kind: 'notice',
    when: 'One version has less baking powder than the other.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_MILK: {
    kind: 'notice',
    when: 'One version has milk where the other has less or none.',
    next: 'Look at the crust early.',
  },
  FORMULA_EFFECT_BUTTER: {
    kind: 'notice',
    when: 'One version has butter where the other has less or none.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_PURE_FAT: {
    kind: 'notice',
    when: 'One version has lard or shortening where the other has less or none.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_YEAST_PACE: {
    kind: 'notice',
    when: 'One version has more yeast or starter than the other.',
    next: 'Look for double at the time that is named.',
  },
  FORMULA_EFFECT_STARTER_OUT: {
    kind: 'notice',
    when: 'A starter goes and yeast comes in its place.',
    next: 'Look for double at the time that is named; its acid is gone.',
  },
  FORMULA_EFFECT_STARTER_IN: {
    kind: 'notice',
    when: 'Yeast goes and a starter comes in its place.',
    next: 'Give it the time that is named; it turns sour.',
  },
  FORMULA_EFFECT_EGG: {
    kind: 'notice',
    when: 'One version has eggs where the other has less or none.',
    next: 'Nothing to do.',
  },
  FORMULA_EFFECT_WHOLEMEAL: {
    kind: 'notice',
    when: 'One version has wholemeal or rye where the other has less or none.',
    next: 'Nothing to do.',
  },
} satisfies CodeList;
