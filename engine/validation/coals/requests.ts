// Requests for tests: one oven, one load, mild air; each case changes what it is about.

import { STILL_BURNOUT_MINUTES } from '../../src/coals/burn.ts';
import { usualOven } from '../../src/coals/charts.ts';
import type { CoalRequest } from '../../src/coals/coal-plan.ts';
import { thinAirStrength } from '../../src/coals/fuel.ts';
import { parameter } from '../../src/coals/parameters.ts';
import type { RunSetting } from '../../src/coals/run.ts';
import { simpleLoad } from '../../src/coals/simple-load.ts';
import type { HeatMethod } from '../../src/menu/recipe.ts';
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
} from '../../src/quantity/unit.ts';

const INCH = 0.0254; // m, exact

export interface Change {
  readonly inches?: number;
  readonly heatFahrenheit?: number;
  readonly stay?: number;
  readonly method?: HeatMethod;
  readonly preheat?: boolean;
  readonly airKelvin?: number;
  readonly wind?: number;
  readonly pressure?: number;
  readonly ironKelvin?: number;
  readonly loadGrams?: number;
  readonly wood?: boolean;
  readonly pieceGrams?: number;
  readonly hearth?: 'ground' | 'fire-pan' | 'fire-table';
  readonly pins?: CoalRequest['pins'];
  readonly screened?: boolean;
}

const MILD_KELVIN = 294.26;

/**
 * What fits the trial model's own chart on our network [W per coal above]. Its results, and SciPy's,
 * were reckoned with it; they check the equations, whatever power the charts are fitted with since.
 */
const TRIAL_COAL_WATTS = 27.75;

/** Strength of a coal of the trial model as a share of ours. */
export const trialStrength = TRIAL_COAL_WATTS / parameter('lidCoalWatts');

const TRIAL_OWN_DRAUGHT = 0.5; // m/s; the trial adds it to the wind under the root (coalsOvenModelNotes 5.4)

/** The same oven over coals of the trial model, which has its own word on wind and a coal's life. */
export const withTrialCoals = (setting: RunSetting): RunSetting => ({
  ...setting,
  burnoutMinutes:
    (STILL_BURNOUT_MINUTES *
      Math.sqrt(TRIAL_OWN_DRAUGHT / (TRIAL_OWN_DRAUGHT + setting.outside.windMetresPerSecond))) /
    thinAirStrength(setting.outside.pressurePascals),
  strengthAbove: setting.strengthAbove * trialStrength,
  strengthBelow: setting.strengthBelow * trialStrength,
});

/** A 12 inch oven, 350 F for 30 minutes, 900 g of dough, unless changed. */
export const coalRequest = (change: Change = {}): CoalRequest => {
  const inches = change.inches ?? 12;
  const airKelvin = change.airKelvin ?? MILD_KELVIN;
  const method = change.method ?? 'bake';
  return {
    loadId: 'bread-1',
    oven: {
      ...usualOven(Math.min(16, Math.max(8, inches)) * INCH),
      diameter: metres(inches * INCH),
      id: 'A',
      name: 'red cord',
      style: 'regular',
      capacity: cubicMetres(0.0057),
      keptFreeOf: [],
    },
    air: {
      temperature: kelvin(airKelvin),
      pressure: pascals(change.pressure ?? 101_325),
      wind: metresPerSecond(change.wind ?? 0),
      windFrom: degrees(270),
      boiling: kelvin(373.12),
    },
    place: {
      name: 'meadow',
      elevation: metres(0),
      ground: 'grass',
      hearth: change.hearth ?? 'fire-pan',
    },
    screened: change.screened ?? false,
    fuel: change.wood
      ? { kind: 'wood-coals', lead: minutes(45) }
      : { kind: 'briquettes', pieceMass: grams(change.pieceGrams ?? 24.5), isMeasured: true },
    wish: {
      method,
      wanted: fromFahrenheit(change.heatFahrenheit ?? 350),
      minutes: minutes(change.stay ?? 30),
      preheat: change.preheat ?? (method === 'bake' || method === 'roast'),
    },
    load: simpleLoad({
      massGrams: change.loadGrams ?? 900,
      heatCapacityJoulesPerGramKelvin: 2.8,
      startKelvin: 294,
      boilKelvin: 373.12,
      planAreaSquareMetres: 0.35 * (inches * INCH) ** 2,
    }),
    ironAtStart: kelvin(change.ironKelvin ?? airKelvin),
    pins: change.pins ?? {},
  };
};
