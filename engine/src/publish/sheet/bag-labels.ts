// A label for every dry mix that is weighed at home: what is in it, what is added at camp.

import type { MeasuredIngredient } from '../../formula/index.ts';
import { type FoodPart, foodNamed } from '../../larder/index.ts';
import type { MealPlan } from '../../meal.ts';
import type { Bag, TinForDish } from '../../provisions/provisions.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { allergenWord, freeWord } from './free-from.ts';
import { listed, measureWord, sentenceCase } from './phrases.ts';

export function bagLabels(plan: MealPlan, say: Say): SheetDocument {
  const { bags, tins } = plan.provisions;
  return {
    kind: 'bag-labels',
    title: 'Bag labels',
    camp: plan.camp.title,
    blocks:
      bags.length === 0
        ? [
            {
              type: 'paragraph',
              parts: [{ text: 'Nothing in this meal is weighed into bags at home.' }],
            },
          ]
        : [
            ...homeBlocks(bags, say),
            ...bags.map((bag) => label(bag, say)),
            ...(tins ?? []).map((each) => tinLabel(each, say)),
          ],
  };
}

function label(bag: Bag, say: Say): Block {
  const free = bag.freeFrom.map(freeWord).join(', ').toUpperCase();
  return {
    type: 'card',
    title: `${say.dish(bag.dish)} · ${say.mass(bag.total)}`,
    ...(free === '' ? {} : { flag: free }),
    blocks: [
      {
        type: 'paragraph',
        parts: [
          { text: 'Add at camp: ', strong: true },
          {
            text:
              bag.add.length === 0 ? 'nothing' : bag.add.map((each) => amountOf(each)).join(', '),
          },
        ],
      },
      ...(bag.fromTin === undefined
        ? []
        : [
            {
              type: 'paragraph',
              parts: [
                { text: 'From the dry tin: ', strong: true },
                { text: `${bag.fromTin.map(amountOf).join(', ')}.` },
              ],
            } as const,
          ]),
      {
        type: 'paragraph',
        parts: [
          { text: 'In it: ', strong: true },
          { text: `${bag.contents.map(amountOf).join(', ')}.` },
          ...(bag.scoop === undefined ? [] : [{ text: ` ${scoopPhrase(bag.scoop)}` }]),
        ],
      },
      {
        type: 'paragraph',
        parts: [
          {
            text:
              bag.contains.length === 0
                ? 'No allergen known in it.'
                : `Contains ${listed(bag.contains.map(allergenWord))}.`,
            strong: true,
          },
          { text: keepsPhrase(bag.keeps) },
          { text: ` Packed on __________ by __________, use by __________. Bag ${bag.id}.` },
          ...(hasFlour(bag) ? [{ text: ` ${RAW_FLOUR}`, strong: true }] : []),
        ],
      },
    ],
  };
}

const hasFlour = ({ contents }: Bag) =>
  hasPart(
    contents.map(({ name }) => name),
    ['flour', 'meal'],
  );

/** What is done at the kitchen table, once for all bags. */
function homeBlocks(bags: readonly Bag[], say: Say): readonly Block[] {
  const mass = bags.reduce((sum, bag) => sum + bag.total, 0);
  const contents = bags.flatMap((bag) => bag.contents.map(({ name }) => name));
  const packets = bags.filter(({ fromTin }) => fromTin !== undefined).length;
  const keeps = bags
    .flatMap((bag) => (bag.keeps === undefined ? [] : [bag.keeps]))
    .toSorted((one, other) => one.carriedDays - other.carriedDays)[0];
  const dishes = new Set(bags.map(({ dish }) => dish)).size;
  const asked = { bags: bags.length, dishes, mass, contents, keeps };
  const tin = `Powder, soda and yeast: ${packets} ${packets === 1 ? 'packet' : 'packets'} in one dry tin, each weighed and labelled; test the powder by its fizz first.`;
  const items = [...homeSteps(asked, say), ...(packets === 0 ? [] : [tin])];
  return [{ type: 'list', tick: true, items }];
}

interface AtHome {
  readonly bags: number;
  readonly dishes: number;
  readonly mass: number;
  /** Names of all that goes into them. */
  readonly contents: readonly string[];
  /** The first of them to spoil. */
  readonly keeps: Bag['keeps'];
}

