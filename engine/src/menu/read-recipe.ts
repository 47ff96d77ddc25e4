// A recipe pasted as plain text: what every letter of it was read as, and the recipe that can be
// cooked from it. Nothing is dropped: pieces join up to the whole text, and what was not understood
// is marked and kept word for word.
// Sources: words of recipes are common practice, no source; weights by larder/weigh.ts.

import { anyFoodWithKey } from '../larder/all-foods.ts';
import type { Food } from '../larder/food.ts';
import { type Notice, notice, type OrRefusal, refusal } from '../notice/notice.ts';
import type { Manner } from '../quantity/index.ts';
import type { Recipe, RecipeKind } from './recipe.ts';
import {
  type HeatRead,
  heatIn,
  ovenSizeIn,
  type SizeRead,
  type YieldRead,
  yieldIn,
} from './text-facts.ts';
import { type IngredientRead, ingredientsFor } from './text-ingredients.ts';
import { type KindGuess, kindOf } from './text-kind.ts';
import { type LineRole, piecesOf, type TextPiece } from './text-lines.ts';
import { type CoalsRead, type CoreRead, coalsIn, coreIn } from './text-oven.ts';
import { recipeFor } from './text-recipe.ts';
import { type StepRead, stepsRead } from './text-steps.ts';
import { titleNotices } from './title-claims.ts';

/** What the cook corrects; pieces are named by their number in `pieces`. */
export interface RecipeCorrections {
  readonly kind?: RecipeKind;
  readonly portions?: number;
  readonly name?: string;
  readonly manner?: Manner;
  /** Food of a piece by its key, the cook's own foods too. */
  readonly foods?: Readonly<Record<number, string>>;
  readonly roles?: Readonly<Record<number, LineRole>>;
}

export interface RecipeReadOptions {
  readonly corrections?: RecipeCorrections;
  /** The cook's own foods. */
  readonly own?: readonly Food[];
}

export interface RecipeText {
  readonly text: string;
  /** In order; their spans join up to the whole text. */
  readonly pieces: readonly TextPiece[];
  readonly title: string;
  readonly manner: Manner;
  /** The word that made us think so; undefined where the cook said it. */
  readonly mannerWord?: string;
  readonly kind: KindGuess;
  readonly ingredients: readonly IngredientRead[];
  readonly steps: readonly StepRead[];
  readonly yield?: YieldRead;
  readonly heat?: HeatRead;
  readonly ovenSize?: SizeRead;
  /** The writer's own coals, and how warm the middle was when it was done. */
  readonly coals?: CoalsRead;
  readonly core?: CoreRead;
  /** Undefined where no ingredient was found. */
  readonly recipe?: Recipe;
  /** Pieces that nobody understood. */
  readonly unread: readonly TextPiece[];
  readonly notices: readonly Notice[];
}

/** As much as ten closely written pages; ours. */
export const MOST_TEXT = 40_000;

/**
 * Reads a pasted recipe.
 *
 * @refuses MENU_TEXT_EMPTY — nothing but white space
 * @refuses MENU_TEXT_TOO_LONG — more than forty thousand letters: a book, not a recipe
 * @notice  MENU_TEXT_* — what was guessed, and what was not understood
 * @example readRecipeText('2 cups flour\n1 cup milk\nMix. Bake 30 minutes at 375.')
 */
export function readRecipeText(
  written: string,
  options: RecipeReadOptions = {},
): OrRefusal<RecipeText> {
  if (MOST_TEXT < written.length) {
    return refusal(
      'MENU_TEXT_TOO_LONG',
      ['text'],
      {},
      { letters: written.length, most: MOST_TEXT },
    );
  }
  if (written.trim() === '') return refusal('MENU_TEXT_EMPTY', ['text']);
  const text = evened(written);
  const { corrections = {}, own = [] } = options;
  const { manner, word } = mannerOf(text, corrections.manner);
  const foods = foodsChosen(corrections, own);
  const pieces = piecesOf(text, { manner, own, foods, ...given('roles', corrections.roles) });
  return readFrom({ written, text, pieces, manner, word, corrections, own });
}

/** White space of every kind as one space, letter for letter: places stay where they were. */
const evened = (text: string) =>
  text.replace(/[\t\u00a0\u1680\u2000-\u200f\u202a-\u202f\u205f\u2060\u3000\ufeff]/gu, ' ');

const given = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value };

