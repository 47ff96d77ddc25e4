// The files of the repository that rules of the house speak of.

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface SourceFile {
  /** From the root, with forward slashes: `engine/src/camp/air.ts`. */
  readonly path: string;
  readonly text: string;
  readonly isTest: boolean;
}

export const root = fileURLToPath(new URL('../../..', import.meta.url));

const SKIPPED = new Set(['node_modules', 'dist', '.build', 'coverage']);

/** All TypeScript under the folders; a folder that is not there yet holds none. */
export function sourceFiles(...folders: readonly string[]): readonly SourceFile[] {
  return folders.flatMap((folder) => walk(join(root, folder))).map(asSourceFile);
}

function walk(place: string): readonly string[] {
  if (!statSync(place, { throwIfNoEntry: false })?.isDirectory()) return [];
  return readdirSync(place, { withFileTypes: true }).flatMap((entry) => {
    if (entry.name.startsWith('.')) return [];
    const path = join(place, entry.name);
    if (entry.isDirectory()) return SKIPPED.has(entry.name) ? [] : walk(path);
    return /\.tsx?$/.test(entry.name) && !entry.name.endsWith('.d.ts') ? [path] : [];
  });
}

function asSourceFile(place: string): SourceFile {
  const path = relative(root, place).split(sep).join('/');
  return { path, text: readFileSync(place, 'utf8'), isTest: /\.test\.tsx?$/.test(path) };
}

/** Everything a file imports or passes on, types too: as written. */
export function importsOf({ text }: SourceFile): readonly string[] {
  const statements =
    /^\s*(?:import|export)\b[^'";]*?\bfrom\s*'([^']+)'|^\s*import\s*'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/gm;
  return [...text.matchAll(statements)].map(([, from, bare, call]) => from ?? bare ?? call ?? '');
}

/** A relative import as a path from the root; undefined for a package or an alias. */
export function resolved(file: SourceFile, imported: string): string | undefined {
  if (!imported.startsWith('.')) return undefined;
  return posix.normalize(posix.join(dirname(file.path), imported));
}
