// `npm run bench [name]`: every benchmark asserts its answer and prints a ratio against something
// measured in the same run. Times depend on the machine; ratios travel better.

import { bakeLoafBench } from './bake-loaf.ts';
import { formulaEditBench } from './formula-edit.ts';
import { ovenRunBench } from './oven-run.ts';
import { planCampBench } from './plan-camp.ts';
import { platesBench } from './plates.ts';
import { settleBench } from './settle.ts';

const benches: Readonly<Record<string, () => void>> = {
  'formula-edit': formulaEditBench,
  'bake-loaf': bakeLoafBench,
  'oven-run': ovenRunBench,
  'plan-camp': planCampBench,
  plates: platesBench,
  settle: settleBench,
};

const wanted = process.argv[2];
for (const [name, bench] of Object.entries(benches)) {
  if (wanted !== undefined && wanted !== name) continue;
  process.stdout.write(`\n${name}\n`);
  bench();
}
