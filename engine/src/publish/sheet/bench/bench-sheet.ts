// The formula bench as a sheet: what it is, beside published formulas, beside another version.

import type { Balance } from '../../../formula/bench/balance.ts';
import { type Comparison, compareVersions, type Version } from '../../../formula/bench/compare.ts';
import { MOST_SODA_LEFT } from '../../../formula/leaven/powder-notices.ts';
import { gasOf } from '../../../formula/swap/gas.ts';
import { notice } from '../../../notice/notice.ts';
import type { Block, SheetDocument } from '../../document.ts';
import { noticeText } from '../../notice-text.ts';
import type { Say } from '../../say.ts';
import { decimal, NO_BREAK } from '../../speak-number.ts';
import { feelBlock, figureBlocks, shareText } from './figures-part.ts';
import { differenceBlocks, linesTable, measureBlocks } from './versions-part.ts';

export interface BenchAsked {
  readonly title: string;
  /** The one that is worked on, and what it is held beside. */
  readonly version: Version;
  readonly beside: readonly Version[];
  readonly balance: Balance;
}

export function benchSheet(
  { title, version, beside, balance }: BenchAsked,
  say: Say,
): SheetDocument {
  const { character } = version;
  // What differs is told from the other to this one: "old had 8 %, now 10 %".
  const comparison: Comparison = compareVersions([...beside, version]);
  const figures = [
    { figure: whole(character.figures.hydration.share), label: 'water', note: 'of flour' },
    { figure: whole(character.figures.fat.share), label: 'fat', note: 'of flour' },
    { figure: shareText(character.figures.salt.share), label: 'salt', note: 'of flour' },
  ];
  const blocks: readonly Block[] = [
    { type: 'figures', figures },
    feelBlock(character, balance),
    linesTable(comparison, say),
    ...measureBlocks(version),
    ...differenceBlocks(comparison, say),
    ...figureBlocks(character, balance, say),
    ...sodaBlocks(version, say),
  ];
  return { kind: 'bench', title, blocks };
}

/** Soda that finds no acid tastes of soap, whatever published formulas have. */
function sodaBlocks({ lines, character: { flour } }: Version, say: Say): readonly Block[] {
  const { sodaLeft } = gasOf(lines);
  const leftRatio = sodaLeft / flour;
  if (leftRatio <= MOST_SODA_LEFT) return [];
  const left = notice('FORMULA_SODA_LEFT', 'doubt', {}, { sodaGrams: sodaLeft, leftRatio });
  const text = `${noticeText(left, say)} Less soda, or buttermilk or cream of tartar to meet it.`;
  return [{ type: 'notice', level: 'doubt', text, code: left.code }];
}

const whole = (share: number) =>
  share < 0.095 ? shareText(share) : `${decimal(100 * share, 0)}${NO_BREAK}%`;
