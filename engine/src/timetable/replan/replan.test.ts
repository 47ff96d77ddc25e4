// A slipped day planned again: the past never moves, pins stand or are asked about, every offer passes
// the checker. Meals are hand-made; minutes are common practice, no source.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as make from '../../../validation/timetable/build-meal.ts';
import { harrowSaddle, pilcrowCreek } from '../../../validation/timetable/demo-meals.ts';
import { clockMinutes } from '../../quantity/unit.ts';
import type { DaySheet, TimetableRequest } from '../day-sheet.ts';
import { planTimetable } from '../plan-timetable.ts';
import { replan } from './replan.ts';
import type { Slip } from './slip.ts';

const days: readonly { readonly request: TimetableRequest; readonly sheet: DaySheet }[] = [
  harrowSaddle(),
  pilcrowCreek(),
].map((request) => ({ request, sheet: planTimetable(request, { doubtRuns: 0 }) }));

const lastServed = (sheet: DaySheet) => Math.max(...sheet.servings.map(({ served }) => served));
const at = (sheet: DaySheet, share: number) => {
  const first = sheet.jobs[0]!.start;
  return clockMinutes(Math.round(first + share * (lastServed(sheet) - first)));
};

const slipDraw = (sheet: DaySheet): fc.Arbitrary<Slip> =>
  fc.oneof(
    fc.record({ kind: fc.constant('behind' as const), minutes: fc.integer({ min: 1, max: 30 }) }),
    fc.record({
      kind: fc.constant('guests-late' as const),
      minutes: fc.integer({ min: 5, max: 45 }),
    }),
    fc.record({
      kind: fc.constant('takes-longer' as const),
      minutes: fc.integer({ min: 1, max: 25 }),
      job: fc.constantFrom(...sheet.jobs.map(({ id }) => id)),
    }),
    fc.record({
      kind: fc.constant('chimney-failed' as const),
      lighting: fc.constantFrom(...sheet.lightings.map(({ id }) => id)),
    }),
    fc.record({
      kind: fc.constant('oven-dropped' as const),
      oven: fc.constantFrom(...sheet.spans.map(({ oven }) => oven)),
    }),
  );

describe('a day planned again', () => {
  it('never moves the past: what was done or has begun stands, and nothing new begins before now', () => {
    const asked = fc.constantFrom(...days).chain((day) =>
      fc.record({
        day: fc.constant(day),
        share: fc.double({ min: 0, max: 1, noNaN: true }),
        slips: fc.array(slipDraw(day.sheet), { minLength: 1, maxLength: 2 }),
      }),
    );
    fc.assert(
      fc.property(asked, ({ day: { request, sheet }, share, slips }) => {
        const now = at(sheet, share);
        const longest = slips.filter((slip) => slip.kind === 'behind').map((slip) => slip.minutes);
        const sure = now - Math.max(0, ...longest);
        const slow = new Set(slips.flatMap((slip) => ('job' in slip ? [slip.job] : [])));
        const dropped = slips.some(({ kind }) => kind === 'oven-dropped');
        for (const offer of replan({ request, sheet, now, slips, decodes: 1 }).offers) {
          const after = new Map(offer.sheet.jobs.map((job) => [job.id, job]));
          for (const job of sheet.jobs) {
            const isDone = job.end <= sure && !slow.has(job.id);
            if (!isDone || dropped || job.kind === 'wash-hands') continue;
            const is = after.get(job.id);
            expect([job.id, is?.start, is?.end, is?.hands]).toEqual([
              job.id,
              job.start,
              job.end,
              job.hands,
            ]);
          }
          if (offer.violations.length > 0) continue;
          const known = new Map(sheet.jobs.map((job) => [job.id, job]));
          for (const job of offer.sheet.jobs) {
            const was = known.get(job.id);
            const isBegun = was !== undefined && was.start < now;
            if (!isBegun && !dropped) expect([job.id, job.start >= now]).toEqual([job.id, true]);
          }
        }
      }),
      { seed: 20261125, numRuns: 40 },
    );
  }, 60_000);

  it('says nothing new where nothing slipped', () => {
    for (const { request, sheet } of days) {
      for (const share of [0.2, 0.5, 0.8, 0.99]) {
        const { offers, asks } = replan({ request, sheet, now: at(sheet, share), slips: [] });
        expect(asks).toEqual([]);
        expect(offers.map(({ how, moves, lateBy }) => [how, moves, lateBy])).toEqual([
          ['shift', [], 0],
        ]);
      }
    }
  });

  it('offers two days at most, the second only where it is less late', () => {
    for (const { request, sheet } of days) {
      for (const minutes of [5, 15, 30]) {
        const slips = [{ kind: 'behind' as const, minutes }];
        const { offers } = replan({ request, sheet, now: at(sheet, 0.5), slips });
        expect(offers.length).toBeGreaterThan(0);
        expect(offers.length).toBeLessThanOrEqual(2);
        const [change, late] = offers;
        if (late !== undefined) expect(late.lateBy).toBeLessThan(change!.lateBy);
      }
    }
  });
});

