// Into the oven and out of it.

export { cutsFor } from './cuts-for.ts';
export { type EvenCuts, evenRoundCuts, evenSquares } from './even-cuts.ts';
export {
  type HandlingAsked,
  type HandlingStep,
  type HandlingWhen,
  type HandlingWork,
  handlingOf,
  handMinutes,
  lidHeatMinutes,
  stickingOf,
  type Tool,
  UNSTICK_MINUTES,
} from './handling.ts';
