// Sentences for what camp/ has to say.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const number = (values: NoticeValues, key: string): number => Number(values[key]);

export const campWords: Words = {
  CAMP_NO_HANDS: () => 'Nobody is there to do the work: say who helps, and when.',
  CAMP_HANDS_HOURS_UPSIDE_DOWN: (values, about, say) =>
    `${say.hand(about.hand ?? '')} is there from ${say.clock(number(values, 'fromClockMinutes'))} to ` +
    `${say.clock(number(values, 'toClockMinutes'))}: the end comes before the beginning.`,
  CAMP_NO_OVENS: () => 'There is no oven in this camp.',
  CAMP_ELEVATION_OUTSIDE_RANGE: (values, _, say) =>
    `No camp lies at ${say.height(number(values, 'elevationMetres'))}; we reckon from ` +
    `${say.height(number(values, 'lowestMetres'))} to ${say.height(number(values, 'highestMetres'))}.`,
  CAMP_WIND_TOO_STRONG: (values, _, say) =>
    `Wind, ${say.wind(number(values, 'windMetresPerSecond'))}, at ` +
    `${say.clock(number(values, 'atClockMinutes'))}: no coals can be kept in that.`,
  CAMP_AIR_OUTSIDE_RANGE: (values, _, say) =>
    `Air at ${say.degrees(number(values, 'airKelvin'))} at ` +
    `${say.clock(number(values, 'atClockMinutes'))} can't be right: check °F or °C.`,
  CAMP_BOILING_IMPOSSIBLE: (values, _, say) =>
    `Water boils at ${say.degrees(number(values, 'boilingKelvin'))} in no camp; ` +
    `${say.degrees(number(values, 'lowestKelvin'))} to ${say.degrees(number(values, 'highestKelvin'))} is possible.`,
  CAMP_WEATHER_MISSING: () =>
    'No weather was given, so mild air and a light breeze stand in; the plan is weaker for it.',
  CAMP_WEATHER_BEYOND_FORECAST: (values, _, say) =>
    `The weather is known from ${say.clock(number(values, 'firstClockMinutes'))} to ` +
    `${say.clock(number(values, 'lastClockMinutes'))}, but you work between ` +
    `${say.clock(number(values, 'fromClockMinutes'))} and ${say.clock(number(values, 'toClockMinutes'))}; ` +
    'the nearest hour stands in.',
  CAMP_GUSTS_STRONG: (values, _, say) =>
    `Gusts at ${say.clock(number(values, 'atClockMinutes'))}, ` +
    `${say.wind(number(values, 'gustMetresPerSecond'))}: sparks will fly. Fix the screens, keep water at ` +
    'hand, and ask whether fire is allowed today.',
  CAMP_FUEL_UNKNOWN: () =>
    'You have not said how many briquettes there are: compare with what the plan needs.',
};
