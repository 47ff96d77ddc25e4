// What the outer skin loses per kelvin, looked up instead of reckoned: it is asked for at every step
// of every run, and for one oven in one air it depends on the iron's temperature alone.
// Source: correlations.ts. Weak spot: where a plate's flow turns turbulent the handbooks' two laws
// do not meet (a jump of 6 %); the table bridges it within a few kelvin.

import { plateCoefficient, wallCoefficient } from './correlations.ts';
import type { OvenBody } from './geometry.ts';
import type { Outside, Skin } from './network.ts';

/** Coefficients at these temperatures of lid and wall. */
export type SkinLookup = (lidKelvin: number, wallKelvin: number) => Skin;

/** The lookup of one oven in one air; kept as long as that air is. */
export const skinLookup = (body: OvenBody, outside: Outside): SkinLookup => {
  const known = lookups.get(outside);
  if (known?.body === body) return known.lookup;
  const lookup = newLookup(body, outside);
  lookups.set(outside, { body, lookup });
  return lookup;
};

/** A memory of pure answers: it saves time and changes none of them. */
const lookups = new WeakMap<Outside, { readonly body: OvenBody; readonly lookup: SkinLookup }>();

const newLookup = (body: OvenBody, outside: Outside): SkinLookup => {
  const lid = tabulated(outside.airKelvin, (surfaceKelvin) =>
    plateCoefficient({ ...outside, surfaceKelvin }, body.lidDiameter),
  );
  const size = { diameterMetres: body.wallDiameter, heightMetres: body.wallHeight };
  const wall = tabulated(outside.airKelvin, (surfaceKelvin) =>
    wallCoefficient({ ...outside, surfaceKelvin }, size),
  );
  return (lidKelvin, wallKelvin) => ({ lid: lid(lidKelvin), wall: wall(wallKelvin) });
};

const MOST_ABOVE_AIR = 700; // K; hotter or colder iron than the air's is reckoned, not looked up
const INTERVALS = 48;
const HIGHEST_ROOT = Math.sqrt(Math.sqrt(MOST_ABOVE_AIR));
const PER_ROOT = INTERVALS / HIGHEST_ROOT;

/**
 * Cubic through four neighbours, against the fourth root of the excess temperature: natural
 * convection goes with it, so the curve is smooth where a plain grid would meet an endless slope.
 */
const tabulated = (airKelvin: number, exact: (kelvin: number) => number) => {
  const values = Float64Array.from({ length: INTERVALS + 2 }, (_, index) =>
    exact(airKelvin + (index / PER_ROOT) ** 4),
  );
  return (kelvin: number): number => {
    const above = kelvin - airKelvin;
    if (!(above >= 0 && above < MOST_ABOVE_AIR)) return exact(kelvin);
    const place = Math.sqrt(Math.sqrt(above)) * PER_ROOT;
    const left = Math.min(INTERVALS - 1, Math.max(1, Math.floor(place)));
    return cubicAt(values, left - 1, place - left);
  };
};

/** Lagrange through four even nodes; `share` counts from the second, abramowitz1964 25.2.13. */
const cubicAt = (values: Float64Array, first: number, share: number): number => {
  const [a, b, c, d] = [values[first]!, values[first + 1]!, values[first + 2]!, values[first + 3]!];
  const back = share + 1;
  const on = share - 1;
  const far = share - 2;
  return (
    (back * on * far * b) / 2 -
    (share * on * far * a) / 6 -
    (back * share * far * c) / 2 +
    (back * share * on * d) / 6
  );
};
