// The codes of this stage; their sentences are in publish/words/safety.ts.

import type { CodeList } from '../notice/notice.ts';

export const safetyCodes = {
  SAFETY_FIRE_FORBIDDEN: {
    kind: 'refusal',
    when: 'a dish needs coals and the fire restriction forbids them at this place',
    next: 'cook without fire, use a stove with a valve where that is allowed, or ask the ranger',
  },
  SAFETY_BLEACH_UNKNOWN: {
    kind: 'refusal',
    when: 'the strength on the bleach label is missing or not between 1 and 15 per cent',
    next: 'read the per cent of sodium hypochlorite on the label; never guess it',
  },
  SAFETY_BLEACH_NOT_FOR_DRINKING: {
    kind: 'refusal',
    when: 'bleach for drinking water is weaker than 4 or stronger than 10 per cent: no table has it',
    next: 'boil the water, or use plain bleach of 6 to 8.25 per cent',
  },
  SAFETY_NO_WATER: {
    kind: 'refusal',
    when: 'a dose is asked for no water, or for a strength of nothing',
    next: 'say how much water, more than none',
  },
  SAFETY_BLEACH_BETWEEN: {
    kind: 'notice',
    when: 'the label of the bleach stands between the strengths that the table of drops prints',
    next: 'the drops are those of the weaker bleach',
  },
  SAFETY_LOW_HOLD: {
    kind: 'refusal',
    when: 'a lower core for a longer time is asked for: under 140 F, not whole red meat, or people at risk',
    next: 'cook to the core on the card; holding times only explain',
  },
  SAFETY_FIRE_STAGE_ONE: {
    kind: 'notice',
    when: 'stage 1 restrictions: charcoal only in built-in rings and grates of a developed site',
    next: 'do not light coals on the ground, in a pan or on a table; ask the local office',
  },
  SAFETY_FIRE_STAGE_TWO: {
    kind: 'notice',
    when: 'stage 2 restrictions: no charcoal and no wood anywhere',
    next: 'cook without fire',
  },
  SAFETY_FIRE_ASK: {
    kind: 'notice',
    when: 'the camp file does not say whether fires are restricted',
    next: 'ask the local office before you light',
  },
  SAFETY_FIRE_COALS_ALLOWED: {
    kind: 'notice',
    when: 'the cook says that coals are allowed at this very place in spite of restrictions',
    next: 'keep the permit or the rule at hand',
  },
  SAFETY_WIND_RED_FLAG: {
    kind: 'notice',
    when: 'wind of 15 mph or more with dry, warm air: the weather of a Red Flag Warning',
    next: 'do not light; local orders override this',
  },
  SAFETY_WIND_STRONG: {
    kind: 'notice',
    when: 'wind of 15 mph or more, dryness not known or not extreme',
    next: 'ask about warnings; put the fire out if sparks fly',
  },
  SAFETY_WIND_FRESH: {
    kind: 'notice',
    when: 'wind between 10 and 15 mph',
    next: 'put up the screen and have someone watch the fire',
  },
  SAFETY_CARBON_MONOXIDE: {
    kind: 'notice',
    when: 'always',
    next: 'coals stay in the open air, even those that feel cold',
  },
  SAFETY_UNDER_ROOF: {
    kind: 'notice',
    when: 'the place, the title or a step of a recipe speaks of coals or ovens in a tent, vehicle, cave, room or under a fly',
    next: 'bake and keep coals in the open air, and leave the oven there until it has no coals',
  },
  SAFETY_HOT_IRON: {
    kind: 'notice',
    when: 'always',
    next: 'gloves to the forearm, lifter in the middle of the lid, lid on its stand',
  },
  SAFETY_CLEAR_GROUND: {
    kind: 'notice',
    when: 'always',
    next: 'clear a circle down to bare ground and keep tents and gear away',
  },
  SAFETY_WATER_AT_HAND: {
    kind: 'notice',
    when: 'always',
    next: 'bucket of water and shovel beside the fire before it is lit',
  },
  SAFETY_FIRE_PAN: {
    kind: 'notice',
    when: 'coals would lie on grass',
    next: 'put a fire pan with legs under them',
  },
  SAFETY_SNOW_MELTS: {
    kind: 'notice',
    when: 'coals would lie on snow',
    next: 'put a fire pan or table under them, or they drown',
  },
  SAFETY_BURNS: {
    kind: 'notice',
    when: 'always',
    next: 'cool running water for 20 minutes, no ice, no butter',
  },
  SAFETY_ASH: {
    kind: 'notice',
    when: 'always',
    next: 'drown, stir, drown, feel; treat ash as live for days',
  },
  SAFETY_TREATED_WOOD: {
    kind: 'notice',
    when: 'the camp burns wood',
    next: 'never painted, treated or railway wood',
  },
  SAFETY_WASH_HANDS: {
    kind: 'notice',
    when: 'always',
    next: 'soap, water, 20 seconds; sanitiser does not remove allergens',
  },
  SAFETY_ILL_HANDS: {
    kind: 'notice',
    when: 'always',
    next: 'anyone with vomiting or diarrhoea in the last 48 hours does not touch food',
  },
  SAFETY_TREAT_WATER: {
    kind: 'notice',
    when: 'the water comes from a spring, stream, lake or melted snow',
    next: 'bring it to a rolling boil for the minutes given, or filter and disinfect',
  },
  SAFETY_HIGH_RISK: {
    kind: 'notice',
    when: 'small children or people over 65 eat',
    next: 'keep to the cores on the cards, no raw egg, dough or sprouts',
  },
  SAFETY_PROBE: {
    kind: 'notice',
    when: 'meat, poultry, fish, egg or re-heated food is in the dish',
    next: 'probe the coldest point before serving',
  },
  SAFETY_KIDNEY_BEANS: {
    kind: 'notice',
    when: 'dry kidney or broad beans are cooked',
    next: 'soak 5 hours, throw the water away, boil hard for 30 minutes before any slow simmer',
  },
  SAFETY_BEANS_AT_HEIGHT: {
    kind: 'notice',
    when: 'dry kidney or broad beans are cooked above 5,000 ft, where water boils cooler than the rule was made for',
    next: 'boil them at home, low down, or take tinned ones',
  },
  SAFETY_READINGS_FEW: {
    kind: 'refusal',
    when: 'readings of a probe are judged and there is none, or they run backwards',
    next: 'give each reading with its time, soonest first',
  },
  SAFETY_RAW_FLOUR: {
    kind: 'notice',
    when: 'flour or meal is handled',
    next: 'no tasting of dough; wash hands and table before ready food is touched',
  },
  SAFETY_HONEY: {
    kind: 'notice',
    when: 'honey is in the dish',
    next: 'none for a child under one year, baked or not',
  },
  SAFETY_RICE: {
    kind: 'notice',
    when: 'rice is cooked',
    next: 'eat it hot; chill within an hour, eat within a day, re-heat once',
  },
  SAFETY_GARLIC_OIL: {
    kind: 'notice',
    when: 'garlic and oil are in a dish that is not cooked',
    next: 'make it fresh and keep it cold',
  },
  SAFETY_KEEP_COLD: {
    kind: 'notice',
    when: 'a dish is carried and served cold',
    next: 'keep it in the cooler until served',
  },
  SAFETY_EGG_NOT_COOKED: {
    kind: 'notice',
    when: 'egg is in a dish that is not heated',
    next: 'use boiled or pasteurised egg',
  },
  SAFETY_CHECK_LABEL: {
    kind: 'notice',
    when: 'an ingredient may hold an allergen that someone avoids',
    next: 'read the label; until then it counts as in the dish',
  },
  SAFETY_KEPT_APART: {
    kind: 'notice',
    when: 'a dish is kept free of something',
    next: 'own oven, own spoon, mixed first, served first with its own spoon',
  },
  SAFETY_NO_OVEN_KEPT_APART: {
    kind: 'notice',
    when: 'a dish is to be kept free but no oven of the camp is',
    next: 'keep one oven for it alone: seasoned iron cannot be washed clean of an allergen',
  },
  SAFETY_NOT_FREE: {
    kind: 'notice',
    when: 'a dish is to be kept free of something that is in its own ingredients',
    next: 'change the ingredient or do not call it free',
  },
  SAFETY_PUBLIC_NO_HAND_WASH: {
    kind: 'notice',
    when: 'a public event has no hand-wash line in its gear',
    next: 'set one up before food is touched: can with an open tap, soap, paper, bucket',
  },
  SAFETY_PUBLIC_NO_THERMOMETER: {
    kind: 'notice',
    when: 'a public event has no thermometer',
    next: 'bring a stem thermometer of 0 to 220 F',
  },
  SAFETY_PUBLIC_EVENT: {
    kind: 'notice',
    when: 'the camp feeds the public',
    next: 'file with the health office weeks before; keep the safety log; its rules override',
  },
  SAFETY_WILD_GAME: {
    kind: 'notice',
    when: 'hunted meat is in the dish',
    next: 'cook it as poultry, 165 F',
  },
  SAFETY_SHELLFISH: {
    kind: 'notice',
    when: 'shellfish is in the dish',
    next: 'flesh opaque; shells open, and what stays shut is thrown away',
  },
  SAFETY_FOIL_POTATO: {
    kind: 'notice',
    when: 'potatoes are baked in foil',
    next: 'keep them hot until eaten, or open the foil and chill them',
  },
  SAFETY_UNFIT: {
    kind: 'notice',
    when: 'someone can not eat a dish',
    next: 'give them another, and say so at the line',
  },
  SAFETY_NOTHING_TO_EAT: {
    kind: 'notice',
    when: 'someone can eat no dish of the menu',
    next: 'add a dish for them',
  },
} as const satisfies CodeList;

export type SafetyCode = keyof typeof safetyCodes;
