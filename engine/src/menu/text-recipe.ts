// A pasted recipe as the engine cooks it: what the text says is kept, what it leaves open has a
// usual value, and each of those is said.
// Sources: usual heats, portions and minutes are ours, common practice.

import { allergensNamed, openAllergensOf } from '../larder/allergens.ts';
import { calledIn } from '../larder/find-food.ts';
import type { Food } from '../larder/food.ts';
import { foodWithKey } from '../larder/larder.ts';
import { type Notice, notice } from '../notice/notice.ts';
import {
  fromCelsius,
  fromFahrenheit,
  grams,
  type Kelvin,
  kelvin,
  minutes,
} from '../quantity/index.ts';
import { richFigures, richnessOf } from './enriched.ts';
import type { Ingredient, Piece, Recipe, RecipeKind, RecipeTarget, WriterSaid } from './recipe.ts';
import type { HeatRead, SizeRead, YieldRead } from './text-facts.ts';
import { type IngredientRead, isZero } from './text-ingredients.ts';
import { type KindGuess, methodFor } from './text-kind.ts';
import type { CoalsRead, CoreRead } from './text-oven.ts';
import { type StepRead, type StepsMade, stepsFor, usualCookMinutes } from './text-steps.ts';

export interface RecipeParts {
  readonly title: string;
  readonly kind: KindGuess;
  readonly ingredients: readonly IngredientRead[];
  readonly steps: readonly StepRead[];
  readonly yield?: YieldRead;
  readonly heat?: HeatRead;
  readonly ovenSize?: SizeRead;
  readonly coals?: CoalsRead;
  readonly core?: CoreRead;
  /** The cook's own word. */
  readonly portions?: number;
}

export interface RecipeMade {
  readonly recipe: Recipe;
  readonly ingredients: readonly IngredientRead[];
  readonly notices: readonly Notice[];
}

/** The recipe; undefined where there is nothing to cook. */
export function recipeFor(parts: RecipeParts): RecipeMade | undefined {
  const { kind, title, ingredients } = parts;
  if (ingredients.length === 0) return undefined;
  const made = stepsFor(parts.steps, kind.kind);
  const mass = ingredients.reduce((sum, each) => sum + each.grams, 0);
  const portions = portionsFrom(parts, mass);
  const division = divisionFrom(parts, mass, portions.count);
  return {
    recipe: {
      id: idFrom(title),
      name: title,
      kind: kind.kind,
      method: methodFor(kind.kind),
      portions: portions.count,
      ingredients: ingredients.slice(0, MOST_INGREDIENTS).map(ingredientFrom),
      steps: made.steps,
      target: targetFrom(parts, made),
      division,
      contains: [],
    },
    ingredients,
    notices: [
      ...ingredients.flatMap(ingredientNotices),
      ...(portions.isGuessed
        ? [notice('MENU_TEXT_PORTIONS', 'doubt', {}, { portions: portions.count })]
        : []),
      ...heatNotices(parts),
      ...coalsNotices(parts.coals),
      ...addedNotices(made),
    ],
  };
}

/** Work of hands or hours that was put in is a doubt; what any oven needs is a note. */
function addedNotices({ added }: StepsMade): readonly Notice[] {
  if (added.length === 0) return [];
  const isDoubt = added.some((kind) => kind === 'mix' || kind === 'rise' || kind === 'second-rise');
  return [notice('MENU_TEXT_STEPS', isDoubt ? 'doubt' : 'note', {}, { steps: added.join(', ') })];
}

const MOST_INGREDIENTS = 100; // as in a camp file
const MOST_ID = 36;

const idFrom = (title: string): string => {
  const id = title
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, MOST_ID)
    .replace(/-+$/g, '');
  return id === '' ? 'pasted-recipe' : id;
};

// --- Ingredients ------------------------------------------------------------------------------------

function ingredientFrom({ line, group, grams: mass, written, from }: IngredientRead): Ingredient {
  const { food } = line.search;
  const name = `${calledIn(line.search) || written}${group === 'dough' ? '' : ` (${group})`}`;
  const words = allergensNamed(written, food);
  const { note } = line;
  return {
    name: name.slice(0, 120),
    grams: mass,
    ...(from === 'unknown' ? { isUnweighed: true as const } : {}),
    asWritten: (amountText(line, written) || written).slice(0, 60),
    ...(food === undefined ? {} : { food: food.key }),
    ...(food === undefined || isFirstDoors(food) ? {} : { own: food }),
    part: food?.part ?? 'other',
    allergens: words.allergens,
    checkLabel: food === undefined ? openAllergensOf(written) : words.checkLabel,
    ...(note === '' ? {} : { note: note.slice(0, 300) }),
  };
}

