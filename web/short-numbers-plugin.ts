// The table of packed rounds has nine decimals, its unit is the radius of one round. Sent to the
// browser with four, it is half as large, and no roll lies a hundredth of a millimetre elsewhere.

import type { Plugin } from 'vite';

const DECIMALS = 4;

export function shortNumbersPlugin(): Plugin {
  return {
    name: 'short-numbers',
    enforce: 'pre',
    transform(code, id) {
      if (!id.endsWith('/engine/data/circle-packing.json')) return null;
      const short = (_: string, value: unknown) =>
        typeof value === 'number' ? Number(value.toFixed(DECIMALS)) : value;
      return { code: JSON.stringify(JSON.parse(code), short), map: null };
    },
  };
}
