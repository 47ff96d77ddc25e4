import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../../validation/coals/requests.ts';
import { ovenBody } from '../../coals/geometry.ts';
import { setAbove, setBelow } from '../../coals/placement.ts';
import { coalRow, rowHeight } from './coal-row.ts';

const INCHES = [8, 10, 12, 14, 16];
const WIDTH = 0.0445;

const setsOf = (inches: number) => {
  const { oven } = coalRequest({ inches });
  const how = { coalWidth: WIDTH, isWood: false };
  return {
    above: setAbove({ ...how, pieces: inches + 4, outerRadius: oven.diameter / 2 }),
    below: setBelow({
      ...how,
      pieces: Math.round(inches * 0.7),
      outerRadius: ovenBody(oven).floorDiameter / 2,
      isBaked: true,
    }),
    scale: 300 / oven.diameter,
  };
};

const count = (svg: string, what: RegExp) => [...svg.matchAll(what)].length;

describe('a set of coals from the side', () => {
  it.each(INCHES)('is every coal of a %i inch oven, once (AT-THE-FIRE 10)', (inches) => {
    const { above, below, scale } = setsOf(inches);
    for (const set of [above, below]) {
      const svg = coalRow({ fuel: 'briquettes', set, middle: 190, groundY: 100, scale });
      expect(count(svg, /<rect /g)).toBe(set.pieces);
      expect(count(svg, /fill="none" stroke="[^"]*ember/g)).toBeLessThan(set.pieces);
    }
  });

  it.each(INCHES)(
    'leaves the middle under the floor of a %i inch bake empty of whole coals',
    (inches) => {
      const { below, scale } = setsOf(inches);
      const svg = coalRow({ fuel: 'briquettes', set: below, middle: 0, groundY: 100, scale });
      const wholeAt = [...svg.matchAll(/translate\(([-\d.]+) /g)].map(([, x]) => Number(x) / scale);
      expect(wholeAt.length).toBeGreaterThanOrEqual(2);
      for (const x of wholeAt) expect(Math.abs(x)).toBeGreaterThan(WIDTH);
    },
  );

  it('stands on what carries it, whatever the size, and under the floor it lies below', () => {
    for (const inches of INCHES) {
      const { below, scale } = setsOf(inches);
      const legs = 0.05 * scale;
      expect(rowHeight({ set: below, scale })).toBeLessThanOrEqual(legs);
    }
  });

  it('of wood is broken pieces that no one can count', () => {
    const { below, scale } = setsOf(12);
    const svg = coalRow({ fuel: 'wood-coals', set: below, middle: 190, groundY: 100, scale });
    expect(count(svg, /<rect /g)).toBe(0);
    expect(count(svg, /<polygon /g)).toBeGreaterThan(below.pieces);
  });
});
