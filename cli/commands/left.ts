// `emberwright left`: I have so many coals left; what can I do?

import { coalsLeftSheet, isRefusal, minutes, type Say, whatCanIDoWith } from '#engine';
import type { ExitCode } from '../exit.ts';
import { fireOf, refuse, tell } from '../fire.ts';
import { coalsOf } from '../fuel-reading.ts';
import { type AgeOptions, ageOf, agesOf, ironOf } from '../lying.ts';
import type { Shell } from '../shell.ts';

interface LeftOptions extends AgeOptions {
  readonly coals: string;
  readonly iron?: string;
}

export function left(options: LeftOptions, shell: Shell): ExitCode {
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const age = ageOf(options, 'left', fire);
  const pieces = coalsOf('--coals', options.coals, door.fuel);
  const possibilities = whatCanIDoWith({
    oven,
    air,
    place: camp.place,
    screened,
    fuel: camp.fuel,
    conditions,
    pieces,
    litMinutesAgo: minutes(age.minutes),
    ...ironOf(options),
    ...agesOf(age),
  });
  if (isRefusal(possibilities)) return refuse(possibilities, oven, { options, shell });
  const isHot = options.iron !== undefined;
  const asked = (say: Say) => ({
    door: { ...door, alsoAssumed: age.assumed(say) },
    ...{ pieces, possibilities, isHot },
  });
  return tell((say) => coalsLeftSheet(asked(say), say), fire, { options, shell });
}