function foodsChosen({ foods = {} }: RecipeCorrections, own: readonly Food[]) {
  const entries = Object.entries(foods).flatMap(([piece, key]) => {
    const food = own.find((each) => each.key === key) ?? anyFoodWithKey(key);
    return food === undefined ? [] : [[Number(piece), food] as const];
  });
  return Object.fromEntries(entries) as Readonly<Record<number, Food>>;
}

interface Reading {
  readonly written: string;
  readonly text: string;
  readonly pieces: readonly TextPiece[];
  readonly manner: Manner;
  readonly word: string | undefined;
  readonly corrections: RecipeCorrections;
  readonly own: readonly Food[];
}

function readFrom(reading: Reading): RecipeText {
  const { written, text, pieces, manner, word, corrections } = reading;
  const title = corrections.name ?? titleOf(written, pieces);
  const ingredients = ingredientsFor(written, pieces);
  const clues = ingredients.map(({ line, grams }) => ({ food: line.search.food, grams }));
  const work = workText(text, pieces);
  const guess = kindOf(title, clues, work);
  const kind: KindGuess =
    corrections.kind === undefined ? guess : { kind: corrections.kind, because: 'cook-said' };
  const steps = stepsRead(text, pieces, kind.kind);
  const facts = factsOf(text, pieces, manner);
  const made = recipeFor({
    title,
    kind,
    ingredients,
    steps,
    ...facts,
    ...given('portions', corrections.portions),
  });
  const unread = pieces.filter(({ role }) => role === 'unread');
  return {
    text: written,
    pieces,
    title,
    manner,
    ...given('mannerWord', word),
    kind,
    ingredients: made?.ingredients ?? ingredients,
    steps,
    ...facts,
    ...given('recipe', made?.recipe),
    unread,
    notices: [
      ...(made === undefined ? [] : titleNotices(asDish(made.recipe), made.recipe)),
      ...textNotices(kind, unread, made !== undefined),
      ...(isTwo(text, pieces) ? [notice('MENU_TEXT_TWO', 'stop')] : []),
      ...(made?.notices ?? []),
    ],
  };
}

const BAKED = /\b(?:bake|cook|roast)\b/iu;

/** Flour is listed again behind the baking: a second bread stands in the text. */
function isTwo(text: string, pieces: readonly TextPiece[]): boolean {
  const at = pieces.findIndex(
    ({ role, span }) => role === 'step' && BAKED.test(text.slice(span.from, span.to)),
  );
  const isFlour = ({ line }: TextPiece) =>
    line?.amount !== undefined && FLOURS.has(line.search.food?.part ?? '');
  return 0 <= at && pieces.slice(0, at).some(isFlour) && pieces.slice(at).some(isFlour);
}
const FLOURS: ReadonlySet<string> = new Set(['flour', 'meal']);

/** Nothing keeps a pasted recipe apart yet. */
const asDish = ({ id, name }: Recipe) => ({ id, name, freeFrom: false });

const MOST_TITLE = 100;

