// The conductor: the only file that sees every stage of the day. It runs them in the order of the job and
// hands a later stage's answer to an earlier one as an argument. No physics and no words here.

import type { BakePlan } from './bake/bake-plan.ts';
import {
  type BakeRequest,
  bakeFor,
  bakeJudge,
  heatWishFor,
  isBread,
  loadFor,
} from './bake/index.ts';
import type { Air, Camp, CampOven, Pantry } from './camp/camp.ts';
import { airAt, campTrouble, weatherAt } from './camp/index.ts';
import type { CoalPlan, CoalRequest } from './coals/coal-plan.ts';
import {
  ashOverMinutes,
  type CoalDraft,
  coalLifeMinutes,
  conditionsOf,
  draftCoals,
  ironAfter,
  layCoals,
} from './coals/index.ts';
import type { Formula } from './formula/formula.ts';
import { dishLeavening, doughTrouble, formulaFor } from './formula/index.ts';
import { type LikeLoads, plannedOnce } from './like-loads.ts';
import type { Assumption, DishPlan, LoadPlan, MealDay } from './meal.ts';
import {
  inOvenOf,
  menuTrouble,
  type OvenShares,
  type otherShares,
  portionsFor,
  shareOvens,
} from './menu/index.ts';
import type { DishFit, DishPortions, OvenLoad } from './menu/load.ts';
import type { Menu, MenuDish } from './menu/menu.ts';
import type { Recipe } from './menu/recipe.ts';
import type { OrRefusal, Refusal } from './notice/notice.ts';
import { isRefusal, refusal } from './notice/notice.ts';
import type { ClockMinutes, Kelvin, Minutes } from './quantity/unit.ts';
import { clockMinutes, minutes } from './quantity/unit.ts';
import type { DishSafety } from './safety/care.ts';
import { campSafety, dishSafety } from './safety/index.ts';
import type { DaySheet, DishWork, TimetableRequest } from './timetable/day-sheet.ts';
import { type DayJudge, firstSheet, USUAL_IN_HAND } from './timetable/index.ts';

export type Stage =
  | 'camp'
  | 'menu'
  | 'formula'
  | 'coals'
  | 'bake'
  | 'safety'
  | 'timetable'
  | 'provisions';

export interface DayOptions {
  /** Nothing may start before this; undefined while planning at the kitchen table. */
  readonly now?: ClockMinutes;
  /** Defaults that were filled in for the cook, carried through to the sheets. */
  readonly assumed?: readonly Assumption[];
  /**
   * 'settled', the usual: every bread tries several layouts of its coals. 'first': by charts and the
   * usual split, for a screen that can not wait; such coals say so.
   */
  readonly answer?: 'first' | 'settled';
  /**
   * Other sharings of the ovens for a late meal, and what judges its day. Left out by a first screen of
   * one dish in one oven, which has no other sharing and shows no doubt.
   */
  readonly further?: Further;
  /** Told when a stage begins; for progress and for the benchmark. */
  readonly onStage?: (stage: Stage) => void;
}

export interface Further {
  readonly otherShares: typeof otherShares;
  readonly judge: DayJudge;
}

interface Wish {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly portions: DishPortions;
}

/**
 * A meal from camp and menu: every stage in order but the provisions, each dish planned or refused by name.
 *
 * @param camp     place, weather, mouths, hands, ovens, fuel
 * @param menu     dishes and recipes
 * @returns        always a plan; what could not be planned stands in `refusals`, nothing is dropped
 */
export function planDay(camp: Camp, menu: Menu, options: DayOptions = {}): MealDay {
  const stage = options.onStage ?? (() => {});
  stage('camp');
  const campWord = campTrouble(camp);
  stage('menu');
  const menuWord = menuTrouble(menu, camp);
  const wishes = wishesOf(camp, menu);
  const shared = shareOvens({ dishes: wishes, camp });
  stage('safety');
  const safety = campSafety({ camp, menu });
  const isFireAllowed = safety.fire !== 'forbidden';
  const answer = options.answer ?? 'settled';
  const likes: LikeLoads = new Map();
  const { further } = options;
  const wish = { camp, wishes, isFireAllowed, stage, answer, likes, further };
  const day = onTimeIfPossible(wish, shared, options.now);
  return {
    camp,
    menu,
    dishes: day.dishes,
    daySheet: day.daySheet,
    safety,
    notices: [...campWord.notices, ...menuWord.notices],
    refusals: uniqueRefusals([...campWord.refusals, ...menuWord.refusals, ...day.refusals]),
    assumed: options.assumed ?? [],
  };
}

