// What raises one dish on its day: gas, height, rise, water for the dough, starter, in one place.
// Sources: those of gas-report.ts, height-advice.ts, yeast/ and water-temperature.ts.

import { pressureAtElevation } from '../../camp/air.ts';
import { coldWaitOf } from '../../menu/cold-wait.ts';
import type { Recipe, StepKind } from '../../menu/recipe.ts';
import { type Notice, notice } from '../../notice/notice.ts';
import {
  type ClockMinutes,
  fromCelsius,
  grams,
  type Kelvin,
  kelvin,
  type Metres,
  minutes,
} from '../../quantity/unit.ts';
import { flourIn, isFlour } from '../dough.ts';
import type { Formula } from '../formula.ts';
import { type HeightCompared, heightCompared } from '../height-advice.ts';
import { MIXED_DOUGH } from '../rise.ts';
import { type DoughWater, doughWater, handFriction } from '../water-temperature.ts';
import { doughLiquid } from '../yeast/dough-liquid.ts';
import { type PlaceAt, steadily } from '../yeast/history.ts';
import { type RiseOption, type RisePlan, type RiseWish, risePlan } from '../yeast/rise-plan.ts';
import { type StarterDay, starterDays } from '../yeast/starter.ts';
import { isStarter } from '../yeast/work.ts';
import { type GasReport, gasReport } from './gas-report.ts';
import { type PowderKept, powderNotices } from './powder-notices.ts';

export interface DishLeavening {
  readonly gas?: GasReport;
  /** Published tables beside the law; absent low down and for a dish without leavening. */
  readonly height?: HeightCompared;
  readonly rise?: RisePlan;
  /** For the dough temperature that the rise counts on. */
  readonly water?: DoughWater;
  readonly starter?: readonly StarterDay[];
  readonly notices: readonly Notice[];
}

export interface LeaveningWish {
  readonly formula: Formula;
  readonly recipe: Recipe;
  readonly elevation: Metres;
  readonly serveAt: ClockMinutes;
  /** Air in the open by the camp's clock. */
  readonly airAt: (at: number) => Kelvin;
  readonly powder?: PowderKept;
  /** Where the dough stands from mixing on, if that is said rather than read off the day. */
  readonly stands?: DoughStands;
}

export interface DoughStands {
  readonly place: PlaceAt;
  readonly mixed?: Kelvin;
  readonly flour?: Kelvin;
  readonly tap?: Kelvin;
}

/**
 * Everything about the leavening of one batch.
 *
 * @notice FORMULA_RISE_STOPPED, FORMULA_WATER_CAPPED, FORMULA_SODA_LEFT, FORMULA_POWDER_*
 */
export function dishLeavening(wish: LeaveningWish): DishLeavening {
  const { formula, elevation, powder } = wish;
  if (!(0 < formula.flour)) return { notices: [] };
  const pressure = pressureAtElevation(elevation);
  const rise = yeastRise(wish);
  const gas = gasReport(formula.lines, {
    dough: wish.airAt(wish.serveAt - BAKE_MINUTES),
    pressure,
    ...(powder?.fizz === undefined ? {} : { fizz: powder.fizz }),
  });
  const height = heightOf(wish, gas !== undefined);
  const water = rise === undefined ? undefined : waterOf(wish, rise.mixAt);
  const starter = rise === undefined ? undefined : starterOf(wish, rise.mixAt);
  return {
    ...(gas === undefined ? {} : { gas }),
    ...(height === undefined ? {} : { height }),
    ...(rise === undefined ? {} : { rise: rise.plan }),
    ...(water === undefined ? {} : { water }),
    ...(starter === undefined ? {} : { starter }),
    notices: [
      ...riseNotices(formula, rise?.plan, water),
      ...(gas === undefined ? [] : powderNotices(formula, gas, powder)),
    ],
  };
}

/** From shaped dough into the oven to the table, as long as nobody knows better (judged). */
const BAKE_MINUTES = 75;
/** A short rise first; where that is too cold, one that has the whole day. */
const GUESSED_RISE_MINUTES = [120, 12 * 60];

interface DatedRise {
  readonly plan: RisePlan;
  readonly mixAt: number;
}

