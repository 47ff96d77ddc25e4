// The coals of a meal, as later stages and the conductor use them.

export { bandOf } from './band.ts';
export { coalsCodes } from './codes.ts';
export { conditionsOf, type SiteConditions } from './conditions.ts';
export {
  type FactorBelief,
  type FactorBeliefs,
  type FactorName,
  factorNames,
  factors,
} from './factors.ts';
export type {
  FireState,
  LyingCoals,
} from './fire-state.ts';
export { judgeLayout, type LayoutJudgement, type LayoutQuestion } from './judge-layout.ts';
export { type CoalDraft, draftCoals, layCoals } from './lay-coals.ts';
export { ashOverMinutes, chimneyfuls, coalLifeMinutes } from './lighting.ts';
export { type FireLighting, fireLighting } from './lighting-batches.ts';
export { COAL_LOOK_WORDS, type CoalLook, coalLooks, litMinutesOfLook } from './looks.ts';
export { coalsLying, type LyingSet } from './lying.ts';
export {
  beliefAfter,
  type Expected,
  expectedAt,
  type Instrument,
  likelihood,
  type OvenBelief,
  type Reading,
  readingFrom,
  testModels,
} from './measurement.ts';
export { type Rescue, type RescueMove, rescue, type Symptom } from './rescue.ts';
export { ironAfter } from './reuse.ts';
export { simpleLoad } from './simple-load.ts';
export { isPotMethod } from './split.ts';
export { type StackPlan, type StackRequest, type StackSets, stackOvens } from './stack.ts';
export { laidUntilItBoils } from './until-it-boils.ts';
export {
  type AgedDoor,
  type AssumedAge,
  assumedAge,
  type FireMethod,
  fireMethods,
  USUAL_INSIDE_MINUTES,
  usualHeat,
  usualLaid,
  usualLitMinutes,
  usualLook,
  usualStay,
  wantedAtFire,
} from './usual-fire.ts';
export { usualLoad } from './usual-load.ts';
export { type WarmWithFew, warmWithFew } from './warm-few.ts';
export {
  type CoalsLeft,
  type Possibilities,
  type Possibility,
  whatCanIDoWith,
} from './with-these-coals.ts';
