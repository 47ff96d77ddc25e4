// `emberwright starters`: the ready recipes by name.

import { starters } from '#engine';
import { EXIT, type ExitCode } from '../exit.ts';
import type { Shell } from '../shell.ts';

export function listStarters(shell: Shell): ExitCode {
  for (const { id, name, portions } of starters) {
    shell.out(`${id.padEnd(16)} ${name}, ${portions} portions\n`);
  }
  return EXIT.fine;
}
