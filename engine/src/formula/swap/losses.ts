// What a swap can't keep, each with its source; and where the kitchen's own rule says otherwise.

import { foodOf } from '../../menu/needs.ts';
import { type Notice, notice } from '../../notice/notice.ts';
import type { WeighedIngredient } from '../dough.ts';
import { gasOf } from './gas.ts';
import type { SwapFamily } from './offers.ts';

interface Made {
  readonly family: SwapFamily;
  readonly to: string;
}

export function lossesOf(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
  { family, to }: Made,
): readonly Notice[] {
  return [
    ...fatLosses(before, after, family),
    ...milkLosses(before, after),
    ...sourness(before, after),
    ...sodaGone(before, after),
    ...drySweet(to),
    ...otherLosses(before, after, { family, to }),
    ...kitchenRule(family, to),
  ];
}

const SOLID_FAT = /^(lard|shortening|butter|margarine)/;

function fatLosses(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
  family: SwapFamily,
): readonly Notice[] {
  if (family !== 'fat') return [];
  const lost = [before, after].map((lines) => lines.some((line) => SOLID_FAT.test(keyOf(line))));
  const isButter = (lines: readonly WeighedIngredient[]) => has(lines, /^butter-/);
  return [
    ...(lost[0] && !lost[1] ? [say('FORMULA_SWAP_OIL_FOR_SOLID', 'solidFats')] : []),
    ...(isButter(before) === isButter(after) ? [say('FORMULA_SWAP_TASTE', 'solidFats')] : []),
    ...(isButter(before) && !isButter(after) ? [say('FORMULA_SWAP_BUTTER_OUT', 'solidFats')] : []),
    ...(!isButter(before) && isButter(after) ? [say('FORMULA_SWAP_BUTTER_IN', 'solidFats')] : []),
  ];
}

function milkLosses(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
): readonly Notice[] {
  const [was, now] = [milkSolids(before), milkSolids(after)];
  if (Math.abs(now - was) < LEAST_SOLIDS) return [];
  const values = { wasGrams: was, nowGrams: now, source: 'milkInBread' };
  return now < was
    ? [notice('FORMULA_SWAP_MILK_SOLIDS_LESS', 'note', {}, values)]
    : [notice('FORMULA_SWAP_MILK_SOLIDS_MORE', 'note', {}, values)];
}

const LEAST_SOLIDS = 2; // g of protein and milk sugar; less is not tasted (no source)

/** Protein and sugar of milk and what is made of it, sr28. */
const milkSolids = (lines: readonly WeighedIngredient[]) =>
  lines.reduce((sum, line) => {
    const food = foodOf(line.ingredient);
    if (food === undefined || !/milk/.test(food.key)) return sum;
    return sum + (food.protein + food.sugar) * line.grams;
  }, 0);

/** More acid than soda takes leaves it sour; more soda than acid leaves it soapy and yellow. */
function sourness(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
): readonly Notice[] {
  const [was, now] = [gasOf(before), gasOf(after)];
  const values = { massGrams: Math.abs(now.acidLeft - was.acidLeft), source: 'neutralisingValues' };
  if (0.3 < now.acidLeft - was.acidLeft) return [notice('FORMULA_SWAP_SOUR', 'note', {}, values)];
  if (0.3 < was.acidLeft - now.acidLeft) {
    return [notice('FORMULA_SWAP_LESS_SOUR', 'note', {}, values)];
  }
  return [];
}

const LEAST_SODA = 0.3; // g, as for acid: less is not tasted (no source)

/** Acid went, and the soda that was there for it: powder makes its gas. */
function sodaGone(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
): readonly Notice[] {
  const [was, now] = [gasOf(before), gasOf(after)];
  const [soda, left] = [was.sodaMet + was.sodaLeft, now.sodaMet + now.sodaLeft];
  if (now.powder <= was.powder || soda - left < LEAST_SODA) return [];
  const values = { sodaGrams: soda - left, powderGrams: now.powder - was.powder };
  return [notice('FORMULA_SWAP_SODA_TO_POWDER', 'note', {}, { ...values, source: 'legalPowder' })];
}

/** What is sold as dry buttermilk may be churned from sweet cream: hardly sour. */
const drySweet = (to: string): readonly Notice[] =>
  to === 'buttermilk-dried'
    ? [notice('FORMULA_SWAP_DRY_BUTTERMILK', 'doubt', {}, { source: 'dryButtermilkGrades' })]
    : [];

const SYRUP = /^(honey|molasses|maple-syrup)/;

function otherLosses(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
  { family, to }: Made,
): readonly Notice[] {
  if (family === 'sweet') {
    return [before, after].some((lines) => has(lines, SYRUP))
      ? [say('FORMULA_SWAP_SYRUP', 'kitchenSwaps')]
      : [say('FORMULA_SWAP_TASTE', 'kitchenSwaps')];
  }
  if (to === 'soda-and-vinegar' || to === 'soda-and-cream-of-tartar') {
    return [say('FORMULA_SWAP_WORKS_AT_ONCE', 'neutralisingValues')];
  }
  return family === 'yeast' ? [say('FORMULA_SWAP_YEAST_PACE', 'yeastKinds')] : [];
}

/** Rules that go round kitchens and differ from what we reckon: both are told. */
function kitchenRule(family: SwapFamily, to: string): readonly Notice[] {
  const rule = RULES.find((each) => each.family === family && each.to.test(to))?.rule;
  if (rule === undefined) return [];
  return [notice('FORMULA_SWAP_KITCHEN_RULE', 'doubt', {}, { rule, source: 'kitchenSwaps' })];
}

const RULES: readonly {
  readonly family: SwapFamily;
  readonly to: RegExp;
  readonly rule: string;
}[] = [
  { family: 'leavening', to: /cream-of-tartar/, rule: 'tartar' },
  { family: 'leavening', to: /buttermilk/, rule: 'buttermilk' },
  { family: 'milk', to: /^buttermilk/, rule: 'buttermilk' },
  { family: 'milk', to: /^dry-milk/, rule: 'dry-milk' },
  { family: 'milk', to: /^milk-evaporated/, rule: 'evaporated' },
  { family: 'sweet', to: /^honey/, rule: 'honey' },
  { family: 'flour', to: /./, rule: 'self-rising' },
  { family: 'egg', to: /dried/, rule: 'dried-egg' },
];

const say = (code: string, source: string) => notice(code, 'note', {}, { source });
const keyOf = (line: WeighedIngredient) => foodOf(line.ingredient)?.key ?? '';
const has = (lines: readonly WeighedIngredient[], key: RegExp) =>
  lines.some((line) => key.test(keyOf(line)));
