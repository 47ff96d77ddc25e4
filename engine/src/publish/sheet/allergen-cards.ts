// Allergen cards for the serving line, to cut out and stand before each pot; behind them the plan of the crew
// that keeps dishes apart. People's names stand on the crew's page only.

import type { Allergen } from '../../camp/camp.ts';
import { allAllergens } from '../../larder/allergens.ts';
import type { DishPlan, MealPlan } from '../../meal.ts';
import { classesOfAllergen, type DishApart, separationPlan } from '../../safety/index.ts';
import type { Block, Part, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';
import { allergenWord, freeWord } from './free-from.ts';
import { sentenceCase } from './phrases.ts';
import { unfitBlocks } from './unfit.ts';

export function allergenCards(plan: MealPlan, say: Say): SheetDocument {
  const apart = separationPlan(plan);
  return {
    kind: 'allergen-cards',
    title: 'Allergen cards',
    camp: plan.camp.title,
    blocks: [
      paragraph(
        'Cut out, fold, one before each pot. By the recipe as written: another brand, another card. Who asks ' +
          'is answered by one who read the labels, never by a guess.',
      ),
      ...apart.map((dish) => lineCard(dish, say)),
      { type: 'page-break' },
      ...crewBlocks(plan, apart, say),
    ],
  };
}

function lineCard(dish: DishApart, say: Say): Block {
  const flag =
    dish.free.length === 0 ? {} : { flag: dish.free.map(freeWord).join(', ').toUpperCase() };
  return {
    type: 'card',
    title: say.dish(dish.dish),
    ...flag,
    blocks: [
      told('Contains', containsWord(dish), true),
      ...promiseBlocks(dish, say),
      ...(dish.labels.length === 0 ? [] : [told('Label not read', labelWords(dish.labels), true)]),
      ...(dish.free.length === 0
        ? [paragraph('Made on a shared table: traces of the other dishes can be in it.')]
        : [told('Kept free of', `${words(dish.free)}. Its spoon stays in this pot.`, false)]),
    ],
  };
}

const containsWord = ({ holds, labels }: DishApart) =>
  holds.length > 0
    ? words(holds)
    : labels.length > 0
      ? 'nothing for sure, but labels are open'
      : 'no allergen by its recipe';

/** A name can promise what nobody kept. */
function promiseBlocks({ dish, free }: DishApart, say: Say): readonly Block[] {
  const promised = [...say.dish(dish).matchAll(/\b([a-z]+)[- ]free\b/gi)].map(
    ([, what = '']) => what,
  );
  const kept = free.map(allergenWord);
  const unkept = promised.filter((what) => !kept.includes(what.toLowerCase()));
  if (unkept.length === 0) return [];
  const text = `its name says ${unkept.join(' and ')}-free, but it was not kept apart`;
  return [told('NOT CHECKED', text, true)];
}

const told = (label: string, text: string, strong: boolean): Block => {
  const parts: readonly Part[] = [{ text: `${label}: ` }, { text, strong }];
  return { type: 'paragraph', parts };
};

const words = (allergens: readonly Allergen[]) => allergens.map(allergenWord).join(', ');

/** Of a food that nobody knows everything is open: said in one word. */
function labelWords(labels: DishApart['labels']): string {
  return foodsToRead(labels)
    .map(({ food, what }) => `may hold ${what} (${food})`)
    .join('; ');
}

function foodsToRead(labels: DishApart['labels']) {
  const foods = [...new Set(labels.flatMap(({ ingredients }) => ingredients))];
  return foods.map((food) => {
    const open = labels.filter(({ ingredients }) => ingredients.includes(food));
    const isAll = open.length > allAllergens.length / 2;
    return { food, what: isAll ? 'anything' : words(open.map(({ allergen }) => allergen)) };
  });
}

function crewBlocks(plan: MealPlan, apart: readonly DishApart[], say: Say): readonly Block[] {
  return [
    { type: 'heading', text: 'For the crew: kept apart, in this order' },
    {
      type: 'table',
      caption:
        'Made and served from the top down. What is kept free shares nothing with what stands below it.',
      head: ['', 'dish', 'kept free of', 'oven', 'tools'],
      rows: apart.map((dish, index) => [
        String(index + 1),
        say.dish(dish.dish),
        dish.free.length === 0 ? '' : words(dish.free),
        ovenWord(plan, dish, say),
        toolWord(dish),
      ]),
      numeric: [],
    },
    { type: 'list', tick: true, items: rules(apart) },
    ...labelBlocks(apart, say),
    ...unfitBlocks(plan, say),
    ...lawBlocks(apart),
  ];
}

function ovenWord(plan: MealPlan, { dish, oven, isOvenMissing }: DishApart, say: Say): string {
  if (isOvenMissing) return 'NONE IS KEPT FOR IT: get one, or do not call it free';
  const used = plan.dishes.find((each) => each.dish.id === dish);
  const ovens = used === undefined ? [] : ovensOf(plan, used, say);
  const kept = oven === undefined ? [] : [`kept: ${named(oven)}`];
  return [...new Set(kept.length > 0 ? kept : ovens)].join(', ');
}

const ovensOf = (plan: MealPlan, { loads }: DishPlan, say: Say) =>
  loads.map(({ load }) => {
    const oven = plan.camp.ovens.find(({ id }) => id === load.oven);
    return oven === undefined ? say.ovenName(load.oven) : named(oven);
  });

const named = ({ name, mark }: { readonly name: string; readonly mark?: string }) =>
  mark === undefined ? name : `${name}, ${mark}`;

const toolWord = ({ free, oven }: DishApart) =>
  free.length === 0
    ? ''
    : `own bowl, spoon, cloth, lifter${oven?.mark === undefined ? '; tie a tag on them' : `, all tagged as the oven`}`;

function rules(apart: readonly DishApart[]): readonly string[] {
  const hasFree = apart.some(({ free }) => free.length > 0);
  return [
    'Soap and water take an allergen off hands, board and spoon; heat and sanitiser do not.',
    ...(hasFree
      ? [
          'Kept-free dishes first: weighed, mixed and served before flour is opened, upwind of it, on a wiped and covered place.',
          'Their oven meets nothing else, this year or last: seasoned iron can not be washed clean.',
          'Lids up one at a time; a kept-free lid never onto another stand.',
          'One person serves them, and answers for them: ________________',
        ]
      : []),
    'Labels kept until all have eaten.',
  ];
}

function labelBlocks(apart: readonly DishApart[], say: Say): readonly Block[] {
  const rows = apart.flatMap(({ dish, labels }) =>
    foodsToRead(labels).map(({ food, what }) => [
      sentenceCase(food),
      say.dish(dish),
      what,
      '________',
      '_______',
    ]),
  );
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Labels to read' },
    {
      type: 'table',
      caption: 'Until it is read, what may be in it counts as in it.',
      head: ['food', 'in', 'look for', 'found', 'read by'],
      rows,
      numeric: [],
    },
  ];
}

/** What a label calls it here and there, for those that this menu holds (falcpa-faster, eu-1169-2011). */
function lawBlocks(apart: readonly DishApart[]): readonly Block[] {
  const held = [...new Set(apart.flatMap(({ holds }) => holds))].sort();
  if (held.length === 0) return [];
  return [
    {
      type: 'why',
      question: 'What do labels call them?',
      blocks: [
        {
          type: 'table',
          caption: 'Nine must be named in the United States, fourteen in the European Union.',
          head: ['here', 'United States', 'European Union'],
          rows: held.map((each) => {
            const { us, eu } = classesOfAllergen(each);
            return [allergenWord(each), us ?? 'not among the nine: ask', eu];
          }),
          numeric: [],
        },
      ],
    },
  ];
}
