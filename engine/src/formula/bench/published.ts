// Which published formulas does a recipe stand beside?
// Sources: the rows of data/published-formulas.json, each with its own. Weakness: few rows a kind,
// and what one calls a biscuit another would not; so every row is shown, and the span of them all.

import table from '../../../data/published-formulas.json' with { type: 'json' };
import { richnessFor } from '../../menu/enriched.ts';
import type { RecipeKind } from '../../menu/recipe.ts';
import { isRefusal } from '../../notice/notice.ts';
import type { WeighedIngredient } from '../dough.ts';
import { characterOf, type DoughCharacter, type FigureName } from './character.ts';
import { lineOf } from './line.ts';

/** What a recipe is held beside: quick breads part by what raises them, yeast breads by fat and sugar. */
export type FormulaKind =
  | 'biscuit'
  | 'corn-bread'
  | 'soda-bread'
  | 'fire-bread'
  | 'yeast-bread'
  | 'enriched-bread';

export interface PublishedFormula {
  readonly name: string;
  readonly kinds: readonly FormulaKind[];
  readonly source: string;
  readonly grade: string;
  /** Its dry and its wet end; the same one twice where it has no span. */
  readonly ends: readonly [DoughCharacter, DoughCharacter];
  /** What the source says something about. */
  readonly gives: readonly FigureName[];
}

interface Row {
  readonly name: string;
  readonly kind: string | readonly string[];
  readonly source: string;
  readonly grade: string;
  readonly amounts: Readonly<Record<string, number | readonly number[]>>;
}

/** Undefined for what no published formula stands for: a cobbler, a stew. */
export function formulaKindOf(
  kind: RecipeKind,
  { figures }: Pick<DoughCharacter, 'figures'>,
): FormulaKind | undefined {
  if (kind === 'yeast-bread') {
    const isLean = richnessFor(figures.fat.share + figures.sugar.share) === 'lean';
    return isLean ? 'yeast-bread' : 'enriched-bread';
  }
  if (kind === 'biscuit' || kind === 'corn-bread') return kind;
  if (kind !== 'quick-bread') return undefined;
  return 0 < figures.soda.share && figures.powder.share === 0 ? 'soda-bread' : 'fire-bread';
}

export const publishedFor = (kind: FormulaKind): readonly PublishedFormula[] =>
  published.filter(({ kinds }) => kinds.includes(kind));

function publishedFromRow(row: Row): PublishedFormula {
  const ends = [endOf(row, 0), endOf(row, 1)] as const;
  return {
    name: row.name,
    kinds: [row.kind].flat() as readonly FormulaKind[],
    source: row.source,
    grade: row.grade,
    ends,
    gives: [
      ...ALWAYS,
      ...('salt' in row.amounts ? (['salt'] as const) : []),
      ...RAISED_BY.filter((name) => 0 < ends[1].figures[name].share),
    ],
  };
}

// No fat and no sugar is a formula's own choice; a leavening or salt that is not there was left
// unsaid, or something else does its work.
const ALWAYS: readonly FigureName[] = ['hydration', 'fat', 'sugar'];
const RAISED_BY: readonly FigureName[] = ['powder', 'soda', 'yeast'];

function endOf(row: Row, end: 0 | 1): DoughCharacter {
  const lines = Object.entries(row.amounts).map(
    ([key, percent]): WeighedIngredient =>
      lineOf(key, typeof percent === 'number' ? percent : percent[end]!),
  );
  const character = characterOf(lines);
  if (isRefusal(character)) throw new RangeError(`${row.name}: ${character.code}`);
  return character;
}

const published: readonly PublishedFormula[] = (table.rows as readonly Row[]).map(publishedFromRow);
