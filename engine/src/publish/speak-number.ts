// How is a bare number written for a person? Fractions of an inch and a cup, commas in thousands.

import { inUnit } from '../quantity/convert.ts';
import type { CubicMetres } from '../quantity/unit.ts';

export const NO_BREAK = '\u00a0';
export const NOT_KNOWN = 'not known';

export const roundTo = (number: number, step: number) => {
  const rounded = Math.round(number / step) * step;
  return rounded === 0 ? 0 : rounded; // never "-0"
};

/** At most so many decimals, none that are zero. */
export function decimal(number: number, places: number): string {
  const text = roundTo(number, 10 ** -places).toFixed(places);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : thousandsText(text);
}

export const thousands = (whole: number) => thousandsText(String(Math.round(whole)));

const thousandsText = (digits: string) => digits.replace(/\B(?=(\d{3})+$)/g, ',');

/** `2 3/4`, in steps of one `parts`-th; above 20 whole. */
export function fraction(number: number, parts: number): string {
  if (number < 0) return `-${fraction(-number, parts)}`;
  if (number >= 20) return thousands(number);
  const steps = Math.round(number * parts);
  const whole = Math.floor(steps / parts);
  const rest = steps - whole * parts;
  if (rest === 0) return String(whole);
  const divisor = commonDivisor(rest, parts);
  const tail = `${rest / divisor}/${parts / divisor}`;
  return whole === 0 ? tail : `${whole}${NO_BREAK}${tail}`;
}

function commonDivisor(left: number, right: number): number {
  return right === 0 ? left : commonDivisor(right, left % right);
}

export function volumeUs(cubicMetres: number): string {
  const cups = inUnit(cubicMetres as CubicMetres, 'us-cup');
  if (cups < 0.24) return `${fraction(cups * 16, 2)}${NO_BREAK}tbsp`;
  if (cups < 4) return `${fraction(cups, 4)}${NO_BREAK}${cups > 1.1 ? 'cups' : 'cup'}`;
  if (cups < 32) return `${fraction(cups / 4, 4)}${NO_BREAK}qt`;
  return `${fraction(cups / 16, 2)}${NO_BREAK}gal`;
}

export function volumeMetric(cubicMetres: number): string {
  const millilitres = inUnit(cubicMetres as CubicMetres, 'millilitre');
  if (millilitres < 100) return `${roundTo(millilitres, 5)}${NO_BREAK}ml`;
  if (millilitres < 995) return `${roundTo(millilitres, 10)}${NO_BREAK}ml`;
  return `${decimal(millilitres / 1000, 1)}${NO_BREAK}l`;
}
