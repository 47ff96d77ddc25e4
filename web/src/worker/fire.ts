// Questions about coals alone: one oven and its spot, no camp and no recipe. A part of its own, fetched
// when the first of them is asked.

import {
  type AgedDoor,
  type Air,
  type AssumedAge,
  type Assumption,
  airAt,
  assumedAge,
  assumedAgePhrase,
  type Camp,
  type CampOven,
  COAL_LOOK_WORDS,
  campForTonight,
  campSafety,
  clockMinutes,
  coalsAloneSheet,
  coalsLeftSheet,
  coalsLying,
  coalsOnShovels,
  conditionsOf,
  type Door,
  fireLighting,
  isPotMethod,
  isRefusal,
  judgeLayout,
  type Kelvin,
  kelvin,
  laidUntilItBoils,
  layCoals,
  layoutSheet,
  litMinutesOfLook,
  minutes,
  type OrRefusal,
  type Refusal,
  refusalText,
  rescue,
  type Say,
  type SheetDocument,
  type SiteConditions,
  sayFor,
  stackOvens,
  stackSheet,
  usualFood,
  usualLoad,
  usualLook,
  usualLooks,
  wantedAtFire,
  warmWithFew,
  whatCanIDoWith,
  whatNowSheet,
  withUsualLooks,
} from '#engine';
import type {
  FireMethod,
  FireSpot,
  FireWish,
  LaidMore,
  LaidSet,
  Question,
  Voice,
} from './messages.ts';
import { ovenFrom, spotFrom } from './tonight.ts';

/** The sheet of one question, or a sheet that says why it is refused. */
export function fireAnswer({
  spot,
  wish,
  voice,
}: Extract<Question, { ask: 'fire' }>): SheetDocument {
  const fire = fireOf(spot);
  if (isRefusal(fire)) return refusedSheet(fire, voiceOf(voice, []));
  const say = voiceOf(voice, [fire.oven]);
  const sheet = sheetFor(wish, spot, fire, voice);
  return isRefusal(sheet) ? refusedSheet(sheet, say) : sheet;
}

interface Fire {
  readonly camp: Camp;
  readonly oven: CampOven;
  readonly air: Air;
  readonly screened: boolean;
  readonly conditions: SiteConditions;
  readonly door: Door;
}

/** The spot as the front door would have it; the bread it is asked with is of no account here. */
function fireOf(spot: FireSpot): OrRefusal<Fire> {
  const screened = (spot.windScreens ?? 0) > 0;
  const made = campForTonight({
    what: 'biscuits',
    oven: ovenFrom(spot),
    when: {},
    date: spot.today,
    timeZone: spot.timeZone,
    now: NOW,
    ...spotFrom(spot),
  });
  if (isRefusal(made)) return made;
  const { camp, menu, assumed, notices } = made;
  const oven = camp.ovens[0]!;
  const door: Door = {
    oven,
    fuel: camp.fuel.kind,
    assumed: assumed.filter(({ what }) => OF_THE_SPOT.has(what)),
    notices,
    strip: campSafety({ camp, menu }).strip,
  };
  const conditions = conditionsOf({ place: camp.place, weather: camp.weather[0]!, oven });
  return { camp, oven, air: airAt(camp, NOW, { screened }), screened, conditions, door };
}

/** The weather holds, so any clock does. */
const NOW = clockMinutes(0);
const OF_THE_SPOT: ReadonlySet<Assumption['what']> = new Set<Assumption['what']>([
  ...(['fuel', 'piece-mass', 'air', 'wind', 'ground', 'elevation', 'depth', 'screen'] as const),
]);

const voiceOf = (voice: Voice, ovens: readonly CampOven[]): Say =>
  sayFor({ ...voice, plan: { camp: { ovens, hands: [] }, menu: { dishes: [] } } });

function refusedSheet(refused: Refusal, say: Say): SheetDocument {
  return {
    kind: 'fire',
    title: 'This can’t be done as it stands',
    blocks: [
      { type: 'notice', level: 'stop', text: refusalText(refused, say), code: refused.code },
    ],
  };
}

type Of<DoorName extends FireWish['door']> = Extract<FireWish, { door: DoorName }>;

