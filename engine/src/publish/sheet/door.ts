// The frame of a sheet that needs no camp: one oven, its spot, what was assumed, the safety strip.

import type { CampOven, Fuel } from '../../camp/camp.ts';
import type { CurvePoint, FactorRun } from '../../coals/coal-plan.ts';
import type { FactorName } from '../../coals/factors.ts';
import { SHOVEL_PIECES, shovelsFor } from '../../coals/fuel.ts';
import { type Widest, widestFactor } from '../../coals/widest.ts';
import type { Assumption } from '../../menu/tonight-answers.ts';
import type { Notice } from '../../notice/notice.ts';
import { isHeavyOven } from '../../timetable/oven-work.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks, noticeText } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { assumedLine } from './assumed.ts';
import { shovelsWord } from './phrases.ts';

/** What every door knows of the oven and its spot. */
export interface Door {
  readonly oven: Pick<CampOven, 'name' | 'diameter' | 'style'>;
  readonly fuel: Fuel['kind'];
  readonly assumed: readonly Assumption[];
  /** Assumed beside the spot, in a cook's words: `dough goes in after 15 min`. */
  readonly alsoAssumed?: readonly string[];
  readonly notices: readonly Notice[];
  /** The fixed safety strip. */
  readonly strip: readonly Notice[];
}

interface Framed {
  readonly kind: string;
  readonly title: string;
  readonly blocks: readonly Block[];
  readonly notices: readonly Notice[];
}

export const doorSheet = (door: Door, framed: Framed, say: Say): SheetDocument => ({
  kind: framed.kind,
  title: framed.title,
  eyebrow: door.oven.name,
  blocks: [
    ...framed.blocks,
    ...noticeBlocks([...framed.notices, ...door.notices], say),
    { type: 'strip', items: stripItems(door, say) },
    ...assumedLineOf(door, say),
  ],
});

const stripItems = ({ oven, strip }: Door, say: Say) => [
  ...(isHeavyOven(oven) ? [LIFTED_BY_TWO] : []),
  ...new Set(strip.map((notice) => noticeText(notice, say))),
];

/** AT-THE-FIRE 9 asks it of a deep 14-inch oven; wider ones weigh as much. */
const LIFTED_BY_TWO =
  'Two people lift this oven and turn it, gloves on all four hands: full it is too heavy for one.';

function assumedLineOf({ assumed, alsoAssumed = [] }: Door, say: Say): readonly Block[] {
  const text = assumedLine(assumed, say, alsoAssumed);
  if (text === '') return [];
  return [{ type: 'paragraph', parts: [{ text }] }];
}

export const paragraph = (text: string): Block => ({ type: 'paragraph', parts: [{ text }] });

/** `17 above and 8 below`; shovels for wood. */
export const laidPhrase = (
  { above, below }: { readonly above: number; readonly below: number },
  fuel: Fuel['kind'],
) => `${coalsWord(above, fuel)} above and ${coalsWord(below, fuel)} below`;

/** `17`, or `2 1/2 shovels`. */
export const coalsWord = (pieces: number, fuel: Fuel['kind']) => {
  if (pieces === 0) return 'none';
  if (fuel !== 'wood-coals') return String(pieces);
  const shovels = shovelsFor(pieces);
  return shovels > 0 ? shovelsWord(shovels) : 'less than half a shovel';
};

/** What lies on a shovel that a cook counts, as the engine counts it. */
export const coalsOnShovels = (shovels: number) => Math.round(shovels * SHOVEL_PIECES);

const MOST_ROWS = 9;

interface CurveWords {
  /** `"coals on"`, `now`. */
  readonly from: string;
  /** A pot has a temperature of its own, and that is what its check is about. */
  readonly hasPot?: boolean;
}

/** The curve at whole fives of minutes, with its band, so that it can be read at the fire. */
export function curveTable(
  curve: readonly CurvePoint[],
  { from, hasPot = false }: CurveWords,
  say: Say,
): Block {
  const last = curve.at(-1)?.minute ?? 0;
  const step = 5 * Math.max(1, Math.ceil(last / 5 / (MOST_ROWS - 1)));
  const rows = curve
    .filter(({ minute }) => minute % step === 0 || minute === last)
    .map(({ minute, oven, low, high, load }) => [
      say.minutes(minute),
      load === undefined ? 'empty' : 'food in',
      ...(hasPot ? [load === undefined ? '' : say.degrees(load)] : []),
      say.oven(oven),
      rangePhrase(say.oven(low), say.oven(high)),
    ]);
  return {
    type: 'table',
    caption: hasPot
      ? `The pot itself, and the air and iron round it; minutes count from ${from}`
      : `Heat in the oven; minutes count from ${from}`,
    head: ['minute', 'state', ...(hasPot ? ['the pot'] : []), hasPot ? 'oven' : 'about', EIGHTY],
    rows,
    numeric: [true, false, ...(hasPot ? [true] : []), true, true],
  };
}

const EIGHTY = 'eight times in ten';

const rangePhrase = (low: string, high: string) => (low === high ? low : `${low} to ${high}`);

/** What makes most of a wide range, and what tells it; nothing where it is narrow. */
export function wideLine(
  curve: readonly CurvePoint[],
  runs: readonly FactorRun[] | undefined,
  wood: boolean,
): readonly Block[] {
  return widestLine(widestFactor(curve, runs), wood);
}

export function widestLine(
  widest: Widest<FactorName | 'between'> | undefined,
  wood: boolean,
): readonly Block[] {
  if (widest === undefined) return [];
  const much = widest.share >= 0.5 ? 'Most of the range' : 'The largest part of the range';
  return [paragraph(`${much} is ${TELLS[widest.factor](wood)}`)];
}

const TELLS: Readonly<Record<FactorName | 'between', (wood: boolean) => string>> = {
  between: () =>
    'how much the coals between give to each oven, which nobody has measured: check each oven before it is loaded.',
  coalStrength: (wood) =>
    wood
      ? 'how much heat is in one of your shovels: the hand or thermometer check tells it, and level shovels keep it alike.'
      : 'how strong your coals are: weigh ten of them before, and let the hand or thermometer check tell the rest.',
  ovenLoss: () =>
    'how much heat your own oven loses: a thermometer, or the hand, in the hot oven before it is loaded tells it.',
  coalLife: (wood) =>
    `how long your coals last: see how small they are ${wood ? 'a quarter of an hour after they were laid' : 'half an hour after they were lit'}; half as wide means they are nearly done.`,
  windExposure: () =>
    'how much of the wind reaches the oven: watch smoke or ash beside it, at its own height; a screen narrows it.',
};
