// `emberwright left`: I have so many coals left; what can I do?

import { coalsLeftSheet, isRefusal, minutes, usualFire, whatCanIDoWith } from '#engine';
import type { ExitCode } from '../exit.ts';
import { type FireOptions, fireOf, refuse, tell } from '../fire.ts';
import { coalsOf } from '../fuel-reading.ts';
import { ironOf } from '../lying.ts';
import { minutesOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface LeftOptions extends FireOptions {
  readonly coals: string;
  readonly age?: string;
  readonly iron?: string;
}

export function left(options: LeftOptions, shell: Shell): ExitCode {
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const usual = usualFire.lit.left[door.fuel];
  const age = minutesOf('--age', options.age, usual);
  const pieces = coalsOf('--coals', options.coals, door.fuel);
  const possibilities = whatCanIDoWith({
    oven,
    air,
    place: camp.place,
    screened,
    fuel: camp.fuel,
    conditions,
    pieces,
    litMinutesAgo: minutes(age),
    ...ironOf(options),
  });
  if (isRefusal(possibilities)) return refuse(possibilities, oven, { options, shell });
  const alsoAssumed = options.age === undefined ? [`coals lit ${usual} min ago`] : [];
  const isHot = options.iron !== undefined;
  const asked = { door: { ...door, alsoAssumed }, pieces, possibilities, isHot };
  return tell((say) => coalsLeftSheet(asked, say), fire, { options, shell });
}