/** Also a cook's own food that has the key of a larder's: its source tells. */
const isFirstDoors = ({ key, source }: Food) => foodWithKey(key)?.source === source;

/** The amount alone, as it was written; the whole line where there is none. */
function amountText(line: IngredientRead['line'], written: string): string {
  if (line.amount === undefined) return line.unmeasured === 'to-taste' ? 'to taste' : written;
  const { from, to } = line.amount.span;
  return written
    .slice(Math.max(0, from - line.span.from), to - line.span.from)
    .trim()
    .replace(/ (?:of|de)(?: the)?$/iu, '');
}

function ingredientNotices(read: IngredientRead): readonly Notice[] {
  const { line, grams: mass, from } = read;
  const about = { ingredient: calledIn(line.search) };
  if (isZero(line)) return [notice('MENU_TEXT_ZERO', 'stop', about, zeroOf(read))];
  const assumed = from === 'filled-up' || from === 'pinch';
  const own = assumed
    ? line.notices.filter(({ code }) => code !== 'LARDER_AMOUNT_UNSAID')
    : line.notices;
  if (!assumed) return own;
  const code = from === 'filled-up' ? 'MENU_TEXT_LIQUID' : 'MENU_TEXT_PINCH';
  return [...own, notice(code, from === 'pinch' ? 'note' : 'doubt', about, { massGrams: mass })];
}

/** "0 cups flour": written, and nothing of it. */
const zeroOf = ({ written, line }: IngredientRead) => ({
  written,
  part: line.search.food?.part ?? 'other',
});

// --- How much ---------------------------------------------------------------------------------------

/** Grams of everything in one ordinary portion; ours, as the ready recipes have it. */
const PORTION_GRAMS: Readonly<Record<RecipeKind, number>> = {
  'yeast-bread': 100,
  'quick-bread': 120,
  biscuit: 100,
  'corn-bread': 120,
  cobbler: 200,
  braise: 350,
  stew: 400,
  beans: 300,
  roast: 250,
  fruit: 180,
  'cold-dish': 200,
};
const MOST_PORTIONS = 2000;
/** Pieces that one portion is: a roll, two biscuits; as the ready recipes have it. */
const PIECES_EACH: Readonly<Partial<Record<Piece['shape'], number>>> = { roll: 1, biscuit: 2 };

function portionsFrom({ portions, yield: said, kind }: RecipeParts, mass: number) {
  if (portions !== undefined && 0 < portions && portions <= MOST_PORTIONS) {
    return { count: portions, isGuessed: false };
  }
  if (said?.portions !== undefined) {
    const [low, high] = said.portions;
    return { count: (low + high) / 2, isGuessed: false };
  }
  const pieces = said?.pieces;
  const each = pieces === undefined ? undefined : PIECES_EACH[shapeOf(pieces, kind.kind)];
  if (pieces !== undefined && each !== undefined) {
    return { count: Math.max(1, pieces.count / each), isGuessed: false };
  }
  const count = Math.max(1, Math.round(mass / PORTION_GRAMS[kind.kind]));
  return { count: Math.min(MOST_PORTIONS, count), isGuessed: true };
}

/** A number alone counts what its kind is usually baked as. */
function shapeOf(
  { count, shape }: NonNullable<YieldRead['pieces']>,
  kind: RecipeKind,
): Piece['shape'] {
  const isYeast = kind === 'yeast-bread';
  if (shape !== undefined) return isYeast && shape === 'biscuit' ? 'roll' : shape;
  if (kind === 'biscuit') return 'biscuit';
  return isYeast ? (count === 1 ? 'loaf' : 'roll') : 'round';
}

const DIVIDED: ReadonlySet<RecipeKind> = new Set(['yeast-bread', 'quick-bread', 'biscuit']);
const LEAST_PIECE_GRAMS = 5;
const MOST_PIECE_GRAMS = 20_000;

function divisionFrom(parts: RecipeParts, mass: number, portions: number): readonly Piece[] {
  const pieces = parts.yield?.pieces;
  if (pieces === undefined || !DIVIDED.has(parts.kind.kind)) return [];
  const each = mass / pieces.count;
  if (!(LEAST_PIECE_GRAMS <= each && each <= MOST_PIECE_GRAMS)) return [];
  const shape = shapeOf(pieces, parts.kind.kind);
  return [
    { shape, count: pieces.count, gramsEach: grams(each), portionsEach: portions / pieces.count },
  ];
}

