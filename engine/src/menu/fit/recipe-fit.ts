// How much of a recipe fills an oven, and how thick it lies there: one answer for the question about
// room, the formula bench and everything else that asks.
// Sources: as menu/lay.ts, which lays it; potFill for pots.

import type { CampOven } from '../../camp/camp.ts';
import { type OrRefusal, refusal } from '../../notice/notice.ts';
import { type Grams, type Metres, metres, type Ratio } from '../../quantity/unit.ts';
import { massToFill, mostIn, wholeLot } from '../fill-oven.ts';
import { discArea, floorOf, riseOf, workingMass } from '../geometry.ts';
import type { InOven } from '../in-oven.ts';
import { fitsIn, type Lying, layIn } from '../lay.ts';
import type { PlacedPiece } from '../load.ts';
import { type Lot, partOfLot } from '../lots.ts';
import type { Recipe } from '../recipe.ts';
import { heightFill } from '../under-lid.ts';
import { liesAt } from './as-recipe.ts';

/** The most of a recipe that goes into one oven. */
export interface RecipeFit {
  readonly oven: CampOven;
  readonly inOven: InOven;
  /** Inside, where food lies; smaller than the nominal size. */
  readonly floor: Metres;
  readonly isFloorMeasured: boolean;
  readonly mass: Grams;
  readonly pieces: number;
  /** As it lies, raw: a rolled dough draws together and lies thicker. For a pot its depth. */
  readonly thickness: Metres;
  readonly risenHeight: Metres;
  readonly headroom: Metres;
  /** Risen, its mean height over the height of its middle; not for a pot. */
  readonly profile?: Ratio;
  /** What is in the way of more. */
  readonly limitedBy: 'floor' | 'lid' | 'pot' | 'tin';
  readonly placed: readonly PlacedPiece[];
}

/**
 * The most of a recipe that goes into this oven with a finger left below the lid: at its own
 * thickness over the whole floor, as many whole pieces as lie flat, a pot to its three quarters.
 *
 * @param mass  so much of it, in place of the most; of pieces as many whole ones as it makes
 * @returns  undefined where not one piece goes in, or so much does not
 * @throws   RangeError — a recipe that makes nothing
 */
export function recipeFit(oven: CampOven, recipe: Recipe, mass?: Grams): RecipeFit | undefined {
  const whole = wholeLot(recipe);
  if (whole === undefined) throw new RangeError(`nothing is made by ${recipe.id}`);
  const lot = mass === undefined ? mostOf(oven, whole) : soMuchOf(whole, mass);
  const lying = layIn(oven, lot);
  if (!(0 < lot.mass) || !fitsIn(lying)) return undefined;
  return {
    oven,
    inOven: lot.inOven,
    floor: floorOf(oven),
    isFloorMeasured: oven.floorDiameter !== undefined,
    mass: lot.mass,
    pieces: lot.count,
    thickness: lying.thickness,
    risenHeight: lying.risenHeight,
    headroom: lying.headroom,
    ...(lying.profile === undefined ? {} : { profile: lying.profile }),
    limitedBy: limitOf(oven, lot, lying),
    placed: lying.pieces,
  };
}

function soMuchOf(lot: Lot, mass: Grams): Lot {
  if (lot.lie !== 'pieces') return partOfLot(lot, mass / lot.mass);
  const count = Math.floor((mass / lot.mass) * lot.count + 1e-9);
  return partOfLot(lot, count / lot.count, count);
}

/**
 * A pot to its three quarters; what has its thickness keeps it over the whole floor; all else as a
 * recipe of its kind would fill it.
 */
function mostOf(oven: CampOven, lot: Lot): Lot {
  const { thickness } = lot.recipe.target;
  if (thickness !== undefined && lot.lie !== 'pieces' && lot.inOven.contact !== 'tin') {
    return partOfLot(lot, massAtThickness(oven, lot.recipe, thickness) / lot.mass);
  }
  if (lot.lie === 'pot') {
    return partOfLot(lot, workingMass(oven, lot.recipe.kind) / lot.mass);
  }
  if (lot.lie === 'pieces') {
    const count = mostIn(oven, lot);
    return partOfLot(lot, count / lot.count, count);
  }
  return partOfLot(lot, massToFill(oven, lot.recipe) / lot.mass);
}

