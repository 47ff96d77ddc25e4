// `emberwright coals`: size, heat and wind; the count, where it lies, when more comes.

import {
  coalsAloneSheet,
  type FireMethod,
  fireLighting,
  fireMethods,
  isPotMethod,
  isRefusal,
  type Kelvin,
  kelvin,
  laidUntilItBoils,
  layCoals,
  minutes,
  type Say,
  usualFood,
  usualLoad,
  usualLooks,
  usualStay,
  wantedAtFire,
  warmWithFew,
} from '#engine';
import { type ExitCode, wrongUse } from '../exit.ts';
import { type Fire, type FireOptions, fireOf, refuse, tell } from '../fire.ts';
import { coalsOf } from '../fuel-reading.ts';
import { minutesOf, oneOf, quantityOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface CoalsOptions extends FireOptions {
  readonly heat?: string;
  readonly method?: string;
  readonly minutes?: string;
  readonly coldOven?: true;
  readonly above?: string;
  readonly below?: string;
}

export function coals(options: CoalsOptions, shell: Shell): ExitCode {
  const method = oneOf('--method', options.method ?? 'bake', fireMethods);
  const stay = minutesOf('--minutes', options.minutes, usualStay(method));
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const wanted = heatOf(options.heat, method, fire);
  const request = {
    loadId: 'food',
    oven,
    air,
    place: camp.place,
    screened,
    fuel: camp.fuel,
    conditions,
    wish: {
      method,
      wanted,
      minutes: minutes(stay),
      preheat: (method === 'bake' || method === 'roast') && !options.coldOven,
    },
    load: usualLoad(fire, method),
    ironAtStart: method === 'keep-warm' ? wanted : air.temperature,
    pins: pinsOf(options, fire),
  };
  const laid = options.minutes === undefined ? laidUntilItBoils(request) : layCoals(request);
  if (isRefusal(laid)) return refuse(laid, oven, { options, shell });
  const few = warmWithFew(request, laid);
  const alsoAssumed = (say: Say) => [
    usualFood(fire, method, say),
    ...(options.method === undefined ? ['a bake'] : []),
    ...(options.heat === undefined && !isPotMethod(method) ? [`${say.oven(wanted)} wanted`] : []),
    ...(options.minutes === undefined
      ? [`${say.minutes(laid.outMinute - laid.loadInMinute)} in the oven`]
      : []),
  ];
  const lighting = fireLighting(camp, air);
  const looks = usualLooks({ ...laid, wanted, oven, air });
  return tell(
    (say) =>
      coalsAloneSheet(
        { door: { ...door, alsoAssumed: alsoAssumed(say) }, coals: laid, lighting, few, looks },
        say,
      ),
    fire,
    { options, shell },
  );
}

/** A pot is kept at its boil, a dish warm, fat hot; a bake and a roast want a heat that is said. */
function heatOf(text: string | undefined, method: FireMethod, { air }: Fire): Kelvin {
  if (text !== undefined) return kelvin(quantityOf('--heat', text, 'temperature', '375 F'));
  if (isPotMethod(method) || method === 'keep-warm' || method === 'fry')
    return wantedAtFire(method, air);
  const wanted = 'the heat wanted in the oven (only a bake or a roast needs it said)';
  throw wrongUse('--heat', 'nothing', wanted, 'Write --heat "375 F".');
}

const pinsOf = ({ above, below }: CoalsOptions, { camp }: Fire) => ({
  ...(above === undefined ? {} : { above: coalsOf('--above', above, camp.fuel.kind) }),
  ...(below === undefined ? {} : { below: coalsOf('--below', below, camp.fuel.kind) }),
});
