// One request as the physics sees it: this oven, this air, this fuel.
// Sources: fuel.ts, burn.ts, geometry.ts; ground: groundSaps (a sign without a size).

import type { Place } from '../camp/camp.ts';
import { burnoutMinutes } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import { fuelPiece, thinAirStrength } from './fuel.ts';
import { ovenBody } from './geometry.ts';
import type { RunSetting } from './run.ts';

export const siteFor = (request: CoalRequest): RunSetting => {
  const piece = fuelPiece(request.fuel);
  const place = {
    windMetresPerSecond: request.air.wind,
    pressurePascals: request.air.pressure,
  };
  const strength = piece.strength * thinAirStrength(request.air.pressure);
  const burnout = burnoutMinutes(piece, place);
  return {
    body: ovenBody(request.oven),
    outside: { airKelvin: request.air.temperature, ...place },
    load: request.load,
    burnoutMinutes: burnout,
    strengthAbove: strength,
    strengthBelow: strength * groundFactor(request.place),
  };
};

/**
 * What is left of the heat of coals that lie on this. Sources say only that soil saps heat and that
 * a fire pan cures it; the sizes are ours.
 *
 * @source  groundSaps (sign only, grade D)
 */
export const groundFactor = (place: Pick<Place, 'ground' | 'hearth'>): number => {
  if (place.hearth !== 'ground') return 1;
  if (place.ground === 'snow') return 0.85;
  return place.ground === 'gravel' || place.ground === 'sand' ? 0.97 : 0.95;
};
