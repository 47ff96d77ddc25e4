// Coals as they lie now, of one age or of several, and the oven as hot as it is.

import {
  type AssumedAge,
  assumedAge,
  assumedAgePhrase,
  COAL_LOOK_WORDS,
  coalLooks,
  coalsLying,
  type Fuel,
  type Kelvin,
  kelvin,
  type LyingCoals,
  type LyingSet,
  litMinutesOfLook,
  minutes,
  type Say,
} from '#engine';
import { wrongUse } from './exit.ts';
import type { Fire, FireOptions } from './fire.ts';
import { coalsOf } from './fuel-reading.ts';
import { minutesOf, oneOf, quantityOf } from './reading.ts';

export interface AgeOptions extends FireOptions {
  readonly age?: string;
  /** Another word for it, of earlier versions. */
  readonly lit?: string;
  /** In place of an age. */
  readonly looks?: string;
}

export interface StateOptions extends AgeOptions {
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

/** Minutes since the coals were lit, and what has to be said of how that is known. */
export interface Age {
  readonly minutes: number;
  readonly assumed: (say: Say) => readonly string[];
  /** Where neither age nor look was said of coals that lie there. */
  readonly usual?: AssumedAge;
}

type AskedDoor = Parameters<typeof assumedAge>[0];

/** As it was said, or as the coals look, or what is usual at this door. */
export function ageOf(
  options: AgeOptions & { readonly coals?: unknown },
  door: AskedDoor,
  { camp, air }: Fire,
  minutesIn?: number,
): Age {
  const said = options.age ?? options.lit;
  const where = options.age === undefined && options.lit !== undefined ? '--lit' : '--age';
  if (options.looks === undefined) {
    const usual = assumedAge(door, { fuel: camp.fuel, air }, minutesIn);
    const age = minutesOf(where, said, usual.minutes);
    return said === undefined && !isAgeSaid(options)
      ? { minutes: age, assumed: (say) => [assumedAgePhrase(usual, say)], usual }
      : { minutes: age, assumed: () => [] };
  }
  if (said !== undefined)
    throw wrongUse('--looks', `${where} beside it`, 'one of the two', 'Leave one of the two out.');
  const look = oneOf('--looks', options.looks, coalLooks);
  const age = litMinutesOfLook(look, { fuel: camp.fuel, air });
  const told = `coals that are ${COAL_LOOK_WORDS[look]}: lit about ${age} min ago in this wind`;
  return { minutes: age, assumed: () => [told] };
}

const isAgeSaid = ({ coals }: { readonly coals?: unknown }): boolean =>
  Array.isArray(coals) && coals.length > 0 && coals.every((set) => String(set).includes('@'));

/** `--above` and `--below` of one age, or every `--coals` with its own. */
export function lyingOf(options: StateOptions, fuel: Fuel['kind'], usual: number): Lying {
  const { above, below, coals: sets = [] } = options;
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

/** That nobody said how old the coals are, for the fire to reckon with. */
export const agesOf = ({ usual }: Age) => (usual === undefined ? {} : { agesAssumed: usual.how });
