import { describe, expect, it } from 'vitest';
import { madeAir, madeDough, madeFormula, madeRecipe } from '../../../validation/bake/made.ts';
import { bakeFor } from '../../bake/index.ts';
import { fromCelsius } from '../../quantity/unit.ts';
import { cutDrawing } from './cut.ts';
import { fullnessFor, loafOf, meanHeight, topAt } from './cut-outline.ts';
import { malformed, textsOutside } from './svg-check.ts';

const baked = (millimetres: number, celsius: number) =>
  bakeFor({
    load: madeDough({ millimetres, rise: 1.6 }),
    recipe: madeRecipe({ kind: 'quick-bread' }),
    formula: madeFormula(),
    air: madeAir(),
    wanted: fromCelsius(celsius),
  });

const drawn = (millimetres: number, celsius: number) => {
  const { inside, minutes } = baked(millimetres, celsius);
  if (inside === undefined) throw new RangeError('a bread has an inside');
  return cutDrawing({
    inside,
    done: minutes,
    words: {
      minutes: (minute) => `${Math.round(minute)} min`,
      degrees: (at) => `${Math.round(at - 273.15)} °C`,
      length: (metres) => `${Math.round(metres * 1000)} mm`,
    },
    alt: 'Cut through the bread <bannock>',
  });
};

describe('the cut through a bread', () => {
  it.each([
    [6, 230],
    [25, 200],
    [60, 160],
    [40, 260],
  ])('of %i mm at %i C is well formed and keeps its words inside', (millimetres, celsius) => {
    const svg = drawn(millimetres, celsius);
    expect(malformed(svg)).toEqual([]);
    expect(textsOutside(svg)).toEqual([]);
    expect(svg).not.toMatch(/NaN|undefined/);
  });

  it('says at four times how middle, top and bottom are, and names the line at which it is done', () => {
    const svg = drawn(25, 200);
    expect(svg.match(/middle \d+ °C/g)).toHaveLength(4);
    expect(svg.match(/>top (pale|straw|brown|dark|burnt)</g)).toHaveLength(4);
    expect(svg.match(/>bottom (pale|straw|brown|dark|burnt)</g)).toHaveLength(4);
    expect(svg).toMatch(/done, \d+ min/);
  });

  it('tells colours by tone and word, so that it can be printed in black', () => {
    const tones = [...drawn(25, 230).matchAll(/fill-opacity="([\d.]+)"/g)].map(([, tone]) => tone);
    expect(new Set(tones).size).toBeGreaterThan(3);
  });

  it('has a text alternative, escaped', () => {
    expect(drawn(25, 200)).toContain('<desc>Cut through the bread &lt;bannock&gt;</desc>');
  });

  it('is as full as its load: half an ellipsoid fills 2/3 of its cylinder (solid geometry)', () => {
    expect(meanHeight(2)).toBeCloseTo(2 / 3, 2);
    expect(fullnessFor(2 / 3)).toBeCloseTo(2, 1);
    for (const profile of [0.7, 0.8, 0.9, 0.95])
      expect(meanHeight(fullnessFor(profile))).toBeCloseTo(profile, 2);
  });

  it('is rounded at its top, and lowest at its edge', () => {
    const loaf = loafOf({ x: 0, foot: 100, width: 100, height: 60 }, 2 / 3);
    expect(topAt(loaf, 50)).toBeCloseTo(60, 6);
    expect(topAt(loaf, 0)).toBe(0);
    // Half an ellipse at half its half-width stands at the root of 3/4 (plane geometry).
    expect(topAt(loaf, 75) / 60).toBeCloseTo(Math.sqrt(0.75), 2);
    expect(topAt(loaf, 25)).toBeCloseTo(topAt(loaf, 75), 6);
    expect(drawn(60, 160)).toMatch(/class="outline"/);
  });
});
