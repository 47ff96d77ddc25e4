// A label for every dry mix that is weighed at home: what is in it, what is added at camp.

import type { MealPlan } from '../../meal.ts';
import type { Bag } from '../../provisions/provisions.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { allergenWord, freeWord } from './free-from.ts';
import { listed, measureWord, sentenceCase } from './phrases.ts';

export function bagLabels(plan: MealPlan, say: Say): SheetDocument {
  const { bags } = plan.provisions;
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
        : bags.map((bag) => label(bag, say)),
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
      {
        type: 'paragraph',
        parts: [{ text: 'In it: ', strong: true }, { text: bag.contents.map(amountOf).join(', ') }],
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
          { text: ` Packed on __________ by __________. Bag ${bag.id}.` },
        ],
      },
    ],
  };
}

function amountOf({ name, grams, measure }: Bag['contents'][number]): string {
  const weight = grams < 9.95 ? `${Math.round(grams * 10) / 10} g` : `${Math.round(grams)} g`;
  const measured = measure === undefined ? '' : ` (${measureWord(measure)})`;
  return `${sentenceCase(name)} ${weight}${measured}`;
}
