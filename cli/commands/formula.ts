// `emberwright formula`: what a recipe is as a dough, beside another, with targets, with swaps.

import {
  balanceOf,
  benchSheet,
  characterOf,
  dishWithoutDough,
  type Filled,
  filledBy,
  grams,
  isKnownSize,
  isRefusal,
  type Measures,
  metres,
  nominalOven,
  type OrRefusal,
  portionSheet,
  type Recipe,
  type Refusal,
  readyRecipeWithId,
  refusal,
  refusalText,
  renderText,
  type Say,
  type SheetDocument,
  sayFor,
  solveTargets,
  swapName,
  swapped,
  swapSheet,
  swapsFor,
  targetSheet,
  type Version,
  type WeighedIngredient,
} from '#engine';
import { campFrom } from '../camp-reading.ts';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { targetsOf } from '../formula-reading.ts';
import { quantityOf, type ReaderOptions, readerOf } from '../reading.ts';
import { recipeFrom } from '../recipe-reading.ts';
import type { Shell } from '../shell.ts';

export interface FormulaOptions extends ReaderOptions {
  readonly recipe?: string;
  readonly beside?: readonly string[];
  readonly target?: readonly string[];
  readonly mass?: string;
  readonly fill?: string;
  readonly thick?: string;
  readonly hold?: readonly string[];
  readonly swap?: string;
}

export function formula(what: string, options: FormulaOptions, shell: Shell): ExitCode {
  const recipe = recipeOf(what, options.recipe, shell);
  const say = sayFor({
    ...readerOf(options, usualMeasures(options)),
    plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } },
  });
  const lines = linesOf(recipe);
  const dish = dishWithoutDough(recipe);
  if (dish !== undefined) {
    if (isWishing(options)) return stop(dish.refusal, { say, shell });
    print(portionSheet(`${recipe.name} by weight`, dish, say), shell);
    return EXIT.fine;
  }
  if (options.swap !== undefined) return toldSwap(recipe, options.swap, { say, shell });
  const filled = filledFor(recipe, options);
  if (filled !== undefined && isRefusal(filled)) return stop(filled, { say, shell });
  const mass = options.mass === undefined ? filled?.mass : massWish(options.mass);
  const targets = targetsOf({ ...options, mass }, lines);
  if (targets !== undefined) {
    const outcome = solveTargets(lines, targets, recipe.kind);
    print(targetSheet(`${recipe.name}: what goes in`, outcome, say, filled), shell);
    return isRefusal(outcome) ? EXIT.stopped : EXIT.fine;
  }
  return toldBench(recipe, options.beside ?? [], { say, shell });
}

/** Wishes that only a dough can meet; a version beside it as well. */
const isWishing = ({ beside, target, mass, fill, thick, hold, swap }: FormulaOptions) =>
  [beside, target, mass, fill, thick, hold, swap].some((wish) => wish !== undefined);

interface Told {
  readonly say: Say;
  readonly shell: Shell;
}

const print = (sheet: SheetDocument, shell: Shell) =>
  shell.out(renderText(sheet, { width: shell.columns }));

function stop(refusal: Refusal, { say, shell }: Told): ExitCode {
  shell.error(`Stop: ${refusalText(refusal, say)}\n`);
  return EXIT.stopped;
}

const linesOf = ({ ingredients }: Recipe): readonly WeighedIngredient[] =>
  ingredients.map((ingredient) => ({ ingredient, grams: ingredient.grams }));

/** A ready recipe by its name, one of a camp, or the recipe of a file. */
function recipeOf(what: string, id: string | undefined, shell: Shell): Recipe {
  const ready = readyRecipeWithId(what);
  if (ready !== undefined) return ready;
  if (id === undefined) return recipeFrom(what, shell);
  const { recipes } = campFrom(what, shell).menu;
  const found = recipes.find((recipe) => recipe.id === id);
  if (found !== undefined) return found;
  const known = recipes.map((recipe) => recipe.id).join(', ');
  throw wrongUse('--recipe', `"${id}"`, `one of ${known}`, 'Write its id as in the camp file.');
}

