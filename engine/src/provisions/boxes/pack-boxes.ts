// Things into boxes, boxes onto carriers: the heaviest first, each into the first that has room.
// First fit decreasing takes at most 11/9 of the fewest boxes and one more (johnson1973).

import type { Carrier, PackBox } from '../../camp/stores.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import type { BoxKind, CarriedLoad, PackedBox, PackItem } from './packing.ts';

/** In the order in which a list is read. */
const KINDS: readonly BoxKind[] = [
  'dry-tin',
  'free-from',
  'dry',
  'produce',
  'raw-meat',
  'ready',
  'kit',
  'oven',
  'fuel',
];

/**
 * Boxes of one kind of thing each, none heavier than it may be.
 *
 * What divides is divided over boxes; what does not and is heavier than a box may be goes alone and
 * is told with what it is over. An oven is its own box and weighs nothing more.
 *
 * @param boxOf  limit and empty mass of a box of this kind
 */
export function packBoxes(
  items: readonly PackItem[],
  boxOf: (kind: BoxKind) => PackBox,
): readonly PackedBox[] {
  return KINDS.flatMap((kind) =>
    boxesOfKind(
      kind,
      items.filter((item) => item.kind === kind),
      boxOf(kind),
    ),
  );
}

function boxesOfKind(
  kind: BoxKind,
  items: readonly PackItem[],
  box: PackBox,
): readonly PackedBox[] {
  const room = Math.max(1, box.limit - box.mass);
  const pieces = items.flatMap((item) => divided(item, room)).toSorted(heaviestFirst);
  const open: { items: PackItem[]; free: number }[] = [];
  for (const piece of pieces) {
    const fits = kind === 'oven' ? undefined : open.find(({ free }) => piece.mass <= free + DUST);
    if (fits === undefined) open.push({ items: [piece], free: room - piece.mass });
    else {
      fits.items.push(piece);
      fits.free -= piece.mass;
    }
  }
  return open.map(({ items: inside, free }, index) => ({
    id: `${kind}-${index + 1}`,
    kind,
    number: index + 1,
    items: inside,
    mass: grams(room - free + box.mass),
    over: grams(Math.max(0, -free)),
  }));
}

const DUST = 1e-6; // grams

/** Equal parts, as few as go into boxes. */
function divided(item: PackItem, room: number): readonly PackItem[] {
  const parts = item.divides ? Math.ceil(item.mass / room - 1e-9) : 1;
  if (parts <= 1) return item.mass > 0 ? [item] : [];
  return Array.from({ length: parts }, () => ({ ...item, mass: grams(item.mass / parts) }));
}

const heaviestFirst = (one: { readonly mass: number }, other: { readonly mass: number }) =>
  other.mass - one.mass;

export interface Carried {
  readonly carriers: readonly CarriedLoad[];
  readonly left: readonly PackedBox[];
}

/** Boxes onto carriers, in the order in which the camp names them. */
export function loadCarriers(
  boxes: readonly PackedBox[],
  carriers: readonly Carrier[],
  usualLimit: (kind: Carrier['kind']) => Grams,
): Carried {
  const loads = carriers.flatMap(({ name, kind, count, limit }) =>
    Array.from({ length: count }, (_, index) => ({
      name: count === 1 ? name : `${name} ${index + 1}`,
      kind,
      limit: limit ?? usualLimit(kind),
      boxes: [] as string[],
      mass: 0,
    })),
  );
  const left: PackedBox[] = [];
  for (const box of boxes.toSorted(heaviestFirst)) {
    const taker = loads.find(({ mass, limit }) => mass + box.mass <= limit + DUST);
    if (taker === undefined) left.push(box);
    else {
      taker.boxes.push(box.id);
      taker.mass += box.mass;
    }
  }
  return { carriers: loads.map((load) => ({ ...load, mass: grams(load.mass) })), left };
}
