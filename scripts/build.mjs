// Builds what is older than its sources: the web app, the server, the command line.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, ensureNode, root, runTool, say } from './ensure.mjs';

function newestIn(folder) {
  let newest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === 'node_modules' || entry.name.startsWith('.')) continue;
    const path = join(folder, entry.name);
    newest = Math.max(newest, entry.isDirectory() ? newestIn(path) : statSync(path).mtimeMs);
  }
  return newest;
}

const isOlder = (product, folders) =>
  !existsSync(join(root, product)) ||
  statSync(join(root, product)).mtimeMs <
    Math.max(...folders.map((name) => newestIn(join(root, name))));

const shared = ['engine', 'formats'];

/** Each product, the folders it is made of, and how. */
const products = {
  web: {
    file: 'dist/web/index.html',
    folders: ['web', ...shared],
    build: () =>
      runTool('vite/bin/vite.js', [
        'build',
        '--config',
        'web/vite.config.ts',
        '--logLevel',
        'warn',
      ]),
  },
  server: {
    file: 'dist/server.mjs',
    folders: ['server', ...shared],
    build: () => bundle('server/main.ts', 'dist/server.mjs'),
  },
  cli: {
    file: 'dist/emberwright.mjs',
    folders: ['cli', ...shared],
    build: () => bundle('cli/main.ts', 'dist/emberwright.mjs'),
  },
};

async function bundle(entry, outfile) {
  const esbuild = await import('esbuild');
  await esbuild.build({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    logLevel: 'warning',
  });
  return 0;
}

/** Builds the named products if they are missing or older than their sources. */
export async function build(names, options = { quiet: false }) {
  for (const name of names) {
    const product = products[name];
    if (!isOlder(product.file, product.folders)) continue;
    if (!options.quiet) say(`Building the ${name === 'cli' ? 'command line' : name} ...`);
    const code = await product.build();
    if (code !== 0) process.exit(code);
  }
}

if (process.argv[1]?.endsWith('build.mjs')) {
  ensureNode();
  await ensureInstalled();
  await build(Object.keys(products));
}
