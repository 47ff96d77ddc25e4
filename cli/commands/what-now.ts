// `emberwright what-now`: it is going wrong; three moves in order.

import {
  fireMethods,
  isRefusal,
  minutes,
  rescue,
  type Say,
  type Symptom,
  USUAL_INSIDE_MINUTES,
  usualFood,
  usualLoad,
  whatNowSheet,
} from '#engine';
import type { ExitCode } from '../exit.ts';
import { fireOf, refuse, tell } from '../fire.ts';
import { ageOf, agesOf, ironOf, lyingOf, type StateOptions } from '../lying.ts';
import { minutesOf, oneOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface WhatNowOptions extends StateOptions {
  readonly symptom: string;
  readonly method?: string;
}

export const SYMPTOMS: readonly Symptom[] = [
  'bottom-dark',
  'top-pale',
  'one-side-hot',
  'coals-dying',
  'raw-middle',
  'late',
];

export function whatNow(options: WhatNowOptions, shell: Shell): ExitCode {
  const symptom = oneOf('--symptom', options.symptom, SYMPTOMS);
  const method = oneOf('--method', options.method ?? 'bake', fireMethods);
  const inside = minutesOf('--minutes-in', options.minutesIn, USUAL_INSIDE_MINUTES);
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const age = ageOf(options, 'what-now', fire, inside);
  const { coals, above, below } = lyingOf(options, door.fuel, age.minutes);
  const found = rescue({
    symptom,
    state: {
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
      loadInMinutesAgo: minutes(inside),
    },
  });
  if (isRefusal(found)) return refuse(found, oven, { options, shell });
  const alsoAssumed = (say: Say) => [
    usualFood(fire, method, say),
    ...age.assumed(say),
    ...(options.minutesIn === undefined ? [`food in for ${USUAL_INSIDE_MINUTES} min`] : []),
  ];
  const asked = (say: Say) => ({
    door: { ...door, alsoAssumed: alsoAssumed(say) },
    ...{ above, below, rescue: found, ageAssumed: age.usual },
  });
  return tell((say) => whatNowSheet(asked(say), say), fire, { options, shell });
}
