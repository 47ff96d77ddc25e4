// What a cook wants of a formula, as rows of a small linear problem.
// Source: bakersPercent: every figure is a sum of ingredients over a sum of flours, so a wish for it
// is one linear equation in the grams.

import type { Grams, Ratio } from '../../quantity/unit.ts';
import { type FigureName, figureNames, figureShare } from '../bench/character.ts';
import { type DoughShare, shareOf, type WeighedIngredient } from '../dough.ts';

export interface FormulaTargets {
  /** Whole mass that goes into the oven. */
  readonly batch?: Grams;
  /** Shares of flour. */
  readonly figures?: Readonly<Partial<Record<FigureName, Ratio>>>;
  /** Lines that stay at this weight, by their place in the formula. */
  readonly held?: readonly HeldLine[];
}

export interface HeldLine {
  readonly line: number;
  readonly grams: Grams;
}

/** One wish: `batch`, a figure, or a line that is held. */
export type Wish =
  | { readonly kind: 'batch'; readonly wanted: number }
  | { readonly kind: 'figure'; readonly figure: FigureName; readonly wanted: number }
  | { readonly kind: 'held'; readonly line: number; readonly wanted: number };

export function wishesOf({ batch, figures = {}, held = [] }: FormulaTargets): readonly Wish[] {
  return [
    ...held.map((each): Wish => ({ kind: 'held', line: each.line, wanted: each.grams })),
    ...(batch === undefined ? [] : [{ kind: 'batch', wanted: batch } as const]),
    ...figureNames.flatMap((figure): readonly Wish[] => {
      const wanted = figures[figure];
      return wanted === undefined ? [] : [{ kind: 'figure', figure, wanted }];
    }),
  ];
}

/** `batch`, `hydration`, or the name of the food that is held. */
export function wishName(wish: Wish, lines: readonly WeighedIngredient[]): string {
  if (wish.kind === 'batch') return 'batch';
  if (wish.kind === 'figure') return wish.figure;
  return lines[wish.line]?.ingredient.name ?? 'held';
}

export interface Row {
  readonly factors: readonly number[];
  readonly right: number;
}

/** A wish as one equation in grams, scaled so that a miss of 1 is a miss of all of it. */
export function rowOf(wish: Wish, lines: readonly WeighedIngredient[], flour: number): Row {
  if (wish.kind === 'batch') {
    return { factors: lines.map(() => 1 / wish.wanted), right: 1 };
  }
  if (wish.kind === 'held') {
    const unit = Math.max(wish.wanted, LEAST_GRAMS);
    const factors = lines.map((_, at) => (at === wish.line ? 1 / unit : 0));
    return { factors, right: wish.wanted / unit };
  }
  const unit = flour * Math.max(wish.wanted, LEAST_SHARE);
  const factors = lines.map(
    (line) => (figureShare(line, wish.figure) - wish.wanted * flourShare(line)) / unit,
  );
  return { factors, right: 0 };
}

const LEAST_GRAMS = 1;
const LEAST_SHARE = 0.01;

export const flourShare = (line: WeighedIngredient): DoughShare['flour'] =>
  shareOf(line.ingredient).flour;

/** How far a wish was met: what came out, in the wish's own unit. */
export function achievedOf(wish: Wish, lines: readonly WeighedIngredient[]): number {
  if (wish.kind === 'held') return lines[wish.line]?.grams ?? 0;
  if (wish.kind === 'batch') return lines.reduce((sum, line) => sum + line.grams, 0);
  const flour = lines.reduce((sum, line) => sum + flourShare(line) * line.grams, 0);
  const amount = lines.reduce((sum, line) => sum + figureShare(line, wish.figure) * line.grams, 0);
  return 0 < flour ? amount / flour : 0;
}