const massAtThickness = (oven: CampOven, { kind }: Recipe, thickness: Metres): number =>
  discArea(floorOf(oven)) * thickness * riseOf(kind).gramsPerCubicMetre;

/** From here on the lid is what is in the way: a loaf is planned to nine tenths of its room. */
const AT_THE_LID = 0.89;

function limitOf(oven: CampOven, lot: Lot, lying: Lying): RecipeFit['limitedBy'] {
  if (lying.shape === 'pot') return 'pot';
  if (AT_THE_LID <= heightFill(oven, lot.inOven, lying.risenHeight)) return 'lid';
  return lot.inOven.contact === 'tin' ? 'tin' : 'floor';
}

/** What is wanted of a dough at once: its whole weight, an oven that it fills, how thick. */
export interface FillWish {
  readonly oven: CampOven;
  /** As it is rolled out or poured; left out, as the recipe has it, or as is usual for its kind. */
  readonly rolledTo?: Metres;
  readonly mass?: Grams;
}

/** A dough that fills an oven, and who says how thick. */
export interface Filled extends RecipeFit {
  readonly rolledTo?: Metres;
  readonly thicknessBy: 'cook' | 'recipe' | 'usual';
  /** A loaf or rolls whose thickness nobody has said. */
  readonly takesOwnShape: boolean;
}

/** A weight and a full oven agree if they differ by no more than a scale and a roller do. Ours. */
const SAME_MASS = 0.02;

/**
 * How much of a dough fills the oven that is wished for, at the thickness that is wished for.
 *
 * @refuses  MENU_NOTHING_FITS — not one piece goes in at that thickness
 * @refuses  MENU_MASS_AGAINST_FILL — a weight is wished for too, and it is another; the thickness at
 *           which it would fill the oven is named where it lies flat
 */
export function filledBy(recipe: Recipe, { oven, rolledTo, mass }: FillWish): OrRefusal<Filled> {
  const own = recipe.target.thickness;
  const thickness = rolledTo === undefined ? own : liesAt(recipe.kind, rolledTo);
  const target = thickness === undefined ? recipe.target : { ...recipe.target, thickness };
  const fit = recipeFit(oven, { ...recipe, target });
  if (fit === undefined) return doesNotFit(recipe, oven);
  if (mass !== undefined && SAME_MASS < Math.abs(mass / fit.mass - 1)) return against(fit, mass);
  const takesOwnShape = thickness === undefined && recipe.kind === 'yeast-bread';
  if (rolledTo !== undefined) return { ...fit, rolledTo, thicknessBy: 'cook', takesOwnShape };
  return { ...fit, thicknessBy: own === undefined ? 'usual' : 'recipe', takesOwnShape };
}

function against(fit: RecipeFit, mass: Grams) {
  const isFlat = fit.pieces === 1 && fit.limitedBy === 'floor';
  const nearest = metres((fit.thickness * mass) / fit.mass);
  return refusal(
    'MENU_MASS_AGAINST_FILL',
    ['mass', 'fill'],
    {},
    {
      wantedGrams: mass,
      fillGrams: fit.mass,
      diameterMetres: fit.oven.diameter,
      thicknessMetres: fit.thickness,
      ...(isFlat ? { nearestThicknessMetres: nearest } : {}),
    },
  );
}

const doesNotFit = (recipe: Recipe, oven: CampOven) =>
  refusal(
    'MENU_NOTHING_FITS',
    ['oven', 'thickness'],
    { oven: oven.id },
    {
      what: recipe.name.toLowerCase(),
      kind: recipe.kind,
      floorMetres: floorOf(oven),
      depthMetres: oven.depth,
    },
  );