/** A meal with its ovens shared out in one way. */
interface SharedDay {
  readonly dishes: readonly DishPlan[];
  readonly daySheet: DaySheet;
  readonly refusals: readonly Refusal[];
}

/**
 * The meal with its ovens shared out as we like best, or, where that is late, in the first other way
 * that is on time; where none is, in the way that is least late.
 */
function onTimeIfPossible(
  wish: Omit<DishesWish, 'fits'>,
  shared: OvenShares,
  now: ClockMinutes | undefined,
): SharedDay {
  let best = sharedDay(wish, shared, now);
  if (best.daySheet.status === 'planned') return best;
  const others = wish.further?.otherShares({ dishes: wish.wishes, camp: wish.camp }, shared) ?? [];
  for (const other of others) {
    wish.stage('menu');
    const next = sharedDay(wish, other, now);
    if (troubleOf(next) < troubleOf(best)) best = next;
    if (best.daySheet.status === 'planned') return best;
  }
  return best;
}

/** Dishes that come to nothing weigh most, then the minutes that the others are late. */
const troubleOf = ({ daySheet, refusals }: SharedDay): number => {
  const served = daySheet.servings.reduce((sum, { lateBy }) => sum + lateBy, 0);
  const unplanned = daySheet.notices.filter(({ code }) => code === 'TIMETABLE_DISH_UNPLANNED');
  return UNSERVED_MINUTES * (refusals.length + unplanned.length) + served;
};

/** A dish that is not served at all counts as so late. */
const UNSERVED_MINUTES = 24 * 60;

function sharedDay(
  wish: Omit<DishesWish, 'fits'>,
  shared: OvenShares,
  now: ClockMinutes | undefined,
): SharedDay {
  const outcomes = plannedDishes({ ...wish, fits: shared.fits });
  const dishes = outcomes.filter((outcome): outcome is DishPlan => !isRefusal(outcome));
  wish.stage('timetable');
  const request = timetableRequestOf({ camp: wish.camp, dishes }, now);
  const judge = wish.further?.judge;
  const daySheet = firstSheet(request, judge === undefined ? {} : { judge });
  return { dishes, daySheet, refusals: [...shared.refusals, ...outcomes.filter(isRefusal)] };
}

/** Dishes with a recipe; one without is named by `menuTrouble`. */
function wishesOf(camp: Camp, menu: Menu): readonly Wish[] {
  return menu.dishes.flatMap((dish) => {
    const recipe = menu.recipes.find((candidate) => candidate.id === dish.recipe);
    return recipe ? [{ dish, recipe, portions: portionsFor(dish, recipe, camp) }] : [];
  });
}

interface DishesWish {
  readonly camp: Camp;
  readonly wishes: readonly Wish[];
  readonly fits: ReadonlyMap<string, DishFit>;
  readonly isFireAllowed: boolean;
  readonly stage: (stage: Stage) => void;
  readonly answer: 'first' | 'settled';
  readonly likes: LikeLoads;
  readonly further: Further | undefined;
}

/** Dishes in the order of serving, so that an oven used again knows what it held before. */
function plannedDishes(wish: DishesWish): readonly OrRefusal<DishPlan>[] {
  const { camp, wishes, fits } = wish;
  const ovens: OvenHistory = new Map();
  const inServingOrder = [...wishes].sort((one, other) => one.dish.serveAt - other.dish.serveAt);
  const planned = new Map<string, OrRefusal<DishPlan>>();
  for (const each of inServingOrder) {
    const needsFire = each.recipe.method !== 'none';
    const fit = fits.get(each.dish.id);
    if (needsFire && !wish.isFireAllowed) planned.set(each.dish.id, fireForbidden(camp, each.dish));
    else if (!needsFire || fit)
      planned.set(each.dish.id, planDish({ ...wish, ...each, fit, ovens }));
  }
  return wishes.flatMap((each) => planned.get(each.dish.id) ?? []);
}

const fireForbidden = (camp: Camp, dish: MenuDish): Refusal =>
  refusal(
    'SAFETY_FIRE_FORBIDDEN',
    ['place.restriction', `menu.${dish.id}`],
    { dish: dish.id },
    { restriction: camp.restriction },
  );

interface DishWish extends Wish {
  readonly camp: Camp;
  readonly fit: DishFit | undefined;
  readonly ovens: OvenHistory;
  readonly stage: (stage: Stage) => void;
  readonly answer: 'first' | 'settled';
  readonly likes: LikeLoads;
}

