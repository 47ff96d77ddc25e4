// What heat does the food see from above and from below over its stay, turned or not? Lid and floor
// as round plates with every coal at its place, averaged in the food's own frame.
// Sources: plate/, iron-plates.ts, through-gap.ts, burnWind (windward coals burn harder).
// Weak spot: shelter of the lee side and scatter between coals are guesses; the food is flat, and
// its own cooling of the floor is taken to be even.

import type { CoalSet, Turn } from './coal-plan.ts';
import {
  type FoodHow,
  fluxUnder,
  type IronPlate,
  type IronPlates,
  type OneSided,
} from './iron-plates.ts';
import type { Harmonics, Shapes } from './plate/patch.ts';
import { type PlateSolver, plateSolvers, turnedBy } from './plate/plate.ts';
import { circleKelvins, kelvinAt, spreadOf } from './plate/reading.ts';
import { type Rings, ringsOfPlate } from './plate/rings.ts';
import { type Dwell, meanSeen } from './plate/seen.ts';
import { gapShares, throughGap } from './through-gap.ts';
import { afterTurn, STAND_AT_START, type Stand } from './turning.ts';

/** Lee side feels this share of the wind; no source. */
const LEE_SHELTER = 0.5;
const OWN_DRAUGHT = 0.5; // m/s, as in burn.ts
/** Coals differ in size, age and place: one-sided part of N coals is this times sqrt(2/N); ours. */
const COAL_SCATTER = 0.15;

/** Food reaches this near the wall of the floor; ours. */
export const FOOD_SHARE = 0.9;
/** Lid to food: half the depth, as for food that half fills the oven; ours. */
export const GAP_SHARE = 0.5;

/** An oven as the food in it sees it: its plates, what lies on them, and where the food ends. */
export interface FoodView {
  readonly plates: IronPlates;
  readonly above: CoalSet;
  readonly below: CoalSet;
  readonly coalWidth: number;
  readonly foodRadius: number;
  readonly gapMetres: number;
  readonly windMetresPerSecond: number;
  readonly windFromRadians: number;
}

export interface FoodStay {
  readonly loadInMinute: number;
  readonly outMinute: number;
}

/** A view cut as finely as wanted, with what all turn schedules share. */
export interface FoodSight {
  readonly view: FoodView;
  readonly how: FoodHow;
  readonly lidSolver: (stepSeconds: number) => PlateSolver;
  readonly floorSolver: (stepSeconds: number) => PlateSolver;
  readonly lidFlux: (lidRadians: number) => Harmonics;
  readonly floorFlux: Harmonics;
  readonly gapShares: readonly number[];
}

export const foodSight = (view: FoodView, how: FoodHow): FoodSight => {
  const { plates, coalWidth } = view;
  const shapes: Shapes = new Map();
  const fluxes = new Map<number, Harmonics>();
  // The lid's coals go with the lid; the wind stays.
  const lidFlux = (lidRadians: number) => {
    const from = view.windFromRadians - lidRadians;
    const coals = { places: view.above.places, coalWidth, how, shapes };
    const flux =
      fluxes.get(lidRadians) ?? fluxUnder(plates.lid, coals, oneSided(view, view.above, from));
    fluxes.set(lidRadians, flux);
    return flux;
  };
  return {
    view,
    how,
    lidSolver: plateSolvers(plates.lid.plate, how),
    floorSolver: plateSolvers(plates.floor.plate, how),
    lidFlux,
    floorFlux: fluxUnder(
      plates.floor,
      { places: view.below.places, coalWidth, how, shapes: new Map() },
      oneSided(view, view.below, view.windFromRadians),
    ),
    gapShares: gapSharesOf(view, how),
  };
};

export const gapSharesOf = (
  { plates, gapMetres }: Pick<FoodView, 'plates' | 'gapMetres'>,
  { highest }: FoodHow,
): readonly number[] =>
  gapShares(highest, { gapMetres, radiusMetres: plates.lid.plate.radiusMetres });

