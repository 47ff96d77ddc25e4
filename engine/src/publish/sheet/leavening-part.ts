// What raises it: the recipe's leavening, what the height does to it, and where the tables disagree.

import type { GasReport, HeightAdvice, HeightCompared } from '../../formula/index.ts';
import { gasOf } from '../../formula/swap/gas.ts';
import type { DishPlan } from '../../meal.ts';
import type { Block, FactRow } from '../document.ts';
import type { Say } from '../say.ts';
import { decimal, fraction } from '../speak-number.ts';

/** One heading, a few facts, and the tables folded away; nothing for a dish without leavening. */
export function leaveningBlocks(dish: DishPlan, say: Say): readonly Block[] {
  const { leavening } = dish;
  if (leavening === undefined) return [];
  const { gas, height } = leavening;
  const rows = [
    ...(gas === undefined ? [] : gasRows(gas, dish, say)),
    ...(height === undefined ? [] : heightRows(height, dish, say)),
  ];
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Leavening', half: true },
    { type: 'facts', rows },
    ...(height === undefined ? [] : [heightTable(height, dish, say)]),
  ];
}

/** Published: 1 to 1 1/4 tsp for a cup of flour, 2 in old books without eggs. */
const USUAL_TEASPOONS = { least: 1, most: 2 };

export function gasRows(
  gas: GasReport,
  { formula }: Pick<DishPlan, 'formula'>,
  say: Say,
): readonly FactRow[] {
  const teaspoons = gas.asTeaspoonsOfPowder;
  return [
    {
      label: 'Gas',
      value: `${gramsSpan(gas.least, gas.most)} of carbon dioxide${writtenPhrase(gas, formula)}`,
      note: `at least ${say.volume(gas.inDough)} in the bowl and ${say.volume(gas.inCrumb)} in the crumb as it sets here; the same gas at sea level fills ${say.volume(gas.inCrumbAtSea)}. A dough holds a part of it.`,
    },
    ...(teaspoons === undefined
      ? []
      : [
          {
            label: 'For a cup of flour',
            value: `as much as ${decimal(teaspoons, 1)} tsp of powder`,
            note: `old and new books say ${USUAL_TEASPOONS.least} to ${USUAL_TEASPOONS.most}`,
          },
        ]),
    ...leftRows(gas),
  ];
}

/** `, 2 g as written`: what the change for height did to the gas itself. */
function writtenPhrase({ least, most }: GasReport, formula: DishPlan['formula']): string {
  const share = gasShareOf(formula);
  return share === undefined ? '' : `, ${gramsSpan(least / share, most / share)} as written`;
}

/** Gas of these amounts over that of the amounts as written; undefined where nothing was changed. */
function gasShareOf({ lines, changes }: DishPlan['formula']): number | undefined {
  const written = lines.map((line) => {
    const was = changes.find(({ ingredient }) => ingredient === line.ingredient.name)?.was;
    return was === undefined ? line : { ...line, grams: was };
  });
  const [now, before] = [gasOf(lines).total, gasOf(written).total];
  return changes.length === 0 || !(0 < before) ? undefined : now / before;
}

const gramsSpan = (least: number, most: number) =>
  decimal(least, 1) === decimal(most, 1)
    ? `${decimal(least, 1)} g`
    : `${decimal(least, 1)} to ${decimal(most, 1)} g`;

/** Less than this of soda nobody tastes; ours. */
const WORTH_TELLING_GRAMS = 0.5;

function leftRows({ sodaLeft, acidLeft }: GasReport): readonly FactRow[] {
  if (WORTH_TELLING_GRAMS < sodaLeft) {
    return [
      {
        label: 'Soda left over',
        value: `about ${decimal(sodaLeft, 1)} g`,
        note: 'meets no acid: darker crust, in excess bitter and soapy; how sour the milk is, is a guess',
      },
    ];
  }
  if (acidLeft <= WORTH_TELLING_GRAMS) return [];
  return [
    {
      label: 'Sour left over',
      value: `could meet ${decimal(acidLeft, 1)} g of soda`,
      note: 'it tastes of it, and browns a little less',
    },
  ];
}

/** `17 % less, for equal gas`, and how far the tables stand from it. */
export function heightRows(
  height: HeightCompared,
  { formula }: Pick<DishPlan, 'formula'>,
  say: Say,
): readonly FactRow[] {
  const { spread, largestOverLaw } = height;
  const times =
    largestOverLaw === undefined || largestOverLaw < 1.25
      ? ''
      : `; the largest cuts ${decimal(largestOverLaw, 1)} times as much as equal gas`;
  return [
    {
      label: 'At this height',
      value: changePhrase(height, formula, say),
      note: `published tables say ${percentSpan(spread)} less${times}`,
    },
  ];
}

