// `emberwright coals`: size, heat and wind; the count, where it lies, when more comes.

import {
  coalsAloneSheet,
  type HeatMethod,
  isPotMethod,
  isRefusal,
  type Kelvin,
  kelvin,
  layCoals,
  minutes,
  readyRecipes,
  usualFire,
  usualLoad,
  wantedOvenFor,
} from '#engine';
import { type ExitCode, wrongUse } from '../exit.ts';
import { type Fire, type FireOptions, fireOf, HEAT_METHODS, refuse, tell } from '../fire.ts';
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

const USUAL_MINUTES = usualFire.stay;
const USUAL_LOAD: Readonly<Record<(typeof HEAT_METHODS)[number], string>> = {
  bake: 'a usual dough for this oven',
  roast: 'a usual dough for this oven',
  simmer: 'a usual pot for this oven',
  boil: 'a usual pot for this oven',
  fry: 'a usual load for this oven, the lid off',
  'keep-warm': 'a dish that is hot, in an oven that is hot',
};

export function coals(options: CoalsOptions, shell: Shell): ExitCode {
  const method = oneOf('--method', options.method ?? 'bake', HEAT_METHODS);
  const stay = minutesOf('--minutes', options.minutes, USUAL_MINUTES);
  const fire = fireOf(options, shell);
  if (isRefusal(fire)) return refuse(fire, undefined, { options, shell });
  const { oven, air, camp, screened, conditions, door } = fire;
  const isBaked = method === 'bake' || method === 'roast';
  const wanted = heatOf(options.heat, method, fire);
  const laid = layCoals({
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
      preheat: isBaked && !options.coldOven,
    },
    load: usualLoad(fire, method),
    ironAtStart: method === 'keep-warm' ? wanted : air.temperature,
    pins: pinsOf(options, fire),
  });
  if (isRefusal(laid)) return refuse(laid, oven, { options, shell });
  const alsoAssumed = [
    USUAL_LOAD[method],
    ...(options.method === undefined ? ['a bake'] : []),
    ...(options.minutes === undefined ? [`${USUAL_MINUTES} min in the oven`] : []),
  ];
  const asked = { door: { ...door, alsoAssumed }, coals: laid };
  return tell((say) => coalsAloneSheet(asked, say), fire, { options, shell });
}

/** A pot is kept at its boil; every other food wants a heat that is said. */
function heatOf(text: string | undefined, method: HeatMethod, { air }: Fire): Kelvin {
  if (text !== undefined) return kelvin(quantityOf('--heat', text, 'temperature', '375 F'));
  const pot = readyRecipes.find((recipe) => recipe.method === 'simmer');
  if (isPotMethod(method) && pot !== undefined) return wantedOvenFor({ recipe: pot, air });
  const wanted = 'the heat wanted in the oven (only a simmer or a boil can leave it out)';
  throw wrongUse('--heat', 'nothing', wanted, 'Write --heat "375 F".');
}

const pinsOf = ({ above, below }: CoalsOptions, { camp }: Fire) => ({
  ...(above === undefined ? {} : { above: coalsOf('--above', above, camp.fuel.kind) }),
  ...(below === undefined ? {} : { below: coalsOf('--below', below, camp.fuel.kind) }),
});
