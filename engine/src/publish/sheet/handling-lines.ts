// The jobs into and out of the oven as lines of a card. Common practice, no source.

import {
  type EvenCuts,
  type HandlingStep,
  type HandlingWork,
  lidHeatMinutes,
  stickingOf,
  UNSTICK_MINUTES,
} from '../../bake/index.ts';
import type { DishPlan, LoadPlan } from '../../meal.ts';
import { dishPieces } from '../../menu/pieces.ts';
import type { Say } from '../say.ts';
import { isBread } from './moments.ts';

export interface Handled {
  readonly dish: DishPlan;
  readonly part: LoadPlan;
  readonly steps: readonly HandlingStep[];
  readonly say: Say;
}

/** What is done before the food goes in; one line a job. */
export function beforeLines({ dish, steps, say }: Handled): readonly string[] {
  const isOnPaper = steps.some(({ work }) => work === 'lay-paper');
  const said: Readonly<Partial<Record<HandlingWork, string>>> = {
    'oil-pot': 'Wipe the oven with oil before any coals are on.',
    grease: `Grease floor${isBread(dish) ? ', wall and the inside of the lid' : ' and wall'} thinly before any coals are on.`,
    'grease-wall':
      'Grease wall and the inside of the lid thinly before any coals are on; none on the floor.',
    'set-rack': `A rack ${say.length(0.0127)} high on the floor${isOnPaper ? '' : ', the tin on it with a finger of air round it'}: air beneath, so the bottom bakes slower and seldom burns.`,
    'strew-meal': `Coarse meal over the floor, ${say.length(0.006)} deep: the bottom bakes slower and seldom burns.`,
    'lay-paper': `${steps.some(({ work }) => work === 'set-rack' || work === 'strew-meal') ? 'On it' : 'On the floor'} a circle of baking paper a hand wider, with two long tabs to lift by.`,
    'grease-tin': 'Grease the tin well, paper on its bottom; fill it no more than two thirds.',
    'heat-lid': `Lid on its stand with its coals on it ${say.minutes(lidHeatMinutes)} before, then onto the oven. The minutes and counts here don't know of it: look for top colour early.`,
    dock: `Prick it right through with a fork, ${say.length(0.0254)} apart all over, so that it rises level.`,
  };
  return steps.flatMap(({ when, work }) => (when === 'before' ? (said[work] ?? []) : []));
}

/** How it comes out, and what to do where it holds on. */
export function outOfOvenLines({ dish, part, steps }: Handled): readonly string[] {
  if (!isBread(dish)) return [];
  const said: Readonly<Partial<Record<HandlingWork, string>>> = {
    'lift-by-tabs': 'A thin knife round the edge; lift out by the tabs.',
    'lift-each': 'A broad blade under each, one after the other.',
    'turn-over': 'A thin knife round the edge, a board over it, turn both over.',
    'tip-from-tin':
      'Tin out with both gloves; a thin knife round the edge, tip the bread out at once.',
  };
  const lifts = steps.flatMap(({ work }) => said[work] ?? []);
  return [
    `${lifts.join(' ')} ${stickLine(dish, part)}`,
    `${dish.recipe.kind === 'biscuit' ? 'Stand them' : 'Tap the bottom, stand it'} on a rack so that steam does not soften the crust.`,
  ];
}

const NUMBER = ['', 'one', 'two', 'three', 'four', 'five'];

function stickLine(dish: DishPlan, { load }: LoadPlan): string {
  const risk = stickingOf({ recipe: dish.recipe, dish: dish.dish, load });
  const holds = risk === 'no' ? 'If the wall holds it' : 'If it sticks';
  return `${holds}: lid on, no coals, ${NUMBER[UNSTICK_MINUTES]} minutes, and try again.`;
}

/** How to cut it into so many even pieces; none where it is broken or not divided. */
export function cutLines({ dish, steps, say }: Handled): readonly string[] {
  if (isPulled(dish))
    return ['Pull them apart by hand, from the middle; a knife presses the crumb.'];
  return steps.flatMap(({ cuts }) =>
    cuts === undefined ? [] : [`Cut it in ${cuts.pieces}: ${cutsWord(cuts, say)}.`],
  );
}

/** Rolls that grew together. */
const isPulled = ({ recipe, dish }: DishPlan): boolean =>
  recipe.kind === 'yeast-bread' && dishPieces(recipe, dish).some(({ shape }) => shape === 'roll');

function cutsWord(cuts: EvenCuts, say: Say): string {
  switch (cuts.way) {
    case 'wedges':
      return cuts.across === undefined
        ? `from the middle to the edge, ${Math.round(cuts.angleDegrees)}° each`
        : cuts.across === 1
          ? 'once across the middle'
          : `${cuts.across} cuts across the middle, the second square to the first`;
    case 'ring-and-wedges':
      return `a round ${say.percent(cuts.innerOfWhole)} as wide out of the middle, that in ${cuts.inner}, the ring in ${cuts.outer}`;
    case 'slices':
      return 'slices of one thickness, halves first';
    case 'squares':
      return `${cuts.rows} by ${cuts.columns}`;
  }
}
