// The engine's tables, shorter on their way to the browser: the heads that say where they come from
// stay in the sources, and the packed rounds, whose unit is the radius of one round, come with four
// decimals for nine. No roll lies a hundredth of a millimetre elsewhere.

import type { Plugin } from 'vite';

const DECIMALS = 4;

/** Where a row comes from, for whoever reads the table: nothing in the engine asks for it. */
const HEADS: ReadonlySet<string> = new Set([
  'title',
  'columns',
  'obtained',
  'description',
  'derived',
  'basis',
]);

export function shortTablesPlugin(): Plugin {
  return {
    name: 'short-tables',
    enforce: 'pre',
    transform(code, id) {
      if (!/\/engine\/data\/[a-z-]+\.json$/.test(id)) return null;
      const isRounds = id.endsWith('/circle-packing.json');
      const short = (key: string, value: unknown) => {
        if (HEADS.has(key)) return undefined;
        return isRounds && typeof value === 'number' ? Number(value.toFixed(DECIMALS)) : value;
      };
      return { code: JSON.stringify(JSON.parse(code), short), map: null };
    },
  };
}
