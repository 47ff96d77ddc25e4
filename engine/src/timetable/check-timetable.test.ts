// A checker that finds nothing must be able to find something: a sound sheet is spoilt in one way at
// a time, and each time the rule that forbids it has to speak.

import { describe, expect, it } from 'vitest';
import { harrowSaddle, pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import type { DaySheet, Job } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

const request = harrowSaddle();
const sound = planTimetable(request);

const rules = (sheet: DaySheet, of = request) => checkTimetable(of, sheet).map((each) => each.rule);

const change = (which: (job: Job) => boolean, to: (job: Job) => Job): DaySheet => {
  let isDone = false;
  const jobs = sound.jobs.map((job) => {
    if (isDone || !which(job)) return job;
    isDone = true;
    return to(job);
  });
  return { ...sound, jobs };
};
const moved = (job: Job, by: number): Job => ({
  ...job,
  start: clockMinutes(job.start + by),
  end: clockMinutes(job.end + by),
});
const without = (which: (job: Job) => boolean): DaySheet => ({
  ...sound,
  jobs: sound.jobs.filter((job) => !which(job)),
});

describe('the checker of day sheets', () => {
  it('finds nothing in a sound sheet', () => {
    expect(rules(sound)).toEqual([]);
  });

  it('finds coals laid before they have ashed over', () => {
    const lightings = sound.lightings.map((each, at) =>
      at === 0 ? { ...each, readyAt: clockMinutes(each.readyAt + 10) } : each,
    );
    expect(rules({ ...sound, lightings })).toContain('coals-ready');
  });

  it('finds a chimneyful called ready too soon', () => {
    const lightings = sound.lightings.map((each) => ({
      ...each,
      readyAt: clockMinutes(each.at + 5),
    }));
    expect(rules({ ...sound, lightings })).toContain('ash-over');
  });

  it('finds coals past their life', () => {
    expect(rules(sound, { ...request, coalLife: 0 as never })).toContain('coals-ready');
  });

  it('finds a third chimney', () => {
    const at = sound.lightings[0]!.at;
    const lightings = sound.lightings.map((each) => ({ ...each, at }));
    expect(rules({ ...sound, lightings })).toContain('chimneys');
  });

  it('finds an overfull chimney', () => {
    const lightings = sound.lightings.map((each) => ({ ...each, coals: 90 }));
    expect(rules({ ...sound, lightings })).toContain('chimneyful');
  });

  it('finds heat before the first fire', () => {
    expect(rules({ ...sound, firstFire: clockMinutes(1110) })).toContain('no-heat-before-fire');
  });

  it('finds one hand in two places', () => {
    const spoilt = { ...sound, jobs: sound.jobs.map((job) => ({ ...job, hands: ['camp-cook'] })) };
    expect(rules(spoilt)).toContain('one-thing-at-a-time');
  });

  it('finds work outside hours', () => {
    const early = { ...request.camp.hands[0]!, to: clockMinutes(900) };
    const camp = { ...request.camp, hands: [early, ...request.camp.hands.slice(1)] };
    expect(rules(sound, { ...request, camp })).toContain('hours');
  });

  it('finds a new hand alone at the coals', () => {
    const spoilt = change(
      (job) => job.kind === 'lay-coals',
      (job) => ({ ...job, hands: ['new-hand'] }),
    );
    expect(rules(spoilt)).toContain('skill');
  });

  it('finds a heavy oven lifted by one', () => {
    const spoilt = change(
      (job) => job.kind === 'take-out' && job.oven === 'A',
      (job) => ({ ...job, hands: job.hands.slice(0, 1) }),
    );
    expect(rules(spoilt)).toContain('two-person-lift');
  });

  it('finds a missing turn and a missing addition', () => {
    expect(rules(without((job) => job.kind === 'turn' && job.load === 'rolls-1'))).toContain(
      'turn-at-its-minute',
    );
    expect(rules(without((job) => job.kind === 'add-coals'))).toContain('add-coals-at-its-minute');
  });

  it('finds an oven in two places and one not wiped', () => {
    const spans = sound.spans.map((span) => ({ ...span, oven: 'B' }));
    expect(rules({ ...sound, spans })).toContain('oven-in-one-place');
    expect(rules(without((job) => job.kind === 'wipe-oven'))).toContain('wiped-and-greased');
  });

  it('finds a load taken out too soon', () => {
    const spans = sound.spans.map((span) =>
      span.state === 'cooking' ? { ...span, to: clockMinutes(span.to - 9) } : span,
    );
    expect(rules({ ...sound, spans })).toContain('minutes-in-the-oven');
  });

  it('finds steps out of order and steps left out', () => {
    const spoilt = change(
      (job) => job.kind === 'mix' && job.dish === 'rolls',
      (job) => moved(job, 40),
    );
    expect(rules(spoilt)).toContain('recipe-order');
    expect(rules(without((job) => job.kind === 'shape'))).toContain('every-step-once');
  });

  it('finds unwashed hands', () => {
    expect(rules(without((job) => job.kind === 'wash-hands'))).toContain('clean-hands');
  });

  it('finds wheat before the gluten-free dish', () => {
    const spoilt = change(
      (job) => job.kind === 'weigh' && job.dish === 'cornbread',
      (job) => moved(job, 60),
    );
    expect(rules(spoilt)).toContain('free-from-first');
  });

  it('finds bread that waits too long and lateness that is not told', () => {
    const servings = sound.servings.map((each) => ({
      ...each,
      served: clockMinutes(each.served + 45),
    }));
    const found = rules({ ...sound, servings });
    expect(found).toContain('can-wait');
    expect(found).toContain('lateness-told');
    expect(found).toContain('on-time');
  });

  it('finds a table with too much on it and a pin that was moved', () => {
    const jobs = sound.jobs.map((job) => ({ ...job, needsTable: true }));
    expect(rules({ ...sound, jobs })).toContain('table');
    const dishes = request.dishes.map((work) => ({
      ...work,
      dish: { ...work.dish, pins: { coalsOnAt: clockMinutes(1000), hand: 'new-hand' } },
    }));
    const found = rules(sound, { ...request, dishes });
    expect(found).toContain('pinned-coals');
    expect(found).toContain('pinned-hand');
  });

  it('finds a dish that nobody called and work before now', () => {
    expect(rules(without((job) => job.kind === 'call'))).toContain('called');
    expect(rules(sound, { ...request, notBefore: clockMinutes(1000) })).toContain('not-before');
  });

  it('finds waiting that is not told as it is, and coals counted below none', () => {
    const servings = sound.servings.map((each) => ({ ...each, waits: minutes(each.waits + 7) }));
    expect(rules({ ...sound, servings })).toContain('waiting-told');
    const lit = sound.lit.map((each) => ({ ...each, onOvens: -1 }));
    expect(rules({ ...sound, lit })).toContain('coals-counted');
  });

  it('finds a heavy oven loaded by one where two are there (AT-THE-FIRE 9, common practice)', () => {
    const spoilt = change(
      (job) => job.kind === 'load' && job.load === 'stew-1',
      (job) => ({ ...job, hands: job.hands.slice(0, 1) }),
    );
    expect(rules(spoilt)).toContain('two-person-lift');
  });

  it('finds bread left whole after its rest and a dough that rose too short', () => {
    const pilcrow = pilcrowCreek();
    const sheet = planTimetable(pilcrow);
    expect(rules(sheet, pilcrow)).toEqual([]);
    const jobs = sheet.jobs.map((job) => (job.kind === 'cut' ? moved(job, 20) : job));
    expect(rules({ ...sheet, jobs }, pilcrow)).toContain('cut-once-rested');
    const risen = sheet.jobs.map((job) =>
      job.kind === 'rise' ? { ...job, end: clockMinutes(job.end - 40) } : job,
    );
    expect(rules({ ...sheet, jobs: risen }, pilcrow)).toContain('risen-enough');
  });

  it('finds a feeder fire that nobody feeds', () => {
    const pilcrow = pilcrowCreek();
    const fuel = { kind: 'wood-coals' as const, lead: minutes(60) };
    const wood = { ...pilcrow, camp: { ...pilcrow.camp, fuel } };
    const sheet = planTimetable(wood);
    expect(rules(sheet, wood)).toEqual([]);
    const jobs = sheet.jobs.filter((job) => job.kind !== 'tend-fire');
    expect(rules({ ...sheet, jobs }, wood)).toContain('fire-fed');
  });
});
