// What may be otherwise than we think, under four names? Each a factor near 1 on one part of the
// model; together they are as wide as published charts are from the model and from each other.
// Sources: charts.ts (the width in still air), coalLife, coalsOvenModelNotes 5.4, fao56 (wind).
// Weak spot: charts can not tell strong coals from a tight oven; how they share the width is ours.

import { burnoutMinutes } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import type { OvenBody } from './geometry.ts';
import type { RunSetting } from './run.ts';

export type FactorName = 'coalStrength' | 'coalLife' | 'windExposure' | 'ovenLoss';

/** What is believed of one factor: log-normal, so that half and twice are equally far. */
export interface FactorBelief {
  /** ln of the likeliest factor; 0 = as the model has it. */
  readonly log: number;
  /** Standard deviation of that ln. */
  readonly spread: number;
}

export type FactorBeliefs = Readonly<Record<FactorName, FactorBelief>>;

/** In the order in which they are run and shown. */
export const factorNames: readonly FactorName[] = [
  'coalStrength',
  'ovenLoss',
  'coalLife',
  'windExposure',
];

/**
 * Standard deviation of ln(coals in all) of a chart's cells about the model, every chart and rule
 * that counts coals for a heat weighing alike however long it is.
 *
 * @tuned  computed from coals-charts.json; factors.test.ts computes it again
 */
export const CHART_DOUBT = 0.0915;
/** Losses by emissivity, rim, legs and handle as far as the parameters are plausible; ours. */
const LOSS_SPREAD = 0.05;
/** d ln(coals) / d ln(losses) in still air: 604 W of 714 W delivered (coalsOvenModelNotes 5.1). */
const LOSS_WEIGHT = 0.85;
const STRENGTH_SPREAD = Math.sqrt(CHART_DOUBT ** 2 - (LOSS_WEIGHT * LOSS_SPREAD) ** 2);
/** 45 … 60 minutes is what pages say of a coal's life (coalLife), read as an 80 % range. */
const LIFE_SPREAD = Math.log(60 / 45) / (2 * 1.2816);
/** Ground from mown grass to bushes, roughness 0.01 … 0.1 m: 0.39 … 0.24 of the forecast; ours. */
const WIND_SPREAD = 0.4;

/** The prior, before any log of the cook's own; the logbook replaces it by what it has learnt. */
export const factors: FactorBeliefs = {
  coalStrength: { log: 0, spread: STRENGTH_SPREAD },
  coalLife: { log: 0, spread: LIFE_SPREAD },
  windExposure: { log: 0, spread: WIND_SPREAD },
  ovenLoss: { log: 0, spread: LOSS_SPREAD },
};

/** Wood coals: nobody measured them; twice the doubt is our word for that. */
const WOOD_DOUBT = 2;
/** High camps: the two published signs of thin air's effect differ by about this much more. */
const HEIGHT_DOUBT = 0.5;
const SEA_LEVEL_PASCALS = 101_325; // iso2533

/** Beliefs for one fire: what is known less well of wood coals and thin air widens them. */
export const beliefsFor = (
  request: Pick<CoalRequest, 'fuel' | 'air' | 'beliefs'>,
): FactorBeliefs => {
  const given = request.beliefs ?? factors;
  const doubt = request.fuel.kind === 'wood-coals' ? WOOD_DOUBT : 1;
  const thin = Math.abs(Math.log(request.air.pressure / SEA_LEVEL_PASCALS)) * HEIGHT_DOUBT;
  const { coalStrength, coalLife } = given;
  return {
    ...given,
    coalStrength: { ...coalStrength, spread: Math.hypot(coalStrength.spread * doubt, thin) },
    coalLife: { ...coalLife, spread: coalLife.spread * doubt },
  };
};

/** ln of factors; what is left out is 0. */
export type FactorLogs = Partial<Readonly<Record<FactorName, number>>>;

/** The same oven and fire with its factors changed. */
export const settingWith = (setting: RunSetting, logs: FactorLogs): RunSetting => {
  const strength = Math.exp(logs.coalStrength ?? 0);
  const still = setting.outside.windMetresPerSecond;
  const wind = still * Math.exp(logs.windExposure ?? 0);
  const feeding = windLife(wind) / windLife(still);
  const burnout = setting.burnoutMinutes * Math.exp(logs.coalLife ?? 0) * feeding;
  return {
    ...setting,
    body: bodyWith(setting.body, Math.exp(logs.ovenLoss ?? 0)),
    outside: { ...setting.outside, windMetresPerSecond: wind },
    burnoutMinutes: burnout,
    strengthAbove: setting.strengthAbove * strength,
    strengthBelow: setting.strengthBelow * strength,
  };
};

/** How much of its still-air life a coal has in this wind. */
const windLife = (windMetresPerSecond: number): number =>
  burnoutMinutes({ life: 1 }, { windMetresPerSecond, pressurePascals: SEA_LEVEL_PASCALS });

const FREE_LID_SHARE = 0.6; // about what 17 coals leave bare of a 12 inch lid

// Losses go with outer area; the inner faces keep theirs, so the change is put on rim and legs.
const bodyWith = (body: OvenBody, factor: number): OvenBody => {
  if (factor === 1) return body;
  const more = factor - 1;
  const lid = body.rimArea + FREE_LID_SHARE * body.lidArea;
  return {
    ...body,
    rimArea: Math.max(0, body.rimArea + more * lid),
    extraArea: Math.max(0, body.extraArea + more * (body.wallArea + body.extraArea)),
  };
};

/** The fire as it is believed to be: the likeliest factor of each name. */
export const believed = (setting: RunSetting, beliefs: FactorBeliefs): RunSetting => {
  const logs: FactorLogs = {
    coalStrength: beliefs.coalStrength.log,
    coalLife: beliefs.coalLife.log,
    windExposure: beliefs.windExposure.log,
    ovenLoss: beliefs.ovenLoss.log,
  };
  return Object.values(logs).every((log) => log === 0) ? setting : settingWith(setting, logs);
};

export interface FactorSetting {
  readonly factor: FactorName;
  /** Which way it was moved by one standard deviation: the way that cools the oven. */
  readonly sigmas: 1 | -1;
  readonly setting: RunSetting;
}

const COOLING: Readonly<Record<FactorName, 1 | -1>> = {
  coalStrength: -1,
  ovenLoss: 1,
  coalLife: -1,
  windExposure: 1,
};

/**
 * One run for each factor that can matter, moved by one standard deviation: with the run as believed
 * they give the band to first order. At most four runs.
 */
export const factorSettings = (
  setting: RunSetting,
  beliefs: FactorBeliefs,
): readonly FactorSetting[] =>
  factorNames
    .filter((factor) => beliefs[factor].spread > 0)
    .filter(
      (factor) => factor !== 'windExposure' || setting.outside.windMetresPerSecond >= CALM_METRES,
    )
    .map((factor) => {
      const sigmas = COOLING[factor];
      const logs = { [factor]: sigmas * beliefs[factor].spread };
      return { factor, sigmas, setting: settingWith(setting, logs) };
    });

const CALM_METRES = 0.05; // m/s; less than a coal's own draught by far
