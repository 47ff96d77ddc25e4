// Two or more versions side by side: what differs, and what that does to the bread.
// Sources: each effect names its own; a difference whose effect nobody has written down is shown
// as a number alone.

import { foodOf } from '../../menu/needs.ts';
import { type Notice, notice } from '../../notice/notice.ts';
import { type Grams, grams, metres } from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';
import { MIXED_DOUGH, riseFor } from '../rise.ts';
import { leavenIn } from '../yeast/work.ts';
import { type DoughCharacter, type FigureName, figureNames } from './character.ts';
import { effectOf } from './effects.ts';

export interface Version {
  readonly name: string;
  readonly lines: readonly WeighedIngredient[];
  readonly character: DoughCharacter;
}

export interface Comparison {
  readonly versions: readonly Version[];
  /** One a food, in the order of the first version; grams per version, undefined where it is not in. */
  readonly lines: readonly ComparedLine[];
  /** Per later version: what differs from the first, and what that does. */
  readonly differences: readonly (readonly Difference[])[];
}

export interface ComparedLine {
  readonly name: string;
  readonly amounts: readonly (Grams | undefined)[];
  /** Of each version's own flour, 1 = 100 %. */
  readonly shares: readonly (number | undefined)[];
}

export interface Difference {
  readonly figure?: FigureName;
  readonly was: number;
  readonly now: number;
  /** What it does, with its source; none where no source says. */
  readonly effect?: Notice;
}

export function compareVersions(versions: readonly Version[]): Comparison {
  const [first, ...later] = versions;
  if (first === undefined) throw new RangeError('nothing to compare');
  return {
    versions,
    lines: comparedLines(versions),
    differences: later.map((version) => [
      ...figureDifferences(first.character, version.character),
      ...leavenDifferences(first, version),
      ...foodDifferences(first, version),
    ]),
  };
}

function comparedLines(versions: readonly Version[]): readonly ComparedLine[] {
  const names = [...new Set(versions.flatMap(({ lines }) => lines.map(foodName)))];
  return names.map((name) => {
    const amounts = versions.map(({ lines }) => {
      const own = lines.filter((line) => foodName(line) === name);
      return own.length === 0 ? undefined : grams(own.reduce((sum, line) => sum + line.grams, 0));
    });
    const shares = amounts.map((amount, at) =>
      amount === undefined ? undefined : amount / versions[at]!.character.flour,
    );
    return { name, amounts, shares };
  });
}

/** The same food under two names is one line; "sugar (fruit)" is not the sugar of the dough. */
export const foodName = ({ ingredient }: WeighedIngredient) =>
  /\(/.test(ingredient.name) ? ingredient.name : (foodOf(ingredient)?.name ?? ingredient.name);

/** Smaller changes are not worth a word: a tenth of it, and half a percent of flour. Ours. */
const WORTH = { ofItself: 0.1, least: 0.005, leavening: 0.001 };

function figureDifferences(first: DoughCharacter, other: DoughCharacter): readonly Difference[] {
  return figureNames.flatMap((figure) => {
    if (figure === 'yeast') return []; // beside a starter it says nothing by itself: see below
    const was = first.figures[figure].share;
    const now = other.figures[figure].share;
    const least = ['powder', 'soda', 'yeast', 'salt'].includes(figure)
      ? WORTH.leavening
      : WORTH.least;
    if (Math.abs(now - was) < Math.max(least, WORTH.ofItself * was)) return [];
    const effect = effectOf(figure, was, now);
    return [{ figure, was, now, ...(effect === undefined ? {} : { effect }) }];
  });
}

/**
 * Yeast more or less, or a starter in its place: how long the first rise takes, and the acid.
 *
 * @source yeastRate (grade B), gaenzle1998 (grade A), amounts as in yeast/work.ts
 */
function leavenDifferences(first: Version, other: Version): readonly Difference[] {
  const [before, after] = [leavenIn(first.lines), leavenIn(other.lines)];
  const was = first.character.figures.yeast.share;
  const now = other.character.figures.yeast.share;
  if (before?.leaven === after?.leaven) {
    const isSame = Math.abs(now - was) < Math.max(WORTH.leavening, WORTH.ofItself * was);
    return isSame
      ? []
      : [{ figure: 'yeast', was, now, ...pace('FORMULA_EFFECT_YEAST_PACE', first, other) }];
  }
  if (before?.leaven === 'sourdough') {
    return [{ figure: 'yeast', was, now, ...pace('FORMULA_EFFECT_STARTER_OUT', first, other) }];
  }
  if (after?.leaven === 'sourdough') {
    return [{ figure: 'yeast', was, now, ...pace('FORMULA_EFFECT_STARTER_IN', first, other) }];
  }
  return [{ figure: 'yeast', was, now }];
}

const AT = { dough: MIXED_DOUGH, elevation: metres(0) };

type PaceCode =
  | 'FORMULA_EFFECT_YEAST_PACE'
  | 'FORMULA_EFFECT_STARTER_OUT'
  | 'FORMULA_EFFECT_STARTER_IN';

/** First rise of both, mixed at 25 °C and kept so; no effect is told where one of them has none. */
function pace(code: PaceCode, first: Version, other: Version) {
  const [before, after] = [riseFor(first.lines, AT), riseFor(other.lines, AT)];
  if (before === undefined && after === undefined) return {};
  const values = {
    doughKelvin: AT.dough,
    ...(before === undefined ? {} : { wasMinutes: before.first }),
    ...(after === undefined ? {} : { nowMinutes: after.first }),
    source: code === 'FORMULA_EFFECT_YEAST_PACE' ? 'yeastRate' : 'gaenzle1998',
  };
  return { effect: notice(code, 'note', {}, values) };
}

function foodDifferences(first: Version, other: Version): readonly Difference[] {
  return FOODS.flatMap(({ code, source, isIt }) => {
    const [was, now] = [first, other].map((version) => shareThat(version, isIt)) as [
      number,
      number,
    ];
    if (now - was < WORTH.least) return [];
    return [{ was, now, effect: notice(code, 'note', {}, { source }) }];
  });
}

const shareThat = ({ lines, character }: Version, isIt: (key: string) => boolean) =>
  lines
    .filter(({ ingredient }) => isIt(foodOf(ingredient)?.key ?? ''))
    .reduce((sum, line) => sum + line.grams, 0) / character.flour;

const FOODS = [
  {
    code: 'FORMULA_EFFECT_MILK',
    source: 'milkInBread',
    isIt: (key: string) => /^(milk|dry-milk|buttermilk)/.test(key),
  },
  {
    code: 'FORMULA_EFFECT_BUTTER',
    source: 'solidFats',
    isIt: (key: string) => /^(butter-|margarine)/.test(key),
  },
  {
    code: 'FORMULA_EFFECT_PURE_FAT',
    source: 'solidFats',
    isIt: (key: string) => /^(lard|shortening)/.test(key),
  },
  {
    code: 'FORMULA_EFFECT_EGG',
    source: 'breadIngredients',
    isIt: (key: string) => /^egg/.test(key),
  },
  {
    code: 'FORMULA_EFFECT_WHOLEMEAL',
    source: 'breadIngredients',
    isIt: (key: string) => /^(whole-wheat|rye)/.test(key),
  },
] as const;
