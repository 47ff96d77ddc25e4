// A camp of two days: a cobbler for supper, a loaf that rises over night, beans that soak over night.
// Hours, soak and rise are the camp's own; people and place are invented.

import { describe, expect, it } from 'vitest';
import {
  checkTimetable,
  daySheet,
  type Job,
  planMeal,
  sayFor,
  timetableRequestOf,
  wallList,
} from '#engine';
import { readCampFile } from './camp-file/read.ts';

const step = (kind: string, say: string, takes: string, more: object = {}) => ({
  kind,
  say,
  takes,
  ...more,
});

const hand = (id: string, skill: string) => ({
  id,
  name: id,
  skill,
  from: '15:00',
  to: '+1 19:00',
  away: [{ from: '22:00', to: '+1 06:00' }],
});

const cobbler = {
  id: 'cobbler',
  name: 'Plum cobbler',
  kind: 'cobbler',
  method: 'bake',
  portions: 8,
  ingredients: [
    { name: 'plums', weight: '900 g' },
    { name: 'flour', weight: '250 g' },
    { name: 'butter', weight: '80 g' },
    { name: 'sugar', weight: '150 g' },
    { name: 'milk', weight: '180 g' },
    { name: 'baking powder', weight: '10 g' },
  ],
};

const loaf = {
  id: 'loaf',
  name: 'Overnight loaf',
  kind: 'yeast-bread',
  method: 'bake',
  portions: 8,
  ingredients: [
    { name: 'bread flour', weight: '600 g' },
    { name: 'water', weight: '420 g' },
    { name: 'salt', weight: '12 g' },
    { name: 'instant yeast', weight: '1.2 g' },
  ],
  steps: [
    step('mix', 'Stir it together in the evening.', '10 min', { table: true }),
    step('rise', 'Covered, over night.', '9 h'),
    step('shape', 'Shape one round.', '5 min', { table: true }),
    step('second-rise', 'In the warm box.', '50 min', { keptAt: '30 °C' }),
    step('load', 'Slash it, lid on.', '2 min'),
    step('cook', 'Bake.', '40 min'),
    step('take-out', 'Turn it out.', '3 min'),
    step('rest', 'Let it cool.', '20 min'),
  ],
};

const after = (id: string, most?: string) => ({
  after: [most === undefined ? { step: id } : { step: id, most }],
});
const beans = {
  id: 'beans',
  name: 'River beans',
  kind: 'beans',
  method: 'simmer',
  portions: 8,
  ingredients: [
    { name: 'dried pinto beans', weight: '700 g' },
    { name: 'water', weight: '2 kg' },
    { name: 'salt', weight: '12 g' },
  ],
  steps: [
    step('prepare', 'Put the beans to soak.', '5 min', { id: 'soak' }),
    step('rest', 'Soak over night.', '10 h', { id: 'wait', hands: 0, ...after('soak', '10 min') }),
    step('prepare', 'Drain and rinse.', '5 min', { id: 'drain', ...after('wait', '8 h') }),
    step('load', 'Fresh water, boil hard for 10 minutes.', '5 min', {
      id: 'in',
      ...after('drain'),
    }),
    step('cook', 'Simmer.', '120 min'),
    step('take-out', 'Off the coals.', '2 min'),
  ],
};

const file = {
  emberwright: 'camp',
  version: 1,
  id: 'two-days',
  title: 'Two days by the river',
  place: { name: 'the river bend (invented)', elevation: '300 m', restriction: 'none' },
  date: '2026-09-12',
  mouths: [{ count: 8 }],
  hands: [hand('cook', 'camp-cook'), hand('mate', 'steady')],
  ovens: [
    { id: 'A', diameter: '12 in' },
    { id: 'B', diameter: '12 in', style: 'deep' },
  ],
  menu: [
    { id: 'cobbler', recipe: 'cobbler', serve: '19:00' },
    { id: 'loaf', recipe: 'loaf', serve: '+1 12:00' },
    { id: 'beans', recipe: 'beans', serve: '+1 18:00' },
  ],
  recipes: [cobbler, loaf, beans],
};

const read = readCampFile(file);
if (!read.ok) throw new Error(read.troubles.map(({ path }) => path).join());
const plan = planMeal(read.camp, read.menu);
const jobs = plan.daySheet.jobs;
const jobOf = (dish: string, kind: Job['kind'], say?: string) =>
  jobs.find(
    (job) => job.dish === dish && job.kind === kind && (say === undefined || job.say === say),
  )!;

const [TEN_PM, SIX_AM] = [22 * 60, 30 * 60];
const say = sayFor({ measures: 'metric', clock: '24', plan });

