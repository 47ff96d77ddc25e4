// Rounded up to packs: how many of which, so that nothing is missing and little is left over.

import type { Pack } from '../camp/stores.ts';
import { type OrRefusal, refusal } from '../notice/notice.ts';
import { type Grams, grams } from '../quantity/unit.ts';

export interface PackCount extends Pack {
  readonly count: number;
}

export interface Purchase {
  /** Largest first; none where nothing is missing. */
  readonly packs: readonly PackCount[];
  readonly bought: Grams;
  /** Undefined where a pack of it has no price. */
  readonly cost?: number;
}

const DUST = 1e-9; // of a pack: binary arithmetic must not buy one more

/**
 * Packs for so much of a food: as many as go of one size, the rest in one of any size.
 *
 * Of all such ways the cheapest, where every pack has a price; else the one with the least left over,
 * then the fewest packs.
 *
 * @param name   the food, for the refusal
 * @param need   what is missing                     [g]
 * @param packs  sizes that it is sold in; none where it is weighed out
 * @refuses PROVISIONS_PACK_ZERO — a pack of nothing or of less, or no number
 */
export function packsFor(name: string, need: Grams, packs: readonly Pack[]): OrRefusal<Purchase> {
  const empty = packs.find(({ size }) => !(0 < size && size < Number.POSITIVE_INFINITY));
  if (empty !== undefined) {
    const values = { name, foundGrams: empty.size };
    return refusal(
      'PROVISIONS_PACK_ZERO',
      [`stores.foods.${name}.packs`],
      { ingredient: name },
      values,
    );
  }
  if (!(0 < need)) return { packs: [], bought: grams(0), cost: 0 };
  if (packs.length === 0) return { packs: [], bought: need };
  const ways = packs.flatMap((bulk) => packs.map((rest) => purchaseOf(need, bulk, rest)));
  const arePriced = packs.every(({ price }) => price !== undefined);
  return ways.reduce((best, each) => (isBetter(each, best, arePriced) ? each : best));
}

function purchaseOf(need: number, bulk: Pack, rest: Pack): Purchase {
  const isOne = bulk === rest;
  const many = isOne ? upTo(need / bulk.size) : Math.floor(need / bulk.size + DUST);
  const missing = Math.max(0, need - many * bulk.size);
  const few = isOne ? 0 : upTo(missing / rest.size);
  const packs = [
    { ...bulk, count: many },
    { ...rest, count: few },
  ]
    .filter(({ count }) => 0 < count)
    .toSorted((one, other) => other.size - one.size);
  const bought = packs.reduce((sum, { count, size }) => sum + count * size, 0);
  const cost = packs.reduce((sum, { count, price }) => sum + count * (price ?? Number.NaN), 0);
  return { packs, bought: grams(bought), ...(Number.isFinite(cost) ? { cost } : {}) };
}

const upTo = (packs: number) => Math.ceil(packs - DUST);

function isBetter(one: Purchase, other: Purchase, arePriced: boolean): boolean {
  const cheaper = arePriced ? (one.cost ?? 0) - (other.cost ?? 0) : 0;
  if (Math.abs(cheaper) > DUST) return cheaper < 0;
  const more = one.bought - other.bought;
  return Math.abs(more) > DUST ? more < 0 : countOf(one) < countOf(other);
}

const countOf = ({ packs }: Purchase) => packs.reduce((sum, { count }) => sum + count, 0);