function changePhrase({ law }: HeightCompared, formula: DishPlan['formula'], say: Say): string {
  const [change] = formula.changes;
  if (change === undefined) {
    return law === 0
      ? 'no change: the air is thick enough'
      : 'as written: the recipe is from such a height';
  }
  const share = 1 - change.now / change.was;
  const gas = 1 - (gasShareOf(formula) ?? change.now / change.was);
  const less = `${say.percent(Math.abs(share))} ${share < 0 ? 'more' : 'less'} ${change.ingredient}`;
  if (Math.abs(share - gas) < SAME_SHARE) return `${less}, for equal gas`;
  return `${say.percent(gas)} less gas, for as much lift: ${less}, since what meets no acid goes first`;
}

const SAME_SHARE = 0.01;

/** Where the soda falls by more than its gas: that number too, with its meaning. */
function sodaLess(formula: DishPlan['formula'], say: Say): string {
  const [change] = formula.changes;
  const gas = gasShareOf(formula);
  if (change === undefined || gas === undefined) return '';
  const now = change.now / change.was;
  if (Math.abs(now - gas) < SAME_SHARE) return '';
  return `here ${say.percent(1 - now)} less ${change.ingredient}`;
}

/** Whole hundredths: no table is finer. */
function percentSpan([least, most]: readonly [number, number]): string {
  const [low, high] = [Math.round(100 * least), Math.round(100 * most)];
  return low === high ? `${high} %` : `${low} to ${high} %`;
}

/** The tables side by side, folded away. */
export function heightTable(
  { law, advice }: HeightCompared,
  { formula }: Pick<DishPlan, 'formula'>,
  say: Say,
): Block {
  const isYeast = advice.every(({ product }) => product === 'yeast bread');
  return {
    type: 'why',
    half: true,
    isScreenOnly: true,
    question: 'Why not more, why not less?',
    blocks: [
      {
        type: 'table',
        caption: 'Leavening left out at this height',
        head: ['', 'leavening less', 'also'],
        rows: [
          [
            'equal gas, which this plan keeps to (gas less)',
            say.percent(law),
            sodaLess(formula, say),
          ],
          ...advice.map((each) => [
            `${each.who}${each.isAboveTable ? ' (ends lower down)' : ''}`,
            percentSpan(each.leavening),
            alsoPhrase(each, say),
          ]),
        ],
        numeric: [false, true, false],
      },
      {
        type: 'paragraph',
        parts: [
          {
            text: isYeast ? YEAST_WORD : CAKE_WORD,
          },
        ],
      },
    ],
  };
}

const YEAST_WORD =
  'Thin air lets a dough double sooner: stop it at double, or give it one rise more for its taste. Flour is drier up there: add water by feel.';
const CAKE_WORD =
  'Cakes fall when their weak walls give way, so tables for cakes cut more. A bread, a biscuit and a pan bread hold: an extension service says of quick breads that they usually need no change or slightly less. Change one thing at a time: leavening, then sugar, then liquid.';

const ALSO = [
  ['liquid', 'more liquid'],
  ['flour', 'more flour'],
  ['sugar', 'less sugar'],
  ['fat', 'less fat'],
] as const;

function alsoPhrase(advice: HeightAdvice, say: Say): string {
  const changes = ALSO.flatMap(([what, words]) => {
    const span = advice[what];
    return span === undefined ? [] : [`${shareSpan(span, say)} ${words}`];
  });
  const hotter = advice.ovenHotter;
  const [least, most] = hotter ?? [];
  const oven =
    least === undefined || most === undefined
      ? []
      : [`oven ${degreesSpan(say.difference(least), say.difference(most))} hotter`];
  return [...changes, ...oven].join(', ');
}

const degreesSpan = (least: string, most: string) =>
  least === most ? most : `${least.replace(/[^\d.]+$/, '')} to ${most}`;

/** Tables print spoons for a cup; a metric reader has hundredths. */
function shareSpan([least, most]: readonly [number, number], say: Say): string {
  if (say.measures === 'metric') return percentSpan([least, most]);
  const [low, high] = [fraction(least * 16, 2), fraction(most * 16, 2)];
  return `${low === high ? high : `${low} to ${high}`} tbsp a cup`;
}
