import { describe, expect, it } from 'vitest';
import { ingredientMade } from '../../validation/menu/made.ts';
import { grams, metres } from '../quantity/unit.ts';
import { gasOfSoda, gasOfSodaHeated } from './gas.ts';
import { cutForHeight, leaveningCutAt } from './height.ts';

const HIGH = metres(1524);
const soda = {
  ingredient: { ...ingredientMade('soda', 10), part: 'soda' as const },
  grams: grams(10),
};
const cutTo = (acidRoom: number) => cutForHeight(soda, HIGH, undefined, acidRoom).line.grams;

/** Soda with acid gives all its gas, the rest half of it (sodaChemistry, stoichiometry). */
const gasOf = (mass: number, room: number) =>
  gasOfSoda(grams(Math.min(mass, room))) + gasOfSodaHeated(grams(Math.max(0, mass - room)));

describe('soda at a height', () => {
  it('is cut by the share of the air where acid takes all of it (ussa1976: 16.8 % at 5,000 ft)', () => {
    expect(cutTo(20)).toBeCloseTo(8.32, 2);
    expect(cutTo(10)).toBeCloseTo(8.32, 2);
  });

  it('is cut where the acid limits the gas until the gas is less by that share, the soapy rest first', () => {
    // By hand: 4 with acid + 6 / 2 = 7; 7 × 0.832 = 5.82; 4 + 2 × 1.82 = 7.65 g.
    expect(cutTo(4)).toBeCloseTo(7.65, 2);
    for (const room of [0, 2, 4, 9, 12]) {
      const share = gasOf(cutTo(room), room) / gasOf(10, room);
      expect(share).toBeCloseTo(1 - leaveningCutAt(HIGH), 9);
    }
  });
});
