// What a load meets while it is in: lid, wall, air and floor along the coals' curve, or still.
// Source: textbook radiation; the feed of the floor's iron is reckoned, see below.

import type { CurvePoint } from '../coals/coal-plan.ts';
import { contactFigures } from '../menu/in-oven.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Kelvin, Minutes } from '../quantity/unit.ts';
import type { Face, FacesAt } from './inside/index.ts';

export interface OvenAt {
  oven: number;
  lid: number;
  wall: number;
  floor: number;
}

export interface OvenCourse {
  /** Writes the oven as it is so many minutes after the load went in. */
  readonly at: (minute: number, into: OvenAt) => void;
  /** The floor is told as it would be without the load, and gives way to it. */
  readonly floorGives: boolean;
}

/** With most coals above, the lid's face is this much hotter than the inside: a judgement. */
const LID_OVER_OVEN_KELVIN = 50;

/** Along the coals' curve where there is one (its last point holds); else still, at the wanted heat. */
export function ovenCourse(asked: {
  readonly wanted: Kelvin;
  readonly curve?: readonly CurvePoint[];
  readonly loadInMinute?: Minutes;
}): OvenCourse {
  const { curve, wanted } = asked;
  if (curve === undefined || curve.length === 0) {
    const still = { oven: wanted, lid: wanted + LID_OVER_OVEN_KELVIN, wall: wanted, floor: wanted };
    return { at: (_, into) => Object.assign(into, still), floorGives: true };
  }
  const from = asked.loadInMinute ?? 0;
  let index = 0;
  const at = (minute: number, into: OvenAt) => {
    const then = from + minute;
    if (then < (curve[index]?.minute ?? 0)) index = 0;
    while (index < curve.length - 2 && curve[index + 1]!.minute <= then) index += 1;
    const before = curve[index]!;
    const after = curve[index + 1] ?? before;
    const span = after.minute - before.minute;
    const share = span > 0 ? Math.min(1, Math.max(0, (then - before.minute) / span)) : 0;
    into.oven = before.oven + (after.oven - before.oven) * share;
    into.lid = before.lid + (after.lid - before.lid) * share;
    into.wall = before.wall + (after.wall - before.wall) * share;
    into.floor = before.floor + (after.floor - before.floor) * share;
  };
  return { at, floorGives: false };
}

/** Air between a hotter lid and dough hardly stirs: less than the 10 of a kitchen oven, a judgement. */
const FILM = 5;
const EMISSIVITY = 0.9; // of dough and seasoned iron, common practice, no source
/** Steam's share of the air in a covered oven that bakes bread: a judgement; it only slows drying. */
const STEAM_SHARE = 0.5;
/** Of what a top sees, the lid; the rest is wall. Without the oven's size: a load that nearly fills it. */
const USUAL_LID_SHARE = 0.75;

/**
 * A floor of 5 mm of iron [J/(m2 K)], and what holds it at its own temperature [W/(m2 K)]: coals that
 * give more to cooler iron (4) and iron that leads from the wall (28, the wall sagging with it), of a
 * 12 inch oven in coals/network.ts (reckoned).
 */
const FLOOR_JOULES = 19_000;
const FLOOR_FEED = 32;

/** From the floor's iron into a load [W/(m2 K)]. */
export const touchOf = (load: Pick<OvenLoad, 'inOven'>) =>
  contactFigures(load.inOven?.contact ?? 'iron').conductance;

/** The faces of a load on this floor, under this lid. */
export function facesIn(
  course: OvenCourse,
  load: Pick<OvenLoad, 'inOven' | 'planArea' | 'headroom'>,
  ovenRadius?: number,
): FacesAt {
  const conductance = touchOf(load);
  const lidShare =
    ovenRadius === undefined
      ? USUAL_LID_SHARE
      : seenShare(Math.sqrt(load.planArea / Math.PI), ovenRadius, Math.max(0.005, load.headroom));
  const now: OvenAt = { oven: 0, lid: 0, wall: 0, floor: 0 };
  const faces: FacesAt = (seconds, bottom, top) => {
    course.at(seconds / 60, now);
    onFloor(bottom, now.floor, { conductance, gives: course.floorGives });
    underLid(top, now, lidShare);
  };
  return faces;
}

function onFloor(
  bottom: Face,
  floorKelvin: number,
  { conductance, gives }: { readonly conductance: number; readonly gives: boolean },
): void {
  bottom.contact = conductance;
  bottom.contactKelvin = floorKelvin;
  bottom.ironJoules = gives ? FLOOR_JOULES : 0;
  bottom.ironFeed = gives ? FLOOR_FEED : 0;
}

function underLid(top: Face, now: OvenAt, lidShare: number): void {
  top.film = FILM;
  top.airKelvin = now.oven;
  top.emissivity = EMISSIVITY;
  top.shiningFourth = lidShare * now.lid ** 4 + (1 - lidShare) * now.wall ** 4;
  top.steamShare = STEAM_SHARE;
  top.isOpen = true;
}

/** Share of what a small disc sees that is a larger one above it: coaxial discs (textbook, memory). */
function seenShare(radius: number, lidRadius: number, gap: number): number {
  const own = radius / gap;
  const other = lidRadius / gap;
  const sum = 1 + (1 + other ** 2) / own ** 2;
  return (sum - Math.sqrt(sum ** 2 - 4 * (other / own) ** 2)) / 2;
}
