// Contrast as WCAG 2.2 defines it (relative luminance; success criteria 1.4.3, 1.4.6, 1.4.11).

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../src/style/tokens.css', import.meta.url), 'utf8');

function tokensOf(selector: string): Readonly<Record<string, string>> {
  const block = css.slice(css.indexOf('{', css.indexOf(selector)));
  const pairs = block.slice(0, block.indexOf('}')).matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g);
  return Object.fromEntries([...pairs].map(([, name, colour]) => [name!, colour!]));
}

const grounds = {
  day: tokensOf('[data-ground="day"] {'),
  night: tokensOf('\n[data-ground="night"] {'),
  'night by the device': tokensOf(':root:not([data-ground="day"]) {'),
};

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light! + 0.05) / (dark! + 0.05);
}

/** [ink, ground, least]: text 4.5 (1.4.3), the main text 7 (1.4.6), edges of controls 3 (1.4.11). */
const pairs: readonly (readonly [string, string, number])[] = [
  ['ink', 'canvas', 7],
  ['ink', 'sheet', 7],
  ['ink', 'oat', 4.5],
  ['soft', 'canvas', 4.5],
  ['soft', 'sheet', 4.5],
  ['ember', 'sheet', 4.5],
  ['ember', 'canvas', 4.5],
  ['steel', 'canvas', 4.5],
  ['steel', 'sheet', 4.5],
  ['on-iron', 'iron', 7],
  ['on-iron-soft', 'iron', 4.5],
  ['on-ember', 'ember', 4.5],
  ['on-chosen', 'chosen', 4.5],
  ['edge', 'canvas', 3],
  ['edge', 'sheet', 3],
];

describe('the two grounds', () => {
  it('holds the colours checked by hand against WCAG 2.2: black on white is 21', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  for (const [ground, tokens] of Object.entries(grounds)) {
    for (const [ink, on, least] of pairs) {
      it(`${ground}: ${ink} on ${on} has at least ${least} to 1`, () => {
        expect(contrast(tokens[ink]!, tokens[on]!)).toBeGreaterThanOrEqual(least);
      });
    }
  }

  it('gives soft ink 7 to 1 by night, where it is read at the fire', () => {
    const { soft, canvas } = grounds.night;
    expect(contrast(soft!, canvas!)).toBeGreaterThanOrEqual(7);
  });

  it('has the same night by choice as by the device', () => {
    expect(grounds['night by the device']).toEqual(grounds.night);
  });

  it('has nothing blue or white by night', () => {
    for (const colour of Object.values(grounds.night)) {
      const [red, green, blue] = [1, 3, 5].map((at) =>
        Number.parseInt(colour.slice(at, at + 2), 16),
      );
      expect(red! >= green! && green! >= blue!).toBe(true);
    }
  });
});
