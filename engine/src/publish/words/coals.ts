// Sentences for the codes of coals/: what happens with the heat, and what to do.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Sentence, Words } from '../say.ts';
import { aboveIdle, layoutCool, layoutDoes, layoutFades, layoutHot, overfills } from './layout.ts';

const number = (values: NoticeValues, key: string): number => Number(values[key] ?? 0);

const counts = (values: NoticeValues): string =>
  `${number(values, 'above')} above and ${number(values, 'below')} below`;

/** A sentence may begin with the name of an oven. */
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A speed without its name: the names are of the wind ten metres up. */
const speed = (values: NoticeValues, say: Say): string =>
  say.wind(number(values, 'windMetresPerSecond')).replace(/^[^,]*, /, '');

const gives: Sentence = (values, about, say) =>
  `${capital(say.ovenName(about.oven ?? ''))}: expect about ${say.oven(number(values, 'meanKelvin'))} ` +
  `where ${say.oven(number(values, 'wantedKelvin'))} is wanted.`;

const noFire: Sentence = (values, about, say) => {
  const wood = values.fuel === 'wood-coals';
  const wait = say.minutes(number(values, 'minutes'));
  const light = wood
    ? `Feed the fire now: its first shovels come in about ${wait}.`
    : `Light ${number(values, 'coals')} now; they have ashed over in about ${wait}, to lay ` +
      `${counts(values)}.`;
  const [from, to] = [number(values, 'ovenKelvin'), number(values, 'thenKelvin')];
  const falls =
    Math.abs(from - to) < 3
      ? `${capital(say.ovenName(about.oven ?? ''))} is cold.`
      : `Till then ${say.ovenName(about.oven ?? '')} falls from ${say.oven(from)} to ${say.oven(to)}: lid on.`;
  const again =
    values.minute === undefined
      ? ''
      : ` Laid then, they bring it to ${say.oven(number(values, 'wantedKelvin'))} in ` +
        `${say.minutes(number(values, 'minute'))} more.`;
  return `There is no fire to work with. ${light} ${falls}${again}`;
};

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
  COALS_PINNED_GIVES: (values, about, say) =>
    values.fuel === 'wood-coals'
      ? `Your own layout is kept. ${gives(values, about, say)}`
      : `Your own ${counts(values)} are kept. ${gives(values, about, say)}`,
  COALS_PIN_OVERFILLS: (values, about, say) => overfills(values, about, say),
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
  COALS_BOIL_NEVER: (values, about, say) =>
    `The pot in ${say.ovenName(about.oven ?? '')} does not boil in ${say.minutes(number(values, 'minutes'))}: ` +
    'start with hot water or less of it, screen the wind, or simmer it with coals on its lid too.',
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
  COALS_LAYOUT_DOES: (values, about, say) => layoutDoes(values, about, say),
  COALS_LAYOUT_HOT: (values, about, say) => layoutHot(values, about, say),
  COALS_LAYOUT_COOL: (values, about, say) => layoutCool(values, about, say),
  COALS_LAYOUT_FADES: (values, about, say) => layoutFades(values, about, say),
  COALS_LAYOUT_BOTTOM_HEAVY: (values) =>
    values.fuel === 'wood-coals'
      ? 'Much of it lies below: a third there is usual for bread, or the bottom burns.'
      : `${counts(values)}: a third below is usual for bread, or the bottom burns.`,
  COALS_ABOVE_IDLE: (values) => aboveIdle(values),
  COALS_SPENT: () =>
    'Some of these coals are older than they live in this wind: count them as ash.',
  COALS_NO_FIRE: (values, about, say) => noFire(values, about, say),
  COALS_NOTHING_FITS: () =>
    'No whole dish gets done on these coals alone: finish one that is nearly done, or light others and add them.',
  COALS_HOT_FAT: () =>
    'Hot fat: fill a third of the pot at most, dry the food, never leave it, keep water and rain off it. ' +
    'If it burns: lid on, coals away, no water. Add coals from the side, at arm’s length.',
  COALS_AGE_IMPOSSIBLE: () =>
    'That age can not be: say about how many minutes ago the coals were lit, or the food went in.',
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
  COALS_HEAT_IMPOSSIBLE: (values, _about, say) =>
    `An oven heat of ${say.oven(number(values, 'wantedKelvin'))} can not be planned: ask for one ` +
    `above the air and up to ${say.oven(number(values, 'highestKelvin'))}.`,
  COALS_TIME_IMPOSSIBLE: (values, _about, say) =>
    `A time in the oven of ${say.minutes(number(values, 'minutes'))} can not be planned: ` +
    'give one from a minute to twelve hours.',
  COALS_CONDITIONS_IMPOSSIBLE: (_values, about, say) =>
    `What is said of ${say.ovenName(about.oven ?? '')} can not be: give its rain, riser, lid weight ` +
    'and lid width again, or leave them out.',
  COALS_FUEL_IMPOSSIBLE: (values, _about, say) =>
    `One briquette of ${say.mass(number(values, 'massGrams'))} can not be right: ` +
    'weigh ten unlit ones and divide by ten.',
  COALS_PIN_IMPOSSIBLE: (values) =>
    `${values.coals ?? 'That'} is not a number of coals: give a whole number from 0 to 200.`,
  COALS_FUEL_SHORT_FOR_THIS: (values, _about, say) =>
    `What you have is ${number(values, 'coals')} coals. At most they do ` +
    `${say.oven(number(values, 'hottestKelvin'))}` +
    (values.kinds === '' ? ', and no dish from start to end.' : `: enough for ${values.kinds}.`),
  COALS_STACK_CAUTION: (_values, about, say) =>
    'A stack is a rough guess: nobody has measured one. Published savings are 15 to 20 coals only, ' +
    `and to open ${say.ovenName(about.oven ?? '')} the hot oven on it must be lifted off.`,
  COALS_STACK_SIZES_DIFFER: (_values, about, say) =>
    `${capital(say.ovenName(about.oven ?? ''))} is much smaller than the oven under it: a ring ` +
    'that fits the lid misses its floor.',
  COALS_STACK_LOWER_FIRST: (_values, about, say) =>
    `${capital(say.ovenName(about.oven ?? ''))} is done first and stands below: put it on top.`,
  COALS_STACK_EVEN_HEAT: () =>
    'Bread in a stack gets more heat from below than alone: set it on a rack, look early.',
  COALS_STACK_HEAT_OFF: (values, about, say) => gives(values, about, say),
  COALS_STACK_METHOD_UNFIT: (_values, about, say) =>
    `What cooks in ${say.ovenName(about.oven ?? '')} wants heat from one side, or its lid off: it ` +
    'can not stand in a stack.',
  COALS_STACK_UNLIKE: () =>
    'These two want different heat: stack only dishes of like needs, and one fuel.',
  COALS_STACK_TOP_HEAVY: (_values, about, say) =>
    `${capital(say.ovenName(about.oven ?? ''))} is larger than the oven under it: put it below.`,
  COALS_STACK_PINS_CLASH: () =>
    'The coals between two stacked ovens are one layer: pin one count for it.',
};
