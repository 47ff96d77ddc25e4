// What goes in, so that the dough has this mass, this water, this fat?
// Sources: bakersPercent (linear in the grams); lawson1974 for amounts that can't be negative.
// Tuned: the three weights below, on the ready recipes, so that wishes are met to a millionth and
// all else stays in the proportion it had.

import type { RecipeKind } from '../../menu/recipe.ts';
import { type OrRefusal, type Refusal, refusal } from '../../notice/notice.ts';
import { nonNegativeLeastSquares } from '../../numerics/nonnegative.ts';
import { carrierOf, publishedSpan, USUAL_CARRIER } from '../bench/balance.ts';
import { characterOf, type DoughCharacter, type FigureName } from '../bench/character.ts';
import { lineOf, withGrams } from '../bench/line.ts';
import { type FormulaKind, formulaKindOf } from '../bench/published.ts';
import { flourIn, type WeighedIngredient } from '../dough.ts';
import { doughTrouble, MOST_WATER } from '../dough-trouble.ts';
import {
  achievedOf,
  type FormulaTargets,
  flourShare,
  type Row,
  rowOf,
  type Wish,
  wishesOf,
  wishName,
} from './wish.ts';

export interface TargetAnswer {
  /** In the order of the old ones; what had to be added stands behind them. */
  readonly lines: readonly WeighedIngredient[];
  /** Old weights in the same order; 0 for what was added. */
  readonly was: readonly number[];
  readonly character: DoughCharacter;
}

/** A refusal that has the nearest formula with it: all wishes kept but the last that conflicts. */
export interface TargetRefusal extends Refusal {
  readonly nearest?: TargetAnswer;
}

/**
 * The formula that meets these wishes and otherwise stays as it was: what nobody asked for keeps
 * its share of flour, and water, fat and salt keep theirs as figures.
 *
 * @param recipeKind  whose published formulas say what is nearest to a wish that no dough has
 * @refuses  FORMULA_* of `characterOf` — the formula to begin with
 * @refuses  FORMULA_TARGET_OUT_OF_RANGE — a wish that no dough has; names the nearest bound
 * @refuses  FORMULA_TARGETS_CONFLICT — names the fewest wishes that can't stand together, and what
 *           the last of them comes to if the others are kept
 * @source   bakersPercent, lawson1974 ch. 23
 */
export function solveTargets(
  lines: readonly WeighedIngredient[],
  targets: FormulaTargets,
  recipeKind?: RecipeKind,
): TargetAnswer | TargetRefusal {
  const before = characterOf(lines);
  if ('refused' in before) return before;
  const wishes = wishesOf(targets);
  const flourless = withoutFlour(lines, wishes);
  if (flourless !== undefined) return flourless;
  const like: Like = {
    kind: recipeKind === undefined ? undefined : formulaKindOf(recipeKind, before),
    batch: before.batch,
  };
  const found = wishes.map((wish) => {
    const bound = boundFor(wish);
    return { wish, nearest: bound === undefined ? undefined : nearestTo(wish, bound, like) };
  });
  const possible = found.map(({ wish, nearest }) =>
    nearest === undefined ? wish : { ...wish, wanted: nearest.wanted },
  );
  const outcome = solvedFor(lines, possible, before);
  const absurd = found.find(({ nearest }) => nearest !== undefined);
  if (absurd?.nearest === undefined) return outcome;
  const nearest = 'refused' in outcome ? outcome.nearest : outcome;
  return {
    ...outOfRange(absurd.wish, absurd.nearest, lines),
    ...(nearest === undefined ? {} : { nearest }),
  };
}

function solvedFor(
  lines: readonly WeighedIngredient[],
  wishes: readonly Wish[],
  before: DoughCharacter,
): TargetAnswer | TargetRefusal {
  const all = withCarriers(lines, wishes);
  const solved = solveFor(all, wishes, before);
  return isMet(solved, wishes) ? answerOf(lines, solved) : conflict(lines, all, wishes, before);
}

/** All the flour is held at nothing: no wish can stand beside that. */
function withoutFlour(lines: readonly WeighedIngredient[], wishes: readonly Wish[]) {
  const held = lines.map((line, at) => {
    const wish = wishes.find((each) => each.kind === 'held' && each.line === at);
    return wish === undefined || !(0 <= wish.wanted) ? line : withGrams(line, wish.wanted);
  });
  return 0 < flourIn(held) ? undefined : doughTrouble(held);
}

