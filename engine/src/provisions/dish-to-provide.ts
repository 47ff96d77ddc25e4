// One planned dish, as this stage sees it; plan.ts hands in more than that.

import type { CoalPlan } from '../coals/coal-plan.ts';
import type { Formula } from '../formula/formula.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { MenuDish } from '../menu/menu.ts';
import type { Recipe } from '../menu/recipe.ts';
import type { DishSafety } from '../safety/care.ts';

/** A planned dish, as far as provisions/ looks at it. */
export interface DishToProvide {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly loads: readonly { readonly coals: CoalPlan; readonly load?: OvenLoad }[];
  readonly safety: DishSafety;
}
