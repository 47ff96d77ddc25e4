// An oven and the spot it stands on, without a camp: what four commands ask before their own question.

import {
  type Air,
  type Assumption,
  airAt,
  type Camp,
  type CampOven,
  campForTonight,
  campSafety,
  conditionsOf,
  type Door,
  grams,
  isRefusal,
  metres,
  type OrRefusal,
  type Refusal,
  refusalText,
  renderText,
  type Say,
  type SheetDocument,
  type SiteConditions,
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
  readonly groundIs?: string;
  readonly hearth?: string;
  readonly rain?: string;
  readonly sun?: string;
  readonly riser?: string;
  readonly lidMass?: string;
}

export interface Fire {
  readonly camp: Camp;
  readonly oven: CampOven;
  readonly air: Air;
  readonly screened: boolean;
  readonly conditions: SiteConditions;
  readonly door: Door;
}

/** The spot as `tonight` would have it; the bread it is asked with is of no account here. */
export function fireOf(options: FireOptions, shell: Shell): OrRefusal<Fire> {
  const diameterMetres = quantityOf('--oven', options.oven, 'length', '12 in');
  const screened = options.screen === true;
  const spot = campForTonight({
    what: ANY_BREAD,
    oven: {
      diameterMetres,
      ...(options.deep ? { style: 'deep' as const } : {}),
      ...(options.riser === undefined
        ? {}
        : { riser: metres(quantityOf('--riser', options.riser, 'length', '2 in')) }),
      ...(options.lidMass === undefined
        ? {}
        : { lidMass: grams(quantityOf('--lid-mass', options.lidMass, 'mass', '7 lb')) }),
    },
    when: {},
    date: shell.today,
    timeZone: shell.timeZone,
    now: NOW,
    weather: weatherOf(options),
    ...(options.height === undefined ? {} : { elevation: heightOf(options.height) }),
    ...(options.ground === undefined ? {} : { ground: oneOf('--ground', options.ground, GROUNDS) }),
    ...siteOf(options),
    ...fuelOf(options),
    ...(screened ? { windScreens: 1 } : {}),
  });
  if (isRefusal(spot)) return spot;
  const { camp, menu, assumed, notices } = spot;
  const [oven] = camp.ovens;
  const [weather] = camp.weather;
  if (oven === undefined || weather === undefined) throw new RangeError('tonight has an oven');
  const door = {
    oven,
    fuel: camp.fuel.kind,
    assumed: assumed.filter(({ what }) => OF_THE_SPOT.has(what)),
    notices,
    strip: campSafety({ camp, menu }).strip,
  };
  const conditions = conditionsOf({ place: camp.place, weather, oven });
  const air = airAt(camp, NOW, { screened });
  return { camp, oven, air, screened, conditions, door };
}

/** Wet or frozen ground, and what the coals below lie on. */
const siteOf = ({ groundIs, hearth }: FireOptions) => ({
  ...(groundIs === undefined
    ? {}
    : { groundIs: oneOf('--ground-is', groundIs, ['dry', 'wet', 'frozen'] as const) }),
  ...(hearth === undefined ? {} : { hearth: oneOf('--hearth', hearth, HEARTHS) }),
});

const HEARTHS = ['ground', 'fire-pan', 'fire-table'] as const;

const ANY_BREAD = 'biscuits';
/** The weather holds, so any clock does. */
const NOW = 0 as Camp['weather'][number]['at'];
const OF_THE_SPOT: ReadonlySet<Assumption['what']> = new Set<Assumption['what']>([
  ...(['fuel', 'piece-mass', 'air', 'wind', 'ground', 'elevation', 'depth', 'screen'] as const),
]);

const weatherOf = ({ air, wind, rain, sun }: FireOptions) => ({
  ...(air === undefined ? {} : { airKelvin: airOf(air) }),
  ...(wind === undefined ? {} : { windMetresPerSecond: windOf(wind) }),
  ...(rain === undefined ? {} : { rain: 1000 * quantityOf('--rain', rain, 'length', '2 mm') }),
  ...(sun === undefined ? {} : { sun: quantityOf('--sun', sun, 'share', '100 %') }),
});

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
