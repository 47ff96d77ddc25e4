// Conduction in a wall, a cylinder or a sphere as thirty cells, for the stiff stepper.
// Source: bergman2011 chapter 5 (dimensionless form).

import type { Rates } from '../../src/numerics/stiff.ts';

export const CELLS = 30;
/** Unit body, cells of equal width; flux through a shell goes with radius to the power of `shape`. */
export const conduction = (shape: number, biot: number): Rates => {
  const width = 1 / CELLS;
  const area = (radius: number) => radius ** shape;
  const volume = (cell: number) =>
    (((cell + 1) * width) ** (shape + 1) - (cell * width) ** (shape + 1)) / (shape + 1);
  // Half a cell of conduction in series with the film.
  const skin = 1 / (1 / biot + width / 2);
  return (_, state, into) => {
    into.fill(0);
    for (let cell = 0; cell < CELLS; cell += 1) {
      const outer = (cell + 1) * width;
      const next = state[cell + 1];
      const flow =
        next === undefined
          ? area(outer) * skin * state[cell]!
          : (area(outer) * (state[cell]! - next)) / width;
      into[cell] = into[cell]! - flow / volume(cell);
      if (next !== undefined) into[cell + 1] = into[cell + 1]! + flow / volume(cell + 1);
    }
  };
};

/** Parabola through the two innermost cells: flat at the middle. */
export const middleOf = (state: Float64Array): number => state[0]! + (state[0]! - state[1]!) / 8;
