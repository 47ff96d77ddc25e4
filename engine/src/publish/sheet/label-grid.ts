// Labels for bags and for the packets of the dry tin, laid out for common label paper: ten of 2 x 4
// inches on Letter, eight of 99 x 67 mm on A4. The sizes close on their paper: five of 2 in and two
// margins of half an inch are 11 in, four of 67.7 mm and two of 13.1 mm are 297 mm. From memory: print
// one page on plain paper first and hold it against the labels.

import type { MealPlan } from '../../meal.ts';
import type { Bag, BagLine } from '../../provisions/provisions.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { dayAfter } from '../speak-date.ts';
import { allergenWord, freeWord } from './free-from.ts';
import { listed, measureWord, sentenceCase } from './phrases.ts';

/** Letters that a label holds under its title, at the size of the print style; tried on paper. */
export const LABEL_LETTERS = { letter: 470, a4: 640 } as const;

export type LabelPaper = keyof typeof LABEL_LETTERS;

export const paperFor = ({ measures }: Say): LabelPaper => (measures === 'us' ? 'letter' : 'a4');

export function labelGrid(plan: MealPlan, say: Say): SheetDocument {
  const paper = paperFor(say);
  const { bags } = plan.provisions;
  const packed = packedOn(plan);
  return {
    kind: `label-grid-${paper}`,
    title: 'Labels to stick on',
    camp: plan.camp.title,
    blocks: [
      ...(bags.length === 0
        ? [{ type: 'paragraph', parts: [{ text: 'No bags, no labels.' }] } as const]
        : []),
      ...bags.flatMap((bag): readonly Block[] => [
        bagLabel(bag, LABEL_LETTERS[paper], packed, say),
        ...(bag.fromTin === undefined ? [] : [packetLabel(bag, bag.fromTin, say)]),
      ]),
    ],
  };
}

/** A camp without a date has this one; nobody bakes then. */
const NO_DATE = '2000-01-01';
const DAY = 1440;

const packedOn = ({ camp }: MealPlan): string | undefined =>
  camp.date === NO_DATE
    ? undefined
    : dayAfter(camp.date, Math.floor((camp.stores?.packedAt ?? -1) / DAY));

function bagLabel(bag: Bag, letters: number, packed: string | undefined, say: Say): Block {
  const free = bag.freeFrom.map(freeWord).join(', ').toUpperCase();
  const lines = (isMeasured: boolean) => [
    `Add: ${bag.add.length === 0 ? 'nothing' : bag.add.map((line) => lineText(line, isMeasured)).join(', ')}.`,
    ...(bag.fromTin === undefined
      ? []
      : [`From the dry tin: ${bag.fromTin.map((line) => lineText(line, isMeasured)).join(', ')}.`]),
    `In it: ${bag.contents.map((line) => lineText(line, false)).join(', ')}.`,
    `${containsText(bag)} ${untilText(bag, packed)} Raw: no tasting. Bag ${bag.id}.`,
  ];
  const long = lines(true);
  const texts = long.join('').length <= letters ? long : lines(false);
  return {
    type: 'card',
    title: `${say.dish(bag.dish)} · ${say.mass(bag.total)}`,
    ...(free === '' ? {} : { flag: free }),
    blocks: texts.map((text, index) => ({
      type: 'paragraph',
      parts: [{ text, ...(index < 2 ? { strong: true } : {}) }],
    })),
  };
}

const containsText = ({ contains }: Bag) =>
  contains.length === 0 ? 'No allergen known.' : `Contains ${listed(contains.map(allergenWord))}.`;

/** By its weakest part, in a warm pack; at home it keeps longer. */
function untilText({ keeps }: Bag, packed: string | undefined): string {
  if (keeps === undefined) return 'Keep until ________.';
  if (packed === undefined) return `Keeps ${keeps.carriedDays} days in a pack: until ________.`;
  return `Keep until ${dayAfter(packed, keeps.carriedDays)} if weighed on ${packed}.`;
}

function packetLabel(bag: Bag, lines: readonly BagLine[], say: Say): Block {
  const free = bag.freeFrom.map(freeWord).join(', ').toUpperCase();
  return {
    type: 'card',
    title: `Dry tin: for ${say.dish(bag.dish)}`,
    ...(free === '' ? {} : { flag: free }),
    blocks: [
      {
        type: 'paragraph',
        parts: [{ text: `${lines.map((line) => lineText(line, true)).join(', ')}.`, strong: true }],
      },
      {
        type: 'paragraph',
        parts: [
          { text: `One closed packet for each, all into bag ${bag.id} at camp. Keep it dry.` },
        ],
      },
    ],
  };
}

function lineText({ name, grams, measure }: BagLine, isMeasured: boolean): string {
  if (grams === 0) return sentenceCase(name);
  const weight = grams < 9.95 ? `${Math.round(grams * 10) / 10} g` : `${Math.round(grams)} g`;
  return `${sentenceCase(name)} ${weight}${isMeasured && measure !== undefined ? ` (${measureWord(measure)})` : ''}`;
}
