import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeDish } from '../../validation/bake/made.ts';
import { recipeMade } from '../../validation/menu/made.ts';
import { fromCelsius, grams, type Metres, metres, pascals } from '../quantity/unit.ts';
import { leaveningCutAt } from './height.ts';
import { gasReport, sodaTakenByGram } from './leaven/gas-report.ts';
import { formulaFor } from './scale.ts';

type Amounts = Readonly<Record<string, number>>;
const SEA = metres(0);

/** The batch at a height, and its gas and what is left over in one and the same air. */
function at(amounts: Amounts, elevation: Metres, writtenAt?: Metres) {
  const made = recipeMade('made powder', amounts, { kind: 'biscuit' });
  const recipe = writtenAt === undefined ? made : { ...made, writtenAt };
  const dish = madeDish({ id: 'dish', recipe: recipe.id });
  const { lines, changes } = formulaFor({
    dish,
    recipe,
    factor: 1,
    elevation,
    air: fromCelsius(20),
  });
  const report = gasReport(lines, { dough: fromCelsius(20), pressure: pascals(101_325) })!;
  const mass = (name: string) =>
    lines.find(({ ingredient }) => ingredient.name === name)?.grams ?? 0;
  return { report, changes, mass };
}

/** Powder by the table: 100 g of cream of tartar take 44.6 g of soda (neutralisingValues). */
const made = (soda: number, more: Amounts = {}): Amounts => ({
  flour: 500,
  water: 300,
  'baking soda': soda,
  'cream of tartar': soda / 0.446,
  ...more,
});
const butter = { buttermilk: 300 };

describe('powder made of soda and cream of tartar, at a height', () => {
  it('is cut in both, no acid and no soda left (neutralisingValues 44.6; ussa1976 16.8 % at 5,000 ft)', () => {
    const { report, mass, changes } = at(made(6), metres(1524));
    expect(mass('baking soda')).toBeCloseTo(6 * 0.832, 2);
    expect(mass('cream of tartar')).toBeCloseTo((6 * 0.832) / 0.446, 2);
    expect(report.acidLeft).toBeCloseTo(0, 9);
    expect(report.sodaLeft).toBeCloseTo(0, 9);
    expect(changes.map(({ ingredient }) => ingredient)).toEqual(['baking soda', 'cream of tartar']);
  });

  it('leaves nothing over at any height, and its gas is less by the share of the air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 4000, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (height, soda) => {
          const high = at(made(soda), metres(height)).report;
          expect(high.acidLeft).toBeCloseTo(0, 6);
          expect(high.sodaLeft).toBeCloseTo(0, 6);
          const share = high.least / at(made(soda), SEA).report.least;
          expect(share).toBeCloseTo(1 - leaveningCutAt(metres(height)), 9);
        },
      ),
      { seed: 4 },
    );
  });

  it('brought down from a height is raised in both, nothing left', () => {
    const { report, mass } = at(made(5), SEA, metres(2500));
    expect(mass('baking soda')).toBeGreaterThan(5);
    expect(report.acidLeft).toBeCloseTo(0, 9);
    expect(report.sodaLeft).toBeCloseTo(0, 9);
  });

  it('beside buttermilk gives way alone: the milk stays and nothing is left', () => {
    const room = 300 * sodaTakenByGram(recipeMade('', butter, {}).ingredients[0]!);
    const amounts = { ...made(4, butter), 'baking soda': 4 + room };
    const { report, mass } = at(amounts, metres(1524));
    expect(mass('buttermilk')).toBe(300);
    expect(mass('cream of tartar')).toBeLessThan(4 / 0.446);
    expect(report.acidLeft).toBeCloseTo(0, 9);
    expect(report.sodaLeft).toBeCloseTo(0, 9);
  });

  it('keeps what was meant to be sour or was soapy before, and leaves tartar without soda alone', () => {
    const sour = { ...made(4), 'cream of tartar': grams(15) };
    expect(at(sour, metres(1524)).report.acidLeft).toBeCloseTo(at(sour, SEA).report.acidLeft, 9);
    const alone = { flour: 500, 'baking powder': 20, 'cream of tartar': 5 };
    expect(at(alone, metres(1524)).mass('cream of tartar')).toBe(5);
    const soapy = { ...made(4), 'baking soda': 10 };
    const { report, mass } = at(soapy, metres(1524));
    expect(report.acidLeft).toBeCloseTo(0, 9);
    expect(mass('cream of tartar')).toBeCloseTo(4 / 0.446, 9);
  });
});
