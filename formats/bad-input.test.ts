// What a cook can get wrong, each driven through the reader and the planner: a typed refusal or
// notice that says what it is about, and everything else is planned or kept as it was.

import { describe, expect, it } from 'vitest';
import { clockMinutes, grams, type MealPlan, planMeal } from '#engine';
import pilcrowCreek from './demo/pilcrow-creek.camp.json' with { type: 'json' };
import { faultOfPlan } from './fuzz-judge.ts';
import { type CampNotRead, type CampRead, readCampFile } from './index.ts';

/** The demo camp as a cook's own file, to be spoilt: a loaf and apples over coals, a cold salad. */
interface Spoilt {
  readonly place: Group;
  readonly weather: readonly [Group, ...Group[]];
  readonly ovens: Group[] & { 0: Group };
  readonly menu: readonly [Group, Group, Group];
  readonly recipes: readonly [{ readonly ingredients: readonly [Group, ...Group[]] }];
  hands: readonly Group[];
}
type Group = Record<string, unknown>;
type Spoil = (file: Spoilt) => void;

function read(spoil: Spoil): CampRead | CampNotRead {
  const file = structuredClone(pilcrowCreek) as unknown as Spoilt;
  spoil(file);
  return readCampFile(JSON.stringify(file), { date: '2026-09-12' });
}

function notRead(outcome: CampRead | CampNotRead): CampNotRead {
  if (outcome.ok) throw new Error('the file was read');
  return outcome;
}

function whole(spoil: Spoil): CampRead {
  const outcome = read(spoil);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.troubles[0]));
  return outcome;
}

function planned(spoil: Spoil, now?: number): MealPlan {
  const { camp, menu, assumed } = whole(spoil);
  const plan = planMeal(camp, menu, {
    assumed,
    ...(now === undefined ? {} : { now: clockMinutes(now) }),
  });
  // Whatever was wrong: no NaN, no dish gone unsaid, camp and menu as the cook gave them.
  expect(faultOfPlan(plan)).toBeUndefined();
  expect(plan.camp).toEqual(camp);
  expect(plan.menu).toEqual(menu);
  return plan;
}

const dishesOf = (plan: MealPlan) => plan.dishes.map((each) => each.dish.id);
const jobsOf = (plan: MealPlan, dish: string) =>
  plan.daySheet.jobs.filter((job) => job.dish === dish);
const ALL = ['loaf', 'salad', 'apples'];

/** A smaller oven as usually made. */
const ovenOf = (diameter: string) => (file: Spoilt) => {
  const { depth: _, capacity: __, weight: ___, ...oven } = file.ovens[0];
  file.ovens[0] = { ...oven, diameter };
};

describe('a malformed camp file', () => {
  it('that is torn off says where, and every part before the edge is kept', () => {
    const text = JSON.stringify(pilcrowCreek);
    const torn = notRead(readCampFile(text.slice(0, text.indexOf('"recipes"') + 40)));
    expect(torn.troubles[0]).toMatchObject({ code: 'FILE_NOT_JSON' });
    expect(torn.troubles[0]?.next).not.toBe('');
    expect(torn.salvaged).toMatchObject({ ovens: pilcrowCreek.ovens, menu: pilcrowCreek.menu });
  });

  it('with several faults names all of them at once, by path, and keeps every sound part', () => {
    const outcome = notRead(
      read((file) => {
        file.ovens[0].diametre = '10 in';
        delete file.weather[0].air;
        file.menu[0].serve = 'one o’clock';
      }),
    );
    const told = outcome.troubles.map(({ code, path }) => [code, path]);
    expect(told).toContainEqual(['FILE_KEY_UNKNOWN', 'ovens[0].diametre']);
    expect(told).toContainEqual(['FILE_KEY_MISSING', 'weather[0].air']);
    expect(told).toContainEqual(['FILE_TIME_UNREADABLE', 'menu[0].serve']);
    for (const each of outcome.troubles) {
      for (const words of [each.found, each.wanted, each.next]) expect(words).not.toBe('');
    }
    const { recipes, mouths, hands, fuel, gear } = pilcrowCreek;
    expect(outcome.salvaged).toMatchObject({ recipes, mouths, hands, fuel, gear });
  });
});

describe('an amount', () => {
  it.each([
    ['negative', '-450 g'],
    ['nothing', '0 g'],
    ['of a shipload', '90000 kg'],
  ])('that is %s is refused by path with the bounds, the rest of the file is kept', (_, weight) => {
    const outcome = notRead(
      read((file) => {
        file.recipes[0].ingredients[0].weight = weight;
      }),
    );
    expect(outcome.troubles).toHaveLength(1);
    expect(outcome.troubles[0]).toMatchObject({
      code: 'FILE_QUANTITY_OUTSIDE',
      path: 'recipes[0].ingredients[0].weight',
      found: `"${weight}"`,
      wanted: 'a weight between 0.01 g and 2000 kg',
    });
    const kept = { menu: pilcrowCreek.menu, ovens: pilcrowCreek.ovens };
    expect(outcome.salvaged).toMatchObject(kept);
  });

  it('that is absurd but readable refuses its dish alone', () => {
    const plan = planned((file) => {
      file.recipes[0].ingredients[0].weight = '500 kg';
    });
    expect(plan.refusals).toContainEqual(
      expect.objectContaining({
        code: 'MENU_AMOUNT_ABSURD',
        about: { dish: 'loaf', recipe: 'meadow-loaf', ingredient: 'bread flour' },
        conflicts: ['recipes.meadow-loaf.ingredients.bread flour'],
      }),
    );
    expect(dishesOf(plan)).toEqual(['salad', 'apples']);
    expect(plan.daySheet.status).toBe('planned');
  });

  it('that turns negative in the app, past the reader, refuses its dish alone', () => {
    const { camp, menu } = whole(() => {});
    const [loaf, ...others] = menu.recipes;
    const ingredients = loaf!.ingredients.map((each, index) =>
      index === 0 ? { ...each, grams: grams(-450) } : each,
    );
    const plan = planMeal(camp, { ...menu, recipes: [{ ...loaf!, ingredients }, ...others] });
    expect(faultOfPlan(plan)).toBeUndefined();
    expect(plan.refusals.map((each) => [each.code, each.about.dish])).toContainEqual([
      'MENU_AMOUNT_IMPOSSIBLE',
      'loaf',
    ]);
    expect(dishesOf(plan)).toEqual(expect.arrayContaining(['salad', 'apples']));
  });

  it('of portions for a town refuses its dish alone', () => {
    const plan = planned((file) => {
      file.menu[0].portions = 19_000;
    });
    expect(plan.refusals).toContainEqual(
      expect.objectContaining({
        code: 'MENU_AMOUNT_ABSURD',
        conflicts: ['menu.loaf.portions'],
        values: { portions: 19_000 },
      }),
    );
    expect(dishesOf(plan)).toEqual(['salad', 'apples']);
  });
});