// --- How hot ----------------------------------------------------------------------------------------

/** °F in the oven where the text names none, and °C in the middle when done; as the ready recipes. */
const USUAL: Readonly<
  Partial<Record<RecipeKind, readonly [ovenFahrenheit: number, coreCelsius: number]>>
> = {
  'quick-bread': [390, 94],
  biscuit: [425, 94],
  'corn-bread': [400, 95],
  cobbler: [375, 94],
  fruit: [350, 90],
  roast: [350, 74],
  braise: [325, 90],
  stew: [325, 74],
  beans: [325, 90],
};

function targetFrom(parts: RecipeParts, made: StepsMade): RecipeTarget {
  const { kind } = parts.kind;
  const { heat, core } = parts;
  const usual = usualFor(parts);
  const method = methodFor(kind);
  const oven: Kelvin | undefined =
    heat === undefined ? usual?.oven : kelvin((heat.low + heat.high) / 2);
  const hint = made.cookMinutes ?? [
    minutes(usualCookMinutes[kind]),
    minutes(usualCookMinutes[kind]),
  ];
  return {
    ...(oven === undefined || method === 'simmer' || method === 'none' ? {} : { oven }),
    ...coreFrom(core, usual?.core),
    ...(method === 'none' ? {} : { minutesHint: hint }),
    ...(made.thickness === undefined ? {} : { thickness: made.thickness }),
    canWait: minutes(method === 'simmer' ? 60 : 20),
    rest: minutes(kind === 'yeast-bread' || kind === 'roast' ? 15 : 5),
    isCold: false,
    ...writerOf(parts, made),
  };
}

/** A yeast dough by what is in it; all else by its kind. */
function usualFor({ kind: { kind }, ingredients }: RecipeParts) {
  const richness = richnessOf({ kind, ingredients: ingredients.map(ingredientFrom) });
  if (richness !== undefined) {
    const { ovenCelsius, coreCelsius } = richFigures[richness];
    return { oven: fromCelsius(ovenCelsius), core: fromCelsius(coreCelsius) };
  }
  const usual = USUAL[kind];
  if (usual === undefined) return undefined;
  return { oven: fromFahrenheit(usual[0]), core: fromCelsius(usual[1]) };
}

const coreFrom = (said: CoreRead | undefined, usual: Kelvin | undefined) => {
  if (said !== undefined) return { core: said.kelvin };
  return usual === undefined ? {} : { core: usual };
};

/** What the text itself says of the oven; what we took as usual is not the writer's. */
function writerOf(
  { heat, core, coals }: RecipeParts,
  made: StepsMade,
): Pick<RecipeTarget, 'writer'> {
  const writer: WriterSaid = {
    ...(heat === undefined ? {} : { oven: [heat.low, heat.high] as const }),
    ...(made.cookMinutes === undefined ? {} : { minutes: made.cookMinutes }),
    ...(core === undefined ? {} : { core: core.kelvin }),
    ...(made.firstRise === undefined ? {} : { firstRise: made.firstRise }),
    ...(made.secondRise === undefined ? {} : { secondRise: made.secondRise }),
    ...(coals === undefined ? {} : { coals: coals.coals }),
  };
  return Object.keys(writer).length === 0 ? {} : { writer };
}

/** Said once where they were read: they stand beside ours and are not laid. */
function coalsNotices(coals: CoalsRead | undefined): readonly Notice[] {
  if (coals === undefined) return [];
  const { above, below, total, aboveShare } = coals.coals;
  return [
    notice(
      'MENU_TEXT_COALS',
      'note',
      {},
      {
        ...(above === undefined ? {} : { above }),
        ...(below === undefined ? {} : { below }),
        ...(total === undefined ? {} : { pieces: total }),
        ...(aboveShare === undefined ? {} : { aboveRatio: aboveShare }),
      },
    ),
  ];
}

function heatNotices(parts: RecipeParts): readonly Notice[] {
  const { heat } = parts;
  const method = methodFor(parts.kind.kind);
  if (method === 'simmer' || method === 'none') return [];
  if (heat === undefined) {
    const ovenKelvin = usualFor(parts)?.oven ?? fromFahrenheit(375);
    return [notice('MENU_TEXT_HEAT', 'doubt', {}, { ovenKelvin })];
  }
  return heat.isGuessed
    ? [notice('MENU_TEXT_HEAT_READ', 'note', {}, { ovenKelvin: (heat.low + heat.high) / 2 })]
    : [];
}
