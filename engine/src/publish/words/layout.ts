// Sentences about a layout of the cook's own: does it hold its wish, and what to add or take. A pot is
// told by its boil, a bread by its oven.

import { shovelsFor } from '../../coals/fuel.ts';
import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Sentence } from '../say.ts';
import { fraction } from '../speak-number.ts';

const number = (values: NoticeValues, key: string): number => Number(values[key] ?? 0);
const isPot = ({ method }: NoticeValues): boolean => method === 'simmer' || method === 'boil';
const isWood = ({ fuel }: NoticeValues): boolean => fuel === 'wood-coals';

export const layoutDoes: Sentence = (values, _about, say) =>
  isPot(values)
    ? `It will do: ${boilsAt(values, say)}, and boils to the end.`
    : `It will do: about ${say.oven(number(values, 'meanKelvin'))} on the whole.`;

export const layoutHot: Sentence = (values, _about, say) => {
  const change = changePhrase(values);
  if (isPot(values)) {
    const take = change === '' ? 'Take coals off then' : `Then take ${change} off`;
    return `It boils hard: ${boilsAt(values, say)}, over an oven far hotter than a simmer wants. ${take}, or it catches.`;
  }
  const take = change === '' ? 'Take some off' : `Take off at least ${change} now`;
  return `Too hot: ${aboutWanted(values, say)}. ${take}.`;
};

export const layoutCool: Sentence = (values, _about, say) => {
  const short = isPot(values)
    ? `Too cool: after ${say.minutes(number(values, 'minutes'))} the pot is at about ` +
      `${say.degrees(number(values, 'potKelvin'))} and does not boil`
    : `Too cool: ${aboutWanted(values, say)}`;
  return `${short}. ${addPhrase(values, say)}`;
};

export const layoutFades: Sentence = (values, _about, say) => {
  const minute = say.minutes(number(values, 'minute'));
  const fades = isPot(values)
    ? `It boils at first, but goes off the boil after ${minute}`
    : `It does at first, but fades after ${minute}`;
  return `${fades}. ${addPhrase(values, say)}`;
};

/** A fry has its lid off. */
export const aboveIdle = (values: NoticeValues): string => {
  const [above, below] = [number(values, 'above'), number(values, 'below')];
  const move =
    below === 0
      ? 'No more fit below: keep them for later'
      : `Lay ${below < above ? `${amount(below, values)} of them` : 'them'} below`;
  return `Coals above do nothing with the lid off, and are not counted here. ${move}.`;
};

/** More than lie flat, by side; heaped ones roll off. */
export const overfills: Sentence = (values, about, say) => {
  const oven = say.ovenName(about.oven ?? '');
  const side = (laid: number, fits: number, where: string) =>
    fits <= 0 || laid <= fits
      ? []
      : [
          `${amount(fits, values)} ${lies(fits, values)} flat ${where}, ${amount(laid - fits, values)} too many`,
        ];
  const told = [
    ...side(number(values, 'above'), number(values, 'lidFits'), `on the lid of ${oven}`),
    ...side(number(values, 'below'), number(values, 'floorFits'), `under ${oven}`),
  ];
  return told.length === 0
    ? `More coals than lie flat on ${oven}: heaped ones roll off.`
    : `${told.join('; ')}: heaped ones roll off.`;
};

const lies = (pieces: number, values: NoticeValues) =>
  isWood(values) && shovelsFor(pieces) <= 1 ? 'lies' : 'lie';

const boilsAt = (values: NoticeValues, say: Say) =>
  number(values, 'minute') < 1
    ? 'the pot boils already'
    : `the pot boils after ${say.minutes(number(values, 'minute'))}`;

const aboutWanted = (values: NoticeValues, say: Say) =>
  `about ${say.oven(number(values, 'meanKelvin'))} where ` +
  `${say.oven(number(values, 'wantedKelvin'))} is wanted`;

/** The fewest that do, found by running them; or that none do, and what all that fit give. */
function addPhrase(values: NoticeValues, say: Say): string {
  const change = changePhrase(values);
  if (change !== '') {
    const minute = number(values, 'addMinute');
    const again =
      values.everyMinutes === undefined
        ? ''
        : ` and again every ${say.minutes(number(values, 'everyMinutes'))}`;
    return `Add at least ${change} ${minute < 1 ? 'now' : `at ${say.minutes(minute)}`}${again}.`;
  }
  if (values.fullKelvin === undefined) return 'Have fresh coals ready.';
  const gives = isPot(values)
    ? `brings the pot to about ${say.degrees(number(values, 'fullPotKelvin'))} in that time`
    : `gives about ${say.oven(number(values, 'fullKelvin'))}`;
  const help = isPot(values)
    ? 'start with less or with hot water, look longer, or screen the wind'
    : 'screen the wind, or bake cooler and longer';
  return `No number that fits does it: all that can be added ${gives}. So ${help}.`;
}

function changePhrase(values: NoticeValues): string {
  const sides = [
    [number(values, 'addAbove'), 'above'],
    [number(values, 'addBelow'), 'below'],
  ] as const;
  return sides
    .filter(([pieces]) => pieces > 0)
    .map(([pieces, where]) => `${amount(pieces, values)} ${where}`)
    .join(' and ');
}

function amount(pieces: number, values: NoticeValues): string {
  if (!isWood(values)) return String(pieces);
  const shovels = Math.max(0.5, shovelsFor(pieces));
  return `${fraction(shovels, 2)} ${shovels > 1 ? 'shovels' : 'shovel'}`;
}
