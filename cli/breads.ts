// The commands that ask about one bread and need no oven: what raises it, how long its dough takes,
// and how it is carried dry.

import { Command } from 'commander';
import { leaven } from './commands/leaven.ts';
import { mix } from './commands/mix.ts';
import { rise } from './commands/rise.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

type End = (code: ExitCode) => void;

export const breadCommands = (shell: Shell, end: End): readonly Command[] =>
  [leavenCommand, riseCommand, mixCommand].map((make) => make(shell, end));

const bread = (command: Command, examples: string) =>
  command
    .requiredOption('--what <bread>', 'a ready recipe (see: emberwright recipes) or a recipe file')
    .option('--air <heat>', 'frost, cold, mild, hot, or "45 F"')
    .option('--height <height>', 'above the sea: "2100 m", or by the boil: "boils at 198 F"')
    .option('--written <height>', 'the recipe is meant for this height: "5000 ft"')
    .option('--measures <kind>', 'us or metric')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\nFor example:\n${examples}\n\n${EXIT_HELP}\n`);

function leavenCommand(shell: Shell, end: End): Command {
  const command = new Command('leaven')
    .description('What raises this bread here: how much to weigh, its gas, and what tables say.')
    .option('--fizz <test>', 'half a teaspoon of powder in hot water fizzes: hard, weak or none')
    .option('--opened <months>', 'the tin of powder has been open so many months')
    .action((options) => end(leaven(options, shell)));
  return bread(
    command,
    `  emberwright leaven --what biscuits --height "6500 ft"
  emberwright leaven --what biscuits --height "2100 m" --written "1500 m"
  emberwright leaven --what corn-bread --fizz weak`,
  );
}

function riseCommand(shell: Shell, end: End): Command {
  const command = new Command('rise')
    .description('How long this dough takes where it stands, the water for it, sooner or later.')
    .option('--stands <where>', 'how warm it is round the dough: "2 h at 5 C, then 28 C"')
    .option('--dough <heat>', 'wanted when it is mixed: "77 F"')
    .option('--flour <heat>', 'how warm the flour is; left out: as the air')
    .option('--tap <heat>', 'how warm the water is as it comes; left out: as the air')
    .action((options) => end(rise(options, shell)));
  return bread(
    command,
    `  emberwright rise --what rolls --air "45 F"
  emberwright rise --what rolls --air "5 C" --stands "2 h at 5 C, then 28 C" --height "2100 m"
  emberwright rise --what my-sourdough.json --stands "10 h at 40 F, then 75 F"`,
  );
}

function mixCommand(shell: Shell, end: End): Command {
  const command = new Command('mix')
    .description('A bread as dry mixes: bags to weigh at home, or a tin without flour.')
    .option('--bags <count>', 'so many bags of one recipe each: 4')
    .option('--tin <room>', 'the tin holds: "250 ml" or "1 cup"')
    .action((options) => end(mix(options, shell)));
  return bread(
    command,
    `  emberwright mix --what biscuits --bags 4
  emberwright mix --what fire-bread --tin "1 cup" --height "6500 ft"`,
  );
}
