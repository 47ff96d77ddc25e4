// An oven and the spot it stands on, without a camp: what four commands ask before their own question.

import {
  type Air,
  type Assumption,
  airAt,
  type Camp,
  type CampOven,
  campForTonight,
  campSafety,
  type Door,
  isRefusal,
  type OrRefusal,
  type Refusal,
  refusalText,
  renderText,
  type Say,
  type SheetDocument,
  sayFor,
} from '#engine';
import { EXIT, type ExitCode } from './exit.ts';
import { type FuelOptions, fuelOf } from './fuel-reading.ts';
import {
  airOf,
  GROUNDS,
  heightOf,
  oneOf,
  quantityOf,
  type ReaderOptions,
  readerOf,
  windOf,
} from './reading.ts';
import type { Shell } from './shell.ts';

export interface FireOptions extends ReaderOptions, FuelOptions {
  readonly oven: string;
  readonly deep?: true;
  readonly air?: string;
  readonly wind?: string;
  readonly height?: string;
  readonly ground?: string;
  readonly screen?: true;
}

export interface Fire {
  readonly camp: Camp;
  readonly oven: CampOven;
  readonly air: Air;
  readonly screened: boolean;
  readonly door: Door;
}

/** The spot as `tonight` would have it; the bread it is asked with is of no account here. */
export function fireOf(options: FireOptions, shell: Shell): OrRefusal<Fire> {
  const diameterMetres = quantityOf('--oven', options.oven, 'length', '12 in');
  const screened = options.screen === true;
  const made = campForTonight({
    what: ANY_BREAD,
    oven: { diameterMetres, ...(options.deep ? { style: 'deep' as const } : {}) },
    when: {},
    date: shell.today,
    timeZone: shell.timeZone,
    now: NOW,
    weather: weatherOf(options),
    ...(options.height === undefined ? {} : { elevation: heightOf(options.height) }),
    ...(options.ground === undefined ? {} : { ground: oneOf('--ground', options.ground, GROUNDS) }),
    ...fuelOf(options),
    ...(screened ? { windScreens: 1 } : {}),
  });
  if (isRefusal(made)) return made;
  const { camp, menu, assumed, notices } = made;
  const oven = camp.ovens[0];
  if (oven === undefined) throw new RangeError('a camp for tonight has an oven');
  const door = {
    oven,
    fuel: camp.fuel.kind,
    assumed: assumed.filter(({ what }) => OF_THE_SPOT.has(what)),
    notices,
    strip: campSafety({ camp, menu }).strip,
  };
  return { camp, oven, air: airAt(camp, NOW, { screened }), screened, door };
}

const ANY_BREAD = 'biscuits';
/** The weather holds, so any clock does. */
const NOW = 0 as Camp['weather'][number]['at'];
const OF_THE_SPOT: ReadonlySet<Assumption['what']> = new Set<Assumption['what']>([
  ...(['fuel', 'piece-mass', 'air', 'wind', 'ground', 'elevation', 'depth', 'screen'] as const),
]);

const weatherOf = ({ air, wind }: FireOptions) => ({
  ...(air === undefined ? {} : { airKelvin: airOf(air) }),
  ...(wind === undefined ? {} : { windMetresPerSecond: windOf(wind) }),
});

export const HEAT_METHODS = ['bake', 'roast', 'simmer', 'boil', 'fry', 'keep-warm'] as const;

/** Speaks as the oven was written, unless told otherwise. */
export function sayTo(options: FireOptions, oven?: CampOven): Say {
  const reader = readerOf(options, /in|"|ft/i.test(options.oven) ? 'us' : 'metric');
  const ovens = oven === undefined ? [] : [oven];
  return sayFor({ ...reader, plan: { camp: { ovens, hands: [] }, menu: { dishes: [] } } });
}

interface Told {
  readonly options: FireOptions;
  readonly shell: Shell;
}

/** Prints a sheet; a stop among its notices is told by the exit code. */
export function tell(
  sheetOf: (say: Say) => SheetDocument,
  { oven }: Fire,
  { options, shell }: Told,
): ExitCode {
  const sheet = sheetOf(sayTo(options, oven));
  shell.out(renderText(sheet, { width: shell.columns }));
  const isStopped = sheet.blocks.some((block) => block.type === 'notice' && block.level === 'stop');
  return isStopped ? EXIT.stopped : EXIT.fine;
}

/** What can't be, to the error output. */
export function refuse(
  refusal: Refusal,
  oven: CampOven | undefined,
  { options, shell }: Told,
): ExitCode {
  shell.error(`Stop: ${refusalText(refusal, sayTo(options, oven))}\n`);
  return EXIT.stopped;
}
