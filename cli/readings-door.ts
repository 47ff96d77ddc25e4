// The readings command: a log of a probe, judged. No camp needed.

import { Command } from 'commander';
import { foodClasses } from '#engine';
import { readings } from './commands/readings.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

export const readingsCommand = (shell: Shell, end: (code: ExitCode) => void): Command =>
  new Command('readings')
    .description('What a run of probe readings says: hot enough, out how long, cooled fast enough.')
    .argument('<readings...>', 'each a time and a heat, soonest first: "18:30 150 F"')
    .option('--food <kind>', `${foodClasses.join(', ')}; left out: no core is judged`)
    .option('--air <heat>', 'where it stood: frost, cold, mild, hot, or "95 F"')
    .option('--measures <kind>', 'us or metric')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\n${EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((texts, options) => end(readings(texts, options, shell)));

const EXAMPLES = `For example:
  emberwright readings "18:05 138 F" "18:12 146 F" --food whole-meat
  emberwright readings "19:00 140 F" "20:40 70 F" "23:30 40 F" --air mild`;
