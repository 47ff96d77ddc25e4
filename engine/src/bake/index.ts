// What bake/ offers, in the order of the job.

export { isPot } from '../menu/heat-kind.ts';
export { bakeFor } from './bake-for.ts';
export type { BakePlan, DoneSign, DoneTarget } from './bake-plan.ts';
export type { BakeRequest } from './bake-request.ts';
export { type BakeCode, bakeCodes } from './codes.ts';
export { doneTargetFor } from './done-target.ts';
export * from './handling/index.ts';
export { heatWishFor, wantedOvenFor, wantsHotOven } from './heat-wish.ts';
export { bakeJudge } from './judge.ts';
export { isBaked, isBread } from './kinds.ts';
export { loadFor, steamGramsOf } from './load-in-oven.ts';
export { boilMinuteOf, minutesToBoil } from './pot-minutes.ts';
export { type BakedAlong, type UsualLooks, usualLooks, withUsualLooks } from './usual-looks.ts';
