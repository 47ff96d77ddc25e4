// What has to be said beside the counts of one plan.
// Source: splitByMethod for the share below a bread; from when on a thing is worth a word: ours.

import { isRefusal, type Notice, type NoticeValues, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import { LAID_AGE_MINUTES } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import { boiledOffGrams, type Counted, coalsInAll, upMinute } from './count.ts';
import { floorLimit } from './floor-limit.ts';
import { MOST_BELOW_SHARE } from './layout-advice.ts';
import { COALS_RANGE } from './range.ts';
import type { RunSetting } from './run.ts';
import { hasBareLid, isBaked, isHeatedFirst } from './split.ts';
import { whatCanIDoWith } from './with-these-coals.ts';

/** The heat may leave the wanted step by as much again before it is worth a word. */
const WANDERS_KELVIN = 21; // a step and a half of the charts
const WANDERS_MINUTES = 5;
const SETTLING_MINUTES = 10; // after loading every oven dips
const SHORT_KELVIN = 7; // half of what a cook calls "at heat"
const MUCH_STEAM_GRAMS = 250; // a cup
const SHORT_OF_READY_KELVIN = 14;

export const planNotices = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
): readonly Notice[] => [
  ...(request.wish.method === 'fry'
    ? [notice('COALS_HOT_FAT', 'danger', { oven: request.oven.id })]
    : []),
  ...countNotices(request, counted),
  ...floorNotices(request, setting, counted),
  ...heatNotices(request, counted),
  ...fuelNotices(request, counted),
];

const countNotices = (request: CoalRequest, counted: Counted): readonly Notice[] => {
  const { pins } = request;
  const { counts, need } = counted;
  const about = { oven: request.oven.id };
  const values: NoticeValues = {
    above: counts.above,
    below: counts.below,
    fuel: request.fuel.kind,
    meanKelvin: counted.meanKelvin,
    wantedKelvin: request.wish.wanted,
  };
  const notices: Notice[] = [];
  if (pins.above !== undefined || pins.below !== undefined)
    notices.push(notice('COALS_PINNED_GIVES', 'note', about, values));
  if (isPinnedLow(request, counts))
    notices.push(notice('COALS_LAYOUT_BOTTOM_HEAVY', 'doubt', about, values));
  if ((pins.above ?? 0) > need.room.lidAll || (pins.below ?? 0) > need.room.floorAll)
    notices.push(
      notice('COALS_PIN_OVERFILLS', 'doubt', about, {
        ...values,
        lidFits: need.room.lidAll,
        floorFits: need.room.floorAll,
      }),
    );
  if (counted.movedToLid > 0)
    notices.push(notice('COALS_RING_FULL', 'note', about, ringValues(request, counted)));
  // A full lid that gives the heat all the same is no shortage.
  const isShort = counted.meanKelvin < request.wish.wanted - SHORT_KELVIN;
  if (counted.lidIsFull && isShort) notices.push(notice('COALS_LID_FULL', 'doubt', about, values));
  if (counted.floorIsFull && isShort && !hasBareLid(request.wish.method))
    notices.push(notice('COALS_FLOOR_FULL', 'doubt', about, values));
  return notices;
};

/** A bread on a pin that puts nearly half below: as a layout of the cook's own is told. */
const isPinnedLow = ({ pins, wish }: CoalRequest, { above, below }: Counted['counts']): boolean =>
  (pins.above !== undefined || pins.below !== undefined) &&
  isBaked(wish.method) &&
  below > MOST_BELOW_SHARE * (above + below);

const floorNotices = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
): readonly Notice[] => {
  const limit = floorLimit(request, setting, counted);
  if (limit === undefined) return [];
  return [notice('COALS_BELOW_IS_FULL', 'doubt', { oven: request.oven.id }, limit)];
};

const ringValues = ({ fuel }: CoalRequest, { counts, movedToLid }: Counted): NoticeValues => ({
  fuel: fuel.kind,
  below: counts.below,
  coals: movedToLid,
});

const heatNotices = (request: CoalRequest, counted: Counted): readonly Notice[] => {
  const { feed, run } = counted;
  const about = { oven: request.oven.id };
  const notices: Notice[] = [];
  const before = run.moments[run.loadInMinute - 1];
  if (
    isHeatedFirst(request.wish) &&
    before &&
    before.ovenKelvin < feed.readyKelvin - SHORT_OF_READY_KELVIN
  )
    notices.push(
      notice('COALS_PREHEAT_SHORT', 'doubt', about, {
        ovenKelvin: before.ovenKelvin,
        minute: run.loadInMinute,
      }),
    );
  if (feed.need.upKelvin > 0 && upMinute(feed, run) === undefined)
    notices.push(notice('COALS_BOIL_LATE', 'doubt', about, { minute: run.outMinute }));
  const boiledOff = boiledOffGrams(counted) ?? 0;
  if (boiledOff >= MUCH_STEAM_GRAMS)
    notices.push(notice('COALS_WATER_BOILS_OFF', 'note', about, { massGrams: boiledOff }));
  const astray = farthestAstray(request, counted);
  if (astray) notices.push(notice('COALS_HEAT_WANDERS', 'doubt', about, astray));
  return notices;
};

// Only baking ovens: a pot's heat is held by its water.
const farthestAstray = (request: CoalRequest, counted: Counted): NoticeValues | undefined => {
  const { feed, run } = counted;
  if (feed.readyKelvin === 0) return;
  const from = run.loadInMinute + SETTLING_MINUTES;
  const astray = run.moments
    .filter((moment) => moment.minute >= from)
    .map((moment) => ({ moment, off: Math.abs(moment.ovenKelvin - request.wish.wanted) }))
    .filter(({ off }) => off > WANDERS_KELVIN);
  if (astray.length <= WANDERS_MINUTES) return;
  const far = astray.reduce((one, other) => (other.off > one.off ? other : one));
  return { farthestKelvin: far.moment.ovenKelvin, minute: far.moment.minute };
};

const fuelNotices = (request: CoalRequest, counted: Counted): readonly Notice[] => {
  const { fuel, oven } = request;
  if (fuel.kind !== 'briquettes' || fuel.onHand === undefined) return [];
  const massGrams = coalsInAll(counted) * fuel.pieceMass;
  if (massGrams <= fuel.onHand) return [];
  const values = { massGrams, onHandGrams: fuel.onHand };
  const short = notice('COALS_FUEL_SHORT', 'stop', { oven: oven.id }, values);
  return [short, ...fuelDoes(request, Math.floor(fuel.onHand / fuel.pieceMass))];
};

/** What the charcoal at hand does do, all of it lit at once. */
const fuelDoes = (request: CoalRequest, coals: number): readonly Notice[] => {
  const { oven, air, place, screened, fuel, ironAtStart: ironNow, beliefs, conditions } = request;
  const litMinutesAgo = minutes(LAID_AGE_MINUTES);
  const known = { ...(beliefs ? { beliefs } : {}), ...(conditions ? { conditions } : {}) };
  const site = { oven, air, place, screened, fuel, ironNow, ...known };
  const left = whatCanIDoWith({ ...site, pieces: Math.min(coals, MOST_COALS), litMinutesAgo });
  if (isRefusal(left)) return [];
  const kinds = [...new Set(left.ways.flatMap((way) => way.kinds))].join(', ');
  const hottestKelvin = Math.max(...left.ways.map((way) => way.hottest));
  const values = { coals, hottestKelvin, kinds };
  return [notice('COALS_FUEL_SHORT_FOR_THIS', 'doubt', { oven: oven.id }, values)];
};

const MOST_COALS = COALS_RANGE.pin.highest;
