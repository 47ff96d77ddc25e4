// The long fuzz: `npx tsx formats/fuzz-run.ts 10000 [seed] [read | all]`. Feeds mutants of the demo camps to the
// reader and every survivor to the planner; stops at the first crash, hang, NaN or bare complaint.
// `read` leaves the planner out (seconds, not minutes); `all` goes on after a failure.

import { planMeal } from '#engine';
import { smallDemoSources } from './demo.ts';
import { mutantOf } from './fuzz.ts';
import { faultOfPlan, faultOfRead } from './fuzz-judge.ts';
import { type CampRead, readCampFile } from './index.ts';

const count = Number(process.argv[2] ?? 10_000);
const firstSeed = Number(process.argv[3] ?? 1);
const wish = process.argv[4];
const LONGEST_READ_MILLISECONDS = 2000;
const LONGEST_PLAN_MILLISECONDS = 10_000;

const told = {
  mutants: 0,
  survivors: 0,
  plannedDishes: 0,
  refusedDishes: 0,
  slowestPlan: 0,
  slowestSeed: 0,
};

for (let seed = firstSeed; seed < firstSeed + count; seed += 1) {
  const mutant = mutantOf(smallDemoSources[seed % smallDemoSources.length], seed);
  const fault = faultOfMutant(mutant.text, seed);
  told.mutants += 1;
  if (fault === undefined) continue;
  console.error(`seed ${seed} (${mutant.done.join(', ')}): ${fault}`);
  process.exitCode = 1;
  if (wish !== 'all') break;
}
console.log(JSON.stringify(told));

function faultOfMutant(text: string, seed: number): string | undefined {
  try {
    const readStart = workedMilliseconds();
    const read = readCampFile(text, { date: '2026-09-12' });
    const fault = faultOfRead(read);
    if (fault !== undefined) return fault;
    if (workedMilliseconds() - readStart > LONGEST_READ_MILLISECONDS) return 'read too slowly';
    if (!read.ok) return undefined;
    told.survivors += 1;
    return wish === 'read' ? undefined : planned(read, seed);
  } catch (error) {
    return `threw ${error instanceof Error ? error.stack : String(error)}`;
  }
}

function planned(read: CampRead, seed: number): string | undefined {
  const start = workedMilliseconds();
  const plan = planMeal(read.camp, read.menu, { assumed: read.assumed });
  const took = workedMilliseconds() - start;
  if (told.slowestPlan < took)
    Object.assign(told, { slowestPlan: Math.round(took), slowestSeed: seed });
  told.plannedDishes += plan.dishes.length;
  told.refusedDishes += plan.refusals.length;
  if (LONGEST_PLAN_MILLISECONDS < took) return `planned for ${Math.round(took)} ms`;
  return faultOfPlan(plan);
}

/** Processor time, not the clock's: a busy machine is no hang. */
function workedMilliseconds(): number {
  return process.cpuUsage().user / 1000;
}
