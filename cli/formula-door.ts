// The command for the formula bench and its help.

import { Command } from 'commander';
import { formula } from './commands/formula.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

const collect = (text: string, all: readonly string[] = []) => [...all, text];

export const formulaCommand = (shell: Shell, end: (code: ExitCode) => void): Command =>
  new Command('formula')
    .description(
      "A recipe as a formula: baker's percentages, beside published ones, with targets or swaps.",
    )
    .argument('<recipe>', 'a ready recipe, a recipe file or a camp file')
    .option('--recipe <id>', 'which recipe of the camp file')
    .option('--beside <recipe>', 'another version to hold it beside; may be given twice', collect)
    .option('--target <share>', '"62 % water", fat, salt, sugar, powder, soda, yeast', collect)
    .option('--mass <weight>', 'the whole dough: "540 g"')
    .option('--fill <size>', 'as much dough as fills this oven: "10 in"')
    .option('--thick <size>', 'rolled out or poured so in that oven: "1/2 in"')
    .option('--hold <food>', 'this food stays: "lard", or "flour=400 g"', collect)
    .option('--swap <foods>', 'one food for another: "lard=butter"')
    .option('--measures <kind>', 'us or metric')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\n${EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((what, options) => end(formula(what, options, shell)));

const EXAMPLES = `For example:
  emberwright formula biscuits
  emberwright formula camp.json --recipe fire-bread --beside fire-bread
  emberwright formula fire-bread --target "62 % water" --mass "540 g"
  emberwright formula fire-bread --target "62 % water" --fill "10 in" --hold "lard=30 g"
  emberwright formula fire-bread --fill "10 in" --thick "1/2 in"
  emberwright formula biscuits --swap "shortening=butter"
  emberwright formula biscuits --swap "baking powder=cream of tartar"`;
