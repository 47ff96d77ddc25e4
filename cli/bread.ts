// One bread out of a recipe, and the spot it is made at: what `leaven` and `rise` ask alike.

import {
  type DishLeavening,
  type DoughStands,
  dishLeavening,
  type Formula,
  formulaFor,
  type Kelvin,
  kelvin,
  type Measures,
  type MenuDish,
  type Metres,
  metres,
  type PowderKept,
  type Recipe,
  readyRecipeWithId,
  renderText,
  type Say,
  type SheetDocument,
  sayFor,
} from '#engine';
import { EXIT, type ExitCode } from './exit.ts';
import { airOf, heightOf, type ReaderOptions, readerOf } from './reading.ts';
import { recipeFrom } from './recipe-reading.ts';
import type { Shell } from './shell.ts';

export interface BreadOptions extends ReaderOptions {
  readonly what: string;
  readonly air?: string;
  readonly height?: string;
  readonly written?: string;
}

export interface Bread {
  readonly recipe: Recipe;
  readonly air: Kelvin;
  readonly elevation: Metres;
  readonly say: Say;
  readonly assumed: readonly string[];
}

const USUAL_AIR = '18 C';

export function breadOf(options: BreadOptions, shell: Shell): Bread {
  const found =
    readyRecipeWithId(options.what.trim().toLowerCase()) ?? recipeFrom(options.what, shell);
  const writtenAt = options.written === undefined ? undefined : heightOf(options.written);
  const recipe = writtenAt === undefined ? found : { ...found, writtenAt };
  const say = sayFor({
    ...readerOf(options, usualMeasures(options)),
    plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } },
  });
  const air = kelvin(airOf(options.air ?? USUAL_AIR));
  return {
    recipe,
    air,
    elevation: options.height === undefined ? metres(0) : heightOf(options.height),
    say,
    assumed: [
      ...(options.air === undefined ? [`air ${say.degrees(air)}`] : []),
      ...(options.height === undefined ? ['low ground'] : []),
      ...(recipe.writtenAt === undefined ? ['a recipe for low ground'] : []),
    ],
  };
}

/** Speaks as the air or the height was written. */
const usualMeasures = ({ air = '', height = '' }: BreadOptions): Measures =>
  /f\b|ft|feet/i.test(`${air} ${height}`) ? 'us' : 'metric';

export interface BreadMade {
  readonly formula: Formula;
  readonly leavening: DishLeavening;
}

export function madeOf(
  { recipe, elevation, air }: Bread,
  more: { readonly powder?: PowderKept; readonly stands?: DoughStands },
): BreadMade {
  const dish: MenuDish = {
    id: recipe.id,
    name: recipe.name,
    recipe: recipe.id,
    serveAt: 0 as MenuDish['serveAt'],
    freeFrom: false,
    pins: {},
  };
  const formula = formulaFor({ dish, recipe, factor: 1, elevation, air });
  const leavening = dishLeavening({
    formula,
    recipe,
    elevation,
    serveAt: dish.serveAt,
    airAt: () => air,
    ...more,
  });
  return { formula, leavening };
}

export function printBread(sheet: SheetDocument, shell: Shell): ExitCode {
  shell.out(renderText(sheet, { width: shell.columns }));
  const isStopped = sheet.blocks.some((block) => block.type === 'notice' && block.level === 'stop');
  return isStopped ? EXIT.stopped : EXIT.fine;
}
