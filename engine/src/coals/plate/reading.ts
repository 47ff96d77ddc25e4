// Reading a plate: its temperature at a point, on a circle, on the mean. Kelvins above the air.
// Sources: none needed but plateTurning, which plate.test.ts reads the same way.

import type { Harmonics } from './patch.ts';
import { type Rings, ringArea } from './rings.ts';

/** A place on the plate. */
export interface Spot {
  readonly radiusMetres: number;
  readonly angleRadians: number;
}

export const kelvinAt = (kelvins: Harmonics, rings: Rings, spot: Spot): number =>
  summed(circleAt(kelvins, rings, spot.radiusMetres), spot.angleRadians);

/** All harmonics at one radius. */
interface Circle {
  readonly along: readonly number[];
  readonly across: readonly number[];
}

const circleAt = (kelvins: Harmonics, rings: Rings, radiusMetres: number): Circle => {
  const values = (parts: readonly Float64Array[]) =>
    parts.map((values, harmonic) => valueAt(values, rings, { radiusMetres, harmonic }));
  return { along: values(kelvins.along), across: values(kelvins.across) };
};

const summed = ({ along, across }: Circle, angle: number): number =>
  along.reduce(
    (sum, cosine, harmonic) =>
      sum + cosine * Math.cos(harmonic * angle) + across[harmonic]! * Math.sin(harmonic * angle),
    0,
  );

// Straight between two rings; level at the rim and, for the round part, in the middle.
const valueAt = (
  values: Float64Array,
  { count, width }: Rings,
  at: { readonly radiusMetres: number; readonly harmonic: number },
): number => {
  const place = at.radiusMetres / width - 0.5;
  const low = Math.floor(place);
  const share = place - low;
  if (low < 0)
    return at.harmonic === 0
      ? (9 * values[0]! - values[1]!) / 8
      : values[0]! * 2 * share - values[0]!;
  if (low >= count - 1) return (9 * values[count - 1]! - values[count - 2]!) / 8;
  return values[low]! + share * (values[low + 1]! - values[low]!);
};

/** Temperatures at equal angles round a circle. */
export const circleKelvins = (
  kelvins: Harmonics,
  rings: Rings,
  { radiusMetres, places }: { readonly radiusMetres: number; readonly places: number },
): readonly number[] => {
  const circle = circleAt(kelvins, rings, radiusMetres);
  return Array.from({ length: places }, (_, index) =>
    summed(circle, (2 * Math.PI * index) / places),
  );
};

export const spreadOf = (values: readonly number[]): number =>
  Math.max(...values) - Math.min(...values);

export const meanKelvin = ({ along }: Harmonics, rings: Rings): number => {
  let sum = 0;
  let area = 0;
  for (const [ring, value] of along[0]!.entries()) {
    sum += value * ringArea(rings, ring);
    area += ringArea(rings, ring);
  }
  return sum / area;
};
