// `emberwright stack`: two ovens one on the other; the coals of each layer.

import {
  type CampOven,
  type FireMethod,
  fireLighting,
  isRefusal,
  kelvin,
  minutes,
  type Say,
  type StackRequest,
  sayFor,
  stackOvens,
  stackSheet,
  usualFood,
  usualLoad,
  usualStay,
  wantedAtFire,
  withUsualLooks,
} from '#engine';
import type { ExitCode } from '../exit.ts';
import { type Fire, type FireOptions, fireOf, refuse, tell } from '../fire.ts';
import { coalsOf } from '../fuel-reading.ts';
import { minutesOf, oneOf, quantityOf, readerOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface StackOptions extends FireOptions {
  readonly upperOven?: string;
  readonly upperDeep?: true;
  readonly heat?: string;
  readonly upperHeat?: string;
  readonly minutes?: string;
  readonly upperMinutes?: string;
  readonly method?: string;
  readonly coldOven?: true;
  readonly below?: string;
  readonly between?: string;
  readonly above?: string;
}

const STACKED = ['bake', 'roast', 'simmer'] as const;

export function stack(options: StackOptions, shell: Shell): ExitCode {
  const told = { options, shell };
  const lower = fireOf(options, shell);
  if (isRefusal(lower)) return refuse(lower, undefined, told);
  const { upperDeep: deep, ...plain } = options;
  const { deep: _, ...rest } = plain;
  const isSame = options.upperOven === undefined && !deep;
  const upper = isSame
    ? lower
    : fireOf(
        { ...rest, oven: options.upperOven ?? options.oven, ...(deep ? { deep } : {}) },
        shell,
      );
  if (isRefusal(upper)) return refuse(upper, undefined, told);
  const requests = requestsOf(options, { lower, upper });
  const stacked = stackOvens(requests);
  if (isRefusal(stacked)) return refuse(stacked, requests.upper.oven, told);
  const asked = {
    lower: requests.lower.oven,
    upper: requests.upper.oven,
    hearth: lower.camp.place.hearth,
    stack: withUsualLooks(stacked, requests),
    lighting: fireLighting(lower.camp, lower.air),
    isPot: requests.lower.wish.method === 'simmer',
  };
  const ovens = [requests.lower.oven, requests.upper.oven];
  const reader = readerOf(options, /in|"|ft/i.test(options.oven) ? 'us' : 'metric');
  const say = sayFor({ ...reader, plan: { camp: { ovens, hands: [] }, menu: { dishes: [] } } });
  const door = { ...lower.door, alsoAssumed: assumedOf(options, requests, say) };
  return tell(() => stackSheet({ ...asked, door }, say), lower, told);
}

interface Both {
  readonly lower: Fire;
  readonly upper: Fire;
}

function requestsOf(options: StackOptions, { lower, upper }: Both): StackRequest {
  const method = oneOf('--method', options.method ?? 'bake', STACKED);
  const stay = minutesOf('--minutes', options.minutes, usualStay(method));
  const { kind } = lower.camp.fuel;
  const pin = (where: string, text: string | undefined, side: 'above' | 'below') =>
    text === undefined ? {} : { [side]: coalsOf(where, text, kind) };
  const made = (
    fire: Fire,
    part: Pick<StackRequest['lower'], 'loadId' | 'oven' | 'pins'>,
    wanted: number,
  ) => ({
    ...part,
    air: fire.air,
    place: fire.camp.place,
    screened: fire.screened,
    fuel: fire.camp.fuel,
    load: usualLoad(fire, method),
    ironAtStart: fire.air.temperature,
    wish: {
      method,
      wanted: kelvin(wanted),
      minutes: minutes(stay),
      preheat: method !== 'simmer' && !options.coldOven,
    },
  });
  const upperStay = minutesOf('--upper-minutes', options.upperMinutes, stay);
  const below = made(
    lower,
    {
      loadId: 'lower-food',
      oven: placed(lower.oven, 'lower'),
      pins: {
        ...pin('--below', options.below, 'below'),
        ...pin('--between', options.between, 'above'),
      },
    },
    heatOf('--heat', options.heat, method, lower),
  );
  const over = made(
    upper,
    {
      loadId: 'upper-food',
      oven: placed(upper.oven, 'upper'),
      pins: pin('--above', options.above, 'above'),
    },
    heatOf('--upper-heat', options.upperHeat ?? options.heat, method, upper),
  );
  return { lower: below, upper: { ...over, wish: { ...over.wish, minutes: minutes(upperStay) } } };
}

const placed = (oven: CampOven, where: 'lower' | 'upper'): CampOven => ({
  ...oven,
  id: where,
  name: `the ${where} oven`,
});

/** As said, or a pot's own boil, or what is usual for the method. */
const heatOf = (where: string, text: string | undefined, method: FireMethod, { air }: Fire) =>
  wantedAtFire(
    method,
    air,
    text === undefined ? undefined : kelvin(quantityOf(where, text, 'temperature', '350 F')),
  );

const assumedOf = (
  options: StackOptions,
  { lower, upper }: StackRequest,
  say: Say,
): readonly string[] => [
  `in the lower ${usualFood(lower, lower.wish.method, say)}`,
  `in the upper ${usualFood(upper, upper.wish.method, say)}`,
  ...(options.method === undefined ? ['a bake'] : []),
  ...(options.heat === undefined ? [`${say.oven(lower.wish.wanted)} wanted`] : []),
  ...(options.upperOven === undefined ? ['both ovens of one size'] : []),
  ...(options.minutes === undefined ? [`${say.minutes(lower.wish.minutes)} in the oven`] : []),
];
