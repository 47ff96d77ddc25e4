// From the saved shape to what the engine computes with. Only for a file that has been checked:
// every text in it is readable, every name refers to something.

import {
  type Assumption,
  type Camp,
  type CampOven,
  clockMinutes,
  cubicMetres,
  type Degrees,
  degrees,
  type Fuel,
  fromUnit,
  type Gear,
  grams,
  type Hand,
  isKnownSize,
  kelvin,
  type Menu,
  type Metres,
  type MouthGroup,
  metres,
  metresPerSecond,
  minutes,
  type Notice,
  nominalOven,
  notice,
  type Place,
  ratio,
  usualCamp,
  usualWeather,
  type WeatherHour,
} from '#engine';
import { daysBetween, readClock, readDirection, readUtcOffset } from './clock-text.ts';
import { NO_DATE, NO_TIME_ZONE, USUAL } from './defaults.ts';
import { given } from './given.ts';
import { menuFromFile } from './menu-to-engine.ts';
import { type QuantityKind, readQuantity } from './quantity-text.ts';
import { storesFromFile } from './stores.ts';
import type { FileTrouble } from './trouble.ts';
import type { CampFile, FileFuel, FileGear, FileOven, FileWeatherHour } from './v1.ts';

export interface ToEngineOptions {
  /** Today, told by the caller: stands in where the file names no date, else is held against it. */
  readonly date?: string;
}

export interface EngineCamp {
  readonly camp: Camp;
  readonly menu: Menu;
  readonly notices: readonly Notice[];
  readonly assumed: readonly Assumption[];
  /** What can only be found out with the larder at hand: a weight that can't be reckoned. */
  readonly troubles: readonly FileTrouble[];
}

/** A checked camp file in the engine's terms, with what had to be assumed. */
export function toEngine(file: CampFile, options: ToEngineOptions = {}): EngineCamp {
  const read = menuFromFile(file);
  const assumed = assumptionsOf(file);
  return {
    camp: campFromFile(file, options.date),
    menu: read.menu,
    notices: [
      ...dateNotices(file.date, options.date),
      ...assumed.map(({ what, value }) => notice('FILE_ASSUMED', 'note', {}, { what, value })),
      ...read.notices,
    ],
    assumed,
    troubles: read.troubles,
  };
}

const FAR_DAYS = 366;

function dateNotices(date: string | undefined, today: string | undefined): readonly Notice[] {
  if (date === undefined)
    return today === undefined ? [notice('FILE_DATE_NOT_SAID', 'note', {}, { date: NO_DATE })] : [];
  const days = today === undefined ? 0 : daysBetween(today, date);
  return Math.abs(days) <= FAR_DAYS ? [] : [notice('FILE_DATE_FAR', 'doubt', {}, { date, days })];
}

function campFromFile(file: CampFile, date: string | undefined): Camp {
  return {
    id: file.id,
    title: file.title,
    place: placeFromFile(file.place),
    date: file.date ?? date ?? NO_DATE,
    timeZone: file.timeZone ?? NO_TIME_ZONE,
    weather: weatherFromFile(file.weather ?? []),
    mouths: file.mouths.map(({ count, appetite = 'ordinary', late, who }) => ({
      count,
      appetite,
      ...given<Partial<MouthGroup>>({ who, late: inside('duration', late, minutes) }),
    })),
    needs: file.needs ?? [],
    hands: file.hands === undefined ? [USUAL_HAND] : file.hands.map(handFromFile),
    ovens: (file.ovens ?? []).flatMap(ovensFromFile),
    fuel: fuelFromFile(file.fuel ?? { kind: 'briquettes' }),
    gear: gearFromFile(file.gear ?? {}, file.fuel),
    ...(file.pantry === undefined ? {} : { pantry: given(file.pantry) }),
    ...(file.stores === undefined ? {} : { stores: storesFromFile(file.stores) }),
    ...given<Partial<Camp>>({
      event: file.event,
      inHand: inside('duration', file.inHand, minutes),
    }),
    restriction: file.place.restriction ?? 'unknown',
  };
}