/** Coals of a set stronger to windward; their own scatter, which lies anywhere, is laid there too. */
export const oneSided = (
  view: Pick<FoodView, 'windMetresPerSecond'>,
  { pieces }: Pick<CoalSet, 'pieces'>,
  fromRadians: number,
): OneSided => ({
  fromRadians,
  share: Math.hypot(windExcess(view.windMetresPerSecond), scatter(pieces)),
});

/** Half the difference between windward and lee coals beside their mean. @source burnWind */
export const windExcess = (wind: number): number => {
  const ratio = (OWN_DRAUGHT + wind) / (OWN_DRAUGHT + LEE_SHELTER * wind);
  return (Math.sqrt(ratio) - 1) / (Math.sqrt(ratio) + 1);
};

const scatter = (pieces: number): number => (pieces > 0 ? COAL_SCATTER * Math.sqrt(2 / pieces) : 0);

/** What one side of the food sees, as a mean over its stay. */
export interface Face {
  /** Warmest less coolest place round the food's edge [K]. */
  readonly round: number;
  /** Its edge over its middle [K]. */
  readonly edgeOverMiddle: number;
}

export interface Faces {
  readonly top: Face;
  readonly bottom: Face;
}

export const facesSeen = (sight: FoodSight, stay: FoodStay, turns: readonly Turn[]): Faces => {
  const { view, how } = sight;
  const { lid, floor } = view.plates;
  const stands = standsOver(stay, turns);
  const onLid = meanSeen(sight.lidSolver, lidDwells(sight, stands));
  const onFloor = meanSeen(sight.floorSolver, floorDwells(sight, stands));
  const above = throughGap(onLid, ringsOf(lid, how), sight.gapShares);
  return {
    top: faceOf(above, ringsOf(lid, how), view.foodRadius),
    bottom: faceOf(onFloor, ringsOf(floor, how), view.foodRadius),
  };
};

const ringsOf = ({ plate }: IronPlate, how: FoodHow): Rings =>
  ringsOfPlate(plate.radiusMetres, how.rings);

const PLACES_ROUND = 24;

const faceOf = (kelvins: Harmonics, rings: Rings, radiusMetres: number): Face => {
  const round = circleKelvins(kelvins, rings, { radiusMetres, places: PLACES_ROUND });
  const middle = kelvinAt(kelvins, rings, { radiusMetres: 0, angleRadians: 0 });
  const edge = round.reduce((sum, each) => sum + each, 0) / round.length;
  return { round: spreadOf(round), edgeOverMiddle: edge - middle };
};

interface Standing {
  readonly seconds: number;
  readonly stand: Stand;
  readonly isSeen: boolean;
}

// From coals on; the food looks from its own minute on.
const standsOver = (stay: FoodStay, turns: readonly Turn[]): readonly Standing[] => {
  const marks = [stay.loadInMinute, ...turns.map((turn) => turn.minute), stay.outMinute];
  let stand = STAND_AT_START;
  return marks.map((mark, index) => {
    const turn = turns[index - 2];
    if (turn) stand = afterTurn(stand, turn);
    return { seconds: 60 * (mark - (marks[index - 1] ?? 0)), stand, isSeen: index > 0 };
  });
};

const RADIANS = Math.PI / 180; // angles of a stand are clockwise, of a plate anticlockwise

const lidDwells = (sight: FoodSight, stands: readonly Standing[]): readonly Dwell[] =>
  stands.map(({ seconds, stand, isSeen }) => ({
    seconds,
    flux: sight.lidFlux(stand.lid * RADIANS),
    toSeen: (stand.oven - stand.lid) * RADIANS,
    isSeen,
  }));

// The coals below lie on the ground; the floor goes with the food.
const floorDwells = (sight: FoodSight, stands: readonly Standing[]): readonly Dwell[] =>
  stands.map(({ seconds, stand, isSeen }) => ({
    seconds,
    flux: turnedBy(sight.floorFlux, stand.oven * RADIANS),
    toSeen: 0,
    isSeen,
  }));
