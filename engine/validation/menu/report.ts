// What goes into an oven beside published packings, yields and one trade figure.

import packings from '../../data/circle-packing.json' with { type: 'json' };
import type { RecipeFit } from '../../src/menu/fit/recipe-fit.ts';
import { portionsIn, whatFits } from '../../src/menu/index.ts';
import { isRefusal } from '../../src/notice/notice.ts';
import { fromUnit } from '../../src/quantity/convert.ts';
import { fixed, type ReportRow, reportTable, spanRow } from '../table.ts';
import ratios from './circle-packing.json' with { type: 'json' };
import yields from './fit-yields.json' with { type: 'json' };
import { ovenMade } from './made.ts';

type Numbers = readonly number[];

export const fitReport = (): string => [packingReport(), yieldReport()].join('\n\n');

function packingReport(): string {
  const rows = (ratios.rows as readonly Numbers[]).map(([n, ratio]): ReportRow => {
    const own = packings.rows[n! - 1]!;
    const row = spanRow({
      what: `${n} rounds, floor over one; overlap ${overlapOf(own.centres, own.ratio).toExponential(0)}`,
      source: 'birginGentil2009',
      least: ratio!,
      most: ratio!,
      ours: own.ratio,
      rounding: 0.00005,
      say: fixed(4),
    });
    return row;
  });
  return reportTable('All 37 packings of equal rounds', rows, [
    'Overlap: the most that two rounds run into each other or over the edge, in radii of one.',
  ]);
}

/** Largest overlap of two unit circles, or over the edge; 0 where there is none. */
function overlapOf(centres: readonly Numbers[], ratio: number): number {
  let most = 0;
  for (const [at, [x = 0, y = 0]] of centres.entries()) {
    most = Math.max(most, Math.hypot(x, y) + 1 - ratio);
    for (const [otherX = 0, otherY = 0] of centres.slice(at + 1)) {
      most = Math.max(most, 2 - Math.hypot(x - otherX, y - otherY));
    }
  }
  return most;
}

const inch = (inches: number) => fromUnit(inches, 'inch');

function yieldReport(): string {
  const cut = whatFits(ovenMade('A', 12), {
    what: 'biscuits',
    cutter: inch(2.5),
    thickness: inch(0.5),
  });
  const round = whatFits(ovenMade('B', 10), { what: 'round', thickness: fromUnit(0.012, 'metre') });
  const pot = whatFits(ovenMade('C', 12), { what: 'pot' });
  if (isRefusal(cut) || isRefusal(round) || isRefusal(pot)) throw new RangeError('nothing fits');
  const ours = [
    cut.gramsEach,
    cut.gramsEach,
    1000 / cut.gramsEach,
    cupsOf(pot) / portionsIn(pot),
    round.mass,
  ];
  const rows = yields.rows.map((row, at) => {
    const [what, value, tolerance, grade] = row as unknown as readonly [
      string,
      number,
      number,
      string,
    ];
    return spanRow({
      what: grade === 'D' ? `${what} (trade, no source)` : what,
      source: grade === 'D' ? 'common practice' : 'armedForcesRecipes',
      least: value,
      most: value,
      ours: ours[at]!,
      rounding: tolerance * value,
      say: fixed(2),
      ...(at === 0 ? { verdict: 'fitted' as const } : {}),
      ...(at === 3 ? { verdict: 'taken' as const } : {}),
    });
  });
  return reportTable('Yields of dough, and the round of one 10-inch oven', rows, [
    `The first row sets how a rolled dough draws together. The round is laid by the floor of a 10-inch oven,`,
    `${(1000 * round.floor).toFixed(0)} mm, not by its name; the trade figure has both fats and a tolerance of 15 %.`,
  ]);
}

/** Stew weighs as much as water: a cup by its volume. */
const cupsOf = ({ mass }: RecipeFit) => mass / 1e6 / fromUnit(1, 'us-cup');
