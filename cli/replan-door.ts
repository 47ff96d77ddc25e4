// The command `replan` and its help.

import { Command } from 'commander';
import { replanCommand as run } from './commands/replan.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

export function replanCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return new Command('replan')
    .description('The day slipped: how it can go on. The past and what is pinned stand.')
    .argument('<camp file>', 'a camp file; - reads it from the input')
    .requiredOption('--now <time>', 'the time it is: 17:10')
    .option('--slip <what...>', 'what has happened; may be given more than once')
    .option('--json', 'print the offers for other programs')
    .option('--measures <kind>', 'us or metric')
    .option('--clock <hours>', '12 or 24', '24')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\n${HELP}\n\n${EXIT_HELP}\n`)
    .action((path, options) => end(run(path, options, shell)));
}

const HELP = `What can slip:
  "20 min behind"               work is so far behind the sheet; "rolls 20 min behind" is one dish
  "rise of rolls 15 min longer" a rise, a bake or any other job takes longer than written
  "chimney 2 failed"            what burns in it, or is to be lit next, did not catch;
                                "lighting 5 failed" is the fifth under "Fires"
  "guests 30 min late"          they eat later; "guests of cobbler 30 min late" is one dish
  "oven B dropped"              it is of no more use
  "hand anna gone"              somebody has left

For example:
  emberwright replan camp.json --now 17:10 --slip "20 min behind"
  emberwright replan camp.json --now 17:10 --slip "chimney 2 failed" "guests 15 min late"`;