function planDish(wish: DishWish): OrRefusal<DishPlan> {
  const { camp, dish, recipe, portions, fit, stage, ovens, likes } = wish;
  stage('formula');
  const trouble = breadTrouble(recipe, dish);
  if (trouble !== undefined) return trouble;
  const airThen = airAt(camp, clockMinutes(dish.serveAt - LEAD_BEFORE_SERVING), {
    screened: false,
  });
  const { formula, leavening } = leavened(
    wish,
    formulaFor({
      dish,
      recipe,
      factor: portions.factor,
      elevation: camp.place.elevation,
      air: airThen.temperature,
    }),
  );
  stage('safety');
  const safety = dishSafety({ dish, recipe, formula, camp });
  const loads: LoadPlan[] = [];
  for (const load of fit?.loads ?? []) {
    const oven = camp.ovens.find((candidate) => candidate.id === load.oven);
    if (!oven) continue;
    const like = { dish: dish.id, load, oven, before: ovens.get(oven.id) };
    const plan = () => planLoad({ ...wish, load, oven, formula, safety });
    const outcome = plannedOnce(likes, like, plan);
    if (isRefusal(outcome)) return { ...outcome, about: { ...outcome.about, dish: dish.id } };
    rememberOven(ovens, { oven: load.oven, dish, coals: outcome.coals });
    loads.push(outcome);
  }
  const notices = [
    ...portions.notices,
    ...(fit?.notices ?? []),
    ...formula.notices,
    ...leavening.notices,
  ];
  return { dish, recipe, portions, formula, leavening, loads, safety, notices };
}

/** A bread without flour, or wetter than any batter: no coals are laid for it. */
function breadTrouble(recipe: Recipe, { id }: MenuDish): Refusal | undefined {
  if (!isBread(recipe) || recipe.ingredients.length === 0) return undefined;
  const lines = recipe.ingredients.map((ingredient) => ({ ingredient, grams: ingredient.grams }));
  const trouble = doughTrouble(lines);
  return trouble && { ...trouble, about: { ...trouble.about, dish: id, recipe: recipe.id } };
}

const powderOf = ({ powderFizz, powderOpenedMonths }: Pantry) => ({
  ...(powderFizz === undefined ? {} : { fizz: powderFizz }),
  ...(powderOpenedMonths === undefined ? {} : { openedMonths: powderOpenedMonths }),
});

/** The rise along the air of its day takes the place of the one in still air. */
function leavened({ camp, dish, recipe }: DishWish, formula: Formula) {
  const leavening = dishLeavening({
    formula,
    recipe,
    elevation: camp.place.elevation,
    serveAt: dish.serveAt,
    airAt: (at) => airAt(camp, clockMinutes(at), { screened: false }).temperature,
    ...(camp.pantry === undefined ? {} : { powder: powderOf(camp.pantry) }),
  });
  const rise = leavening.rise?.estimate;
  return { leavening, formula: rise === undefined ? formula : { ...formula, rise } };
}

/** Air for dough and fire is read this long before serving, until the timetable knows better. */
const LEAD_BEFORE_SERVING = 90;

interface LoadWish extends DishWish {
  readonly load: OvenLoad;
  readonly oven: CampOven;
  readonly formula: Formula;
  readonly safety: DishSafety;
}

/**
 * Coals and bake settle each other: the bake sets how long the coals must hold, the curve they give
 * sets how long the bake takes. Drafts of the coals, a quarter of the work, go round until the two
 * agree within three minutes; a bread also judges the coals: where its answer is to be settled, the
 * first draft tries several layouts on it and keeps the best. Then the coals are laid in full: at once
 * where a draft has agreed, else behind further drafts for the stay that the bake turned out to need.
 */
