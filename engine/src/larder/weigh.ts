// What does a written amount of a food weigh, from how little to how much? A scale's weight stands;
// a cup carries the doubt of its filling, a heaped spoon its heap, a range both of its ends.
// Sources: sr28 WEIGHT for measures, pieces and packets; herr41 beside it for the doubt of a cup.

import doubts from '../../data/larder-doubt.json' with { type: 'json' };
import portions from '../../data/larder-portions.json' with { type: 'json' };
import { fromUnit } from '../quantity/convert.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import {
  type AmountTerm,
  type Fullness,
  fullness,
  type WrittenAmount,
} from '../quantity/written-amount.ts';
import { type Manner, sizeOfWritten, type WrittenSize } from '../quantity/written-unit.ts';
import type { Food, Measure } from './food.ts';
import type { FoodForm, FormsFound } from './form.ts';

/** How it was come by: a scale, a cup or spoon, pieces of the table, a packet that says its weight. */
export type WeighedHow = 'scale' | 'measure' | 'pieces' | 'pack';

export interface WeighedAmount {
  /** Least and most that is meant: the ends of a range, with the doubt of measuring. */
  readonly low: Grams;
  readonly high: Grams;
  /** What is reckoned with: the middle of what was written. */
  readonly likely: Grams;
  readonly how: WeighedHow;
  /** Share of the weight either way that measuring alone adds. */
  readonly doubt: number;
}

export interface WeighOptions {
  readonly manner: Manner;
  readonly forms?: Pick<FormsFound, 'measured' | 'after' | 'size'>;
}

/**
 * Grams of an amount of a food.
 *
 * @returns  undefined where the food is not measured so, or the amount is a handful or a splash
 * @example  2 cups of all-purpose flour → 225 … 275 g, likely 250 g
 */
export function weighAmount(
  amount: WrittenAmount,
  food: Food | undefined,
  options: WeighOptions,
): WeighedAmount | undefined {
  const scale = [amount.terms, amount.same].find(
    (terms) => 0 < terms.length && terms.every((term) => isMass(term, options.manner)),
  );
  const terms = scale ?? amount.terms;
  const weighed = terms.map((term) => weighTerm(term, food, { ...options, pack: amount.pack }));
  return weighed.reduce<WeighedAmount | undefined>(
    (sum, each, index) => (index === 0 ? each : together(sum, each)),
    undefined,
  );
}

const isMass = ({ unit }: AmountTerm, manner: Manner) =>
  sizeOfWritten(unit, manner).kind === 'mass';

function together(one: WeighedAmount | undefined, other: WeighedAmount | undefined) {
  if (one === undefined || other === undefined) return undefined;
  return {
    low: grams(one.low + other.low),
    high: grams(one.high + other.high),
    likely: grams(one.likely + other.likely),
    how: one.how,
    doubt: Math.max(one.doubt, other.doubt),
  };
}

interface TermOptions extends WeighOptions {
  readonly pack: AmountTerm | undefined;
}

function weighTerm(term: AmountTerm, food: Food | undefined, options: TermOptions) {
  const one = weightOfOne(term, food, options);
  if (one === undefined || !(0 < one.each) || !Number.isFinite(one.each)) return undefined;
  const [scant, full] = fullOf(term);
  const least = one.each * scant * (one.least ?? 1);
  const most = one.each * full * (one.most ?? 1);
  return {
    low: grams(term.low * least * (1 - one.doubt)),
    high: grams(term.high * most * (1 + one.doubt)),
    likely: grams((((term.low + term.high) / 2) * one.each * (scant + full)) / 2),
    how: one.how,
    doubt: one.doubt,
  };
}

/** A cup holds its heap on a small top: a heaped one is less above level than a spoon. Ours. */
const HEAPED_CUP: Readonly<Partial<Record<Fullness, readonly [number, number]>>> = {
  rounded: [1.05, 1.15],
  heaped: [1.1, 1.3],
};

