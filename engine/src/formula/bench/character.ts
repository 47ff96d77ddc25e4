// What a recipe is as a dough: its figures with their doubt, and how thick it is.
// Sources: bakersPercent. Weakness: figures take the larder's
// average food; a tin, a brand or a wet day differs.

import type { OrRefusal } from '../../notice/notice.ts';
import { type Grams, grams, type Ratio, ratio } from '../../quantity/unit.ts';
import {
  type DoughShare,
  flourIn,
  handlingFor,
  shareOf,
  type WeighedIngredient,
} from '../dough.ts';
import { doughTrouble } from '../dough-trouble.ts';
import type { Handling } from '../formula.ts';
import { asDryYeast } from '../swap/yeasts.ts';
import { doubtOf } from './doubt.ts';

/** Shares of flour and meal. Yeast is told as active dry yeast, so that kinds can be compared. */
export const figureNames = [
  'hydration',
  'fat',
  'salt',
  'sugar',
  'powder',
  'soda',
  'yeast',
] as const;
export type FigureName = (typeof figureNames)[number];

/** As weighed; and what it may be where cups and spoons were used instead of a scale. */
export interface DoughFigure {
  readonly share: Ratio;
  readonly low: Ratio;
  readonly high: Ratio;
}

export interface DoughCharacter {
  readonly flour: Grams;
  readonly batch: Grams;
  readonly figures: Readonly<Record<FigureName, DoughFigure>>;
  readonly handling: Handling;
  /** Where cups leave it open: what it may turn out as. */
  readonly mayBe: readonly Handling[];
}

/**
 * A recipe's figures as shares of its flour.
 *
 * @refuses  as doughTrouble
 */
export function characterOf(lines: readonly WeighedIngredient[]): OrRefusal<DoughCharacter> {
  const trouble = doughTrouble(lines);
  if (trouble !== undefined) return trouble;
  const flour = flourIn(lines);
  const figures = figuresOf(lines, flour);
  const { share, low, high } = figures.hydration;
  return {
    flour,
    batch: grams(lines.reduce((sum, line) => sum + line.grams, 0)),
    figures,
    handling: handlingFor(share),
    mayBe: [...new Set([handlingFor(low), handlingFor(high)])].filter(
      (each) => each !== handlingFor(share),
    ),
  };
}

/** What one gram adds to a figure. */
export function figureShare(line: WeighedIngredient, figure: FigureName): number {
  const share = shareOf(line.ingredient);
  if (figure === 'yeast') return share.yeast * asDryYeast(line.ingredient);
  return share[PART_OF_FIGURE[figure]];
}

const PART_OF_FIGURE: Readonly<Record<Exclude<FigureName, 'yeast'>, keyof DoughShare>> = {
  hydration: 'water',
  fat: 'fat',
  salt: 'salt',
  sugar: 'sugar',
  powder: 'powder',
  soda: 'soda',
};

function figuresOf(lines: readonly WeighedIngredient[], flour: number): DoughCharacter['figures'] {
  const flourDoubt = doubtIn(lines, (line) => shareOf(line.ingredient).flour, flour);
  const entries = figureNames.map((name): [FigureName, DoughFigure] => {
    const amount = lines.reduce((sum, line) => sum + figureShare(line, name) * line.grams, 0);
    const own = squaresIn(lines, (line) => figureShare(line, name), amount);
    // Errors of separate spoons are independent; flour is scooped by one hand, so its cups add up.
    const doubt = Math.hypot(own, flourDoubt); // root of the sum of squares
    const share = amount / flour;
    return [
      name,
      { share: ratio(share), low: ratio(share / (1 + doubt)), high: ratio(share * (1 + doubt)) },
    ];
  });
  return Object.fromEntries(entries) as DoughCharacter['figures'];
}

type ShareOfLine = (line: WeighedIngredient) => number;

function doubtIn(lines: readonly WeighedIngredient[], share: ShareOfLine, whole: number): number {
  const parts = lines.map((line) => share(line) * line.grams * doubtOf(line.ingredient));
  return parts.reduce((sum, part) => sum + part, 0) / whole;
}

function squaresIn(lines: readonly WeighedIngredient[], share: ShareOfLine, whole: number): number {
  if (!(0 < whole)) return 0;
  return Math.hypot(
    ...lines.map((line) => (share(line) * line.grams * doubtOf(line.ingredient)) / whole),
  );
}
