// Who eats, how much of each dish is a portion, with what it is served, and what published tables
// count on.

import type { DishPlan, MealPlan } from '../../meal.ts';
import { latecomersIn } from '../../menu/index.ts';
import { type AppetiteRow, appetiteRows } from '../../menu/mouths/appetites.ts';
import { cookYieldOf, rawByGuide } from '../../menu/mouths/cooked.ts';
import { publishedBeside } from '../../menu/mouths/published.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { portionWord, servedWord } from './portion-words.ts';

export function mouthsSheet(plan: MealPlan, say: Say): SheetDocument {
  return {
    kind: 'mouths',
    title: 'Mouths and portions',
    camp: plan.camp.title,
    blocks: [
      ...mouthBlocks(plan, say),
      dishTable(plan, say),
      ...publishedBlocks(plan, say),
      ...meatBlocks(plan, say),
    ],
  };
}

const APPETITE: Readonly<Record<AppetiteRow['appetite'], string>> = {
  child: 'Children',
  ordinary: 'Ordinary',
  'hard-work': 'After hard work',
  'over-65': 'Over 65',
};

function mouthBlocks({ camp: { mouths } }: MealPlan, say: Say): readonly Block[] {
  const late = latecomersIn(mouths);
  return [
    {
      type: 'facts',
      rows: [
        ...appetiteRows(mouths).map(({ appetite, mouths: many, factor }) => ({
          label: APPETITE[appetite],
          value: say.count(many),
          note: `${say.percent(factor)} of a portion each`,
        })),
        ...(late === undefined
          ? []
          : [
              {
                label: 'Of these late',
                value: say.count(late.mouths),
                note: `by ${say.minutes(late.minutes)}: their portions are kept back`,
              },
            ]),
      ],
    },
  ];
}

function dishTable({ dishes }: MealPlan, say: Say): Block {
  return {
    type: 'table',
    caption: 'A portion is what one ordinary appetite eats of it',
    head: ['', 'eat it', 'portions', 'held back', 'for the late', 'one portion', 'serve by'],
    numeric: [false, true, true, true, true, false, false],
    rows: dishes.map((dish) => {
      const { eaters, portions, reserve, late = 0 } = dish.portions;
      return [
        dish.dish.name,
        say.count(eaters),
        say.count(portions),
        reserve === 0 ? '' : say.count(reserve),
        late === 0 ? '' : say.count(late),
        portionWord(dish, say),
        servedWord(dish, say),
      ];
    }),
  };
}

function publishedBlocks({ dishes }: MealPlan, say: Say): readonly Block[] {
  const rows = dishes.flatMap(({ dish, recipe }) =>
    publishedBeside(recipe).map(({ portion, gramsEach, ours }) => [
      dish.name,
      portion,
      say.mass(gramsEach),
      say.mass(ours),
    ]),
  );
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Beside published tables' },
    {
      type: 'table',
      caption: 'Raw or dry, in one portion; service, school and state cards',
      head: ['', 'they count', 'theirs', 'yours'],
      numeric: [false, false, true, true],
      rows,
    },
  ];
}

/** Meat shrinks: what is on the plate, and what a buying guide would have bought for the same plates. */
function meatBlocks({ dishes }: MealPlan, say: Say): readonly Block[] {
  const rows = dishes.flatMap((dish) =>
    dish.formula.lines.flatMap(({ ingredient, grams: raw }) => {
      const isMeat = ingredient.part === 'meat' || ingredient.part === 'poultry';
      const left = isMeat && raw > 0 ? cookYieldOf(ingredient.name) : undefined;
      return left === undefined ? [] : [meatRow(dish, ingredient.name, raw, left, say)];
    }),
  );
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Meat, raw and cooked' },
    {
      type: 'table',
      caption: 'The buying guide rounds up for each hundred servings, so it buys a little more',
      head: ['', 'raw', 'left of it', 'on one plate', 'the guide buys', ''],
      numeric: [false, true, true, true, true, false],
      rows,
    },
  ];
}

function meatRow(
  { portions: { portions } }: DishPlan,
  name: string,
  raw: Grams,
  { factor, grade }: { readonly factor: number; readonly grade: string },
  say: Say,
): readonly string[] {
  const each = grams((raw * factor) / Math.max(1, portions));
  const guide = rawByGuide({ servings: Math.max(1, portions), cookedEach: each, factor });
  return [
    name,
    say.mass(raw),
    say.percent(factor),
    say.mass(each),
    say.mass(guide),
    grade === 'D' ? 'yield from memory' : '',
  ];
}
