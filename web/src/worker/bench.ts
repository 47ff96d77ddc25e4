// The formula bench: figures, the version beside, targets and swaps, all from the file as typed.

import {
  balanceOf,
  benchSheet,
  type Camp,
  characterOf,
  cookMeasureText,
  type DoughCharacter,
  dishWithoutDough,
  type Filled,
  type FormulaTargets,
  filledBy,
  foodNamed,
  foodWithKey,
  grams,
  householdMeasure,
  isRefusal,
  measureOf,
  metres,
  type OrRefusal,
  portionSheet,
  type Recipe,
  type Refusal,
  ratio,
  readyRecipeWithId,
  refusalText,
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
  writtenGrams,
} from '#engine';
import { readCampFile } from '#formats';
import type {
  BenchAnswer,
  BenchLine,
  BenchQuestion,
  BenchTargets,
  Proposal,
  ProposedItem,
} from './bench-messages.ts';

export function benchAnswer(question: BenchQuestion): BenchAnswer {
  const read = readCampFile(question.file);
  if (!read.ok) return { troubles: read.troubles };
  const recipe = read.menu.recipes.find(({ id }) => id === question.recipe);
  if (recipe === undefined) return { troubles: [] };
  const { camp, menu } = read;
  const say = sayFor({ ...question.voice, plan: { camp, menu } });
  const lines = linesOf(recipe);
  return {
    troubles: [],
    ...benchPart(recipe, lines, question, say),
    ovens: camp.ovens.map(({ id, name }) => ({ id, name })),
    ...(question.targets === undefined
      ? {}
      : { target: targetProposal({ recipe, camp }, question.targets, say) }),
    ...(question.swap === undefined ? {} : { swap: swapProposal(lines, question.swap, say) }),
  };
}

const linesOf = ({ ingredients }: Recipe): readonly WeighedIngredient[] =>
  ingredients.map((ingredient) => ({ ingredient, grams: ingredient.grams }));

function benchPart(
  recipe: Recipe,
  lines: readonly WeighedIngredient[],
  question: BenchQuestion,
  say: Say,
): Pick<BenchAnswer, 'sheet' | 'lines' | 'flourGrams' | 'brief'> {
  const character = characterOf(lines);
  const title = 'As a formula';
  if (isRefusal(character)) {
    const dish = dishWithoutDough(recipe);
    if (dish !== undefined) {
      return { sheet: portionSheet('By weight', dish, say), lines: benchLines(lines, 0) };
    }
    return { sheet: refusedSheet(title, character, say), lines: benchLines(lines, 0) };
  }
  const balance = balanceOf(lines, character, recipe.kind);
  const version = { name: 'Now', lines, character };
  const beside = besideVersion(question, lines);
  return {
    sheet: benchSheet(
      { title, version, beside: beside === undefined ? [] : [beside], balance },
      say,
    ),
    lines: benchLines(lines, character.flour),
    flourGrams: character.flour,
    brief: briefOf(character, say),
  };
}

const briefOf = ({ figures, batch }: DoughCharacter, say: Say): string =>
  [
    `${say.percent(figures.hydration.share)} water`,
    `${say.percent(figures.fat.share)} fat`,
    `${say.percent(figures.salt.share)} salt`,
    say.mass(batch),
  ].join(' · ');

const refusedSheet = (title: string, refusal: Refusal, say: Say): SheetDocument => ({
  kind: 'bench',
  title,
  blocks: [{ type: 'notice', level: 'stop', text: refusalText(refusal, say), code: refusal.code }],
});

/** Undefined where it is no dough, or where it is the very same lines. */
function besideVersion(
  { beside }: BenchQuestion,
  lines: readonly WeighedIngredient[],
): Version | undefined {
  const recipe = beside === undefined ? undefined : besideRecipe(beside);
  if (beside === undefined || recipe === undefined) return undefined;
  const other = linesOf(recipe);
  const character = characterOf(other);
  if (isRefusal(character) || areSame(other, lines)) return undefined;
  return { name: beside.name ?? recipe.name, lines: other, character };
}

function besideRecipe({ file, recipe }: NonNullable<BenchQuestion['beside']>): Recipe | undefined {
  if (file === undefined) return readyRecipeWithId(recipe);
  const read = readCampFile(file);
  return read.ok ? read.menu.recipes.find(({ id }) => id === recipe) : undefined;
}

const areSame = (one: readonly WeighedIngredient[], other: readonly WeighedIngredient[]) =>
  one.length === other.length &&
  one.every(
    (line, at) =>
      line.grams === other[at]!.grams && line.ingredient.name === other[at]!.ingredient.name,
  );

