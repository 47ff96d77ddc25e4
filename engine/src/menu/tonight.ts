// One bread, one oven, tonight: three answers make a camp that every later stage can plan.
// Whatever the cook did not say has a usual value, and each of them is listed.

import type { Camp, CampOven, Fuel } from '../camp/camp.ts';
import { usualCamp, usualWeather } from '../camp/senses.ts';
import { campTrouble } from '../camp/trouble.ts';
import { isRefusal, type Notice, notice, type OrRefusal, refusal } from '../notice/notice.ts';
import { inUnit } from '../quantity/convert.ts';
import {
  type ClockMinutes,
  clockMinutes,
  degrees,
  grams,
  kelvin,
  metres,
  metresPerSecond,
  ratio,
} from '../quantity/unit.ts';
import { massToFill, wholeLot } from './fill-oven.ts';
import type { Lot } from './lots.ts';
import type { DishPins, MenuDish } from './menu.ts';
import { isKnownSize, nominalOven } from './nominal-oven.ts';
import { recipeMass } from './pieces.ts';
import { mouthsFedBy } from './portions.ts';
import { readyRecipeWithId } from './ready-recipes.ts';
import type { Recipe } from './recipe.ts';
import type { Assumption, Tonight, TonightAnswers } from './tonight-answers.ts';
import { isThicknessKept, tooThick } from './too-small.ts';
import { workMinutes } from './work-minutes.ts';

const HANDS_STAY_MINUTES = 180; // after serving: washing up and dousing; ours
const FIRE_AND_HANDS_MINUTES = 65; // fire, washing, greasing, turning with one pair of hands; ours
const HANDS_MOST = 12;
const MOST_HOURS = 48;
const MOST_MASS_GRAMS = 200_000; // ours, as in trouble.ts

/**
 * A camp with one dish and one oven, from the least a cook has to say.
 *
 * @refuses MENU_READY_RECIPE_UNKNOWN — no ready recipe of this name
 * @refuses MENU_OVEN_SIZE_UNKNOWN — outside 8 … 16 inches
 * @refuses MENU_AMOUNT_IMPOSSIBLE, MENU_AMOUNT_ABSURD — the amount asked for
 * @refuses MENU_TOO_THICK — the thickness asked for does not go under the lid
 * @refuses MENU_SERVE_PAST — to be served before now
 * @refuses CAMP_WIND_TOO_STRONG, CAMP_AIR_OUTSIDE_RANGE, … — a camp that nobody can cook in
 * @notice  MENU_THICKNESS_WITHOUT_EFFECT — the dish takes its own shape, or the amount decides
 * @notice  MENU_OVEN_BETWEEN_SIZES — the oven was reckoned between two sizes of the table
 */
export function campForTonight(answers: TonightAnswers): OrRefusal<Tonight> {
  const found = typeof answers.what === 'string' ? readyRecipeWithId(answers.what) : answers.what;
  if (found === undefined) {
    return refusal('MENU_READY_RECIPE_UNKNOWN', ['what'], {}, { wanted: String(answers.what) });
  }
  if (!isKnownSize(answers.oven.diameterMetres)) return sizeRefusal(answers);
  const recipe = restingAsSaid(withThickness(found, answers), answers);
  const oven = ovenOf(answers);
  const lot = wholeLot(recipe);
  const isThick = lot !== undefined && isThicknessKept(lot) && !isSpreadByAmount(lot, answers);
  const thick = isThick ? tooThick(lot, [oven]) : undefined;
  if (thick !== undefined) return thick;
  const portions = portionsOf(recipe, oven, answers);
  if (isRefusal(portions)) return portions;
  const serveAt = answers.when.serveAt ?? soonest(recipe, answers.now);
  if (serveAt < answers.now) return pastRefusal(recipe, serveAt, answers.now);
  const camp = { ...campOf(answers, { serveAt, portions }), ovens: [oven] };
  const impossible = campTrouble(camp).refusals[0];
  if (impossible !== undefined) return impossible;
  return {
    camp,
    menu: { dishes: [dishOf(recipe, { serveAt, portions }, answers)], recipes: [recipe] },
    assumed: assumedBy(answers, { oven, portions }),
    notices: [...sizeNotices(oven), ...(isThick ? [] : thicknessNotices(recipe, answers))],
  };
}

const sizeRefusal = ({ oven }: TonightAnswers) =>
  refusal(
    'MENU_OVEN_SIZE_UNKNOWN',
    ['oven.diameterMetres'],
    {},
    Number.isFinite(oven.diameterMetres) ? { diameterMetres: oven.diameterMetres } : {},
  );

const pastRefusal = (recipe: Recipe, serveAt: ClockMinutes, now: ClockMinutes) =>
  refusal(
    'MENU_SERVE_PAST',
    ['when.serveAt', 'now'],
    { dish: recipe.id },
    {
      serveAtClockMinutes: serveAt,
      nowClockMinutes: now,
    },
  );

function withThickness(recipe: Recipe, { amount }: TonightAnswers): Recipe {
  const wanted = amount?.thicknessMetres;
  return wanted === undefined || !(0 < wanted)
    ? recipe
    : { ...recipe, target: { ...recipe.target, thickness: metres(wanted) } };
}

