// The coals of a meal, as later stages and the conductor use them.

export { bandOf } from './band.ts';
export { coalsCodes } from './codes.ts';
export {
  type FactorBelief,
  type FactorBeliefs,
  type FactorName,
  factorNames,
  factors,
} from './factors.ts';
export { type CoalDraft, draftCoals, layCoals } from './lay-coals.ts';
export { ashOverMinutes, chimneyfuls, coalLifeMinutes } from './lighting.ts';
export { ironAfter } from './reuse.ts';
export { simpleLoad } from './simple-load.ts';
