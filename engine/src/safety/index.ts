// What safety/ offers.

export {
  type AllergenClasses,
  allergyMeant,
  classesOfAllergen,
  EU_FOURTEEN,
  US_NINE,
} from './allergen-classes.ts';
export { campSafety } from './camp-safety.ts';
export type { CampSafety, DishSafety, SafeCore } from './care.ts';
export { type SafetyCode, safetyCodes } from './codes.ts';
export {
  ASH_BAG_HOURS,
  ASH_CAN_METRES,
  ASH_LIVE_DAYS,
  coolMinutes,
  hotWaterLimit,
  TOUCH_LIMIT,
} from './cool-down.ts';
export { COLD_HOLD, dishSafety, HOT_HOLD } from './dish-safety.ts';
export { type DrinkingDose, drinkingDose } from './drinking-water.ts';
export {
  CLEAR_SPACE,
  FIRE_PAN,
  FIRE_STAGES,
  type FireHour,
  type FireLeave,
  fireHours,
  stageOf,
} from './fire-rules.ts';
export { type FoodCheck, type FoodTimes, foodClock } from './food-clock.ts';
export { type FoodLimits, foodLimits, outLimitIn } from './food-limits.ts';
export { type Cooled, type CoreRun, cooledIn, coreRun, minutesOut } from './food-run.ts';
export {
  type CoreReading,
  holdMinutesFor,
  type Lethality,
  type LethalityModel,
  lethalityOf,
  lethalRate,
  SALMONELLA_PATTY,
} from './lethality.ts';
export { heldSeconds } from './low-hold.ts';
export { type NoFireDish, type NoFireWay, noFireMenu } from './no-fire.ts';
export { type FoodClass, foodClasses, safeCoreOf } from './safe-core.ts';
export { type DishApart, separationPlan } from './separation.ts';
export {
  CLEAN_UP_PPM,
  HAND_WASH,
  NO_RINSE_PPM,
  sanitisingBucket,
  THREE_BUCKETS,
  USUAL_PPM,
} from './wash-line.ts';
export { bleachDose, bleachStrength, boilMinutes, SANITISING_PPM } from './water.ts';
