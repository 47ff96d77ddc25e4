// The engine's tables, shorter on their way to the browser: what only whoever reads a table asks for
// stays in the sources (where it comes from, columns that no formula uses), and the packed rounds,
// whose unit is the radius of one round, come with three decimals for nine. No roll lies a
// twentieth of a millimetre elsewhere.

import type { Plugin } from 'vite';

const DECIMALS = 3;

/** Where a row comes from, for whoever reads the table: nothing in the engine asks for it. */
const HEADS: ReadonlySet<string> = new Set([
  'title',
  'columns',
  'obtained',
  'description',
  'derived',
  'basis',
]);

/** Columns of one table that no formula uses. */
const UNUSED: Readonly<Record<string, ReadonlySet<string>>> = {
  'larder.json': new Set(['carbohydrate', 'ash', 'fibre']),
  'larder-more.json': new Set(['carbohydrate', 'ash', 'fibre']),
  'circle-packing.json': new Set(['status']),
};

export function shortTablesPlugin(): Plugin {
  return {
    name: 'short-tables',
    enforce: 'pre',
    transform(code, id) {
      const [, name] = /\/engine\/data\/([a-z-]+\.json)$/.exec(id) ?? [];
      if (name === undefined) return null;
      const short = (key: string, value: unknown) => {
        if (HEADS.has(key) || UNUSED[name]?.has(key)) return undefined;
        return name === 'circle-packing.json' ? shortPlaces(key, value) : value;
      };
      return { code: JSON.stringify(JSON.parse(code), short), map: null };
    },
  };
}

/** Places only: how many rounds fit is told by a ratio, and that keeps all its digits. */
const shortPlaces = (key: string, value: unknown) =>
  key === 'centres' && Array.isArray(value)
    ? value.map((place: readonly number[]) => place.map((at) => Number(at.toFixed(DECIMALS))))
    : value;
