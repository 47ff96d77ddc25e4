import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readyRecipes } from '../../menu/ready-recipes.ts';
import { grams, ratio } from '../../quantity/unit.ts';
import { characterOf, figureNames } from '../bench/character.ts';
import { lineOf } from '../bench/line.ts';
import type { WeighedIngredient } from '../dough.ts';
import { roundedFormula } from './round.ts';
import { solveTargets, type TargetAnswer } from './solve.ts';
import type { FormulaTargets } from './wish.ts';

const linesOf = (amounts: Readonly<Record<string, number>>) =>
  Object.entries(amounts).map(([key, mass]) => lineOf(key, mass));
const LEAN = { 'bread-flour': 500, water: 325, salt: 10, 'active-dry-yeast': 5 };
const LARD_BREAD = { 'all-purpose-flour': 400, water: 312, salt: 5, lard: 40, 'baking-powder': 20 };

function solved(lines: readonly WeighedIngredient[], targets: FormulaTargets): TargetAnswer {
  const outcome = solveTargets(lines, targets);
  if ('refused' in outcome) throw new RangeError(`${outcome.code} ${outcome.conflicts.join()}`);
  return outcome;
}
const massOf = ({ lines }: TargetAnswer, key: string) =>
  lines.find(({ ingredient }) => ingredient.food === key)?.grams ?? 0;

