// `emberwright recipes`: the ready recipes by name.

import { readyRecipes } from '#engine';
import { EXIT, type ExitCode } from '../exit.ts';
import type { Shell } from '../shell.ts';

export function listRecipes(shell: Shell): ExitCode {
  for (const { id, name, portions } of readyRecipes) {
    shell.out(`${id.padEnd(16)} ${name}, ${portions} portions\n`);
  }
  return EXIT.fine;
}
