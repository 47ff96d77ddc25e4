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
} as const satisfies CodeList;

export type ProvisionsCode = keyof typeof provisionsCodes;
