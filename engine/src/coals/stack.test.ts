import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { coalsCodes } from './codes.ts';
import { ovenBody } from './geometry.ts';
import { layCoals } from './lay-coals.ts';
import { parameter } from './parameters.ts';
import { stackOvens } from './stack.ts';
import { BETWEEN_DELIVERY } from './stack-setting.ts';

const both = (lower: Change, upper: Change = lower) => {
  const above = coalRequest(upper);
  const named = {
    ...above,
    loadId: 'bread-2',
    oven: { ...above.oven, id: 'B', name: 'blue cord' },
  };
  return { lower: coalRequest(lower), upper: named };
};

const stackOf = (lower: Change, upper?: Change) => {
  const stack = stackOvens(both(lower, upper));
  if (isRefusal(stack)) throw new Error(stack.code);
  return stack;
};

const refusedWith = (lower: Change, upper?: Change) => {
  const stack = stackOvens(both(lower, upper));
  return isRefusal(stack) ? stack.code : 'stacked';
};

const ROAST: Change = { method: 'roast', stay: 60 };

describe('two ovens stacked', () => {
  it.each([10, 12, 14])(
    'of %i inch save no more than the published 15 to 20 coals, and save some (stackSaving)',
    (inches) => {
      const { saved } = stackOf({ ...ROAST, inches });
      expect(saved).toBeGreaterThan(0);
      expect(saved).toBeLessThanOrEqual(20);
    },
  );

  it.each([12, 14])(
    'of %i inch under a bake save a span that holds most of the published 15 to 20 coals (stackSaving)',
    (inches) => {
      const { saved, savedAtLeast } = stackOf({ inches });
      expect(savedAtLeast).toBeLessThan(saved);
      expect(savedAtLeast).toBeLessThanOrEqual(15);
      expect(saved).toBeGreaterThanOrEqual(15);
      expect((saved + savedAtLeast) / 2).toBeLessThanOrEqual(20);
    },
  );

  it('ask of a coal between no more than it burns: 126 W at half an hour of age (coalsBurnNotes)', () => {
    const down = parameter('lidCoalWatts');
    const up = down * parameter('floorToLidDelivery');
    expect(BETWEEN_DELIVERY.likely * (down + up)).toBeLessThan(126);
  });

  it.each([10, 12, 14])(
    'of %i inch with even heat are laid within two coals of the published line in all (stackBetween)',
    (inches) => {
      const { coals, published } = stackOf({ ...ROAST, inches });
      expect(Math.abs(coals - published.coals)).toBeLessThanOrEqual(2);
    },
  );

  it('under a bake would run the upper one hot by the published line, so it gets fewer between (stackLike: baked dishes do not mix)', () => {
    for (const inches of [10, 12, 14]) {
      const { between, published } = stackOf({ inches });
      expect(between).toBeLessThan(published.between);
      expect(published.upperMean - coalRequest({ inches }).wish.wanted).toBeGreaterThan(14);
    }
  });

  it('lie where both irons want them: between in a ring under the upper floor, off its legs', () => {
    const { sets, between, lower, upper } = stackOf({});
    expect(sets.between.places).toHaveLength(between);
    expect(sets.below.places).toHaveLength(lower.below);
    expect(sets.above.places).toHaveLength(upper.above);
    const floor = ovenBody(coalRequest({}).oven).floorDiameter / 2;
    for (const { x, y } of sets.between.places) expect(Math.hypot(x, y)).toBeLessThanOrEqual(floor);
  });

  it('with even heat carry about one or two fewer between than on a lid alone, give or take two (stackBetween)', () => {
    const alone = layCoals(coalRequest(ROAST));
    if (isRefusal(alone)) throw new Error(alone.code);
    const fewer = alone.above.pieces - stackOf(ROAST).between;
    expect(fewer).toBeGreaterThanOrEqual(-1);
    expect(fewer).toBeLessThanOrEqual(4);
  });

  it('share one layer, counted once', () => {
    const { lower, between, upper, coals } = stackOf(ROAST);
    expect(lower.above).toBe(between);
    expect(coals).toBe(lower.below + between + upper.above);
  });

  it('are both within a step of the charts of their heat, or it is said', () => {
    for (const change of [ROAST, { inches: 14 }, { heatFahrenheit: 400 }]) {
      const stack = stackOf(change);
      const wanted = coalRequest(change).wish.wanted;
      for (const curve of [stack.lowerCurve, stack.upperCurve]) {
        const inside = curve.filter((point) => point.minute > 30);
        const mean = inside.reduce((sum, point) => sum + point.oven, 0) / inside.length;
        const isSaid = stack.notices.some((each) => each.code === 'COALS_STACK_HEAT_OFF');
        expect(Math.abs(mean - wanted) < 16 || isSaid).toBe(true);
      }
    }
  });

  it('have a wider band than an oven alone, since nobody has measured what goes up and down', () => {
    const alone = layCoals(coalRequest(ROAST));
    if (isRefusal(alone)) throw new Error(alone.code);
    const width = (curve: typeof alone.curve) => (curve[60]?.high ?? 0) - (curve[60]?.low ?? 0);
    expect(width(stackOf(ROAST).lowerCurve)).toBeGreaterThan(width(alone.curve));
    expect(width(stackOf(ROAST).upperCurve)).toBeGreaterThan(width(alone.curve));
  });

  it('always warn, with codes that are listed', () => {
    const { notices } = stackOf({}, { inches: 8 });
    const codes = notices.map((each) => each.code);
    expect(codes).toContain('COALS_STACK_CAUTION');
    expect(codes).toContain('COALS_STACK_SIZES_DIFFER');
    expect(codes.every((code) => code in coalsCodes)).toBe(true);
  });

  it('put the one that is done first on top', () => {
    const codes = stackOf({ stay: 25 }, { stay: 60 }).notices.map((each) => each.code);
    expect(codes).toContain('COALS_STACK_LOWER_FIRST');
  });

  it.each<[string, Change, Change]>([
    ['COALS_STACK_METHOD_UNFIT', { method: 'fry' }, { method: 'fry' }],
    ['COALS_STACK_METHOD_UNFIT', {}, { method: 'keep-warm', heatFahrenheit: 210 }],
    ['COALS_STACK_UNLIKE', {}, { method: 'simmer', heatFahrenheit: 220, stay: 90 }],
    ['COALS_STACK_UNLIKE', { heatFahrenheit: 350 }, { heatFahrenheit: 450 }],
    ['COALS_STACK_UNLIKE', { wood: true }, {}],
    ['COALS_STACK_TOP_HEAVY', { inches: 10 }, { inches: 12 }],
    ['COALS_STACK_PINS_CLASH', { pins: { above: 12 } }, { pins: { below: 9 } }],
    ['COALS_WIND_OUTSIDE_RANGE', { wind: 40 }, {}],
    ['COALS_OVEN_OUTSIDE_RANGE', {}, { inches: 5 }],
  ])('are refused as %s (stackLike)', (code, lower, upper) => {
    expect(refusedWith(lower, upper)).toBe(code);
  });
});
