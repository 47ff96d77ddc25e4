// What camp/ can find wrong or doubtful.

import type { CodeList } from '../notice/notice.ts';

export const campCodes = {
  CAMP_NO_HANDS: {
    kind: 'refusal',
    when: 'Nobody is there to do the work.',
    next: 'Say who helps, from when to when; you count as one.',
  },
  CAMP_HANDS_HOURS_UPSIDE_DOWN: {
    kind: 'refusal',
    when: "Someone's time ends before it begins.",
    next: 'Put the earlier time first; for a meal past midnight let the hours run on: 25:00 is 1:00.',
  },
  CAMP_NO_OVENS: {
    kind: 'refusal',
    when: 'There is no oven in the camp.',
    next: 'Add at least one oven: its diameter across the top, and whether it is deep.',
  },
  CAMP_ELEVATION_OUTSIDE_RANGE: {
    kind: 'refusal',
    when: 'The camp lies deeper or higher than any camp can.',
    next: 'Check the elevation and whether it was feet or metres.',
  },
  CAMP_WIND_TOO_STRONG: {
    kind: 'refusal',
    when: 'The wind is above 30 m/s, or no number, at some hour: no coals can be kept in that.',
    next: 'Check the number and whether it was miles or metres; if it is right, cook another day.',
  },
  CAMP_AIR_OUTSIDE_RANGE: {
    kind: 'refusal',
    when: 'The air is below -40 °C or above 55 °C at some hour.',
    next: 'Check the temperature and whether it was °F or °C.',
  },
  CAMP_BOILING_IMPOSSIBLE: {
    kind: 'refusal',
    when: 'Water boils at the temperature given in no place where anyone camps.',
    next: 'Check the thermometer in boiling water again, with its tip off the bottom of the pot.',
  },
  CAMP_WEATHER_MISSING: {
    kind: 'notice',
    when: 'No weather was given; mild air and a light breeze stand in.',
    next: 'Say what the leaves do and how cold it is, or copy the forecast by the hour.',
  },
  CAMP_WEATHER_BEYOND_FORECAST: {
    kind: 'notice',
    when: 'Hands are at work more than an hour outside the hours for which weather was given.',
    next: 'Add the missing hours; until then the nearest one stands in.',
  },
  CAMP_GUSTS_STRONG: {
    kind: 'notice',
    when: 'Gusts reach 25 mph (11 m/s), or the wind itself 15 mph (7 m/s), at some hour.',
    next: 'Fix the screens to the ground, keep water at hand, and ask whether fire is allowed today.',
  },
  CAMP_FUEL_UNKNOWN: {
    kind: 'notice',
    when: 'It was not said how many briquettes there are.',
    next: 'Compare the amount that the plan needs with what you have; weigh the bag if in doubt.',
  },
} as const satisfies CodeList;
