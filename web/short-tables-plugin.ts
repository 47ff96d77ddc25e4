// The engine's tables, shorter on their way to the browser: what only whoever reads a table asks for
// stays in the sources (where it comes from, columns that no formula uses), and the packed rounds,
// whose unit is the radius of one round, come with three decimals for nine. No roll lies a
// twentieth of a millimetre elsewhere.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
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

/** A table as a module of our own making: no other plugin takes it for JSON. */
const MODULE = '\0short-table:';

export function shortTablesPlugin(): Plugin {
  return {
    name: 'short-tables',
    enforce: 'pre',
    resolveId(source, importer) {
      const [, name] = /\/data\/([a-z-]+\.json)$/.exec(source) ?? [];
      const isOurs = importer?.includes('/engine/src/') ?? false;
      return name !== undefined && isOurs ? MODULE + name.replace('.json', '') : null;
    },
    load(id) {
      if (!id.startsWith(MODULE)) return null;
      const name = `${id.slice(MODULE.length)}.json`;
      return { code: moduleOf(name, readFileSync(join(DATA, name), 'utf8')), moduleType: 'js' };
    },
  };
}

const DATA = fileURLToPath(new URL('../engine/data', import.meta.url));

function moduleOf(name: string, text: string): string {
  const short = (key: string, value: unknown) => {
    if (HEADS.has(key) || UNUSED[name]?.has(key)) return undefined;
    return name === 'circle-packing.json' ? shortPlaces(key, value) : value;
  };
  const table = JSON.parse(JSON.stringify(JSON.parse(text), short)) as Table;
  if (!AS_COLUMNS.has(name)) return `export default ${JSON.stringify(table)}`;
  return `${UNFOLD}export default unfold(${JSON.stringify(foldedRows(table))})`;
}

interface Table {
  readonly rows: readonly Readonly<Record<string, unknown>>[];
}

/** Long tables go column by column, which packs a fifth shorter, and are rows again once loaded. */
const AS_COLUMNS: ReadonlySet<string> = new Set(['larder.json', 'larder-more.json']);

function foldedRows(table: Table) {
  const keys = [...new Set(table.rows.flatMap((row) => Object.keys(row)))];
  const columns = keys.map((key) => table.rows.map((row) => row[key] ?? null));
  return { ...table, rows: undefined, keys, columns };
}

/** What is empty in a row stays out of it, as in the table itself. */
const UNFOLD = `const unfold = ({ keys, columns, ...rest }) => ({
  ...rest,
  rows: columns[0].map((_, row) => Object.fromEntries(
    keys.map((key, at) => [key, columns[at][row]]).filter(([, value]) => value !== null))),
});
`;

/** Places only: how many rounds fit is told by a ratio, and that keeps all its digits. */
const shortPlaces = (key: string, value: unknown) =>
  key === 'centres' && Array.isArray(value)
    ? value.map((place: readonly number[]) => place.map((at) => Number(at.toFixed(DECIMALS))))
    : value;
