// Sentences for the codes of coals/ about what a cook asks or lays: layouts of one's own, what is left
// of a fire, a stack.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Sentence, Words } from '../say.ts';
import { sentenceCase } from '../sheet/phrases.ts';
import { gives } from './coals.ts';
import { aboveIdle, layoutCool, layoutDoes, layoutFades, layoutHot, overfills } from './layout.ts';

const number = (values: NoticeValues, key: string): number => Number(values[key] ?? 0);

const counts = (values: NoticeValues): string =>
  `${number(values, 'above')} above and ${number(values, 'below')} below`;

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
      ? `${sentenceCase(say.ovenName(about.oven ?? ''))} is cold.`
      : `Till then ${say.ovenName(about.oven ?? '')} falls from ${say.oven(from)} to ${say.oven(to)}: lid on.`;
  const again =
    values.minute === undefined
      ? ''
      : ` Laid then, they bring it to ${say.oven(number(values, 'wantedKelvin'))} in ` +
        `${say.minutes(number(values, 'minute'))} more.`;
  return `There is no fire to work with. ${light} ${falls}${again}`;
};

export const coalsDoorsWords: Words = {
  COALS_PINNED_GIVES: (values, about, say) =>
    values.fuel === 'wood-coals'
      ? `Your own layout is kept. ${gives(values, about, say)}`
      : `Your own ${counts(values)} are kept. ${gives(values, about, say)}`,
  COALS_PIN_OVERFILLS: (values, about, say) => overfills(values, about, say),
  COALS_BOIL_NEVER: (values, about, say) =>
    `The pot in ${say.ovenName(about.oven ?? '')} does not boil in ${say.minutes(number(values, 'minutes'))}: ` +
    'start with hot water or less of it, screen the wind, or simmer it with coals on its lid too.',
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
  COALS_AGE_IMPOSSIBLE: () =>
    'That age can not be: say about how many minutes ago the coals were lit, or the food went in.',
  COALS_HEAT_IMPOSSIBLE: (values, _about, say) =>
    `An oven heat of ${say.oven(number(values, 'wantedKelvin'))} can not be planned: ask for one ` +
    `above the air and up to ${say.oven(number(values, 'highestKelvin'))}.`,
  COALS_TIME_IMPOSSIBLE: (values, _about, say) =>
    `A time in the oven of ${say.minutes(number(values, 'minutes'))} can not be planned: ` +
    'give one from a minute to twelve hours.',
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
    `${sentenceCase(say.ovenName(about.oven ?? ''))} is much smaller than the oven under it: a ring ` +
    'that fits the lid misses its floor.',
  COALS_STACK_LOWER_FIRST: (_values, about, say) =>
    `${sentenceCase(say.ovenName(about.oven ?? ''))} is done first and stands below: put it on top.`,
  COALS_STACK_EVEN_HEAT: () =>
    'Bread in a stack gets more heat from below than alone: set it on a rack, look early.',
  COALS_STACK_HEAT_OFF: (values, about, say) => gives(values, about, say),
  COALS_STACK_METHOD_UNFIT: (_values, about, say) =>
    `What cooks in ${say.ovenName(about.oven ?? '')} wants heat from one side, or its lid off: it ` +
    'can not stand in a stack.',
  COALS_STACK_UNLIKE: () =>
    'These two want different heat: stack only dishes of like needs, and one fuel.',
  COALS_STACK_TOP_HEAVY: (_values, about, say) =>
    `${sentenceCase(say.ovenName(about.oven ?? ''))} is larger than the oven under it: put it below.`,
  COALS_STACK_PINS_CLASH: () =>
    'The coals between two stacked ovens are one layer: pin one count for it.',
};
