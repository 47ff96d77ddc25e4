// What a run of probe readings says: hot enough, out of hot and cold how long, cooled fast enough.
// Sources: foodsafety-chart, fsis-two-hours, food-code-3-501-14; lethality-worksheet only explains.

import type { OrRefusal } from '../../notice/notice.ts';
import { refusal } from '../../notice/notice.ts';
import { fromFahrenheit, type Kelvin } from '../../quantity/unit.ts';
import {
  type Cooled,
  type CoreReading,
  cooledIn,
  coreRun,
  type FoodClass,
  foodLimits,
  minutesOut,
  outLimitIn,
  safeCoreOf,
} from '../../safety/index.ts';
import type { Block, FactRow, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';

export interface ReadingsAsked {
  /** Minutes of the clock, going on past midnight. */
  readonly readings: readonly CoreReading[];
  /** Undefined: nobody says what it is, so no core is judged. */
  readonly food?: FoodClass;
  /** Air where it stood; not known where not said, and then the shorter limit holds. */
  readonly air?: Kelvin;
}

/** @refuses SAFETY_READINGS_FEW */
export function readingsSheet(asked: ReadingsAsked, say: Say): OrRefusal<SheetDocument> {
  const { readings } = asked;
  const isForward = readings.every(
    ({ minute }, at) => minute >= (readings[at - 1]?.minute ?? minute),
  );
  if (readings.length === 0 || !isForward) return refusal('SAFETY_READINGS_FEW', ['readings']);
  return {
    kind: 'readings',
    title: 'What the readings say',
    blocks: [
      ...coreBlocks(asked, say),
      ...outBlocks(asked, say),
      ...coolingBlocks(asked, say),
      paragraph(
        'Readings are joined by straight lines: more of them, and the coldest place, tell it better.',
      ),
    ],
  };
}

function coreBlocks({ readings, food }: ReadingsAsked, say: Say): readonly Block[] {
  if (food === undefined) return [];
  const least = safeCoreOf(food);
  const run = coreRun(readings, least);
  if (run === undefined) return [];
  const rest = least.rest > 0 ? `, then rest ${say.minutes(least.rest)}` : '';
  return [
    {
      type: 'lead',
      parts: [
        { text: run.isSafe ? 'The middle was hot enough' : 'NOT DONE: cook on', strong: true },
      ],
    },
    {
      type: 'facts',
      rows: [
        { label: 'Hottest', value: say.degrees(run.hottest) },
        { label: 'Asked for', value: `${say.degrees(least.core)}${rest}` },
        ...lethalRow(food, run.logReduction),
      ],
    },
  ];
}

/** Only of red meat, which the worksheet is about; more than 99 is no figure any more. */
function lethalRow(food: FoodClass, logs: number): readonly FactRow[] {
  if (food !== 'whole-meat' && food !== 'ground-meat') return [];
  const value = logs > 99 ? 'over 99' : logs.toFixed(1);
  return [{ label: 'Salmonella, powers of ten', value, note: 'explains, never decides' }];
}

function outBlocks({ readings, air }: ReadingsAsked, say: Say): readonly Block[] {
  const limits = foodLimits('home');
  const out = minutesOut(readings, limits);
  const limit = outLimitIn(air ?? fromFahrenheit(Number.NaN));
  const band = `${say.degrees(limits.coldHold)} and ${say.degrees(limits.hotHold)}`;
  const isOver = out > limit;
  return [
    { type: 'heading', text: 'Neither hot nor cold' },
    {
      type: 'facts',
      rows: [
        { label: `Between ${band}`, value: say.minutes(out) },
        {
          label: 'No longer than',
          value: say.minutes(limit),
          note: air === undefined ? 'air not said' : `air ${say.degrees(air)}`,
        },
      ],
    },
    ...(isOver
      ? [
          paragraph(
            'Longer than that: thrown away, unless it was being cooled as below, or heated and cooked.',
          ),
        ]
      : []),
  ];
}

/** From the hottest reading on; a first reading that is under the hot limit began the clock unseen. */
function coolingBlocks({ readings }: ReadingsAsked, say: Say): readonly Block[] {
  const limits = foodLimits('home');
  const hottest = Math.max(...readings.map(({ core }) => core));
  const falling = readings.slice(readings.findLastIndex(({ core }) => core === hottest));
  const last = falling.at(-1);
  if (last === undefined || falling.length < 2 || limits.hotHold <= last.core) return [];
  const { between, toBetween, inAll } = limits.cooling;
  const isUnseen = hottest < limits.hotHold;
  return [
    { type: 'heading', text: 'Cooling' },
    { type: 'lead', parts: [{ text: verdictWord(cooledIn(falling, limits), say), strong: true }] },
    ...(isUnseen
      ? [
          paragraph(
            `Its first reading was already under ${say.degrees(limits.hotHold)}: the clock began before it, and ` +
              'nobody knows when.',
          ),
        ]
      : []),
    paragraph(
      `From ${say.degrees(limits.hotHold)}: ${say.degrees(between)} within ${say.minutes(toBetween)}, ` +
        `${say.degrees(limits.coldHold)} within ${say.minutes(inAll)} in all.`,
    ),
  ];
}

function verdictWord(cooled: Cooled, say: Say): string {
  if (cooled !== 'reheat') return VERDICTS[cooled];
  const { core } = foodLimits('home').reheat;
  return `Too slow at first: heat it to ${say.degrees(core)} and begin once more, or throw it away`;
}

const VERDICTS: Readonly<Record<Exclude<Cooled, 'reheat'>, string>> = {
  cold: 'Cooled in time',
  cooling: 'In time so far: read again',
  'throw-away': 'Too slow: throw it away',
};
