// From what the dishes need to what is carried to the till: peel counted, larder taken off, rounded
// up to packs, priced.

import type { StoreFood, Stores } from '../camp/stores.ts';
import {
  isRefusal,
  type Notice,
  notice,
  type OrRefusal,
  type Refusal,
  refusal,
} from '../notice/notice.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import { packsFor } from './packs.ts';
import type { ShoppingLine } from './provisions.ts';
import { storeKeyOf, withoutKeep } from './same-food.ts';

export interface Buying {
  readonly lines: readonly ShoppingLine[];
  readonly bill: Bill;
  readonly refusals: readonly Refusal[];
  readonly notices: readonly Notice[];
}

/** What the shopping weighs and costs. */
export interface Bill {
  readonly bought: Grams;
  /** Of all lines that have a price; in the camp's money. */
  readonly cost: number;
  readonly money: string;
  /** Lines to buy that have no price, so that the bill is larger than `cost`. */
  readonly unpriced: number;
}

/** Lines with what is bought of each. What the stores say wrongly is refused by name and left out. */
export function buyingFor(shopping: readonly ShoppingLine[], stores: Stores | undefined): Buying {
  const foods = stores?.foods ?? [];
  const byKey = new Map(foods.map((food) => [storeKeyOf(food.name), food]));
  const refusals: Refusal[] = [];
  const used = new Set<StoreFood>();
  const lines = shopping.map((line) => {
    const food = line.key === undefined ? undefined : byKey.get(withoutKeep(line.key));
    if (food !== undefined) used.add(food);
    const bought = boughtLine(line, food);
    if (!isRefusal(bought)) return bought;
    refusals.push(bought);
    return plainLine(line);
  });
  return {
    lines,
    bill: billOf(lines, stores?.money ?? ''),
    refusals,
    notices: foods.filter((food) => !used.has(food)).map(unusedNotice),
  };
}

const unusedNotice = ({ name }: StoreFood) =>
  notice('PROVISIONS_STORE_UNUSED', 'note', { ingredient: name }, { name });

function boughtLine(line: ShoppingLine, food: StoreFood | undefined): OrRefusal<ShoppingLine> {
  if (food === undefined) return plainLine(line);
  const asBought = asBoughtBy(food, line);
  if (isRefusal(asBought)) return asBought;
  const needed = asBought ?? line.grams;
  const have = grams(Math.min(needed, Math.max(0, food.have ?? 0)));
  const missing = grams(needed - have);
  const purchase = packsFor(food.name, missing, food.packs);
  if (isRefusal(purchase)) return purchase;
  const { asBought: _table, ...plain } = line;
  return {
    ...plain,
    ...(asBought === undefined ? {} : { asBought }),
    ...(food.shop === undefined ? {} : { shop: food.shop }),
    ...(have === 0 ? {} : { have }),
    toBuy: missing,
    ...(purchase.packs.length === 0 ? {} : { packs: purchase.packs }),
    bought: purchase.bought,
    ...(purchase.cost === undefined ? {} : { cost: purchase.cost }),
  };
}

function plainLine(line: ShoppingLine): ShoppingLine {
  const needed = line.asBought ?? line.grams;
  return { ...line, toBuy: needed, bought: needed };
}

/**
 * As purchased from the edible portion, by the cook's own yield; the table's where none is said.
 *
 * @refuses PROVISIONS_YIELD_OVER_ONE — more would be left than was bought
 * @source  afrs-a6: as purchased = edible portion x factor, the factor one over the yield
 */
function asBoughtBy(food: StoreFood, line: ShoppingLine): OrRefusal<Grams | undefined> {
  const { usable, name } = food;
  if (usable === undefined) return line.asBought;
  if (0 < usable && usable <= 1) return grams(line.grams / usable); // afrs-a6
  const values = { name, foundRatio: usable };
  return refusal(
    'PROVISIONS_YIELD_OVER_ONE',
    [`stores.foods.${name}.usable`],
    { ingredient: name },
    values,
  );
}

function billOf(lines: readonly ShoppingLine[], money: string): Bill {
  const toBuy = lines.filter(({ bought = 0, unweighed }) => 0 < bought || unweighed !== undefined);
  return {
    bought: grams(toBuy.reduce((sum, { bought = 0 }) => sum + bought, 0)),
    cost: toBuy.reduce((sum, { cost = 0 }) => sum + cost, 0),
    money,
    unpriced: toBuy.filter(({ cost }) => cost === undefined).length,
  };
}