describe('targets of a formula', () => {
  it('meet 62 % water and 540 g as bakersPercent gives by hand: 540 / 1.65 g of flour', () => {
    const answer = solved(linesOf(LEAN), {
      batch: grams(540),
      figures: { hydration: ratio(0.62) },
    });
    // The yeast holds 0.05 g of water for 100 g of flour (sr28 NDB 18375): 61.95 % from the tap.
    expect(answer.character.figures.hydration.share).toBeCloseTo(0.62, 5);
    expect(answer.character.batch).toBeCloseTo(540, 2);
    expect(massOf(answer, 'bread-flour')).toBeCloseTo(540 / 1.65, 0);
    expect(massOf(answer, 'salt') / massOf(answer, 'bread-flour')).toBeCloseTo(0.02, 3);
    expect(massOf(answer, 'active-dry-yeast') / massOf(answer, 'bread-flour')).toBeCloseTo(0.01, 3);
  });

  it('leave the flour what it was where nothing says how large the dough is', () => {
    const [flour] = linesOf(LARD_BREAD);
    for (const share of [0.5, 0.62, 0.7]) {
      const answer = solved(linesOf(LARD_BREAD), { figures: { hydration: ratio(share) } });
      expect(answer.character.figures.hydration.share).toBeCloseTo(share, 4);
      expect(answer.lines[0]!.grams).toBeCloseTo(flour!.grams, 0);
    }
  });

  it('keep a held line to the gram and fit the rest around it', () => {
    const answer = solved(linesOf(LARD_BREAD), {
      figures: { fat: ratio(0.2), hydration: ratio(0.62) },
      held: [{ line: 0, grams: grams(400) }],
    });
    expect(massOf(answer, 'all-purpose-flour')).toBeCloseTo(400, 3);
    expect(massOf(answer, 'lard')).toBeCloseTo(80, 2); // a fifth of 400 g, all fat
    expect(massOf(answer, 'water')).toBeCloseTo(248 - 5 * 0.002, 2); // salt holds 0.2 %
    expect(massOf(answer, 'baking-powder')).toBeCloseTo(20, 1);
  });

  it('keep two held flours to the gram, any two, and meet the water of both (bakersPercent)', () => {
    const bowl = linesOf({ 'all-purpose-flour': 300, 'whole-wheat-flour': 200, water: 310 });
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 900 }),
        fc.integer({ min: 20, max: 900 }),
        fc.integer({ min: 45, max: 110 }),
        (white, brown, percent) => {
          const answer = solved(bowl, {
            figures: { hydration: ratio(percent / 100) },
            held: [
              { line: 0, grams: grams(white) },
              { line: 1, grams: grams(brown) },
            ],
          });
          expect(massOf(answer, 'all-purpose-flour')).toBeCloseTo(white, 2);
          expect(massOf(answer, 'whole-wheat-flour')).toBeCloseTo(brown, 2);
          expect(massOf(answer, 'water')).toBeCloseTo(((white + brown) * percent) / 100, 1);
        },
      ),
      { seed: 62, numRuns: 60 },
    );
  });

  it('name two held lines and the share that they leave no room for', () => {
    const bowl = linesOf({ 'all-purpose-flour': 300, 'whole-wheat-flour': 200, water: 310 });
    const held = [0, 1, 2].map((line) => ({ line, grams: grams(300) }));
    // 300 g of water on 600 g of flour is 50 %, whatever else is wished (bakersPercent).
    const outcome = solveTargets(bowl, { figures: { hydration: ratio(0.7) }, held });
    if (!('refused' in outcome)) throw new Error('no refusal');
    expect(outcome.code).toBe('FORMULA_TARGETS_CONFLICT');
    expect(outcome.conflicts.join()).toMatch(/whole wheat flour|water/);
    expect(outcome.nearest!.character.figures.hydration.share).toBeCloseTo(0.5, 3);
  });

  it('count the water of butter: 20 % fat as butter brings 3.9 % water (sr28 NDB 01001)', () => {
    const answer = solved(linesOf({ 'all-purpose-flour': 500, water: 300, 'butter-salted': 50 }), {
      figures: { fat: ratio(0.2), hydration: ratio(0.6) },
      held: [{ line: 0, grams: grams(500) }],
    });
    expect(massOf(answer, 'butter-salted')).toBeCloseTo(100 / 0.8111, 1);
    expect(massOf(answer, 'water')).toBeCloseTo(300 - (100 / 0.8111) * 0.1587, 1);
  });

  it('add what is wanted and not there: sugar', () => {
    const answer = solved(linesOf(LEAN), {
      figures: { sugar: ratio(0.05) },
      held: [{ line: 0, grams: grams(500) }],
    });
    expect(massOf(answer, 'sugar')).toBeCloseTo(25 / 0.998, 1); // sr28 NDB 19335
    expect(answer.was.at(-1)).toBe(0);
  });

  it('are met whenever some formula has them, and no amount is negative', () => {
    const share = fc.double({ min: 0.01, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.45, max: 1.2, noNaN: true }),
        share,
        fc.double({ min: 0.005, max: 0.04, noNaN: true }),
        fc.double({ min: 100, max: 5000, noNaN: true }),
        (hydration, fat, salt, batch) => {
          const answer = solved(linesOf(LARD_BREAD), {
            batch: grams(batch),
            figures: { hydration: ratio(hydration), fat: ratio(fat), salt: ratio(salt) },
          });
          const { figures } = answer.character;
          expect(figures.hydration.share).toBeCloseTo(hydration, 4);
          expect(figures.fat.share).toBeCloseTo(fat, 4);
          expect(figures.salt.share).toBeCloseTo(salt, 4);
          expect(answer.character.batch / batch).toBeCloseTo(1, 4);
          expect(answer.lines.every((line) => 0 <= line.grams)).toBe(true);
        },
      ),
      { seed: 5, numRuns: 200 },
    );
  });

  it('leave a formula as it is where they are its own figures', () => {
    for (const recipe of readyRecipes) {
      const lines = recipe.ingredients.map((each) => ({ ingredient: each, grams: each.grams }));
      const character = characterOf(lines);
      if ('refused' in character) continue;
      const answer = solved(lines, {
        batch: character.batch,
        figures: { hydration: character.figures.hydration.share },
      });
      for (const [at, line] of answer.lines.entries()) {
        expect(line.grams).toBeCloseTo(lines[at]!.grams, 1);
      }
    }
  });
});

