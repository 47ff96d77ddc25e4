// From a wished number of coals to whole ones above and below: pins kept, nothing overfilled.
// Sources: splitByMethod, ringMethod.

import type { CoalRequest } from './coal-plan.ts';
import type { Counts } from './feed-wish.ts';
import { SHOVEL_PIECES } from './fuel.ts';
import { type HeatNeed, spilled } from './need.ts';
import type { Room } from './room.ts';
import { hasBareLid, isBaked } from './split.ts';

/** A number of coals that is wished for. */
export interface Sized {
  readonly need: HeatNeed;
  readonly wished: number;
  /** Smallest part that is counted in; the fuel's own where not said. */
  readonly handful?: number;
}

/** Of a coal, while searching: whole ones would make the answer jump. */
export const FRACTION = 1e-6;

/** Smallest number that can be told: one coal, or half a shovel. */
export const handfulOf = (request: Pick<CoalRequest, 'fuel'>): number =>
  request.fuel.kind === 'wood-coals' ? SHOVEL_PIECES / 2 : 1;

/** Whole coals (or half shovels) above and below, pins kept, lid and floor not overfilled. */
export const wholeCounts = (request: CoalRequest, { need, wished, ...attempt }: Sized) => {
  const handful = attempt.handful ?? handfulOf(request);
  const rounded = (coals: number) => Math.round(coals / handful) * handful;
  const fitting = (room: number) => Math.floor(room / handful) * handful;
  const { pins } = request;
  const all = Math.max(handful, rounded(Math.min(wished, 1000)));
  const shared = rounded(all * need.shareAbove);
  const plain = { above: shared, below: all - shared };
  const fair = fairCounts(request, need.room, { all, below: plain.below, handful });
  const above =
    pins.above ?? (pins.below === undefined ? fair.above : Math.max(0, all - pins.below));
  const below = pins.below ?? Math.max(0, all - above);
  const ringIsFull = isBaked(request.wish.method) && fair.below < plain.below;
  const isLidOver = pins.above === undefined && above > need.room.lidAll;
  const floorIsFull =
    pins.below === undefined &&
    (hasBareLid(request.wish.method)
      ? plain.below >= fitting(need.room.floorAll)
      : below > need.room.floorAll);
  return {
    counts: {
      above: isLidOver ? fitting(need.room.lidAll) : above,
      below: floorIsFull ? fitting(need.room.floorAll) : below,
    },
    lidIsFull: isLidOver && !hasBareLid(request.wish.method),
    floorIsFull,
    movedToLid: ringIsFull && pins.above === undefined ? plain.below - fair.below : 0,
  };
};

interface ShareWish {
  readonly all: number;
  readonly below: number;
  readonly handful: number;
}

/**
 * Under a pot the floor is filled, and what does not fit goes on the lid. Under a bread there is one
 * ring under the rim and none in the middle (ringMethod): more goes on the lid, and only what its
 * lid can not carry makes a second ring.
 */
const fairCounts = (request: CoalRequest, room: Room, wish: ShareWish): Counts => {
  const down = (pieces: number) => Math.floor(pieces / wish.handful) * wish.handful;
  if (!isBaked(request.wish.method))
    return spilled(wish, { ...room, floorAll: down(room.floorAll) });
  const ring = Math.max(wish.handful, down(room.floorRing));
  const below = Math.min(wish.below, ring);
  const tooMany = Math.max(0, wish.all - below - down(room.lidAll));
  const second = Math.min(tooMany, down(room.floorSecondRing));
  return { above: wish.all - below - second, below: below + second };
};