/** A new line for each figure that is wanted and that nothing in the bowl brings. */
function withCarriers(lines: readonly WeighedIngredient[], wishes: readonly Wish[]) {
  const missing = wishes.flatMap((wish) =>
    wish.kind === 'figure' && 0 < wish.wanted && carrierOf(lines, wish.figure) === undefined
      ? [lineOf(USUAL_CARRIER[wish.figure], 0)]
      : [],
  );
  return [...lines, ...missing];
}

// A wish counts ten thousand times a share that nobody asked for; water, fat, salt and leavening that
// were not asked for count thirty times as much as the share of one ingredient; a wish that gives way, ten.
// Where neither mass nor a held line says how large the dough is, its flour stays what it was: shares
// alone would be met as well by a crumb. A held line has that say itself, and the flour only leans.
const WEIGHT = { wish: 1e4, kept: 30, givesWay: 10, share: 1, size: 0.01 };
const KEPT: readonly FigureName[] = ['hydration', 'fat', 'salt', 'powder', 'soda', 'yeast'];

function solveFor(
  lines: readonly WeighedIngredient[],
  wishes: readonly Wish[],
  before: Pick<DoughCharacter, 'flour' | 'figures'>,
  weights: readonly number[] = wishes.map(() => WEIGHT.wish),
): readonly WeighedIngredient[] {
  const { flour } = before;
  const kept = KEPT.filter(
    (figure) => !wishes.some((wish) => wish.kind === 'figure' && wish.figure === figure),
  ).map((figure): Wish => ({ kind: 'figure', figure, wanted: before.figures[figure].share }));
  const isSized = wishes.some(({ kind }) => kind === 'batch');
  const isHeld = wishes.some(({ kind }) => kind === 'held');
  const size = { factors: lines.map((line) => flourShare(line) / flour), right: 1 };
  const rows = [
    ...wishes.map((wish, at) => weighted(rowOf(wish, lines, flour), weights[at]!)),
    ...kept.map((wish) => weighted(rowOf(wish, lines, flour), WEIGHT.kept)),
    ...lines.map((_, at) => weighted(shareRow(lines, at, flour), WEIGHT.share)),
    ...(isSized ? [] : [weighted(size, isHeld ? WEIGHT.size : WEIGHT.wish)]),
  ];
  // Unknowns as multiples of what is there, so that all are about 1.
  const units = lines.map((line) => (0 < line.grams ? line.grams : flour * NEW_SHARE));
  const x = nonNegativeLeastSquares({
    matrix: rows.map((row) => row.factors.map((factor, at) => factor * units[at]!)),
    right: rows.map((row) => row.right),
  });
  return lines.map((line, at) => withGrams(line, cleaned(x[at]! * units[at]!)));
}

const NEW_SHARE = 0.02;
const cleaned = (mass: number) => (mass < 1e-6 ? 0 : mass);

const weighted = ({ factors, right }: Row, weight: number): Row => ({
  factors: factors.map((factor) => factor * weight),
  right: right * weight,
});

/** One ingredient in its old share of the flour; the larger it is the easier it gives. */
function shareRow(lines: readonly WeighedIngredient[], at: number, flour: number): Row {
  const share = lines[at]!.grams / flour;
  const unit = flour * Math.sqrt(Math.max(share, NEW_SHARE));
  const factors = lines.map(
    (line, other) => ((other === at ? 1 : 0) - share * flourShare(line)) / unit,
  );
  return { factors, right: 0 };
}

const MET = 1e-4;

const isMet = (lines: readonly WeighedIngredient[], wishes: readonly Wish[]) =>
  0 < flourIn(lines) && wishes.every((wish) => missOf(wish, lines) < MET);

function missOf(wish: Wish, lines: readonly WeighedIngredient[]): number {
  const unit = Math.max(wish.wanted, wish.kind === 'figure' ? 0.01 : 1);
  return Math.abs(achievedOf(wish, lines) - wish.wanted) / unit;
}

function answerOf(
  before: readonly WeighedIngredient[],
  solved: readonly WeighedIngredient[],
): OrRefusal<TargetAnswer> {
  const lines = solved.filter((line, at) => at < before.length || 0 < line.grams);
  const character = characterOf(lines);
  if ('refused' in character) return character;
  return { lines, was: lines.map((_, at) => before[at]?.grams ?? 0), character };
}

