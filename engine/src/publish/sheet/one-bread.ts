// One bread without a camp: what raises it here, and how long its dough takes.

import type { DishLeavening, Formula } from '../../formula/index.ts';
import { usualBread } from '../../provisions/index.ts';
import { cookMeasureText } from '../../quantity/cook-measure.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { decimal } from '../speak-number.ts';
import { type DeadPowder, deadPowder, insteadRows, isPowder } from './dead-powder.ts';
import { gasRows, heightRows, heightTable } from './leavening-part.ts';
import { moveBlocks, riseRows, starterBlocks, waterRows } from './rise-part.ts';

export interface OneBread {
  readonly name: string;
  readonly formula: Formula;
  readonly leavening: DishLeavening;
  /** What was assumed because nobody said it. */
  readonly assumed: readonly string[];
}

/** `leaven`: what to weigh, the gas of it, the height, and how the tables disagree. */
export function leavenSheet(
  { name, formula, leavening, assumed }: OneBread,
  say: Say,
): SheetDocument {
  const { gas, height } = leavening;
  const notices = [...formula.notices, ...leavening.notices].filter(({ code }) =>
    /^FORMULA_(HEIGHT|ALREADY|POWDER|SODA|LEAVENING)|^BAKE_TARGET/.test(code),
  );
  return {
    kind: 'leaven',
    title: `What raises ${name.toLowerCase()}`,
    blocks: [
      ...weighBlocks(formula, deadPowder(leavening)),
      {
        type: 'facts',
        rows: [
          ...(gas === undefined ? [] : gasRows(gas, { formula }, say)),
          ...(height === undefined ? [] : heightRows(height, { formula }, say)),
        ],
      },
      ...(height === undefined ? [] : [heightTable(height, { formula }, say)]),
      ...noticeBlocks(notices, say),
      ...assumedBlock(assumed),
    ],
  };
}

/** What stands in where the cook said nothing of the air, the height, or the height of the recipe. */
export const assumedOfBread = (
  said: { readonly air?: unknown; readonly height?: unknown; readonly written?: unknown },
  say: Say,
): readonly string[] => [
  ...(said.air === undefined ? [`air ${say.degrees(usualBread.air)}`] : []),
  ...(said.height === undefined ? ['low ground'] : []),
  ...(said.written === undefined ? ['a recipe for low ground'] : []),
];

const RAISES = ['powder', 'soda', 'yeast', 'acid'];

function weighBlocks({ lines, changes }: Formula, dead?: DeadPowder): readonly Block[] {
  const rows = lines
    .filter(({ ingredient }) => RAISES.includes(ingredient.part))
    .map(({ ingredient, grams, measure }) => {
      if (dead !== undefined && isPowder(ingredient))
        return [ingredient.name, 'leave out', 'dead', ''];
      const was = changes.find((each) => each.ingredient === ingredient.name)?.was;
      return [
        ingredient.name,
        ingredient.isUnweighed ? 'not known' : `${decimal(grams, 1)} g`,
        measure === undefined ? '' : cookMeasureText(measure, 'plain'),
        was === undefined ? '' : `${decimal(was, 1)} g`,
      ];
    });
  if (rows.length === 0) return [];
  return [
    {
      type: 'table',
      caption: 'For the recipe as it is written',
      head: ['', 'weigh', 'or measure', 'the recipe says'],
      rows: dead === undefined ? rows : [...rows, ...insteadRows(dead, 4)],
      numeric: [false, true, true, true],
    },
  ];
}

/** `rise`: water, first rise with its doubt, and what would move it. */
export function riseSheet({ name, leavening, assumed }: OneBread, say: Say): SheetDocument {
  const { rise, water, starter, notices } = leavening;
  return {
    kind: 'rise',
    title: `The rise of ${name.toLowerCase()}`,
    blocks: [
      ...noticeBlocks(notices, say),
      {
        type: 'facts',
        rows: [
          ...waterRows(water, say),
          ...(rise === undefined ? [] : riseRows(rise, say)),
          ...(rise?.estimate === undefined
            ? []
            : [
                {
                  label: 'Second rise',
                  value: `about ${say.minutes(rise.estimate.second)}, shaped`,
                },
              ]),
        ],
      },
      ...(rise === undefined ? [] : moveBlocks(rise, say)),
      ...(starter === undefined ? [] : starterBlocks(starter, say)),
      ...assumedBlock(assumed),
    ],
  };
}

const assumedBlock = (assumed: readonly string[]): readonly Block[] =>
  assumed.length === 0
    ? []
    : [
        {
          type: 'paragraph',
          parts: [{ text: `Assumed, change what is wrong: ${assumed.join(', ')}.` }],
        },
      ];
