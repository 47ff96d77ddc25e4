// A big feed that slips in the middle of a walking round. What is asserted is what a cook can do: the
// past stands, and nobody is sent to an oven before now.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clockMinutes,
  type DaySheet,
  type Job,
  planMeal,
  replan,
  type Slip,
  timetableRequestOf,
} from '#engine';
import { demoCamps } from './demo.ts';

const fair = demoCamps('2026-09-08').find(({ camp }) => camp.id === 'quillmoor-fair')!;
const plan = planMeal(fair.camp, fair.menu, { advice: 'later' });
const request = timetableRequestOf(plan);
const sheet = plan.daySheet;

const roundIds = [...new Set(sheet.jobs.flatMap(({ round }) => round ?? []))];
const rounds = roundIds
  .map((id) => sheet.jobs.filter(({ round }) => round === id).toSorted((a, b) => a.start - b.start))
  .filter((jobs) => jobs.length > 2 && jobs[0]!.hands.length > 0);

/** A round, the place in it where somebody stands now, and what slipped. */
const midRound = fc.constantFrom(...rounds).chain((jobs) =>
  fc.record({
    jobs: fc.constant(jobs),
    place: fc.integer({ min: 0, max: jobs.length - 2 }),
    slip: fc.oneof(
      fc.record({ kind: fc.constant('behind' as const), minutes: fc.integer({ min: 1, max: 20 }) }),
      fc.record({
        kind: fc.constant('guests-late' as const),
        minutes: fc.integer({ min: 5, max: 40 }),
      }),
      fc.record({
        kind: fc.constant('hand-gone' as const),
        hand: fc.constantFrom(...fair.camp.hands.map(({ id }) => id)),
      }),
      fc.record({
        kind: fc.constant('takes-longer' as const),
        job: fc.constantFrom(...jobs.map(({ id }) => id)),
        minutes: fc.integer({ min: 1, max: 15 }),
      }),
    ),
  }),
);

const isIn = (job: Job, after: ReadonlyMap<string, Job>) => {
  const is = after.get(job.id);
  return [job.id, is?.start, is?.end, is?.hands];
};

/** Done by the sheet and by what slipped; the hand that is gone has not done what still runs. */
function isSurelyDone(job: Job, slip: Slip, now: number): boolean {
  const behind = slip.kind === 'behind' ? slip.minutes : 0;
  const longer = slip.kind === 'takes-longer' && slip.job === job.id ? slip.minutes : 0;
  return job.end + longer <= now - behind;
}

function offersAt(jobs: readonly Job[], place: number, slips: readonly Slip[]) {
  const now = clockMinutes(jobs[place]!.start + 1);
  return { now, ...replan({ request, sheet, now, slips, decodes: 1 }) };
}

const roundOf = (offered: DaySheet, { id }: Job) =>
  offered.jobs.find((job) => job.id === id)?.round;

describe('a fair of 300 in the middle of a round', () => {
  it('never moves the past, and sends nobody anywhere before now', () => {
    fc.assert(
      fc.property(midRound, ({ jobs, place, slip }) => {
        const { now, offers } = offersAt(jobs, place, [slip]);
        expect(offers.length).toBeGreaterThan(0);
        for (const offer of offers) {
          const after = new Map(offer.sheet.jobs.map((job) => [job.id, job]));
          const done = sheet.jobs.filter(
            (job) => job.kind !== 'wash-hands' && isSurelyDone(job, slip, now),
          );
          expect(done.map((job) => isIn(job, after))).toEqual(
            done.map(({ id, start, end, hands }) => [id, start, end, hands]),
          );
          const begun = new Set(sheet.jobs.flatMap(({ id, start }) => (start < now ? [id] : [])));
          const early = offer.sheet.jobs.filter(({ id, start }) => start < now && !begun.has(id));
          expect(early.map(({ id }) => id)).toEqual([]);
        }
      }),
      { seed: 20261125, numRuns: 16 },
    );
  }, 120_000);

  it('says nothing new where nothing slipped', () => {
    for (const jobs of rounds.filter((_, at) => at % 12 === 0)) {
      const [offer] = offersAt(jobs, 1, []).offers;
      expect(offer!.how).toBe('shift');
      expect(offer!.moves).toEqual([]);
      expect(offer!.violations).toEqual([]);
    }
  }, 60_000);

  it('offers the rest of a round that falls behind as a round of its own, no sooner than now', () => {
    const turns = rounds.filter(([first]) => first!.kind === 'lay-coals');
    expect(turns.length).toBeGreaterThan(0);
    for (const jobs of turns.slice(0, 3)) {
      const { now, offers } = offersAt(jobs, 1, [{ kind: 'behind', minutes: 1 }]);
      const left = jobs.filter(({ start }) => start >= now);
      for (const { sheet: offered } of offers) {
        const starts = left.map(({ id }) => offered.jobs.find((job) => job.id === id)!.start);
        expect(Math.min(...starts)).toBeGreaterThanOrEqual(now);
        expect(roundOf(offered, left[0]!)).not.toBe(roundOf(offered, jobs[0]!));
        expect(new Set(left.map((job) => roundOf(offered, job))).size).toBe(1);
      }
    }
  }, 60_000);
});
