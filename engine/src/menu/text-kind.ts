// What kind of dish is a pasted recipe, and why do we think so? By its title first, then by what
// goes in. The reason is a code, so that the cook can see it and choose another kind.
// Sources: common practice, no source.

import type { Food, FoodPart } from '../larder/food.ts';
import type { HeatMethod, RecipeKind } from './recipe.ts';

export type KindReason =
  | 'cook-said'
  | 'title'
  | 'yeast'
  | 'cut-rounds'
  | 'cornmeal'
  | 'fruit-under-dough'
  | 'leavened-flour'
  | 'flour'
  | 'beans'
  | 'meat-and-liquid'
  | 'meat-alone'
  | 'fruit'
  | 'vegetables'
  | 'nothing-known';

export interface KindGuess {
  readonly kind: RecipeKind;
  readonly because: KindReason;
  /** The word of the title, where it was that. */
  readonly word?: string;
}

export interface KindClue {
  readonly food: Food | undefined;
  readonly grams: number;
}

const TITLES: readonly (readonly [RegExp, RecipeKind])[] = [
  [/\b(?:corn ?bread|johnny ?cake|corn pone|spoon ?bread)\b/iu, 'corn-bread'],
  [/\b(?:biscuits?|scones?)\b/iu, 'biscuit'],
  [/\b(?:cobbler|crisp|crumble|buckle|grunt|slump|brown betty|dump cake|pie)\b/iu, 'cobbler'],
  [
    /\b(?:chil[ei]|chilli|stew|soup|chowder|goulash|curry|hash|casserole|gumbo|jambalaya)\b/iu,
    'stew',
  ],
  [/\b(?:beans|frijoles)\b(?! (?:and|with) (?:beef|pork))/iu, 'beans'],
  [/\b(?:pot roast|braised?|carnitas|short ribs|barbacoa)\b/iu, 'braise'],
  [/\b(?:roast(?:ed)?|whole chicken)\b/iu, 'roast'],
  [/\b(?:baked apples|stewed fruit|poached pears|baked pears)\b/iu, 'fruit'],
  [/\b(?:slaw|salad|no[- ]bake)\b/iu, 'cold-dish'],
  [
    /\b(?:soda bread|bannock|damper|fry ?bread|pan bread|pan de campo|banana bread|skillet bread|griddle|dumplings|pancakes?|muffins?|coffee ?cake|gingerbread|cake|brownies?)\b/iu,
    'quick-bread',
  ],
  [/\b(?:rolls|buns|sourdough|yeast bread|loaf|focaccia|pizza|cinnamon rolls)\b/iu, 'yeast-bread'],
];

/** Kind of a recipe from its title and what goes in. */
export function kindOf(title: string, clues: readonly KindClue[], work: string): KindGuess {
  const sum = (...parts: readonly FoodPart[]) =>
    clues.reduce(
      (all, { food, grams }) => all + (food && parts.includes(food.part) ? grams : 0),
      0,
    );
  const has = (part: FoodPart) => clues.some(({ food }) => food?.part === part);
  const named = TITLES.flatMap(([pattern, kind]) => {
    const found = pattern.exec(title);
    return found ? [{ kind, word: found[0] }] : [];
  });
  // A yeast dough stays one whatever its title says of shape.
  const isYeast = has('yeast') || clues.some(({ food }) => food?.key === 'sourdough-starter');
  const first = named[0];
  const isBread = first === undefined || BREADS.has(first.kind);
  if (isYeast && isBread && 0 < sum('flour')) return { kind: 'yeast-bread', because: 'yeast' };
  const isCorn = first?.kind === 'quick-bread' && sum('flour') < cornIn(clues);
  const isUnderCake = first?.word === 'cake' && sum('flour', 'meal') < sum('fruit');
  if (isUnderCake) return { kind: 'cobbler', because: 'fruit-under-dough' };
  if (isCorn) return { kind: 'corn-bread', because: 'cornmeal' };
  if (first !== undefined && !(first.kind === 'yeast-bread' && !isYeast)) {
    return { kind: first.kind, because: 'title', word: first.word };
  }
  return kindFromFoods({ clues, sum, has, work });
}

const cornIn = (clues: readonly KindClue[]) =>
  clues.reduce(
    (total, { food, grams }) => total + (/corn ?meal/.test(food?.name ?? '') ? grams : 0),
    0,
  );

const BREADS: ReadonlySet<RecipeKind> = new Set(['yeast-bread', 'quick-bread', 'biscuit']);

interface Foods {
  readonly clues: readonly KindClue[];
  readonly sum: (...parts: readonly FoodPart[]) => number;
  readonly has: (part: FoodPart) => boolean;
  readonly work: string;
}

function kindFromFoods({ clues, sum, has, work }: Foods): KindGuess {
  const flour = sum('flour', 'meal');
  const all = clues.reduce((total, { grams }) => total + grams, 0);
  const corn = cornIn(clues);
  const isRaised = has('powder') || has('soda');
  const isDough = (isRaised ? 0.05 : 0.15) * all < flour;
  if (isDough && 0.3 * flour < corn) return { kind: 'corn-bread', because: 'cornmeal' };
  if (isDough && flour < sum('fruit')) return { kind: 'cobbler', because: 'fruit-under-dough' };
  if (
    isDough &&
    /\bcut(?:ter|ting)?\b[^.]{0,40}\b(?:rounds?|biscuits?|circles?|squares)\b|\bbiscuit cutter\b/iu.test(
      work,
    )
  ) {
    return { kind: 'biscuit', because: 'cut-rounds' };
  }
  if (isDough && isRaised) return { kind: 'quick-bread', because: 'leavened-flour' };
  if (isDough) return { kind: 'quick-bread', because: 'flour' };
  if (0.2 * all < sum('bean')) return { kind: 'beans', because: 'beans' };
  if (has('meat') || has('poultry')) {
    return 0.1 * all < sum('liquid', 'water') || 0.2 * all < sum('vegetable', 'grain')
      ? { kind: 'stew', because: 'meat-and-liquid' }
      : { kind: 'roast', because: 'meat-alone' };
  }
  if (0.5 * all < sum('fruit')) return { kind: 'fruit', because: 'fruit' };
  if (0 < sum('vegetable')) return { kind: 'stew', because: 'vegetables' };
  return { kind: 'quick-bread', because: 'nothing-known' };
}

const METHODS: Readonly<Record<RecipeKind, HeatMethod>> = {
  'yeast-bread': 'bake',
  'quick-bread': 'bake',
  biscuit: 'bake',
  'corn-bread': 'bake',
  cobbler: 'bake',
  braise: 'simmer',
  stew: 'simmer',
  beans: 'simmer',
  roast: 'roast',
  fruit: 'bake',
  'cold-dish': 'none',
};

export const methodFor = (kind: RecipeKind): HeatMethod => METHODS[kind];
