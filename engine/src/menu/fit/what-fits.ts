// How much of it goes into this oven, and how does it lie?
// Sources: as menu/fit/recipe-fit.ts, which fills it.

import type { CampOven } from '../../camp/camp.ts';
import { type OrRefusal, refusal } from '../../notice/notice.ts';
import { grams, ratio } from '../../quantity/unit.ts';
import { floorOf } from '../geometry.ts';
import { kindOfFit, recipeToFit, thicknessOf, wedgesOf } from './as-recipe.ts';
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
  const plain = fitFrom(ask, filled);
  if (ask.what !== 'cobbler' && ask.what !== 'dumplings') return plain;
  const layered = ask.what === 'cobbler' ? cobblerLayers(oven, ask) : dumplingLayers(oven, ask);
  const isEmpty = layered.layers.some((layer) => !(0 < layer.mass));
  return isEmpty ? nothingFits(oven, ask) : { ...plain, ...layered };
}

function fitFrom(ask: FitAsk, filled: RecipeFit): OvenFit {
  const pieces = ask.what === 'wedges' ? wedgesOf(ask) : filled.pieces;
  const isRolledOut = recipeToFit(ask).target.thickness !== undefined;
  return {
    ...filled,
    what: ask.what,
    pieces,
    gramsEach: grams(filled.mass / pieces),
    ...(isRolledOut ? { rolledTo: thicknessOf(ask) } : {}),
    fullness: ratio(filled.thickness / filled.oven.depth),
    layers: [],
  };
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
