// Which measure does a recipe's word mean, and how big is it? Cups and spoons of the United States,
// of Britain and of metric kitchens; packets and pieces, whose weight only the larder knows.
// Sources: nist-sp430, nist-sp811 (exact sizes); old household measures are common practice, no
// source, and carry a wide range.

import { fromUnit } from './convert.ts';
import type { CubicMetres, Grams } from './unit.ts';
import { matchAt } from './written-number.ts';

/** Whose kitchen a recipe was written in: it decides how big a pint, a cup and a spoon are. */
export type Manner = 'us' | 'british' | 'metric';

/** How much one is. A piece or a packet is weighed by the larder; a loose one by nobody. */
export type WrittenSize =
  | { readonly kind: 'mass'; readonly each: Grams }
  | {
      readonly kind: 'volume';
      readonly each: CubicMetres;
      /** Least and most that people mean by it, over `each`. */
      readonly least: number;
      readonly most: number;
    }
  | { readonly kind: 'piece' }
  | { readonly kind: 'loose' };

interface UnitRow {
  readonly unit: string;
  /** Words for it, without the full stop; a big T is told from a small one by `isExact`. */
  readonly words: string;
  readonly isExact?: true;
}

/** Longest words first where one begins another. */
const ROWS = [
  { unit: 'fl-oz', words: 'fl\\.? ?ozs?|fluid[ -]ounces?|floz' },
  { unit: 'dessertspoon', words: 'dessert ?spoon(?:s|fuls?)?|dstspn|dsp' },
  { unit: 'saltspoon', words: 'salt ?spoon(?:s|fuls?)?' },
  {
    unit: 'tbsp',
    words: 'tbl?sps?|tbls?|tbs?|table ?spoon(?:s|fuls?|sful)?|tabs?p|cucharadas?|cdas?',
  },
  {
    unit: 'tsp',
    words: 'tsps?|teasp?|tea ?spoon(?:s|fuls?|sful)?|tspn|cucharaditas?|cdtas?|cditas?',
  },
  { unit: 'tbsp', words: 'Tb?s?', isExact: true },
  { unit: 'tsp', words: 't', isExact: true },
  { unit: 'teacup', words: 'tea ?cup(?:s|fuls?)?' },
  { unit: 'coffee-cup', words: 'coffee ?cup(?:s|fuls?)?' },
  { unit: 'wineglass', words: 'wine ?glass(?:es|fuls?)?' },
  { unit: 'tumbler', words: 'tumbler(?:s|fuls?)?' },
  { unit: 'cup', words: 'cup(?:s|fuls?)?|c|tazas?' },
  { unit: 'pint', words: 'pints?|pts?' },
  { unit: 'quart', words: 'quarts?|qts?' },
  { unit: 'gallon', words: 'gallons?|gals?' },
  { unit: 'gill', words: 'gills?' },
  { unit: 'oz', words: 'ounces?|ozs?' },
  { unit: 'lb', words: 'pounds?|lbs?|#' },
  { unit: 'kg', words: 'kilograms?|kilogrammes?|kilos?|kgs?' },
  { unit: 'mg', words: 'milligrams?|mg' },
  { unit: 'g', words: 'grams?|grammes?|gramos?|grms?|gms?|gr|g' },
  { unit: 'ml', words: 'millilit(?:re|er)s?|mls?|cc' },
  { unit: 'cl', words: 'centilit(?:re|er)s?|cls?' },
  { unit: 'dl', words: 'decilit(?:re|er)s?|dls?' },
  { unit: 'l', words: 'lit(?:re|er)s?|litros?|ltrs?|l' },
  { unit: 'pinch', words: 'pinch(?:es)?|pizcas?' },
  { unit: 'dash', words: 'dash(?:es)?' },
  { unit: 'smidgen', words: 'smidg(?:en|eon|in)s?' },
  { unit: 'stick', words: 'sticks?' },
  { unit: 'pat', words: 'pats?' },
  { unit: 'cake', words: 'cakes?(?= (?:of |fresh |compressed )?yeast)' },
  { unit: 'envelope', words: 'envelopes?' },
  { unit: 'packet', words: 'packets?|sachets?|sobres?|pkts?|envelopes?|envs?' },
  { unit: 'package', words: 'packages?|packs?|pkgs?|pks?' },
  { unit: 'can', words: 'cans?|tins?|latas?' },
  { unit: 'jar', words: 'jars?' },
  { unit: 'bag', words: 'bags?' },
  { unit: 'box', words: 'box(?:es)?' },
  { unit: 'bottle', words: 'bottles?' },
  { unit: 'carton', words: 'cartons?|tubs?|containers?' },
  { unit: 'clove', words: 'cloves?(?! powder|,? ground)|dientes?' },
  { unit: 'slice', words: 'slices?|rashers?|strips?|rebanadas?' },
  { unit: 'stalk', words: 'stalks?|ribs?|stems?' },
  { unit: 'head', words: 'heads?' },
  { unit: 'link', words: 'links?' },
  { unit: 'leaf', words: 'leaf|leaves' },
  { unit: 'wedge', words: 'wedges?' },
  { unit: 'fruit', words: 'fruits?(?= of)' },
  { unit: 'bunch', words: 'bunch(?:es)?' },
  { unit: 'sprig', words: 'sprigs?' },
  { unit: 'handful', words: 'handfuls?' },
  { unit: 'knob', words: 'knobs?|lumps?|nuts?(?= of butter)' },
  { unit: 'splash', words: 'splash(?:es)?|glugs?|drizzles?|squeezes?|drops?' },
  { unit: 'spoon', words: 'spoon(?:s|fuls?|sful)?' },
  { unit: 'scoop', words: 'scoops?|ladles?' },
  { unit: 'each', words: 'each|pieces?|pcs?|whole(?= )' },
] as const satisfies readonly UnitRow[];

