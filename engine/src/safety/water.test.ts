import { describe, expect, it } from 'vitest';
import bleach from '../../validation/safety/bleach.json' with { type: 'json' };
import { isRefusal } from '../notice/notice.ts';
import { cubicMetres, metres } from '../quantity/unit.ts';
import { bleachDose, bleachStrength, boilMinutes } from './water.ts';

const GALLON = 3.785411784e-3; // exact
const FLUID_OUNCE = 29.5735295625e-6; // exact

describe('bleach', () => {
  const rows = bleach.rows as unknown as readonly [
    string,
    number,
    number,
    number,
    number,
    number,
  ][];

  it('makes the strengths that kdhe-bleach, bleach-bucket and cdc-norovirus print', () => {
    expect(rows).toHaveLength(5);
    for (const [source, gallons, percent, ounces, strength, tolerance] of rows) {
      const found = bleachStrength({
        water: cubicMetres(gallons * GALLON),
        bleach: cubicMetres(ounces * FLUID_OUNCE),
        percent,
      });
      expect(Math.abs(found - strength), source).toBeLessThanOrEqual(tolerance);
    }
  });

  it('for 1000 gal at 50 mg/L is 122 fl oz of 5.25 % (kdhe-bleach)', () => {
    const dose = bleachDose({
      water: cubicMetres(1000 * GALLON),
      partsPerMillion: 50,
      percent: 5.25,
    });
    expect(isRefusal(dose) ? Number.NaN : dose / FLUID_OUNCE).toBeCloseTo(122, 0);
  });

  it('is refused without a label that can be right', () => {
    for (const percent of [0, Number.NaN, 60]) {
      const dose = bleachDose({ water: cubicMetres(0.01), partsPerMillion: 50, percent });
      expect(isRefusal(dose)).toBe(true);
    }
  });
});

describe('boiling water to drink it', () => {
  it('takes 1 min, and 3 above 5,000 ft (epa-p100sp1s, stricter than cdc-water)', () => {
    expect(boilMinutes(metres(0))).toBe(1);
    expect(boilMinutes(metres(1524))).toBe(1);
    expect(boilMinutes(metres(1530))).toBe(3);
  });
});
