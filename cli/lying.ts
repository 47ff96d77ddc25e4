// Coals as they lie now, of one age or of several, and the oven as hot as it is.

import {
  coalsLying,
  type Fuel,
  type Kelvin,
  kelvin,
  type LyingCoals,
  type LyingSet,
  minutes,
} from '#engine';
import { wrongUse } from './exit.ts';
import type { FireOptions } from './fire.ts';
import { coalsOf } from './fuel-reading.ts';
import { minutesOf, quantityOf } from './reading.ts';

export interface StateOptions extends FireOptions {
  readonly above?: string;
  readonly below?: string;
  /** Each `17/8@30`, or `2 1/2 and 1 @ 30 min` for shovels. */
  readonly coals?: readonly string[];
  readonly minutesIn?: string;
  readonly iron?: string;
}

export interface Lying {
  readonly coals: readonly LyingCoals[];
  readonly above: number;
  readonly below: number;
}

/** An age where one is said for all sets, and what stands in. */
export interface Age {
  readonly where: string;
  readonly said: string | undefined;
  readonly usual: number;
}

/** `--above` and `--below` of one age, or every `--coals` with its own. */
export function lyingOf(options: StateOptions, fuel: Fuel['kind'], age: Age): Lying {
  const { above, below, coals: sets = [] } = options;
  const usual = minutesOf(age.where, age.said, age.usual);
  if (sets.length === 0) {
    if (above === undefined || below === undefined)
      throw wrongUse(
        above === undefined ? '--above' : '--below',
        'nothing',
        '--above and --below, or --coals for each set',
        'Write --above 17 --below 8, or --coals 17/8@30.',
      );
    return coalsLying([
      {
        above: coalsOf('--above', above, fuel),
        below: coalsOf('--below', below, fuel),
        litMinutesAgo: minutes(usual),
      },
    ]);
  }
  if (above !== undefined || below !== undefined)
    throw wrongUse('--coals', '--above or --below beside it', 'one of the two', ONE_OF_TWO);
  return coalsLying(sets.map((text) => setOf(text, fuel, usual)));
}

const ONE_OF_TWO = 'Leave --above and --below out and write each set with --coals.';

/** `17/8@30`: above, below, lit so many minutes ago. Halves of shovels have a slash, so: `and`. */
function setOf(text: string, fuel: Fuel['kind'], usual: number): LyingSet {
  const [counts = '', age, ...more] = text.split('@');
  const parts = counts.includes(' and ') ? counts.split(' and ') : counts.split('/');
  const [above, below] = parts;
  if (above === undefined || below === undefined || parts.length > 2 || more.length > 0) {
    const example = fuel === 'wood-coals' ? '"2 1/2 and 1 @ 30 min"' : '17/8@30';
    const wanted = 'above and below, and how long ago they were lit';
    throw wrongUse('--coals', `"${text}"`, wanted, `Write --coals ${example}.`);
  }
  return {
    above: coalsOf('--coals', above, fuel),
    below: coalsOf('--coals', below, fuel),
    litMinutesAgo: minutes(minutesOf('--coals', age, usual)),
  };
}

/** The oven as a thermometer reads it now; left out, as hot as these coals made it. */
export const ironOf = ({ iron }: Pick<StateOptions, 'iron'>): { readonly ironNow?: Kelvin } =>
  iron === undefined ? {} : { ironNow: kelvin(quantityOf('--iron', iron, 'temperature', '300 F')) };
