// `emberwright layout`: will my own layout do?

import {
  isRefusal,
  judgeLayout,
  type Kelvin,
  kelvin,
  layoutSheet,
  minutes,
  usualFire,
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

const { wait: USUAL_WAIT_MINUTES, look: USUAL_MINUTES } = usualFire;
const HEAT_EXAMPLE = '350 F';

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
  const wanted =
    options.heat === undefined
      ? usualFire.heat
      : kelvin(quantityOf('--heat', options.heat, 'temperature', HEAT_EXAMPLE));
  const age = { where: '--lit', said: options.lit, usual: usualFire.lit.layout[door.fuel] };
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
    door: { ...door, alsoAssumed: assumedOf(options, wanted, age.usual) },
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

const assumedOf = (options: LayoutOptions, wanted: Kelvin, usualLit: number): readonly string[] => [
  'a usual dough or pot for this oven',
  ...(options.heat === undefined ? [`${sayTo(options).oven(wanted)} wanted`] : []),
  ...(options.lit === undefined && !isAgeSaid(options) ? [`coals lit ${usualLit} min ago`] : []),
  ...(options.minutesIn === undefined && options.inAfter === undefined
    ? [`oven still empty, food in after ${USUAL_WAIT_MINUTES} min`]
    : []),
  ...(options.minutes === undefined ? [`looked at for ${USUAL_MINUTES} min`] : []),
];
