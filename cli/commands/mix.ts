// `emberwright mix`: a bread as dry mixes: bags to weigh at home, or a tin without flour.

import { cubicMetres, goesIntoBag, keepingOf, mixSheet, scoopOf, tinFor } from '#engine';
import { type BreadOptions, breadOf, madeOf, printBread } from '../bread.ts';
import { type ExitCode, wrongUse } from '../exit.ts';
import { countOf, quantityOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface MixOptions extends BreadOptions {
  readonly bags?: string;
  readonly tin?: string;
}

const USUAL_TIN = '250 ml';

export function mix(options: MixOptions, shell: Shell): ExitCode {
  const bread = breadOf(options, shell);
  const bags = options.bags === undefined ? 1 : countOf('--bags', options.bags);
  if (bags < 1) throw wrongUse('--bags', '"0"', 'one or more', 'Write --bags 4.');
  const tinRoom = quantityOf('--tin', options.tin ?? USUAL_TIN, 'volume', USUAL_TIN);
  const { lines } = madeOf(bread, {}).formula;
  const contents = lines.filter(goesIntoBag);
  if (contents.length === 0) {
    throw wrongUse(
      '--what',
      `"${bread.recipe.name}"`,
      'something with flour',
      'Write --what biscuits.',
    );
  }
  const scoop = scoopOf(contents);
  const tin = tinFor(lines, cubicMetres(tinRoom));
  const sheet = mixSheet(
    {
      name: bread.recipe.name,
      bags,
      contents,
      add: lines.filter((line) => !contents.includes(line)),
      keeps: keepingOf(contents.map((line) => line.ingredient)),
      ...(scoop === undefined ? {} : { scoop }),
      ...(tin === undefined ? {} : { tin }),
    },
    bread.say,
  );
  return printBread(sheet, shell);
}