const cook = make.hand('cook', 'steady', ['8:00', '20:00']);
const bread = make.recipe('bread', 'biscuit', [make.step('mix', 8)], { canWait: 20 });

/** One bread for 12:00: coals on 11:36, in 22 min; lit 11:12 to 11:34 (20 min to ash over). */
const oneBread = (pins = {}) => {
  const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12), make.oven('B', 12)] });
  const dish = make.dish('bread', bread, '12:00', { pins });
  const load = { oven: 'A', coals: [16, 8] as const, out: 22 };
  const request = make.request(camp, [make.work(bread, dish, [load])]);
  return { request, sheet: planTimetable(request, { doubtRuns: 0 }) };
};
const jobOf = (sheet: DaySheet, kind: string) => sheet.jobs.find((job) => job.kind === kind)!;

describe('one bread', () => {
  it('whose chimney did not catch is as late as lighting and ashing over take, counted from now', () => {
    const { request, sheet } = oneBread();
    const [lighting] = sheet.lightings;
    const now = clockMinutes(lighting!.at + 10);
    const slips = [{ kind: 'chimney-failed' as const, lighting: lighting!.id }];
    const { offers } = replan({ request, sheet, now, slips });
    expect(offers[0]!.violations).toEqual([]);
    expect(offers[0]!.lateBy).toBe(10);
    expect(offers[0]!.sheet.lightings.map((each) => each.at)).toEqual([now]);
  });

  it('for guests who come half an hour later is as fresh for them: all that is not begun moves', () => {
    const { request, sheet } = oneBread();
    const now = clockMinutes(make.at('11:00'));
    const slips = [{ kind: 'guests-late' as const, minutes: 30 }];
    const { offers } = replan({ request, sheet, now, slips });
    const [offer] = offers;
    expect(offer!.lateBy).toBe(0);
    expect(offer!.how).toBe('shift');
    expect(jobOf(offer!.sheet, 'take-out').start).toBe(jobOf(sheet, 'take-out').start + 30);
    expect(offer!.sheet.servings[0]!.served).toBe(make.at('12:30'));
  });

  it('whose oven is dropped before it is in goes into the other, and that is said', () => {
    const { request, sheet } = oneBread();
    const now = clockMinutes(make.at('11:00'));
    const { offers, asks } = replan({
      request,
      sheet,
      now,
      slips: [{ kind: 'oven-dropped', oven: 'A' }],
    });
    expect(asks.map(({ code, values }) => [code, values.other])).toEqual([
      ['TIMETABLE_REPLAN_OTHER_OVEN', 'B'],
    ]);
    expect(offers[0]!.sheet.spans.every(({ oven }) => oven === 'B')).toBe(true);
    expect(offers[0]!.lateBy).toBe(0);
  });

  it('that is in the oven when that is dropped is lost, and asked about', () => {
    const { request, sheet } = oneBread();
    const now = clockMinutes(make.at('11:45'));
    const slips = [{ kind: 'oven-dropped' as const, oven: 'A' }];
    const { asks } = replan({ request, sheet, now, slips });
    expect(asks.map(({ code }) => code)).toEqual(['TIMETABLE_REPLAN_LOAD_LOST']);
  });

  it('keeps its pinned minute; where that has passed with nothing laid, the cook is asked', () => {
    const pinned = oneBread({ coalsOnAt: clockMinutes(make.at('11:30')) });
    const early = replan({ ...pinned, now: clockMinutes(make.at('11:05')), slips: [] });
    expect(jobOf(early.offers[0]!.sheet, 'lay-coals').end).toBe(make.at('11:30'));
    expect(early.asks).toEqual([]);
    const now = clockMinutes(make.at('11:40'));
    const late = replan({ ...pinned, now, slips: [{ kind: 'behind', minutes: 20 }] });
    expect(late.asks.map(({ code }) => code)).toEqual(['TIMETABLE_REPLAN_PIN']);
    expect(jobOf(late.offers[0]!.sheet, 'lay-coals').start).toBeGreaterThanOrEqual(now);
  });

  it('has as much room behind its hour for guests half an hour late as it had before', () => {
    const { request, sheet } = oneBread();
    const dishes = request.dishes.map((work) => {
      const latestAt = clockMinutes(work.dish.serveAt + 20);
      return { ...work, dish: { ...work.dish, latestAt } };
    });
    const now = clockMinutes(make.at('11:05'));
    const slips = [{ kind: 'guests-late' as const, minutes: 30 }];
    const [offer] = replan({ request: { ...request, dishes }, sheet, now, slips }).offers;
    const [meal] = offer!.sheet.doubt!.meals;
    expect(meal!.limits.latest - meal!.wanted).toBe(20);
    expect(meal!.inTime).toBeGreaterThan(0.5);
  });
});
