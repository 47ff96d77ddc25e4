// The codes of this stage; their sentences are in publish/words/provisions.ts.

import type { CodeList } from '../notice/notice.ts';

export const provisionsCodes = {
  PROVISIONS_FUEL_SHORT: {
    kind: 'notice',
    when: 'the fuel on hand does not cover the plan with its spare',
    next: 'take more, or drop a dish',
  },
  PROVISIONS_FUEL_NOT_ENOUGH: {
    kind: 'notice',
    when: 'the fuel on hand does not even cover the plan without spare',
    next: 'take more, or drop a dish: this meal can not be cooked with it',
  },
  PROVISIONS_FUEL_UNCOUNTED: {
    kind: 'notice',
    when: 'nobody has weighed or counted the briquettes, so their mass is the usual one',
    next: 'weigh ten of them',
  },
  PROVISIONS_AS_BOUGHT: {
    kind: 'notice',
    when: 'the recipe weighs produce peeled or cut, so more has to be bought',
    next: 'buy the larger amount, or the smaller one ready cut',
  },
  PROVISIONS_DRINKING_HOURS: {
    kind: 'notice',
    when: 'drinking water is reckoned for the hours from the first hands to the last',
    next: 'take more where people come sooner, stay longer, work hard or sit in the heat',
  },
  PROVISIONS_WATER_TRIPS: {
    kind: 'notice',
    when: 'the water of the day is more than one person carries at once',
    next: 'fill cans before the cooking starts, or send several people',
  },
  PROVISIONS_BAG_APART: {
    kind: 'notice',
    when: 'a bag is kept free of something',
    next: 'weigh it first, with clean tools, before any other bag is opened',
  },
  PROVISIONS_FOOD_UNKNOWN: {
    kind: 'notice',
    when: 'a food was not found in the larder, so its shelf is a guess by its part',
    next: 'check how it has to be kept',
  },
  PROVISIONS_PACK_ZERO: {
    kind: 'refusal',
    when: 'a pack of a food is said to hold nothing, less than nothing, or no number',
    next: 'write what stands on the packet; until then the food is bought by weight',
  },
  PROVISIONS_YIELD_OVER_ONE: {
    kind: 'refusal',
    when: 'more of a food is said to be left after peeling than was bought, or nothing of it',
    next: 'write the usable share as 100 % or less; a factor of 1.19 is a share of 84 %',
  },
  PROVISIONS_STORE_UNUSED: {
    kind: 'notice',
    when: 'the stores name a food that no dish uses',
    next: 'check its name against the shopping list, or take it out',
  },
  PROVISIONS_OVERLOAD: {
    kind: 'notice',
    when: 'the carriers named can not take all boxes',
    next: 'take one more carrier, go twice, or leave something at home',
  },
  PROVISIONS_BOX_HEAVY: {
    kind: 'notice',
    when: 'one thing is heavier than a box may be, and it can not be divided',
    next: 'carry it by two, or raise the limit of a box',
  },
  PROVISIONS_ICE_SHORT: {
    kind: 'notice',
    when: 'the ice that goes in is melted before the last serving',
    next: 'take more ice or a thicker cooler, pack later, or cook from the cooler first',
  },
  PROVISIONS_COOLER_FULL: {
    kind: 'notice',
    when: 'food and ice want more room than the cooler has',
    next: 'take a second cooler, or leave out what needs no cold',
  },
  PROVISIONS_RAW_BESIDE_READY: {
    kind: 'notice',
    when: 'one cooler holds raw meat and food that is eaten as it is',
    next: 'take a second cooler; else raw meat sealed, at the bottom, under everything',
  },
  PROVISIONS_COOLER_ASSUMED: {
    kind: 'notice',
    when: 'something has to be kept cold and the camp names no cooler',
    next: 'write the cooler into the stores: the ice is reckoned for a usual one',
  },
} as const satisfies CodeList;

export type ProvisionsCode = keyof typeof provisionsCodes;