describe('a camp of two days', () => {
  it('is planned whole and sound, three servings on two days', () => {
    expect(plan.refusals).toEqual([]);
    expect(plan.daySheet.status).toBe('planned');
    expect(checkTimetable(timetableRequestOf(plan), plan.daySheet)).toEqual([]);
    expect(plan.daySheet.servings.map(({ lateBy }) => lateBy)).toEqual([0, 0, 0]);
  });

  it('lets everybody sleep from 22:00 to 6:00, while dough rises and beans soak', () => {
    const atNight = jobs.filter(({ start, end }) => start < SIX_AM && TEN_PM < end);
    expect(atNight.filter(({ hands }) => hands.length > 0)).toEqual([]);
    expect(atNight.map(({ dish, kind }) => [dish, kind]).sort()).toEqual([
      ['beans', 'rest'],
      ['loaf', 'rise'],
    ]);
  });

  it('puts beans to soak on the evening before, ten hours and no more than eighteen before they drain', () => {
    const soak = jobOf('beans', 'prepare', 'Put the beans to soak.');
    const drain = jobOf('beans', 'prepare', 'Drain and rinse.');
    expect(soak.end).toBeLessThanOrEqual(TEN_PM);
    expect(drain.start - soak.end).toBeGreaterThanOrEqual(10 * 60);
    expect(drain.start - soak.end).toBeLessThanOrEqual(18 * 60 + 10);
  });

  it('lets no shaped loaf wait for its rise: that begins when hands let go of it', () => {
    const wait = jobOf('loaf', 'second-rise').start - jobOf('loaf', 'shape').end;
    expect(wait).toBeLessThanOrEqual(10);
    expect(jobOf('loaf', 'rise').start - jobOf('loaf', 'mix').end).toBeLessThanOrEqual(10);
  });

  it('is told day by day under each day’s name, with times that need no word on the day', () => {
    for (const sheet of [daySheet(plan, say), wallList(plan, say)]) {
      const headings = sheet.blocks.flatMap((block) =>
        block.type === 'heading' && /September/.test(block.text) ? [block.text] : [],
      );
      // 12 September 2026 is a Saturday by the calendar.
      expect(headings.slice(-2)).toEqual(['Saturday 12 September', 'Sunday 13 September']);
      const steps = sheet.blocks.flatMap((block) => (block.type === 'steps' ? block.rows : []));
      expect(steps.length).toBeGreaterThan(20);
      expect(steps.filter(({ clock = '', when }) => /day/.test(clock + when))).toEqual([]);
    }
  });

  it.each([
    ['20 °C', 120],
    ['35 °C', 60],
  ])(
    'says until when what is left may be called out again: at %s, %d min out (fsis-two-hours)',
    (air, most) => {
      const hour = (at: string) => ({ at, air, wind: '2 m/s' });
      const weather = [hour('12:00'), hour('+1 20:00')];
      const warm = readCampFile({ ...file, weather });
      if (!warm.ok) throw new Error('unreadable');
      const then = planMeal(warm.camp, warm.menu);
      const sheet = daySheet(then, sayFor({ measures: 'metric', clock: '24', plan: then }));
      const table = sheet.blocks.find(
        (block) => block.type === 'table' && block.head.includes('second call until'),
      );
      if (table?.type !== 'table') throw new Error('no table');
      const [supper] = table.rows.filter(([, name]) => name === 'Plum cobbler');
      const out = then.daySheet.jobs.find(
        ({ dish, kind }) => dish === 'cobbler' && kind === 'take-out',
      )!;
      const minutesOf = (text = '') => {
        const [hours, past] = text.split(':').map(Number);
        return hours! * 60 + past!;
      };
      expect(minutesOf(supper?.at(-1))).toBe(out.start + most);
      const [bread] = table.rows.filter(([, name]) => name === 'Overnight loaf');
      expect(bread?.at(-1)).toBe('');
    },
  );

  it('refuses hands that are away from a later minute to a sooner one, by path', () => {
    const [cook] = file.hands;
    const upside = { ...cook, away: [{ from: '+1 06:00', to: '22:00' }] };
    const odd = readCampFile({ ...file, hands: [upside] });
    if (!odd.ok) throw new Error('unreadable');
    const { refusals } = planMeal(odd.camp, odd.menu);
    expect(refusals.map(({ code, conflicts }) => [code, conflicts])).toContainEqual([
      'CAMP_HANDS_HOURS_UPSIDE_DOWN',
      ['hands.cook.away.0.from', 'hands.cook.away.0.to'],
    ]);
  });
});
