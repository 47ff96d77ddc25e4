// How much of it goes into this oven, and how does it lie?
// Sources: as menu/fit/recipe-fit.ts, which fills it.

import type { CampOven } from '../../camp/camp.ts';
import { type OrRefusal, refusal } from '../../notice/notice.ts';
import { type Grams, grams, metres, ratio } from '../../quantity/unit.ts';
import { discArea, floorOf, riseOf } from '../geometry.ts';
import {
  drawsTogether,
  kindOfAsk,
  portionsOf,
  recipeToFit,
  thicknessOf,
  wedgesOf,
} from './as-recipe.ts';
import type { FitAsk, OvenFit } from './fit.ts';
import { cobblerLayers, dumplingLayers } from './layers.ts';
import { type RecipeFit, recipeFit } from './recipe-fit.ts';

/**
 * The most of it that goes into this oven with a finger left below the lid.
 *
 * @refuses  MENU_NOTHING_FITS — not one piece goes in: too thick, too wide, or no room under the lid
 */
export function whatFits(oven: CampOven, ask: FitAsk): OrRefusal<OvenFit> {
  const filled = recipeFit(oven, recipeToFit(ask));
  if (filled === undefined) return nothingFits(oven, ask);
  return layered(oven, ask, fitFrom(ask, filled));
}

/**
 * How so much of it lies in this oven, where it goes in. A flat dough keeps its thickness and leaves
 * floor free; without a thickness it is spread to the wall.
 *
 * @refuses  MENU_NOTHING_FITS — so much does not go in, or it makes not one piece
 */
export function howItLies(oven: CampOven, ask: FitAsk, mass: Grams): OrRefusal<OvenFit> {
  const spread = { ...ask, ...toTheWall(oven, ask, mass) };
  const filled = recipeFit(oven, recipeToFit(spread), mass);
  return filled === undefined
    ? nothingFits(oven, spread)
    : { ...fitFrom(spread, filled), isPart: true };
}

/** A batter runs to the wall whatever is wished; a dough that nobody gave a thickness is rolled to it. */
function toTheWall(oven: CampOven, ask: FitAsk, mass: Grams): Pick<FitAsk, 'thickness'> {
  const isFree = ask.thickness === undefined && ask.recipe === undefined;
  const isSpread = ask.what === 'batter' || (isFree && ['round', 'wedges'].includes(ask.what));
  if (!isSpread) return {};
  const lies = mass / riseOf(kindOfAsk(ask)).gramsPerCubicMetre / discArea(floorOf(oven));
  return { thickness: metres(lies / drawsTogether(ask)) };
}

function layered(oven: CampOven, ask: FitAsk, plain: OvenFit): OrRefusal<OvenFit> {
  if (ask.recipe !== undefined) return plain;
  if (ask.what !== 'cobbler' && ask.what !== 'dumplings') return plain;
  const lie = ask.what === 'cobbler' ? cobblerLayers(oven, ask) : dumplingLayers(oven, ask);
  const isEmpty = lie.layers.some((layer) => !(0 < layer.mass));
  return isEmpty ? nothingFits(oven, ask) : { ...plain, ...lie };
}

function fitFrom(ask: FitAsk, filled: RecipeFit): OvenFit {
  const pieces = ask.what === 'wedges' ? wedgesOf(ask) : filled.pieces;
  const { recipe, thickness } = ask;
  const isOwn = recipe !== undefined && thickness === undefined;
  const isRolledOut = !isOwn && recipeToFit(ask).target.thickness !== undefined;
  return {
    ...filled,
    what: ask.what,
    pieces,
    gramsEach: grams(filled.mass / pieces),
    ...(isRolledOut ? { rolledTo: thicknessOf(ask) } : {}),
    fullness: ratio(filled.thickness / filled.oven.depth),
    layers: [],
    isPart: false,
    reckoned: reckonedWith(ask),
    ...(recipe === undefined ? {} : { portions: portionsOf(recipe, filled.mass) }),
  };
}

const WATER_GRAMS_PER_CUBIC_METRE = 1e6;

function reckonedWith(ask: FitAsk): OvenFit['reckoned'] {
  const { gramsPerCubicMetre, rise } = riseOf(kindOfAsk(ask));
  return {
    heaviness: ratio(gramsPerCubicMetre / WATER_GRAMS_PER_CUBIC_METRE),
    rise: ratio(rise),
  };
}

const nothingFits = (oven: CampOven, ask: FitAsk) =>
  refusal(
    'MENU_NOTHING_FITS',
    ['oven', 'thickness', 'cutter'],
    { oven: oven.id },
    {
      what: ask.what,
      kind: kindOfAsk(ask),
      floorMetres: floorOf(oven),
      depthMetres: oven.depth,
      thicknessMetres: thicknessOf(ask),
      ...(ask.cutter === undefined ? {} : { cutterMetres: ask.cutter }),
    },
  );