/** What the cook says of it comes before what the recipe says. */
const restingAsSaid = (recipe: Recipe, { inOven }: TonightAnswers): Recipe =>
  inOven === undefined ? recipe : { ...recipe, inOven: { ...recipe.inOven, ...inOven } };

function ovenOf({ oven }: TonightAnswers): CampOven {
  const nominal = nominalOven(metres(oven.diameterMetres), oven.style);
  const { depth, floorDiameter, capacity, mass, lidMass, riser } = oven;
  return {
    ...nominal,
    ...(depth === undefined ? {} : { depth }),
    ...(floorDiameter === undefined ? {} : { floorDiameter }),
    ...(capacity === undefined ? {} : { capacity }),
    ...(mass === undefined ? {} : { mass }),
    ...(lidMass === undefined ? {} : { lidMass }),
    ...(riser === undefined ? {} : { riser }),
  };
}

/** Ordinary portions that are wanted, from whichever way the cook said the amount. */
function portionsOf(recipe: Recipe, oven: CampOven, answers: TonightAnswers): OrRefusal<number> {
  const { massGrams, flourGrams, portions, thicknessMetres } = answers.amount ?? {};
  const all = recipeMass(recipe);
  const flour = recipe.ingredients
    .filter((each) => each.part === 'flour' || each.part === 'meal')
    .reduce((sum, each) => sum + each.grams, 0);
  const perGram = recipe.portions / all;
  const wanted =
    (massGrams === undefined ? undefined : massGrams * perGram) ??
    (flourGrams === undefined ? undefined : (flourGrams / flour) * recipe.portions) ??
    portions ??
    answers.mouths ??
    usualPortions(oven, recipe, thicknessMetres !== undefined);
  const conflicts = ['amount', `recipes.${recipe.id}`];
  const about = { recipe: recipe.id };
  const isThick = thicknessMetres === undefined || 0 < thicknessMetres;
  if (!isThick || !(0 < wanted) || !Number.isFinite(wanted)) {
    return refusal('MENU_AMOUNT_IMPOSSIBLE', conflicts, about);
  }
  return MOST_MASS_GRAMS < wanted / perGram
    ? refusal('MENU_AMOUNT_ABSURD', conflicts, about, { portions: wanted })
    : wanted;
}

/** A batter thinner than this part of a full oven dries out before it browns; ours. */
const LEAST_FILL = 0.4;

/**
 * The recipe as it is written, unless the oven takes less or is lost under it; what is said to lie
 * so thick fills the floor. Whole portions: nobody is served two thirds of one.
 */
function usualPortions(oven: CampOven, recipe: Recipe, isThicknessSaid: boolean): number {
  const full = (massToFill(oven, recipe) / recipeMass(recipe)) * recipe.portions;
  if (isThicknessSaid || !Number.isFinite(full)) return full;
  const most = Math.max(1, Math.floor(full + ALMOST));
  const least = Math.min(most, Math.ceil(LEAST_FILL * full - ALMOST));
  return Math.min(most, Math.max(least, Math.round(recipe.portions)));
}

const ALMOST = 1e-6;

/**
 * Work and waiting in the recipe, and all that stands in none, rounded up to five minutes. A first
 * guess only: the timetable says how late it is, and the plan can be made again for that time.
 */
const soonest = (recipe: Recipe, now: ClockMinutes): ClockMinutes =>
  clockMinutes(
    5 * Math.ceil((now + FIRE_AND_HANDS_MINUTES + workMinutes(recipe) + recipe.target.rest) / 5),
  );

interface Wanted {
  readonly serveAt: ClockMinutes;
  readonly portions: number;
}

const dishOf = (recipe: Recipe, wanted: Wanted, answers: TonightAnswers): MenuDish => ({
  id: recipe.id,
  name: recipe.name,
  recipe: recipe.id,
  serveAt: wanted.serveAt,
  // Mouths that were said are followed; so are they by what nobody said, once the camp grows.
  ...(answers.mouths !== undefined && !isAmountSaid(answers) ? {} : { portions: wanted.portions }),
  ...(isAmountSaid(answers) ? {} : { portionsAssumed: true }),
  freeFrom: false,
  pins: pinsOf(answers),
});

const isAmountSaid = ({ amount }: TonightAnswers): boolean =>
  amount !== undefined && Object.values(amount).some((said) => said !== undefined);

const pinsOf = ({ pins, oven }: TonightAnswers): DishPins =>
  oven.startsHot === undefined ? (pins ?? {}) : { preheat: oven.startsHot, ...pins };

