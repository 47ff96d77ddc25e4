// Which requests can be answered at all, and which answers are weaker than they look?
// Source: the span of chartReprinted and ovenSizing; wind and air as far as the model was swept.

import { type Notice, notice, type Refusal, refusal } from '../notice/notice.ts';
import type { CoalRequest } from './coal-plan.ts';
import { conditionTrouble } from './conditions.ts';

const INCH = 0.0254; // m, exact

/** What the charts and the model cover; outside it we refuse or say so. */
export const COALS_RANGE = {
  /** 8 to 16 inches, and the 20 and 41 cm that a metric cook calls them. */
  diameter: { lowest: 0.2 - 1e-9, highest: 0.41 + 1e-9 },
  depth: { lowest: 2 * INCH, highest: 9 * INCH },
  massGrams: { lowest: 2500, highest: 30_000 },
  airKelvin: { lowest: 253.15, highest: 318.15 },
  wind: { lowest: 0, highest: 15 },
  /** Standard air at 4500 m and at -400 m. */
  pressure: { lowest: 57_700, highest: 106_300 },
  wantedKelvin: { highest: 563.15 },
  stayMinutes: { lowest: 1, highest: 720 },
  pieceGrams: { lowest: 5, highest: 120 },
  pin: { lowest: 0, highest: 200 },
} as const;

const STRONG_WIND = 2.5; // m/s at the oven: a coal then lasts under half its time
/** m/s at the oven: whole trees move, a coal lasts a third of its time; ours, no source. */
const GALE = 3.9; // lower edge of Beaufort 7, 13.9 m/s at 10 m (wmo8), brought down to the oven
const HIGH_PRESSURE_LIMIT = 84_556; // Pa, standard air at 1500 m (iso2533)

const isWithin = (value: number, range: { readonly lowest: number; readonly highest: number }) =>
  range.lowest <= value && value <= range.highest;

/** Why this request can't be answered, or undefined. */
export const coalTrouble = (request: CoalRequest): Refusal | undefined =>
  ovenTrouble(request) ?? conditionTrouble(request) ?? wishTrouble(request) ?? fireTrouble(request);

const about = (request: CoalRequest) => ({ oven: request.oven.id });

const ovenTrouble = (request: CoalRequest): Refusal | undefined => {
  const { oven } = request;
  const fits =
    isWithin(oven.diameter, COALS_RANGE.diameter) &&
    isWithin(oven.depth, COALS_RANGE.depth) &&
    isWithin(oven.mass, COALS_RANGE.massGrams) &&
    isWithin(oven.floorDiameter ?? oven.diameter, {
      lowest: oven.diameter / 2,
      highest: oven.diameter,
    });
  if (fits) return;
  return refusal('COALS_OVEN_OUTSIDE_RANGE', [`ovens.${oven.id}`], about(request), {
    diameterMetres: oven.diameter,
    depthMetres: oven.depth,
    massGrams: oven.mass,
  });
};

const wishTrouble = (request: CoalRequest): Refusal | undefined => {
  const { wish, air } = request;
  const path = [`loads.${request.loadId}`];
  if (!(air.temperature < wish.wanted && wish.wanted <= COALS_RANGE.wantedKelvin.highest))
    return refusal('COALS_HEAT_IMPOSSIBLE', path, about(request), {
      wantedKelvin: wish.wanted,
      airKelvin: air.temperature,
      highestKelvin: COALS_RANGE.wantedKelvin.highest,
    });
  if (!isWithin(wish.minutes, COALS_RANGE.stayMinutes))
    return refusal('COALS_TIME_IMPOSSIBLE', path, about(request), { minutes: wish.minutes });
  return;
};

const fireTrouble = (request: CoalRequest): Refusal | undefined => {
  const { air, fuel, pins } = request;
  if (!isWithin(air.wind, COALS_RANGE.wind))
    return refusal('COALS_WIND_OUTSIDE_RANGE', ['weather', 'gear.screens'], about(request), {
      windMetresPerSecond: air.wind,
      highestMetresPerSecond: COALS_RANGE.wind.highest,
    });
  if (fuel.kind === 'briquettes' && !isWithin(fuel.pieceMass, COALS_RANGE.pieceGrams))
    return refusal('COALS_FUEL_IMPOSSIBLE', ['fuel'], {}, { massGrams: fuel.pieceMass });
  const odd = [pins.above, pins.below].find(
    (pin) => pin !== undefined && !(Number.isInteger(pin) && isWithin(pin, COALS_RANGE.pin)),
  );
  if (odd !== undefined)
    return refusal('COALS_PIN_IMPOSSIBLE', [`loads.${request.loadId}`], about(request), {
      coals: odd,
    });
  return;
};

/** What makes this answer weaker than it looks. */
export const siteNotices = (request: CoalRequest): readonly Notice[] => {
  const { air, fuel } = request;
  const notices: Notice[] = [];
  if (fuel.kind === 'wood-coals')
    notices.push(notice('COALS_WOOD_BAND_WIDE', 'doubt', about(request)));
  if (air.wind >= GALE) notices.push(galeNotice(request));
  else if (air.wind > STRONG_WIND)
    notices.push(
      notice('COALS_WIND_STRONG', 'doubt', about(request), { windMetresPerSecond: air.wind }),
    );
  const isKnownAir =
    isWithin(air.temperature, COALS_RANGE.airKelvin) &&
    isWithin(air.pressure, COALS_RANGE.pressure);
  const airValues = { airKelvin: air.temperature, pressurePascals: air.pressure };
  if (!isKnownAir) notices.push(notice('COALS_AIR_OUTSIDE_RANGE', 'doubt', {}, airValues));
  else if (air.pressure < HIGH_PRESSURE_LIMIT)
    notices.push(notice('COALS_HEIGHT_UNSURE', 'doubt', about(request), airValues));
  return notices;
};

const galeNotice = ({ oven, air, screened }: CoalRequest): Notice =>
  notice(
    'COALS_WIND_GALE',
    'stop',
    { oven: oven.id },
    { windMetresPerSecond: air.wind, screened: screened ? 'yes' : 'no' },
  );
