// Which blocks of a sheet belong together? Drawings that follow each other share a row; sections
// that may stand beside each other on paper share two columns there. The order is kept.

import type { Block } from '#engine';

export type Drawing = Extract<Block, { type: 'drawing' }>;

export type Gathered =
  | { readonly kind: 'block'; readonly block: Block }
  | { readonly kind: 'drawings'; readonly drawings: readonly Drawing[] }
  | { readonly kind: 'halves'; readonly sections: readonly (readonly Block[])[] };

/** Every block once, in its order. */
export function gatheredBlocks(blocks: readonly Block[]): readonly Gathered[] {
  const items: Gathered[] = [];
  let rest = blocks;
  for (let first = rest[0]; first !== undefined; first = rest[0]) {
    const taken = isHalf(first) ? halvesFrom(rest) : rowFrom(rest, first);
    items.push(taken.item);
    rest = rest.slice(taken.length);
  }
  return items;
}

const opens = ({ type }: Block) => type === 'heading' || type === 'why';
const isHalf = (block: Block) =>
  (block.type === 'heading' || block.type === 'why') && block.half === true;
/** These keep the whole width, whatever they follow. */
const isWhole = (block: Block) =>
  block.type === 'strip' ||
  block.type === 'page-break' ||
  block.type === 'lead' ||
  (block.type === 'drawing' && block.lanes === true);

interface Taken {
  readonly item: Gathered;
  readonly length: number;
}

/** Half-wide sections that follow each other, up to a block that keeps the whole width. */
function halvesFrom(blocks: readonly Block[]): Taken {
  const end = blocks.findIndex((block) => isWhole(block) || (opens(block) && !isHalf(block)));
  const within = end === -1 ? blocks : blocks.slice(0, end);
  const starts = within.flatMap((block, index) => (isHalf(block) ? [index] : []));
  const sections = starts.map((start, index) => within.slice(start, starts[index + 1]));
  return { item: { kind: 'halves', sections }, length: within.length };
}

function rowFrom(blocks: readonly Block[], first: Block): Taken {
  if (first.type !== 'drawing') return { item: { kind: 'block', block: first }, length: 1 };
  const end = blocks.findIndex(({ type }) => type !== 'drawing');
  const drawings = (end === -1 ? blocks : blocks.slice(0, end)) as readonly Drawing[];
  return { item: { kind: 'drawings', drawings }, length: drawings.length };
}
