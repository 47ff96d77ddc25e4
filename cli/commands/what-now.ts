// `emberwright what-now`: it is going wrong; three moves in order.

import {
  isRefusal,
  minutes,
  rescue,
  type Symptom,
  usualFire,
  usualLoad,
  whatNowSheet,
} from '#engine';
import type { ExitCode } from '../exit.ts';
import { fireOf, HEAT_METHODS, refuse, tell } from '../fire.ts';
import { ironOf, lyingOf, type StateOptions } from '../lying.ts';
import { minutesOf, oneOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface WhatNowOptions extends StateOptions {
  readonly symptom: string;
  readonly method?: string;
  readonly age?: string;
}

export const SYMPTOMS: readonly Symptom[] = [
  'bottom-dark',
  'top-pale',
  'one-side-hot',
  'coals-dying',
  'raw-middle',
  'late',
];

const USUAL_IN_MINUTES = usualFire.inside;

export function whatNow(options: WhatNowOptions, shell: Shell): ExitCode {
  const symptom = oneOf('--symptom', options.symptom, SYMPTOMS);
  const method = oneOf('--method', options.method ?? 'bake', HEAT_METHODS);
  const inside = minutesOf('--minutes-in', options.minutesIn, USUAL_IN_MINUTES);
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const usual = usualFire.lit['what-now'][door.fuel];
  const age = { where: '--age', said: options.age, usual };
  const { coals, above, below } = lyingOf(options, door.fuel, age);
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
      load: usualLoad(fire, method),
      loadInMinutesAgo: minutes(inside),
    },
  });
  if (isRefusal(found)) return refuse(found, oven, { options, shell });
  const alsoAssumed = [
    'a usual dough or pot for this oven',
    ...(options.age === undefined ? [`coals lit ${usual} min ago`] : []),
    ...(options.minutesIn === undefined ? [`food in for ${USUAL_IN_MINUTES} min`] : []),
  ];
  const asked = { door: { ...door, alsoAssumed }, above, below, rescue: found };
  return tell((say) => whatNowSheet(asked, say), fire, { options, shell });
}
