// The fits command: what goes into an oven, over several, or which oven for so much. No camp needed.

import { Command } from 'commander';
import { FIT_KINDS } from '#engine';
import { fits } from './commands/fits.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

export function fitsCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return new Command('fits')
    .description(
      'What fits: how much goes into an oven and how it lies, or which oven for so much.',
    )
    .requiredOption('--what <kind>', FIT_KINDS.join(', '))
    .option('--oven <size...>', 'its diameter: "12 in"; several for a batch that is shared')
    .option('--deep', 'they are deep ones')
    .option('--floor <size>', 'across the inside of its bottom, if you measured it: "10 in"')
    .option('--depth <size>', 'inside, if you measured it: "4 in"')
    .option('--thick <size>', 'rolled out or poured so: "1/2 in"')
    .option('--cutter <size>', 'of the rounds: "2 1/2 in"')
    .option('--each <weight>', 'of one roll or dumpling: "60 g"')
    .option('--wedges <count>', 'a round is scored in so many: 8')
    .option('--amount <weight>', 'you have so much: "1 kg"; left out: as much as goes in')
    .option('--on <kind>', 'it rests on iron, paper, rack, tin or meal')
    .option('--touching', 'the pieces touch on purpose')
    .option('--measures <kind>', 'us or metric')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\nFor example:\n${EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((options) => end(fits(options, shell)));
}

const EXAMPLES = `  emberwright fits --what biscuits --oven "12 in" --cutter "2 1/2 in"
  emberwright fits --what round --amount "570 g" --thick "1/2 in"
  emberwright fits --what batter --amount "3 kg" --oven "12 in" "10 in"`;
