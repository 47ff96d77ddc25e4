// Does a formula lie where published ones of its kind lie, and what would bring it there?
// Sources: data/published-formulas.json; each range names the formulas that make its ends.

import { foodOf } from '../../menu/needs.ts';
import type { RecipeKind } from '../../menu/recipe.ts';
import type { Notice } from '../../notice/notice.ts';
import { type Grams, grams, type Ratio, ratio } from '../../quantity/unit.ts';
import { shareOf, type WeighedIngredient } from '../dough.ts';
import {
  type DoughCharacter,
  type DoughFigure,
  type FigureName,
  figureNames,
  figureShare,
} from './character.ts';
import { effectOf } from './effects.ts';
import { lineOf } from './line.ts';
import {
  type FormulaKind,
  formulaKindOf,
  type PublishedFormula,
  publishedFor,
} from './published.ts';

export interface Balance {
  /** Undefined where no published formula stands for this kind of food. */
  readonly kind?: FormulaKind;
  readonly figures: readonly BalancedFigure[];
  /** Beside its own kind: wetter than any published, drier than any, or between. */
  readonly feel?: 'slack' | 'right' | 'stiff';
}

export interface BalancedFigure {
  readonly figure: FigureName;
  readonly value: DoughFigure;
  readonly least: Ratio;
  readonly most: Ratio;
  /** 'unsure': weighed it is inside or out, measured by cups it may be the other. */
  readonly verdict: 'inside' | 'below' | 'above' | 'unsure';
  /** Every published formula that says something, its own span: where they disagree it shows. */
  readonly published: readonly PublishedSpan[];
  /** What would bring it to the nearer end: one line, or several where one is not enough. */
  readonly remedies: readonly Remedy[];
  /** What that does to the bread, by whoever says so; undefined where no source does. */
  readonly effect?: Notice;
}

export interface PublishedSpan {
  readonly name: string;
  readonly source: string;
  readonly grade: string;
  readonly least: Ratio;
  readonly most: Ratio;
}

export interface Remedy {
  readonly line: WeighedIngredient;
  readonly isNew: boolean;
  readonly was: Grams;
  readonly now: Grams;
}

/** Published figures are rounded so; and one formula alone is no span: near it is like it. Ours. */
const ROUNDING = { ofMany: 0.02, ofOne: 0.15 };

/** Every figure beside the span of published formulas of its kind. */
export function balanceOf(
  lines: readonly WeighedIngredient[],
  character: DoughCharacter,
  recipeKind: RecipeKind,
): Balance {
  const kind = formulaKindOf(recipeKind, character);
  if (kind === undefined) return { figures: [] };
  const formulas = publishedFor(kind);
  const figures = figureNames.flatMap((figure) => {
    const spans = spansOf(formulas, figure);
    // Soda in one biscuit of four is that one's way to rise, not a lack of the others.
    const isEverywhere = spans.length === formulas.length && spans.some(({ most }) => 0 < most);
    const isThere = 0 < character.figures[figure].share || isEverywhere;
    return spans.length === 0 || !isThere ? [] : [balanced(lines, character, figure, spans)];
  });
  return { kind, figures, feel: feelOf(figures) };
}

/** From the least to the most of a figure in published formulas of its kind; undefined where none says. */
export function publishedSpan(
  kind: FormulaKind,
  figure: FigureName,
): readonly [least: number, most: number] | undefined {
  const spans = spansOf(publishedFor(kind), figure);
  if (spans.length === 0) return undefined;
  return [Math.min(...spans.map(({ least }) => least)), Math.max(...spans.map(({ most }) => most))];
}

const spansOf = (formulas: readonly PublishedFormula[], figure: FigureName) =>
  formulas
    .filter(({ gives }) => gives.includes(figure))
    .map(({ name, source, grade, ends }): PublishedSpan => {
      const [one, other] = ends.map((end) => end.figures[figure].share) as [Ratio, Ratio];
      const least = ratio(Math.min(one, other));
      return { name, source, grade, least, most: ratio(Math.max(one, other)) };
    });

function balanced(
  lines: readonly WeighedIngredient[],
  character: DoughCharacter,
  figure: FigureName,
  published: readonly PublishedSpan[],
): BalancedFigure {
  const value = character.figures[figure];
  const least = ratio(Math.min(...published.map((span) => span.least)));
  const most = ratio(Math.max(...published.map((span) => span.most)));
  const verdict = verdictFor(value, { least, most, slack: slackOf(published) });
  const wanted = value.share < least ? least : value.share > most ? most : undefined;
  const isRight = wanted === undefined || verdict === 'inside';
  const effect = isRight ? undefined : effectOf(figure, value.share, wanted);
  return {
    figure,
    value,
    least,
    most,
    verdict,
    published,
    remedies: isRight ? [] : remediesFor(lines, figure, wanted),
    ...(effect === undefined ? {} : { effect }),
  };
}

