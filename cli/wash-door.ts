// The wash command: water to drink, hands and three buckets, by height and by the label. No camp needed.

import { Command } from 'commander';
import { wash } from './commands/wash.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

export const washCommand = (shell: Shell, end: (code: ExitCode) => void): Command =>
  new Command('wash')
    .description('Water and wash: how long to boil, how much bleach, hands and three buckets.')
    .option('--height <height>', 'above the sea: "2100 m", or by the boil: "boils at 198 F"')
    .option('--bleach <share>', 'sodium hypochlorite on its label: "8.25 %"')
    .option('--water <volume>', 'in the last bucket: "5 gal"')
    .option('--ppm <strength>', 'wanted in the last bucket: 50 to 100; left out: 100')
    .option('--drinking <volume>', 'to make fit to drink: "5 gal"')
    .option('--cloudy', 'the water to drink is cloudy or very cold')
    .option('--measures <kind>', 'us or metric')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\n${EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((options) => end(wash(options, shell)));

const EXAMPLES = `For example:
  emberwright wash --height "6500 ft" --bleach "8.25 %"
  emberwright wash --bleach "6 %" --water "5 gal" --ppm 50
  emberwright wash --height "boils at 198 F" --drinking "20 l" --cloudy --bleach "6 %"`;
