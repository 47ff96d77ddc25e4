// `emberwright mix`: a bread as dry mixes: bags to weigh at home, or a tin without flour.

import { breadAlone, cubicMetres, dryMixOf, mixSheet, usualBread } from '#engine';
import { type BreadOptions, breadOf, printBread } from '../bread.ts';
import { type ExitCode, wrongUse } from '../exit.ts';
import { countOf, quantityOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface MixOptions extends BreadOptions {
  readonly bags?: string;
  readonly tin?: string;
}

const TIN_EXAMPLE = '250 ml';

export function mix(options: MixOptions, shell: Shell): ExitCode {
  const bread = breadOf(options, shell);
  const bags = options.bags === undefined ? 1 : countOf('--bags', options.bags);
  if (bags < 1) throw wrongUse('--bags', '"0"', 'one or more', 'Write --bags 4.');
  const tinRoom =
    options.tin === undefined
      ? usualBread.tin
      : quantityOf('--tin', options.tin, 'volume', TIN_EXAMPLE);
  const dry = dryMixOf(breadAlone(bread).formula, cubicMetres(tinRoom));
  if (dry === undefined) {
    throw wrongUse(
      '--what',
      `"${bread.recipe.name}"`,
      'something with flour',
      'Write --what biscuits.',
    );
  }
  const sheet = mixSheet({ name: bread.recipe.name, bags, ...dry }, bread.say);
  return printBread(sheet, shell);
}
