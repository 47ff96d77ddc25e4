// How does a cook write two and three quarters?

const SIGNS = {
  '⅛': 1 / 8,
  '¼': 1 / 4,
  '⅓': 1 / 3,
  '⅜': 3 / 8,
  '½': 1 / 2,
  '⅝': 5 / 8,
  '⅔': 2 / 3,
  '¾': 3 / 4,
  '⅞': 7 / 8,
} as const;

const MORE_SIGNS = {
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅒': 1 / 10,
} as const;

const PLAIN: Readonly<Record<string, string>> = {
  '⅛': '1/8',
  '¼': '1/4',
  '⅓': '1/3',
  '⅜': '3/8',
  '½': '1/2',
  '⅝': '5/8',
  '⅔': '2/3',
  '¾': '3/4',
  '⅞': '7/8',
};

/** Worth of every fraction sign that people type. */
export const fractionSigns: Readonly<Record<string, number>> = { ...SIGNS, ...MORE_SIGNS };

/**
 * A number to the nearest eighth or third, as cooks write it.
 *
 * @param style     `sign` for "2¾", `plain` for "2 3/4" where the reader's letters may lack signs
 * @example         2.75 → 2¾
 */
export function fractionText(amount: number, style: 'sign' | 'plain' = 'sign'): string {
  if (!Number.isFinite(amount)) throw new RangeError(`amount must be finite, got ${amount}`);
  if (amount < 0) return `-${fractionText(-amount, style)}`;
  const [whole, sign] = nearest(amount);
  if (sign === undefined) return String(whole);
  const part = style === 'sign' ? sign : PLAIN[sign]!;
  if (whole === 0) return part;
  return style === 'sign' ? `${whole}${part}` : `${whole} ${part}`;
}

/** Amounts past a dozen are not filled to the eighth. */
const WHOLE_ONLY_FROM = 20;

function nearest(amount: number): readonly [number, string | undefined] {
  if (WHOLE_ONLY_FROM <= amount) return [Math.round(amount), undefined];
  const floor = Math.floor(amount);
  let best: readonly [number, string | undefined] = [floor, undefined];
  let least = amount - floor;
  for (const [sign, worth] of Object.entries(SIGNS)) {
    const miss = Math.abs(amount - floor - worth);
    if (miss < least) [best, least] = [[floor, sign], miss];
  }
  return 1 - (amount - floor) < least ? [floor + 1, undefined] : best;
}
