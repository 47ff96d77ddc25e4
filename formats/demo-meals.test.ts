// The demo camps through every stage. What is asserted comes from the camps' own wishes, from outside
// limits and from the rules of the job; never from what the planner happened to answer.
import { describe, expect, it } from 'vitest';
import {
  boilingPointAt,
  checkTimetable,
  type DishPlan,
  grams,
  type Job,
  type MealPlan,
  planMeal,
  pressureAtElevation,
  timetableRequestOf,
  toCelsius,
} from '#engine';
import { demoCamps } from './demo.ts';

const SHORT = /^PROVISIONS_FUEL_(SHORT|NOT_ENOUGH)$/;

const plans = new Map<string, MealPlan>(
  demoCamps('2026-09-08').map(({ camp, menu }) => [camp.id, planMeal(camp, menu)]),
);
const planOf = (id: string) => plans.get(id)!;
const dishOf = (plan: MealPlan, id: string) => plan.dishes.find((each) => each.dish.id === id)!;
const firesOf = (plan: MealPlan) => plan.dishes.flatMap((each: DishPlan) => each.loads);
const jobsOf = (plan: MealPlan, pick: (job: Job) => boolean) => plan.daySheet.jobs.filter(pick);

describe.each([...plans.keys()])('the demo camp %s', (id) => {
  const plan = planOf(id);

  it('is planned whole: no dish refused, none late, every rule of the day sheet kept', () => {
    expect(plan.refusals).toEqual([]);
    expect(plan.dishes.map((each) => each.dish.id)).toEqual(
      plan.menu.dishes.map((each) => each.id),
    );
    expect(plan.daySheet.status).toBe('planned');
    expect(checkTimetable(timetableRequestOf(plan), plan.daySheet)).toEqual([]);
  });

  it('has one time in the oven on card and day sheet, within three minutes and a half', () => {
    for (const { dish, recipe, loads } of plan.dishes)
      for (const { coals, bake } of loads) {
        if (dish.pins.bakeMinutes !== undefined || recipe.method === 'simmer') continue;
        const stay = coals.outMinute - coals.loadInMinute;
        expect(Math.abs(stay - bake.minutes), recipe.name).toBeLessThan(3.5);
      }
  });

  it('holds no number that is not finite', () => {
    const odd: string[] = [];
    walk(plan, id, odd);
    expect(odd).toEqual([]);
  });

  it('weighs into the bowl what comes out of it: ingredients, less what height took away, are the batch', () => {
    for (const { formula, portions, recipe } of plan.dishes) {
      const lines = formula.lines.reduce((sum, line) => sum + line.grams, 0);
      const cut = formula.changes.reduce((sum, change) => sum + change.was - change.now, 0);
      const written = recipe.ingredients.reduce((sum, each) => sum + each.grams, 0);
      expect(lines).toBeCloseTo(formula.batch, 6);
      if (recipe.division.length === 0)
        expect(lines + cut).toBeCloseTo(written * portions.factor, 3);
    }
  });

  it('gives as much heat as iron, food and air take, within 0.1 %', () => {
    for (const { coals } of firesOf(plan)) {
      const { givenJoules, ironJoules, loadJoules, lossJoules } = coals.energy;
      const error = Math.abs(givenJoules - ironJoules - loadJoules - lossJoules) / givenJoules;
      expect(error).toBeLessThan(0.001);
    }
  });

  it('asks no core above the local boiling point less 3 K (dough reference, judged margin)', () => {
    const boiling = boilingPointAt(pressureAtElevation(plan.camp.place.elevation));
    for (const { bake } of firesOf(plan)) {
      if (bake.done.core !== undefined)
        expect(bake.done.core).toBeLessThanOrEqual(boiling - 3 + 1e-9);
    }
  });

  it('turns every bread, and lets nobody do two things at once', () => {
    for (const each of plan.dishes) {
      if (!/bread|biscuit|cobbler/.test(each.recipe.kind)) continue;
      for (const { coals } of each.loads) expect(coals.turns.length).toBeGreaterThan(0);
    }
    for (const hand of plan.camp.hands) {
      const own = jobsOf(plan, (job) => job.hands.includes(hand.id));
      own.forEach((job, index) => {
        const next = own[index + 1];
        if (next) expect(next.start).toBeGreaterThanOrEqual(job.end);
      });
    }
  });
});