/** What is done at home with bags that hold these. */
export function homeSteps(
  { bags, dishes, mass, contents, keeps }: AtHome,
  say: Say,
): readonly string[] {
  const has = (...parts: readonly FoodPart[]) => hasPart(contents, parts);
  const each = bags === 1 ? 'Weigh it' : 'Weigh each bag';
  const many = bags === 1 ? '' : `${bags} of them, `;
  const soon = dishes === 1 ? 'Not before' : 'What spoils first (see each label) not before';
  return [
    `${each} on a scale, not by the cup: ${many}${say.mass(mass)} to carry.`,
    ...(keeps !== undefined && keeps.carriedDays <= SOON_DAYS
      ? [`${soon} the last ${keeps.carriedDays} days, if it is carried warm: ${keeps.because}.`]
      : []),
    has('powder', 'soda')
      ? 'Leavening last, sieved in; shake the closed bag until no lump is left.'
      : 'Shake the closed bag until it is even.',
    ...(has('yeast') ? ['Yeast last, and never into a damp bag; better still in its packet.'] : []),
    'Press the air out, close, put it into a second bag, label between the two.',
    `Keep it dry, cool and dark${has('powder') ? '; test the powder by its fizz before you weigh it' : ''}.`,
    ...(has('flour', 'meal') ? [RAW_FLOUR] : []),
  ];
}

const SOON_DAYS = 7;

/** As safety/ has it for a dish; a bag goes through other hands than the cook's. */
export const RAW_FLOUR = 'Flour is raw: no tasting before it is baked, and wash hands and table.';

export const hasPart = (names: readonly string[], parts: readonly FoodPart[]): boolean =>
  names.some((name) => parts.includes(foodNamed(name)?.part ?? 'other'));

/** `Keeps 1 month in a pack: damp creeps into the powder.` */
export const keepsPhrase = (keeps: Bag['keeps']) =>
  keeps === undefined
    ? ''
    : ` Keeps ${daysWord(keeps.carriedDays)} in a pack, ${daysWord(keeps.homeDays)} sealed and cool: ${keeps.because}.`;

const daysWord = (days: number) =>
  days < 28 ? `${days} days` : `${Math.round(days / 30)} month${days < 45 ? '' : 's'}`;

/** `A level cup weighs about 138 g (124 to 159)`. */
export const scoopPhrase = ({ cup, cupLeast, cupMost }: NonNullable<Bag['scoop']>) =>
  `A level cup of it weighs about ${Math.round(cup)} g (${Math.round(cupLeast)} to ${Math.round(cupMost)}): weigh one at home and write it here ______ g.`;

/** One tin: what a spoon of it makes, and how many bakes it holds. */
function tinLabel({ dish, tin }: TinForDish, say: Say): Block {
  return {
    type: 'card',
    title: `Tin for ${say.dish(dish)}, without flour`,
    blocks: [
      {
        type: 'paragraph',
        parts: [
          { text: `For one bake ${tinDose(tin)}.`, strong: true },
          {
            text: ` Add: ${tin.add.map(lineWord).join(', ')}.`,
          },
        ],
      },
      {
        type: 'paragraph',
        parts: [
          { text: 'In it for each bake: ', strong: true },
          {
            text: tin.contents.map(lineWord).join(', '),
          },
        ],
      },
      {
        type: 'paragraph',
        parts: [
          {
            text: `A tin of ${say.volume(tin.tin)} holds ${tin.bakes} bakes, ${say.mass(tin.mass)}. Shake it before each use.${keepsPhrase(tin.keeps)}`,
          },
        ],
      },
    ],
  };
}

/** `For one bake 37 g, or 3 tbsp level (off by up to 15 %)`. */
export function tinDose({ gramsEach, scoop }: TinForDish['tin']): string {
  const spoon =
    scoop?.measure === undefined
      ? ''
      : `, or ${measureWord(scoop.measure)} level (off by up to ${Math.round(100 * scoop.doubt)} %)`;
  return `${Math.round(gramsEach)} g${spoon}`;
}

/** `Water 312 g (1 1/3 cups)`. */
export const lineWord = ({ ingredient, grams, measure }: MeasuredIngredient) =>
  amountOf({ name: ingredient.name, grams, ...(measure === undefined ? {} : { measure }) });

function amountOf({ name, grams, measure }: Bag['contents'][number]): string {
  if (grams === 0) return `${sentenceCase(name)}: weight not known`;
  const weight = grams < 9.95 ? `${Math.round(grams * 10) / 10} g` : `${Math.round(grams)} g`;
  const measured = measure === undefined ? '' : ` (${measureWord(measure)})`;
  return `${sentenceCase(name)} ${weight}${measured}`;
}