export type WrittenUnit = (typeof ROWS)[number]['unit'];

const PATTERNS = ROWS.map(
  (row) =>
    [
      new RegExp(`(?:${row.words})(?![\\p{L}\\d])\\.?`, 'isExact' in row ? 'uy' : 'iuy'),
      row.unit,
    ] as const,
);

export interface UnitFound {
  readonly unit: WrittenUnit;
  readonly to: number;
}

/** The measure whose name begins at this place; a unit never runs on into a word. */
export function unitAt(text: string, at: number): UnitFound | undefined {
  for (const [pattern, unit] of PATTERNS) {
    const found = matchAt(pattern, text, at);
    if (found) return { unit, to: at + found[0].length };
  }
  return undefined;
}

/** What a unit is worth in a kitchen of this manner. */
export function sizeOfWritten(unit: WrittenUnit, manner: Manner): WrittenSize {
  const mass = MASS[unit as keyof typeof MASS];
  if (mass !== undefined) return { kind: 'mass', each: mass };
  const [each, least = 1, most = 1] = volumeOf(unit, manner) ?? [];
  if (each !== undefined) return { kind: 'volume', each, least, most };
  return { kind: LOOSE.has(unit) ? 'loose' : 'piece' };
}

/** The other size that people mean by the same word, over the one that was taken. */
export function otherSize(unit: WrittenUnit, manner: Manner): number | undefined {
  if (!(unit in IMPERIAL)) return undefined;
  const [taken] = volumeOf(unit, manner)!;
  const [other] = volumeOf(unit, manner === 'us' ? 'british' : 'us')!;
  return other / taken;
}

const LOOSE: ReadonlySet<WrittenUnit> = new Set([
  'bunch',
  'sprig',
  'handful',
  'knob',
  'splash',
  'scoop',
]);

const MASS = {
  g: fromUnit(1, 'gram'),
  kg: fromUnit(1, 'kilogram'),
  mg: fromUnit(1, 'milligram'),
  oz: fromUnit(1, 'ounce'),
  lb: fromUnit(1, 'pound'),
} as const;

type Volume = readonly [each: CubicMetres, least?: number, most?: number];

const TEASPOON = fromUnit(1, 'us-teaspoon');
const share = (of: number, part: number) => (of * part) as CubicMetres;

const METRIC: Readonly<Partial<Record<WrittenUnit, Volume>>> = {
  ml: [fromUnit(1, 'millilitre')],
  cl: [fromUnit(10, 'millilitre')],
  dl: [fromUnit(1, 'decilitre')],
  l: [fromUnit(1, 'litre')],
};

const US: Readonly<Partial<Record<WrittenUnit, Volume>>> = {
  tsp: [TEASPOON],
  tbsp: [fromUnit(1, 'us-tablespoon')],
  cup: [fromUnit(1, 'us-cup')],
  'fl-oz': [fromUnit(1, 'us-fluid-ounce')],
  pint: [fromUnit(1, 'us-pint')],
  quart: [fromUnit(1, 'us-quart')],
  gallon: [fromUnit(1, 'us-gallon')],
  gill: [fromUnit(4, 'us-fluid-ounce')],
};

const IMPERIAL: Readonly<Partial<Record<WrittenUnit, Volume>>> = {
  'fl-oz': [fromUnit(1, 'imperial-fluid-ounce')],
  pint: [fromUnit(1, 'imperial-pint')],
  quart: [fromUnit(1, 'imperial-quart')],
  gallon: [fromUnit(1, 'imperial-gallon')],
  gill: [fromUnit(5, 'imperial-fluid-ounce')],
};

/** Metric spoons of 5 and 15 ml and the metric cup of 250 ml: common practice, no source. */
const METRIC_SPOONS: Readonly<Partial<Record<WrittenUnit, Volume>>> = {
  tsp: [fromUnit(5, 'millilitre')],
  tbsp: [fromUnit(15, 'millilitre')],
  cup: [fromUnit(250, 'millilitre'), 0.94, 1.14],
};

/** Common practice, no source: what old books and grandmothers meant, and how widely. */
const OLD: Readonly<Partial<Record<WrittenUnit, Volume>>> = {
  pinch: [share(TEASPOON, 1 / 16), 0.5, 2],
  dash: [share(TEASPOON, 1 / 8), 0.5, 1.5],
  smidgen: [share(TEASPOON, 1 / 32), 0.5, 2],
  saltspoon: [share(TEASPOON, 1 / 4), 0.8, 1.3],
  spoon: [share(TEASPOON, 2), 0.5, 1.5], // a teaspoon to a tablespoon
  dessertspoon: [fromUnit(10, 'millilitre'), 0.9, 1.2],
  teacup: [fromUnit(150, 'millilitre'), 0.8, 1.2],
  'coffee-cup': [fromUnit(120, 'millilitre'), 0.8, 1.3],
  wineglass: [fromUnit(65, 'millilitre'), 0.85, 1.2],
  tumbler: [fromUnit(240, 'millilitre'), 0.85, 1.2],
};

function volumeOf(unit: WrittenUnit, manner: Manner): Volume | undefined {
  const own = manner === 'us' ? US : { ...US, ...IMPERIAL, ...METRIC_SPOONS };
  return METRIC[unit] ?? own[unit] ?? OLD[unit];
}