function planLoad(wish: LoadWish): OrRefusal<LoadPlan> {
  const { dish, load, stage } = wish;
  stage('bake');
  const bakeIn = bakeAsked(wish);
  let air = airOver(wish, minutes(30));
  let bake = bakeIn(air, undefined, true);
  let stay = dish.pins.bakeMinutes ?? bake.minutes;
  let chosen: CoalDraft['counts'];
  let isAgreed = dish.pins.bakeMinutes !== undefined;
  const isJudged = wish.answer === 'settled';
  const rounds = isJudged ? MOST_DRAFTS : FIRST_DRAFTS;
  for (let round = 0; round < rounds; round += 1) {
    if (dish.pins.bakeMinutes !== undefined && !(isJudged && round === 0)) break;
    air = airOver(wish, stay);
    stage('coals');
    const judge = isJudged && round < JUDGED_DRAFTS ? bakeIn.judge(air, bake) : undefined;
    const draft = draftCoals(coalRequest({ ...wish, air, stay, bake, chosen, judge }));
    if (isRefusal(draft)) return draft;
    if (judge !== undefined) chosen = draft.counts;
    stage('bake');
    bake = bakeIn(air, draft, true);
    isAgreed = Math.abs(bake.minutes - stay) <= CLOSE_ENOUGH_MINUTES;
    stay = dish.pins.bakeMinutes ?? bake.minutes;
    if (isAgreed && (judge === undefined || JUDGED_DRAFTS <= round + 1)) break;
  }
  let tendedFor: Minutes | undefined;
  let coals: CoalPlan | undefined;
  for (let round = 0; round < MOST_LAYINGS; round += 1) {
    air = airOver(wish, stay);
    stage('coals');
    const request = coalRequest({ ...wish, air, stay, bake, chosen, tendedFor });
    const inFull = isAgreed || round === MOST_LAYINGS - 1;
    const laid = inFull ? layCoals(request) : draftCoals(request);
    if (isRefusal(laid)) return laid;
    stage('bake');
    bake = bakeIn(air, laid, !inFull);
    if ('reckoning' in laid) coals = laid;
    isAgreed =
      dish.pins.bakeMinutes !== undefined || Math.abs(bake.minutes - stay) <= CLOSE_ENOUGH_MINUTES;
    if (isAgreed && inFull) break;
    if (isAgreed) continue;
    // Coals added for a long bake may shorten it, and without them it is long again: they are kept.
    if (bake.minutes < stay) tendedFor = minutes(Math.max(stay, tendedFor ?? 0));
    // Half-way once it goes to and fro.
    stay = round < 1 ? bake.minutes : minutes((stay + bake.minutes) / 2);
  }
  if (coals === undefined) throw new RangeError('coals are laid at least once');
  return { load, air, coals, bake };
}

const MOST_DRAFTS = 3;
/** Judged as it takes heat in a still oven, then once more as it does over the coals that were chosen. */
const JUDGED_DRAFTS = 2;
/** Drafts until the bake along their curve agrees with the stay that they were laid for, then in full. */
const MOST_LAYINGS = 6;
/** A first answer is a quick one. */
const FIRST_DRAFTS = 1;
const CLOSE_ENOUGH_MINUTES = 3;

/** The air at the oven in the middle of a bake of these minutes. */
const airOver = (wish: LoadWish, stay: Minutes): Air =>
  airAt(wish.camp, midOf(wish, stay), { screened: wish.camp.gear.windScreens > 0 });

const midOf = ({ dish, recipe }: LoadWish, stay: Minutes): ClockMinutes =>
  clockMinutes(dish.serveAt - recipe.target.rest - stay / 2);

/** The bake of this load, in still wanted heat or along a curve; and as the judge of its coals. */
function bakeAsked({ camp, dish, load, oven, recipe, formula, safety }: LoadWish) {
  const least = safety.least?.core;
  const pinned = dish.pins.bakeMinutes;
  const asked = (air: Air): BakeRequest => ({
    load,
    recipe,
    formula,
    air,
    wanted: heatWishFor({ recipe, load, minutes: minutes(30), air }).wanted,
    hasThermometer: camp.gear.thermometer,
    ovenDiameter: oven.diameter,
    ...(least === undefined ? {} : { leastCore: least }),
    ...(pinned === undefined ? {} : { pinnedMinutes: pinned }),
  });
  const baked = (air: Air, coals?: CoalDraft, isRough = false): BakePlan =>
    bakeFor({
      ...asked(air),
      ...(isRough ? { isRough } : {}),
      ...(coals === undefined ? {} : alongCoals(coals)),
    });
  return Object.assign(baked, { judge: (air: Air, bake: BakePlan) => bakeJudge(asked(air), bake) });
}

const alongCoals = ({ curve, loadInMinute, factorRuns }: CoalDraft) => ({
  curve,
  loadInMinute,
  ...(factorRuns === undefined ? {} : { factorRuns }),
});

/** What an oven held last: how hot its iron was, and when. */
type OvenHistory = Map<string, { readonly outAt: ClockMinutes; readonly iron: Kelvin }>;

