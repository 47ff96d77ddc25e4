// How deep, how large and how heavy is an oven of this size and style, where the owner has not
// measured it?

import { readQuantity } from './quantity-text.ts';

export interface NominalOven {
  readonly depthMetres: number;
  readonly capacityCubicMetres: number;
  readonly massGrams: number;
}

// [inches across, style, quarts, inches deep, pounds]: a published college sizing chart
// (source key uvu, grade B).
const ROWS: readonly (readonly [number, 'regular' | 'deep', number, number, number])[] = [
  [8, 'regular', 2, 3, 11],
  [10, 'regular', 4, 3.5, 15],
  [12, 'regular', 6, 3.75, 20],
  [12, 'deep', 8, 5, 23],
  [14, 'regular', 8, 3.75, 26],
  [14, 'deep', 10, 4.5, 28],
  [16, 'regular', 12, 3.75, 32],
];

/** The row of the same style that is nearest in size, its capacity and weight scaled by area. */
export function nominalOven(diameterMetres: number, style: 'regular' | 'deep'): NominalOven {
  const inches = diameterMetres / 0.0254;
  const rows = ROWS.filter((row) => row[1] === style);
  const [across, , quarts, deep, pounds] = rows.reduce((best, row) =>
    Math.abs(row[0] - inches) < Math.abs(best[0] - inches) ? row : best,
  );
  const area = (inches / across) ** 2;
  return {
    depthMetres: readQuantity('length', `${deep} in`)!,
    capacityCubicMetres: readQuantity('volume', `${quarts} qt`)! * area,
    massGrams: readQuantity('mass', `${pounds} lb`)! * area,
  };
}
