// One bread out of a recipe, and the spot it is made at: what `leaven` and `rise` ask alike.

import {
  assumedOfBread,
  type BreadWish,
  kelvin,
  type Measures,
  type Recipe,
  readyRecipeWithId,
  renderText,
  type Say,
  type SheetDocument,
  sayFor,
  usualBread,
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

export interface Bread extends Pick<BreadWish, 'air' | 'elevation'> {
  readonly recipe: Recipe;
  readonly say: Say;
  readonly assumed: readonly string[];
}

export function breadOf(options: BreadOptions, shell: Shell): Bread {
  const found =
    readyRecipeWithId(options.what.trim().toLowerCase()) ?? recipeFrom(options.what, shell);
  const writtenAt = options.written === undefined ? undefined : heightOf(options.written);
  const recipe = writtenAt === undefined ? found : { ...found, writtenAt };
  const say = sayFor({
    ...readerOf(options, usualMeasures(options, recipe)),
    plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } },
  });
  const air = options.air === undefined ? usualBread.air : kelvin(airOf(options.air));
  return {
    recipe,
    air,
    elevation: options.height === undefined ? usualBread.elevation : heightOf(options.height),
    say,
    assumed: assumedOfBread({ ...options, written: recipe.writtenAt }, say),
  };
}

/** Speaks as the air or the height was written; where neither is, as the recipe measures. */
function usualMeasures({ air = '', height = '' }: BreadOptions, { ingredients }: Recipe): Measures {
  if (/f\b|ft|feet/i.test(`${air} ${height}`)) return 'us';
  if (air !== '' || height !== '') return 'metric';
  return ingredients.some(({ asWritten }) => US_WORD.test(asWritten)) ? 'us' : 'metric';
}

/** Spoons are everybody's. */
const US_WORD = /\b(cups?|oz|lb)\b/i;

export function printBread(sheet: SheetDocument, shell: Shell): ExitCode {
  shell.out(renderText(sheet, { width: shell.columns }));
  const isStopped = sheet.blocks.some((block) => block.type === 'notice' && block.level === 'stop');
  return isStopped ? EXIT.stopped : EXIT.fine;
}
