// What was understood of a pasted recipe, what was guessed, and what was not understood: for the
// terminal and for paper. The app draws the same reading as lines that can be tapped.

import { measureText } from '../../formula/bench/line.ts';
import { percentagesOf } from '../../formula/dough.ts';
import type { FormulaPercentages } from '../../formula/formula.ts';
import { readAsIn } from '../../larder/index.ts';
import type { RecipeText } from '../../menu/read-recipe.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { type IngredientRead, isZero } from '../../menu/text-ingredients.ts';
import type { Block, FactRow, SheetDocument } from '../document.ts';
import { noticeText } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { gramsText, weighedText } from './bench/figures-part.ts';
import { spanSaid, writerLaid } from './writer-part.ts';

/** The reading of a pasted recipe as a sheet. */
export function recipeReadSheet(read: RecipeText, say: Say): SheetDocument {
  return {
    kind: 'recipe-read',
    title: read.title,
    eyebrow: 'As it was read',
    blocks: [
      { type: 'facts', rows: factsOf(read, say) },
      ...ingredientBlocks(read, say),
      ...stepBlocks(read, say),
      ...formulaBlocks(read),
      ...choiceBlocks(read),
      ...unreadBlocks(read),
      ...noticeBlocks(read, say),
    ],
  };
}

const MANNERS = { us: 'US cups and spoons', british: 'British', metric: 'metric' } as const;

function factsOf(read: RecipeText, say: Say) {
  const { recipe, kind, manner, mannerWord, heat, ovenSize } = read;
  const rows: (FactRow | undefined)[] = [
    { label: 'Kind', value: kind.kind.replace('-', ' ') },
    recipe && { label: 'Makes', value: makes(recipe.portions, recipe.division) },
    heat && { label: 'Heat', value: heatSaid(heat.low, heat.high, say) },
    ...writerRows(read, say),
    ovenSize && {
      label: ovenSize.isPan ? 'Kitchen pan, as an oven of' : 'Oven',
      value: say.length(ovenSize.diameter),
    },
    {
      label: 'Measures',
      value: MANNERS[manner],
      ...(mannerWord === undefined ? {} : { note: `by "${mannerWord.trim()}"` }),
    },
  ];
  return rows.filter((row) => row !== undefined);
}

/** What the writer's oven did, as far as the text says. */
function writerRows({ recipe }: RecipeText, say: Say): readonly FactRow[] {
  const { minutes, core, coals, firstRise, secondRise } = recipe?.target.writer ?? {};
  const rise = (label: string, said: typeof firstRise) =>
    said === undefined ? [] : [{ label, value: spanSaid(said, say.minutes), note: RISE_NOTE }];
  return [
    ...rise("Writer's first rise", firstRise),
    ...rise("Writer's second rise", secondRise),
    ...(minutes === undefined
      ? []
      : [{ label: "Writer's minutes", value: spanSaid(minutes, say.minutes) }]),
    ...(core === undefined ? [] : [{ label: 'Done inside at', value: say.degrees(core) }]),
    ...(coals === undefined ? [] : [{ label: "Writer's coals", value: writerLaid(coals) }]),
  ];
}

const RISE_NOTE = 'how long it takes in your air is reckoned when it is planned';

const heatSaid = (low: number, high: number, say: Say) =>
  low === high ? say.oven(low) : `${say.oven(low)} to ${say.oven(high)}`;

function makes(portions: number, division: readonly { count: number; shape: string }[]): string {
  const rounded = Math.round(portions * 10) / 10;
  const pieces = division.map(({ count, shape }) => `${count} ${shape}${count === 1 ? '' : 's'}`);
  return [`${rounded} portion${rounded === 1 ? '' : 's'}`, ...pieces].join(', ');
}

// --- Ingredients ------------------------------------------------------------------------------------

function ingredientBlocks({ ingredients, recipe }: RecipeText, say: Say): readonly Block[] {
  if (ingredients.length === 0) return [];
  return [
    { type: 'heading', text: 'What goes in' },
    {
      type: 'table',
      caption: 'Each line as it stands, and what it was read as',
      head: ['as written', 'read as', 'weighs', 'between'],
      numeric: [false, false, true, true],
      rows: ingredients.map((each, at) => ingredientRow(each, recipe?.ingredients[at], say)),
    },
  ];
}