function toldBench(recipe: Recipe, names: readonly string[], told: Told): ExitCode {
  const recipes = [recipe, ...names.map((name) => recipeOf(name, undefined, told.shell))];
  const versions: Version[] = [];
  for (const { name, ingredients } of recipes) {
    const lines = ingredients.map((ingredient) => ({ ingredient, grams: ingredient.grams }));
    const character = characterOf(lines);
    if (isRefusal(character)) return stop(character, told);
    versions.push({ name, lines, character });
  }
  const [version, ...beside] = versions;
  if (version === undefined) throw new RangeError('a bench has a version');
  const balance = balanceOf(version.lines, version.character, recipe.kind);
  const title = `${recipe.name} as a formula`;
  print(benchSheet({ title, version, beside, balance }, told.say), told.shell);
  return EXIT.fine;
}

/** "butter=lard": the line that has the first word in its name becomes the second. */
function toldSwap(recipe: Recipe, text: string, told: Told): ExitCode {
  const [from = '', to = ''] = text.split('=').map((part) => part.trim().toLowerCase());
  const lines = linesOf(recipe);
  const line = lines.findIndex(({ ingredient }) => spoken(ingredient.name).includes(spoken(from)));
  if (from === '' || to === '' || line === -1) {
    const names = lines.map(({ ingredient }) => ingredient.name).join(', ');
    throw wrongUse('--swap', `"${text}"`, `one of its own foods (${names}) = another`, SWAP_HELP);
  }
  const offers = swapsFor(lines).filter((offer) => offer.line === line);
  const offer = offers.find(
    (each) => each.to === to || spoken(swapName(each.to)).includes(spoken(to)),
  );
  const answer = swapped(lines, { line, to: offer?.to ?? to });
  if (isRefusal(answer)) return stop(answer, told);
  const name = lines[line]!.ingredient.name;
  const title = `${recipe.name}: ${swapName(offer?.to ?? to)} in place of ${name}`;
  print(swapSheet(title, answer, told.say), told.shell);
  return EXIT.fine;
}

/** "self-rising" and "self rising" are one word. */
const spoken = (name: string) => name.replaceAll('-', ' ').toLowerCase();

const SWAP_HELP = 'Write --swap "lard=butter".';

/** What fills the oven that is wished for; undefined where none is. */
function filledFor(recipe: Recipe, options: FormulaOptions): OrRefusal<Filled> | undefined {
  const { mass, fill, thick } = options;
  if (fill === undefined) {
    if (thick === undefined) return undefined;
    throw wrongUse('--thick', `"${thick}"`, 'an oven to fill', 'Add --fill "10 in".');
  }
  const diameter = metres(quantityOf('--fill', fill, 'length', '10 in'));
  if (!isKnownSize(diameter)) {
    return refusal('MENU_OVEN_SIZE_UNKNOWN', ['oven'], {}, { diameterMetres: diameter });
  }
  const rolled = thick === undefined ? undefined : quantityOf('--thick', thick, 'length', '1/2 in');
  if (rolled !== undefined && !(0 < rolled)) {
    throw wrongUse('--thick', `"${thick}"`, 'more than nothing', 'Write --thick "1/2 in".');
  }
  return filledBy(recipe, {
    oven: nominalOven(diameter),
    ...(rolled === undefined ? {} : { rolledTo: metres(rolled) }),
    ...(mass === undefined ? {} : { mass: grams(massWish(mass)) }),
  });
}

const massWish = (text: string) => quantityOf('--mass', text, 'mass', '540 g');

/** Speaks metric unless an oven or a weight was written in inches or pounds. */
const usualMeasures = ({ fill = '', thick = '', mass = '' }: FormulaOptions): Measures =>
  /\b(in|inch(es)?|lb|oz)\b|"/i.test(`${fill} ${thick} ${mass}`) ? 'us' : 'metric';
