// The commands that need no set-up: coals only, my own layout, coals left, what now.

import { Command, Option } from 'commander';
import { COAL_LOOK_WORDS, coalLooks } from '#engine';
import { coals } from './commands/coals.ts';
import { layout } from './commands/layout.ts';
import { left } from './commands/left.ts';
import { SYMPTOMS, whatNow } from './commands/what-now.ts';
import { EXIT_HELP, type ExitCode } from './exit.ts';
import { GROUNDS } from './reading.ts';
import type { Shell } from './shell.ts';

type End = (code: ExitCode) => void;

export const doorCommands = (shell: Shell, end: End): readonly Command[] =>
  [coalsCommand, layoutCommand, leftCommand, whatNowCommand].map((make) => make(shell, end));

/** Oven and spot, which every door asks alike. */
export const spot = (command: Command, examples: string) =>
  command
    .requiredOption('--oven <size>', 'its diameter: "12 in"')
    .option('--deep', 'it is a deep one')
    .option('--air <heat>', 'frost, cold, mild, hot, or "45 F"')
    .option('--wind <sign>', '"leaves rustle", "ash drifts" …, "Beaufort 3" or "3 m/s"')
    .option('--screen', 'a wind screen stands on the wind side')
    .option('--height <height>', 'above the sea: "2100 m", or by the boil: "boils at 198 F"')
    .option('--fuel <kind>', 'briquettes or wood')
    .option('--coal-mass <weight>', 'briquettes weighed: "ten weigh 240 g", or "24 g" for one')
    .option('--ground <kind>', `what the oven stands on: ${GROUNDS.join(', ')}`)
    .option('--ground-is <kind>', 'dry, wet or frozen')
    .option('--hearth <kind>', 'what the coals below lie on: ground, fire-pan or fire-table')
    .option('--rain <much>', 'what falls in an hour: "2 mm"')
    .option('--sun <share>', 'of a high, clear sun on the oven: "100 %"')
    .option('--riser <height>', 'so much higher than on its legs: "2 in"')
    .option('--lid-mass <weight>', 'its lid alone on the scales: "7 lb"')
    .option('--measures <kind>', 'us or metric')
    .helpOption('--help', 'show this')
    .addHelpText('after', `\nFor example:\n${examples}\n\n${EXIT_HELP}\n`);

const METHOD_HELP = 'bake, roast, simmer, boil, fry or keep-warm; left out: bake';

const COALS_HELP = 'in place of the two, once for each age: 17/8@30 is above/below@minutes ago';
const AGE_HELP = 'the coals were lit about so long ago: "30 min"';
const LOOKS_HELP = `in place of an age, what they look like: ${coalLooks
  .map((look) => `${look} (${COAL_LOOK_WORDS[look]})`)
  .join('; ')}`;
const IRON_HELP = 'the oven is this hot now: "300 F"; left out: as hot as these coals made it';
const eachSet = (set: string, sets: readonly string[] = []) => [...sets, set];

function coalsCommand(shell: Shell, end: End): Command {
  const command = new Command('coals')
    .description('Coals only: how many for this oven and this heat, where they lie, and why.')
    .option(
      '--heat <heat>',
      'wanted in the oven: "375 F"; a simmer, a boil or a keep-warm can leave it out',
    )
    .option('--method <kind>', METHOD_HELP)
    .option('--minutes <time>', 'so long the food stays in: 40')
    .option('--cold-oven', 'the food goes in before the oven is hot')
    .option('--above <coals>', 'your own count on the lid; it is kept and judged')
    .option('--below <coals>', 'your own count below; it is kept and judged')
    .action((options) => end(coals(options, shell)));
  return spot(
    command,
    `  emberwright coals --oven "12 in" --heat "375 F"
  emberwright coals --oven "12 in" --heat "350 F" --minutes 50 --wind "twigs keep moving" --air cold
  emberwright coals --oven "30 cm" --heat "190 C" --fuel wood`,
  );
}

function layoutCommand(shell: Shell, end: End): Command {
  const command = new Command('layout')
    .description('Will my own layout do? The heat that your coals give from now on, and a verdict.')
    .option('--above <coals>', 'on the lid: 17, or "2 shovels" of wood coals')
    .option('--below <coals>', 'under the oven: 8, or "1 shovel"')
    .option('--coals <set>', COALS_HELP, eachSet)
    .option('--iron <heat>', IRON_HELP)
    .option('--heat <heat>', 'wanted in the oven: "350 F"')
    .option('--age <ago>', AGE_HELP)
    .addOption(new Option('--lit <ago>', 'another word for --age').hideHelp())
    .option('--looks <look>', LOOKS_HELP)
    .option('--in-after <time>', 'the food goes in so long from now: "15 min"')
    .option('--minutes-in <time>', 'the food is in already, for so long: "10 min"')
    .option('--minutes <time>', 'look so far ahead: 45')
    .option('--method <kind>', METHOD_HELP)
    .action((options) => end(layout(options, shell)));
  return spot(
    command,
    `  emberwright layout --oven "12 in" --above 17 --below 8
  emberwright layout --oven "12 in" --above 17 --below 8 --heat "375 F" --age "30 min" --minutes-in "5 min"
  emberwright layout --oven "12 in" --coals 17/8@50 --coals 4/2@15 --minutes-in "20 min"
  emberwright layout --oven "12 in" --above "2 shovels" --below "1 shovel" --fuel wood`,
  );
}

function leftCommand(shell: Shell, end: End): Command {
  const command = new Command('left')
    .description('I have so many coals left: what can I do with them?')
    .requiredOption('--coals <count>', 'what still glows: 22, or "3 shovels" of wood coals')
    .option('--age <ago>', AGE_HELP)
    .option('--looks <look>', LOOKS_HELP)
    .option('--iron <heat>', IRON_HELP)
    .action((options) => end(left(options, shell)));
  return spot(
    command,
    `  emberwright left --oven "12 in" --coals 22
  emberwright left --oven "10 in" --coals 15 --age "45 min" --wind "leaves rustle"
  emberwright left --oven "12 in" --coals 22 --looks half-size
  emberwright left --oven "12 in" --coals "3 shovels" --fuel wood`,
  );
}

function whatNowCommand(shell: Shell, end: End): Command {
  const command = new Command('what-now')
    .description('It is going wrong: three moves in order, each with its effect and its wait.')
    .requiredOption('--symptom <sign>', SYMPTOMS.join(', '))
    .option('--above <coals>', 'on the lid now: 17, or "2 shovels" of wood coals')
    .option('--below <coals>', 'under the oven now: 8, or "1 shovel"')
    .option('--coals <set>', COALS_HELP, eachSet)
    .option('--iron <heat>', IRON_HELP)
    .option('--age <ago>', AGE_HELP)
    .option('--looks <look>', LOOKS_HELP)
    .option('--minutes-in <time>', 'the food has been in for so long: "15 min"')
    .option('--method <kind>', METHOD_HELP)
    .action((options) => end(whatNow(options, shell)));
  return spot(
    command,
    `  emberwright what-now --symptom bottom-dark --oven "12 in" --above 17 --below 8
  emberwright what-now --symptom top-pale --oven "12 in" --above 17 --below 8 --age "50 min" --minutes-in "20 min"
  emberwright what-now --symptom late --oven "12 in" --above "2 shovels" --below "1 shovel" --fuel wood`,
  );
}
