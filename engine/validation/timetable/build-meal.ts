// Made-up meals for the timetable's tests. Coal and bake plans here are plausible numbers chosen by
// hand (grade D): they test the clock, never the heat.

import type { BakePlan } from '../../src/bake/bake-plan.ts';
import type { Camp, CampOven, Hand, Skill } from '../../src/camp/camp.ts';
import type { CoalPlan } from '../../src/coals/coal-plan.ts';
import type { OvenLoad } from '../../src/menu/load.ts';
import type { MenuDish } from '../../src/menu/menu.ts';
import type { Ingredient, Recipe, RecipeStep, StepKind } from '../../src/menu/recipe.ts';
import {
  clockMinutes,
  cubicMetres,
  degrees,
  fromCelsius,
  grams,
  joules,
  kelvinDifference,
  metres,
  metresPerSecond,
  minutes,
  ratio,
  squareMetres,
} from '../../src/quantity/unit.ts';
import type { DishWork, LoadWork, TimetableRequest } from '../../src/timetable/day-sheet.ts';

export const at = (text: string) => {
  const [hours, rest] = text.split(':').map(Number);
  return clockMinutes(hours! * 60 + rest!);
};

export const hand = (id: string, skill: Skill, hours: readonly [string, string]): Hand => ({
  id,
  name: id,
  skill,
  from: at(hours[0]),
  to: at(hours[1]),
});

export const oven = (
  id: string,
  inches: number,
  style: CampOven['style'] = 'regular',
): CampOven => ({
  id,
  name: `oven ${id}`,
  diameter: metres(inches * 0.0254),
  depth: metres(0.1),
  style,
  capacity: cubicMetres(0.006),
  mass: grams(9000),
  keptFreeOf: [],
});

export function camp(wish: {
  readonly hands: readonly Hand[];
  readonly ovens: readonly CampOven[];
  readonly chimneys?: number;
  readonly chimneyfulCoals?: number;
  readonly tables?: number;
  readonly woodLead?: number;
  readonly strictGluten?: boolean;
}): Camp {
  return {
    id: 'test',
    title: 'test',
    place: { name: 'test', elevation: metres(300), ground: 'grass', hearth: 'fire-pan' },
    date: '2026-09-12',
    timeZone: 'UTC',
    weather: [
      {
        at: clockMinutes(600),
        air: fromCelsius(14),
        wind: metresPerSecond(3),
        gust: metresPerSecond(5),
        windFrom: degrees(270),
      },
    ],
    mouths: [{ count: 4, appetite: 'ordinary' }],
    needs: wish.strictGluten ? [{ who: 'a guest', kind: 'gluten', strictness: 'strict' }] : [],
    hands: wish.hands,
    ovens: wish.ovens,
    fuel:
      wish.woodLead === undefined
        ? { kind: 'briquettes', pieceMass: grams(25), isMeasured: false }
        : { kind: 'wood-coals', lead: minutes(wish.woodLead) },
    gear: {
      chimneys: wish.chimneys ?? 1,
      chimneyfulCoals: wish.chimneyfulCoals ?? 60,
      lidStands: 1,
      tables: wish.tables ?? 1,
      windScreens: 1,
      thermometer: true,
      others: [],
    },
    restriction: 'none',
  };
}

interface StepWish {
  readonly hands?: number;
  readonly skill?: Skill;
  readonly table?: boolean;
  readonly after?: readonly (readonly [step: string, least: number, most?: number])[];
}

export const step = (kind: StepKind, length: number, wish: StepWish = {}): RecipeStep => ({
  id: kind,
  kind,
  say: kind,
  minutes: minutes(length),
  hands: wish.hands ?? 1,
  skill: wish.skill ?? 'new',
  needsTable: wish.table ?? false,
  after: (wish.after ?? []).map(([before, least, most]) => ({
    step: before,
    least: minutes(least),
    ...(most === undefined ? {} : { most: minutes(most) }),
  })),
});

export const named = (id: string, made: RecipeStep): RecipeStep => ({ ...made, id, say: id });

export function recipe(
  id: string,
  kind: Recipe['kind'],
  steps: readonly RecipeStep[],
  wish: Partial<Recipe> & { readonly canWait?: number; readonly rest?: number } = {},
): Recipe {
  const { canWait = 15, rest = 0, ...more } = wish;
  return {
    id,
    name: id,
    kind,
    method: 'bake',
    portions: 12,
    ingredients: [],
    steps,
    target: { canWait: minutes(canWait), rest: minutes(rest), isCold: false },
    division: [],
    contains: [],
    ...more,
  };
}

export const wheat: Ingredient = {
  name: 'bread flour',
  grams: grams(1000),
  asWritten: '8 cups',
  part: 'flour',
  allergens: ['wheat', 'gluten'],
  checkLabel: [],
};

