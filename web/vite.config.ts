// Builds the app into dist/web. Nothing is inlined: the server's policy takes no data: addresses.

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { shellPlugin } from './shell-plugin.ts';
import { shortTablesPlugin } from './short-tables-plugin.ts';

const here = fileURLToPath(new URL('.', import.meta.url));

/** Loading a module of the engine does nothing: what a screen does not use stays out of it. */
const ENGINE = /\/engine\/(?:src|data)\//;

export default defineConfig({
  root: here,
  plugins: [shellPlugin()],
  // No module of the engine does anything by being loaded: what only camps use is fetched with them.
  worker: {
    format: 'es',
    plugins: () => [shortTablesPlugin()],
    rolldownOptions: {
      treeshake: { moduleSideEffects: false },
      // All that the first card needs as one file: it packs shorter, and is asked for at once.
      output: { codeSplitting: { groups: [{ name: 'first', test: /worker\/answer\.ts$/ }] } },
    },
  },
  build: {
    outDir: fileURLToPath(new URL('../dist/web', import.meta.url)),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'es2023',
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => !ENGINE.test(id) } },
  },
  server: { port: 4611, proxy: { '/api': 'http://127.0.0.1:4600' } },
});
