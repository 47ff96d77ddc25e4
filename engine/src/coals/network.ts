// Where does the heat go? Lid, wall and floor as three lumps of iron round one star cavity.
// Sources: coalsOvenModelNotes (network), bergman2011 ch. 13 (star network), correlations.ts.
// Weak spot: charts are practice, not measurements; the network reproduces practice.

import { plateCoefficient, wallCoefficient } from './correlations.ts';
import type { OvenBody } from './geometry.ts';
import type { FloorTouch } from './load.ts';
import { cube, fourth, parameter, STEFAN_BOLTZMANN } from './parameters.ts';
import { rainWatts } from './rain.ts';
import { sunWatts } from './sun.ts';

/** Air round the oven, as raw SI numbers. */
export interface Outside {
  readonly airKelvin: number;
  readonly pressurePascals: number;
  readonly windMetresPerSecond: number;
  /** Rain that falls [mm/h]; none where not said. */
  readonly rainMillimetresPerHour?: number;
  /** Share of a high, clear sun; none where not said. */
  readonly sunRatio?: number;
}

/** Heat that coals of full standing offer, as equivalents of one mid-life briquette. */
export interface Supply {
  readonly above: number;
  readonly below: number;
  /** Coals that lie on the lid and cover it. */
  readonly covering: number;
}

export interface IronState {
  readonly lid: number;
  readonly wall: number;
  readonly floor: number;
}

/** All heat flows of one moment [W], and what follows from them. */
export interface Flows {
  readonly fromAbove: number;
  readonly fromBelow: number;
  readonly lidLoss: number;
  readonly wallLoss: number;
  readonly intoLid: number;
  readonly intoWall: number;
  readonly intoFloor: number;
  /** From the floor's iron into what lies on it. */
  readonly floorToLoad: number;
  readonly ovenKelvin: number;
}

const SIGMA_IN = parameter('emissivityInside') * STEFAN_BOLTZMANN;
const SIGMA_OUT = parameter('emissivityOutside') * STEFAN_BOLTZMANN;
const COAL_FOURTH = fourth(parameter('coalKelvin'));
const COAL_SPAN = COAL_FOURTH - fourth(parameter('chartAirKelvin'));
const LID_COAL_WATTS = parameter('lidCoalWatts');
const FLOOR_COAL_WATTS = LID_COAL_WATTS * parameter('floorToLidDelivery');
const COVER = parameter('coverSquareMetresPerCoal');
const MOST_COVERED = 0.9;
const LEAST_FOURTH = 1e9; // (178 K)^4: no cavity is colder; keeps the root real in hard cooling

/** Fourth power of the cavity's temperature when `sinkWatts` leave it inwards. */
export const cavityFourth = (body: OvenBody, iron: IronState, sinkWatts: number): number => {
  const area = body.lidArea + body.wallArea + body.floorArea;
  const radiated =
    body.lidArea * fourth(iron.lid) +
    body.wallArea * fourth(iron.wall) +
    body.floorArea * fourth(iron.floor);
  return Math.max(LEAST_FOURTH, (radiated - sinkWatts / SIGMA_IN) / area); // star node
};

export const cavityKelvin = (body: OvenBody, iron: IronState, sinkWatts: number): number =>
  Math.sqrt(Math.sqrt(cavityFourth(body, iron, sinkWatts)));

// A hot face takes less from a coal: net radiation between coal and iron, 1 for iron at mild air.
const acceptance = (ironKelvin: number) => (COAL_FOURTH - fourth(ironKelvin)) / COAL_SPAN;

export const freeLidArea = (body: OvenBody, covering: number): number =>
  body.lidArea * (1 - Math.min(MOST_COVERED, (covering * COVER) / body.lidArea)) + body.rimArea;

/** Coefficients of the outer skin at one moment [W/m2K]; they change slowly, so they are kept. */
export interface Skin {
  readonly lid: number;
  readonly wall: number;
}

export const skinAt = (body: OvenBody, iron: IronState, outside: Outside): Skin => ({
  lid: plateCoefficient({ ...outside, surfaceKelvin: iron.lid }, body.lidDiameter),
  wall: wallCoefficient(
    { ...outside, surfaceKelvin: iron.wall },
    { diameterMetres: body.wallDiameter, heightMetres: body.wallHeight },
  ),
});

const skinLoss = (area: number, coefficient: number, ironKelvin: number, airKelvin: number) =>
  area *
  (coefficient * (ironKelvin - airKelvin) + SIGMA_OUT * (fourth(ironKelvin) - fourth(airKelvin)));

