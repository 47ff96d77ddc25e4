import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountAt } from './written-amount.ts';
import { numberAt } from './written-number.ts';
import { otherSize, sizeOfWritten } from './written-unit.ts';

const read = (text: string) => {
  const amount = amountAt(text, 0, 'us');
  return amount?.terms.map(({ low, high, unit }) => [low, high, unit]);
};

describe('an amount as cooks write it', () => {
  it.each([
    ['2 cups', [[2, 2, 'cup']]],
    ['1 1/2 tsp', [[1.5, 1.5, 'tsp']]],
    ['¾-1 cup', [[0.75, 1, 'cup']]],
    ['3/4 to 1 cup', [[0.75, 1, 'cup']]],
    ['three quarters to a cup of milk', [[0.75, 1, 'cup']]],
    ['a pinch of salt', [[1, 1, 'pinch']]],
    ['250 g', [[250, 250, 'g']]],
    ['1,5 dl', [[1.5, 1.5, 'dl']]],
    [
      '1 lb 4 oz beef',
      [
        [1, 1, 'lb'],
        [4, 4, 'oz'],
      ],
    ],
    [
      '1/3 cup + 2 tbsp',
      [
        [1 / 3, 1 / 3, 'cup'],
        [2, 2, 'tbsp'],
      ],
    ],
    ['half a cup', [[0.5, 0.5, 'cup']]],
    ['a third of a cup of oil', [[1 / 3, 1 / 3, 'cup']]],
    ['one egg', [[1, 1, 'each']]],
    ['1-2 tablespoons', [[1, 2, 'tbsp']]],
    ['2 c. flour', [[2, 2, 'cup']]],
    ['2½ cups', [[2.5, 2.5, 'cup']]],
    ['a cup and a half of milk', [[1.5, 1.5, 'cup']]],
    ['1 stick butter', [[1, 1, 'stick']]],
    ['1 packet yeast', [[1, 1, 'packet']]],
    ['half a dozen eggs', [[6, 6, 'each']]],
    ['1 cup to 1 1/4 cups water', [[1, 1.25, 'cup']]],
    ['2 T. lard', [[2, 2, 'tbsp']]],
    ['2 t. lard', [[2, 2, 'tsp']]],
    ['media taza de agua', [[0.5, 0.5, 'cup']]],
    ['2 cucharadas de manteca', [[2, 2, 'tbsp']]],
    ['l/2 cup sugar', [[0.5, 0.5, 'cup']]],
    ['1 l/2 cups sugar', [[1.5, 1.5, 'cup']]],
    ['1 l milk', [[1, 1, 'l']]],
    ['1,000 g', [[1000, 1000, 'g']]],
  ])('is read in %s', (text, wanted) => expect(read(text)).toEqual(wanted));

  it('keeps what a can holds apart from how many cans there are', () => {
    for (const text of [
      '2 (15 oz) cans',
      '2 15-oz cans',
      'two 15-ounce cans',
      '2 cans (15 oz each)',
    ]) {
      const amount = amountAt(text, 0, 'us')!;
      expect([text, amount.terms[0]?.low, amount.pack?.low, amount.pack?.unit]).toEqual([
        text,
        2,
        15,
        'oz',
      ]);
    }
  });

  it('keeps a weight in brackets beside the measure that it says again', () => {
    expect(amountAt('1 cup (125 g) flour', 0, 'us')?.same).toEqual([
      { low: 125, high: 125, unit: 'g' },
    ]);
    expect(amountAt('100g/4oz butter', 0, 'british')?.same[0]?.unit).toBe('oz');
  });

  it('is not seen in heats, pans, ovens, times and words that begin like a number', () => {
    const none = [
      '350 degrees',
      '9x13 pan',
      '12-inch oven',
      '5 minutes',
      'a little milk',
      'onion',
      '',
    ];
    for (const text of none) expect([text, amountAt(text, 0, 'us')]).toEqual([text, undefined]);
  });

  it('never throws, never runs past the text and never gives a number that is none (seed 2011)', () => {
    const signs = fc.constantFrom(...'0123456789 ./½¼-–()x,acupstbgozkl of and to ½'.split(''));
    const texts = fc.oneof(
      fc.string({ maxLength: 80 }),
      fc.array(signs, { maxLength: 60 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const amount = amountAt(text, 0, 'us');
        if (amount === undefined) return;
        expect(amount.span.to).toBeLessThanOrEqual(text.length);
        for (const { low, high } of amount.terms) {
          expect(Number.isFinite(low) && low <= high).toBe(true);
        }
      }),
      { seed: 2011, numRuns: 3000 },
    );
  });

  it('takes no longer for a long run of the same sign than a plain look at it', () => {
    for (const sign of ['1', ' ', '(', '1/', '½', '- ', 'a ', '1 and ', '2 (']) {
      const text = sign.repeat(20_000);
      expect(numberAt(text, 0)?.to ?? 0).toBeLessThanOrEqual(text.length);
      expect(amountAt(text, 0, 'us')?.span.to ?? 0).toBeLessThanOrEqual(text.length);
    }
  });
});

describe('sizes of what cooks measure with', () => {
  const each = (unit: Parameters<typeof sizeOfWritten>[0], manner: 'us' | 'british' | 'metric') => {
    const size = sizeOfWritten(unit, manner);
    return 'each' in size ? size.each : Number.NaN;
  };

  it('are the exact US ones of nist-hb44 and nist-sp430: pint 473.176 ml, cup 236.588, spoon 14.787 and 4.929', () => {
    expect(each('pint', 'us') * 1e6).toBeCloseTo(473.176473, 6);
    expect(each('cup', 'us') * 1e6).toBeCloseTo(236.5882365, 6);
    expect(each('tbsp', 'us') * 1e6).toBeCloseTo(14.78676478, 6);
    expect(each('tsp', 'us') * 1e6).toBeCloseTo(4.92892159, 6);
  });

  it('are the imperial ones for a British pint, a fifth larger, and the other is told (nist-sp811)', () => {
    expect(each('pint', 'british') * 1e6).toBeCloseTo(568.26125, 6);
    expect(otherSize('pint', 'us')).toBeCloseTo(1.20095, 5);
    expect(otherSize('pint', 'british')).toBeCloseTo(1 / 1.20095, 5);
    expect(otherSize('cup', 'us')).toBeUndefined();
  });

  it('are wide for what old books meant (common practice, no source)', () => {
    const teacup = sizeOfWritten('teacup', 'us');
    expect(teacup.kind === 'volume' && teacup.least < 1 && 1 < teacup.most).toBe(true);
    expect(sizeOfWritten('knob', 'us').kind).toBe('loose');
  });
});
