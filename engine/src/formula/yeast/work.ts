// How much work a rise needs: minutes at the usual speed, for baker's yeast and for sourdough.
// Baker's yeast hardly grows in a first rise (no growth in 2 h, yeastGrowth), so its speed goes with
// its amount. A starter's yeast grows all the while, so a tenth of it takes far less than ten times.

import table from '../../../data/fermentation.json' with { type: 'json' };
import { foodOf } from '../../menu/needs.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { flourIn, shareOf, type WeighedIngredient } from '../dough.ts';
import type { Leaven } from './rate.ts';

/** What raises a dough, and how much of it. */
export interface LeavenFound {
  readonly leaven: Leaven;
  /** Instant yeast over flour, or flour in the starter over all flour. */
  readonly share: number;
}

// Instant yeast of the same strength, from fresh 1, active dry 0.4, instant 0.33 (yeastKinds, grade B).
const INSTANT_FOR: Readonly<Record<string, number>> = {
  'active-dry-yeast': 0.825,
  'fresh-yeast': 0.33,
};

/** A ripe starter by its name. */
export const isStarter = ({ name, part }: Ingredient): boolean =>
  /\b(starter|levain)\b/i.test(name) && (part === 'yeast' || part === 'other' || part === 'flour');

/** Yeast wins over a starter: it is the quicker of the two. Undefined where there is neither. */
export function leavenIn(lines: readonly WeighedIngredient[]): LeavenFound | undefined {
  const flour = flourIn(lines);
  if (!(0 < flour)) return undefined;
  const yeast = sum(lines, ({ ingredient }) =>
    ingredient.part === 'yeast' && !isStarter(ingredient)
      ? (INSTANT_FOR[foodOf(ingredient)?.key ?? ''] ?? 1)
      : 0,
  );
  if (0 < yeast) return { leaven: 'yeast', share: yeast / flour };
  const starter = sum(lines, ({ ingredient }) =>
    isStarter(ingredient) ? shareOf(ingredient).flour : 0,
  );
  return 0 < starter ? { leaven: 'sourdough', share: starter / flour } : undefined;
}

const sum = (lines: readonly WeighedIngredient[], of: (line: WeighedIngredient) => number) =>
  lines.reduce((all, line) => all + line.grams * of(line), 0);

const YEAST_SHARES = { lowest: 0.001, highest: 0.04 };
const STARTER_SHARES = { lowest: 0.01, highest: 0.6 };
const { usualRise, starterGrowth } = table;

/**
 * Minutes that a first rise to double takes at the leaven's own standard speed: 80 °F for baker's
 * yeast, 28 °C for sourdough; thin air needs less gas.
 *
 * @param pressureRatio  local air pressure over that at sea level
 * @source usualYeastRise (grade D) and starterChart (grade B)
 */
export function workToDouble({ leaven, share }: LeavenFound, pressureRatio: number): number {
  if (leaven === 'yeast') {
    const held = clamp(share, YEAST_SHARES.lowest, YEAST_SHARES.highest);
    return usualRise.minutes * (usualRise.yeastShare / held) * pressureRatio;
  }
  const held = clamp(share, STARTER_SHARES.lowest, STARTER_SHARES.highest);
  return ripeWork(held, pressureRatio);
}

/**
 * Leaven that is just done with so much work: the same two laws, read the other way. Undefined where
 * no usual amount does it.
 */
export function shareForWork(leaven: Leaven, work: number, pressureRatio: number) {
  const { gasForRipe, ratePerHourAtBest } = starterGrowth;
  const share =
    leaven === 'yeast'
      ? (usualRise.minutes * usualRise.yeastShare * pressureRatio) / work
      : (gasForRipe * pressureRatio) / Math.expm1((work / 60) * ratePerHourAtBest);
  return isUsualShare({ leaven, share }) ? share : undefined;
}

/** ln(1 + gas / share) over the growth rate: gas made by cells that grow exponentially. */
export function ripeWork(share: number, pressureRatio = 1): number {
  const gas = starterGrowth.gasForRipe * pressureRatio;
  return (Math.log1p(gas / share) / starterGrowth.ratePerHourAtBest) * 60;
}

/** Is the amount one that the law is good for? */
export const isUsualShare = ({ leaven, share }: LeavenFound): boolean => {
  const { lowest, highest } = leaven === 'yeast' ? YEAST_SHARES : STARTER_SHARES;
  return lowest <= share && share <= highest;
};

const clamp = (value: number, lowest: number, highest: number) =>
  Math.min(highest, Math.max(lowest, value));