/** The rise depends on when it begins, and that on how long it is: two rounds settle it. */
function yeastRise(wish: LeaveningWish): DatedRise | undefined {
  if (wish.stands !== undefined) return standingRise(wish, wish.stands);
  if (wish.recipe.kind !== 'yeast-bread') return undefined;
  let found: DatedRise | undefined;
  for (const guess of GUESSED_RISE_MINUTES) {
    found = settled(wish, wish.serveAt - BAKE_MINUTES - guess) ?? found;
    if (found?.plan.estimate !== undefined) return found;
  }
  return found;
}

function settled(wish: LeaveningWish, guessed: number): DatedRise | undefined {
  let mixAt = guessed;
  let plan = riseFrom(wish, mixAt);
  for (let round = 0; round < 2 && plan?.estimate !== undefined; round += 1) {
    const { first, second } = plan.estimate;
    const waited = plan.cold === undefined || plan.cold.isFirstRise ? 0 : plan.cold.minutes;
    const earlier = wish.serveAt - BAKE_MINUTES - first - waited - second;
    const next = riseFrom(wish, earlier);
    if (next?.estimate === undefined) break;
    [mixAt, plan] = [earlier, next];
  }
  return plan === undefined ? undefined : { plan, mixAt };
}

function standingRise(wish: LeaveningWish, { place }: DoughStands) {
  const { formula, elevation } = wish;
  const plan = risePlan(formula.lines, {
    mixed: mixedDough(wish, 0),
    reach: reachOf(wish, 0),
    mass: formula.batch,
    place,
    elevation,
  });
  return plan === undefined ? undefined : { plan, mixAt: 0 };
}

function riseFrom(wish: LeaveningWish, mixAt: number) {
  const { formula, recipe, elevation, airAt } = wish;
  const open = (minute: number) => airAt(mixAt + minute);
  const cold = coldWaitOf(recipe);
  const kept = (kind: StepKind) => {
    const at = recipe.steps.find((step) => step.kind === kind && step.keptAt)?.keptAt;
    return at === undefined ? undefined : steadily(at);
  };
  return risePlan(formula.lines, {
    mixed: mixedDough(wish, mixAt),
    reach: reachOf(wish, mixAt),
    mass: formula.batch,
    place: kept('rise') ?? open,
    shapedPlace: kept('second-rise') ?? open,
    ...(cold === undefined ? {} : { cold }),
    elevation,
  });
}

function heightOf({ formula, recipe, elevation }: LeaveningWish, hasGas: boolean) {
  const hasYeast = formula.lines.some(({ ingredient }) => ingredient.part === 'yeast');
  if (!hasGas && !hasYeast) return undefined;
  const written = powderTeaspoonsForTwoCups(formula);
  const isYeast = recipe.kind === 'yeast-bread' && hasYeast;
  return heightCompared(elevation, {
    leavens: isYeast ? 'yeast' : 'powder',
    ...(written === undefined ? {} : { teaspoonsForTwoCups: written }),
  });
}

const TEASPOON_GRAMS = 4.6; // of powder, sr28 NDB 18369
const TWO_CUPS_GRAMS = 250; // sr28 NDB 20081

/** As the recipe wrote it, before any cut. */
function powderTeaspoonsForTwoCups({ lines, changes, flour }: Formula): number | undefined {
  const powder = lines
    .filter(({ ingredient }) => ingredient.part === 'powder')
    .reduce((sum, line) => {
      const was = changes.find(({ ingredient }) => ingredient === line.ingredient.name)?.was;
      return sum + (was ?? line.grams);
    }, 0);
  return 0 < powder ? (powder / TEASPOON_GRAMS / flour) * TWO_CUPS_GRAMS : undefined;
}

