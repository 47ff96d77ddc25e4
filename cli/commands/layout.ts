// `emberwright layout`: will my own layout do?

import {
  fireMethods,
  isRefusal,
  judgeLayout,
  kelvin,
  layoutSheet,
  minutes,
  type Say,
  usualFood,
  usualLoad,
  usualLook,
  wantedAtFire,
} from '#engine';
import { type ExitCode, wrongUse } from '../exit.ts';
import { fireOf, refuse, tell } from '../fire.ts';
import { ageOf, agesOf, ironOf, lyingOf, type StateOptions } from '../lying.ts';
import { minutesOf, oneOf, quantityOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface LayoutOptions extends StateOptions {
  readonly heat?: string;
  readonly method?: string;
  readonly minutes?: string;
  readonly inAfter?: string;
}

export function layout(options: LayoutOptions, shell: Shell): ExitCode {
  const method = oneOf('--method', options.method ?? 'bake', fireMethods);
  const look = usualLook(method);
  const [ahead, wait] = timesOf(options, look);
  const inside =
    options.minutesIn === undefined ? undefined : minutesOf('--minutes-in', options.minutesIn, 0);
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const wanted = wantedAtFire(method, air, heatOf(options));
  const age = ageOf(options, 'layout', fire, inside);
  const { coals, above, below } = lyingOf(options, door.fuel, age.minutes);
  const judgement = judgeLayout({
    oven,
    air,
    place: camp.place,
    screened,
    fuel: camp.fuel,
    conditions,
    method,
    coals,
    ...ironOf(options),
    ...agesOf(age),
    load: usualLoad(fire, method),
    ...(inside === undefined
      ? { loadInMinute: minutes(wait) }
      : { loadInMinutesAgo: minutes(inside) }),
    wanted,
    minutes: minutes(ahead),
  });
  if (isRefusal(judgement)) return refuse(judgement, oven, { options, shell });
  const isTold = options.minutesIn !== undefined || options.inAfter !== undefined;
  const alsoAssumed = (say: Say) => [
    usualFood(fire, method, say),
    ...(options.heat === undefined ? [`${say.oven(wanted)} wanted`] : []),
    ...age.assumed(say),
    ...(isTold ? [] : [inPhrase(wait)]),
    ...(options.minutes === undefined ? [`looked at for ${ahead} min`] : []),
  ];
  const asked = (say: Say) => ({
    door: { ...door, alsoAssumed: alsoAssumed(say) },
    ...{ above, below, wanted, judgement, method, ageAssumed: age.usual },
  });
  return tell((say) => layoutSheet(asked(say), say), fire, { options, shell });
}

const inPhrase = (wait: number) =>
  wait === 0 ? 'food goes in now' : `oven still empty, food in after ${wait} min`;

const heatOf = ({ heat }: LayoutOptions) =>
  heat === undefined ? undefined : kelvin(quantityOf('--heat', heat, 'temperature', '350 F'));

/** How far it is looked at, and when food goes into an empty oven. */
function timesOf(options: LayoutOptions, usual: ReturnType<typeof usualLook>) {
  if (options.inAfter !== undefined && options.minutesIn !== undefined) {
    const next = 'Leave one of the two out.';
    throw wrongUse('--in-after', 'both', '--in-after or --minutes-in', next);
  }
  const ahead = minutesOf('--minutes', options.minutes, usual.minutes);
  const wait = minutesOf('--in-after', options.inAfter, usual.wait);
  if (options.minutesIn === undefined && ahead <= wait) {
    const found = `${ahead} min, with the food in after ${wait} min`;
    const next = `Write --minutes ${Math.round(wait) + usual.minutes}.`;
    throw wrongUse('--minutes', found, 'a look past the food going in', next);
  }
  return [ahead, wait] as const;
}
