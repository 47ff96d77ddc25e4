// Clean hands between wheat and a dish kept free of it, raw meat and all else, charcoal and food, anything
// soiled and what is eaten as it is. Source: food-code-2-301; the rule is restated by the checker, which shares no code with it.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { harrowSaddle } from '../../validation/timetable/demo-meals.ts';
import { clockMinutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import { withWashes } from './clean-hands.ts';
import type { DaySheet, Job, TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

const loaf = make.recipe('loaf', 'yeast-bread', [make.step('shape', 5)], {
  ingredients: [make.wheat],
});
const free = make.recipe('free', 'corn-bread', [make.step('mix', 5)]);
const stew = make.recipe('stew', 'stew', [make.step('brown', 10)], { ingredients: [make.beef] });
const pot = make.recipe('pot', 'stew', [make.step('cook', 10)]);
const camp = make.camp({
  hands: [
    make.hand('cook', 'steady', ['9:00', '20:00']),
    make.hand('other', 'steady', ['9:00', '20:00']),
  ],
  ovens: [make.oven('A', 12), make.oven('B', 12)],
});
const request: TimetableRequest = make.request(camp, [
  make.work(loaf, make.dish('loaf', loaf, '13:00'), []),
  make.work(free, make.dish('free', free, '13:00', { freeFrom: true }), []),
  make.work(stew, make.dish('stew', stew, '13:00'), []),
  make.work(pot, make.dish('pot', pot, '13:00'), []),
]);

const job = (kind: Job['kind'], dish: string, from: string, to: string, hand = 'cook'): Job => ({
  id: `${kind} ${dish} ${from}`,
  kind,
  dish,
  start: make.at(from),
  end: make.at(to),
  hands: [hand],
  needsTable: false,
  values: {},
  latestStart: make.at(from),
  because: { kind: 'serving' },
  needsCare: false,
});
const washed = (jobs: readonly Job[]) => withWashes(request, jobs);
const washesOf = (jobs: readonly Job[]) =>
  washed(jobs).jobs.flatMap((each) => (each.kind === 'wash-hands' ? [each.start] : []));

const EMPTY: DaySheet = {
  status: 'planned',
  jobs: [],
  spans: [],
  lightings: [],
  lit: [],
  servings: [],
  advice: [],
  notices: [],
};

describe('hands are washed in the minute', () => {
  it('before the free-from oven is greased, after wheat was shaped', () => {
    const jobs = [job('shape', 'loaf', '11:00', '11:10'), job('grease', 'free', '11:20', '11:22')];
    expect(washesOf(jobs)).toEqual([make.at('11:19')]);
  });

  it('before another pot is greased, after raw beef was browned; not for the same stew', () => {
    const brown = job('brown', 'stew', '11:00', '11:10');
    expect(washesOf([brown, job('grease', 'pot', '11:20', '11:22')])).toEqual([make.at('11:19')]);
    expect(washesOf([brown, job('add-coals', 'stew', '11:20', '11:22')])).toEqual([]);
  });

  it('before dough is folded, after coals; not before coals are touched again', () => {
    const coals = job('add-coals', 'pot', '11:00', '11:02');
    expect(washesOf([coals, job('fold', 'loaf', '11:05', '11:08')])).toEqual([make.at('11:04')]);
    expect(washesOf([coals, job('add-coals', 'stew', '11:05', '11:08')])).toEqual([]);
  });

  it.each([
    ['light-chimney', 'pot'],
    ['add-coals', 'pot'],
    ['ash-out', 'pot'],
    ['wipe-oven', 'pot'],
    ['grease', 'pot'],
    ['wash-up', 'pot'],
    ['mix', 'loaf'],
    ['shape', 'loaf'],
    ['load', 'loaf'],
    ['brown', 'stew'],
  ] as const)(
    'before bread is cut or a salad is dressed, after %s (food-code-2-301)',
    (kind, dish) => {
      const soiled = job(kind, dish, '11:00', '11:10');
      for (const ready of ['cut', 'dress'] as const) {
        const jobs = [soiled, job(ready, 'loaf', '11:20', '11:24')];
        expect(washesOf(jobs)).toEqual([make.at('11:19')]);
        const left = checkTimetable(request, { ...EMPTY, jobs }).map(({ rule }) => rule);
        expect(left.filter((rule) => rule.startsWith('washed-'))).toHaveLength(1);
        const after = checkTimetable(request, { ...EMPTY, jobs: washed(jobs).jobs });
        expect(after.filter(({ rule }) => rule.startsWith('washed-'))).toEqual([]);
      }
    },
  );

  it('before batter is poured after coals; not for a pot that is only filled', () => {
    const coals = job('add-coals', 'pot', '11:00', '11:02');
    expect(washesOf([coals, job('load', 'free', '11:05', '11:06')])).toEqual([make.at('11:04')]);
    expect(washesOf([coals, job('load', 'pot', '11:05', '11:06')])).toEqual([]);
  });

  it('in an idle minute before, where the work stands right before the food', () => {
    const jobs = [
      job('add-coals', 'pot', '11:00', '11:02'),
      job('check', 'pot', '11:05', '11:06'),
      job('dress', 'loaf', '11:06', '11:09'),
    ];
    expect(washesOf(jobs)).toEqual([make.at('11:04')]);
  });

  it('not again where they have been washed between', () => {
    const jobs = [
      job('shape', 'loaf', '11:00', '11:10'),
      job('wash-hands', 'free', '11:12', '11:13'),
      job('grease', 'free', '11:20', '11:22'),
    ];
    expect(washesOf(jobs)).toEqual([make.at('11:12')]);
  });
});

describe('where no minute is left', () => {
  const jobs = [job('shape', 'loaf', '11:00', '11:10'), job('grease', 'free', '11:10', '11:12')];

  it('somebody with clean hands does it', () => {
    const { jobs: shared, left } = washed(jobs);
    expect(left).toEqual([]);
    expect(shared.find((each) => each.kind === 'grease')!.hands).toEqual(['other']);
  });

  it('it is told, if nobody else is free', () => {
    const busy = job('shape', 'pot', '11:00', '11:20', 'other');
    const { left } = washed([...jobs, busy]);
    expect(left.map((each) => [each.job.kind, each.hand])).toEqual([['grease', 'cook']]);
  });
});

describe('the checker', () => {
  const harrow = harrowSaddle();
  const sheet = planTimetable(harrow);

  it('finds nothing in a sound sheet and each missing wash in a spoilt one', () => {
    expect(checkTimetable(harrow, sheet)).toEqual([]);
    const jobs = sheet.jobs.filter((each) => each.kind !== 'wash-hands');
    const found = new Set(checkTimetable(harrow, { ...sheet, jobs }).map((each) => each.rule));
    expect([...found]).toEqual(expect.arrayContaining(['clean-hands', 'washed-after-raw-meat']));
  });

  it('finds a free-from oven greased with wheat on the hands', () => {
    const grease = sheet.jobs.find((each) => each.kind === 'grease' && each.dish === 'cornbread')!;
    const shape = sheet.jobs.find((each) => each.kind === 'shape')!;
    const before = { ...shape, start: clockMinutes(grease.start - 1), end: grease.start };
    const wheaty = { ...before, id: 'wheaty', hands: grease.hands };
    const jobs = [...sheet.jobs, wheaty].sort((a, b) => a.start - b.start);
    const found = checkTimetable(harrow, { ...sheet, jobs }).map((each) => each.rule);
    expect(found).toContain('washed-before-free-from');
  });

  it('finds dough shaped with charcoal on the hands', () => {
    const shape = sheet.jobs.find((each) => each.kind === 'shape')!;
    const coals = {
      ...shape,
      id: 'coals',
      kind: 'add-coals' as const,
      start: clockMinutes(shape.start - 1),
      end: shape.start,
    };
    const jobs = [...sheet.jobs, coals].sort((a, b) => a.start - b.start);
    const found = checkTimetable(harrow, { ...sheet, jobs }).map((each) => each.rule);
    expect(found).toContain('washed-after-coals');
  });
});
