// What else a cook may know about the spot and the oven: rain, sun, wet ground, a riser, scales.
// Sources: riser.ts, rain.ts, sun.ts, groundSaps. Weak spot: only the signs are published, never a size.

import type { CampOven, Place, WeatherHour } from '../camp/camp.ts';
import { type Refusal, refusal } from '../notice/notice.ts';
import type { Grams, Metres } from '../quantity/unit.ts';
import type { OvenBody } from './geometry.ts';
import { MOST_RISER_METRES, riserFactor } from './riser.ts';

/** Of the owner's own oven, weighed or measured; each wins over what its size suggests. */
export interface OwnMeasures {
  readonly lidMass?: Grams;
  readonly lidDiameter?: Metres;
}

export interface SiteConditions {
  /** [mm/h] */
  readonly rain?: number;
  /** Share of a high, clear sun on the lid, 0 … 1. */
  readonly sun?: number;
  readonly groundIsWet?: boolean;
  readonly groundIsFrozen?: boolean;
  /** Extra height of the oven above the coals below. */
  readonly riser?: Metres;
  readonly measures?: OwnMeasures;
}

interface Said {
  readonly place: Pick<Place, 'groundIs'>;
  readonly weather: Pick<WeatherHour, 'rain' | 'sun'>;
  readonly oven: Pick<CampOven, 'riser' | 'lidMass' | 'lidDiameter'>;
}

/** The same out of what a camp says of its place, its weather at that hour and this oven. */
export const conditionsOf = ({ place, weather, oven }: Said): SiteConditions => {
  const { rain, sun } = weather;
  const { riser, lidMass, lidDiameter } = oven;
  const measures: OwnMeasures = {
    ...(lidMass === undefined ? {} : { lidMass }),
    ...(lidDiameter === undefined ? {} : { lidDiameter }),
  };
  return {
    ...(rain === undefined ? {} : { rain }),
    ...(sun === undefined ? {} : { sun }),
    ...(place.groundIs === 'wet' ? { groundIsWet: true } : {}),
    ...(place.groundIs === 'frozen' ? { groundIsFrozen: true } : {}),
    ...(riser === undefined ? {} : { riser }),
    ...(Object.keys(measures).length > 0 ? { measures } : {}),
  };
};

const MOST_RAIN = 50; // mm/h, a cloudburst (wmo8 calls more than 50 violent, from memory)
const LID_MASS_SHARE = { lowest: 0.2, highest: 0.6 } as const; // inferred 0.43 … 0.46, ovenSizing
const LID_OVERHANG_METRES = { lowest: 0, highest: 0.06 } as const;

interface Conditioned {
  readonly oven: { readonly id: string; readonly mass: Grams; readonly diameter: Metres };
  readonly conditions?: SiteConditions;
}

/** Which of these can not be, or undefined. */
export const conditionTrouble = ({ oven, conditions }: Conditioned): Refusal | undefined => {
  const { rain = 0, sun = 0, riser = 0, measures = {} } = conditions ?? {};
  const share = (measures.lidMass ?? LID_MASS_SHARE.lowest * oven.mass) / oven.mass;
  const overhang = (measures.lidDiameter ?? oven.diameter) - oven.diameter;
  const fits =
    isWithin(rain, { lowest: 0, highest: MOST_RAIN }) &&
    isWithin(sun, { lowest: 0, highest: 1 }) &&
    isWithin(riser, { lowest: 0, highest: MOST_RISER_METRES }) &&
    isWithin(share, LID_MASS_SHARE) &&
    isWithin(overhang, LID_OVERHANG_METRES);
  if (fits) return;
  const known = {
    rainMillimetresPerHour: rain,
    sunRatio: sun,
    riserMetres: riser,
    overhangMetres: overhang,
  };
  const values = Object.fromEntries(
    Object.entries({ ...known, lidShare: share }).filter(([, value]) => Number.isFinite(value)),
  );
  return refusal('COALS_CONDITIONS_IMPOSSIBLE', [`ovens.${oven.id}`], { oven: oven.id }, values);
};

const ROUNDING = 1e-9;
const isWithin = (value: number, range: { readonly lowest: number; readonly highest: number }) =>
  range.lowest - ROUNDING <= value && value <= range.highest + ROUNDING;

/**
 * What is left of the heat of coals that lie on this. Sources say only that soil saps heat and that
 * a fire pan cures it, cold and wet soil more; the sizes are ours.
 *
 * @source  groundSaps (sign only, grade D)
 */
export const groundFactor = (
  place: Pick<Place, 'ground' | 'hearth'>,
  { groundIsWet = false, groundIsFrozen = false }: SiteConditions = {},
): number => {
  if (place.hearth !== 'ground') return 1;
  if (place.ground === 'snow') return 0.85;
  const dry = place.ground === 'gravel' || place.ground === 'sand' ? 0.97 : 0.95;
  return dry * (groundIsWet ? 0.95 : 1) * (groundIsFrozen ? 0.97 : 1);
};

/** Ground and riser together: what the floor gets beside an oven on its legs over a fire pan. */
export const floorFactor = (
  site: { readonly place: Pick<Place, 'ground' | 'hearth'>; readonly conditions?: SiteConditions },
  body: Pick<OvenBody, 'floorDiameter'>,
): number =>
  groundFactor(site.place, site.conditions) * riserFactor(body, site.conditions?.riser ?? 0);
