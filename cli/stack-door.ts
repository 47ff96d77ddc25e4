// The stack command: two ovens one on the other, no camp needed.

import { Command } from 'commander';
import { stack } from './commands/stack.ts';
import { spot } from './doors.ts';
import type { ExitCode } from './exit.ts';
import type { Shell } from './shell.ts';

export function stackCommand(shell: Shell, end: (code: ExitCode) => void): Command {
  const command = new Command('stack')
    .description('Two ovens stacked: coals below, between and on top, what it saves, what to mind.')
    .option('--upper-oven <size>', 'diameter of the upper one: "10 in"; left out: as the lower')
    .option('--upper-deep', 'the upper one is a deep one')
    .option('--heat <heat>', 'wanted in the lower oven: "350 F"')
    .option('--upper-heat <heat>', 'wanted in the upper oven; left out: as in the lower')
    .option('--method <kind>', 'bake, roast or simmer, in both; left out: bake')
    .option('--minutes <time>', 'so long the food stays in: 40')
    .option('--upper-minutes <time>', 'so long in the upper one; left out: as in the lower')
    .option('--cold-oven', 'the food goes in before the ovens are hot')
    .option('--below <coals>', 'your own count under the lower oven')
    .option('--between <coals>', 'your own count between the two')
    .option('--above <coals>', 'your own count on the upper lid')
    .action((options) => end(stack(options, shell)));
  return spot(
    command,
    `  emberwright stack --oven "12 in" --heat "350 F"
  emberwright stack --oven "12 in" --upper-oven "10 in" --method roast --minutes 60
  emberwright stack --oven "14 in" --method simmer --heat "212 F" --minutes 90 --fuel wood`,
  );
}
