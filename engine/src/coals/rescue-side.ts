// One side is hot: what do a half turn, coals shifted to the cool side, or a screen bring at the food?
// Lid and floor are run as round plates, the hot side read in the food's own frame.
// Sources: food-sight.ts (one-sided part), iron-plates.ts, plate/. Weak spot: which side is hot is
// taken from wind and scatter as the plan does; a tilted oven or coals in a heap are not known of.

import { metres } from '../quantity/unit.ts';
import type { CoalPlace, CoalSet } from './coal-plan.ts';
import { evenest, evenestBelow } from './evenest.ts';
import type { FireNow, FireState } from './fire-state.ts';
import { liveCoals } from './fire-state.ts';
import { FOOD_SHARE, GAP_SHARE, gapSharesOf, oneSided } from './food-sight.ts';
import { bakeMean, fluxUnder, type IronPlate, ironPlates, ROUGH_HOW } from './iron-plates.ts';
import { setAbove, setBelow } from './placement.ts';
import type { Harmonics } from './plate/patch.ts';
import { type PlateSolver, plateSolvers, turnedBy } from './plate/plate.ts';
import { circleKelvins, kelvinAt } from './plate/reading.ts';
import { ringsOfPlate } from './plate/rings.ts';
import { type Dwell, meanSeen } from './plate/seen.ts';
import { coalWidth } from './room.ts';
import type { OvenMoment } from './run.ts';
import { isBaked } from './split.ts';
import { throughGap } from './through-gap.ts';
import { COLOUR_PER_KELVIN } from './unevenness.ts';

export type SideMove =
  | { readonly do: 'turn' }
  | { readonly do: 'screen-wind'; readonly windMetresPerSecond: number }
  | {
      /** Carried from the hot side over to the cool one, or taken off the hot side. */
      readonly do: 'shift-above' | 'shift-below' | 'thin-above' | 'thin-below';
      readonly coals: number;
    };

/** What a move brings over the next minutes. */
export interface SideEffect {
  /** Hot side less cool side, as the food sees it on the worse face: after the move less before [K]. */
  readonly kelvins: number;
  /** The hot side's top browns so many minutes less in that time. */
  readonly browningMinutes: number;
  /** Minutes until most of it is felt. */
  readonly after: number;
}

/** Both faces of the food, and the fire that heats them. */
export interface SideSight {
  readonly state: FireState;
  readonly lid: FaceSight;
  readonly floor: FaceSight;
  /** The face whose sides differ more; its coals are the ones to shift. */
  readonly worse: 'above' | 'below';
}

interface FaceSight {
  readonly iron: IronPlate;
  readonly set: CoalSet;
  readonly solver: (stepSeconds: number) => PlateSolver;
  readonly seen: (kelvins: Harmonics) => Harmonics;
  readonly radiusMetres: number;
  /** Where it is hottest round the food's edge, and how much more so than over against it. */
  readonly hotRadians: number;
  readonly swing: number;
}

export const SIDE_MINUTES = 20;
const WARM_SECONDS = 2400; // before now: both plates have settled

/** The fire as the sides of the food see it, if nothing is done. */
export const sideSight = (
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): SideSight => {
  const { body } = now.setting;
  const stay = { loadInMinute: now.moment.minute, outMinute: now.moment.minute + SIDE_MINUTES };
  const plates = ironPlates(now.setting, bakeMean(now.setting, usual, stay));
  const wish = { coalWidth: coalWidth(state.fuel), isWood: state.fuel.kind === 'wood-coals' };
  const view = {
    plates,
    coalWidth: wish.coalWidth,
    foodRadius: (FOOD_SHARE * body.floorDiameter) / 2,
    gapMetres: GAP_SHARE * state.oven.depth,
    windMetresPerSecond: state.air.wind,
    windFromRadians: (state.air.windFrom * Math.PI) / 180,
  };
  const pieces = (place: 'above' | 'below') => Math.round(liveCoals(now.moment, place));
  const shares = gapSharesOf(view, ROUGH_HOW);
  const lidRings = ringsOf(plates.lid);
  const above = { ...wish, pieces: pieces('above'), outerRadius: state.oven.diameter / 2 };
  const lid = faceSight(state, {
    iron: plates.lid,
    set: setAbove(above, (layouts) => evenest(layouts, view)),
    seen: (kelvins) => throughGap(kelvins, lidRings, shares),
    radiusMetres: view.foodRadius,
  });
  const below = {
    ...wish,
    pieces: pieces('below'),
    outerRadius: body.floorDiameter / 2,
    isBaked: isBaked(state.method),
  };
  const floor = faceSight(state, {
    iron: plates.floor,
    set: setBelow(below, (layouts) => evenestBelow(layouts, view)),
    seen: (kelvins) => kelvins,
    radiusMetres: view.foodRadius,
  });
  return { state, lid, floor, worse: lid.swing >= floor.swing ? 'above' : 'below' };
};

const PLACES_ROUND = 24;

const faceSight = (
  state: FireState,
  face: Pick<FaceSight, 'iron' | 'set' | 'seen' | 'radiusMetres'>,
): FaceSight => {
  const solver = plateSolvers(face.iron.plate, ROUGH_HOW);
  const flux = fluxOfSet(state, face, face.set);
  const kelvins = meanSeen(solver, [
    dwell(flux, WARM_SECONDS),
    { ...dwell(flux, 60), isSeen: true },
  ]);
  const round = circleKelvins(face.seen(kelvins), ringsOf(face.iron), {
    radiusMetres: face.radiusMetres,
    places: PLACES_ROUND,
  });
  const hotRadians = (2 * Math.PI * round.indexOf(Math.max(...round))) / PLACES_ROUND;
  const still = { ...face, solver, hotRadians };
  return { ...still, swing: swingOf(still, kelvins) };
};

