// Everything coals/ may have to say, with what to do next.

import type { CodeList } from '../notice/notice.ts';

export const coalsCodes = {
  COALS_LID_FULL: {
    kind: 'notice',
    when: 'The lid can not carry the coals that the wanted heat needs; the plan fills it.',
    next: 'Expect the heat said, screen the wind, or bake at a lower heat for longer.',
  },
  COALS_FLOOR_FULL: {
    kind: 'notice',
    when: 'No more coals fit under the floor; the plan fills it.',
    next: 'Expect the heat said, or move some of the heat to the lid.',
  },
  COALS_BELOW_IS_FULL: {
    kind: 'notice',
    when: 'A boil or a fry wants more coals than lie under its floor, and has none on its lid.',
    next: 'Wait as long as is said, or set the lid on: for a boil with coals on it until it is up.',
  },
  COALS_RING_FULL: {
    kind: 'notice',
    when: 'The ring under the floor is closed; the rest of what a bread needs lies on the lid.',
    next: 'Leave the middle empty: coals under it burn the bottom.',
  },
  COALS_PINNED_GIVES: {
    kind: 'notice',
    when: 'The cook pinned a count; it is simulated as it is.',
    next: 'Read what it gives beside what is wanted; unpin to let us count.',
  },
  COALS_PIN_OVERFILLS: {
    kind: 'notice',
    when: 'A pinned count is more than lies flat on this lid or under this floor.',
    next: 'Lay fewer, or heap them and expect them to roll off.',
  },
  COALS_FUEL_SHORT: {
    kind: 'notice',
    when: 'This dish alone burns more charcoal than the cook has.',
    next: 'Get more, screen the oven, or shorten the bake.',
  },
  COALS_HEAT_WANDERS: {
    kind: 'notice',
    when: 'The simulated heat leaves the wanted range for longer than ten minutes.',
    next: 'Check at the minute given and make the move beside it.',
  },
  COALS_PREHEAT_SHORT: {
    kind: 'notice',
    when: 'After half an hour the empty oven is still below the wanted heat.',
    next: 'Load when the check says so, or add coals above.',
  },
  COALS_BOIL_LATE: {
    kind: 'notice',
    when: 'The pot does not reach the boil in the time that it has.',
    next: 'Start with warm food or less of it, or give it more time.',
  },
  COALS_BOIL_NEVER: {
    kind: 'refusal',
    when: 'All the coals that lie under the oven do not bring its pot to the boil in four hours.',
    next: 'Start with hot water or less of it, screen the wind, or simmer it with coals on the lid.',
  },
  COALS_WATER_BOILS_OFF: {
    kind: 'notice',
    when: 'A pot loses a cup of water or more as steam while it is held at the boil.',
    next: 'Look under the lid when coals are added, and top up with hot water.',
  },
  COALS_WIND_STRONG: {
    kind: 'notice',
    when: 'Wind at the oven shortens the coals so much that they must be added to often.',
    next: 'Screen the oven or bake in the lee.',
  },
  COALS_WIND_GALE: {
    kind: 'notice',
    when: 'The wind at the oven is that of whole trees moving; the plan is only what it would take.',
    next: 'Screen the oven or move it into the lee; if neither can be done, do not bake.',
  },
  COALS_WOOD_BAND_WIDE: {
    kind: 'notice',
    when: 'The fuel is wood coals, which nobody has measured against briquettes.',
    next: 'Trust the check more than the count.',
  },
  COALS_HEIGHT_UNSURE: {
    kind: 'notice',
    when: 'The camp is high enough that thin air matters and sources disagree how.',
    next: 'Make the check before loading; log what you find.',
  },
  COALS_AIR_OUTSIDE_RANGE: {
    kind: 'notice',
    when: 'Air temperature or pressure lies outside what the model was tried on.',
    next: 'Take the numbers as a direction only.',
  },
  COALS_LAYOUT_DOES: {
    kind: 'notice',
    when: 'The cook’s own layout, run on, stays on the mean within a step of the wanted heat, or a pot at its boil.',
    next: 'Leave it.',
  },
  COALS_LAYOUT_HOT: {
    kind: 'notice',
    when: 'The cook’s own layout, run on, is more than a step of the charts too hot on the mean, or a simmer boils hard.',
    next: 'Take off as many coals as are said, at the minute that is said.',
  },
  COALS_LAYOUT_COOL: {
    kind: 'notice',
    when: 'The cook’s own layout, run on, is more than a step of the charts too cool on the mean, or a pot does not boil.',
    next: 'Add as many coals as are said, above and below: the fewest that do, tried by running them.',
  },
  COALS_LAYOUT_FADES: {
    kind: 'notice',
    when: 'The cook’s own layout reaches the wanted heat and does not hold it to the end.',
    next: 'Add as many coals as are said, at the minute that is said.',
  },
  COALS_LAYOUT_BOTTOM_HEAVY: {
    kind: 'notice',
    when: 'Nearly half of a bread’s coals or more lie below.',
    next: 'Move some to the lid: a third below is usual, or the bottom burns.',
  },
  COALS_ABOVE_IDLE: {
    kind: 'notice',
    when: 'Coals lie above while something is fried, lid off.',
    next: 'Lay as many of them below as are said; keep the others for later.',
  },
  COALS_SPENT: {
    kind: 'notice',
    when: 'Coals that the cook counts are older than they live here.',
    next: 'Count them as ash and light others.',
  },
  COALS_NO_FIRE: {
    kind: 'notice',
    when: 'What glows gives less than one young coal: no move can help.',
    next: 'Light as many coals as are said, now; keep the lid on until they have ashed over.',
  },
  COALS_HOT_FAT: {
    kind: 'notice',
    when: 'A dish is fried.',
    next: 'Keep to what is said; a burning fat is smothered by the lid, never by water.',
  },
  COALS_NOTHING_FITS: {
    kind: 'notice',
    when: 'No kind of dish can be cooked on what these coals still give.',
    next: 'Light more.',
  },
  COALS_AGE_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'An age is not between 0 minutes and ten hours.',
    next: 'Say about how many minutes ago the coals were lit, or the food went in.',
  },
  COALS_OVEN_OUTSIDE_RANGE: {
    kind: 'refusal',
    when: 'The oven is smaller than 8 inch, larger than 16 inch, or its depth or weight can not be.',
    next: 'Give the oven’s measures again.',
  },
  COALS_WIND_OUTSIDE_RANGE: {
    kind: 'refusal',
    when: 'The wind at the oven is above 15 m/s.',
    next: 'Do not light a fire in this wind.',
  },
  COALS_HEAT_OUT_OF_REACH: {
    kind: 'refusal',
    when: 'A full lid and floor stay more than 30 K below the wanted heat, or a full floor below the boil.',
    next: 'Screen the oven, take a lower heat, or another oven; simmer with coals on the lid too.',
  },
  COALS_HEAT_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'The wanted heat is below the air, or above 290 °C.',
    next: 'Ask for a heat between 50 and 290 °C.',
  },
  COALS_TIME_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'The time in the oven is not between one minute and twelve hours.',
    next: 'Give the time that the dish takes.',
  },
  COALS_CONDITIONS_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'Rain above 50 mm/h, a riser above 20 cm, or a lid that can not be of this oven.',
    next: 'Give rain, riser, lid weight and lid width again, or leave them out.',
  },
  COALS_FUEL_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'One briquette is said to weigh less than 5 g or more than 120 g.',
    next: 'Weigh ten unlit briquettes and divide by ten.',
  },
  COALS_PIN_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'A pinned count is not a whole number from 0 to 200.',
    next: 'Give whole coals.',
  },
  COALS_FUEL_SHORT_FOR_THIS: {
    kind: 'notice',
    when: 'The charcoal at hand is too little for this dish; it says what it does at most.',
    next: 'Cook what is named instead, or get more.',
  },
  COALS_STACK_CAUTION: {
    kind: 'notice',
    when: 'Two ovens are planned one on the other.',
    next: 'Stack only when coals are short: look at both, the one to open on top.',
  },
  COALS_STACK_SIZES_DIFFER: {
    kind: 'notice',
    when: 'The upper oven of a stack is more than one size smaller.',
    next: 'Lay the coals between in the upper floor’s circle and the rest on the lower rim.',
  },
  COALS_STACK_LOWER_FIRST: {
    kind: 'notice',
    when: 'The lower oven of a stack is done before the upper one.',
    next: 'Put the dish that is done first, or opened most, on top.',
  },
  COALS_STACK_EVEN_HEAT: {
    kind: 'notice',
    when: 'A bread in a stack has more heat below than it would alone.',
    next: 'Set it on a rack or pan, and look at its bottom early.',
  },
  COALS_STACK_HEAT_OFF: {
    kind: 'notice',
    when: 'One oven of a stack stays more than a step of the charts from its wanted heat.',
    next: 'Take them apart, or stack dishes of one heat.',
  },
  COALS_STACK_METHOD_UNFIT: {
    kind: 'refusal',
    when: 'A dish of a stack is fried, boiled, kept warm, browned first or not heated at all.',
    next: 'Cook it beside the stack.',
  },
  COALS_STACK_UNLIKE: {
    kind: 'refusal',
    when: 'A pot and a bread, two fuels, or heats more than two chart steps apart are stacked.',
    next: 'Stack dishes of like needs and even heat.',
  },
  COALS_STACK_TOP_HEAVY: {
    kind: 'refusal',
    when: 'The upper oven of a stack is larger than the lower.',
    next: 'Put the larger one below.',
  },
  COALS_STACK_PINS_CLASH: {
    kind: 'refusal',
    when: 'Two different counts are pinned for the one layer between two ovens.',
    next: 'Pin one of them.',
  },
} satisfies CodeList;
