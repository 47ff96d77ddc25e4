// The commands and their help. Help teaches: every command shows what a cook would type.

import { Command } from 'commander';
import { breadCommands } from './breads.ts';
import { SHEET_NAMES } from './carried-sheet.ts';
import { demo } from './commands/demo.ts';
import { lookOver } from './commands/look-over.ts';
import { plan } from './commands/plan.ts';
import { listRecipes } from './commands/recipes.ts';
import { tonight } from './commands/tonight.ts';
import { doorCommands } from './doors.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import { fitsCommand } from './fits-door.ts';
import { formulaCommand } from './formula-door.ts';
import { readInCommand } from './read-in-door.ts';
import { GROUNDS } from './reading.ts';
import { readingsCommand } from './readings-door.ts';
import { replanCommand } from './replan-door.ts';
import type { Shell } from './shell.ts';
import { stackCommand } from './stack-door.ts';
import { washCommand } from './wash-door.ts';

export function program(shell: Shell, end: (code: ExitCode) => void): Command {
  const all = new Command('emberwright')
    .description('Plans a meal baked outdoors in cast-iron camp ovens over coals.')
    .version('0.1.0', '--version', 'say which version this is')
    .helpOption('--help', 'show this')
    .helpCommand(false)
    .showSuggestionAfterError(true)
    .addHelpText('after', `\n${FIRST_STEPS}\n\n${EXIT_HELP}\n`);
  const makes = [tonightCommand, planCommand, lookOverCommand, demoCommand, recipesCommand];
  for (const make of makes) all.addCommand(make(shell, end));
  all.addCommand(replanCommand(shell, end));
  all.addCommand(readInCommand(shell, end));
  all.addCommand(formulaCommand(shell, end));
  for (const door of doorCommands(shell, end)) all.addCommand(door);
  for (const bread of breadCommands(shell, end)) all.addCommand(bread);
  all.addCommand(fitsCommand(shell, end));
  all.addCommand(stackCommand(shell, end));
  all.addCommand(washCommand(shell, end));
  all.addCommand(readingsCommand(shell, end));
  for (const command of [all, ...all.commands]) {
    command.exitOverride().configureOutput({
      writeOut: shell.out,
      writeErr: shell.error,
      getOutHelpWidth: () => shell.columns,
    });
  }
  return all;
}

const FIRST_STEPS = `Begin with one bread, one oven, tonight:
  emberwright tonight --what biscuits --oven "12 in"

Or come in halfway, with nothing set up:
  emberwright coals --oven "12 in" --heat "375 F"
  emberwright layout --oven "12 in" --above 17 --below 8
  emberwright left --oven "12 in" --coals 22
  emberwright what-now --symptom bottom-dark --oven "12 in" --above 17 --below 8
  emberwright stack --oven "12 in" --heat "350 F"

Or at the wash line:
  emberwright wash --height "6500 ft" --bleach "8.25 %"
  emberwright readings "19:00 140 F" "20:40 70 F" "23:30 40 F"

Or with a dough:
  emberwright fits --what biscuits --oven "12 in"
  emberwright leaven --what biscuits --height "6500 ft"
  emberwright rise --what rolls --air "45 F"

Or with a recipe as somebody wrote it:
  emberwright read-in letter.txt
  emberwright tonight --what letter.txt --oven "12 in"

Or with a whole camp:
  emberwright demo harrow-saddle camp.json
  emberwright plan camp.json
  emberwright plan camp.json --sheets sheets
  emberwright replan camp.json --now 17:10 --slip "20 min behind"`;

const readers = (command: Command) =>
  command
    .option('--measures <kind>', 'us or metric')
    .option('--clock <hours>', '12 or 24', '24')
    .helpOption('--help', 'show this');

function tonightCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return readers(
    new Command('tonight')
      .description(
        'One bread, one oven, tonight: a dish card. What you leave out is assumed, and said.',
      )
      .requiredOption(
        '--what <bread>',
        'a ready recipe (see: emberwright recipes), a recipe file, or a recipe in plain text (.txt)',
      )
      .requiredOption('--oven <size>', 'its diameter: "12 in"')
      .option('--deep', 'it is a deep one')
      .option('--eat-at <time>', 'when it is on the table: 18:30; left out: as soon as can be')
      .option('--now <time>', 'the time it is; left out: the clock of this computer')
      .option(
        '--amount <much>',
        '"500 g" of dough, "2 cups" of flour, "8 portions", or how thick: "1 in"',
      )
      .option('--air <heat>', 'frost, cold, mild, hot, or "45 F"')
      .option('--wind <sign>', '"leaves rustle", "ash drifts" …, "Beaufort 3" or "3 m/s"')
      .option('--wind-from <point>', 'where the wind comes from: west, SW or 225°')
      .option('--height <height>', 'above the sea: "2100 m", or by the boil: "boils at 198 F"')
      .option('--fuel <kind>', 'briquettes or wood')
      .option('--coal-mass <weight>', 'briquettes weighed: "ten weigh 240 g", or "24 g" for one')
      .option('--chimneys <count>', 'chimneys you light coals in')
      .option('--hands <count>', 'pairs of hands')
      .option('--ground <kind>', `what the oven stands on: ${GROUNDS.join(', ')}`)
      .option('--cold-oven', 'the oven is cold when the bread goes in')
      .option('--hot-oven', 'the oven is heated before the bread goes in')
      .option(
        '--on <kind>',
        'it rests on iron, paper, rack, tin or meal; left out: as the recipe has it',
      )
      .option('--hot-lid', 'the lid is heated by itself before it goes onto a cold oven')
      .option('--touching', 'the pieces touch on purpose')
      .option('--floor <size>', 'across the inside of its bottom, if you measured it: "10 in"')
      .option('--depth <size>', 'inside, if you measured it: "4 in"')
      .option('--screens <count>', 'wind screens you set up')
      .option('--thermometer', 'you have one')
      .option('--above <coals>', 'your own count on the lid; it is kept and judged')
      .option('--below <coals>', 'your own count below; it is kept and judged')
      .option('--page <file>', 'also write the card as a page to print'),
  )
    .addHelpText('after', `\n${TONIGHT_EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((options) => end(tonight(options, shell)));
}

const TONIGHT_EXAMPLES = `For example:
  emberwright tonight --what biscuits --oven "12 in"
  emberwright tonight --what soda-bread --oven "10 in" --eat-at 18:30 --wind "twigs keep moving"
  emberwright tonight --what rolls --oven "12 in" --air "45 F" --height "6500 ft" --above 17 --below 8
  emberwright tonight --what corn-bread --oven "12 in" --fuel wood --page card.html`;

function planCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return readers(
    new Command('plan')
      .description(
        'Plans a camp: what is served when, who does what, how many coals, what is short.',
      )
      .argument('<camp file>', 'a camp file; - reads it from the input')
      .option('--dish <id>', 'only the card of this dish')
      .option('--hand <id>', "only this person's jobs")
      .option('--sheet <name>', `only this sheet: ${SHEET_NAMES.join(', ')}`)
      .option('--sheets <folder>', 'write every sheet as a page to print, with an index')
      .option('--now <time>', 'plan from this time on: nothing starts before it')
      .option('--why', 'why each job stands where it stands, how late it may begin, how sure it is')
      .option('--json', 'print the whole plan for other programs'),
  )
    .addHelpText('after', `\n${PLAN_EXAMPLES}\n\n${EXIT_HELP}\n`)
    .action((path, options) => end(plan(path, options, shell)));
}

const PLAN_EXAMPLES = `For example:
  emberwright plan camp.json
  emberwright plan camp.json --dish rolls --measures us
  emberwright plan camp.json --sheets sheets      (open sheets/index.html)
  emberwright plan camp.json --now 16:10          (it is ten past four: what can still be done?)`;

function lookOverCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return new Command('look-over')
    .description('Looks a camp file over and says everything that is wrong with it, all at once.')
    .argument('<camp file>', 'a camp file; - reads it from the input')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\nFor example:\n  emberwright look-over camp.json\n\n${EXIT_HELP}\n`)
    .action((path) => end(lookOver(path, shell)));
}

function demoCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return new Command('demo')
    .description('Writes a demo camp as a file to try and to change. Without a name: lists them.')
    .argument('[name]', 'which demo camp')
    .argument('[file]', 'where to write it; left out: to the screen')
    .helpOption('--help', 'show this')
    .addHelpText(
      'after',
      `\nFor example:\n  emberwright demo\n  emberwright demo pilcrow-creek camp.json\n\n${EXIT_HELP}\n`,
    )
    .action((name, file) => end(demo(name, file, shell)));
}

function recipesCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  return new Command('recipes')
    .description('Lists the ready recipes that "tonight" knows by name.')
    .helpOption('--help', 'show this')
    .action(() => end(listRecipes(shell)));
}
