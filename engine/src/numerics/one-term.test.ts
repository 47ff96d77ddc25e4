import { describe, expect, it } from 'vitest';
import table from '../../validation/numerics/one-term.json' with { type: 'json' };
import { integrateStiff, type Rates } from './stiff.ts';

const CELLS = 30;
const SHAPES = [
  ['wall', 0],
  ['cylinder', 1],
  ['sphere', 2],
] as const;

/** Unit body, cells of equal width; flux through a shell goes with radius to the power of `shape`. */
const conduction = (shape: number, biot: number): Rates => {
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
const middleOf = (state: Float64Array): number => state[0]! + (state[0]! - state[1]!) / 8;

describe('the stiff stepper on heat conduction (bergman2011 table 5.1, one-term solution)', () => {
  it.each(SHAPES)(
    'within 0.001 of the start, middle of a %s at Fo 0.5 as its one term says',
    (name, shape) => {
      const column = 1 + 2 * shape;
      const misses = table.rows.map((row) => {
        const [biot, root, factor] = [row[0]!, row[column]!, row[column + 1]!];
        const run = integrateStiff({
          rates: conduction(shape, biot),
          start: new Float64Array(CELLS).fill(1),
          from: 0,
          to: 0.5,
          relativeTolerance: 1e-6,
          absoluteTolerance: 1e-7,
          mostSteps: 2000,
        });
        expect(run.status).toBe('done');
        return Math.abs(middleOf(run.states[0]!) - factor * Math.exp(-(root ** 2) * 0.5));
      });
      expect(misses.length, name).toBe(16);
      expect(Math.max(...misses)).toBeLessThan(1e-3);
    },
  );

  it('is lumped at Bi 0.01: one exponential with the time constant of volume over area, within 0.5 %', () => {
    for (const [, shape] of SHAPES) {
      const run = integrateStiff({
        rates: conduction(shape, 0.01),
        start: new Float64Array(CELLS).fill(1),
        from: 0,
        to: 30,
        relativeTolerance: 1e-6,
        absoluteTolerance: 1e-7,
        mostSteps: 2000,
      });
      const lumped = Math.exp(-30 * 0.01 * (shape + 1)); // area / volume of a unit body is shape + 1
      expect(Math.abs(middleOf(run.states[0]!) - lumped)).toBeLessThan(0.005);
    }
  });
});