export const beef: Ingredient = {
  name: 'beef chuck',
  grams: grams(2900),
  asWritten: '6 1/2 lb',
  part: 'meat',
  allergens: [],
  checkLabel: [],
};

export function dish(
  id: string,
  of: Recipe,
  serveAt: string,
  more: Partial<Omit<MenuDish, 'id'>> = {},
): MenuDish {
  const base = { id, name: id, recipe: of.id, serveAt: at(serveAt), freeFrom: false, pins: {} };
  return { ...base, ...more };
}

interface LoadWish {
  readonly oven: string;
  readonly coals: readonly [above: number, below: number];
  readonly loadIn?: number;
  readonly out: number;
  readonly turns?: readonly number[];
  readonly additions?: readonly (readonly [minute: number, above: number, below: number])[];
  readonly checks?: readonly number[];
  readonly mass?: number;
  readonly core?: number;
  readonly shape?: OvenLoad['shape'];
}

export function loadWork(dishId: string, wish: LoadWish, count = 1): LoadWork {
  const id = `${dishId}-${count}`;
  return { load: loadOf(id, dishId, wish), coals: coalsOf(id, wish), bake: bakeOf(id, wish) };
}

function loadOf(id: string, dishId: string, wish: LoadWish): OvenLoad {
  return {
    id,
    dish: dishId,
    oven: wish.oven,
    mass: grams(wish.mass ?? 1500),
    portions: 12,
    shape: wish.shape ?? 'disc',
    thickness: metres(0.04),
    risenHeight: metres(0.08),
    planArea: squareMetres(0.05),
    volume: cubicMetres(0.002),
    pieces: [],
    fill: ratio(0.8),
    headroom: metres(0.02),
  };
}

function coalsOf(id: string, wish: LoadWish): CoalPlan {
  const set = (pieces: number) => ({ pieces, ring: pieces, spread: 0, rings: 1, places: [] });
  const [above, below] = wish.coals;
  return {
    load: id,
    oven: wish.oven,
    fuel: 'briquettes',
    method: 'bake',
    isPinned: false,
    above: set(above),
    below: set(below),
    reckoning: { above, below, because: [], others: [] },
    loadInMinute: minutes(wish.loadIn ?? 0),
    outMinute: minutes(wish.out),
    wanted: { low: fromCelsius(190), high: fromCelsius(210) },
    curve: [],
    turns: (wish.turns ?? []).map((minute) => ({
      minute: minutes(minute),
      kind: 'food' as const,
      angle: degrees(90),
    })),
    additions: (wish.additions ?? []).map(([minute, more, less]) => ({
      minute: minutes(minute),
      above: more,
      below: less,
      clearAsh: false,
    })),
    checks: (wish.checks ?? []).map((minute) => ({
      minute: minutes(minute),
      oven: minute < (wish.loadIn ?? 0) ? ('empty' as const) : ('full' as const),
      ways: [],
      costs: { heat: kelvinDifference(5), minutes: minutes(1) },
      ifHot: [],
      ifCool: [],
    })),
    moves: [],
    unevenness: {
      unturned: kelvinDifference(20),
      turned: kelvinDifference(5),
      windward: true,
    },
    fuelMass: grams(700),
    coalsInAll: above + below,
    energy: {
      givenJoules: joules(1),
      ironJoules: joules(0),
      loadJoules: joules(0),
      lossJoules: joules(1),
      errorRatio: ratio(0),
    },
    notices: [],
  };
}

function bakeOf(id: string, wish: LoadWish): BakePlan {
  const length = wish.out - (wish.loadIn ?? 0);
  return {
    load: id,
    minutes: minutes(length),
    least: minutes(length - 5),
    most: minutes(length + 8),
    done: {
      ...(wish.core === undefined ? {} : { core: fromCelsius(wish.core) }),
      cappedByBoil: false,
      margin: kelvinDifference(2),
      signs: [],
    },
    loss: ratio(0.1),
    notices: [],
  };
}

export function work(
  of: Recipe,
  on: MenuDish,
  loads: readonly LoadWish[],
  more: {
    readonly rise?: readonly [first: number, second: number];
    readonly canWait?: number;
  } = {},
): DishWork {
  return {
    dish: on,
    recipe: of,
    loads: loads.map((wish, index) => loadWork(on.id, wish, index + 1)),
    canWait: minutes(more.canWait ?? of.target.canWait),
    ...(more.rise === undefined
      ? {}
      : {
          rise: {
            dough: fromCelsius(22),
            first: minutes(more.rise[0]),
            second: minutes(more.rise[1]),
            least: minutes(more.rise[0] - 20),
            most: minutes(more.rise[0] + 25),
          },
        }),
  };
}

export const request = (
  of: Camp,
  dishes: readonly DishWork[],
  more: Partial<TimetableRequest> = {},
): TimetableRequest => ({
  camp: of,
  dishes,
  ashOver: minutes(22),
  coalLife: minutes(55),
  ...more,
});