const fullOf = ({ full = 'level', unit }: AmountTerm) =>
  (unit === 'cup' ? HEAPED_CUP[full] : undefined) ?? fullness[full];

interface OneWeight {
  readonly each: number;
  readonly how: WeighedHow;
  readonly doubt: number;
  readonly least?: number;
  readonly most?: number;
}

function weightOfOne(
  term: AmountTerm,
  food: Food | undefined,
  options: TermOptions,
): OneWeight | undefined {
  const size = sizeOfWritten(term.unit, options.manner);
  if (size.kind === 'mass') return { each: size.each, how: 'scale', doubt: 0 };
  if (size.kind === 'loose') return undefined;
  if (size.kind === 'piece') return pieceWeight(term, food, options);
  return food === undefined ? undefined : spoonWeight(term, food, size, options);
}

// --- Cups and spoons --------------------------------------------------------------------------------

type VolumeSize = Extract<WrittenSize, { kind: 'volume' }>;

const SPOON_SIZE = {
  cup: fromUnit(1, 'us-cup'),
  tbsp: fromUnit(1, 'us-tablespoon'),
  tsp: fromUnit(1, 'us-teaspoon'),
} as const satisfies Readonly<Partial<Record<Measure, number>>>;

type Spoon = keyof typeof SPOON_SIZE;

/** A cup by the cup, a spoon by the spoon; any other volume by the measure it comes nearest. */
function measuresFor({ unit, low }: AmountTerm, each: number): readonly Spoon[] {
  if (unit === 'cup') return ['cup', 'tbsp', 'tsp'];
  if (unit === 'tbsp') return ['tbsp', 'tsp', 'cup'];
  const volume = unit === 'tsp' ? each : low * each;
  if (volume <= SPOON_SIZE.tsp * 1.1) return ['tsp', 'tbsp', 'cup'];
  return volume <= SPOON_SIZE.tbsp * 2 ? ['tbsp', 'tsp', 'cup'] : ['cup', 'tbsp', 'tsp'];
}

function spoonWeight(
  term: AmountTerm,
  food: Food,
  size: VolumeSize,
  { forms }: WeighOptions,
): OneWeight | undefined {
  for (const measure of measuresFor(term, size.each)) {
    const own = measuredAs(food, measure, formsThatCount(food, forms)) ?? food.measures[measure];
    if (own === undefined) continue;
    const each = (own * size.each) / SPOON_SIZE[measure];
    return {
      each: isSame(size.each, SPOON_SIZE[measure]) ? own : each,
      how: 'measure',
      doubt: term.unit === 'ml' ? Math.min(0.05, doubtOf(food)) : doubtOf(food),
      least: size.least,
      most: size.most,
    };
  }
  return undefined;
}

const isSame = (one: number, other: number) => Math.abs(one / other - 1) < 1e-9;

/** Cut food is measured cut, wherever the word stands: nobody packs whole onions into a cup. */
const CUT: ReadonlySet<FoodForm> = new Set(['chopped', 'diced', 'sliced', 'shredded', 'mashed']);
const WHOLE_PARTS: ReadonlySet<Food['part']> = new Set(['vegetable', 'fruit', 'cheese']);
/** Told behind a comma all the same: "brown sugar, packed". */
const FILLING: ReadonlySet<FoodForm> = new Set(['packed', 'loose', 'unsifted', 'spooned']);

function formsThatCount(food: Food, forms: WeighOptions['forms']): readonly FoodForm[] {
  if (forms === undefined) return [];
  const after = forms.after.filter(
    (form) => FILLING.has(form) || (CUT.has(form) && WHOLE_PARTS.has(food.part)),
  );
  return [...forms.measured, ...after];
}

