// The inside of a load: heat, water, starch and colour from going in to coming out.

export {
  bakeInside,
  type InsideCut,
  type InsideMoment,
  type InsideRun,
  type InsideWish,
  minuteReached,
} from './bake-inside.ts';
export type { Body, Shape } from './body.ts';
export { COLOUR_MARKS, type CrustColour, colourWord } from './colour.ts';
export { STARCH_SET } from './constants.ts';
export type { Face, FacesAt } from './face.ts';
export { type InsidePhysics, insidePhysics } from './physics.ts';
