// Every word in every drawing is read against what lies under it, on both grounds of the look and on
// paper. The limit is wcag22 success criterion 1.4.3, from memory; the formula is its relative
// luminance.

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { daySheet, dishCard, planMeal, type SheetDocument, sayFor } from '#engine';
import { demoCamps, demoIds } from '#formats';

const LEAST_CONTRAST = 4.5;

type Rgb = readonly [number, number, number];
type Tokens = Readonly<Record<string, string>>;

const tokenFile = fileURLToPath(new URL('../web/src/style/tokens.css', import.meta.url));
const css = readFileSync(tokenFile, 'utf8');

function tokensOf(selector: string): Tokens {
  const from = css.indexOf(selector);
  const body = css.slice(css.indexOf('{', from) + 1, css.indexOf('}', from));
  return Object.fromEntries(
    [...body.matchAll(/(--[\w-]+): (#[0-9a-f]{6})/g)].map(([, name = '', value = '']) => [
      name,
      value,
    ]),
  );
}

const grounds: readonly (readonly [string, Tokens])[] = [
  ['day', tokensOf('[data-ground="day"] {')],
  ['night', tokensOf('\n[data-ground="night"] {')],
  ['paper', {}],
];

const rgb = (hex: string): Rgb => [
  Number.parseInt(hex.slice(1, 3), 16),
  Number.parseInt(hex.slice(3, 5), 16),
  Number.parseInt(hex.slice(5, 7), 16),
];

/** `var(--ink, #1d1a17)` on one ground. */
function colour(written: string, tokens: Tokens): Rgb {
  const [, name = '', fallback = ''] = /var\((--[\w-]+), (#[0-9a-f]{6})\)/.exec(written) ?? [];
  if (fallback === '') throw new Error(`no colour of the look: ${written}`);
  return rgb(tokens[name] ?? fallback);
}

const channel = (value: number) =>
  value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
const luminance = ([red, green, blue]: Rgb) =>
  0.2126 * channel(red) + 0.7152 * channel(green) + 0.0722 * channel(blue);

function contrast(one: Rgb, other: Rgb): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const over = (top: Rgb, bottom: Rgb, opacity: number): Rgb => [
  top[0] * opacity + bottom[0] * (1 - opacity),
  top[1] * opacity + bottom[1] * (1 - opacity),
  top[2] * opacity + bottom[2] * (1 - opacity),
];

const read = (attributes: string, name: string) =>
  new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes)?.[1];

/** Words with less contrast than they need; boxes and discs drawn before them are their ground. */
function faint(svg: string, tokens: Tokens): readonly string[] {
  const sheet = colour('var(--sheet, #fbf8f1)', tokens);
  const shapes: { holds: (x: number, y: number) => boolean; fill: string; opacity: number }[] = [];
  const found: string[] = [];
  for (const [, kind, attributes = '', text = ''] of svg.matchAll(
    /<(rect|circle|text) ([^>]*?)\/?>([^<]*)/g,
  )) {
    const number = (name: string) => Number(read(attributes, name) ?? 0);
    const fill = read(attributes, 'fill') ?? '';
    if (kind === 'text') {
      const shift = { middle: 0, end: -8 }[read(attributes, 'text-anchor') ?? ''] ?? 8;
      const [x, y] = [number('x') + shift, number('y') - 4];
      const ground = shapes
        .filter(({ holds }) => holds(x, y))
        .reduce(
          (under, { fill: top, opacity }) => over(colour(top, tokens), under, opacity),
          sheet,
        );
      const isHaloed = read(attributes, 'paint-order') !== undefined;
      const measured = contrast(colour(fill, tokens), isHaloed ? sheet : ground);
      if (measured < LEAST_CONTRAST) found.push(`"${text}" ${measured.toFixed(1)}:1`);
    } else if (fill.startsWith('var')) {
      const opacity = Number(read(attributes, 'fill-opacity') ?? 1);
      const [x, y, wide, high] = ['x', 'y', 'width', 'height'].map(number) as [
        number,
        number,
        number,
        number,
      ];
      const [cx, cy, radius] = ['cx', 'cy', 'r'].map(number) as [number, number, number];
      shapes.push({
        fill,
        opacity,
        holds:
          kind === 'rect'
            ? (px, py) => x <= px && px <= x + wide && y <= py && py <= y + high
            : (px, py) => Math.hypot(px - cx, py - cy) <= radius,
      });
    }
  }
  return found;
}

const drawingsOf = ({ blocks }: SheetDocument) =>
  blocks.flatMap((block) => (block.type === 'drawing' ? [block.svg] : []));

describe.each(demoIds)('drawings of the demo camp %s', (id) => {
  const found = demoCamps('2026-09-01').find(({ camp }) => camp.id === id);
  if (found === undefined) throw new Error(`no demo camp ${id}`);
  const { camp, menu } = found;
  const plan = planMeal(camp, menu);
  const say = sayFor({ measures: 'us', clock: '24', plan });
  const drawings = [daySheet(plan, say), ...menu.dishes.map((dish) => dishCard(plan, dish.id, say))]
    .flatMap(drawingsOf)
    .filter((svg) => svg.includes('<text '));

  it.each(grounds)(
    'have every word at 4.5 to 1 or better on the %s ground (wcag22 1.4.3)',
    (_, tokens) => {
      expect(drawings.length).toBeGreaterThan(4);
      expect(drawings.flatMap((svg) => faint(svg, tokens))).toEqual([]);
    },
  );
});

describe('the check itself', () => {
  it('finds dark words on a dark bar, and measures black on white as 21 to 1 (wcag22)', () => {
    const bar =
      '<rect x="0" y="0" width="90" height="20" fill="var(--iron, #34302d)"/>' +
      '<text x="4" y="14" fill="var(--sheet, #fbf8f1)" font-size="12">rolls</text>';
    const [, [, night]] = [grounds[0], grounds[1]] as unknown as [unknown, [string, Tokens]];
    expect(faint(bar, night)).toHaveLength(1);
    expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 5);
  });
});
