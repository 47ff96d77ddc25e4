// The frame of a sheet that needs no camp: one oven, its spot, what was assumed, the safety strip.

import type { CampOven, Fuel } from '../../camp/camp.ts';
import type { CurvePoint } from '../../coals/coal-plan.ts';
import { SHOVEL_PIECES, shovelsFor } from '../../coals/fuel.ts';
import type { Assumption } from '../../menu/tonight-answers.ts';
import type { Notice } from '../../notice/notice.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks, noticeText } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { assumedLine } from './assumed.ts';
import { shovelsWord } from './phrases.ts';

/** What every door knows of the oven and its spot. */
export interface Door {
  readonly oven: Pick<CampOven, 'name'>;
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
    { type: 'strip', items: [...new Set(door.strip.map((notice) => noticeText(notice, say)))] },
    ...assumedLineOf(door, say),
  ],
});

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

/** The curve at whole fives of minutes, with its band, so that it can be read at the fire. */
export function curveTable(curve: readonly CurvePoint[], from: string, say: Say): Block {
  const last = curve.at(-1)?.minute ?? 0;
  const step = 5 * Math.max(1, Math.ceil(last / 5 / (MOST_ROWS - 1)));
  const rows = curve
    .filter(({ minute }) => minute % step === 0 || minute === last)
    .map(({ minute, oven, low, high, load }) => [
      say.minutes(minute),
      load === undefined ? 'empty' : 'food in',
      say.oven(oven),
      rangePhrase(say.oven(low), say.oven(high)),
    ]);
  return {
    type: 'table',
    caption: `Heat in the oven; minutes count from ${from}`,
    head: ['minute', 'state', 'about', 'eight times in ten'],
    rows,
    numeric: [true, false, true, true],
  };
}

const rangePhrase = (low: string, high: string) => (low === high ? low : `${low} to ${high}`);
