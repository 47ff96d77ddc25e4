// How one-sided is the heat that the food sees, and how much of it do turns take away?
// Sources: coalsOvenModelNotes 5.6 (plate), burnWind (windward coals burn harder).
// Weak spot: one harmonic on one plate; the shelter of the lee side is a guess.

import { kelvinDifference } from '../quantity/unit.ts';
import type { CoalRequest, Turn, Unevenness } from './coal-plan.ts';
import { parameter } from './parameters.ts';
import type { RunSetting } from './run.ts';
import { remainderOf } from './turning.ts';

/** First zero of J1': the mildest one-sided pattern of an insulated disc decays with it. */
const ONE_SIDED_ROOT = 1.8412; // abramowitz1964 table 9.5
/** Heat that a hot plate gives on both faces per kelvin [W/m2K]; convection and radiation there. */
const PLATE_COEFFICIENT = 35; // coalsOvenModelNotes 5.1: 8-9 + 10 outside, about as much inside
/** Lee side feels this share of the wind; no source. */
const LEE_SHELTER = 0.5;
const OWN_DRAUGHT = 0.5; // m/s, as in burn.ts
/** Coals differ in size, age and place: one-sided part of N coals is this times sqrt(2/N); ours. */
const COAL_SCATTER = 0.15;
const SEEN_AS_WINDY = 0.5; // m/s at the oven

export interface UnevenWish {
  readonly setting: RunSetting;
  readonly request: CoalRequest;
  readonly piecesAbove: number;
  readonly turns: readonly Turn[];
  readonly stay: { readonly loadInMinute: number; readonly outMinute: number };
}

export const unevennessFor = (wish: UnevenWish): Unevenness => {
  const { setting, piecesAbove } = wish;
  const wind = setting.outside.windMetresPerSecond;
  const oneSided = Math.hypot(windExcess(wind), scatter(piecesAbove));
  const flux =
    (piecesAbove * setting.strengthAbove * parameter('lidCoalWatts')) / setting.body.lidArea;
  const unturned =
    2 *
    plateSwing({
      fluxWattsPerSquareMetre: oneSided * flux,
      radiusMetres: setting.body.lidDiameter / 2,
      spreadWattsPerKelvin:
        parameter('ironConductivityWattsPerMetreKelvin') * setting.body.thickness,
      coefficient: PLATE_COEFFICIENT,
    });
  return {
    unturned: kelvinDifference(unturned),
    turned: kelvinDifference(unturned * remainderOf(wish.turns, wish.stay)),
    windward: wind > SEEN_AS_WINDY,
  };
};

/** Half the difference between windward and lee coals beside their mean. @source burnWind */
export const windExcess = (wind: number): number => {
  const ratio = (OWN_DRAUGHT + wind) / (OWN_DRAUGHT + LEE_SHELTER * wind);
  return (Math.sqrt(ratio) - 1) / (Math.sqrt(ratio) + 1);
};

const scatter = (pieces: number): number => (pieces > 0 ? COAL_SCATTER * Math.sqrt(2 / pieces) : 0);

interface OneSidedPlate {
  readonly fluxWattsPerSquareMetre: number;
  readonly radiusMetres: number;
  /** Conductivity times thickness [W/K]. */
  readonly spreadWattsPerKelvin: number;
  /** Both faces together [W/m2K]. */
  readonly coefficient: number;
}

/** Swing at the rim under q1 (r/R) cos(phi): q1 / (h + k t (root / R)²) [K]. */
export const plateSwing = (plate: OneSidedPlate): number => {
  const spreads = plate.spreadWattsPerKelvin * (ONE_SIDED_ROOT / plate.radiusMetres) ** 2;
  return plate.fluxWattsPerSquareMetre / (plate.coefficient + spreads);
};
