// Adds the service worker to the build: it is told every file of this version.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Plugin } from 'vite';

const entry = fileURLToPath(new URL('./src/offline/service-worker.ts', import.meta.url));

/** Fonts of scripts that our words never use stay on the server until a page asks for them. */
const isShell = (file: string) => !/-(cyrillic|greek|vietnamese|latin-ext)/.test(file);

export function shellPlugin(): Plugin {
  let folder = '';
  return {
    name: 'emberwright-shell',
    apply: 'build',
    configResolved: (config) => {
      folder = resolve(config.root, config.build.outDir);
    },
    closeBundle: async () => {
      const files = filesIn(folder).filter(isShell);
      await build({
        entryPoints: [entry],
        outfile: join(folder, 'service-worker.js'),
        bundle: true,
        minify: true,
        format: 'iife',
        define: {
          SHELL_FILES: JSON.stringify(files.map((file) => addressOf(folder, file))),
          SHELL_VERSION: JSON.stringify(versionOf(folder, files)),
        },
      });
    },
  };
}

function filesIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name !== 'service-worker.js')
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** The page itself stands at the root. */
function addressOf(folder: string, file: string): string {
  const path = relative(folder, file).split(sep).join('/');
  return path === 'index.html' ? '/' : `/${path}`;
}

function versionOf(folder: string, files: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of files) hash.update(addressOf(folder, file)).update(readFileSync(file));
  return hash.digest('hex').slice(0, 12);
}