function sheetFor(
  wish: FireWish,
  spot: FireSpot,
  fire: Fire,
  voice: Voice,
): OrRefusal<SheetDocument> {
  const say = voiceOf(voice, [fire.oven]);
  switch (wish.door) {
    case 'coals':
      return coalsAlone(wish, fire, say);
    case 'layout':
      return layout(wish, fire, say);
    case 'left':
      return left(wish, fire, say);
    case 'what-now':
      return whatNow(wish, fire, say);
    case 'stack':
      return stack(wish, spot, fire, voice);
  }
}

const placeOf = ({ camp, oven, air, screened, conditions }: Fire) => ({
  oven,
  air,
  conditions,
  place: camp.place,
  screened,
  fuel: camp.fuel,
});

/** Whole briquettes as they are; shovels of wood coals as the engine counts them. */
const piecesOf = (amount: number, { camp }: Fire) =>
  camp.fuel.kind === 'wood-coals' ? coalsOnShovels(amount) : Math.round(amount);

/** The coals of the question and those of other ages. */
const lyingOf = ({ others = [], ...first }: LaidSet & LaidMore, fire: Fire) =>
  coalsLying(
    [first, ...others].map(({ above, below, litMinutes }) => ({
      above: piecesOf(above, fire),
      below: piecesOf(below, fire),
      litMinutesAgo: minutes(litMinutes),
    })),
  );

const ironOf = ({ ironKelvin }: LaidMore) =>
  ironKelvin === undefined ? {} : { ironNow: kelvin(ironKelvin) };

/** A pot is kept at its boil; every other food at the heat that is said. */
const wantedOf = (heatKelvin: number, method: FireMethod, { air }: Fire): Kelvin =>
  wantedAtFire(method, air, isPotMethod(method) ? undefined : kelvin(heatKelvin));

interface Aged {
  readonly lit: { readonly litMinutes?: number };
  readonly told: readonly string[];
  readonly ageAssumed?: AssumedAge;
  readonly ages: { readonly agesAssumed?: AssumedAge['how'] };
}

/** Coals by what they look like, or as old as is usual, and how that was taken. */
const lookOf = (
  { look, isAgeAssumed }: LaidMore,
  { camp, air }: Fire,
  asked: { readonly door: AgedDoor; readonly minutesIn?: number | undefined; readonly say: Say },
): Aged => {
  if (look === undefined && isAgeAssumed) {
    const ageAssumed = assumedAge(asked.door, { fuel: camp.fuel, air }, asked.minutesIn);
    const told = [assumedAgePhrase(ageAssumed, asked.say)];
    const lit = { litMinutes: ageAssumed.minutes };
    return { lit, told, ageAssumed, ages: { agesAssumed: ageAssumed.how } };
  }
  if (look === undefined) return { lit: {}, told: [], ages: {} };
  const litMinutes = litMinutesOfLook(look, { fuel: camp.fuel, air });
  const told = `coals that are ${COAL_LOOK_WORDS[look]}: lit about ${litMinutes} min ago in this wind`;
  return { lit: { litMinutes }, told: [told], ages: {} };
};

const requestOf = (
  { method, heatKelvin, minutes: stay }: Pick<Of<'coals'>, 'method' | 'heatKelvin' | 'minutes'>,
  fire: Fire,
) => {
  const wanted = wantedOf(heatKelvin, method, fire);
  const preheat = method === 'bake' || method === 'roast';
  return {
    ...placeOf(fire),
    loadId: 'food',
    wish: { method, wanted, minutes: minutes(stay), preheat },
    load: usualLoad(fire, method),
    ironAtStart: method === 'keep-warm' ? wanted : fire.air.temperature,
    pins: {},
  };
};

function coalsAlone(wish: Of<'coals'>, fire: Fire, say: Say): OrRefusal<SheetDocument> {
  const request = requestOf(wish, fire);
  const coals = wish.isUsualStay ? laidUntilItBoils(request) : layCoals(request);
  if (isRefusal(coals)) return coals;
  const stay = coals.outMinute - coals.loadInMinute;
  const alsoAssumed = [
    usualFood(fire, wish.method, say),
    ...(wish.isUsualStay ? [`${say.minutes(stay)} in the oven`] : []),
  ];
  const door = { ...fire.door, alsoAssumed };
  const looks = usualLooks({ ...coals, ...fire, wanted: request.wish.wanted });
  const lighting = fireLighting(fire.camp, fire.air);
  const few = warmWithFew(request, coals);
  return coalsAloneSheet({ door, coals, spot: fire, lighting, few, looks }, say);
}

