// The instances in a folder, set by set, with what is known of each: optimum, best bounds, or that
// there is no plan.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Project } from '../../engine/src/solver/shortest.ts';
import { readSingleMode, readWithLags } from './read-project.ts';

export interface Instance {
  readonly name: string;
  readonly project: Project;
  /** Bounds of the shortest span; 'none' where no plan exists. */
  readonly known: { readonly least: number; readonly most: number } | 'none';
}

/** Sorted by name; undefined where the set is not in the folder. */
export function instancesOf(folder: string, set: string): readonly Instance[] | undefined {
  const path = join(folder, set);
  if (!existsSync(path)) return undefined;
  const known = knownIn(readFileSync(join(path, 'optimum.csv'), 'utf8'));
  return readdirSync(path)
    .filter((name) => /\.(?:sm|sch)$/i.test(name))
    .sort()
    .map((name) => {
      const text = readFileSync(join(path, name), 'utf8');
      const project = /\.sm$/i.test(name) ? readSingleMode(text) : readWithLags(text);
      const found = known.get(name);
      if (found === undefined) throw new Error(`optimum.csv knows nothing of ${name}`);
      return { name, project, known: found };
    });
}

function knownIn(table: string): ReadonlyMap<string, Instance['known']> {
  const rows = table.split(/\r?\n/).slice(1);
  return new Map(
    rows.flatMap((row): readonly [string, Instance['known']][] => {
      const [name, value] = row.split(',');
      if (name === undefined || value === undefined) return [];
      if (value === 'unsat') return [[name, 'none']];
      const [least, most = least] = value.split('..').map(Number);
      return [[name, { least: least!, most: most! }]];
    }),
  );
}
