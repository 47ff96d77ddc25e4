// How many coals lie on this lid and under this floor?
// Sources: ringMethod (what a ring is), briquetteSize (about 1.75 inch wide).
// Weak spot: the packing share of a full spread is ours.

import type { OvenBody } from './geometry.ts';

export const COAL_WIDTH = 0.0445; // m, 1.75 inch (briquetteSize; another page says 2)
const SPREAD_PACKING = 0.8; // share of the plate that coals in a full spread can stand on; ours
const LEGS = 3;

/** Coals in a touching ring whose outer edge lies on a circle of this radius. @source ringMethod */
export const touchingRing = (outerRadius: number): number => {
  const radius = outerRadius - COAL_WIDTH / 2;
  if (radius < COAL_WIDTH / 2) return 0;
  return Math.floor(Math.PI / Math.asin(COAL_WIDTH / 2 / radius));
};

/** Coals in so many rings, the second touching inside the first and so on. @source ringMethod */
export const coalsInRings = (outerRadius: number, rings: number): number => {
  let coals = 0;
  let left = rings;
  for (let radius = outerRadius; left > 0 && radius > 0; radius -= COAL_WIDTH) {
    coals += Math.min(1, left) * touchingRing(radius);
    left -= 1;
  }
  return coals;
};

/** The other way round, to a quarter of a ring. */
export const ringsOf = (outerRadius: number, pieces: number): number => {
  let rings = 0;
  let left = pieces;
  for (let radius = outerRadius; left > 0 && touchingRing(radius) > 0; radius -= COAL_WIDTH) {
    rings += Math.min(1, left / touchingRing(radius));
    left -= touchingRing(radius);
  }
  return Math.round(4 * rings) / 4;
};

/** What fits where. */
export interface Room {
  readonly lidRing: number;
  readonly lidAll: number;
  /** One ring under the rim of the floor, the legs left clear. */
  readonly floorRing: number;
  readonly floorAll: number;
}

export const roomFor = (body: OvenBody, nominalDiameter: number): Room => {
  const perArea = SPREAD_PACKING / COAL_WIDTH ** 2;
  const lidRing = touchingRing(nominalDiameter / 2);
  const floorRing = Math.max(0, touchingRing(body.floorDiameter / 2) - LEGS);
  return {
    lidRing,
    lidAll: Math.max(lidRing, Math.floor(perArea * body.mouthArea)),
    floorRing,
    floorAll: Math.max(floorRing, Math.floor(perArea * body.floorArea) - LEGS),
  };
};