function layout(wish: Of<'layout'>, fire: Fire, say: Say): OrRefusal<SheetDocument> {
  const { method, minutesIn } = wish;
  const { lit, told, ages, ageAssumed } = lookOf(wish, fire, { door: 'layout', minutesIn, say });
  const { coals, above, below } = lyingOf({ ...wish, ...lit }, fire);
  const wanted = wantedOf(wish.heatKelvin, method, fire);
  const { wait, minutes: ahead } = usualLook(method);
  const judgement = judgeLayout({
    ...placeOf(fire),
    method,
    coals,
    ...ironOf(wish),
    ...ages,
    load: usualLoad(fire, method),
    ...(minutesIn === undefined
      ? { loadInMinute: minutes(wait) }
      : { loadInMinutesAgo: minutes(minutesIn) }),
    wanted,
    minutes: minutes(ahead),
  });
  if (isRefusal(judgement)) return judgement;
  const alsoAssumed = [
    usualFood(fire, method, say),
    ...told,
    ...(minutesIn === undefined
      ? [wait === 0 ? 'food goes in now' : `food in after ${wait} min`]
      : []),
    `looked at for ${ahead} min`,
  ];
  const door = { ...fire.door, alsoAssumed };
  return layoutSheet({ door, above, below, wanted, judgement, method, ageAssumed }, say);
}

function left(wish: Of<'left'>, fire: Fire, say: Say): OrRefusal<SheetDocument> {
  const pieces = piecesOf(wish.coals, fire);
  const { lit, told, ages } = lookOf(wish, fire, { door: 'left', say });
  const possibilities = whatCanIDoWith({
    ...placeOf(fire),
    pieces,
    litMinutesAgo: minutes(lit.litMinutes ?? wish.litMinutes),
    ...ironOf(wish),
    ...ages,
  });
  if (isRefusal(possibilities)) return possibilities;
  const isHot = wish.ironKelvin !== undefined;
  return coalsLeftSheet(
    { door: { ...fire.door, alsoAssumed: told }, pieces, possibilities, isHot },
    say,
  );
}

function whatNow(wish: Of<'what-now'>, fire: Fire, say: Say): OrRefusal<SheetDocument> {
  const { symptom, method, minutesIn } = wish;
  const { lit, told, ages, ageAssumed } = lookOf(wish, fire, { door: 'what-now', minutesIn, say });
  const { coals, above, below } = lyingOf({ ...wish, ...lit }, fire);
  const found = rescue({
    symptom,
    state: {
      ...placeOf(fire),
      method,
      coals,
      ...ironOf(wish),
      ...ages,
      load: usualLoad(fire, method),
      loadInMinutesAgo: minutes(minutesIn),
    },
  });
  if (isRefusal(found)) return found;
  const door = { ...fire.door, alsoAssumed: [usualFood(fire, method, say), ...told] };
  return whatNowSheet({ door, above, below, rescue: found, ageAssumed }, say);
}

function stack(
  wish: Of<'stack'>,
  spot: FireSpot,
  fire: Fire,
  voice: Voice,
): OrRefusal<SheetDocument> {
  const over = fireOf({ ...spot, ovenInches: wish.upperInches });
  if (isRefusal(over)) return over;
  const placed = (each: Fire, where: 'lower' | 'upper') => ({
    ...requestOf(wish, each),
    loadId: `${where}-food`,
    oven: { ...each.oven, id: where, name: `the ${where} oven` },
  });
  const requests = { lower: placed(fire, 'lower'), upper: placed(over, 'upper') };
  const ovens = { lower: requests.lower.oven, upper: requests.upper.oven };
  const say = voiceOf(voice, Object.values(ovens));
  const stacked = stackOvens(requests);
  if (isRefusal(stacked)) return refusedSheet(stacked, say);
  const { method } = wish;
  const alsoAssumed = [
    `in the lower ${usualFood(fire, method, say)}`,
    `in the upper ${usualFood(over, method, say)}`,
  ];
  const door = { ...fire.door, alsoAssumed };
  const lighting = fireLighting(fire.camp, fire.air);
  const isPot = isPotMethod(method);
  const { hearth } = fire.camp.place;
  return stackSheet(
    { door, ...ovens, hearth, stack: withUsualLooks(stacked, requests), lighting, isPot },
    say,
  );
}
