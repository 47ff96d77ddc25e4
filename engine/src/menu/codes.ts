// What menu/ has to say: portions, fit, and menus that can't be carried out.

import type { CodeList } from '../notice/notice.ts';

export const menuCodes = {
  MENU_RECIPE_MISSING: {
    kind: 'refusal',
    when: 'A dish names a recipe that is not in the camp.',
    next: 'Add the recipe, or choose one that is there.',
  },
  MENU_RECIPE_EMPTY: {
    kind: 'refusal',
    when: 'A recipe has no ingredients, or makes no portions.',
    next: 'Give at least one ingredient with its grams, and how many portions it makes.',
  },
  MENU_AMOUNT_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'An amount is zero, negative or not a number.',
    next: 'Weigh it again and write the grams.',
  },
  MENU_AMOUNT_ABSURD: {
    kind: 'refusal',
    when: 'An amount is beyond anything a camp could bake, or a dish is asked for too many people.',
    next: 'Look for a slipped decimal point or a wrong unit.',
  },
  MENU_PIECES_MISSING: {
    kind: 'refusal',
    when: 'A dish wants pieces (rolls, a round) that its recipe is not divided into.',
    next: 'Say in the recipe how many pieces of which weight, or leave the pieces out of the dish.',
  },
  MENU_NOBODY_EATS: {
    kind: 'refusal',
    when: 'No portions are left: no mouths, a share of nothing, or nobody who may eat it.',
    next: 'Say how many portions, or who takes it.',
  },
  MENU_PORTIONS_NEGATIVE: {
    kind: 'refusal',
    when: 'The portions of a dish are negative or not a number.',
    next: 'Write how many portions, or leave them out and they follow the mouths.',
  },
  MENU_SERVE_PAST: {
    kind: 'refusal',
    when: 'A dish is to be served before now.',
    next: 'Choose a later serving time.',
  },
  MENU_LATEST_BEFORE_SERVE: {
    kind: 'refusal',
    when: 'The latest bearable time lies before the serving time.',
    next: 'Put the latest time after the serving time, or leave it out.',
  },
  MENU_PIN_UNKNOWN: {
    kind: 'refusal',
    when: 'A dish is pinned to an oven or a person that is not in the camp.',
    next: 'Name an oven or a person of this camp, or let go of the pin.',
  },
  MENU_PIN_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'A pinned number is negative, not a number, or beyond any use.',
    next: 'Change the pinned number, or let go of the pin.',
  },
  MENU_PIN_WITHOUT_EFFECT: {
    kind: 'notice',
    when: 'A dish is pinned to a hot or cold oven, and it is a pot or needs no oven.',
    next: 'Let go of the pin: a pot heats up with its oven.',
  },
  MENU_STEPS_CIRCULAR: {
    kind: 'refusal',
    when: 'Steps of a recipe wait for each other in a circle, or for a step that is not there.',
    next: 'Put the steps in an order that can be done.',
  },
  MENU_OVEN_TOO_SMALL: {
    kind: 'refusal',
    when: 'The batch fits into no oven of the camp, nor into several, nor in two turns.',
    next: 'Make less, or bring the larger oven that is named.',
  },
  MENU_TOO_THICK: {
    kind: 'refusal',
    when: 'The thickness that is fixed, once risen, is higher than any oven of the camp allows.',
    next: 'Make it thinner, or leave the thickness out.',
  },
  MENU_NOTHING_FITS: {
    kind: 'refusal',
    when: 'Not one piece of what is asked about goes into the oven: too thick, too wide, too tall.',
    next: 'Make it thinner or smaller, take the rack out, or look for a larger or deeper oven.',
  },
  MENU_MASS_AGAINST_FILL: {
    kind: 'refusal',
    when: 'A dough is to weigh so much and to fill an oven of which it fills more or less.',
    next: 'Leave one of the two out, or change how thick it lies.',
  },
  MENU_THICKNESS_WITHOUT_EFFECT: {
    kind: 'notice',
    when: 'A thickness was asked for, and the dish takes its own, or its amount decides it.',
    next: 'Say how much of it you want instead.',
  },
  MENU_NO_OVEN: {
    kind: 'refusal',
    when: 'A dish needs an oven and the camp has none that it may use.',
    next: 'Add an oven, or serve something cold.',
  },
  MENU_PINNED_OVEN_OVERFULL: {
    kind: 'notice',
    when: 'The pinned oven is fuller than good practice allows.',
    next: 'Make less, or let go of the pin. The oven is kept as pinned.',
  },
  MENU_PINNED_OVEN_NOT_KEPT_FREE: {
    kind: 'notice',
    when: 'The cook pinned an oven that is kept free of something that is in the dish.',
    next: 'Choose another oven, or wash it out and start anew with it next time.',
  },
  MENU_POT_FULL: {
    kind: 'notice',
    when: 'A pot is filled above three quarters.',
    next: 'Stir with care and let it simmer, not boil; or hold some back.',
  },
  MENU_POT_PRESSED: {
    kind: 'notice',
    when: 'A pot is filled above four fifths, since one more oven for it would make supper late.',
    next: 'Let it only just simmer and stay near it; ladle some off if it rises. Or bring one more oven.',
  },
  MENU_LOW_HEADROOM: {
    kind: 'notice',
    when: 'The risen top comes nearer to the lid than a finger.',
    next: 'Use a deep oven or make less; look early.',
  },
  MENU_SPLIT: {
    kind: 'notice',
    when: 'One batch is shared over several ovens.',
    next: 'Weigh the dough and divide it as shown.',
  },
  MENU_IN_TURNS: {
    kind: 'notice',
    when: 'One oven bakes the batch in several turns.',
    next: 'The first turn is done early and waits; keep it warm.',
  },
  MENU_OVEN_TIGHT: {
    kind: 'notice',
    when: 'Two dishes want one oven at nearly the same time.',
    next: 'See the day sheet: one of them may be early or late. Another oven would free it.',
  },
  MENU_NOT_KEPT_FREE: {
    kind: 'notice',
    when: 'A dish must be kept free of an allergen and no oven in the camp is kept free of it.',
    next: 'Scrub and burn out the oven named, line it, use it for this dish first.',
  },
  MENU_RESERVE: {
    kind: 'notice',
    when: 'Some portions are added and held back.',
    next: 'Keep them for latecomers; common practice, not a measured number.',
  },
  MENU_LATECOMERS: {
    kind: 'notice',
    when: 'Some mouths come after the serving, and the dish waits well until then.',
    next: 'Keep their portions apart, covered, hot or cold.',
  },
  MENU_LATE_LONGER: {
    kind: 'notice',
    when: 'Some mouths come later than the dish waits well.',
    next: 'Cook their part later, as a dish of its own, or choose a dish that waits.',
  },
  MENU_FOOD_SHORT: {
    kind: 'notice',
    when: 'The portions that the cook gave feed clearly fewer than eat the dish.',
    next: 'Raise the portions, leave them out to follow the mouths, or give the dish a share.',
  },
  MENU_CANNOT_EAT: {
    kind: 'notice',
    when: 'Someone in the camp can not eat a dish.',
    next: 'See that there is another dish for them. They are counted only in portions you gave.',
  },
  MENU_NOTHING_TO_EAT: {
    kind: 'notice',
    when: 'Someone can eat no dish that is served then.',
    next: 'Change a dish, or make one for them.',
  },
  MENU_CHECK_LABEL: {
    kind: 'notice',
    when: 'An ingredient may hold something that a guest must not have.',
    next: 'Read the label before it goes into the box.',
  },
  MENU_TITLE_CONTRADICTED: {
    kind: 'notice',
    when: 'A dish is called free of something that an ingredient holds.',
    next: 'Take another ingredient, or call the dish what it is. Serve it to nobody who must not have it.',
  },
  MENU_TITLE_NOT_CHECKED: {
    kind: 'notice',
    when: 'A dish is called free of something, and its labels or its keeping apart are not checked.',
    next: 'Read the labels, and mark the dish to be kept free, so that oven, hands and tools are kept apart.',
  },
  MENU_DIVISION_LEFT_OVER: {
    kind: 'notice',
    when: 'The pieces of a recipe do not add up to its dough.',
    next: 'The pieces are weighed so that all the dough is used.',
  },
  MENU_OVEN_BETWEEN_SIZES: {
    kind: 'notice',
    when: 'An oven of this size is not in the table and was reckoned between its neighbours.',
    next: 'Measure depth and floor of your oven: your own measurements win.',
  },
  MENU_OVEN_SIZE_UNKNOWN: {
    kind: 'refusal',
    when: 'An oven is smaller or larger than any in the table.',
    next: 'Give an oven of 8 to 16 inches (20 to 41 cm).',
  },
  MENU_READY_RECIPE_UNKNOWN: {
    kind: 'refusal',
    when: 'A ready recipe is asked for that we do not have.',
    next: 'Choose one of the list, or paste a recipe.',
  },
  MENU_TEXT_EMPTY: {
    kind: 'refusal',
    when: 'The pasted text has nothing in it.',
    next: 'Paste a recipe: a title, what goes in, what is done.',
  },
  MENU_TEXT_TOO_LONG: {
    kind: 'refusal',
    when: 'The pasted text is far longer than a recipe.',
    next: 'Paste one recipe at a time.',
  },
  MENU_TEXT_NO_INGREDIENTS: {
    kind: 'notice',
    when: 'No ingredient was found in the pasted text, so there is nothing to cook.',
    next: 'Write each ingredient on a line of its own, its amount first.',
  },
  MENU_TEXT_KIND: {
    kind: 'notice',
    when: 'What kind of dish a pasted recipe is was guessed; the reason is said.',
    next: 'Choose another kind if it is not that.',
  },
  MENU_TEXT_UNREAD: {
    kind: 'notice',
    when: 'Parts of a pasted text were not understood; they are kept as they stand.',
    next: 'Look at them; say what they are, or leave them.',
  },
  MENU_TEXT_PORTIONS: {
    kind: 'notice',
    when: 'A pasted recipe does not say how much it makes, and it was guessed by weight.',
    next: 'Say how many it feeds.',
  },
  MENU_TEXT_HEAT: {
    kind: 'notice',
    when: 'A pasted recipe names no heat, and the usual one of its kind was taken.',
    next: 'Say how hot, if you know.',
  },
  MENU_TEXT_HEAT_READ: {
    kind: 'notice',
    when: 'The heat of a pasted recipe was read from a number without °F or °C, or from a word.',
    next: 'Look whether it is meant so.',
  },
  MENU_TEXT_COALS: {
    kind: 'notice',
    when: 'The writer of a pasted recipe said how many coals to lay.',
    next: 'Nothing: it stands beside our count, which is reckoned for your oven, air and wind.',
  },
  MENU_TEXT_STEPS: {
    kind: 'notice',
    when: 'Steps that a plan needs are not told in the pasted recipe and were put in.',
    next: 'Nothing, or write them as you do them.',
  },
  MENU_TEXT_LIQUID: {
    kind: 'notice',
    when: 'A liquid without an amount was filled up to a usual dough.',
    next: 'Hold some back and stop when the dough is right.',
  },
  MENU_TEXT_TWO: {
    kind: 'notice',
    when: 'Two breads seem to stand in one pasted text: flour is listed again behind the baking.',
    next: 'Paste one recipe at a time.',
  },
  MENU_TEXT_ZERO: {
    kind: 'notice',
    when: 'A pasted recipe writes nothing of an ingredient: 0 cups.',
    next: 'Write how much goes in, or leave the line out.',
  },
  MENU_TEXT_PINCH: {
    kind: 'notice',
    when: 'Salt, spice or grease without an amount was taken as a pinch or a film.',
    next: 'Weigh it once and write it down.',
  },
} satisfies CodeList;