function titleOf(text: string, pieces: readonly TextPiece[]): string {
  const piece = pieces.find(({ role }) => role === 'title');
  const line =
    piece === undefined
      ? (HEADED.exec(text)?.[1] ?? '')
      : text.slice(piece.span.from, piece.span.to);
  const bare = line
    .replace(/ \| [^\n]*\s*$/u, '')
    .replace(/[*_]{2,}/gu, ' ')
    .replace(/[\s#*_:;]+$/u, '')
    .replace(/^[\s#*_>-]+/u, '')
    .replace(/\s+/gu, ' ')
    .replace(/[\s,(–—-]+(?:serves|makes|feeds|for) (?:\d|an? dozen)[^)]{0,30}\)?$/iu, '')
    .replace(/[\s–—-]+$/u, '');
  return bare === '' ? 'Pasted recipe' : bare.slice(0, MOST_TITLE);
}

/** "Pot roast for 8: get a 4 lb roast": a title and a yield before the first food. */
const HEADED = /^\W*([\p{L} '’-]{3,40}) (?:for|serves|feeds) \d{1,2}:/iu;

const workText = (text: string, pieces: readonly TextPiece[]) =>
  pieces
    .filter(({ role }) => role === 'step')
    .map(({ span }) => text.slice(span.from, span.to))
    .join(' ');

/** How much, how hot, how big an oven: the first place that says so. */
function factsOf(text: string, pieces: readonly TextPiece[], manner: Manner) {
  const told = pieces.filter(({ role }) => role !== 'ingredient' && role !== 'blank');
  const yields = pieces.flatMap(({ span, role }) => {
    const line = text.slice(span.from, span.to);
    const isNone = role === 'note' || (role === 'ingredient' && !HEADED.test(line));
    const found = isNone ? undefined : yieldIn(line, span.from);
    return found === undefined ? [] : [found];
  });
  const heats = told.flatMap(
    ({ span }) => heatIn(text.slice(span.from, span.to), manner, span.from) ?? [],
  );
  const sizes = told.flatMap(
    ({ span }) => ovenSizeIn(text.slice(span.from, span.to), span.from) ?? [],
  );
  const cores = told.flatMap(({ span }) => coreIn(text.slice(span.from, span.to), span.from) ?? []);
  const pieceYield = yields.find((each) => each.pieces !== undefined);
  const eaterYield = yields.find((each) => each.portions !== undefined);
  const both = pieceYield === undefined ? eaterYield : { ...eaterYield, ...pieceYield };
  return {
    ...given('yield', both),
    ...given('heat', heats.find((each) => !each.isGuessed) ?? heats[0]),
    ...given('ovenSize', sizes.find((each) => !each.isPan) ?? sizes[0]),
    ...given('coals', coalsOf(text)),
    ...given('core', cores[0]),
  };
}

/** The first count of each side; a text may lay the lid in one line and the rest in the next. */
function coalsOf(text: string): CoalsRead | undefined {
  let from = 0;
  let first: CoalsRead | undefined;
  const lines = text.split('\n').slice(0, MOST_COAL_LINES);
  for (const [index, line] of lines.entries()) {
    const found = line.length < MOST_COAL_LETTERS ? coalsIn(line, from) : undefined;
    const both = found && isOneSided(found) ? `${line} ${lines[index + 1] ?? ''}` : line;
    if (found) first ??= coalsIn(both.slice(0, MOST_COAL_LETTERS), from) ?? found;
    from += line.length + 1;
  }
  return first;
}

const isOneSided = ({ coals }: CoalsRead) =>
  (coals.above === undefined) !== (coals.below === undefined);
const MOST_COAL_LINES = 1200;
const MOST_COAL_LETTERS = 4000;

const BRITISH =
  /\b(?:caster sugar|castor sugar|plain flour|self-raising|bicarbonate of soda|bicarb|treacle|rashers?|dessertspoons?|gas mark|sultanas|wholemeal|cornflour|icing sugar|swede|double cream|tins? of|strong (?:white )?(?:bread )?flour)\b/iu;
const METRIC = /\d[\d.,]* ?(?:g|kg|ml|dl|cl|grams?|grammes|litres?|gramos)\b/iu;
const US = /\b(?:cups?|sticks?|all-purpose|[½¼¾⅓⅔\d] ?c\.?|quarts?)\b/iu;
/** Tells where there are no measures: grams are grams also beside °F. */
const US_HEAT = /\b\d{3} ?°? ?F\b/u;

/** Whose measures a recipe uses, by the first word that tells. */
function mannerOf(text: string, said: Manner | undefined) {
  if (said !== undefined) return { manner: said, word: undefined };
  const british = BRITISH.exec(text)?.[0];
  if (british !== undefined) return { manner: 'british' as const, word: british };
  const us = US.exec(text)?.[0];
  const metric = METRIC.exec(text)?.[0];
  return us === undefined && metric !== undefined
    ? { manner: 'metric' as const, word: metric }
    : { manner: 'us' as const, word: us ?? US_HEAT.exec(text)?.[0] };
}

function textNotices(
  kind: KindGuess,
  unread: readonly TextPiece[],
  isRecipe: boolean,
): readonly Notice[] {
  return [
    ...(kind.because === 'cook-said'
      ? []
      : [
          notice(
            'MENU_TEXT_KIND',
            kind.because === 'nothing-known' ? 'doubt' : 'note',
            {},
            {
              kind: kind.kind,
              because: kind.because,
              word: kind.word ?? '',
            },
          ),
        ]),
    ...(unread.length === 0
      ? []
      : [notice('MENU_TEXT_UNREAD', 'doubt', {}, { pieces: unread.length })]),
    ...(isRecipe ? [] : [notice('MENU_TEXT_NO_INGREDIENTS', 'stop')]),
  ];
}
