// `emberwright leaven`: what raises this bread here, and where the tables disagree.

import {
  breadAlone,
  type FizzTest,
  fizzTests,
  isRaised,
  leavenSheet,
  type PowderKept,
} from '#engine';
import { type BreadOptions, breadOf, printBread } from '../bread.ts';
import { type ExitCode, wrongUse } from '../exit.ts';
import { countOf, oneOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface LeavenOptions extends BreadOptions {
  readonly fizz?: string;
  readonly opened?: string;
}

export function leaven(options: LeavenOptions, shell: Shell): ExitCode {
  const bread = breadOf(options, shell);
  const { formula, leavening } = breadAlone({ ...bread, powder: powderOf(options) });
  if (!isRaised(formula)) {
    throw wrongUse(
      '--what',
      `"${bread.recipe.name}", with neither powder, soda nor yeast`,
      'a bread that rises',
      'Write --what biscuits.',
    );
  }
  const { recipe, say, assumed } = bread;
  return printBread(leavenSheet({ name: recipe.name, formula, leavening, assumed }, say), shell);
}

const powderOf = ({ fizz, opened }: LeavenOptions): PowderKept => ({
  ...(fizz === undefined ? {} : { fizz: oneOf<FizzTest>('--fizz', fizz, fizzTests) }),
  ...(opened === undefined
    ? {}
    : { openedMonths: countOf('--opened', opened.replace(/\s*months?$/i, '')) }),
});
