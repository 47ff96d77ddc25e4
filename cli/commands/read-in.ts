// `emberwright read-in`: a recipe as somebody wrote it down, read line by line.

import {
  isRefusal,
  type Manner,
  type RecipeCorrections,
  type RecipeKind,
  type RecipeText,
  readRecipeText,
  recipeReadSheet,
  refusalText,
  renderText,
  sayFor,
} from '#engine';
import { recipeToFile } from '#formats';
import { CommandTrouble, EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { fileText, oneOf, type ReaderOptions, readerOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

export interface ReadInOptions extends ReaderOptions {
  readonly kind?: string;
  readonly serves?: string;
  readonly manner?: string;
  readonly save?: string;
}

export const KINDS: readonly RecipeKind[] = [
  'yeast-bread',
  'quick-bread',
  'biscuit',
  'corn-bread',
  'cobbler',
  'braise',
  'stew',
  'beans',
  'roast',
  'fruit',
  'cold-dish',
];
export const MANNERS: readonly Manner[] = ['us', 'british', 'metric'];

export function readIn(path: string, options: ReadInOptions, shell: Shell): ExitCode {
  const read = recipeTextFrom(path, shell, correctionsOf(options));
  const usual = read.manner === 'us' ? 'us' : 'metric';
  const say = sayFor({ ...readerOf(options, usual), plan: NOWHERE });
  shell.out(renderText(recipeReadSheet(read, say), { width: shell.columns }));
  if (options.save !== undefined && read.recipe !== undefined) {
    shell.write(options.save, `${JSON.stringify(recipeToFile(read.recipe), null, 2)}\n`);
    shell.out(`\nWritten to ${options.save}: put it under "recipes" of a camp file, or try\n`);
    shell.out(`  emberwright tonight --what ${options.save} --oven "12 in"\n`);
  }
  const isStopped = read.notices.some(({ level }) => level === 'stop');
  return read.recipe === undefined || isStopped ? EXIT.stopped : EXIT.fine;
}

const NOWHERE = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };

function correctionsOf({ kind, serves, manner }: ReadInOptions): RecipeCorrections {
  return {
    ...(kind === undefined ? {} : { kind: oneOf('--kind', kind, KINDS) }),
    ...(manner === undefined ? {} : { manner: oneOf('--manner', manner, MANNERS) }),
    ...(serves === undefined ? {} : { portions: portionsOf(serves) }),
  };
}

function portionsOf(text: string): number {
  const portions = Number(text);
  if (!(0 < portions && portions <= 2000)) {
    throw wrongUse('--serves', `"${text}"`, 'how many it feeds', 'Write --serves 8.');
  }
  return portions;
}

/** A file or the input, read as a recipe; what can't be read at all is said. */
export function recipeTextFrom(
  path: string,
  shell: Shell,
  corrections: RecipeCorrections = {},
): RecipeText {
  const read = readRecipeText(fileText(path, shell), { corrections });
  if (isRefusal(read)) {
    const say = sayFor({ measures: 'metric', clock: '24', plan: NOWHERE });
    throw new CommandTrouble(EXIT.unreadable, `${path}: ${refusalText(read, say)}`);
  }
  return read;
}
