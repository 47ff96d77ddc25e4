// One request as the physics sees it: this oven, this air, this fuel.
// Sources: fuel.ts, burn.ts, geometry.ts, conditions.ts.

import { burnoutMinutes } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import { floorFactor } from './conditions.ts';
import { fuelPiece, thinAirStrength } from './fuel.ts';
import { ovenBody } from './geometry.ts';
import type { RunSetting } from './run.ts';
import { isOpenMethod } from './split.ts';

export const siteFor = (request: CoalRequest): RunSetting => {
  const piece = fuelPiece(request.fuel);
  const place = {
    windMetresPerSecond: request.air.wind,
    pressurePascals: request.air.pressure,
  };
  const strength = piece.strength * thinAirStrength(request.air.pressure);
  const body = ovenBody(request.oven, request.conditions?.measures);
  const { rain, sun } = request.conditions ?? {};
  return {
    body,
    outside: {
      airKelvin: request.air.temperature,
      ...place,
      ...(rain === undefined ? {} : { rainMillimetresPerHour: rain }),
      ...(sun === undefined ? {} : { sunRatio: sun }),
    },
    load: request.load,
    burnoutMinutes: burnoutMinutes(piece, place),
    strengthAbove: strength,
    strengthBelow: strength * floorFactor(request, body),
    ...(isOpenMethod(request.wish.method) ? { isOpen: true } : {}),
  };
};
