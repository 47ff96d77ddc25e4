// `emberwright demo`: a demo camp as a file of the cook's own, dated for the coming week.

import { demoCamps } from '#formats';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import type { Shell } from '../shell.ts';

export function demo(name: string | undefined, file: string | undefined, shell: Shell): ExitCode {
  const camps = demoCamps(shell.today);
  if (name === undefined) {
    for (const { camp } of camps) shell.out(`${camp.id.padEnd(22)} ${camp.title}\n`);
    return EXIT.fine;
  }
  const found = camps.find(({ camp }) => camp.id === name);
  if (found === undefined) {
    const names = camps.map(({ camp }) => camp.id).join(', ');
    throw wrongUse('demo', `"${name}"`, `one of ${names}`, 'Leave the name out to list them.');
  }
  const text = `${JSON.stringify(found.file, null, 2)}\n`;
  if (file === undefined) shell.out(text);
  else {
    shell.write(file, text);
    shell.out(`${found.camp.title}: written to ${file}. Next: emberwright plan ${file}\n`);
  }
  return EXIT.fine;
}
