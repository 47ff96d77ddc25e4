// The command that reads a recipe as somebody wrote it, with its help.

import { Command } from 'commander';
import { KINDS, MANNERS, readIn } from './commands/read-in.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

const EXAMPLES = `For example:
  emberwright read-in biscuits.txt
  emberwright read-in letter.txt --kind cobbler --serves 8 --save cobbler.json
  emberwright tonight --what cobbler.json --oven "12 in"`;

export function readInCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return new Command('read-in')
    .description(
      'Reads a recipe in plain text: each line, what it was read as, what it weighs, what not.',
    )
    .argument('<text file>', 'a recipe as somebody wrote it; - reads it from the input')
    .option('--kind <kind>', `what it is: ${KINDS.join(', ')}`)
    .option('--serves <portions>', 'how many it feeds, where the text does not say')
    .option('--manner <whose>', `whose cups and pints: ${MANNERS.join(', ')}`)
    .option('--save <file>', 'write it as a recipe for a camp file')
    .option('--measures <kind>', 'us or metric')
    .option('--clock <hours>', '12 or 24', '24')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\n${EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((path, options) => end(readIn(path, options, shell)));
}
