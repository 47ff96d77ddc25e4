// Drawings that follow each other share a row on screen; every other block stands alone.

import type { Block } from '#engine';

export type Drawing = Extract<Block, { type: 'drawing' }>;
export type Row =
  | { readonly kind: 'block'; readonly block: Block }
  | { readonly kind: 'drawings'; readonly drawings: readonly Drawing[] };

/** Every block once, in its order. */
export function drawingRows(blocks: readonly Block[]): readonly Row[] {
  const rows: (Row & { readonly drawings?: Drawing[] })[] = [];
  for (const block of blocks) {
    const last = rows.at(-1);
    if (block.type !== 'drawing') rows.push({ kind: 'block', block });
    else if (last?.kind === 'drawings') last.drawings.push(block);
    else rows.push({ kind: 'drawings', drawings: [block] });
  }
  return rows;
}
