// Versions side by side: every food in grams and percent, what differs, and what that does.

import {
  type Comparison,
  type Difference,
  foodName,
  type Version,
} from '../../../formula/bench/compare.ts';
import { measureText } from '../../../formula/bench/line.ts';
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
  return measureText(line.ingredient.food, line.grams, line.ingredient.asWritten);
}

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
