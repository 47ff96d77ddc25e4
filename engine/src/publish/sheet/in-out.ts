// Into and out of the oven: greasing, lining, loading a hot oven, the bottom crust, turning out,
// cutting, keeping warm. Common practice, no source, except where a line says otherwise.

import type { CampOven } from '../../camp/camp.ts';
import type { DishPlan, LoadPlan } from '../../meal.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { signPhrase } from './check-phrases.ts';
import { isBread, loadNoun } from './moments.ts';
import { listed, sentenceCase } from './phrases.ts';

/** Nominal size from which a full oven is a two-person lift. */
const TWO_PERSON_METRES = 0.35;
const TWO_PERSON_DEPTH_METRES = 0.11;

export function inOutBlocks(
  dish: DishPlan,
  part: LoadPlan,
  oven: CampOven,
  say: Say,
): readonly Block[] {
  return [
    { type: 'heading', text: 'Into the oven', half: true },
    { type: 'list', tick: true, items: intoLines(dish, part, oven) },
    { type: 'heading', text: 'Done when', half: true },
    ...doneBlocks(part, say),
    { type: 'heading', text: 'Out of the oven', half: true },
    { type: 'list', tick: true, items: outLines(dish, oven, say) },
  ];
}

function intoLines(dish: DishPlan, { coals }: LoadPlan, oven: CampOven): readonly string[] {
  const isLined = isBread(dish) && loadNoun(dish) === 'dough';
  const lines = [
    oven.keptFreeOf.length > 0 ? 'Own spoon, own cloth, own board; hands washed first.' : undefined,
    `Wipe a thin film of fat over floor${isBread(dish) ? ', wall and the inside of the lid' : ' and wall'} before any coals are on.`,
    isLined
      ? 'Cut a circle of baking paper a hand wider than the floor, with two long tabs to lift by.'
      : undefined,
    coals.loadInMinute > 0
      ? `Hot oven: lid to the stand, ${intoHot(dish, isLined)}, gloves on both hands, lid straight back.`
      : `Cold oven: ${loadNoun(dish) === 'pot' ? 'food' : loadNoun(dish)} in, lid on, then lay the coals.`,
    'Handle of the lid east and west, chalk mark to the north, as in the drawing.',
  ];
  return lines.filter((line) => line !== undefined);
}

function intoHot(dish: DishPlan, isLined: boolean): string {
  if (isLined) return 'lower the dough in by the tabs';
  return loadNoun(dish) === 'batter' ? 'pour the batter in' : 'set it in';
}

function doneBlocks({ bake }: LoadPlan, say: Say): readonly Block[] {
  const { done } = bake;
  const rows = [
    ...(done.core === undefined
      ? []
      : [
          {
            label: 'Middle',
            value: `${say.degrees(done.core)} or more`,
            ...(done.cappedByBoil && done.wantedCore !== undefined
              ? {
                  note: `the recipe says ${say.degrees(done.wantedCore)}; water boils lower here, so it never gets there`,
                }
              : {}),
          },
        ]),
    ...(done.top === undefined ? [] : [{ label: 'Top', value: done.top }]),
    ...(done.bottom === undefined
      ? []
      : [{ label: 'Bottom crust', value: done.bottom, note: 'counts as much as the middle' }]),
    {
      label: 'After',
      value: `${say.minutes(bake.least)} to ${say.minutes(bake.most)} in the oven`,
      note: `most likely ${say.minutes(bake.minutes)}`,
    },
  ];
  const signs = done.signs.filter((sign) => sign !== 'core' && sign !== 'bottom-crust');
  return [
    { type: 'facts', rows },
    ...(signs.length === 0
      ? []
      : [
          {
            type: 'paragraph',
            parts: [{ text: `${sentenceCase(listed(signs.map(signPhrase)))}.` }],
          } as const,
        ]),
  ];
}

function outLines(dish: DishPlan, oven: CampOven, say: Say): readonly string[] {
  const isHeavy = oven.diameter >= TWO_PERSON_METRES && oven.depth >= TWO_PERSON_DEPTH_METRES;
  const { rest, canWait } = dish.recipe.target;
  const lines = [
    'Lid with its coals to the lid stand first, never face down on the ground.',
    isHeavy ? 'This oven is lifted by two people.' : undefined,
    ...(isBread(dish)
      ? [
          loadNoun(dish) === 'dough'
            ? 'A thin knife round the edge; lift out by the tabs. If it sticks: lid on, no coals, five minutes, and try again.'
            : 'A thin knife round the edge, a board over it, turn both over. If it sticks: lid on, no coals, five minutes, and try again.',
          'Tap the bottom, stand it on a rack so that steam does not soften the crust.',
          ...cutLines(dish),
        ]
      : []),
    rest > 0 ? `Let it rest ${say.minutes(rest)} before it is cut.` : undefined,
    canWait > 0
      ? `It may wait ${say.minutes(canWait)}${isBread(dish) ? ' wrapped in a dry cloth' : ' with the lid on'}; after that it is worse.`
      : 'It does not wait: serve it at once.',
  ];
  return lines.filter((line) => line !== undefined);
}

function cutLines({ recipe, dish }: DishPlan): readonly string[] {
  return recipe.division
    .filter(({ shape }) => dish.pieces === undefined || dish.pieces.includes(shape))
    .filter(({ portionsEach }) => portionsEach > 1)
    .map(({ shape, portionsEach }) => `Cut each ${shape} in ${Math.round(portionsEach)}.`);
}
