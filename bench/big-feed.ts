// A fair of 300 mouths, 24 ovens and 8 hands, planned whole: time, ratio to the 24-mouth camp, and the
// growth from half the mouths. Aim of the project: under 5 s, cost near linear in dishes times ovens.

import assert from 'node:assert/strict';
import type { Camp, MealPlan, Menu } from '#engine';
import { checkTimetable, planMeal, timetableRequestOf } from '#engine';
import { demoCamps } from '#formats';
import { milliseconds, timed } from './measure.ts';

const TODAY = '2026-09-08'; // any Tuesday; demo camps are dated relative to it
const MOST_MILLISECONDS = 5000;

export function bigFeedBench(): void {
  const fair = demoNamed('quillmoor-fair');
  const crew = demoNamed('harrow-saddle');
  const runs = { runs: 3, warmUp: 1, consume: assertWholePlan };
  const first = performance.now();
  assertWholePlan(planMeal(fair.camp, fair.menu));
  const cold = performance.now() - first;
  const whole = timed(() => planMeal(fair.camp, fair.menu), runs);
  const half = forHalf(fair);
  const halved = timed(() => planMeal(half.camp, half.menu), runs);
  const small = timed(() => planMeal(crew.camp, crew.menu), { ...runs, runs: 5 });

  const plan = planMeal(fair.camp, fair.menu);
  const loads = loadsIn(plan);
  const halfLoads = loadsIn(planMeal(half.camp, half.menu));
  process.stdout.write(
    `  300 mouths, 24 ovens, 8 hands: ${milliseconds(whole.medianMilliseconds)} (first time ${milliseconds(cold)}), ${loads} oven loads, ${plan.daySheet.jobs.length} jobs\n`,
  );
  process.stdout.write(
    `  150 mouths, ${halfLoads} oven loads: ${milliseconds(halved.medianMilliseconds)}; per load ${milliseconds(whole.medianMilliseconds / loads)} and ${milliseconds(halved.medianMilliseconds / halfLoads)}\n`,
  );
  process.stdout.write(
    `  ratio to the 24-mouth camp: ${(whole.medianMilliseconds / small.medianMilliseconds).toFixed(1)} (${milliseconds(small.medianMilliseconds)})\n`,
  );
  assert.ok(whole.medianMilliseconds < MOST_MILLISECONDS, 'planned whole in under 5 s');
}

interface Demo {
  readonly camp: Camp;
  readonly menu: Menu;
}

function demoNamed(id: string): Demo {
  const demo = demoCamps(TODAY).find((each) => each.camp.id === id);
  assert.ok(demo, `the demo camp ${id} is there`);
  return demo;
}

const forHalf = ({ camp, menu }: Demo): Demo => ({
  camp: {
    ...camp,
    mouths: camp.mouths.map((group) => ({ ...group, count: Math.round(group.count / 2) })),
  },
  menu,
});

const loadsIn = ({ dishes }: MealPlan): number =>
  dishes.reduce((sum, { loads }) => sum + loads.length, 0);

/** Every dish on time, the timetable through its independent checker. */
function assertWholePlan(plan: MealPlan): void {
  assert.equal(plan.dishes.length, plan.menu.dishes.length);
  assert.deepEqual(plan.refusals, []);
  assert.equal(plan.daySheet.status, 'planned');
  assert.deepEqual(checkTimetable(timetableRequestOf(plan), plan.daySheet), []);
}
