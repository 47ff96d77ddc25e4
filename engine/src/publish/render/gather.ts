// Which blocks of a sheet stand beside each other on paper? Half-wide sections in two columns, the
// counts of an oven beside the way its coals lie; the order of the tree is kept.

import type { Block } from '../document.ts';

export interface Gathered {
  readonly kind: 'whole' | 'halves' | 'laid';
  /** One for each section; a single one where they are not sections. */
  readonly parts: readonly (readonly Block[])[];
}

/** Runs of blocks, each with the way it is laid out; every block comes out once, in its order. */
export function gathered(blocks: readonly Block[]): readonly Gathered[] {
  const runs: { kind: Gathered['kind']; parts: Block[][] }[] = [];
  let within: Gathered['kind'] = 'whole';
  for (const block of blocks) {
    const opens = opening(block);
    within = opens ?? (isInside(block, within) ? within : 'whole');
    const last = runs.at(-1);
    if (last?.kind !== within) runs.push({ kind: within, parts: [[block]] });
    else if (opens !== undefined && within !== 'whole') last.parts.push([block]);
    else last.parts.at(-1)?.push(block);
  }
  return runs;
}

function opening(block: Block): Gathered['kind'] | undefined {
  if (block.type === 'figures') return 'laid';
  if (block.type !== 'heading' && block.type !== 'why') return undefined;
  return block.half === true ? 'halves' : 'whole';
}

const LAID: ReadonlySet<Block['type']> = new Set<Block['type']>([
  'drawing',
  'paragraph',
  'placement',
]);
const WHOLE: ReadonlySet<Block['type']> = new Set<Block['type']>(['strip', 'page-break', 'lead']);

function isInside(block: Block, within: Gathered['kind']): boolean {
  if (within === 'laid') return LAID.has(block.type);
  return !WHOLE.has(block.type) && !(block.type === 'drawing' && block.lanes === true);
}
