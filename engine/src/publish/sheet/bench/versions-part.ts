// Versions side by side: every food in grams and percent, what differs, and what that does.

import {
  type Comparison,
  type Difference,
  foodName,
  type Version,
} from '../../../formula/bench/compare.ts';
import { doubtOf } from '../../../formula/bench/doubt.ts';
import { measureOf, writtenGrams } from '../../../formula/bench/own-measure.ts';
import { shareOf, type WeighedIngredient } from '../../../formula/dough.ts';
import { nearestFoods } from '../../../larder/index.ts';
import { foodOf } from '../../../menu/index.ts';
import type { Notice } from '../../../notice/notice.ts';
import { bibliography } from '../../../sources/index.ts';
import type { Block } from '../../document.ts';
import { noticeText } from '../../notice-text.ts';
import type { Say } from '../../say.ts';
import { figureWords, gramsText, shareText, weighedText } from './figures-part.ts';

/** One version: weigh, or measure, percent. More: grams and percent of each. */
export function linesTable({ versions, lines }: Comparison, say: Say): Block {
  const [only] = versions;
  if (versions.length === 1 && only !== undefined) {
    return {
      type: 'table',
      caption: `Whole dough ${say.mass(only.character.batch)}.`,
      head: ['', 'weigh, or measure', "baker's %"],
      rows: lines.map(({ name, amounts, shares }) => [
        name,
        weighedText(amounts[0]!, spoonsOf(only, name)),
        shareText(shares[0]!),
      ]),
      numeric: [false, true, true],
    };
  }
  return {
    type: 'table',
    caption: versions
      .map(({ name, character }) => `${name}: ${say.mass(character.batch)}`)
      .join('; '),
    head: ['', ...versions.flatMap(({ name }) => [name, '%'])],
    rows: lines.map(({ name, amounts, shares }) => [
      name,
      ...versions.flatMap((_, at) => [
        amounts[at] === undefined ? '–' : gramsText(amounts[at]),
        shares[at] === undefined ? '' : shareText(shares[at]),
      ]),
    ]),
    numeric: [false, ...versions.flatMap(() => [true, true])],
  };
}

/** The measure of a food's only line; foods that stand twice are weighed. */
function spoonsOf({ lines }: Version, name: string): string {
  const own = lines.filter((line) => foodName(line) === name);
  const [line] = own;
  if (line === undefined || 1 < own.length) return '';
  return measureOf(line);
}

/** What the larder does not know, what a cup of the flour may hide, and written measures that weigh something else. */
export function measureBlocks({ lines }: Version): readonly Block[] {
  return [...lines.flatMap(unknownBlock), ...lines.flatMap(againstBlock), ...cupBlock(lines)];
}

/** A food of nobody's larder: its water and fat are missing from every figure, and that is said. */
function unknownBlock({ ingredient, grams: mass }: WeighedIngredient): readonly Block[] {
  const { name, part } = ingredient;
  const isCounted = Object.values(shareOf(ingredient)).some((share) => 0 < share);
  if (isCounted || part !== 'other' || foodOf(ingredient) !== undefined) return [];
  const near = nearestFoods(name).map((food) => food.name);
  const next =
    near.length === 0
      ? 'Weigh it, and add it as a food of your own'
      : `Nearest in the larder: ${near.join(', ')}`;
  const counts =
    0 < mass
      ? `its ${gramsText(mass)} count for nothing in these figures`
      : 'nobody has weighed it, and it counts for nothing in these figures';
  const text = `“${name}” is not in the larder: ${counts}. ${next}.`;
  return [{ type: 'notice', level: 'doubt', text }];
}

/** One weight of a cup, and how far a hand can miss it: for the flour, which moves all the rest. */
function cupBlock(lines: readonly WeighedIngredient[]): readonly Block[] {
  const cups = lines.filter(
    (line) => CUP_FOODS.includes(line.ingredient.part) && /\bcups?\b/.test(measureOf(line)),
  );
  const [most] = [...cups].sort((a, b) => b.grams - a.grams);
  const food = most === undefined ? undefined : foodOf(most.ingredient);
  const doubt = most === undefined ? 0 : doubtOf(most.ingredient);
  if (most === undefined || food?.measures.cup === undefined || doubt === 0) return [];
  const span = `${gramsText(most.grams * (1 - doubt))} to ${gramsText(most.grams * (1 + doubt))}`;
  const text =
    `A cup of ${most.ingredient.name} is ${gramsText(food.measures.cup)} here. By cups these ` +
    `${gramsText(most.grams)} may be ${span}, as it is spooned or scooped: weigh it if you can.` +
    ownCupText(most, food.measures.cup);
  return [{ type: 'paragraph', parts: [{ text }] }];
}

/** One weight of a cup stands on the sheet; the recipe's own, where it has another, is named once. */
function ownCupText(line: WeighedIngredient, cup: number): string {
  const written = writtenGrams(line.ingredient);
  const own = line.ingredient.asWritten.trim();
  if (written === undefined || own === measureOf(line)) return '';
  return ` The recipe’s own ${own} would be ${gramsText((line.grams * cup) / written)} a cup.`;
}

const CUP_FOODS: readonly string[] = ['flour', 'meal'];

/** The weight counts; a measure beside it that says another is named. */
function againstBlock({ ingredient, grams: mass }: WeighedIngredient): readonly Block[] {
  const written = writtenGrams(ingredient);
  if (written === undefined) return [];
  if (Math.abs(written / mass - 1) <= WORTH_A_WORD * Math.max(0.05, doubtOf(ingredient))) return [];
  const text =
    `${ingredient.asWritten} of ${ingredient.name} would weigh ${gramsText(written)}; ` +
    `${gramsText(mass)} is written, and the weight counts.`;
  return [{ type: 'notice', level: 'doubt', text }];
}

/** Within twice the doubt of a spoon nothing is said: whoever wrote both had rounded one. Ours. */
const WORTH_A_WORD = 2;

/** What each later version has otherwise than the first. */
export function differenceBlocks(comparison: Comparison, say: Say): readonly Block[] {
  const [first, ...later] = comparison.versions;
  return later.flatMap((version, at): readonly Block[] => {
    const differences = comparison.differences[at] ?? [];
    const items = differences.map((each) => differenceText(each, say));
    const text =
      items.length === 0
        ? `${version.name} is the same dough as ${first!.name}: nothing differs by a tenth.`
        : undefined;
    return [
      { type: 'heading', text: `${version.name}, beside ${first!.name}` },
      text === undefined
        ? { type: 'list', items, tick: false }
        : { type: 'paragraph', parts: [{ text }] },
      ...sourceBlocks(differences.flatMap(({ effect }) => (effect === undefined ? [] : [effect]))),
    ];
  });
}

function differenceText({ figure, was, now, effect }: Difference, say: Say): string {
  const said = effect === undefined ? '' : noticeText(effect, say);
  if (figure === undefined) return said;
  const change = `${figureWords[figure]} ${shareText(was)}, now ${shareText(now)}`;
  return `${change}. ${said === '' ? 'No source says what this does.' : said}`;
}

/** Works behind what was said, each once. */
export function sourceBlocks(
  notices: readonly Notice[],
  more: readonly string[] = [],
): readonly Block[] {
  const keys = [...new Set([...notices.map(({ values }) => String(values.source ?? '')), ...more])];
  const items = keys.flatMap((key) => {
    const work = bibliography[key];
    return work === undefined ? [] : [`${work.title}. ${work.by}.`];
  });
  if (items.length === 0) return [];
  return [{ type: 'why', question: 'Who says so', blocks: [{ type: 'list', items, tick: false }] }];
}
