// The two demo camps as the timetable sees them: hands, hours, ovens, dishes and serving times are
// the camps' own; coals and minutes are plausible numbers chosen by hand.

import { minutes } from '../../src/quantity/unit.ts';
import type { TimetableRequest } from '../../src/timetable/day-sheet.ts';
import * as make from './build-meal.ts';

export function pilcrowCreek(): TimetableRequest {
  const camp = make.camp({
    hands: [make.hand('cook', 'steady', ['9:15', '14:30'])],
    ovens: [make.oven('A', 10)],
    chimneyfulCoals: 40,
  });
  const loaf = make.recipe(
    'meadow-loaf',
    'yeast-bread',
    [
      make.step('weigh', 4),
      make.step('mix', 8, { table: true, after: [['weigh', 0]] }),
      make.step('rest', 15, { hands: 0, after: [['mix', 0, 5]] }),
      make.step('fold', 3, { table: true, after: [['rest', 0, 10]] }),
      make.step('rise', 75, { hands: 0, after: [['fold', 0, 0]] }),
      make.step('shape', 5, { table: true, after: [['rise', 0, 15]] }),
      make.step('second-rise', 30, { hands: 0, after: [['shape', 0, 5]] }),
      make.step('load', 2, { skill: 'steady', after: [['second-rise', 0, 10]] }),
      make.step('cook', 40, { hands: 0, after: [['load', 0]] }),
      make.step('take-out', 2, { skill: 'steady', after: [['cook', 0]] }),
      make.named('cool', make.step('rest', 20, { hands: 0, after: [['take-out', 0]] })),
      make.step('cut', 3, { after: [['cool', 0]] }),
    ],
    { canWait: 25, rest: 20, ingredients: [make.wheat] },
  );
  const salad = make.recipe(
    'bean-salad',
    'cold-dish',
    [make.step('prepare', 10, { table: true }), make.step('dress', 3, { after: [['prepare', 0]] })],
    { method: 'none', canWait: 60 },
  );
  const apples = make.recipe(
    'baked-apples',
    'fruit',
    [
      make.step('prepare', 10, { table: true }),
      make.step('load', 2, { skill: 'steady', after: [['prepare', 0]] }),
      make.step('cook', 30, { hands: 0, after: [['load', 0]] }),
      make.step('take-out', 2, { skill: 'steady', after: [['cook', 0]] }),
    ],
    { canWait: 20 },
  );
  return make.request(
    camp,
    [
      make.work(
        loaf,
        make.dish('loaf', loaf, '13:00'),
        [{ oven: 'A', coals: [15, 7], out: 45, turns: [15, 30], checks: [12, 28], core: 93 }],
        { rise: [80, 35] },
      ),
      make.work(salad, make.dish('salad', salad, '13:00'), []),
      make.work(apples, make.dish('apples', apples, '13:40'), [
        { oven: 'A', coals: [10, 8], out: 32, turns: [16], checks: [12] },
      ]),
    ],
    { ashOver: minutes(20), coalLife: minutes(60) },
  );
}