/** Flour, eggs and what is not warmed are as warm as the air they stood in. */
function waterOf(
  wish: LeaveningWish,
  mixAt: number,
  wanted: Kelvin = wantedDough(wish),
): DoughWater | undefined {
  const { formula, airAt, stands } = wish;
  const liquid = doughLiquid(formula.lines);
  const air = airAt(mixAt);
  const flourTemperature = stands?.flour ?? air;
  const { warmed, hasEgg, mass } = liquid;
  if (!(0 < mass)) {
    const dough = kelvin(flourTemperature + handFriction);
    return { water: flourTemperature, dough, limit: 'nothing to warm', warmed, hasEgg };
  }
  const found = doughWater({
    wanted,
    flour: grams(flourIn(formula.lines.filter(({ ingredient }) => isFlour(ingredient)))),
    flourTemperature,
    water: mass,
    liquidHeat: liquid.heat,
    restHeat: liquid.restHeat,
    hottest: liquid.hottest,
    iceMost: liquid.water,
    friction: handFriction,
    tap: stands?.tap ?? air,
  });
  return found === undefined ? undefined : { ...found, warmed, hasEgg };
}

/** As its writer keeps it in the first rise; a night in the cold begins as warm as any. */
function wantedDough({ recipe, stands }: LeaveningWish): Kelvin {
  if (stands !== undefined) return stands.mixed ?? MIXED_DOUGH;
  if (coldWaitOf(recipe)?.isFirstRise) return MIXED_DOUGH;
  return recipe.steps.find((step) => step.kind === 'rise' && step.keptAt)?.keptAt ?? MIXED_DOUGH;
}

/** The dough that comes of what can be warmed: not the wanted one where that is out of reach. */
const mixedDough = (wish: LeaveningWish, mixAt: number): Kelvin =>
  waterOf(wish, mixAt)?.dough ?? wantedDough(wish);

/** The coldest and the warmest dough that its liquid can make. */
function reachOf(wish: LeaveningWish, mixAt: number): RiseWish['reach'] {
  const [coldest, warmest] = BEYOND.map((wanted) => waterOf(wish, mixAt, wanted)?.dough);
  return coldest === undefined || warmest === undefined ? undefined : { coldest, warmest };
}

/** No dough is wished so cold or so hot: the answer is the end of what can be had. */
const BEYOND = [fromCelsius(-60), fromCelsius(90)];

function starterOf({ formula, airAt, stands }: LeaveningWish, mixAt: number) {
  const wanted = formula.lines
    .filter(({ ingredient }) => isStarter(ingredient))
    .reduce((sum, line) => sum + line.grams, 0);
  if (!(0 < wanted)) return undefined;
  const place: PlaceAt = (minute) => stands?.place(minute) ?? airAt(mixAt + minute);
  return starterDays(grams(wanted), { place });
}

function riseNotices(
  { dish, recipe }: Formula,
  plan: RisePlan | undefined,
  water: DoughWater | undefined,
): readonly Notice[] {
  const about = { dish, recipe };
  const stopped = plan !== undefined && plan.estimate === undefined;
  const isWritten = plan?.cold?.isFirstRise === true;
  const isLong = !isWritten && LONG_RISE_MINUTES < (plan?.estimate?.first ?? 0);
  return [
    ...(isLong
      ? [
          notice('FORMULA_RISE_LONG', 'doubt', about, {
            ...stoppedValues(plan!),
            firstMinutes: plan!.estimate!.first,
          }),
        ]
      : []),
    ...(stopped ? [notice('FORMULA_RISE_STOPPED', 'stop', about, stoppedValues(plan))] : []),
    ...(water?.limit === undefined
      ? []
      : [
          notice('FORMULA_WATER_CAPPED', 'doubt', about, {
            waterKelvin: water.water,
            doughKelvin: water.dough,
            limit: water.limit,
            warmed: (water.warmed ?? []).join(', '),
            egg: water.hasEgg ? 1 : 0,
          }),
        ]),
  ];
}

/** Longer than this nobody waits by the fire for one rise; ours. */
const LONG_RISE_MINUTES = 8 * 60;

/** How far it gets, and the nearest thing that works. */
export function stoppedValues({ done, along, options }: RisePlan) {
  const box = options.find((option): option is RiseOption => option.do === 'warm-box');
  return {
    placeKelvin: along.at(-1)?.place ?? MIXED_DOUGH,
    doneRatio: done,
    ...(box?.first === undefined || box.kelvin === undefined
      ? {}
      : { boxKelvin: box.kelvin, boxMinutes: minutes(box.first) }),
  };
}