describe('Harrow Saddle', () => {
  const plan = planOf('harrow-saddle');

  it('keeps the blue-cord oven free of wheat: its dish is set out first and never mixed beside wheat', () => {
    const wheat = plan.dishes.filter((each) =>
      each.recipe.ingredients.some((line) => line.allergens.includes('wheat')),
    );
    expect(wheat.length).toBeGreaterThan(1);
    for (const each of wheat) expect(each.loads.map(({ load }) => load.oven)).not.toContain('E');
    const makes = (dish: string) =>
      jobsOf(plan, (job) => job.dish === dish && (job.kind === 'weigh' || job.kind === 'mix'));
    const own = makes('cornbread');
    const others = wheat.flatMap((each) => makes(each.dish.id));
    expect(own[0]!.end).toBeLessThanOrEqual(Math.min(...others.map((job) => job.start)));
    for (const job of own) {
      expect(others.filter((other) => other.start < job.end && job.start < other.end)).toEqual([]);
    }
  });

  it('lays no coals by a new hand alone', () => {
    for (const job of jobsOf(
      plan,
      (each) => each.kind === 'lay-coals' || each.kind === 'add-coals',
    )) {
      expect(
        job.hands.some((hand) => plan.camp.hands.find(({ id }) => id === hand)?.skill !== 'new'),
      ).toBe(true);
    }
  });

  it('caps the bread at what the boiling point there allows: 92.7 °C by the altitude table', () => {
    // Interpolated between the 6,000 and 7,000 ft rows of a published boiling table, 200.7 and 198.7 °F.
    const boiling = toCelsius(boilingPointAt(pressureAtElevation(plan.camp.place.elevation)));
    expect(Math.abs(boiling - 92.7)).toBeLessThan(0.5); // that table is in whole tenths of °F and reads 0.3 K low
    for (const { bake } of dishOf(plan, 'cornbread').loads)
      expect(toCelsius(bake.done.core!)).toBeLessThan(boiling);
  });

  it.each([1, 0.5])('says whether %f of the charcoal is enough, and how much is short', (share) => {
    const { camp, menu } = demoCamps('2026-09-08').find(
      (each) => each.camp.id === 'harrow-saddle',
    )!;
    if (camp.fuel.kind !== 'briquettes') throw new TypeError('Harrow Saddle burns briquettes');
    const onHand = grams(camp.fuel.onHand! * share);
    const plan = planMeal({ ...camp, fuel: { ...camp.fuel, onHand } }, menu);
    const { fuel } = plan.provisions;
    expect(fuel.short).toBeCloseTo(Math.max(0, fuel.massWithSpare - onHand), 6);
    const isSaid = plan.provisions.notices.some((each) => SHORT.test(each.code));
    expect(isSaid).toBe(0 < fuel.short);
    if (share === 0.5) expect(fuel.short).toBeGreaterThan(0);
  });
});

describe('Pilcrow Creek', () => {
  it('rests the loaf 20 minutes before it is cut for 13:00', () => {
    const plan = planOf('pilcrow-creek');
    const out = jobsOf(plan, (job) => job.dish === 'loaf' && job.kind === 'take-out')[0]!;
    const cut = jobsOf(plan, (job) => job.dish === 'loaf' && job.kind === 'cut')[0]!;
    expect(cut.start - out.end).toBeGreaterThanOrEqual(20);
    expect(cut.end).toBeLessThanOrEqual(13 * 60);
  });

  it.each(['pilcrow-creek', 'pilcrow-creek-wood'])(
    'slashes the loaf of %s once it has risen in its oven, before its coals',
    (id) => {
      const of = (kind: Job['kind']) =>
        jobsOf(planOf(id), (job) => job.dish === 'loaf' && job.kind === kind);
      const slash = of('shape').find(({ say }) => say?.startsWith('Slash'))!;
      expect(slash.start).toBeGreaterThanOrEqual(of('second-rise')[0]!.end);
      expect(slash.end).toBeLessThanOrEqual(of('lay-coals')[0]!.start);
    },
  );

  it('on wood tells shovels and rings everywhere, and lights a feeder fire, no chimney', () => {
    const plan = planOf('pilcrow-creek-wood');
    for (const { coals } of firesOf(plan)) {
      expect(coals.fuel).toBe('wood-coals');
      expect(coals.below.shovels).toBeGreaterThan(0);
      expect(coals.above.shovels).toBeGreaterThan(0);
    }
    expect(plan.provisions.fuel.pieces).toBeUndefined();
    const kinds = new Set(plan.daySheet.jobs.map((job) => job.kind));
    expect(kinds.has('light-feeder')).toBe(true);
    expect(kinds.has('light-chimney')).toBe(false);
  });
});

function walk(value: unknown, path: string, odd: string[]): void {
  if (typeof value === 'number' && !Number.isFinite(value)) odd.push(path);
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) walk(inner, `${path}.${key}`, odd);
}
