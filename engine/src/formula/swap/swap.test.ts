import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import examples from '../../../validation/formula/swap-examples.json' with { type: 'json' };
import { readyRecipes } from '../../menu/ready-recipes.ts';
import { lineOf } from '../bench/line.ts';
import type { WeighedIngredient } from '../dough.ts';
import { keptAmounts } from './correct.ts';
import { acidOf, gasOf } from './gas.ts';
import { swapsFor } from './offers.ts';
import { type SwapAnswer, swapped } from './swap.ts';

const BOWL = { 'all-purpose-flour': 500, water: 300, salt: 10, lard: 40 };
const bowl = (...more: readonly WeighedIngredient[]) => [
  ...Object.entries(BOWL).map(([key, mass]) => lineOf(key, mass)),
  ...more,
];

function made(lines: readonly WeighedIngredient[], from: string, to: string): SwapAnswer {
  const line = lines.findIndex(({ ingredient }) => ingredient.food === from);
  const answer = swapped(lines, { line, to });
  if ('refused' in answer) throw new RangeError(answer.code);
  return answer;
}

const gramsIn = (lines: readonly WeighedIngredient[], key: string) =>
  lines
    .filter(({ ingredient }) => ingredient.food === key)
    .reduce((sum, line) => sum + line.grams, 0);

const codesOf = (answer: SwapAnswer) => answer.losses.map(({ code }) => code);

