// A week for 300 mouths, 21 meals of the fair's menu: what is bought, weighed out, packed and burnt for
// all of it. Under 50 ms on one core; linear in dishes, held against half the menu in the same run.

import assert from 'node:assert/strict';
import type { Camp, DishToProvide, Provisions, Stores } from '#engine';
import { clockMinutes, grams, planDay, provisionsFor, ratio } from '#engine';
import { demoCamps } from '#formats';
import { milliseconds, timed } from './measure.ts';

const TODAY = '2026-09-08'; // any Tuesday; demo camps are dated relative to it
const MEALS = 21;
const MOST_MILLISECONDS = 50;
/** Twice the dishes may take no more than so many times as long: linear, with room for the clock. */
const MOST_RATIO = 2.6;

export function provisionsBench(): void {
  const fair = demoCamps(TODAY).find((each) => each.camp.id === 'quillmoor-fair');
  assert.ok(fair, 'the fair is there');
  const { dishes } = planDay(fair.camp, fair.menu);
  const camp = { ...fair.camp, stores: storesOfAWeek() };
  const week = mealsOf(dishes, MEALS);
  const half = week.slice(0, Math.ceil(week.length / 2));
  const one = provisionsFor({ camp, dishes });
  const runs = { runs: 15, warmUp: 25 };
  const works = [week, half].map((each) => () => provisionsFor({ camp, dishes: each }));
  const whole = timed(() => provisionsFor({ camp, dishes: week }), {
    ...runs,
    consume: (found) => assertWeek(found, one, camp),
  });
  const [all, less] = fastestOf(works);
  assert.ok(all !== undefined && less !== undefined);
  const growth = all / less;
  process.stdout.write(
    `  300 mouths, ${MEALS} meals, ${week.length} dishes: ${milliseconds(whole.medianMilliseconds)} (worst ${milliseconds(whole.worstMilliseconds)})\n`,
  );
  process.stdout.write(
    `  fastest of ${ROUNDS} by turns: ${milliseconds(all)}, half the menu (${half.length} dishes) ${milliseconds(less)}; ratio ${growth.toFixed(2)} for ${(week.length / half.length).toFixed(2)} times the dishes\n`,
  );
  assert.ok(whole.medianMilliseconds < MOST_MILLISECONDS, 'a week in under 50 ms');
  assert.ok(growth < MOST_RATIO, 'linear in dishes');
}

const ROUNDS = 40;

/** The fastest of many turns, one after the other: a busy machine is busy for both. */
function fastestOf(works: readonly (() => Provisions)[]): readonly number[] {
  const fastest = works.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < ROUNDS; round += 1) {
    works.forEach((work, index) => {
      const start = performance.now();
      assert.ok(work().shopping.length > 0);
      fastest[index] = Math.min(fastest[index] ?? 0, performance.now() - start);
    });
  }
  return fastest;
}

/** The same dishes at every meal, as different dishes at different times. */
const mealsOf = (dishes: readonly DishToProvide[], meals: number): readonly DishToProvide[] =>
  Array.from({ length: meals }, (_, meal) =>
    dishes.map((each) => ({
      ...each,
      dish: {
        ...each.dish,
        id: `${each.dish.id}-${meal}`,
        serveAt: clockMinutes(each.dish.serveAt + 480 * meal),
      },
    })),
  ).flat();

const pack = (size: number, price: number) => ({ size: grams(size), price });

const storesOfAWeek = (): Stores => ({
  foods: [
    { name: 'bread flour', packs: [pack(1000, 1.4), pack(25_000, 22)], have: grams(4000) },
    { name: 'cornmeal', packs: [pack(1000, 2), pack(10_000, 15)] },
    { name: 'onions', packs: [pack(5000, 4)], usable: ratio(0.9) },
    { name: 'potatoes', packs: [pack(10_000, 8), pack(2500, 3)] },
    { name: 'sugar', packs: [pack(1000, 1.2)] },
    { name: 'butter', packs: [pack(250, 2.2), pack(10_000, 70)] },
  ],
  money: '€',
  carriers: [{ name: 'van', kind: 'car', count: 6 }],
  coolers: [],
});

/** Twenty-one times one meal, every weight bought, packed once and never less than is needed. */
function assertWeek(week: Provisions, one: Provisions, camp: Camp): void {
  assert.deepEqual(week.refusals, []);
  near(week.foodMass, MEALS * one.foodMass);
  near(week.fuel.mass, MEALS * one.fuel.mass);
  assert.equal(week.bags.length, MEALS * one.bags.length);
  for (const line of week.shopping) {
    const same = one.shopping.find(({ key }) => key === line.key);
    near(line.grams, MEALS * (same?.grams ?? Number.NaN));
    assert.ok((line.bought ?? 0) >= (line.toBuy ?? 0) - 1e-3, `${line.name} is short`);
  }
  const packed = week.packing?.boxes.flatMap(({ items }) => items) ?? [];
  const ovens = packed.filter(({ kind }) => kind === 'oven');
  assert.equal(ovens.length, camp.ovens.length);
}

function near(found: number, wanted: number): void {
  assert.ok(Math.abs(found / wanted - 1) < 1e-9 || found === wanted, `${found} for ${wanted}`);
}
