// Sentences for the codes of coals/: what happens with the heat, and what to do.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Sentence, Words } from '../say.ts';
import { sentenceCase } from '../sheet/phrases.ts';

const number = (values: NoticeValues, key: string): number => Number(values[key] ?? 0);

/** A speed without its name: the names are of the wind ten metres up. */
const speed = (values: NoticeValues, say: Say): string =>
  say.wind(number(values, 'windMetresPerSecond')).replace(/^[^,]*, /, '');

export const gives: Sentence = (values, about, say) =>
  `${sentenceCase(say.ovenName(about.oven ?? ''))}: expect about ${say.oven(number(values, 'meanKelvin'))} ` +
  `where ${say.oven(number(values, 'wantedKelvin'))} is wanted.`;

const belowIsFull: Sentence = (values, about, say) => {
  const oven = say.ovenName(about.oven ?? '');
  const all =
    values.fuel === 'wood-coals'
      ? `No more coals lie under ${oven}`
      : `No more than ${number(values, 'below')} coals lie under ${oven} at once`;
  const minute = values.minute === undefined ? undefined : say.minutes(number(values, 'minute'));
  if (values.method === 'fry')
    return (
      `${all}: expect a floor of about ${say.oven(number(values, 'meanKelvin'))}. ` +
      (minute === undefined
        ? 'Screen the wind, or fry less at a time.'
        : `With the lid on it is hot after ${minute}.`)
    );
  const wait = minute === undefined ? 'it does not boil in its time' : `it boils after ${minute}`;
  const more = number(values, 'lidCoals');
  const lid =
    values.fuel === 'wood-coals' || more === 0
      ? 'Coals on its lid until it boils make it sooner.'
      : `${more} on its lid until it boils make it sooner.`;
  return `${all}: ${wait}. ${lid}`;
};

export const coalsWords: Words = {
  COALS_LID_FULL: (values, about, say) =>
    `The lid is full. ${gives(values, about, say)} Screen the wind, or bake cooler and longer.`,
  COALS_FLOOR_FULL: (values, about, say) =>
    `No more coals fit under the floor. ${gives(values, about, say)}`,
  COALS_BELOW_IS_FULL: (values, about, say) => belowIsFull(values, about, say),
  COALS_RING_FULL: (values, about, say) =>
    `The ring under ${say.ovenName(about.oven ?? '')} is closed: ` +
    (values.fuel === 'wood-coals'
      ? 'more of its coals lie on the lid instead, none under the middle.'
      : `${number(values, 'coals')} more lie on the lid instead, none under the middle.`),
  COALS_FUEL_SHORT: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} alone burns ${say.mass(number(values, 'massGrams'))} of charcoal; ` +
    `you have ${say.mass(number(values, 'onHandGrams'))}.`,
  COALS_HEAT_WANDERS: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} drifts to about ${say.oven(number(values, 'farthestKelvin'))} ` +
    `near ${say.minutes(number(values, 'minute'))}: make the check there.`,
  COALS_PREHEAT_SHORT: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} is only about ${say.oven(number(values, 'ovenKelvin'))} after ` +
    `${say.minutes(number(values, 'minute'))}: load it then all the same, or add coals above.`,
  COALS_BOIL_LATE: (_values, about, say) =>
    `The pot in ${say.ovenName(about.oven ?? '')} does not boil in its time: start with less or ` +
    'with hot water, or give it longer.',
  COALS_WATER_BOILS_OFF: (values, about, say) =>
    `About ${say.mass(number(values, 'massGrams'))} of water leaves ` +
    `${say.ovenName(about.oven ?? '')} as steam: look when you add coals, and top up with hot water.`,
  COALS_WIND_STRONG: (values, about, say) =>
    `About ${speed(values, say)} of the wind reaches ${say.ovenName(about.oven ?? '')}, near the ` +
    'ground: it burns coals up in half their time. Screen it and have coals ready often.',
  COALS_WIND_GALE: (values, about, say) =>
    `About ${speed(values, say)} of the wind reaches ${say.ovenName(about.oven ?? '')}, near the ground` +
    (values.screened === 'yes'
      ? ' even behind the screen: move into the lee, or do not bake in this.'
      : ': screen it, or do not bake in this. Sparks fly, and coals last a third of their time.'),
  COALS_WOOD_BAND_WIDE: () =>
    'Wood coals: nobody has measured a shovel, so the range is wide. Trust the check.',
  COALS_HEIGHT_UNSURE: () =>
    'High camp: sources disagree what thin air does to coals, so the range is wider. ' +
    'Make the check before loading.',
  COALS_AIR_OUTSIDE_RANGE: (values, _about, say) =>
    `Air of ${say.degrees(number(values, 'airKelvin'))} or its pressure is outside what these ` +
    'numbers were tried on: take them as a direction only.',
  COALS_HOT_FAT: () =>
    'Hot fat: fill a third of the pot at most, dry the food, never leave it, keep water and rain off it. ' +
    'If it burns: lid on, coals away, no water. Add coals from the side, at arm’s length.',
  COALS_OVEN_OUTSIDE_RANGE: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} measures ${say.length(number(values, 'diameterMetres'))} across, ` +
    `${say.length(number(values, 'depthMetres'))} deep and ${say.mass(number(values, 'massGrams'))}: ` +
    `coals can be planned for ovens of ${say.length(0.203)} to ${say.length(0.406)} across only.`,
  COALS_WIND_OUTSIDE_RANGE: (values, _about, say) =>
    `Wind at the oven, ${speed(values, say)}: do not light a fire.`,
  COALS_HEAT_OUT_OF_REACH: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} can not reach ${say.oven(number(values, 'wantedKelvin'))}: ` +
    `full of coals it gives about ${say.oven(number(values, 'nearestKelvin'))}.` +
    (values.method === 'boil' ? ' Simmer it, with coals on its lid too.' : ''),
  COALS_CONDITIONS_IMPOSSIBLE: (_values, about, say) =>
    `What is said of ${say.ovenName(about.oven ?? '')} can not be: give its rain, riser, lid weight ` +
    'and lid width again, or leave them out.',
  COALS_FUEL_IMPOSSIBLE: (values, _about, say) =>
    `One briquette of ${say.mass(number(values, 'massGrams'))} can not be right: ` +
    'weigh ten unlit ones and divide by ten.',
};
