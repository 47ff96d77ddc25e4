// How much? Grams of dough, cups of flour, portions, or how thick it lies.

import {
  type Amount,
  foodOf,
  isUnread,
  type Recipe,
  readAmount,
  readLength,
  sizeOfUnit,
  type TonightAnswers,
} from '#engine';
import { wrongUse } from './exit.ts';

type TonightAmount = NonNullable<TonightAnswers['amount']>;

export function amountOf(text: string, recipe: Recipe): TonightAmount {
  const length = readLength(text);
  if (!isUnread(length)) return { thicknessMetres: (length.low + length.high) / 2 };
  const read = readAmount(text);
  if (isUnread(read)) throw unread(text);
  const amount = (read.low + read.high) / 2;
  const isFlour = /flour|meal/i.test(read.rest);
  const size = sizeOfUnit(read.unit);
  if (size.kind === 'count') return countAmount(text, read, amount);
  const grams = size.kind === 'mass' ? amount * size.each : flourGrams(text, read, amount, recipe);
  return isFlour || size.kind === 'volume' ? { flourGrams: grams } : { massGrams: grams };
}

function countAmount(text: string, read: Amount, amount: number): TonightAmount {
  if (read.rest !== '' && !/portions?|mouths?|people|pieces?|rolls?/i.test(read.rest))
    throw unread(text);
  return { portions: amount };
}

/** Cups are cups of the recipe's main flour. */
function flourGrams(text: string, read: Amount, amount: number, recipe: Recipe): number {
  const flour = recipe.ingredients
    .filter(({ part }) => part === 'flour' || part === 'meal')
    .reduce(
      (most, each) => (most === undefined || each.grams > most.grams ? each : most),
      undefined as Recipe['ingredients'][number] | undefined,
    );
  const cup = flour === undefined ? undefined : foodOf(flour)?.measures.cup;
  const cups: Readonly<Partial<Record<Amount['unit'], number>>> = {
    cup: 1,
    tbsp: 1 / 16,
    tsp: 1 / 48,
  };
  const share = cups[read.unit];
  if (cup === undefined || share === undefined) throw unread(text);
  return amount * share * cup;
}

const unread = (text: string) =>
  wrongUse(
    '--amount',
    `"${text}"`,
    'grams or pounds of dough, cups of flour, portions, or how thick it lies',
    'Write --amount "500 g", "2 cups", "8 portions" or "1 in".',
  );
