// What a formula looks like to an old hand: amounts that are odd, and what height did.

import { foodOf } from '../menu/needs.ts';
import { dishPieces } from '../menu/pieces.ts';
import { type Notice, notice } from '../notice/notice.ts';
import type { Kelvin } from '../quantity/unit.ts';
import { isDough, type WeighedIngredient } from './dough.ts';
import type { FormulaPercentages } from './formula.ts';
import { HIGHEST_PUBLISHED_METRES, isLeavening, isTrimmed, leaveningCutAt } from './height.ts';
import { riseRange } from './rise.ts';
import type { FormulaWish } from './scale.ts';
import { isStarter } from './yeast/work.ts';

interface Found {
  readonly lines: readonly WeighedIngredient[];
  readonly percentages: FormulaPercentages | undefined;
  readonly dough: Kelvin;
}

export function formulaNotices(wish: FormulaWish, found: Found): readonly Notice[] {
  return [
    ...heightNotices(wish, found),
    ...(found.percentages === undefined ? [] : doughNotices(wish, found.percentages)),
    ...riseNotices(wish, found),
    ...unknownFoods(wish, found),
    ...unweighed(wish, found),
  ];
}

function heightNotices(wish: FormulaWish, { lines }: Found): readonly Notice[] {
  const cut = leaveningCutAt(wish.elevation, wish.recipe.writtenAt);
  const leavening = lines.filter((line) => isLeavening(line.ingredient));
  if (cut === 0 || leavening.length === 0) return [];
  const values = { elevationMetres: wish.elevation, cutRatio: cut };
  const trimmed = leavening.filter((line) => isTrimmed(line.ingredient));
  const about = aboutOf(wish);
  return [
    ...(trimmed.length < leavening.length
      ? [notice(cut < 0 ? 'FORMULA_HEIGHT_RAISED' : 'FORMULA_HEIGHT_CUT', 'note', about, values)]
      : []),
    ...trimmed.map(({ ingredient }) =>
      notice('FORMULA_ALREADY_TRIMMED', 'note', { ...about, ingredient: ingredient.name }, values),
    ),
    ...(HIGHEST_PUBLISHED_METRES < wish.elevation
      ? [notice('FORMULA_HEIGHT_ABOVE_RANGE', 'doubt', about, values)]
      : []),
  ];
}

// Highest powder and soda of the published formulas read: 7.4 and 1.7 % (formulas in docs).
const HIGHEST = { powder: 0.08, soda: 0.02, yeast: 0.04 };
const SALT = { lowest: 0.005, highest: 0.04 };
const LEAVENED = ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread', 'cobbler'];

function doughNotices(wish: FormulaWish, percentages: FormulaPercentages): readonly Notice[] {
  const { powder, soda, yeast, salt, hydration } = percentages;
  const about = aboutOf(wish);
  const isBread = LEAVENED.includes(wish.recipe.kind);
  const isHigh = HIGHEST.powder < powder || HIGHEST.soda < soda || HIGHEST.yeast < yeast;
  const isFlat =
    isBread && powder + soda + yeast === 0 && !hasSelfRising(wish) && !hasStarter(wish);
  const isOdd = wish.recipe.kind === 'yeast-bread' && (salt < SALT.lowest || SALT.highest < salt);
  const isWet = 0.85 < hydration && 0 < dishPieces(wish.recipe, wish.dish).length;
  return [
    ...(isHigh ? [notice('FORMULA_LEAVENING_HIGH', 'doubt', about, { powder, soda, yeast })] : []),
    ...(isFlat ? [notice('FORMULA_LEAVENING_MISSING', 'doubt', about)] : []),
    ...(isOdd ? [notice('FORMULA_SALT_UNUSUAL', 'doubt', about, { saltRatio: salt })] : []),
    ...(isWet ? [notice('FORMULA_DOUGH_WET', 'doubt', about, { hydrationRatio: hydration })] : []),
  ];
}

const hasSelfRising = ({ recipe }: FormulaWish) =>
  recipe.ingredients.some((each) => foodOf(each)?.key.includes('self') === true);

const hasStarter = ({ recipe }: FormulaWish) => recipe.ingredients.some(isStarter);

function riseNotices(wish: FormulaWish, { dough, percentages }: Found): readonly Notice[] {
  if (wish.recipe.kind !== 'yeast-bread' || !(0 < (percentages?.yeast ?? 0))) return [];
  const range = riseRange(dough);
  if (range === 'good') return [];
  const code = range === 'cold' ? 'FORMULA_RISE_COLD' : 'FORMULA_RISE_WARM';
  return [notice(code, 'doubt', aboutOf(wish), { doughKelvin: dough })];
}

const unknownFoods = (wish: FormulaWish, { lines }: Found): readonly Notice[] =>
  lines
    .filter(({ ingredient }) => ingredient.isUnweighed !== true)
    .filter((line) => isDough(line.ingredient) && foodOf(line.ingredient) === undefined)
    .filter((line) => !isStarter(line.ingredient)) // flour and water, dough.ts
    .map((line) =>
      notice('FORMULA_FOOD_UNKNOWN', 'doubt', {
        ...aboutOf(wish),
        ingredient: line.ingredient.name,
      }),
    );

/** What is left out of every sum, by its line. */
const unweighed = (wish: FormulaWish, { percentages }: Found): readonly Notice[] =>
  wish.recipe.ingredients
    .filter(({ isUnweighed }) => isUnweighed === true)
    .map((ingredient) =>
      notice(
        'FORMULA_UNWEIGHED',
        'doubt',
        { ...aboutOf(wish), ingredient: ingredient.name },
        {
          written: ingredient.asWritten,
          isDough: percentages !== undefined && isDough(ingredient) ? 'yes' : 'no',
        },
      ),
    );

const aboutOf = (wish: FormulaWish) => ({ dish: wish.dish.id, recipe: wish.recipe.id });