describe('one food for another', () => {
  it.each(examples.rows)('comes to what sr28 and stoichiometry give by hand: $name', (row) => {
    const answer = made(bowl(lineOf(row.from, row.grams)), row.from, row.to);
    expect(gramsIn(answer.lines, row.from)).toBe(0);
    for (const [key, mass] of Object.entries(row.becomes)) {
      // Two places were kept by hand; a tenth of a gram is what a scale could show.
      expect([key, Math.abs(gramsIn(answer.lines, key) - mass) < 0.1]).toEqual([key, true]);
    }
  });

  it('of milk to buttermilk brings soda for its acid and takes as much gas from the powder, by hand', () => {
    const answer = made(
      bowl(lineOf('milk', 244), lineOf('baking-powder', 20)),
      'milk',
      'buttermilk-lowfat',
    );
    const grams = (key: string) => gramsIn(answer.lines, key);
    const milk = (244 * 0.8813) / 0.9013; // as much water: sr28 NDB 01077, 01088
    const soda = milk * 0.008 * 0.933; // 0.8 % lactic acid, 93.3 g of soda to 100 g of it
    expect(grams('buttermilk-lowfat')).toBeCloseTo(milk, 1);
    expect(grams('baking-soda')).toBeCloseTo(soda, 2);
    expect(grams('baking-powder')).toBeCloseTo(20 - (soda * 0.5239) / 0.12, 1); // legalPowder
  });

  it('takes the soda away with its acid and makes its gas with powder, by hand (sodaChemistry, legalPowder)', () => {
    const soda = bowl(lineOf('buttermilk-lowfat', 388), lineOf('baking-soda', 4.7));
    const answer = made(soda, 'buttermilk-lowfat', 'milk');
    expect(gramsIn(answer.lines, 'baking-soda')).toBe(0);
    const met = 388 * 0.008 * 0.933; // g of soda that finds acid; the rest gives half its gas by heat
    const gas = met * 0.5239 + (4.7 - met) * 0.2619;
    expect(gramsIn(answer.lines, 'baking-powder')).toBeCloseTo(gas / 0.12, 1);
    expect(gasOf(answer.lines).sodaLeft).toBe(0);
    expect(codesOf(answer)).toContain('FORMULA_SWAP_SODA_TO_POWDER');
  });

  it('keeps soda where buttermilk is dried: the same dry matter, the same acid (sr28 NDB 01088, 01094)', () => {
    const soda = bowl(lineOf('buttermilk-lowfat', 388), lineOf('baking-soda', 4.7));
    const answer = made(soda, 'buttermilk-lowfat', 'buttermilk-dried');
    expect(gramsIn(answer.lines, 'buttermilk-dried')).toBeCloseTo((388 * 0.0987) / 0.9703, 1);
    expect(gramsIn(answer.lines, 'baking-soda')).toBe(4.7);
    expect(gramsIn(answer.lines, 'baking-powder')).toBe(0);
    expect(codesOf(answer)).toContain('FORMULA_SWAP_DRY_BUTTERMILK'); // grades: 0.10 to 0.18 %
  });

  const breads = readyRecipes.filter(({ ingredients }) =>
    ingredients.some(({ part }) => part === 'flour'),
  );
  const all = breads.flatMap((recipe) => {
    const lines = recipe.ingredients.map((each) => ({ ingredient: each, grams: each.grams }));
    return swapsFor(lines).map((offer) => ({ recipe: recipe.id, lines, offer }));
  });

  it('is offered for every bread, and each offer has an answer', () => {
    expect(new Set(all.map(({ recipe }) => recipe)).size).toBe(breads.length);
    expect(all.length).toBeGreaterThan(150);
    const refused = all.filter(({ lines, offer }) => 'refused' in swapped(lines, offer));
    expect(refused.map(({ recipe, offer }) => `${recipe}: ${offer.to}`)).toEqual([]);
  });

  it('keeps water, fat, salt and gas to what a kitchen scale shows, or says what it could not', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.double({ min: 0.3, max: 8, noNaN: true }),
        (one, factor) => {
          const lines = one.lines.map((line) => ({
            ...line,
            grams: (line.grams * factor) as typeof line.grams,
          }));
          const answer = swapped(lines, one.offer);
          if ('refused' in answer) return;
          const [was, now] = [keptAmounts(lines), keptAmounts(answer.lines)];
          const says = (code: string) => codesOf(answer).includes(code);
          expect(Math.abs(now.hydration - was.hydration)).toBeLessThan(
            Math.max(0.51, 0.0031 * was.hydration),
          );
          if (!says('FORMULA_SWAP_FAT_LEFT'))
            expect(Math.abs(now.fat - was.fat)).toBeLessThan(0.51);
          if (!says('FORMULA_SWAP_SALT_LEFT')) {
            expect(Math.abs(now.salt - was.salt)).toBeLessThan(0.11);
          }
          const gas = gasOf(lines).total;
          expect(Math.abs(gasOf(answer.lines).total - gas)).toBeLessThan(0.02 * gas + 0.02);
          expect(answer.lines.every((line) => 0 < line.grams)).toBe(true);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });

  it('shouts that butter brings milk, and that milk is gone with water', () => {
    expect(made(bowl(), 'lard', 'butter-salted').allergensIn).toEqual(['milk']);
    const milk = bowl(lineOf('milk', 100));
    expect(made(milk, 'milk', 'water').allergensOut).toEqual(['milk']);
  });

  it('tells instant from regular dry milk: the same by weight, nearly twice by the cup (sr28 68 and 120 g)', () => {
    const { lines } = made(bowl(lineOf('dry-milk', 60)), 'dry-milk', 'dry-milk-instant');
    const instant = gramsIn(lines, 'dry-milk-instant');
    expect(instant / 60).toBeCloseTo(36.16 / 35.1, 3); // protein, NDB 01154 over 01092
    const text = lines.find(({ ingredient }) => ingredient.food === 'dry-milk-instant')!;
    expect(text.ingredient.asWritten).toMatch(/cup/);
    expect(instant / 68 / (60 / 120)).toBeGreaterThan(1.7);
  });

  it('gives buttermilk the soda its acid takes: 1.83 g a cup at 0.8 % lactic acid (neutralisingValues 93.3)', () => {
    expect(245 * acidOf(lineOf('buttermilk-lowfat', 1))).toBeCloseTo(1.83, 2);
    expect(14.9 * acidOf(lineOf('vinegar-distilled', 1))).toBeCloseTo(1.04, 2); // a tablespoon
  });

  it('says that the kitchen rule for powder from soda and tartar differs (kitchenSwaps)', () => {
    const answer = made(
      bowl(lineOf('baking-powder', 13.8)),
      'baking-powder',
      'soda-and-cream-of-tartar',
    );
    expect(codesOf(answer)).toContain('FORMULA_SWAP_KITCHEN_RULE');
    // A tablespoon by the rule: 4.6 g of soda and 6 g of tartar; 6 g take only 2.68 g of it.
    expect(gramsIn(answer.lines, 'baking-soda')).toBeLessThan(4.6);
    expect(gramsIn(answer.lines, 'cream-of-tartar')).toBeGreaterThan(6);
  });

  it('takes only a part where the bowl has no water to give up, and says so', () => {
    const dry = [lineOf('all-purpose-flour', 500), lineOf('water', 60), lineOf('sugar', 500)];
    const answer = made(dry, 'sugar', 'honey');
    expect(answer.share).toBeLessThan(1);
    expect(codesOf(answer)).toContain('FORMULA_SWAP_PART');
  });

  it('refuses where not even a quarter finds room', () => {
    const dry = [lineOf('all-purpose-flour', 500), lineOf('water', 2), lineOf('sugar', 500)];
    expect(swapped(dry, { line: 2, to: 'honey' })).toMatchObject({
      code: 'FORMULA_SWAP_NO_ROOM',
      conflicts: ['sugar', 'honey'],
    });
  });

  it('refuses a food it does not know, and names what would do', () => {
    const lines = bowl();
    const outcome = swapped(lines, { line: 3, to: 'moon-dust' });
    expect(outcome).toMatchObject({ code: 'FORMULA_SWAP_UNKNOWN', values: { known: 0 } });
    expect('refused' in outcome && outcome.values.offers).toMatch(/butter/);
    expect(swapped(lines, { line: 3, to: 'salt' })).toMatchObject({ values: { known: 1 } });
  });
});
