// A pasted recipe, read for the screen: a line for every piece of the text.

import {
  type Food,
  type IngredientRead,
  isRefusal,
  noticeText,
  type RecipeText,
  readAsIn,
  readRecipeText,
  recipeReadSheet,
  refusalText,
  type Say,
  sayFor,
  type TextPiece,
} from '#engine';
import { recipeToFile } from '#formats';
import type { OwnRecipe } from './messages.ts';
import type { ReadableFood } from './own-foods.ts';
import type { FileFoodItem, PasteAnswer, PasteLine, PasteQuestion } from './paste-messages.ts';

export async function pasteAnswer(question: PasteQuestion): Promise<PasteAnswer> {
  const { text, corrections, voice } = question;
  const own = await ownFoodsOf(question);
  const say = sayFor({ ...voice, plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } } });
  const read = readRecipeText(text, { corrections, own: own.map(({ food }) => food) });
  if (isRefusal(read)) return { ok: false, text: refusalText(read, say) };
  const foods = foodsIn(read.recipe, own);
  return {
    ok: true,
    foods,
    title: read.title,
    kind: read.kind.kind,
    manner: read.manner,
    lines: read.pieces.map((piece, index) => lineOf(read, piece, index, say)),
    sheet: recipeReadSheet(read, say),
    ...(read.recipe === undefined
      ? {}
      : {
          portions: read.recipe.portions,
          recipe: ownRecipe(read.recipe, foods),
          file: JSON.stringify(recipeToFile(read.recipe)),
        }),
  };
}

/** What reads camp files is fetched only where there are foods to be read. */
const ownFoodsOf = async ({ foods = [] }: PasteQuestion): Promise<readonly ReadableFood[]> =>
  foods.length === 0 ? [] : (await import('./own-foods.ts')).readableFoods(foods);

const foodsIn = (recipe: RecipeText['recipe'], own: readonly ReadableFood[]) =>
  own
    .filter(({ food }) => recipe?.ingredients.some((each) => each.food === food.key))
    .map(({ written }) => written);

/** In a camp file that holds no other, as the front door keeps it. */
function ownRecipe(
  recipe: NonNullable<RecipeText['recipe']>,
  foods: readonly FileFoodItem[],
): OwnRecipe {
  const camp = {
    emberwright: 'camp',
    version: 1,
    id: 'own-recipe',
    title: recipe.name,
    place: { name: 'Here' },
    mouths: [{ count: 1 }],
    menu: [{ id: 'dish', recipe: recipe.id, serve: '18:00' }],
    recipes: [recipeToFile(recipe)],
    ...(foods.length === 0 ? {} : { foods }),
  };
  return { camp: JSON.stringify(camp), recipe: recipe.id, name: recipe.name };
}

const ROLE_WORDS: Readonly<Record<TextPiece['role'], string>> = {
  title: 'title',
  heading: 'heading',
  ingredient: 'goes in',
  step: 'work',
  yield: 'how much it makes',
  heat: 'how hot',
  note: 'note',
  blank: '',
  unread: 'not understood, kept as it stands',
};

function lineOf(read: RecipeText, piece: TextPiece, index: number, say: Say): PasteLine {
  const text = read.text.slice(piece.span.from, piece.span.to);
  const inside = read.ingredients.filter((each) => each.piece === index);
  const [first] = inside;
  const { food, choices = [] } = first?.line.search ?? {};
  const isOne = piece.role === 'ingredient';
  return {
    piece: index,
    text,
    role: piece.role,
    readAs:
      inside.length === 0
        ? ROLE_WORDS[piece.role]
        : inside.map((each) => said(each, say)).join('; '),
    state: stateOf(piece, inside),
    ...(isOne && food !== undefined ? { food: food.key } : {}),
    choices: isOne ? [...(food === undefined ? [] : [food]), ...choices].map(nameOf) : [],
    notices: [
      ...new Set(inside.flatMap(({ line }) => line.notices).map((each) => noticeText(each, say))),
    ],
  };
}

const nameOf = ({ key, name }: Food) => ({ key, name });

function said({ line, grams, from }: IngredientRead, say: Say): string {
  const { food } = line.search;
  if (food === undefined) return `no food that we know: ${line.search.name}`;
  const name = readAsIn(line.search);
  if (from === 'unknown') return `${name}, weight not known`;
  const { weight } = line;
  const isWide = weight !== undefined && 0.005 < weight.high / weight.low - 1;
  const range = isWide ? ` (${say.mass(weight.low)} to ${say.mass(weight.high)})` : '';
  return `${name}, ${say.mass(grams)}${range}${from === 'weighed' ? '' : ', assumed'}`;
}

function stateOf(piece: TextPiece, inside: readonly IngredientRead[]): PasteLine['state'] {
  if (piece.role === 'unread') return 'open';
  if (inside.some(({ from, line }) => from === 'unknown' || line.search.food === undefined))
    return 'open';
  const isDoubted = inside.some(
    ({ from, line }) => from !== 'weighed' || line.notices.some(({ level }) => level === 'doubt'),
  );
  return isDoubted ? 'look' : 'understood';
}
