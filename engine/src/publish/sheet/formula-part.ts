// What goes in the bowl: grams, household measure, baker's percentage, and what was changed.

import type { FormulaPercentages, Handling } from '../../formula/formula.ts';
import type { DishPlan } from '../../meal.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { decimal, thousands } from '../speak-number.ts';
import { isBakedAtOnce } from './baked-at-once.ts';
import { deadPowder, insteadRows, isPowder, padded } from './dead-powder.ts';
import { measureWord } from './phrases.ts';

export function formulaBlocks(
  { formula, loads, portions, recipe, leavening }: DishPlan,
  say: Say,
): readonly Block[] {
  const isDough = formula.flour > 0;
  const isChanged = formula.changes.length > 0;
  const dead = deadPowder(leavening);
  const columns = 3 + Number(isDough) + Number(isChanged);
  const rows = formula.lines.map(({ ingredient, grams, measure, bakersPercent }) => {
    if (dead !== undefined && isPowder(ingredient)) {
      return padded([ingredient.name, 'leave out', 'dead'], columns);
    }
    const change = formula.changes.find((each) => each.ingredient === ingredient.name);
    return [
      ingredient.name,
      ingredient.isUnweighed ? 'not known' : weighed(grams),
      ingredient.isUnweighed ? asWrittenWord(ingredient) : measure ? measureWord(measure) : '',
      ...(isDough ? [bakersPercent === undefined ? '' : `${decimal(bakersPercent, 1)} %`] : []),
      ...(isChanged ? [change === undefined ? '' : `was ${weighed(change.was)}`] : []),
    ];
  });
  return [
    { type: 'heading', text: isDough ? 'Formula' : 'What goes in', half: true },
    {
      type: 'table',
      caption: `${say.count(portions.portions)} portions${portions.reserve > 0 ? `, ${say.count(portions.reserve)} of them held back` : ''}; the recipe makes ${say.count(recipe.portions)}. Whole batch ${say.mass(formula.batch)}.${feedsWord(loads, say)}`,
      head: [
        '',
        'weigh',
        'or measure',
        ...(isDough ? ["baker's %"] : []),
        ...(isChanged ? ['changed for height'] : []),
      ],
      rows: dead === undefined ? rows : [...rows, ...insteadRows(dead, columns)],
      numeric: [false, true, true, true, true],
    },
    ...characterBlocks({ formula, recipe }, say),
  ];
}

/** By its weight and portions, not by what is printed for a size of oven. */
function feedsWord(loads: DishPlan['loads'], say: Say): string {
  const [first] = loads;
  if (first === undefined || !(0 < first.load.portions)) return '';
  const { mass, portions, shape, volume } = first.load;
  const room = shape === 'pot' ? `, ${say.volume(volume / portions)}` : '';
  const feeds = Math.max(1, Math.floor(portions + 1e-9));
  return ` ${loads.length === 1 ? 'This oven' : 'The first oven'} feeds ${feeds}: ${say.mass(mass / portions)}${room} each.`;
}

/** Only what is written tells how much: for the recipe as it stands, not for this batch. */
const asWrittenWord = ({ asWritten }: Ingredient) => `recipe: ${asWritten}`;

/** The bowl stands on a scale, whatever the reader's other measures: grams. */
function weighed(grams: number): string {
  if (!Number.isFinite(grams)) return 'not known';
  return `${grams < 9.95 ? decimal(grams, 1) : thousands(grams)} g`;
}

/** How it feels, in the same words on every sheet. */
export const handlingWords: Readonly<Record<Handling, string>> = {
  stiff: 'a stiff dough',
  smooth: 'a soft, smooth dough',
  tacky: 'a soft, tacky dough',
  sticky: 'a sticky dough',
  'drop-batter': 'a batter that drops from the spoon',
  'pour-batter': 'a batter that pours',
};

function characterBlocks(
  { formula, recipe }: Pick<DishPlan, 'formula' | 'recipe'>,
  say: Say,
): readonly Block[] {
  const { percentages, handling, rise } = formula;
  const rows = [
    ...(percentages === undefined || percentages.hydration <= 0
      ? []
      : [{ label: 'For 100 of flour', value: sharesPhrase(percentages, say) }]),
    ...(handling === undefined ? [] : [{ label: 'Feels', value: handlingWords[handling] }]),
    ...(rise === undefined
      ? []
      : [
          {
            label: 'Rise where it stands',
            value: `${say.minutes(rise.first)}${secondWord(recipe, rise.second, say)}`,
            note: `${likelyWord(rise, say)}dough at ${say.degrees(rise.dough)}; judge by double`,
          },
        ]),
  ];
  return rows.length === 0 ? [] : [{ type: 'facts', rows }];
}

/** Nothing where the writer bakes it at once. */
const secondWord = (recipe: DishPlan['recipe'], second: number, say: Say) =>
  isBakedAtOnce(recipe) ? '' : `, then ${say.minutes(second)} shaped`;

const likelyWord = ({ least, most }: { least: number; most: number }, say: Say) =>
  least === most ? '' : `first rise likely ${say.minutes(least)} to ${say.minutes(most)}, `;

/** `62 % water, 18 % fat, 1.7 % salt`: what tells one dough from another. */
function sharesPhrase({ hydration, fat, salt }: FormulaPercentages, say: Say): string {
  return [
    `${say.percent(hydration)} water`,
    ...(fat < 0.005 ? [] : [`${say.percent(fat)} fat`]),
    ...(salt < 0.0005 ? [] : [`${say.percent(salt)} salt`]),
  ].join(', ');
}
