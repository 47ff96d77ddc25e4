// Public project instances with known answers: how far from the best is the search that plans meals?
// Each pass backwards or forwards counts as one schedule; mean of ten seeds. The samples are not the
// full sets: their figures can't be put beside published ones. The search was tuned on the samples
// with other seeds, so the seeds here are fresh and the instances are not.
import assert from 'node:assert/strict';
import { searchShortest } from '../engine/src/solver/shortest.ts';
import { assertKept } from './projects/keeps.ts';
import { type Instance, instancesOf } from './projects/sets.ts';

const say = (text: string) => process.stdout.write(`  ${text}\n`);

const HOW =
  'NOT RUN: no folder of instances given. They are not part of this package. Name a folder in the\n' +
  '  variable PROJECTS (or PROJECTS=… npm run bench projects) that has j30, j60, maxj30 and ubo20 in\n' +
  '  it, each with its instance files (.sm or .sch) and an optimum.csv of name,optimum. The sets are\n' +
  '  the single-mode ones of PSPLIB (Kolisch and Sprecher 1997) and RCPSP/max of ProGen/max; public\n' +
  '  repositories of scheduling benchmarks keep both with their best known values.';

/** Aims of the project: mean deviation in per cent, on the first instance of each setting. */
const AIMS = [
  { set: 'j30', passes: 5_000, percent: 0.1 },
  { set: 'j30', passes: 50_000, percent: 0.03 },
  { set: 'j60', passes: 5_000, percent: undefined },
  { set: 'j60', passes: 50_000, percent: 0.3 },
];
const FIRST_SEED = 101;

export function projectsBench(): void {
  const folder = process.env.PROJECTS;
  if (folder === undefined || folder === '') {
    say(HOW);
    return;
  }
  const seeds = Number(process.env.PROJECTS_SEEDS ?? 10);
  for (const aim of AIMS) singleMode(folder, aim, seeds);
  for (const set of ['ubo20', 'maxj30']) withLags(folder, set);
}

function singleMode(folder: string, aim: (typeof AIMS)[number], seeds: number): void {
  const instances = instancesOf(folder, aim.set);
  if (instances === undefined) {
    say(`${aim.set}: NOT RUN, not in the folder`);
    return;
  }
  const since = performance.now();
  let passes = 0;
  const means = instances.map(({ project, known, name }) => {
    assert.ok(known !== 'none', `${name} has a plan`);
    let deviation = 0;
    for (let seed = FIRST_SEED; seed < FIRST_SEED + seeds; seed += 1) {
      const found = searchShortest(project, { seed, passes: aim.passes, enough: known.least });
      assert.ok('starts' in found, `${name} is planned`);
      assertKept(project, found.starts, found.span);
      assert.ok(found.span >= known.least, `${name} is not shorter than can be`);
      deviation += (100 * (found.span / known.most - 1)) / seeds;
      passes += found.passes;
    }
    return deviation;
  });
  const mean = means.reduce((sum, each) => sum + each, 0) / means.length;
  const off = means.filter((each) => each > 0).length;
  const took = performance.now() - since;
  const goal = aim.percent === undefined ? 'no aim' : `aim ${aim.percent.toFixed(2)}`;
  const verdict = aim.percent === undefined ? '' : mean <= aim.percent ? ', met' : ', MISSED';
  say(
    `${aim.set} at ${aim.passes} schedules, ${seeds} seeds: ${mean.toFixed(3)} % from the best known ` +
      `(${goal}${verdict}); ${off} of ${instances.length} not always met; ` +
      `${((1000 * took) / passes).toFixed(0)} µs a schedule`,
  );
}

function withLags(folder: string, set: string): void {
  const instances = instancesOf(folder, set);
  if (instances === undefined) {
    say(`${set}: NOT RUN, not in the folder`);
    return;
  }
  const outcomes = instances.map(lagOutcome);
  const count = (outcome: string) => outcomes.filter((each) => each === outcome).length;
  say(
    `${set} at 5000 schedules: ${instances.length} instances; no plan exists, proven: ${count('proven none')} ` +
      `of ${count('proven none') + count('unproven none')}; planned: ${count('best')} at the best known or ` +
      `better, ${count('longer')} longer, ${count('missed')} not found`,
  );
  assert.equal(count('missed'), 0, 'a plan wherever one is known');
}

function lagOutcome({ name, project, known }: Instance): string {
  const found = searchShortest(project, { seed: FIRST_SEED, passes: 5_000 });
  if (known === 'none') {
    assert.ok(!('starts' in found), `${name} has no plan`);
    return found.status === 'impossible' ? 'proven none' : 'unproven none';
  }
  assert.notEqual(found.status, 'impossible', `${name} has a plan`);
  if (!('starts' in found)) return 'missed';
  assertKept(project, found.starts, found.span);
  assert.ok(found.span >= known.least, `${name} is not shorter than can be`);
  if (found.status === 'proven') assert.ok(found.span <= known.most, `${name} is proven`);
  if (found.span < known.most) say(`${name}: ${found.span}, best known ${known.most}`);
  return found.span <= known.most ? 'best' : 'longer';
}