const slackOf = ({ length }: readonly PublishedSpan[]) =>
  length === 1 ? ROUNDING.ofOne : ROUNDING.ofMany;

interface Range {
  readonly least: number;
  readonly most: number;
  readonly slack: number;
}

function verdictFor(
  { share, low, high }: DoughFigure,
  { least, most, slack }: Range,
): BalancedFigure['verdict'] {
  if (share < least * (1 - slack)) return high < least ? 'below' : 'unsure';
  if (most * (1 + slack) < share) return most < low ? 'above' : 'unsure';
  return 'inside';
}

function feelOf(figures: readonly BalancedFigure[]): NonNullable<Balance['feel']> {
  const water = figures.find(({ figure }) => figure === 'hydration');
  if (water === undefined) return 'right';
  const slack = slackOf(water.published);
  if (water.value.share < water.least * (1 - slack)) return 'stiff';
  return water.most * (1 + slack) < water.value.share ? 'slack' : 'right';
}

/**
 * The one line to change so that a figure reaches a share: N + s·d = T (F + f·d), for a line that
 * carries s of it and f of flour in a gram. Undefined where taking it all away is not enough.
 *
 * @source bakersPercent (derived)
 */
export function remedyFor(
  lines: readonly WeighedIngredient[],
  figure: FigureName,
  wanted: number,
): Remedy | undefined {
  const carrier = carrierOf(lines, figure);
  const line = carrier ?? lineOf(USUAL_CARRIER[figure], 0);
  const flour = lines.reduce((sum, each) => sum + shareOf(each.ingredient).flour * each.grams, 0);
  const amount = lines.reduce((sum, each) => sum + figureShare(each, figure) * each.grams, 0);
  const gain = figureShare(line, figure) - wanted * shareOf(line.ingredient).flour;
  if (!(0 < gain)) return undefined;
  const now = line.grams + (wanted * flour - amount) / gain;
  if (now < 0) return undefined;
  return { line, isNew: carrier === undefined, was: line.grams, now: grams(now) };
}

/**
 * Lines to change so that a figure reaches a share. Where leaving one out is not enough it goes, and
 * the next is changed: 2 tablespoons of lard beside a third of a cup of oil. At most every line once.
 */
export function remediesFor(
  lines: readonly WeighedIngredient[],
  figure: FigureName,
  wanted: number,
): readonly Remedy[] {
  const gone: Remedy[] = [];
  let rest = lines;
  while (gone.length < lines.length) {
    const last = remedyFor(rest, figure, wanted);
    if (last !== undefined) return [...gone, last];
    const carrier = carrierOf(rest, figure);
    if (carrier === undefined) return [];
    gone.push({ line: carrier, isNew: false, was: carrier.grams, now: grams(0) });
    rest = rest.filter((line) => line !== carrier);
  }
  return [];
}

/** What a cook would reach for where nothing in the bowl brings it. */
export const USUAL_CARRIER: Readonly<Record<FigureName, string>> = {
  hydration: 'water',
  fat: 'sunflower-oil',
  salt: 'salt',
  sugar: 'sugar',
  powder: 'baking-powder',
  soda: 'baking-soda',
  yeast: 'active-dry-yeast',
};

/** The line that brings most of a figure and little else; water before milk, never an egg. */
export function carrierOf(lines: readonly WeighedIngredient[], figure: FigureName) {
  const purely = lines.filter((line) => LEAST_PURE[figure] <= figureShare(line, figure));
  if (figure !== 'hydration') return mostOf(purely, figure);
  const water = purely.filter(({ ingredient }) => foodOf(ingredient)?.part === 'water');
  const liquid = purely.filter(({ ingredient }) => ingredient.part === 'liquid');
  return mostOf(0 < water.length ? water : liquid, figure);
}

const mostOf = (lines: readonly WeighedIngredient[], figure: FigureName) =>
  lines.reduce<WeighedIngredient | undefined>((best, line) => {
    const isMore =
      best === undefined ||
      figureShare(best, figure) * best.grams < figureShare(line, figure) * line.grams;
    return isMore ? line : best;
  }, undefined);

const LEAST_PURE: Readonly<Record<FigureName, number>> = {
  hydration: 0.8, // milks and water, not evaporated milk
  fat: 0.5,
  salt: 0.5,
  sugar: 0.5,
  powder: 0.5,
  soda: 0.5,
  yeast: 0.1,
};
