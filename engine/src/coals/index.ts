// The coals of a meal, as later stages and the conductor use them.

export { coalsCodes } from './codes.ts';
export { type CoalDraft, draftCoals, layCoals } from './lay-coals.ts';
export { ashOverMinutes, chimneyfuls, coalLifeMinutes } from './lighting.ts';
export { ironAfter } from './reuse.ts';
export { simpleLoad } from './simple-load.ts';
