// How late may a job slip? Held against a forward pass of its own: everything that is pushed along by
// the slip, in the order of the sheet; time in hand may be used up. Meals are hand-made; minutes are common practice, no source.

import { describe, expect, it } from 'vitest';
import { harrowSaddle, pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { type Attempt, tryEasing } from './attempt.ts';
import { linksOf } from './sequence.ts';
import { firmProblem } from './work.ts';

/** Starts of all tasks when one of them begins at this minute and pushes what comes after it. */
function pushed({ day, found }: Attempt, wish: { task: number; to: number }) {
  const links = linksOf(firmProblem(day), found.plan);
  const starts = found.plan.starts.map((start) => start ?? Number.NaN);
  starts[wish.task] = wish.to;
  for (let round = 0; round < starts.length; round += 1) {
    for (const { from, to, least } of links) {
      if (starts[from]! + least > starts[to]!) starts[to] = starts[from]! + least;
    }
  }
  return starts;
}

describe('the latest start of a job', () => {
  it('makes no serving later, whatever it pushes along', () => {
    for (const request of [pilcrowCreek(), harrowSaddle()]) {
      const tried = tryEasing(request, {});
      const { day, found, laid } = tried;
      const idOf = new Map(day.problem.tasks.map(({ id }, index) => [id, index]));
      const served = day.dishes.map((dish) => dish.served);
      for (const job of laid.jobs) {
        const task = idOf.get(job.id);
        if (task === undefined || job.latestStart === job.start || job.dish === undefined) continue;
        if (found.plan.starts[task] !== job.start) continue;
        const starts = pushed(tried, { task, to: job.latestStart });
        for (const each of served) {
          expect([job.id, starts[each]]).toEqual([job.id, found.plan.starts[each]]);
        }
      }
    }
  }, 60_000);

  it('is the last: one bread out at 12:00 that may not wait pushes supper with its next minute', () => {
    const request = pilcrowCreek();
    const tried = tryEasing(request, {});
    const { day, found, laid } = tried;
    const cooks = day.dishes.flatMap(({ loads }) => loads.map((load) => load.takeOut));
    for (const task of cooks) {
      const job = laid.jobs.find(({ id }) => id === day.problem.tasks[task]!.id)!;
      const starts = pushed(tried, { task, to: job.latestStart + 1 });
      const late = day.dishes.filter(({ served }) => starts[served]! > found.plan.starts[served]!);
      expect(late.length).toBeGreaterThan(0);
    }
  });
});

describe('why a job stands where it stands', () => {
  it.each([pilcrowCreek(), harrowSaddle()])(
    'is other work of its hands only where that follows at once',
    (request) => {
      const { day, laid } = tryEasing(request, {});
      const ends = new Map(request.camp.hands.map(({ id, to }) => [id, to]));
      expect(day.problem.tasks.length).toBeGreaterThan(20);
      for (const job of laid.jobs.filter(({ because }) => because.kind === 'hand')) {
        const by = job.because.by!;
        const follows = laid.jobs.some(
          (next) => next.hands.includes(by) && next.id !== job.id && next.start === job.end,
        );
        expect([job.id, follows || job.end >= ends.get(by)!]).toEqual([job.id, true]);
      }
      const turns = laid.jobs.filter(({ kind }) => kind === 'turn' || kind === 'check');
      expect(turns.length).toBeGreaterThan(2);
      for (const { because } of turns) expect(because.kind).not.toBe('hand');
    },
  );
});