const USUAL_HAND: Hand = {
  id: 'cook',
  name: 'the cook',
  skill: 'camp-cook',
  from: clockMinutes(USUAL.handFromMinutes),
  to: clockMinutes(USUAL.handToMinutes),
};

const hoursFromFile = (hours: { readonly from: string; readonly to: string }) => ({
  from: clockMinutes(readClock(hours.from)!),
  to: clockMinutes(readClock(hours.to)!),
});

const handFromFile = ({ away, ...hand }: NonNullable<CampFile['hands']>[number]): Hand => ({
  ...hand,
  ...given<Partial<Hand>>({ away: away?.map(hoursFromFile) }),
  from: clockMinutes(readClock(hand.from)!),
  to: clockMinutes(readClock(hand.to)!),
});

/** A checked text's quantity, in the engine's brand; undefined stays undefined. */
function inside<Branded>(
  kind: QuantityKind,
  text: string | undefined,
  brand: (value: number) => Branded,
): Branded | undefined {
  return text === undefined ? undefined : brand(readQuantity(kind, text)!);
}

function placeFromFile(place: CampFile['place']): Place {
  return {
    name: place.name,
    elevation: inside('length', place.elevation, metres) ?? usualCamp.elevation,
    ground: place.ground ?? usualCamp.ground,
    hearth: place.hearth ?? usualCamp.hearth,
    ...given<Partial<Place>>({
      latitude: brandedOrNot(place.latitude, degrees),
      longitude: brandedOrNot(place.longitude, degrees),
      utcOffset: brandedOrNot(
        place.utcOffset === undefined ? undefined : readUtcOffset(place.utcOffset),
        minutes,
      ),
      groundIs: place.groundIs,
      water: place.water,
    }),
  };
}

const brandedOrNot = <Branded>(value: number | undefined, brand: (value: number) => Branded) =>
  value === undefined ? undefined : brand(value);

function weatherFromFile(weather: readonly FileWeatherHour[]): readonly WeatherHour[] {
  return weather.length === 0 ? [usualWeather] : weather.map(weatherHourFromFile);
}

function weatherHourFromFile(hour: FileWeatherHour): WeatherHour {
  const wind = readQuantity('speed', hour.wind)!;
  return {
    at: clockMinutes(readClock(hour.at)!),
    air: kelvin(readQuantity('temperature', hour.air)!),
    wind: metresPerSecond(wind),
    gust:
      inside('speed', hour.gust, metresPerSecond) ?? metresPerSecond(wind * usualCamp.gustPerWind),
    windFrom: directionOf(hour.windFrom),
    ...given<Partial<WeatherHour>>({
      humidity: inside('share', hour.humidity, ratio),
      rain: inside('length', hour.rain, (metresAnHour) => metresAnHour * MILLIMETRES),
      sun: inside('share', hour.sun, ratio),
      sky: hour.sky,
    }),
  };
}

const MILLIMETRES = 1000; // in a metre

const directionOf = (text: string | undefined): Degrees =>
  text === undefined ? usualWeather.windFrom : degrees(readDirection(text)!);

/** `count: 3` stands for three of the same: `A` becomes `A-1`, `A-2`, `A-3`. */
function ovensFromFile(oven: FileOven): readonly CampOven[] {
  const many = oven.count ?? 1;
  const one = ovenFromFile(oven);
  if (many === 1) return [one];
  return Array.from({ length: many }, (_, index) => ({
    ...one,
    id: `${one.id}-${index + 1}`,
    name: `${one.name} ${index + 1}`,
  }));
}

function ovenFromFile(oven: FileOven): CampOven {
  const diameter = metres(readQuantity('length', oven.diameter)!);
  const style = oven.style ?? 'regular';
  const nominal = usualOven(diameter, style);
  return {
    id: oven.id,
    name: oven.name ?? oven.id,
    diameter,
    style,
    depth: inside('length', oven.depth, metres) ?? nominal.depth,
    capacity: inside('volume', oven.capacity, cubicMetres) ?? nominal.capacity,
    mass: inside('mass', oven.weight, grams) ?? nominal.mass,
    keptFreeOf: oven.keptFreeOf ?? [],
    ...given<Partial<CampOven>>({
      floorDiameter: inside('length', oven.floorDiameter, metres),
      lidMass: inside('mass', oven.lidWeight, grams),
      lidDiameter: inside('length', oven.lidDiameter, metres),
      riser: inside('length', oven.riser, metres),
      mark: oven.mark,
    }),
  };
}

