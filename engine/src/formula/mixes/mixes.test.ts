import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ingredientMade } from '../../../validation/menu/made.ts';
import { fromUnit } from '../../quantity/convert.ts';
import { cubicMetres, grams } from '../../quantity/unit.ts';
import { keepingOf, tinKeeping } from './keeping.ts';
import { scoopOf } from './scoop.ts';
import { tinFor } from './tin.ts';

const lines = (amounts: Readonly<Record<string, number>>) =>
  Object.entries(amounts).map(([name, mass]) => ({
    ingredient: ingredientMade(name, mass),
    grams: grams(mass),
  }));
const PAN_BREAD = { flour: 400, 'baking powder': 20, salt: 5, sugar: 10, lard: 40, water: 312 };
const TIN = fromUnit(250, 'millilitre');
const sum = (of: readonly { readonly grams: number }[]) =>
  of.reduce((all, line) => all + line.grams, 0);

describe('a mix by the cup', () => {
  it('of one thing is that thing’s own cup by sr28: flour 125, sugar 200, salt 292 g', () => {
    for (const [name, cup] of [
      ['flour', 125],
      ['sugar', 200],
      ['salt', 292],
    ] as const) {
      expect(scoopOf(lines({ [name]: 77 }))!.cup).toBeCloseTo(cup, 6);
    }
  });

  it('of flour has both measured cups of herr41 in its doubt: 116 sifted, 126 unsifted', () => {
    const { cupLeast, cupMost } = scoopOf(lines({ flour: 500 }))!;
    expect(cupLeast).toBeLessThan(116);
    expect(cupMost).toBeGreaterThan(126);
  });

  it('lies between its lightest and its heaviest part, whatever the shares', () => {
    const part = () => fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(part(), part(), part(), (flour, sugar, salt) => {
        const { cup, room } = scoopOf(lines({ flour, sugar, salt }))!;
        expect(cup).toBeGreaterThanOrEqual(125 - 1e-6);
        expect(cup).toBeLessThanOrEqual(292 + 1e-6);
        const mass = (cup / fromUnit(1, 'us-cup')) * room;
        expect(mass).toBeCloseTo(flour + sugar + salt, 6);
      }),
      { seed: 31, numRuns: 200 },
    );
  });

  it('is only weighed where a part has no household measure', () => {
    expect(scoopOf(lines({ flour: 500, 'moon dust': 5 }))).toBeUndefined();
  });
});

describe('a tin without flour', () => {
  const tin = tinFor(lines(PAN_BREAD), TIN)!;

  it('holds powder, salt and sugar, no flour; tin and what is added make the whole bread', () => {
    expect(tin.contents.map(({ ingredient }) => ingredient.part)).toEqual([
      'powder',
      'salt',
      'sugar',
    ]);
    expect(sum(tin.contents) + sum(tin.add)).toBeCloseTo(787, 9);
    expect(tin.gramsEach).toBe(35);
  });

  it('holds whole bakes that fit: by sr28 spoons, 20 g of powder 4.35 tsp, 5 g of salt 0.83, 10 g of sugar 2.4', () => {
    const teaspoons = 20 / 4.6 + 5 / 6 + 10 / 4.2;
    const room = (teaspoons * fromUnit(1, 'us-cup')) / 48;
    expect(Math.abs(tin.scoop!.room / room - 1)).toBeLessThan(0.02); // a cup of sugar is 200, not 48 × 4.2 g
    expect(tin.bakes).toBe(Math.floor((TIN * 0.9) / room));
    expect(tin.mass).toBe(35 * tin.bakes);
  });

  it('is never fuller than it is large and never holds less for more room', () => {
    const room = () => fc.double({ min: 1e-6, max: 5e-3, noNaN: true });
    fc.assert(
      fc.property(room(), room(), (one, other) => {
        const [small, large] = [Math.min(one, other), Math.max(one, other)];
        const [few, many] = [small, large].map(
          (each) => tinFor(lines(PAN_BREAD), cubicMetres(each))!,
        );
        expect(few!.bakes).toBeLessThanOrEqual(many!.bakes);
        expect(many!.bakes * many!.scoop!.room).toBeLessThanOrEqual(large);
      }),
      { seed: 32 },
    );
  });

  it('is not made for a bread without powder or soda', () => {
    expect(tinFor(lines({ flour: 500, salt: 10, 'instant yeast': 5 }), TIN)).toBeUndefined();
  });
});

describe('keeping', () => {
  const days = (...names: readonly string[]) =>
    keepingOf(names.map((name) => ingredientMade(name, 10)));

  it('of a plain bag is a month in a pack and 6 months in a jar (mixKeeping)', () => {
    const plain = days('flour', 'baking powder', 'salt');
    expect([plain.carriedDays, plain.homeDays]).toEqual([30, 180]);
    expect(plain.because).toMatch(/damp/);
  });

  it('is that of the weakest part: whole grain three months (wholeGrainKeeping), dried milk between a weekend (dryMilkInMix) and a month or more (dryMilkKeeping)', () => {
    expect(days('whole wheat flour', 'baking powder').homeDays).toBe(90);
    const milky = days('whole wheat flour', 'baking powder', 'dry milk');
    expect([3 < milky.carriedDays, milky.carriedDays < 30]).toEqual([true, true]);
    expect(milky.because).toMatch(/a guess/);
    expect(milky.because).toMatch(/milk/);
  });

  it('of a tin is shorter than the 18 months that missouriStaples gives closed powder', () => {
    expect(tinKeeping().homeDays).toBeLessThan(18 * 30);
  });
});
