// How many coals lie on this lid and under this floor?
// Sources: ringMethod (what a ring is), briquetteSize (about 1.75 inch wide), briquetteWeighing.
// Weak spot: the packing share of a full spread and the width of a leg are ours.

import type { Fuel } from '../camp/camp.ts';
import { CHART_PIECE_GRAMS, fuelPiece } from './fuel.ts';
import type { OvenBody } from './geometry.ts';

const CHART_COAL_WIDTH = 0.0445; // m, 1.75 inch (briquetteSize; another page says 2)
const SPREAD_PACKING = 0.8; // share of the plate that coals in a full spread can stand on; ours
/** Legs under the rim of the floor, each as wide as this where the ring passes it; from memory. */
export const LEGS = 3;
export const LEG_WIDTH = 0.025; // m
/** Clockwise from north, seen from above: a third of the circle each, one leg to the south. */
export const LEG_ANGLES: readonly number[] = [1, 5 / 3, 7 / 3].map((half) => half * Math.PI);

/** Where the legs stand: under the rim of the floor. */
export const legPlaces = (floorRadius: number) =>
  LEG_ANGLES.map((angle) => ({
    x: (floorRadius - LEG_WIDTH / 2) * Math.sin(angle),
    y: (floorRadius - LEG_WIDTH / 2) * Math.cos(angle),
  }));

/** The loop in the middle of the lid, lying east and west, with room for a hook; from memory. */
export const HANDLE = { halfLength: 0.026, halfWidth: 0.009 } as const; // m
/** Half the middle that no bread has coals under. */
const EMPTY_MIDDLE_RADIUS = 0.03; // m

/** A coal of another mass is wider by its cube root. @source briquetteSize, briquetteWeighing */
export const coalWidth = (fuel: Fuel): number =>
  CHART_COAL_WIDTH * Math.cbrt(fuelPiece(fuel).pieceGrams / CHART_PIECE_GRAMS);

/** A circle that touching coals lie within. */
export interface RingWish {
  readonly outerRadius: number;
  readonly coalWidth?: number;
}

/** Angle that one coal takes up in the ring, or undefined where the circle is too small. */
const coalAngle = ({ outerRadius, coalWidth = CHART_COAL_WIDTH }: RingWish) => {
  const radius = outerRadius - coalWidth / 2;
  return radius < coalWidth / 2 ? undefined : 2 * Math.asin(coalWidth / 2 / radius);
};

/** Coals in a touching ring whose outer edge lies on a circle of this radius. @source ringMethod */
export const touchingRing = (wish: RingWish): number => {
  const angle = coalAngle(wish);
  return angle === undefined ? 0 : Math.floor((2 * Math.PI) / angle);
};

/** The same under a floor, a gap left for each leg. @source ringMethod */
export const ringUnderFloor = (wish: RingWish): number => {
  const angle = coalAngle(wish);
  if (angle === undefined) return 0;
  const legAngle = LEG_WIDTH / (wish.outerRadius - (wish.coalWidth ?? CHART_COAL_WIDTH) / 2);
  return LEGS * Math.max(0, Math.floor(((2 * Math.PI) / LEGS - legAngle) / angle));
};

/** Coals in so many rings, the second touching inside the first and so on. @source ringMethod */
export const coalsInRings = (wish: RingWish, rings: number): number => {
  const { coalWidth = CHART_COAL_WIDTH } = wish;
  let coals = 0;
  let left = rings;
  for (let outerRadius = wish.outerRadius; left > 0 && outerRadius > 0; outerRadius -= coalWidth) {
    coals += Math.min(1, left) * touchingRing({ outerRadius, coalWidth });
    left -= 1;
  }
  return coals;
};

/** The other way round, to a quarter of a ring; `ring` counts one ring (legs or no legs). */
export const ringsOf = (
  wish: RingWish,
  pieces: number,
  ring: (wish: RingWish) => number = touchingRing,
): number => {
  const { coalWidth = CHART_COAL_WIDTH } = wish;
  let rings = 0;
  let left = pieces;
  let outerRadius = wish.outerRadius;
  for (; left > 0 && ring({ outerRadius, coalWidth }) > 0; outerRadius -= coalWidth) {
    rings += Math.min(1, left / ring({ outerRadius, coalWidth }));
    left -= ring({ outerRadius, coalWidth });
  }
  return Math.round(4 * rings) / 4;
};

/** What fits where. */
export interface Room {
  readonly lidRing: number;
  readonly lidAll: number;
  /** One ring under the rim of the floor, the legs left clear. */
  readonly floorRing: number;
  /** A second ring touching inside it; 0 where it would lie under the middle. */
  readonly floorSecondRing: number;
  readonly floorAll: number;
}

export const roomFor = (
  body: OvenBody,
  nominalDiameter: number,
  width: number = CHART_COAL_WIDTH,
): Room => {
  const perArea = SPREAD_PACKING / width ** 2;
  const under = { outerRadius: body.floorDiameter / 2, coalWidth: width };
  const inner = { ...under, outerRadius: under.outerRadius - width };
  const lidRing = touchingRing({ outerRadius: nominalDiameter / 2, coalWidth: width });
  const floorRing = ringUnderFloor(under);
  return {
    lidRing,
    lidAll: Math.max(lidRing, Math.floor(perArea * body.mouthArea)),
    floorRing,
    floorSecondRing: inner.outerRadius - width >= EMPTY_MIDDLE_RADIUS ? touchingRing(inner) : 0,
    floorAll: Math.max(floorRing, Math.floor(perArea * body.floorArea) - LEGS),
  };
};