/** The same cup as on the sheet beside it; words that are no cup or spoon stay as they were typed. */
const measureBeside = (line: WeighedIngredient) =>
  writtenGrams(line.ingredient) === undefined ? line.ingredient.asWritten : measureOf(line);

function benchLines(lines: readonly WeighedIngredient[], flour: number): readonly BenchLine[] {
  const offers = swapsFor(lines);
  return lines.map(({ ingredient, grams: mass }, at) => ({
    name: ingredient.name,
    grams: mass,
    measure: measureBeside({ ingredient, grams: mass }),
    ...(0 < flour ? { percent: (100 * mass) / flour } : {}),
    isFlour: ingredient.part === 'flour' || ingredient.part === 'meal',
    offers: offers.filter(({ line }) => line === at).map(({ to }) => ({ to, label: swapName(to) })),
  }));
}

function targetProposal(
  { recipe, camp }: { readonly recipe: Recipe; readonly camp: Camp },
  wished: BenchTargets,
  say: Say,
): Proposal {
  const { batchGrams, figures, held } = wished;
  const stopped = (refusal: Refusal) => ({
    sheet: refusedSheet('What goes in', refusal, say),
    items: [],
  });
  const dish = dishWithoutDough(recipe);
  if (dish !== undefined) return stopped(dish.refusal);
  const filled = filledFor(recipe, camp, wished);
  if (filled !== undefined && isRefusal(filled)) return stopped(filled);
  const batch = batchGrams ?? filled?.mass;
  const lines = linesOf(recipe);
  const targets: FormulaTargets = {
    ...(batch === undefined ? {} : { batch: grams(batch) }),
    figures: Object.fromEntries(
      Object.entries(figures).map(([name, share]) => [name, ratio(share)]),
    ),
    held: held.map((line) => ({ line, grams: lines[line]?.grams ?? grams(0) })),
  };
  const outcome = solveTargets(lines, targets, recipe.kind);
  const sheet = targetSheet('What goes in', outcome, say, filled);
  const answer = isRefusal(outcome) ? outcome.nearest : outcome;
  return { sheet, items: answer === undefined ? [] : itemsFor(lines, answer.lines) };
}

/** What fills the oven that is wished for; undefined where none is, or the camp has lost it. */
function filledFor(
  recipe: Recipe,
  camp: Camp,
  { fill, batchGrams }: BenchTargets,
): OrRefusal<Filled> | undefined {
  const oven = camp.ovens.find(({ id }) => id === fill?.oven);
  if (oven === undefined || fill === undefined) return undefined;
  return filledBy(recipe, {
    oven,
    ...(fill.thickMetres === undefined ? {} : { rolledTo: metres(fill.thickMetres) }),
    ...(batchGrams === undefined ? {} : { mass: grams(batchGrams) }),
  });
}

function swapProposal(
  lines: readonly WeighedIngredient[],
  swap: NonNullable<BenchQuestion['swap']>,
  say: Say,
): Proposal {
  const name = lines[swap.line]?.ingredient.name ?? '';
  const food = swapName(swap.to);
  const title = `${food.charAt(0).toUpperCase()}${food.slice(1)} in place of ${name}`;
  const answer = swapped(lines, swap);
  if (isRefusal(answer)) return { sheet: refusedSheet(title, answer, say), items: [] };
  return { sheet: swapSheet(title, answer, say), items: itemsFor(lines, answer.lines) };
}

/** Each line of the changed recipe as the one it was, with its new weight, or as a new one. */
function itemsFor(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
): readonly ProposedItem[] {
  const used = new Set<number>();
  return after.map((line) => {
    const at = before.findIndex(
      (old, index) => !used.has(index) && old.ingredient.name === line.ingredient.name,
    );
    if (at === -1) return { changed: newItem(line) };
    used.add(at);
    const isSame = Math.abs(before[at]!.grams - line.grams) < 0.05;
    return { at, changed: isSame ? {} : written(line) };
  });
}

/** Tenths of a gram; what no scale shows is not written. */
function written({ ingredient, grams: mass }: WeighedIngredient): Readonly<Record<string, string>> {
  const food = ingredient.food === undefined ? undefined : foodWithKey(ingredient.food);
  const measure = food && householdMeasure(food, mass, ingredient.asWritten);
  return {
    weight: `${Math.max(0.1, Math.round(mass * 10) / 10)} g`,
    ...(measure === undefined ? {} : { measure: cookMeasureText(measure, 'plain') }),
  };
}

function newItem(line: WeighedIngredient): Readonly<Record<string, string>> {
  const { name, food } = line.ingredient;
  const isNamed = food === undefined || foodNamed(name)?.key === food;
  return { name, ...(isNamed ? {} : { food }), ...written(line) };
}
