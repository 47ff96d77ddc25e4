// The codes of this stage; their sentences are in publish/words/bake.ts.

import type { CodeList } from '../notice/notice.ts';

export const bakeCodes = {
  BAKE_TARGET_CAPPED: {
    kind: 'notice',
    when: 'the core that the recipe asks for is hotter than a crumb can get at this height',
    next: 'take the lower core, and look for a steady reading, crust and bottom colour',
  },
  BAKE_THICKNESS_OUTSIDE_EVIDENCE: {
    kind: 'notice',
    when: 'the dough is thinner or thicker than the figures behind the minutes',
    next: 'trust the probe and the colour more than the minutes',
  },
  BAKE_TOP_STAYS_PALE: {
    kind: 'notice',
    when: 'the bread is baked through well before its top has coloured',
    next: 'put more of the coals on the lid, or take it out pale',
  },
  BAKE_FACE_BURNS: {
    kind: 'notice',
    when: 'top or bottom is burnt before the middle is done and the top has colour',
    next: 'move coals away from that face, or put paper, meal or a rack between floor and bread',
  },
  BAKE_FACE_DARK: {
    kind: 'notice',
    when: 'top or bottom is dark, not burnt, by the time the bread is done, whatever the coals',
    next: 'put paper, a rack or meal under a dark bottom; under a dark lid look sooner',
  },
  BAKE_TOO_WET_TO_STAND: {
    kind: 'notice',
    when: 'a dough that is to stand as a loaf, a round or pieces has the water of a batter',
    next: 'take the water that is named, or bake it as a batter in a tin',
  },
  BAKE_OVEN_TOO_COOL: {
    kind: 'notice',
    when: 'the oven temperature that is planned never bakes this load through',
    next: 'lay more coals, screen the wind, or add coals sooner',
  },
  BAKE_OVEN_OUTSIDE_EVIDENCE: {
    kind: 'notice',
    when: 'the wanted oven temperature lies outside the figures behind the minutes',
    next: 'look sooner and judge by probe and colour',
  },
  BAKE_TENDER_BY_FORK: {
    kind: 'notice',
    when: 'simmer minutes come from the recipe or from common practice, no formula exists',
    next: 'start early enough and judge by fork',
  },
  BAKE_SIMMER_ABOVE_EVIDENCE: {
    kind: 'notice',
    when: 'the camp is higher than the published rule for longer simmering reaches',
    next: 'allow more time still and judge by fork',
  },
  BAKE_POT_BOILS_LATE: {
    kind: 'notice',
    when: 'the planned coals bring the pot to the boil later than the heat balance reckoned',
    next: 'nothing: the minutes count it in; more coals below at first would save them',
  },
  BAKE_POT_NEVER_BOILS: {
    kind: 'notice',
    when: 'the planned coals do not bring the pot to a simmer',
    next: 'lay more coals below until it boils, then take some away',
  },
  BAKE_SAFE_CORE_ABOVE_BOIL: {
    kind: 'notice',
    when: 'the safe core is too near or above the local boiling point',
    next: 'cook it as a covered simmer and hold it there, or cook it lower down',
  },
  BAKE_SAFE_CORE_RAISED: {
    kind: 'notice',
    when: 'the recipe asks for a lower core than the safe one',
    next: 'cook it to the safe core',
  },
  BAKE_PIN_SHORT: {
    kind: 'notice',
    when: 'the minutes that the cook pinned are fewer than the soonest we reckon with',
    next: 'give it longer, or let go of the pin; the minutes are kept as pinned',
  },
  BAKE_PIN_LONG: {
    kind: 'notice',
    when: 'the minutes that the cook pinned are more than the latest we reckon with',
    next: 'look sooner, or let go of the pin; the minutes are kept as pinned',
  },
  BAKE_ROAST_BY_PROBE: {
    kind: 'notice',
    when: 'roasting minutes come from a simple conduction model',
    next: 'probe from the soonest minute on and go by the core',
  },
} as const satisfies CodeList;

export type BakeCode = keyof typeof bakeCodes;
