// The whole camp in boxes and on its carriers, and what is too much for them.

import type { Camp } from '../../camp/camp.ts';
import { type Notice, notice } from '../../notice/notice.ts';
import { grams } from '../../quantity/unit.ts';
import { loadCarriers, packBoxes } from './pack-boxes.ts';
import { noBox, packItems, type ToPack, usualBox, usualLimit, usualTin } from './pack-items.ts';
import type { BoxKind, Packing } from './packing.ts';

export function packCamp(asked: ToPack): Packing {
  const { stores } = asked.camp;
  const boxes = packBoxes(packItems(asked), (kind) => boxOf(kind, asked.camp));
  const { carriers, left } = loadCarriers(boxes, stores?.carriers ?? [], usualLimit);
  const isCarried = carriers.length > 0;
  return {
    boxes,
    mass: grams(boxes.reduce((sum, { mass }) => sum + mass, 0)),
    carriers,
    left: isCarried ? left.map(({ id }) => id) : [],
    leftMass: grams(isCarried ? left.reduce((sum, { mass }) => sum + mass, 0) : 0),
  };
}

function boxOf(kind: BoxKind, { stores }: Camp) {
  if (kind === 'oven') return noBox;
  if (kind === 'dry-tin') return usualTin;
  return stores?.box ?? usualBox;
}

/**
 * @notice PROVISIONS_OVERLOAD — boxes that no carrier has room for, and how much they weigh
 * @notice PROVISIONS_BOX_HEAVY — one thing is heavier than a box may be
 */
export function packingNotices({ boxes, carriers, left, leftMass, mass }: Packing) {
  const heavy = boxes.filter(({ over }) => 0 < over);
  const limit = carriers.reduce((sum, each) => sum + each.limit, 0);
  return [
    ...(left.length === 0
      ? []
      : [
          notice(
            'PROVISIONS_OVERLOAD',
            'stop',
            {},
            {
              boxes: left.length,
              overGrams: leftMass,
              massGrams: mass,
              limitGrams: limit,
            },
          ),
        ]),
    ...heavy.map(
      (box): Notice =>
        notice('PROVISIONS_BOX_HEAVY', 'doubt', {}, { box: box.id, overGrams: box.over }),
    ),
  ];
}
