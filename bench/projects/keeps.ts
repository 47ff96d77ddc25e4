// Does this schedule keep every lag and every capacity? Counted minute by minute from the instance,
// with nothing of the solver's in it.
import assert from 'node:assert/strict';
import type { Project } from '../../engine/src/solver/shortest.ts';

export function assertKept(project: Project, starts: ArrayLike<number>, span: number): void {
  for (const { from, to, least } of project.arcs) {
    assert.ok(starts[to]! - starts[from]! >= least, `a lag of ${least} from ${from} to ${to}`);
  }
  project.capacities.forEach((capacity, pool) => {
    for (let minute = 0; minute < span; minute += 1) {
      let used = 0;
      project.minutes.forEach((minutes, task) => {
        if (minute < starts[task]! || starts[task]! + minutes <= minute) return;
        for (const take of project.takes[task]!) if (take.pool === pool) used += take.amount;
      });
      assert.ok(used <= capacity, `pool ${pool} at ${minute}: ${used} of ${capacity}`);
    }
  });
  const ends = project.minutes.map((minutes, task) => starts[task]! + minutes);
  assert.ok(Math.min(...Array.from(starts)) >= 0, 'nothing before the beginning');
  assert.equal(Math.max(...ends), span, 'as long as it says');
}