function measuredAs(food: Food, measure: Measure, forms: readonly FoodForm[]): number | undefined {
  const row = portions.rows.find(
    (each) =>
      each.food === food.key &&
      each.per === measure &&
      each.form !== undefined &&
      (forms as readonly string[]).includes(each.form),
  );
  if (row !== undefined || measure !== 'tbsp') return row?.grams;
  const cup = measuredAs(food, 'cup', forms);
  return cup === undefined ? undefined : cup / 16; // sixteen to the cup, nist-sp430
}

const DOUBTS: ReadonlyMap<string, number> = new Map(
  doubts.rows.map(({ part, doubt }) => [part, doubt]),
);

/** Share of the weight by which a level cup or spoon of it may be off. */
export const doubtOf = ({ part }: Pick<Food, 'part'>): number => DOUBTS.get(part)!;

// --- Pieces and packets -----------------------------------------------------------------------------

/** A tin's solids over what is printed on it: 277 g of a 15-oz tin of beans, sr28 NDB 16146. */
const DRAINED_SHARE = 277 / 425;
const DRAINED_DOUBT = 0.1;
const PIECE_DOUBT = 0.2; // the next size up or down, sr28
const EGG_DOUBT = 0.12; // medium to extra large, sr28 NDB 01123
/** Sold by weight: a stick, a packet. */
const SOLD: ReadonlySet<AmountTerm['unit']> = new Set(['stick', 'packet', 'envelope', 'cake']);
const SOLD_DOUBT = 0.03;

function pieceDoubt({ part }: Food, { unit, size }: AmountTerm): number {
  if (SOLD.has(unit)) return SOLD_DOUBT;
  if (part === 'egg') return size === undefined ? EGG_DOUBT : EGG_DOUBT / 2;
  return PIECE_DOUBT;
}

function pieceWeight(
  term: AmountTerm,
  food: Food | undefined,
  { pack, forms, manner }: TermOptions,
): OneWeight | undefined {
  if (pack !== undefined) {
    const inside = weighTerm(pack, food, { manner, pack: undefined });
    if (inside === undefined) return undefined;
    const isDrained =
      forms !== undefined && [...forms.measured, ...forms.after].includes('drained');
    const isOpened = isDrained || /drained/.test(`${food?.key} ${food?.name}`);
    const share = isOpened && term.unit === 'can' ? DRAINED_SHARE : 1;
    return { each: inside.likely * share, how: 'pack', doubt: share === 1 ? 0.02 : DRAINED_DOUBT };
  }
  if (food === undefined) return undefined;
  const each = portionOf(food, term, forms?.size);
  return each === undefined ? undefined : { each, how: 'pieces', doubt: pieceDoubt(food, term) };
}

/** Words for a piece that the table keeps under another name. */
const OTHER_WORDS: Readonly<Record<string, readonly string[]>> = {
  each: ['each', 'leaf', 'stalk', 'head', 'clove', 'slice', 'link', 'fruit'],
  fruit: ['fruit', 'each'],
  stalk: ['stalk', 'each'],
  head: ['head', 'each'],
  slice: ['slice', 'each'],
  clove: ['clove', 'each'],
  link: ['link', 'each'],
  package: ['package', 'packet'],
  packet: ['packet', 'envelope', 'package'],
  envelope: ['envelope', 'packet'],
};

function portionOf(food: Food, term: AmountTerm, said: AmountTerm['size']): number | undefined {
  const size = term.size ?? said;
  const names = OTHER_WORDS[term.unit] ?? [term.unit];
  const rows = portions.rows.filter(
    ({ food: key, per }) => key === food.key && names.includes(per),
  );
  const own = rows.find(({ form }) => size !== undefined && form === size);
  if (own !== undefined) return own.grams;
  const plain = names.includes('each') && size === undefined ? food.measures.each : undefined;
  if (plain !== undefined) return plain;
  const usual = rows.find(({ form }) => form === undefined || form === 'medium') ?? rows[0];
  return usual?.grams ?? (names.includes('each') ? food.measures.each : undefined);
}
