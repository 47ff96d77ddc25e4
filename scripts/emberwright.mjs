#!/usr/bin/env node
// The command line: `npm run emberwright -- plan camp.json`, or `npx emberwright` inside the clone.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ensureInstalled, ensureNode, root } from './ensure.mjs';

ensureNode();
await ensureInstalled();
const { build } = await import('./build.mjs');
await build(['cli'], { quiet: true });
// npm changes into the project's folder; the cook's files are where the cook called from.
const from = process.env.INIT_CWD ?? process.cwd();
const result = spawnSync(
  process.execPath,
  [join(root, 'dist/emberwright.mjs'), ...process.argv.slice(2)],
  {
    cwd: from,
    stdio: 'inherit',
  },
);
process.exitCode = result.status ?? 70;
