// `npm run bench [name]`: every benchmark asserts its answer and prints a ratio against something
// measured in the same run. Times depend on the machine; ratios travel better.

import { spawnSync } from 'node:child_process';
import { bakeLoafBench } from './bake-loaf.ts';
import { bigFeedBench } from './big-feed.ts';
import { formulaEditBench } from './formula-edit.ts';
import { mealsBench } from './meals.ts';
import { ovenRunBench } from './oven-run.ts';
import { planCampBench } from './plan-camp.ts';
import { platesBench } from './plates.ts';
import { projectsBench } from './projects.ts';
import { provisionsBench } from './provisions.ts';
import { settleBench } from './settle.ts';

const benches: Readonly<Record<string, () => void | Promise<void>>> = {
  'formula-edit': formulaEditBench,
  'bake-loaf': bakeLoafBench,
  meals: mealsBench,
  'oven-run': ovenRunBench,
  'plan-camp': planCampBench,
  'big-feed': bigFeedBench,
  plates: platesBench,
  projects: projectsBench,
  provisions: provisionsBench,
  settle: settleBench,
};

const wanted = process.argv[2];
const bench = wanted === undefined ? undefined : benches[wanted];
if (bench !== undefined) {
  process.stdout.write(`\n${wanted}\n`);
  await bench();
} else if (wanted === undefined) {
  // Each in a process of its own: what one has made the compiler expect would slow the next.
  for (const name of Object.keys(benches)) {
    const [script = ''] = process.argv.slice(1);
    const run = spawnSync(process.execPath, [...process.execArgv, script, name], {
      stdio: 'inherit',
    });
    if (run.status !== 0) process.exitCode = 1;
  }
} else {
  process.stderr.write(
    `${wanted}: no such benchmark; there are ${Object.keys(benches).join(', ')}\n`,
  );
  process.exitCode = 1;
}
