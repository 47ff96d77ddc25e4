// A recipe out of a file: one recipe as it stands in a camp file, or the first of a whole camp.

import type { Recipe } from '#engine';
import { readCampFile, troubleSentence } from '#formats';
import { recipeTextFrom } from './commands/read-in.ts';
import { CommandTrouble, EXIT, wrongUse } from './exit.ts';
import { fileText } from './reading.ts';
import type { Shell } from './shell.ts';

export function recipeFrom(path: string, shell: Shell): Recipe {
  if (TEXT_FILE.test(path) || path === '-') return pastedFrom(path, shell);
  if (!path.endsWith('.json')) {
    throw wrongUse(
      '--what',
      `"${path}"`,
      'a ready recipe by name, a recipe file that ends in .json, or plain text that ends in .txt',
      'List the ready recipes with: emberwright recipes',
    );
  }
  const text = fileText(path, shell);
  const camp = readCampFile(isCamp(text) ? text : aroundRecipe(path, text), { date: shell.today });
  if (!camp.ok) {
    const troubles = camp.troubles.map((trouble) => `  ${troubleSentence(trouble)}`);
    throw new CommandTrouble(
      EXIT.unreadable,
      [`${path} can not be read as a recipe.`, ...troubles].join('\n'),
    );
  }
  const [recipe] = camp.menu.recipes;
  if (recipe === undefined) {
    throw new CommandTrouble(
      EXIT.unreadable,
      `${path}: found no recipe, wanted one. Add it under "recipes".`,
    );
  }
  return recipe;
}

const TEXT_FILE = /\.(?:txt|text|md)$/i;

/** A recipe in plain text; that it was read by us, and how much of it, is said beside the answer. */
function pastedFrom(path: string, shell: Shell): Recipe {
  const { recipe, ingredients, unread } = recipeTextFrom(path, shell);
  if (recipe === undefined) {
    throw new CommandTrouble(
      EXIT.unreadable,
      `${path}: found no ingredient, wanted a recipe in plain text. Write each on a line of its own, its amount first.`,
    );
  }
  const open = unread.length + ingredients.filter(({ from }) => from === 'unknown').length;
  const left = open === 0 ? '' : `, ${open} ${open === 1 ? 'place' : 'places'} not understood`;
  shell.error(
    `Read from ${path === '-' ? 'the input' : path}: ${ingredients.length} ingredients${left}. See all of it with: emberwright read-in ${path}\n`,
  );
  return recipe;
}

const isCamp = (text: string) => /"emberwright"\s*:/.test(text);

/** The least camp that lets a recipe be read by the same rules as in a camp file. */
function aroundRecipe(path: string, text: string): unknown {
  let recipe: unknown;
  try {
    recipe = JSON.parse(text);
  } catch (error) {
    throw new CommandTrouble(
      EXIT.unreadable,
      `${path}: found broken JSON (${(error as Error).message}), wanted a recipe. Look at the place it names.`,
    );
  }
  const id = (recipe as { readonly id?: unknown } | null)?.id;
  return {
    emberwright: 'camp',
    version: 1,
    id: 'recipe-only',
    title: 'One recipe',
    place: { name: 'Here' },
    weather: [],
    mouths: [{ count: 1 }],
    hands: [{ id: 'cook', name: 'You', skill: 'steady', from: '00:00', to: '24:00' }],
    ovens: [{ id: 'oven', diameter: '12 in' }],
    menu: [{ id: 'dish', recipe: id, serve: '18:00' }],
    recipes: [recipe],
  };
}
