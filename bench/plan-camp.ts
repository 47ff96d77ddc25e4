// Planning the 24-mouth camp end to end: time, share per stage, and the ratio to the same camp for 4
// mouths. Aim of the project: under 300 ms on one core, cost per dish constant.
import assert from 'node:assert/strict';
import type { Camp, MealPlan, Menu, Stage } from '#engine';
import { checkTimetable, planMeal, timetableRequestOf } from '#engine';
import { demoCamps } from '#formats';
import { milliseconds, timed } from './measure.ts';

const TODAY = '2026-09-08'; // any Tuesday; demo camps are dated relative to it

export function planCampBench(): void {
  const demo = demoCamps(TODAY).find((each) => each.camp.id === 'harrow-saddle');
  assert.ok(demo, 'the 24-mouth demo camp is there');
  const { camp, menu } = demo;
  const shares = new Map<Stage, number>();
  const large = timed(() => plannedWithShares(camp, menu, shares), {
    runs: 15,
    warmUp: 5,
    consume: assertWholePlan,
  });
  const few = campForMouths(camp, 4);
  const small = timed(() => planMeal(few, menu), { runs: 15, warmUp: 3, consume: assertWholePlan });
  const dishes = menu.dishes.length;
  const half = { ...menu, dishes: menu.dishes.slice(0, Math.ceil(dishes / 2)) };
  const fewer = timed(() => planMeal(camp, half), {
    runs: 15,
    warmUp: 3,
    consume: (plan) => assert.ok(plan.dishes.length > 0),
  });

  process.stdout.write(
    `  24 mouths, ${dishes} dishes: ${milliseconds(large.medianMilliseconds)} (worst ${milliseconds(large.worstMilliseconds)})\n`,
  );
  const all = [...shares.values()].reduce((sum, each) => sum + each, 0);
  for (const [stage, spent] of shares)
    process.stdout.write(
      `    ${stage.padEnd(11)} ${((100 * spent) / all).toFixed(0).padStart(3)} %\n`,
    );
  process.stdout.write(
    `  4 mouths, same dishes: ${milliseconds(small.medianMilliseconds)}; ratio 24 to 4 mouths ${(large.medianMilliseconds / small.medianMilliseconds).toFixed(2)}\n`,
  );
  process.stdout.write(
    `  per dish: ${milliseconds(large.medianMilliseconds / dishes)} with ${dishes}, ${milliseconds(fewer.medianMilliseconds / half.dishes.length)} with ${half.dishes.length}\n`,
  );
}

function plannedWithShares(camp: Camp, menu: Menu, shares: Map<Stage, number>): MealPlan {
  let stage: Stage = 'camp';
  let since = performance.now();
  const book = (next: Stage) => {
    const now = performance.now();
    shares.set(stage, (shares.get(stage) ?? 0) + now - since);
    stage = next;
    since = now;
  };
  const plan = planMeal(camp, menu, { onStage: book });
  book('camp');
  return plan;
}

/** The same answer every time: all dishes planned, the timetable through its independent checker. */
function assertWholePlan(plan: MealPlan): void {
  assert.equal(plan.dishes.length, plan.menu.dishes.length);
  assert.equal(plan.daySheet.status, 'planned');
  assert.deepEqual(checkTimetable(timetableRequestOf(plan), plan.daySheet), []);
}

function campForMouths(camp: Camp, count: number): Camp {
  const first = camp.mouths[0];
  assert.ok(first, 'the camp has mouths');
  return { ...camp, mouths: [{ ...first, count }] };
}
