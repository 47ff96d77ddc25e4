// One run of an oven as plain numbers, for oven-run.py: the same coals, air, load and minutes.
import { STILL_BURNOUT_MINUTES } from '../engine/src/coals/burn.ts';
import { usualOven } from '../engine/src/coals/charts.ts';
import type { CoalRequest } from '../engine/src/coals/coal-plan.ts';
import type { OvenBody } from '../engine/src/coals/geometry.ts';
import type { Outside } from '../engine/src/coals/network.ts';
import { parameter } from '../engine/src/coals/parameters.ts';
import { simpleLoad } from '../engine/src/coals/simple-load.ts';
import {
  cubicMetres,
  degrees,
  fromFahrenheit,
  grams,
  kelvin,
  metres,
  metresPerSecond,
  minutes,
  pascals,
} from '../engine/src/quantity/unit.ts';

const INCH = 0.0254; // m, exact
const DIAMETER = 12 * INCH;

/** 900 g of dough on about half of the floor of a 12 inch oven. */
export const DOUGH = {
  massGrams: 900,
  heatCapacityJoulesPerGramKelvin: 2.8,
  startKelvin: 294,
  boilKelvin: 373.12,
  planAreaSquareMetres: 0.35 * DIAMETER ** 2,
} as const;

/** A usual 12 inch oven over a fire pan in still mild air, 350 F for half an hour. */
export const benchRequest = (): CoalRequest => ({
  loadId: 'bread-1',
  oven: {
    ...usualOven(DIAMETER),
    id: 'A',
    name: 'red cord',
    style: 'regular',
    capacity: cubicMetres(0.0057),
    keptFreeOf: [],
  },
  air: {
    temperature: kelvin(294.26),
    pressure: pascals(101_325),
    wind: metresPerSecond(0),
    windFrom: degrees(270),
    boiling: kelvin(DOUGH.boilKelvin),
  },
  place: { name: 'meadow', elevation: metres(0), ground: 'grass', hearth: 'fire-pan' },
  screened: false,
  fuel: { kind: 'briquettes', pieceMass: grams(24.5), isMeasured: true },
  wish: { method: 'bake', wanted: fromFahrenheit(350), minutes: minutes(30), preheat: true },
  load: simpleLoad(DOUGH),
  ironAtStart: kelvin(294.26),
  pins: {},
});

/** A bread set into an oven that has heated for a while over one set of coals of one age. */
export interface OvenCase {
  readonly body: OvenBody;
  readonly outside: Outside;
  readonly burnoutMinutes: number;
  readonly strength: number;
  readonly above: number;
  readonly below: number;
  readonly burntWhenLaid: number;
  readonly ironKelvin: number;
  readonly loadInMinute: number;
  readonly endMinute: number;
  readonly load: {
    readonly mostWatts: number;
    readonly wattsPerKelvin: number;
    readonly joulesPerKelvin: number;
    readonly startKelvin: number;
    readonly boilKelvin: number;
  };
}

export interface Tolerance {
  readonly relative: number;
  readonly absoluteKelvin: number;
}

/** What oven-run.py reads: names as its equations use them. */
export const pythonCase = (oven: OvenCase, tolerance: Tolerance, repeats: number) => ({
  ...oven.body,
  ...oven.outside,
  burnoutSeconds: oven.burnoutMinutes * 60,
  chartMean: chartMean(),
  emissivityInside: parameter('emissivityInside'),
  emissivityOutside: parameter('emissivityOutside'),
  cover: parameter('coverSquareMetresPerCoal'),
  coalKelvin: parameter('coalKelvin'),
  chartAirKelvin: parameter('chartAirKelvin'),
  lidWatts: parameter('lidCoalWatts') * oven.strength,
  floorWatts: parameter('lidCoalWatts') * parameter('floorToLidDelivery') * oven.strength,
  loadMost: oven.load.mostWatts,
  loadPerKelvin: oven.load.wattsPerKelvin,
  loadCapacity: oven.load.joulesPerKelvin,
  loadStartKelvin: oven.load.startKelvin,
  loadBoilKelvin: oven.load.boilKelvin,
  startKelvin: [oven.ironKelvin, oven.ironKelvin, oven.ironKelvin],
  at: wantedMinutes(oven).map((minute) => minute * 60),
  spans: spansOf(oven),
  relativeTolerance: tolerance.relative,
  absoluteTolerance: tolerance.absoluteKelvin,
  repeats,
});

/** Mean of the burn law from 15 to 60 minutes in closed form, written anew (coalsBurnNotes). */
const chartMean = (): number => {
  const left = (minute: number) => (1 - minute / STILL_BURNOUT_MINUTES) ** 1.5;
  return ((2 / 3) * STILL_BURNOUT_MINUTES * (left(15) - left(60))) / 45;
};

export const wantedMinutes = (oven: OvenCase): readonly number[] =>
  Array.from({ length: oven.endMinute }, (_, index) => index + 1);

/** Cut where the rates jump: load in, half burnt (the lid bares), ash. */
const spansOf = (oven: OvenCase) => {
  const minuteAt = (burnt: number) => (burnt - oven.burntWhenLaid) * oven.burnoutMinutes;
  const cuts = [0, oven.loadInMinute, minuteAt(0.5), minuteAt(1), oven.endMinute]
    .filter((minute) => minute <= oven.endMinute)
    .sort((one, other) => one - other);
  return cuts.slice(1).map((to, index) => ({
    from: (cuts[index] ?? 0) * 60,
    to: to * 60,
    burnt: oven.burntWhenLaid + (cuts[index] ?? 0) / oven.burnoutMinutes,
    isLoaded: (cuts[index] ?? 0) >= oven.loadInMinute,
    above: oven.above,
    below: oven.below,
  }));
};