/** The fewest wishes that can't stand together, and the nearest formula without the last of them. */
function conflict(
  before: readonly WeighedIngredient[],
  lines: readonly WeighedIngredient[],
  wishes: readonly Wish[],
  character: DoughCharacter,
): TargetRefusal {
  const fails = (some: readonly Wish[]) => !isMet(solveFor(lines, some, character), some);
  const fighting = groupsOf(wishes).find(fails) ?? wishes;
  const givesWay = fighting.at(-1)!;
  const weights = wishes.map((wish) => (wish === givesWay ? WEIGHT.givesWay : WEIGHT.wish));
  const solved = solveFor(lines, wishes, character, weights);
  const nearest = answerOf(before, solved);
  return {
    ...refusal(
      'FORMULA_TARGETS_CONFLICT',
      fighting.map((wish) => wishName(wish, lines)),
      {},
      {
        ...valuesOf(givesWay, achievedOf(givesWay, solved)),
        wish: wishName(givesWay, lines),
        others: fighting
          .slice(0, -1)
          .map((wish) => wishName(wish, lines))
          .join(', '),
      },
    ),
    ...('refused' in nearest ? {} : { nearest }),
  };
}

/** One, two and three wishes together, fewest first; bounded by the dozen wishes there can be. */
function groupsOf(wishes: readonly Wish[]): readonly (readonly Wish[])[] {
  const some = wishes.slice(0, 12);
  const pairs = some.flatMap((one, at) => some.slice(at + 1).map((other) => [one, other]));
  const threes = pairs.flatMap(([one, other]) =>
    some.slice(some.indexOf(other!) + 1).map((third) => [one!, other!, third]),
  );
  return [...some.map((one) => [one]), ...pairs, ...threes];
}

const valuesOf = (wish: Wish, value: number) =>
  wish.kind === 'figure'
    ? { wantedRatio: wish.wanted, nearestRatio: value }
    : { wantedGrams: wish.wanted, nearestGrams: value };

/** Bounds past which no dough or batter was ever made; the nearer one, or undefined. */
function boundFor(wish: Wish): number | undefined {
  const [least, most] = wish.kind === 'figure' ? BOUNDS[wish.figure] : MASSES[wish.kind];
  if (!Number.isFinite(wish.wanted) || wish.wanted < least) return least;
  return most < wish.wanted ? most : undefined;
}

const MASSES = { batch: [1, 100_000], held: [0, 100_000] } as const;
const BOUNDS: Readonly<Record<FigureName, readonly [number, number]>> = {
  hydration: [0.2, MOST_WATER], // below a fifth flour does not come together (no source)
  fat: [0, 1.5], // pound cakes reach 100 % (no source)
  salt: [0, 0.1],
  sugar: [0, 1.5],
  powder: [0, 0.2],
  soda: [0, 0.1],
  yeast: [0, 0.15],
};

/** What a wish comes to that no dough has, and who has it so. */
interface Nearest {
  readonly wanted: number;
  readonly by: FormulaKind | 'batch' | 'bound';
}

/**
 * Not the last that some batter has, but what is of use: the end of what is published for its kind,
 * one batch of the recipe where no dough at all was wished for.
 */
function nearestTo(wish: Wish, bound: number, like: Like): Nearest {
  if (wish.kind === 'batch' && bound === MASSES.batch[0])
    return { wanted: like.batch, by: 'batch' };
  const span =
    wish.kind === 'figure' && like.kind !== undefined
      ? publishedSpan(like.kind, wish.figure)
      : undefined;
  if (span === undefined || like.kind === undefined) return { wanted: bound, by: 'bound' };
  return { wanted: span[wish.wanted < bound ? 0 : 1], by: like.kind };
}

interface Like {
  readonly kind: FormulaKind | undefined;
  readonly batch: number;
}

const outOfRange = (wish: Wish, nearest: Nearest, lines: readonly WeighedIngredient[]) =>
  refusal(
    'FORMULA_TARGET_OUT_OF_RANGE',
    [wishName(wish, lines)],
    {},
    { ...valuesOf(wish, nearest.wanted), wish: wishName(wish, lines), by: nearest.by },
  );