const ringsOf = ({ plate }: IronPlate) => ringsOfPlate(plate.radiusMetres, ROUGH_HOW.rings);

const dwell = (flux: Harmonics, seconds: number): Dwell => ({
  seconds,
  flux,
  toSeen: 0,
  isSeen: false,
});

const swingOf = (face: Omit<FaceSight, 'swing'>, kelvins: Harmonics): number => {
  const seen = face.seen(kelvins);
  const at = (angleRadians: number) =>
    kelvinAt(seen, ringsOf(face.iron), { radiusMetres: face.radiusMetres, angleRadians });
  return at(face.hotRadians) - at(face.hotRadians + Math.PI);
};

const fluxOfSet = (
  { air, fuel }: FireState,
  { iron }: Pick<FaceSight, 'iron'>,
  set: Pick<CoalSet, 'places' | 'pieces'>,
  windMetresPerSecond: number = air.wind,
): Harmonics =>
  fluxUnder(
    iron,
    { places: set.places, coalWidth: coalWidth(fuel), how: ROUGH_HOW, shapes: new Map() },
    oneSided({ windMetresPerSecond }, set, (air.windFrom * Math.PI) / 180),
  );

/** What a move brings at the food over the next twenty minutes. */
export const sideEffect = (sight: SideSight, move: SideMove): SideEffect => {
  const changes = (face: 'above' | 'below', minutes: number) =>
    swingAfter(sight, face, move, minutes) - faceOf(sight, face).swing;
  const kelvins = changes(sight.worse, SIDE_MINUTES);
  const top = sight.lid.swing;
  const topAfter = top + changes('above', SIDE_MINUTES);
  const felt = FELT_AT.find(
    (minutes) => Math.abs(changes(sight.worse, minutes)) >= FELT_SHARE * Math.abs(kelvins),
  );
  return {
    kelvins,
    browningMinutes: SIDE_MINUTES * (aheadShare(top) - aheadShare(topAfter)),
    after: felt ?? SIDE_MINUTES,
  };
};

const FELT_AT: readonly number[] = [1, 2, 4, 6, 8, 10, 12, 15];
const FELT_SHARE = 0.8;

/** A side this much hotter browns so much of the time more. @source trial-bake-model, as unevenness */
const aheadShare = (kelvins: number) => 2 * Math.sinh((COLOUR_PER_KELVIN * kelvins) / 2);

const faceOf = (sight: SideSight, face: 'above' | 'below') =>
  face === 'above' ? sight.lid : sight.floor;

// Mean over so many minutes from the move on. The lid stands over the ground as before and the food
// looks at it from the other side; the floor turns with the food, over coals that lie still.
const swingAfter = (
  sight: SideSight,
  face: 'above' | 'below',
  move: SideMove,
  minutes: number,
): number => {
  const seenFace = faceOf(sight, face);
  const before = fluxOfSet(sight.state, seenFace, seenFace.set);
  const isTurned = move.do === 'turn';
  const after = isTurned
    ? turnedBy(before, face === 'below' ? Math.PI : 0)
    : fluxAfter(sight, face, move);
  const toSeen = isTurned && face === 'above' ? Math.PI : 0;
  const kelvins = meanSeen(seenFace.solver, [
    dwell(before, WARM_SECONDS),
    { seconds: 60 * minutes, flux: after, toSeen, isSeen: true },
  ]);
  return swingOf(seenFace, kelvins);
};

const fluxAfter = (
  { state, lid, floor }: SideSight,
  face: 'above' | 'below',
  move: Exclude<SideMove, { readonly do: 'turn' }>,
): Harmonics => {
  const own = face === 'above' ? lid : floor;
  if (move.do === 'screen-wind') return fluxOfSet(state, own, own.set, move.windMetresPerSecond);
  if (!move.do.endsWith(face)) return fluxOfSet(state, own, own.set);
  const hottest = hottestOf(own, move.coals);
  if (move.do.startsWith('thin')) {
    const places = own.set.places.filter((place) => !hottest.has(place));
    const left = places.length / Math.max(1, own.set.places.length);
    const iron = { ...own.iron, watts: own.iron.watts * left };
    return fluxOfSet(state, { iron }, { ...own.set, places });
  }
  const places = own.set.places.map((place) => (hottest.has(place) ? overAgainst(place) : place));
  return fluxOfSet(state, own, { ...own.set, places });
};

const overAgainst = (place: CoalPlace): CoalPlace => ({
  ...place,
  x: metres(-place.x),
  y: metres(-place.y),
});

/** So many coals that lie farthest out on the hot side. */
const hottestOf = ({ set, hotRadians }: FaceSight, coals: number): ReadonlySet<CoalPlace> => {
  const towardsHot = ({ x, y }: CoalPlace) => x * Math.cos(hotRadians) + y * Math.sin(hotRadians);
  return new Set(
    [...set.places].sort((one, other) => towardsHot(other) - towardsHot(one)).slice(0, coals),
  );
};
