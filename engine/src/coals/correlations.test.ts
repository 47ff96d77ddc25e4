import { describe, expect, it } from 'vitest';
import nusselt from '../../validation/coals/nusselt.json' with { type: 'json' };
import { type Inputs, nusseltOf } from '../../validation/coals/nusselt-cases.ts';
import { airProperties, mixedCoefficient } from './correlations.ts';

describe('Nusselt numbers', () => {
  it.each(nusselt.rows)('%s gives the Nusselt number of bergman2011 within 0.01 %%', (...row) => {
    const [name, inputs, expected] = row as unknown as readonly [string, Inputs, number];
    expect(Math.abs(nusseltOf(name, inputs) / expected - 1)).toBeLessThan(1e-4);
  });

  it('keeps all seven rows of the case file', () => {
    expect(nusselt.rows.length).toBe(7);
  });

  it('adds natural and forced convection so that neither is lost', () => {
    expect(mixedCoefficient(8, 0)).toBe(8);
    expect(mixedCoefficient(8, 8)).toBeCloseTo(8 * Math.cbrt(2), 9);
  });
});

describe('air', () => {
  it('has the sea-level viscosity and conductivity of ussa1976 table III (from memory)', () => {
    const air = airProperties(288.15, 101_325);
    expect(air.conductivity).toBeCloseTo(0.025326, 5);
    expect(air.kinematicViscosity).toBeCloseTo(1.4607e-5, 8);
  });
});
