// The formula bench as a sheet: what it is, beside published formulas, beside another version.

import type { Balance } from '../../../formula/bench/balance.ts';
import { type Comparison, compareVersions, type Version } from '../../../formula/bench/compare.ts';
import type { Block, SheetDocument } from '../../document.ts';
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
  ];
  return { kind: 'bench', title, blocks };
}

const whole = (share: number) =>
  share < 0.095 ? shareText(share) : `${decimal(100 * share, 0)}${NO_BREAK}%`;