describe('targets that can not be', () => {
  it('name the fewest that fight and the nearest that works: 600 g of flour in 540 g', () => {
    const outcome = solveTargets(linesOf(LARD_BREAD), {
      batch: grams(540),
      held: [{ line: 0, grams: grams(600) }],
      figures: { salt: ratio(0.02) },
    });
    expect(outcome).toMatchObject({
      code: 'FORMULA_TARGETS_CONFLICT',
      conflicts: ['all-purpose flour', 'batch'],
    });
    const nearest = 'refused' in outcome ? outcome.nearest : undefined;
    expect(nearest!.character.batch).toBeGreaterThan(600);
    expect(nearest!.character.figures.salt.share).toBeCloseTo(0.02, 3);
    expect(massOf(nearest!, 'all-purpose-flour')).toBeCloseTo(600, 1);
  });

  it('name three where two alone would do', () => {
    const outcome = solveTargets(linesOf(LARD_BREAD), {
      held: [
        { line: 0, grams: grams(400) },
        { line: 1, grams: grams(100) },
      ],
      figures: { hydration: ratio(0.62) },
    });
    expect('refused' in outcome && outcome.conflicts).toEqual([
      'all-purpose flour',
      'water',
      'hydration',
    ]);
  });

  it.each([
    [3, 2.5],
    [-0.1, 0.2],
    [Number.NaN, 0.2],
  ])('refuse %s as water and name the nearest dough', (wanted, nearest) => {
    expect(solveTargets(linesOf(LEAN), { figures: { hydration: ratio(wanted) } })).toMatchObject({
      code: 'FORMULA_TARGET_OUT_OF_RANGE',
      conflicts: ['hydration'],
      values: { nearestRatio: nearest },
    });
  });

  it('name what is published for its kind where the wish is no dough, and one batch for no mass at all', () => {
    const biscuit = linesOf({
      'all-purpose-flour': 480,
      water: 295,
      shortening: 88,
      salt: 8,
      'baking-powder': 25,
    });
    const wet = solveTargets(biscuit, { figures: { hydration: ratio(3) } }, 'biscuit');
    // The wettest biscuit that was read: 62.5 % water and 6.8 % dry milk with 3.16 % (olderServiceCards, sr28).
    const most = 0.625 + 0.068 * 0.0316 + 0.021 * 0.002;
    expect(wet).toMatchObject({ code: 'FORMULA_TARGET_OUT_OF_RANGE', values: { by: 'biscuit' } });
    expect('refused' in wet && Number(wet.values.nearestRatio)).toBeCloseTo(most, 3);
    const none = solveTargets(biscuit, { batch: grams(0) }, 'biscuit');
    expect(none).toMatchObject({ values: { nearestGrams: 896, by: 'batch' } }); // 480 + 295 + 88 + 8 + 25
  });

  it('refuse a bowl without flour, with negative grams, or wetter than any batter, each with what would do', () => {
    const noFlour = solveTargets(linesOf({ water: 300, salt: 5 }), { batch: grams(540) });
    expect(noFlour).toMatchObject({ code: 'FORMULA_FLOUR_MISSING', values: { flourGrams: 476 } });
    expect(solveTargets(linesOf({ ...LEAN, water: -1 }), {})).toMatchObject({
      code: 'FORMULA_AMOUNT_IMPOSSIBLE',
    });
    expect(characterOf(linesOf({ 'bread-flour': 100, water: 300 }))).toMatchObject({
      code: 'FORMULA_WETTER_THAN_BATTER',
      values: { waterGrams: 204 }, // a cup of water to a cup of sifted flour, herr41
    });
  });
});

describe('rounding to spoons and scales', () => {
  it('tells what it costs: at most half a gram a line weighed', () => {
    const lines = linesOf({
      'bread-flour': 329.3,
      water: 204.2,
      salt: 6.6,
      'active-dry-yeast': 3.3,
    });
    const character = characterOf(lines);
    if ('refused' in character) throw new RangeError(character.code);
    const rounded = roundedFormula(lines, character);
    for (const { line, weighed } of rounded.lines) {
      expect(Math.abs(line.grams - weighed)).toBeLessThanOrEqual(line.grams < 10 ? 0.25 : 0.5);
    }
    expect(rounded.weighed.batch).toBeCloseTo(329 + 204 + 6.5 + 3.5 - 543.4, 6);
    for (const figure of figureNames) {
      expect(Math.abs(rounded.weighed.figures[figure])).toBeLessThan(0.005);
    }
    // Spoons are coarser, and say so.
    expect(Math.abs(rounded.spooned.batch)).toBeGreaterThan(Math.abs(rounded.weighed.batch));
  });
});
