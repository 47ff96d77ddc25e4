// Test only: a small meal made by hand, so that sheets can be tested apart from the stages.
// Its numbers are invented and prove nothing but that a sheet shows what the plan says.

import type { Camp, CampOven, Fuel } from '../camp/camp.ts';
import type { CoalPlan, CoalSet } from '../coals/coal-plan.ts';
import type { DishPlan, LoadPlan, MealPlan } from '../meal.ts';
import type { Recipe } from '../menu/recipe.ts';
import type { Job, JobKind } from '../timetable/day-sheet.ts';

type FuelKind = Fuel['kind'];
/** Numbers go in bare; the brands are put on where the plan is handed out. */
type Bare<Type> = Type extends number
  ? number
  : Type extends readonly (infer Item)[]
    ? readonly Bare<Item>[]
    : Type extends object
      ? { readonly [Key in keyof Type]: Bare<Type[Key]> }
      : Type;

const brand = <Type>(bare: Bare<Type>) => bare as unknown as Type;

/** Rolls in a 12-inch oven at 17:12, and a slaw without fire. */
export function fixturePlan(fuel: FuelKind = 'briquettes'): MealPlan {
  const dishes = [rolls(fuel), slaw()];
  return brand<MealPlan>({
    camp: camp(fuel),
    menu: { dishes: dishes.map(({ dish }) => dish), recipes: dishes.map(({ recipe }) => recipe) },
    dishes,
    daySheet: {
      status: 'planned',
      jobs: jobs(fuel),
      spans: [
        { oven: 'B', dish: 'rolls', load: 'rolls-1', state: 'second-rise', from: 990, to: 1018 },
        { oven: 'B', dish: 'rolls', load: 'rolls-1', state: 'heating', from: 1032, to: 1050 },
        { oven: 'B', dish: 'rolls', load: 'rolls-1', state: 'cooking', from: 1050, to: 1080 },
        { oven: 'B', dish: 'rolls', load: 'rolls-1', state: 'holding', from: 1080, to: 1096 },
      ],
      lightings: [
        {
          id: 'light-1',
          ...(fuel === 'briquettes' ? { chimney: 1 } : {}),
          at: 1008,
          readyAt: 1030,
          coals: 32,
          uses: [{ job: 'lay-1', coals: 27 }],
        },
      ],
      lit: [
        { at: 1030, waiting: 32, onOvens: 0 },
        { at: 1032, waiting: 5, onOvens: 27 },
        { at: 1062, waiting: 0, onOvens: 31 },
        { at: 1096, waiting: 0, onOvens: 0 },
      ],
      servings: [
        { dish: 'rolls', wanted: 1095, ready: 1090, served: 1095, lateBy: 0, waits: 5 },
        { dish: 'slaw', wanted: 1095, ready: 1040, served: 1095, lateBy: 0, waits: 55 },
      ],
      firstFire: 1008,
      advice: [{ change: 'one-more-hand', amount: 1, lateBy: 0 }],
      notices: [],
    },
    provisions: provisions(fuel),
    safety: {
      fire: 'ask',
      strip: [
        { code: 'SAFETY_CARBON_MONOXIDE', level: 'danger', about: {}, values: {} },
        { code: 'SAFETY_HOT_IRON', level: 'danger', about: {}, values: {} },
      ],
      cautions: [{ code: 'SAFETY_FIRE_ASK', level: 'stop', about: {}, values: {} }],
      unfit: [{ dish: 'rolls', who: 'a guest', because: 'milk' }],
    },
    notices: [],
    refusals: [],
    assumed: [
      { what: 'piece-mass', value: 25 },
      { what: 'chimneys', value: 1 },
      { what: 'wind', value: 2.4 },
    ],
  } as unknown as Bare<MealPlan>);
}

const oven: Bare<CampOven> = {
  id: 'B',
  name: 'B',
  diameter: 0.3048,
  depth: 0.0953,
  style: 'regular',
  capacity: 0.0057,
  mass: 9072,
  keptFreeOf: ['milk'],
  mark: 'blue cord',
};