export interface Moment {
  readonly body: OvenBody;
  readonly outside: Outside;
  readonly supply: Supply;
  readonly skin: Skin;
  /** Heat taken out of the cavity: by the load and through an open lid. */
  readonly sinkWatts: number;
  /** What lies on the floor and cools it. */
  readonly touch?: FloorTouch | undefined;
}

/** All flows at one moment. Runs several times in every step, so it makes no helper of its own. */
export const flowsAt = (moment: Moment, iron: IronState): Flows => {
  const { body, outside, supply, skin } = moment;
  const cavity = cavityFourth(body, iron, moment.sinkWatts);
  const fromAbove = supply.above * LID_COAL_WATTS * acceptance(iron.lid);
  const fromBelow = supply.below * FLOOR_COAL_WATTS * acceptance(iron.floor);
  const lidToWall = body.lidToWall * (iron.lid - iron.wall);
  const floorToWall = body.floorToWall * (iron.floor - iron.wall);
  const { touch } = moment;
  const floorToLoad = touch ? touch.wattsPerKelvin * (iron.floor - touch.kelvin) : 0;
  const air = outside.airKelvin;
  const free = freeLidArea(body, supply.covering);
  const lidLoss =
    skinLoss(free, skin.lid, iron.lid, air) +
    rainWatts(body, outside, iron.lid) -
    sunWatts(outside.sunRatio, free - body.rimArea);
  const wallLoss = skinLoss(body.wallArea + body.extraArea, skin.wall, iron.wall, air);
  return {
    fromAbove,
    fromBelow,
    lidLoss,
    wallLoss,
    intoLid: fromAbove - lidLoss - lidToWall - inwards(body.lidArea, iron.lid, cavity),
    intoWall: lidToWall + floorToWall - wallLoss - inwards(body.wallArea, iron.wall, cavity),
    intoFloor: fromBelow - floorToWall - floorToLoad - inwards(body.floorArea, iron.floor, cavity),
    floorToLoad,
    ovenKelvin: Math.sqrt(Math.sqrt(cavity)),
  };
};

const inwards = (area: number, ironKelvin: number, cavity: number) =>
  SIGMA_IN * area * (fourth(ironKelvin) - cavity);

/** Row-major 3 x 3. */
export type Matrix = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

/** d(flow into each lump)/d(temperature of each lump), skin and sink held [W/K]. */
export const slopesAt = (moment: Moment, iron: IronState): Matrix => {
  const { body, supply, skin } = moment;
  const { lidArea, wallArea, floorArea, lidToWall, floorToWall } = body;
  const lidCube = 4 * cube(iron.lid);
  const wallCube = 4 * cube(iron.wall);
  const floorCube = 4 * cube(iron.floor);
  const all = lidArea + wallArea + floorArea;
  const fromLid = (SIGMA_IN * lidArea * lidCube) / all;
  const fromWall = (SIGMA_IN * wallArea * wallCube) / all;
  const fromFloor = (SIGMA_IN * floorArea * floorCube) / all;
  const lidSkin = freeLidArea(body, supply.covering) * (skin.lid + SIGMA_OUT * lidCube);
  const wallSkin = (wallArea + body.extraArea) * (skin.wall + SIGMA_OUT * wallCube);
  const lidTakes = (supply.above * LID_COAL_WATTS * lidCube) / COAL_SPAN;
  const floorTakes = (supply.below * FLOOR_COAL_WATTS * floorCube) / COAL_SPAN;
  const touched = moment.touch?.wattsPerKelvin ?? 0;
  return [
    fromLid * (lidArea - all) - lidSkin - lidTakes - lidToWall,
    fromWall * lidArea + lidToWall,
    fromFloor * lidArea,
    fromLid * wallArea + lidToWall,
    fromWall * (wallArea - all) - wallSkin - lidToWall - floorToWall,
    fromFloor * wallArea + floorToWall,
    fromLid * floorArea,
    fromWall * floorArea + floorToWall,
    fromFloor * (floorArea - all) - floorTakes - floorToWall - touched,
  ];
};

/** Solves a 3 x 3 system by Cramer's rule; the matrices here are diagonally dominant. */
export const solveThree = (
  matrix: Matrix,
  right: readonly [number, number, number],
): [number, number, number] => {
  const [a, b, c, d, e, f, g, h, i] = matrix;
  const [p, q, r] = right;
  const first = e * i - f * h;
  const second = d * i - f * g;
  const third = d * h - e * g;
  const determinant = a * first - b * second + c * third;
  return [
    (p * first - b * (q * i - f * r) + c * (q * h - e * r)) / determinant,
    (a * (q * i - f * r) - p * second + c * (d * r - q * g)) / determinant,
    (a * (e * r - q * h) - b * (d * r - q * g) + p * third) / determinant,
  ];
};
