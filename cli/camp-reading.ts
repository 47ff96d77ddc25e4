// A camp file as the commands read it: the camp, or all its troubles at once.

import { type CampRead, readCampFile, troubleSentence } from '#formats';
import { CommandTrouble, EXIT } from './exit.ts';
import { fileText } from './reading.ts';
import type { Shell } from './shell.ts';

export function campFrom(path: string, shell: Shell): CampRead {
  const read = readCampFile(fileText(path, shell), { date: shell.today });
  if (read.ok) return read;
  const count = read.troubles.length;
  const head = `${path} can not be read as a camp: ${count === 1 ? 'one thing is' : `${count} things are`} wrong.`;
  throw new CommandTrouble(
    EXIT.unreadable,
    [head, ...read.troubles.map((trouble) => `  ${troubleSentence(trouble)}`)].join('\n'),
  );
}
