import { describe, expect, it } from 'vitest';
import { madeDough } from '../../validation/bake/made.ts';
import { doughBodyOf, isWithinEvidence, sidesHelp } from './dough-body.ts';

describe('a dough', () => {
  it('knows its evidence: 6 mm raw to 110 mm risen', () => {
    expect(isWithinEvidence({ rawMillimetres: 25, risenMillimetres: 60 })).toBe(true);
    expect(isWithinEvidence({ rawMillimetres: 5, risenMillimetres: 10 })).toBe(false);
    expect(isWithinEvidence({ rawMillimetres: 60, risenMillimetres: 120 })).toBe(false);
  });

  it('is taken back to its depth without gas when it is proofed', () => {
    const body = doughBodyOf(madeDough({ millimetres: 75, rise: 1.2, density: 400 }));
    expect(body.rawMillimetres).toBeCloseTo((75 * 400) / 1100, 9);
    expect(body.risenMillimetres).toBeCloseTo(90, 9);
  });

  it('is helped by its sides less than the ideal cylinder, 2.34 (h/d)^2 (heated-cylinder)', () => {
    expect(sidesHelp(0)).toBe(1);
    expect(sidesHelp(0.5) - 1).toBeLessThan(2.34 * 0.25);
    expect(sidesHelp(0.5) - 1).toBeGreaterThan(0);
  });
});
