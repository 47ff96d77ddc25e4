// `emberwright layout`: will my own layout do?

import {
  isRefusal,
  judgeLayout,
  type Kelvin,
  kelvin,
  layoutSheet,
  minutes,
  usualLoad,
} from '#engine';
import { type ExitCode, wrongUse } from '../exit.ts';
import { fireOf, HEAT_METHODS, refuse, sayTo, tell } from '../fire.ts';
import { ironOf, lyingOf, type StateOptions } from '../lying.ts';
import { minutesOf, oneOf, quantityOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface LayoutOptions extends StateOptions {
  readonly heat?: string;
  readonly method?: string;
  readonly lit?: string;
  readonly minutes?: string;
  readonly inAfter?: string;
}

const USUAL_LIT_MINUTES = 20; // ashed over, just laid
const USUAL_WAIT_MINUTES = 15;
const USUAL_MINUTES = 45; // half an hour's bake after its wait
const USUAL_HEAT = '350 F';

export function layout(options: LayoutOptions, shell: Shell): ExitCode {
  if (options.inAfter !== undefined && options.minutesIn !== undefined) {
    const next = 'Leave one of the two out.';
    throw wrongUse('--in-after', 'both', '--in-after or --minutes-in', next);
  }
  const ahead = minutesOf('--minutes', options.minutes, USUAL_MINUTES);
  const wait = minutesOf('--in-after', options.inAfter, USUAL_WAIT_MINUTES);
  if (options.minutesIn === undefined && ahead <= wait) {
    const found = `${ahead} min, with the food in after ${wait} min`;
    const next = `Write --minutes ${Math.round(wait) + USUAL_MINUTES}.`;
    throw wrongUse('--minutes', found, 'a look past the food going in', next);
  }
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const method = oneOf('--method', options.method ?? 'bake', HEAT_METHODS);
  const { oven, air, camp, screened, conditions, door } = fire;
  const wanted = kelvin(
    quantityOf('--heat', options.heat ?? USUAL_HEAT, 'temperature', USUAL_HEAT),
  );
  const age = { where: '--lit', said: options.lit, usual: USUAL_LIT_MINUTES };
  const { coals, above, below } = lyingOf(options, door.fuel, age);
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
    load: usualLoad(fire, method),
    ...whenIn(options, wait),
    wanted,
    minutes: minutes(ahead),
  });
  if (isRefusal(judgement)) return refuse(judgement, oven, { options, shell });
  const asked = {
    door: { ...door, alsoAssumed: assumedOf(options, wanted) },
    above,
    below,
    wanted,
    judgement,
  };
  return tell((say) => layoutSheet(asked, say), fire, { options, shell });
}

const whenIn = ({ minutesIn }: LayoutOptions, wait: number) =>
  minutesIn === undefined
    ? { loadInMinute: minutes(wait) }
    : { loadInMinutesAgo: minutes(minutesOf('--minutes-in', minutesIn, 0)) };

const isAgeSaid = ({ coals = [] }: LayoutOptions): boolean =>
  coals.length > 0 && coals.every((set) => set.includes('@'));

const assumedOf = (options: LayoutOptions, wanted: Kelvin): readonly string[] => [
  'a usual dough or pot for this oven',
  ...(options.heat === undefined ? [`${sayTo(options).oven(wanted)} wanted`] : []),
  ...(options.lit === undefined && !isAgeSaid(options)
    ? [`coals lit ${USUAL_LIT_MINUTES} min ago`]
    : []),
  ...(options.minutesIn === undefined && options.inAfter === undefined
    ? [`oven still empty, food in after ${USUAL_WAIT_MINUTES} min`]
    : []),
  ...(options.minutes === undefined ? [`looked at for ${USUAL_MINUTES} min`] : []),
];