function camp(fuel: FuelKind): Camp {
  return brand<Camp>({
    id: 'test-camp',
    title: 'Supper at the test bench',
    place: { name: 'Nowhere <meadow>', elevation: 2100, ground: 'gravel', hearth: 'fire-pan' },
    date: '2026-09-12',
    timeZone: 'Etc/UTC',
    weather: [{ at: 960, air: 286, wind: 6, gust: 9, windFrom: 270 }],
    mouths: [{ count: 12, appetite: 'ordinary' }],
    needs: [],
    hands: [
      { id: 'cook', name: 'camp cook', skill: 'camp-cook', from: 900, to: 1200 },
      { id: 'fire', name: 'fire hand', skill: 'steady', from: 900, to: 1200 },
    ],
    ovens: [oven],
    fuel:
      fuel === 'briquettes'
        ? { kind: 'briquettes', pieceMass: 25, isMeasured: false }
        : { kind: 'wood-coals', lead: 60 },
    gear: {
      chimneys: fuel === 'briquettes' ? 1 : 0,
      chimneyfulCoals: 60,
      lidStands: 1,
      tables: 1,
      windScreens: 1,
      thermometer: true,
      others: ['parchment'],
    },
    restriction: 'unknown',
  } as Bare<Camp>);
}

function ringOf(count: number, radius: number, within: 'ring' | 'spread') {
  return Array.from({ length: count }, (_, index) => ({
    x: radius * Math.cos((index / count) * 2 * Math.PI),
    y: radius * Math.sin((index / count) * 2 * Math.PI),
    in: within,
  }));
}

const set = (ring: number, spread: number, radius: number, fuel: FuelKind): Bare<CoalSet> => ({
  pieces: ring + spread,
  ring,
  spread,
  rings: ring / 14,
  ...(fuel === 'wood-coals' ? { shovels: (ring + spread) / 8 } : {}),
  places: [...ringOf(ring, radius, 'ring'), ...ringOf(spread, radius / 2.4, 'spread')],
});

function coalPlan(fuel: FuelKind): Bare<CoalPlan> {
  const isWood = fuel === 'wood-coals';
  const move = {
    do: 'add-above',
    coals: 3,
    effect: 13,
    after: 8,
    ...(isWood ? { shovels: 0.5 } : {}),
  };
  const less = {
    do: 'take-below',
    coals: 2,
    effect: -11,
    after: 8,
    ...(isWood ? { shovels: 0.5 } : {}),
  };
  return {
    load: 'rolls-1',
    oven: 'B',
    fuel: isWood ? 'wood-coals' : 'briquettes',
    method: 'bake',
    isPinned: false,
    above: set(14, 5, 0.128, fuel),
    below: set(8, 0, 0.112, fuel),
    reckoning: {
      ...(isWood ? {} : { chart: { source: 'a-chart', above: 17, below: 8, oven: 450 } }),
      above: 19,
      below: 8,
      because: [
        { cause: 'our-oven-model', coals: -2 },
        { cause: 'wind', coals: 3 },
        { cause: 'cold', coals: 1 },
        { cause: 'height', coals: 0 },
      ],
      others: isWood ? [] : [{ source: 'other', above: 14, below: 7, oven: 450 }],
    },
    loadInMinute: 18,
    outMinute: 48,
    wanted: { low: 444, high: 461 },
    curve: Array.from({ length: 49 }, (_, minute) => {
      const at = 286 + 165 * (1 - Math.exp(-minute / 7));
      return {
        minute,
        oven: at,
        low: at - minute * 0.35,
        high: at + minute * 0.35,
        lid: at,
        floor: at,
        wall: at,
      };
    }),
    turns: [
      { minute: 26, kind: 'food', angle: 90 },
      { minute: 34, kind: 'food', angle: 90 },
      { minute: 41, kind: 'food', angle: 90 },
    ],
    additions: [
      {
        minute: 30,
        above: 3,
        below: 1,
        clearAsh: true,
        ...(isWood ? { shovelsAbove: 0.5, shovelsBelow: 0.5 } : {}),
      },
    ],
    checks: [
      {
        minute: 12,
        oven: 'empty',
        ways: [
          { by: 'thermometer', low: 430, high: 455 },
          { by: 'hand-inside', leastSeconds: 6, mostSeconds: 8 },
          { by: 'flour', colour: 'straw' },
        ],
        costs: { heat: 8, minutes: 2 },
        ifHot: [less],
        ifCool: [move],
      },
      {
        minute: 36,
        oven: 'full',
        ways: [
          { by: 'nose' },
          { by: 'top-colour', colour: 'straw' },
          { by: 'bottom-corner', colour: 'pale' },
        ],
        costs: { heat: 6, minutes: 1 },
        ifHot: [less],
        ifCool: [move],
      },
    ],
    moves: [move, less],
    unevenness: { unturned: 40, turned: 8, windward: true },
    fuelMass: 775,
    coalsInAll: 31,
    energy: { givenJoules: 1, ironJoules: 0.5, loadJoules: 0.2, lossJoules: 0.3, errorRatio: 0 },
    notices: [],
  } as unknown as Bare<CoalPlan>;
}