describe('an oven too small for any batch', () => {
  it('refuses what it can not hold, with what would go in and what would hold it', () => {
    const plan = planned(ovenOf('4 in'));
    expect(plan.refusals.map((each) => [each.code, each.about.dish])).toEqual([
      ['MENU_OVEN_TOO_SMALL', 'loaf'],
      ['MENU_OVEN_TOO_SMALL', 'apples'],
    ]);
    for (const { values, conflicts, about } of plan.refusals) {
      expect(Number(values.biggestGrams)).toBeGreaterThan(0);
      expect(Number(values.biggestGrams)).toBeLessThan(Number(values.massGrams));
      expect(Number(values.diameterMetres)).toBeGreaterThan(4 * 0.0254);
      expect(conflicts).toEqual([`menu.${about.dish}`, 'ovens']);
    }
    expect(dishesOf(plan)).toEqual(['salad']);
    expect(jobsOf(plan, 'salad').length).toBeGreaterThan(0);
  });

  it('that is pinned is kept and judged, not rewritten', () => {
    const plan = planned((file) => {
      ovenOf('8 in')(file);
      file.menu[2].portions = 12;
      file.menu[2].pins = { oven: 'A' };
    });
    const apples = plan.dishes.find((each) => each.dish.id === 'apples');
    expect(apples?.loads.map((each) => each.load.oven)).toEqual(['A']);
    expect(apples?.portions.portions).toBeGreaterThanOrEqual(12);
    expect(apples?.notices).toContainEqual(
      expect.objectContaining({
        code: 'MENU_PINNED_OVEN_OVERFULL',
        level: 'stop',
        about: { dish: 'apples', oven: 'A' },
      }),
    );
  });
});

describe('a serving time that is past', () => {
  it('is named for each such dish, and the sheet shows the soonest that it can be', () => {
    const now = 13 * 60 + 20; // the loaf and the salad were to be served at 13:00
    const plan = planned(() => {}, now);
    const proven = plan.daySheet.proven ?? [];
    const past = proven.filter((each) => each.code === 'TIMETABLE_SERVING_PAST');
    expect(past[0]?.conflicts).toEqual([`menu.${past[0]?.about.dish}.serveAt`, 'now']);
    expect(past.map((each) => each.about.dish).sort()).toEqual(['loaf', 'salad']);
    expect(plan.daySheet.status).not.toBe('planned');
    expect(dishesOf(plan)).toEqual(ALL);
    for (const dish of ALL) {
      const starts = jobsOf(plan, dish).map((job) => Number(job.start));
      expect(Math.min(...starts), dish).toBeGreaterThanOrEqual(now);
    }
  });
});

describe('no hands', () => {
  it('are refused by name, and dishes, coals and shopping are there all the same', () => {
    const plan = planned((file) => {
      file.hands = [];
    });
    expect(plan.refusals).toContainEqual(
      expect.objectContaining({ code: 'CAMP_NO_HANDS', conflicts: ['hands'] }),
    );
    expect(plan.daySheet.status).toBe('impossible');
    expect(plan.daySheet.notices.map((each) => each.code)).toContain('TIMETABLE_NO_HANDS');
    expect(dishesOf(plan)).toEqual(ALL);
    expect(plan.dishes.flatMap((each) => each.loads)).toHaveLength(2);
    expect(plan.provisions.shopping.length).toBeGreaterThan(0);
  });
});

describe('fire forbidden at the place (fire-stages)', () => {
  it.each(['stage-1', 'stage-2'])(
    'by %s refuses every dish over coals and plans the cold one',
    (restriction) => {
      const plan = planned((file) => {
        file.place.restriction = restriction;
      });
      expect(plan.safety.fire).toBe('forbidden');
      expect(
        plan.refusals.map(({ code, about, conflicts }) => ({ code, about, conflicts })),
      ).toEqual(
        ['loaf', 'apples'].map((dish) => ({
          code: 'SAFETY_FIRE_FORBIDDEN',
          about: { dish },
          conflicts: ['place.restriction', `menu.${dish}`],
        })),
      );
      expect(dishesOf(plan)).toEqual(['salad']);
      expect(plan.daySheet.status).toBe('planned');
      expect(plan.daySheet.jobs.filter((job) => job.oven !== undefined)).toEqual([]);
      expect(plan.provisions.fuel.mass).toBe(0);
    },
  );
});