const SMALLEST_KNOWN = fromUnit(8, 'inch');
const LARGEST_KNOWN = fromUnit(16, 'inch');

/** Past the sizes that are usually made, the nearest of them, its room and iron scaled by area. */
function usualOven(diameter: Metres, style: CampOven['style']): CampOven {
  if (isKnownSize(diameter)) return nominalOven(diameter, style);
  const nearest = diameter < SMALLEST_KNOWN ? SMALLEST_KNOWN : LARGEST_KNOWN;
  const oven = nominalOven(nearest, style);
  const area = (diameter / nearest) ** 2;
  return { ...oven, capacity: cubicMetres(oven.capacity * area), mass: grams(oven.mass * area) };
}

function fuelFromFile(fuel: FileFuel): Fuel {
  if (fuel.kind === 'wood-coals')
    return {
      kind: 'wood-coals',
      lead: inside('duration', fuel.lead, minutes) ?? minutes(USUAL.feederLeadMinutes),
    };
  const ten = inside('mass', fuel.tenWeigh, grams);
  const piece = inside('mass', fuel.pieceWeight, grams);
  const pieceMass = piece ?? (ten === undefined ? usualCamp.pieceMass : grams(ten / 10));
  const onHand =
    inside('mass', fuel.onHand, grams) ??
    brandedOrNot(fuel.onHandPieces, (pieces) => grams(pieces * pieceMass));
  return {
    kind: 'briquettes',
    pieceMass,
    isMeasured: piece !== undefined || ten !== undefined,
    ...(onHand === undefined ? {} : { onHand }),
  };
}

function gearFromFile(gear: FileGear, fuel: FileFuel | undefined): Gear {
  return {
    chimneys: gear.chimneys ?? (fuel?.kind === 'wood-coals' ? 0 : usualCamp.chimneys),
    chimneyfulCoals: gear.chimneyfulCoals ?? usualCamp.chimneyfulCoals,
    lidStands: gear.lidStands ?? 1,
    tables: gear.tables ?? 1,
    windScreens: gear.windScreens ?? 0,
    thermometer: gear.thermometer ?? false,
    ...given<Partial<Gear>>({
      handWash: gear.handWash,
      bleach: inside('share', gear.bleach, ratio),
    }),
    others: gear.others ?? [],
  };
}

/** What the file does not say, by the engine's own names. */
function assumptionsOf(file: CampFile): readonly Assumption[] {
  const isWood = file.fuel?.kind === 'wood-coals';
  const rows: readonly (readonly [boolean, Assumption['what'], number | string])[] = [
    [file.place.elevation === undefined, 'elevation', usualCamp.elevation],
    [file.place.ground === undefined, 'ground', usualCamp.ground],
    [(file.weather ?? []).length === 0, 'air', usualWeather.air],
    [(file.weather ?? []).length === 0, 'wind', usualWeather.wind],
    [file.hands === undefined, 'hands', usualCamp.hands],
    [(file.ovens ?? []).some((oven) => oven.depth === undefined), 'depth', 'nominal'],
    [file.fuel === undefined, 'fuel', 'briquettes'],
    [!isWood && !isPieceMassSaid(file.fuel), 'piece-mass', usualCamp.pieceMass],
    [!isWood && file.gear?.chimneys === undefined, 'chimneys', usualCamp.chimneys],
  ];
  return rows.filter(([isAssumed]) => isAssumed).map(([, what, value]) => ({ what, value }));
}

const isPieceMassSaid = (fuel: FileFuel | undefined) =>
  fuel?.kind === 'briquettes' && (fuel.pieceWeight ?? fuel.tenWeigh) !== undefined;
