// What does one oven weigh and expose, part by part? From nominal size, depth and weight.
// Sources: ovenSizing (quarts, depth, weight); split of mass and areas inferred from it.
// Weak spot: nobody published wall thickness or lid weight; an owner's scales would settle it.

import type { CampOven } from '../camp/camp.ts';
import type { OwnMeasures } from './conditions.ts';
import { parameter } from './parameters.ts';

const INCH = 0.0254; // m, exact
const FLOOR_SHARE = 0.84; // floor / nominal diameter: a 12 inch oven has about 10 inch of floor (ovenSizing)
const LID_OVERHANG = INCH; // lid is about one inch wider than nominal (inferred)

/** An oven as areas [m2], heat capacities [J/K] and conductances [W/K]. */
export interface OvenBody {
  readonly lidDiameter: number;
  readonly wallDiameter: number;
  readonly wallHeight: number;
  readonly floorDiameter: number;
  readonly lidArea: number;
  readonly rimArea: number;
  readonly wallArea: number;
  /** Legs, ears, handle. */
  readonly extraArea: number;
  readonly floorArea: number;
  /** Opening seen with the lid off. */
  readonly mouthArea: number;
  readonly volume: number;
  readonly thickness: number;
  readonly lidCapacity: number;
  readonly wallCapacity: number;
  readonly floorCapacity: number;
  readonly lidToWall: number;
  readonly floorToWall: number;
}

const disc = (diameterMetres: number) => (Math.PI / 4) * diameterMetres ** 2;

type OvenSize = Pick<CampOven, 'diameter' | 'depth' | 'mass' | 'floorDiameter'>;

/** Areas, masses and conductances of an oven; what the owner measured wins where given. */
export const ovenBody = (oven: OvenSize, measures: OwnMeasures = {}): OvenBody => {
  const lidDiameter = measures.lidDiameter ?? oven.diameter + LID_OVERHANG;
  const floorDiameter = oven.floorDiameter ?? FLOOR_SHARE * oven.diameter;
  const wallDiameter = (oven.diameter + floorDiameter) / 2;
  const areas = {
    lidArea: disc(lidDiameter),
    floorArea: disc(floorDiameter),
    wallArea: Math.PI * wallDiameter * oven.depth,
    mouthArea: disc(oven.diameter),
  };
  return {
    ...areas,
    lidDiameter,
    wallDiameter,
    wallHeight: oven.depth,
    floorDiameter,
    rimArea: Math.PI * lidDiameter * parameter('rimLossHeightMetres'),
    extraArea: parameter('extraAreaSquareMetres'),
    volume: disc(wallDiameter) * oven.depth,
    ...ironOf({ ...areas, lidDiameter, wallDiameter, floorDiameter }, oven, measures.lidMass),
  };
};

interface Sheet {
  readonly lidArea: number;
  readonly floorArea: number;
  readonly wallArea: number;
  readonly lidDiameter: number;
  readonly wallDiameter: number;
  readonly floorDiameter: number;
}

// One thickness everywhere, mass / (density x area), is the only figure the sizing table allows; a
// lid on the scales tells lid and pot apart.
const ironOf = (sheet: Sheet, oven: OvenSize, lidMass?: number) => {
  const lidSheet = sheet.lidArea + Math.PI * sheet.lidDiameter * parameter('rimMassHeightMetres');
  const potSheet = sheet.floorArea + sheet.wallArea;
  const lidGrams = lidMass ?? (oven.mass * lidSheet) / (lidSheet + potSheet);
  const potGrams = oven.mass - lidGrams;
  const thickness = potGrams / (parameter('ironGramsPerCubicMetre') * potSheet);
  const perGram = parameter('ironJoulesPerGramKelvin');
  const along = parameter('ironConductivityWattsPerMetreKelvin') * thickness * Math.PI;
  const halfWall = oven.depth / 2;
  return {
    thickness,
    lidCapacity: perGram * lidGrams,
    wallCapacity: (perGram * potGrams * sheet.wallArea) / potSheet,
    floorCapacity: (perGram * potGrams * sheet.floorArea) / potSheet,
    // Conduction along the sheet from mid-plate to mid-wall; the lid only rests on the rim.
    lidToWall:
      (parameter('rimContact') * along * oven.diameter) / (halfWall + sheet.lidDiameter / 6),
    floorToWall: (along * sheet.wallDiameter) / (halfWall + sheet.floorDiameter / 6),
  };
};
