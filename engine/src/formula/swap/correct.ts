// After a swap: water, fat and salt are brought back to what they were, as far as the bowl allows.
// Source: sr28 for what is in each food. Weakness: what a kitchen scale can't show is left.

import { carrierOf } from '../bench/balance.ts';
import { type FigureName, figureShare } from '../bench/character.ts';
import { lineOf, withGrams } from '../bench/line.ts';
import type { WeighedIngredient } from '../dough.ts';

export const keptFigures = ['fat', 'salt', 'hydration'] as const satisfies readonly FigureName[];
export type KeptFigure = (typeof keptFigures)[number];
export type KeptAmounts = Readonly<Record<KeptFigure, number>>;

/** Grams of water, fat and salt in all lines. */
export const keptAmounts = (lines: readonly WeighedIngredient[]): KeptAmounts => ({
  fat: amountOf(lines, 'fat'),
  salt: amountOf(lines, 'salt'),
  hydration: amountOf(lines, 'hydration'),
});

const amountOf = (lines: readonly WeighedIngredient[], figure: FigureName) =>
  lines.reduce((sum, line) => sum + figureShare(line, figure) * line.grams, 0);

/** Less than a kitchen scale or the smallest spoon shows; of much water, three in a thousand. Ours. */
const UNSEEN: KeptAmounts = { fat: 0.5, salt: 0.1, hydration: 0.5 };
const UNSEEN_OF_WATER = 0.003;

const unseen = (figure: KeptFigure, wanted: number) =>
  Math.max(UNSEEN[figure], figure === 'hydration' ? UNSEEN_OF_WATER * wanted : 0);
const ROUNDS = 4;

export interface Corrected {
  readonly lines: readonly WeighedIngredient[];
  /** Too much (positive) or too little that nothing in the bowl could take up [g]. */
  readonly left: KeptAmounts;
}

/** Fat and salt by lines that are there; water too, and where there is none it is added. */
export function corrected(draft: readonly WeighedIngredient[], wanted: KeptAmounts): Corrected {
  let lines = draft;
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const figure of keptFigures) lines = correctedOnce(lines, figure, wanted[figure]);
  }
  const now = keptAmounts(lines);
  const left = Object.fromEntries(
    keptFigures.map((figure) => {
      const over = now[figure] - wanted[figure];
      return [figure, Math.abs(over) < unseen(figure, wanted[figure]) ? 0 : over];
    }),
  ) as unknown as KeptAmounts;
  return { lines: lines.filter(({ grams }) => 0 < grams), left };
}

function correctedOnce(
  lines: readonly WeighedIngredient[],
  figure: KeptFigure,
  wanted: number,
): readonly WeighedIngredient[] {
  const gap = wanted - amountOf(lines, figure);
  if (Math.abs(gap) < unseen(figure, wanted)) return lines;
  const carrier = carrierOf(lines, figure);
  const isThinned = figure === 'hydration' && 0 < gap && carrier?.ingredient.part !== 'water';
  if (isThinned) return [...lines, lineOf('water', gap)];
  if (carrier === undefined) return lines;
  const next = Math.max(0, carrier.grams + gap / figureShare(carrier, figure));
  return lines.map((line) => (line === carrier ? withGrams(line, next) : line));
}