const dish = (id: string, name: string, freeFrom: boolean) => ({
  id,
  name,
  recipe: id,
  serveAt: 1095,
  freeFrom,
  pins: {},
});

const ingredient = (name: string, grams: number, part: string, asWritten: string) => ({
  name,
  grams,
  asWritten,
  part,
  allergens: part === 'flour' ? ['wheat'] : [],
  checkLabel: [],
});

function rolls(fuel: FuelKind): DishPlan {
  const flour = ingredient('bread flour', 850, 'flour', '7 cups');
  const water = ingredient('water', 540, 'water', '2 1/4 cups');
  const yeast = ingredient('instant yeast', 9, 'yeast', '1 tbsp');
  const part: Bare<LoadPlan> = {
    load: {
      id: 'rolls-1',
      dish: 'rolls',
      oven: 'B',
      mass: 1420,
      portions: 12,
      shape: 'pieces',
      thickness: 0.035,
      risenHeight: 0.062,
      planArea: 0.05,
      volume: 0.002,
      pieces: [],
      fill: 0.8,
      headroom: 0.033,
    },
    air: { temperature: 286, pressure: 78_500, wind: 2.4, windFrom: 270, boiling: 366 },
    coals: coalPlan(fuel),
    bake: {
      load: 'rolls-1',
      minutes: 30,
      least: 26,
      most: 35,
      done: {
        core: 364,
        wantedCore: 367,
        cappedByBoil: true,
        margin: 2,
        top: 'brown',
        bottom: 'straw',
        signs: ['core', 'hollow-tap', 'bottom-crust'],
      },
      loss: 0.1,
      notices: [],
    },
  };
  return brand<DishPlan>({
    dish: dish('rolls', 'Mountain rolls & butter', true),
    recipe: recipe('rolls', 'yeast-bread', [flour, water, yeast]),
    portions: { dish: 'rolls', eaters: 12, portions: 12, reserve: 1, factor: 1, notices: [] },
    formula: {
      dish: 'rolls',
      recipe: 'rolls',
      lines: [
        {
          ingredient: flour,
          grams: 850,
          measure: { amount: 7, measure: 'cup' },
          bakersPercent: 100,
        },
        {
          ingredient: water,
          grams: 561,
          measure: { amount: 2 + 1 / 3, measure: 'cup' },
          bakersPercent: 66,
        },
        {
          ingredient: yeast,
          grams: 9,
          measure: { amount: 3, measure: 'tsp' },
          bakersPercent: 1.06,
        },
      ],
      flour: 850,
      batch: 1420,
      percentages: {
        hydration: 0.66,
        fat: 0,
        salt: 0.018,
        sugar: 0,
        powder: 0,
        soda: 0,
        yeast: 0.0106,
      },
      handling: 'tacky',
      changes: [{ ingredient: 'water', was: 540, now: 561, reason: 'height', source: 'somewhere' }],
      rise: { dough: 297, first: 70, second: 40, least: 55, most: 95 },
      notices: [],
    },
    loads: [part],
    safety: {
      dish: 'rolls',
      hotHold: 330,
      coldHold: 278,
      outLimit: 120,
      freeFrom: ['milk'],
      cautions: [],
    },
    notices: [],
  } as unknown as Bare<DishPlan>);
}