function campOf(answers: TonightAnswers, wanted: Wanted): Omit<Camp, 'ovens'> {
  return {
    id: 'tonight',
    title: 'Tonight',
    place: {
      name: 'Here',
      elevation: answers.elevation ?? usualCamp.elevation,
      ground: answers.ground ?? usualCamp.ground,
      hearth: answers.hearth ?? usualCamp.hearth,
      ...(answers.groundIs === undefined ? {} : { groundIs: answers.groundIs }),
    },
    date: answers.date,
    timeZone: answers.timeZone,
    weather: weatherOf(answers, wanted),
    mouths: [{ count: mouthsOf(answers, wanted.portions), appetite: 'ordinary' }],
    needs: [],
    hands: handsOf(answers, wanted),
    fuel: answers.fuel ?? usualFuel,
    gear: {
      chimneys: answers.chimneys ?? usualCamp.chimneys,
      chimneyfulCoals: usualCamp.chimneyfulCoals,
      lidStands: 1,
      tables: 1,
      windScreens: answers.windScreens ?? 0,
      thermometer: answers.thermometer ?? false,
      others: [],
    },
    restriction: 'unknown',
  };
}

/** The weather now, taken to hold until the hands leave: one row an hour. */
function weatherOf({ weather, now }: TonightAnswers, { serveAt }: Wanted): Camp['weather'] {
  const wind = metresPerSecond(weather?.windMetresPerSecond ?? usualWeather.wind);
  const hour = {
    air: kelvin(weather?.airKelvin ?? usualWeather.air),
    wind,
    gust: metresPerSecond(usualCamp.gustPerWind * wind),
    windFrom: degrees(weather?.windFromDegrees ?? usualWeather.windFrom),
    ...(weather?.rain === undefined ? {} : { rain: weather.rain }),
    ...(weather?.sun === undefined ? {} : { sun: ratio(weather.sun) }),
  };
  const until = serveAt + HANDS_STAY_MINUTES;
  const hours = Math.min(MOST_HOURS, Math.ceil((until - now) / 60));
  return Array.from({ length: hours + 1 }, (_, index) => ({
    at: clockMinutes(now + 60 * index),
    ...hour,
  }));
}

const mouthsOf = (answers: TonightAnswers, portions: number) =>
  answers.mouths ?? mouthsFedBy(portions);

const usualFuel: Fuel = {
  kind: 'briquettes',
  pieceMass: grams(usualCamp.pieceMass),
  isMeasured: false,
};

function handsOf({ hands, now }: TonightAnswers, { serveAt }: Wanted): Camp['hands'] {
  const count = Math.min(HANDS_MOST, Math.max(0, Math.round(hands ?? usualCamp.hands)));
  return Array.from({ length: count }, (_, index) => ({
    id: index === 0 ? 'cook' : `hand-${index + 1}`,
    name: index === 0 ? 'You' : `Hand ${index + 1}`,
    skill: 'steady',
    from: now,
    to: clockMinutes(serveAt + HANDS_STAY_MINUTES),
  }));
}

function assumedBy(
  answers: TonightAnswers,
  { oven, portions }: { oven: CampOven; portions: number },
): readonly Assumption[] {
  const { weather } = answers;
  const saidDepth = answers.oven.depth ?? answers.oven.style;
  const rows: readonly (readonly [unknown, Assumption['what'], number | string])[] = [
    [answers.fuel, 'fuel', usualFuel.kind],
    [answers.fuel, 'piece-mass', usualCamp.pieceMass],
    [answers.chimneys, 'chimneys', usualCamp.chimneys],
    [answers.hands, 'hands', usualCamp.hands],
    [weather?.airKelvin, 'air', usualWeather.air],
    [weather?.windMetresPerSecond, 'wind', usualWeather.wind],
    [weather?.windFromDegrees, 'wind-from', usualWeather.windFrom],
    [answers.ground, 'ground', usualCamp.ground],
    [answers.elevation, 'elevation', usualCamp.elevation],
    [saidDepth, 'depth', oven.depth],
    [undefined, 'greased', 'greased'],
    [answers.oven.startsHot, 'cold-oven', 'cold'],
    [answers.windScreens, 'screen', 0],
    [answers.mouths, 'mouths', mouthsOf(answers, portions)],
  ];
  return rows.flatMap(([said, what, value]) => (said === undefined ? [{ what, value }] : []));
}

/** A batter of a mass that was said is as thick as it spreads. */
const isSpreadByAmount = (lot: Lot, { amount }: TonightAnswers): boolean =>
  lot.lie === 'disc' &&
  [amount?.massGrams, amount?.flourGrams, amount?.portions].some((said) => said !== undefined);

const thicknessNotices = (recipe: Recipe, { amount }: TonightAnswers): readonly Notice[] =>
  amount?.thicknessMetres === undefined
    ? []
    : [
        notice(
          'MENU_THICKNESS_WITHOUT_EFFECT',
          'doubt',
          { dish: recipe.id },
          { thicknessMetres: amount.thicknessMetres },
        ),
      ];

function sizeNotices(oven: CampOven): readonly Notice[] {
  const inches = inUnit(oven.diameter, 'inch');
  const isMade = Math.abs(inches / 2 - Math.round(inches / 2)) < 0.1;
  const values = { diameterMetres: oven.diameter, depthMetres: oven.depth };
  return isMade ? [] : [notice('MENU_OVEN_BETWEEN_SIZES', 'doubt', { oven: oven.id }, values)];
}
