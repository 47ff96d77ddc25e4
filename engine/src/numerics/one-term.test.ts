import { describe, expect, it } from 'vitest';
import { CELLS, conduction, middleOf } from '../../validation/numerics/conduction.ts';
import table from '../../validation/numerics/one-term.json' with { type: 'json' };
import { integrateStiff } from './stiff.ts';

const SHAPES = [
  ['wall', 0],
  ['cylinder', 1],
  ['sphere', 2],
] as const;

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