function ingredientRow(
  { written, line, grams, from }: IngredientRead,
  made: Ingredient | undefined,
  say: Say,
): readonly string[] {
  const { food, forms } = line.search;
  const form = [...forms.measured, ...forms.after].join(', ');
  const name = food === undefined ? 'not understood' : readAsIn(line.search);
  const { weight } = line;
  const isWide = weight !== undefined && 0.005 < weight.high / weight.low - 1;
  return [
    written,
    form === '' || food === undefined ? name : `${name}; ${form}`,
    from === 'unknown'
      ? isZero(line)
        ? 'nothing'
        : 'not known'
      : `${amountSaid(grams, made, say)}${from === 'weighed' ? '' : ' assumed'}`,
    isWide ? `${massSaid(weight.low, grams, say)} to ${massSaid(weight.high, grams, say)}` : '',
  ];
}

/** Below an ounce a scale shows grams and a hand takes spoons: as the formula has it. */
const SMALL_GRAMS = 28.35;

const massSaid = (mass: number, likely: number, say: Say) =>
  likely < SMALL_GRAMS ? gramsText(mass) : say.mass(mass);

function amountSaid(mass: number, made: Ingredient | undefined, say: Say): string {
  if (SMALL_GRAMS <= mass) return say.mass(mass);
  const measure = made === undefined ? '' : measureText(made.food, mass, made.asWritten);
  return weighedText(mass, measure);
}

// --- Work, dough, and what is open --------------------------------------------------------------------

function stepBlocks({ recipe }: RecipeText, say: Say): readonly Block[] {
  if (recipe === undefined || recipe.steps.length === 0) return [];
  return [
    { type: 'heading', text: 'What is done' },
    {
      type: 'steps',
      rows: recipe.steps.map((step) => ({ when: say.minutes(step.minutes), what: step.say })),
    },
  ];
}

const FIGURES: readonly (readonly [string, keyof FormulaPercentages])[] = [
  ['water in all', 'hydration'],
  ['fat', 'fat'],
  ['salt', 'salt'],
  ['sugar', 'sugar'],
  ['powder', 'powder'],
  ['soda', 'soda'],
  ['yeast', 'yeast'],
];
const ROUGH = 3;

/** Shares of flour, where there is flour enough for a dough. */
function formulaBlocks({ recipe }: RecipeText): readonly Block[] {
  const lines = (recipe?.ingredients ?? []).map((ingredient) => ({
    ingredient,
    grams: ingredient.grams,
  }));
  const shares = percentagesOf(lines);
  if (shares === undefined || ROUGH < shares.hydration) return [];
  const rows = FIGURES.filter(([, key]) => 0 < shares[key]).map(([label, key]) => ({
    label,
    value: `${(100 * shares[key]).toFixed(shares[key] < 0.1 ? 1 : 0)} %`,
  }));
  return [
    { type: 'heading', text: 'As a dough, in shares of the flour' },
    { type: 'facts', rows },
  ];
}

function unreadBlocks({ text, unread }: RecipeText): readonly Block[] {
  const items = unread.map(({ span }) => text.slice(span.from, span.to).trim());
  if (items.length === 0) return [];
  return [
    { type: 'heading', text: 'Not understood, kept as it stands' },
    { type: 'list', items, tick: false },
  ];
}

const CHOICE = 'LARDER_FOOD_CHOICE';

/** One list, each food once however often it is named. */
function choiceBlocks({ notices }: RecipeText): readonly Block[] {
  const rows = new Map<string, FactRow>();
  for (const { code, values } of notices) {
    if (code !== CHOICE) continue;
    const { name, taken, others } = values;
    const label = String(name).toLowerCase();
    rows.set(`${label} ${taken}`, { label, value: String(taken), note: `or ${others}` });
  }
  if (rows.size === 0) return [];
  return [
    { type: 'heading', text: 'Taken as the usual kind; yours may be another' },
    { type: 'facts', rows: [...rows.values()] },
  ];
}

/** Each sentence once. */
function noticeBlocks({ notices }: RecipeText, say: Say): readonly Block[] {
  const seen = new Set<string>();
  return notices.flatMap((each): readonly Block[] => {
    const text = noticeText(each, say);
    if (each.code === CHOICE || seen.has(text)) return [];
    seen.add(text);
    return [{ type: 'notice', level: each.level, text, code: each.code }];
  });
}