function saddleRecipes() {
  const stew = make.recipe(
    'saddle-stew',
    'braise',
    [
      make.step('prepare', 30, { table: true }),
      make.step('brown', 25, { skill: 'steady', after: [['prepare', 0, 30]] }),
      make.step('cook', 150, { hands: 0, after: [['brown', 0, 5]] }),
      make.step('stir', 3, { skill: 'steady', after: [['cook', 0]] }),
    ],
    { method: 'simmer', canWait: 60, ingredients: [make.beef] },
  );
  const pinto = make.recipe(
    'pinto-pot',
    'stew',
    [
      make.step('prepare', 20, { table: true }),
      make.step('cook', 60, { hands: 0, after: [['prepare', 0]] }),
    ],
    { method: 'simmer', canWait: 60 },
  );
  const dough = make.recipe(
    'mountain-dough',
    'yeast-bread',
    [
      make.step('weigh', 5),
      make.step('mix', 12, { skill: 'steady', table: true, after: [['weigh', 0]] }),
      make.step('fold', 4, { table: true, after: [['mix', 15, 30]] }),
      make.step('rise', 75, { hands: 0, after: [['fold', 0, 0]] }),
      make.step('shape', 20, { skill: 'steady', table: true, after: [['rise', 0, 40]] }),
      make.step('second-rise', 35, { hands: 0, after: [['shape', 0, 10]] }),
      make.step('cook', 30, { hands: 0, after: [['second-rise', 0, 15]] }),
      make.step('take-out', 3, { skill: 'steady', after: [['cook', 0]] }),
    ],
    {
      canWait: 20,
      rest: 10,
      ingredients: [make.wheat],
      division: [
        { shape: 'roll', count: 24, gramsEach: 66 as never, portionsEach: 1 },
        { shape: 'round', count: 1, gramsEach: 1049 as never, portionsEach: 8 },
      ],
    },
  );
  const corn = make.recipe(
    'blue-cornbread',
    'corn-bread',
    [
      make.step('weigh', 4),
      make.step('mix', 6, { table: true, after: [['weigh', 0]] }),
      make.step('cook', 32, { hands: 0, after: [['mix', 0, 20]] }),
    ],
    { canWait: 20 },
  );
  const slaw = make.recipe('slaw-24', 'cold-dish', [make.step('dress', 10, { table: true })], {
    method: 'none',
    canWait: 75,
  });
  const cobbler = make.recipe(
    'peach-cobbler',
    'cobbler',
    [
      make.step('weigh', 4),
      make.step('mix', 8, { table: true, after: [['weigh', 0]] }),
      make.step('cook', 45, { hands: 0, after: [['mix', 0, 25]] }),
    ],
    { canWait: 30, rest: 10, ingredients: [make.wheat] },
  );
  return { stew, pinto, dough, corn, slaw, cobbler };
}

export function harrowSaddle(more: Partial<TimetableRequest> = {}): TimetableRequest {
  const of = saddleRecipes();
  const camp = make.camp({
    hands: [
      make.hand('camp-cook', 'camp-cook', ['13:30', '20:30']),
      make.hand('fire-hand', 'steady', ['14:30', '20:30']),
      make.hand('new-hand', 'new', ['16:00', '20:00']),
    ],
    ovens: [
      make.oven('A', 14, 'deep'),
      make.oven('B', 14),
      make.oven('C', 12, 'deep'),
      make.oven('D', 12),
      { ...make.oven('E', 12), keptFreeOf: ['gluten', 'wheat'] },
    ],
    chimneys: 2,
    chimneyfulCoals: 60,
    tables: 2,
    strictGluten: true,
  });
  const rise = [75, 35] as const;
  return make.request(
    camp,
    [
      make.work(of.stew, make.dish('stew', of.stew, '18:30'), [
        {
          oven: 'A',
          coals: [10, 22],
          out: 165,
          additions: [
            [40, 6, 12],
            [80, 6, 12],
            [120, 5, 10],
          ],
          checks: [30],
          shape: 'pot',
          core: 74,
        },
      ]),
      make.work(of.pinto, make.dish('pinto', of.pinto, '18:30'), [
        {
          oven: 'D',
          coals: [8, 12],
          out: 70,
          additions: [[40, 4, 6]],
          checks: [25],
          shape: 'pot',
          core: 74,
        },
      ]),
      make.work(
        of.dough,
        make.dish('rolls', of.dough, '18:30', { pieces: ['roll'] }),
        [
          {
            oven: 'B',
            coals: [24, 12],
            out: 30,
            turns: [10, 20],
            checks: [12],
            shape: 'pieces',
            mass: 1584,
          },
        ],
        { rise },
      ),
      make.work(
        of.dough,
        make.dish('loaf', of.dough, '18:30', { pieces: ['round'] }),
        [
          {
            oven: 'C',
            coals: [20, 10],
            out: 42,
            turns: [14, 28],
            checks: [12],
            mass: 1049,
            core: 90,
          },
        ],
        { rise },
      ),
      make.work(of.corn, make.dish('cornbread', of.corn, '18:30', { freeFrom: true }), [
        {
          oven: 'E',
          coals: [19, 9],
          out: 38,
          loadIn: 6,
          turns: [16, 27],
          checks: [4, 18],
          core: 90,
        },
      ]),
      make.work(of.slaw, make.dish('slaw', of.slaw, '18:30'), []),
      make.work(of.cobbler, make.dish('cobbler', of.cobbler, '19:15'), [
        {
          oven: 'B',
          coals: [26, 10],
          out: 45,
          turns: [15, 30],
          additions: [[30, 4, 2]],
          checks: [14],
        },
      ]),
    ],
    { ashOver: minutes(24), coalLife: minutes(55), ...more },
  );
}