function slaw(): DishPlan {
  const cabbage = ingredient('cabbage', 1500, 'vegetable', '2 heads');
  return brand<DishPlan>({
    dish: dish('slaw', 'Vinegar slaw', false),
    recipe: recipe('slaw', 'cold-dish', [cabbage]),
    portions: { dish: 'slaw', eaters: 12, portions: 12, reserve: 0, factor: 1, notices: [] },
    formula: {
      dish: 'slaw',
      recipe: 'slaw',
      lines: [{ ingredient: cabbage, grams: 1500 }],
      flour: 0,
      batch: 1500,
      changes: [],
      notices: [],
    },
    loads: [],
    safety: {
      dish: 'slaw',
      hotHold: 330,
      coldHold: 278,
      outLimit: 120,
      freeFrom: [],
      cautions: [],
    },
    notices: [],
  } as unknown as Bare<DishPlan>);
}

function recipe(id: string, kind: Recipe['kind'], ingredients: readonly object[]): Bare<Recipe> {
  return {
    id,
    name: id,
    kind,
    method: kind === 'cold-dish' ? 'none' : 'bake',
    portions: 12,
    ingredients,
    steps: [],
    target: { canWait: 10, rest: kind === 'cold-dish' ? 0 : 10, isCold: false },
    division: [],
    contains: [],
  } as unknown as Bare<Recipe>;
}

function jobs(fuel: FuelKind): readonly Bare<Job>[] {
  const job = (id: string, kind: JobKind, start: number, end: number, hand: string) => ({
    id,
    kind,
    dish: 'rolls',
    load: 'rolls-1',
    oven: 'B',
    start,
    end,
    hands: [hand],
    needsTable: false,
    values: {},
    latestStart: start + 4,
    because: { kind: 'before' as const },
    needsCare: false,
  });
  const fire = fuel === 'briquettes' ? 'light-chimney' : 'light-feeder';
  return [
    job('shape-1', 'shape', 975, 990, 'cook'),
    { ...job('light-1', fire, 1008, 1010, 'fire'), oven: undefined, load: undefined },
    job('grease-1', 'grease', 1018, 1022, 'cook'),
    job('lay-1', 'lay-coals', 1030, 1032, 'fire'),
    job('check-1', 'check', 1044, 1046, 'fire'),
    job('load-1', 'load', 1048, 1050, 'cook'),
    job('turn-1', 'turn', 1058, 1059, 'fire'),
    job('add-1', 'add-coals', 1062, 1064, 'fire'),
    job('turn-2', 'turn', 1066, 1067, 'fire'),
    job('turn-3', 'turn', 1073, 1074, 'fire'),
    job('probe-1', 'probe', 1078, 1080, 'cook'),
    job('out-1', 'take-out', 1080, 1084, 'cook'),
    { ...job('call-1', 'call', 1094, 1095, 'cook'), oven: undefined, load: undefined },
    { ...job('ash-1', 'ash-out', 1100, 1115, 'fire'), oven: undefined, load: undefined },
  ] as unknown as readonly Bare<Job>[];
}

function provisions(fuel: FuelKind) {
  return {
    shopping: [
      {
        name: 'bread flour',
        grams: 850,
        measure: { amount: 7, measure: 'cup' },
        shelf: 'dry',
        keep: 'dry',
        dishes: ['rolls'],
        checkLabel: ['soy'],
      },
      {
        name: 'cabbage',
        grams: 1500,
        shelf: 'produce',
        keep: 'cool',
        dishes: ['slaw'],
        checkLabel: [],
      },
    ],
    bags: [
      {
        id: 'rolls-bag',
        dish: 'rolls',
        contents: [{ name: 'bread flour', grams: 850, measure: { amount: 7, measure: 'cup' } }],
        total: 859,
        add: [{ name: 'water', grams: 561 }],
        contains: ['wheat'],
        freeFrom: ['milk'],
      },
    ],
    fuel: {
      kind: fuel,
      ...(fuel === 'briquettes' ? { pieces: 31 } : { shovels: 4 }),
      mass: 775,
      spare: 0.3,
      massWithSpare: 1008,
      short: 0,
    },
    water: [{ use: 'dough', volume: 0.00056, source: 'formula' }],
    waterInAll: 0.00056,
    foodMass: 2359,
    notices: [],
  };
}