interface CoalWish extends LoadWish {
  readonly air: Air;
  readonly stay: Minutes;
  /** The bake as far as it is known: how the load takes heat. */
  readonly bake: BakePlan;
  readonly chosen?: CoalDraft['counts'];
  readonly judge?: CoalRequest['judge'];
  readonly tendedFor?: Minutes | undefined;
}

function coalRequest(wish: CoalWish) {
  const { camp, dish, recipe, load, oven, air, stay, ovens } = wish;
  const heat = heatWishFor({ recipe, load, minutes: stay, air, preheat: isHotAsSaid(wish) });
  const before = ovens.get(oven.id);
  const gap = before
    ? Math.max(OVEN_CHANGE_MINUTES, dish.serveAt - recipe.target.rest - stay - before.outAt)
    : 0;
  return {
    loadId: load.id,
    oven,
    air,
    place: camp.place,
    screened: camp.gear.windScreens > 0,
    fuel: camp.fuel,
    wish: wish.tendedFor === undefined ? heat : { ...heat, tendedFor: wish.tendedFor },
    ...loadsAsked(wish),
    ...(wish.chosen === undefined ? {} : { chosen: wish.chosen }),
    ...(wish.judge === undefined ? {} : { judge: wish.judge }),
    ironAtStart: before
      ? ironAfter({ iron: before.iron, air: air.temperature, minutes: minutes(gap) })
      : air.temperature,
    conditions: conditionsOf({
      place: camp.place,
      oven,
      weather: weatherAt(camp, midOf(wish, stay)),
    }),
    pins: {
      ...(dish.pins.coalsAbove === undefined ? {} : { above: dish.pins.coalsAbove }),
      ...(dish.pins.coalsBelow === undefined ? {} : { below: dish.pins.coalsBelow }),
    },
  };
}

/** A bread as a chart counts on it, and as it takes heat in truth; anything else is one and the same. */
function loadsAsked({ load, recipe, formula, air, bake }: CoalWish) {
  const counted = loadFor({ load, recipe, formula, air });
  if (bake.taken === undefined) return { load: counted };
  const taking = loadFor({ load, recipe, formula, air, taken: bake.taken });
  return { load: taking, chartLoad: counted };
}

/** Into a hot oven, as cook or recipe say; undefined where they leave it to the kind of dish. */
function isHotAsSaid({ recipe, dish }: Wish): boolean | undefined {
  const { oven } = inOvenOf(recipe, dish);
  return oven === undefined ? undefined : oven === 'preheated';
}

/** Turning out, wiping and greasing an oven before its next dish. */
const OVEN_CHANGE_MINUTES = 10;

function rememberOven(
  ovens: OvenHistory,
  used: { readonly oven: string; readonly dish: MenuDish; readonly coals: CoalPlan },
): void {
  const last = used.coals.curve.at(-1);
  if (last) ovens.set(used.oven, { outAt: used.dish.serveAt, iron: last.wall });
}

/** What the timetable was asked; the checker takes it beside the sheet. */
export function timetableRequestOf(
  plan: Pick<MealDay, 'camp' | 'dishes'>,
  now?: ClockMinutes,
): TimetableRequest {
  const { camp, dishes } = plan;
  const served = dishes.map((each) => each.dish.serveAt);
  const around = served.length > 0 ? Math.min(...served) : 0;
  const air = airAt(camp, clockMinutes(around - LEAD_BEFORE_SERVING), { screened: false });
  return {
    camp,
    dishes: dishes.map(dishWork),
    ashOver: ashOverMinutes({ elevation: camp.place.elevation, wind: air.wind }),
    coalLife: coalLifeMinutes({ fuel: camp.fuel, wind: air.wind }),
    inHand: camp.inHand ?? USUAL_IN_HAND,
    ...(now === undefined ? {} : { notBefore: now }),
  };
}

function dishWork(plan: DishPlan): DishWork {
  const waits = [
    plan.recipe.target.canWait,
    plan.dish.mayWait ?? Number.POSITIVE_INFINITY,
    plan.safety.outLimit,
  ];
  return {
    dish: plan.dish,
    recipe: plan.recipe,
    loads: plan.loads,
    canWait: minutes(Math.min(...waits)),
    ...(plan.formula.rise === undefined ? {} : { rise: plan.formula.rise }),
  };
}

/** The same trouble said by two stages is said once. */
function uniqueRefusals(all: readonly Refusal[]): readonly Refusal[] {
  const seen = new Set<string>();
  return all.filter((each) => {
    const key = `${each.code} ${JSON.stringify(each.about)}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
