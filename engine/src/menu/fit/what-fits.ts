// How much of it goes into this oven, and how does it lie?
// Sources: as menu/lay.ts, which lays it; potFill for pots.

import type { CampOven } from '../../camp/camp.ts';
import { type OrRefusal, refusal } from '../../notice/notice.ts';
import { grams, ratio } from '../../quantity/unit.ts';
import { massToFill, mostIn, wholeLot } from '../fill-oven.ts';
import { discArea, floorOf, riseOf, workingMass } from '../geometry.ts';
import { fitsIn, type Lying, layIn } from '../lay.ts';
import { type Lot, partOfLot } from '../lots.ts';
import { heightFill } from '../under-lid.ts';
import { kindOfFit, recipeToFit, thicknessOf, wedgesOf } from './as-recipe.ts';
import type { FitAsk, OvenFit } from './fit.ts';
import { cobblerLayers, dumplingLayers } from './layers.ts';

/**
 * The most of it that goes into this oven with a finger left below the lid.
 *
 * @refuses  MENU_NOTHING_FITS — not one piece goes in: too thick, too wide, or no room under the lid
 */
export function whatFits(oven: CampOven, ask: FitAsk): OrRefusal<OvenFit> {
  const lot = wholeLot(recipeToFit(ask));
  if (lot === undefined) throw new RangeError(`nothing is asked about with ${ask.what}`);
  const most = mostOf(oven, lot);
  const lying = layIn(oven, most);
  if (!(0 < most.mass) || !fitsIn(lying)) return nothingFits(oven, ask);
  const pieces = ask.what === 'wedges' ? wedgesOf(ask) : most.count;
  const plain = fitFrom(oven, ask, { lot: most, lying, pieces });
  if (ask.what !== 'cobbler' && ask.what !== 'dumplings') return plain;
  const layered = ask.what === 'cobbler' ? cobblerLayers(oven, ask) : dumplingLayers(oven, ask);
  const isEmpty = layered.layers.some((layer) => !(0 < layer.mass));
  return isEmpty ? nothingFits(oven, ask) : { ...plain, ...layered };
}

/**
 * A pot to its three quarters; what has its thickness keeps it over the whole floor; all else as a
 * recipe of its kind would fill it.
 */
function mostOf(oven: CampOven, lot: Lot): Lot {
  const { thickness } = lot.recipe.target;
  if (thickness !== undefined && lot.lie !== 'pieces' && lot.inOven.contact !== 'tin') {
    const { gramsPerCubicMetre } = riseOf(lot.recipe.kind);
    const mass = discArea(floorOf(oven)) * thickness * gramsPerCubicMetre;
    return partOfLot(lot, mass / lot.mass);
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

function fitFrom(
  oven: CampOven,
  ask: FitAsk,
  { lot, lying, pieces }: { readonly lot: Lot; readonly lying: Lying; readonly pieces: number },
): OvenFit {
  return {
    what: ask.what,
    oven,
    inOven: lot.inOven,
    floor: floorOf(oven),
    isFloorMeasured: oven.floorDiameter !== undefined,
    mass: lot.mass,
    pieces,
    gramsEach: grams(lot.mass / pieces),
    thickness: lying.thickness,
    ...(lot.recipe.target.thickness === undefined ? {} : { rolledTo: thicknessOf(ask) }),
    risenHeight: lying.risenHeight,
    headroom: lying.headroom,
    limitedBy: limitOf(oven, lot, lying),
    placed: lying.pieces,
    fullness: ratio(lying.thickness / oven.depth),
    layers: [],
  };
}

/** From here on the lid is what is in the way: a loaf is planned to nine tenths of its room. */
const AT_THE_LID = 0.89;

function limitOf(oven: CampOven, lot: Lot, lying: Lying): OvenFit['limitedBy'] {
  if (lying.shape === 'pot') return 'pot';
  if (AT_THE_LID <= heightFill(oven, lot.inOven, lying.risenHeight)) return 'lid';
  return lot.inOven.contact === 'tin' ? 'tin' : 'floor';
}

const nothingFits = (oven: CampOven, ask: FitAsk) =>
  refusal(
    'MENU_NOTHING_FITS',
    ['oven', 'thickness', 'cutter'],
    { oven: oven.id },
    {
      what: ask.what,
      kind: kindOfFit(ask.what),
      floorMetres: floorOf(oven),
      depthMetres: oven.depth,
      thicknessMetres: thicknessOf(ask),
      ...(ask.cutter === undefined ? {} : { cutterMetres: ask.cutter }),
    },
  );
