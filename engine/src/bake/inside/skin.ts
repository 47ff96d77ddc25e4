// What crosses a face in one step: heat by touch, air and shine, steam off a skin that is still wet.
// Source: textbook laws; the likeness of heat and steam in air (lewis1922, from memory).

import {
  BROWNING_ENERGY,
  BROWNING_RATE,
  GAS,
  STEAM_GAS,
  STEFAN_BOLTZMANN,
  WATER_JOULES,
  ZERO_KELVIN,
} from './constants.ts';
import { type InsidePhysics, rowAt, waterActivity } from './physics.ts';
import type { FaceLaw, FaceState, Inside } from './state.ts';

/** The faces as straight lines of their slices' temperatures, about their skins as they are. */
export function drawFaceLaws(inside: Inside, seconds: number): void {
  const { slices, work, bottom, top } = inside;
  drawLaw(inside, { face: bottom, law: work.bottom, slice: 0, edge: 0, half: 0 }, seconds);
  const last = slices.count - 1;
  drawLaw(inside, { face: top, law: work.top, slice: last, edge: last + 1, half: 1 }, seconds);
}

interface Side {
  readonly face: FaceState;
  readonly law: FaceLaw;
  readonly slice: number;
  readonly edge: number;
  readonly half: number;
}

const LEAST = 1e-12; // no face in the middle of a ball: nothing crosses it

function drawLaw(inside: Inside, side: Side, seconds: number): void {
  const { face, law } = side;
  const { now, kelvin: skin } = face;
  const area = inside.work.area[side.edge]!;
  // e s (S4 - T4) about the skin as it is: its slope is 4 e s T3.
  const shine = now.emissivity * STEFAN_BOLTZMANN;
  const cube = skin * skin * skin;
  law.half = area * inside.work.half[side.half]!;
  const touch = touchOf(face, seconds);
  const touched = touch === now.contact ? now.contactKelvin : ironPull(face, seconds);
  law.heatWhole = area * (touch + now.film + 4 * shine * cube);
  law.heatPull =
    area *
    (touch * touched + now.film * now.airKelvin + shine * (now.shiningFourth + 3 * cube * skin));
  law.dryingAt = skin;
  law.drying = 0;
  law.dryingSlope = 0;
  law.latentJoules = 0;
  if (now.isOpen) drawDrying(inside, side, area, seconds);
  law.pull = law.heatPull - law.latentJoules * (law.drying - law.dryingSlope * skin);
  law.whole = Math.max(LEAST, law.half + law.heatWhole + law.latentJoules * law.dryingSlope);
  law.level = (law.half * law.pull) / law.whole;
  law.slope = law.half - (law.half * law.half) / law.whole;
}

/**
 * Iron that gives way, eliminated: with c joules, feed f and contact h over a step s it ends at
 * (c/s T + f F + h skin)/(c/s + f + h), so the skin meets h (1 - h/(c/s + f + h)) towards
 * (c/s T + f F)/(c/s + f).
 */
function touchOf({ now }: FaceState, seconds: number): number {
  if (now.ironJoules === 0) return now.contact;
  return now.contact * (1 - now.contact / (now.ironJoules / seconds + now.ironFeed + now.contact));
}

function ironPull({ now, ironKelvin }: FaceState, seconds: number): number {
  const held = now.ironJoules / seconds;
  const iron = ironKelvin ?? now.contactKelvin;
  return (held * iron + now.ironFeed * now.contactKelvin) / (held + now.ironFeed);
}

function ironAfter(face: FaceState, seconds: number): number {
  const { now, kelvin } = face;
  const loose = now.ironJoules / seconds + now.ironFeed;
  return (loose * ironPull(face, seconds) + now.contact * kelvin) / (loose + now.contact);
}

/** Heat of a cubic metre of air at the boil [J/(m3 K)]: what a film of heat carries as steam. */
const AIR_JOULES = 1000;
/** One step takes at most this share of the outermost slice's water. */
const MOST_DRIED = 0.5;

/** Steam off a skin that does not boil yet; nothing settles on a cold one. */
function drawDrying(inside: Inside, { face, law, slice }: Side, area: number, seconds: number) {
  const { slices, physics, tuning } = inside;
  const skin = face.kelvin;
  const water = slices.water[slice]!;
  const activity = waterActivity(skin, water);
  const free = rowAt(physics.vapour, skin);
  const over = activity * free - face.now.steamShare * physics.pressurePascals;
  if (over <= 0 || physics.boilKelvin <= skin) return;
  const passage = (area * tuning.skinDrying * face.now.film) / AIR_JOULES / (STEAM_GAS * skin);
  const most = (MOST_DRIED * slices.dry[slice]! * water) / seconds;
  law.latentJoules = latentAt(physics, skin);
  law.drying = Math.min(most, passage * over);
  if (law.drying < most)
    law.dryingSlope = passage * activity * (rowAt(physics.vapour, skin + 1) - free);
}

/** What steam takes off a skin: all that it carries less what its water had. */
const latentAt = (physics: InsidePhysics, kelvin: number) =>
  physics.steamJoules - WATER_JOULES * (kelvin - ZERO_KELVIN);

/** What the step brought to both skins: temperature, heat, colour, steam. */
export function takeFaces({ slices, work, bottom, top }: Inside, seconds: number): void {
  takeFace(bottom, work.bottom, work.kelvin[0]!, seconds);
  takeFace(top, work.top, work.kelvin[slices.count - 1]!, seconds);
}

function takeFace(face: FaceState, law: FaceLaw, slice: number, seconds: number): void {
  if (law.half === 0) return;
  const skin = (law.half * slice + law.pull) / law.whole;
  face.watts = law.heatPull - law.heatWhole * skin;
  face.joules += face.watts * seconds;
  law.drying = Math.max(0, law.drying + law.dryingSlope * (skin - law.dryingAt));
  const mean = (face.kelvin + skin) / 2;
  face.browning += browningRate(mean) * seconds;
  face.kelvin = skin;
  if (face.now.ironJoules > 0) face.ironKelvin = ironAfter(face, seconds);
}

/** Rate at which a skin browns [1/s] (zanoni1995). */
export const browningRate = (kelvin: number) =>
  BROWNING_RATE * Math.exp(-BROWNING_ENERGY / (GAS * kelvin));
