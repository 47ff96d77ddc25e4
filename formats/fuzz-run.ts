// The long fuzz: `npx tsx formats/fuzz-run.ts 10000 [seed] [read | all]`. Feeds mutants of the demo camps to the
// reader and every survivor to the planner; stops at the first crash, hang, NaN or bare complaint.
// `read` leaves the planner out (seconds, not minutes); `all` goes on after a failure.

import { planMeal } from '#engine';
import { demoSources } from './demo.ts';
import { mutantOf } from './fuzz.ts';
import { faultOfRead, notFiniteIn } from './fuzz-judge.ts';
import { readCampFile } from './index.ts';

const count = Number(process.argv[2] ?? 10_000);
const firstSeed = Number(process.argv[3] ?? 1);
const wish = process.argv[4];
const LONGEST_READ_MILLISECONDS = 2000;
const LONGEST_PLAN_MILLISECONDS = 10_000;

const told = { mutants: 0, survivors: 0, plannedDishes: 0, refusedDishes: 0, slowestPlan: 0 };

for (let seed = firstSeed; seed < firstSeed + count; seed += 1) {
  const mutant = mutantOf(demoSources[seed % demoSources.length], seed);
  const fault = faultOfMutant(mutant.text);
  told.mutants += 1;
  if (fault === undefined) continue;
  console.error(`seed ${seed} (${mutant.done.join(', ')}): ${fault}`);
  process.exitCode = 1;
  if (wish !== 'all') break;
}
console.log(JSON.stringify(told));

function faultOfMutant(text: string): string | undefined {
  try {
    const readStart = workedMilliseconds();
    const read = readCampFile(text, { date: '2026-09-12' });
    const fault = faultOfRead(read);
    if (fault !== undefined) return fault;
    if (workedMilliseconds() - readStart > LONGEST_READ_MILLISECONDS) return 'read too slowly';
    if (!read.ok) return undefined;
    told.survivors += 1;
    return wish === 'read' ? undefined : faultOfPlan(read);
  } catch (error) {
    return `threw ${error instanceof Error ? error.stack : String(error)}`;
  }
}

function faultOfPlan(read: Extract<ReturnType<typeof readCampFile>, { ok: true }>) {
  const start = workedMilliseconds();
  const plan = planMeal(read.camp, read.menu, { assumed: read.assumed });
  const took = workedMilliseconds() - start;
  told.slowestPlan = Math.max(told.slowestPlan, Math.round(took));
  told.plannedDishes += plan.dishes.length;
  told.refusedDishes += plan.refusals.length;
  const odd = notFiniteIn(plan);
  if (odd !== undefined) return `not a number at ${odd}`;
  return took > LONGEST_PLAN_MILLISECONDS ? `planned for ${Math.round(took)} ms` : undefined;
}

/** Processor time, not the clock's: a busy machine is no hang. */
function workedMilliseconds(): number {
  return process.cpuUsage().user / 1000;
}
