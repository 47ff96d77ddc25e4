// `emberwright rise`: how long this dough takes where it stands, the water for it, and what would
// hurry it or slow it down.

import { breadAlone, kelvin, minutes, placeFrom, riseSheet, type Stay } from '#engine';
import { type BreadOptions, breadOf, printBread } from '../bread.ts';
import { type ExitCode, wrongUse } from '../exit.ts';
import { minutesOf, quantityOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface RiseOptions extends BreadOptions {
  readonly stands?: string;
  readonly dough?: string;
  readonly flour?: string;
  readonly tap?: string;
}

export function rise(options: RiseOptions, shell: Shell): ExitCode {
  const bread = breadOf(options, shell);
  const stays =
    options.stands === undefined
      ? [{ minutes: minutes(0), place: bread.air }]
      : staysOf(options.stands);
  const at = (where: string, text: string | undefined) =>
    text === undefined ? undefined : kelvin(quantityOf(where, text, 'temperature', '20 C'));
  const [mixed, flour, tap] = [
    at('--dough', options.dough),
    at('--flour', options.flour),
    at('--tap', options.tap),
  ];
  const { formula, leavening } = breadAlone({
    ...bread,
    stands: {
      place: placeFrom(stays),
      ...(mixed === undefined ? {} : { mixed }),
      ...(flour === undefined ? {} : { flour }),
      ...(tap === undefined ? {} : { tap }),
    },
  });
  if (leavening.rise === undefined) {
    throw wrongUse(
      '--what',
      `"${bread.recipe.name}", without yeast or starter`,
      'a bread that rises before it is baked',
      'Write --what rolls.',
    );
  }
  const { recipe, say, assumed } = bread;
  const made = { name: recipe.name, formula, leavening, assumed };
  return printBread(riseSheet(made, say), shell);
}

const EXAMPLE = 'Write --stands "2 h at 5 C, then 28 C".';

/** `2 h at 5 C, then 28 C`: each stay but the last says how long it is. */
function staysOf(text: string): readonly Stay[] {
  const parts = text.split(/,?\s*\bthen\b\s*|;/i).map((part) => part.trim());
  return parts.map((part, index) => {
    const [, long, heat] = /^(?:(.+?)\s+at\s+)?(.+)$/i.exec(part) ?? [];
    const isLast = index === parts.length - 1;
    if (heat === undefined || heat === '' || (long === undefined && !isLast)) {
      throw wrongUse('--stands', `"${part}"`, 'how long, and how warm', EXAMPLE);
    }
    return {
      minutes: minutes(minutesOf('--stands', long, 0)),
      place: kelvin(quantityOf('--stands', heat, 'temperature', '5 C')),
    };
  });
}
