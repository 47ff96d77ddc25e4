// When is it done? The recipe's core or its kind's, lowered by the local boil, raised for safety.

import type { Air } from '../camp/camp.ts';
import type { Recipe } from '../menu/recipe.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { fromCelsius, type Kelvin, kelvin, kelvinDifference } from '../quantity/unit.ts';
import type { DoneTarget } from './bake-plan.ts';
import { figuresOfDish } from './kinds.ts';

/** Kept below the boil, because the last kelvin never come: a judgement (crumb-below-boil). */
export const BELOW_BOIL_KELVIN = 3;

/**
 * The core to reach and the signs to look for.
 *
 * @param leastCore  what safety asks for; wins over the recipe
 * @notice  BAKE_TARGET_CAPPED, BAKE_SAFE_CORE_RAISED, BAKE_SAFE_CORE_ABOVE_BOIL
 */
export function doneTargetFor(asked: {
  readonly recipe: Recipe;
  readonly air: Pick<Air, 'boiling'>;
  readonly leastCore?: Kelvin;
}): { readonly done: DoneTarget; readonly notices: readonly Notice[] } {
  const { recipe, air, leastCore } = asked;
  const figures = figuresOfDish(recipe);
  const byKind = figures.coreCelsius === null ? undefined : fromCelsius(figures.coreCelsius);
  const knownMeat = recipe.kind === 'roast' ? leastCore : undefined;
  const wantedCore = recipe.target.core ?? knownMeat ?? byKind;
  const signs = {
    margin: kelvinDifference(BELOW_BOIL_KELVIN),
    ...(figures.top === null ? {} : { top: figures.top }),
    ...(figures.bottom === null ? {} : { bottom: figures.bottom }),
    signs: figures.signs,
  };
  if (wantedCore === undefined) return { done: { cappedByBoil: false, ...signs }, notices: [] };
  const highest = kelvin(air.boiling - BELOW_BOIL_KELVIN);
  const capped = kelvin(Math.min(wantedCore, highest)); // dough T_done rule (crumb-below-boil)
  const core = kelvin(Math.max(capped, leastCore ?? 0));
  return {
    done: { core, wantedCore, cappedByBoil: core < wantedCore, ...signs },
    notices: targetNotices({ recipe: recipe.id, wantedCore, core, highest, leastCore }),
  };
}

/** A cap smaller than a probe can tell is not worth a sentence. */
const WORTH_SAYING_KELVIN = 1;

function targetNotices(found: {
  readonly recipe: string;
  readonly wantedCore: Kelvin;
  readonly core: Kelvin;
  readonly highest: Kelvin;
  readonly leastCore: Kelvin | undefined;
}): readonly Notice[] {
  const { wantedCore, core, highest, leastCore } = found;
  const about = { recipe: found.recipe };
  const values = {
    wantedKelvin: wantedCore,
    coreKelvin: core,
    boilingKelvin: highest + BELOW_BOIL_KELVIN,
  };
  const notices: Notice[] = [];
  if (core < wantedCore - WORTH_SAYING_KELVIN)
    notices.push(notice('BAKE_TARGET_CAPPED', 'note', about, values));
  if (leastCore !== undefined && wantedCore < leastCore) {
    notices.push(notice('BAKE_SAFE_CORE_RAISED', 'note', about, values));
  }
  if (leastCore !== undefined && highest < leastCore) {
    notices.push(notice('BAKE_SAFE_CORE_ABOVE_BOIL', 'danger', about, values));
  }
  return notices;
}
