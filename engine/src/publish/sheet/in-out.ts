// Into and out of the oven: greasing, lining, loading a hot oven, the bottom crust, turning out,
// cutting, keeping warm. Common practice, no source, except where a line says otherwise.

import type { DoneTarget } from '../../bake/bake-plan.ts';
import type { CampOven } from '../../camp/camp.ts';
import type { DishPlan, LoadPlan } from '../../meal.ts';
import type { Notice } from '../../notice/notice.ts';
import type { Block, FactRow } from '../document.ts';
import type { Say } from '../say.ts';
import { signPhrase } from './check-phrases.ts';
import { isBread, isLined, loadNoun } from './moments.ts';
import { listed, sentenceCase } from './phrases.ts';

/** Nominal size from which a full oven is a two-person lift. */
const TWO_PERSON_METRES = 0.35;
const TWO_PERSON_DEPTH_METRES = 0.11;

export interface InAndOut {
  readonly part: LoadPlan;
  readonly oven: CampOven;
  readonly hasThermometer: boolean;
}

export function inOutBlocks(dish: DishPlan, { part, oven, ...kit }: InAndOut, say: Say) {
  const blocks: readonly Block[] = [
    { type: 'heading', text: 'Into the oven', half: true },
    { type: 'list', tick: true, items: intoLines(dish, part, oven) },
    { type: 'heading', text: 'Done when', half: true },
    ...doneBlocks(dish, part, kit.hasThermometer, say),
    { type: 'heading', text: 'Out of the oven', half: true },
    { type: 'list', tick: true, items: outLines(dish, oven, say) },
  ];
  return blocks;
}

function intoLines(dish: DishPlan, { coals }: LoadPlan, oven: CampOven): readonly string[] {
  const lines = [
    oven.keptFreeOf.length > 0 ? 'Own spoon, own cloth, own board; hands washed first.' : undefined,
    ...greaseLines(dish),
    coals.loadInMinute > 0
      ? `Hot oven: lid to the stand, ${intoHot(dish)}, gloves on both hands, lid straight back.`
      : `Cold oven: ${intoCold(dish)}, then lay the coals.`,
    'Handle of the lid east and west, chalk mark to the north, as in the drawing.',
  ];
  return lines.filter((line) => line !== undefined);
}

/** A pot is wiped, biscuits lie on fat, a loaf on paper: one of them, never two. */
function greaseLines(dish: DishPlan): readonly string[] {
  if (loadNoun(dish) === 'pot') return ['Wipe the oven with oil before any coals are on.'];
  if (!isLined(dish))
    return [
      `Grease floor${isBread(dish) ? ', wall and the inside of the lid' : ' and wall'} thinly before any coals are on.`,
    ];
  return [
    'Grease wall and the inside of the lid thinly before any coals are on; none on the floor.',
    'On the floor a circle of baking paper a hand wider, with two long tabs to lift by.',
  ];
}

function intoHot(dish: DishPlan): string {
  if (isLined(dish)) return 'lower the dough in by the tabs';
  if (loadNoun(dish) === 'dough') return 'set the dough on the floor piece by piece';
  return loadNoun(dish) === 'batter' ? 'pour the batter in' : 'set it in';
}

function intoCold(dish: DishPlan): string {
  const noun = loadNoun(dish) === 'pot' ? 'food' : loadNoun(dish);
  const rises = dish.recipe.steps.some(({ kind }) => kind === 'second-rise');
  return `${noun} in, lid on${rises ? ', let it rise there' : ''}`;
}

/**
 * Is this danger told by the line "Middle" already? Two numbers for one probe are one too many.
 *
 * Without a thermometer only a bread's own signs stand for it: a splinter comes out clean far above
 * what makes egg safe. Meat keeps its warning, since nothing but a probe answers it.
 */
export function isSaidByDone(
  { code, values }: Notice,
  dish: DishPlan,
  hasThermometer: boolean,
): boolean {
  if (code !== 'SAFETY_PROBE' || dish.loads.length === 0) return false;
  const isReached = dish.loads.every(
    ({ bake }) => bake.done.core !== undefined && bake.done.core >= Number(values.coreKelvin) - 0.1,
  );
  if (!isReached || hasThermometer) return isReached;
  return isBread(dish) && signsOf(dish.loads[0]?.bake.done).length > 0;
}

const signsOf = (done: DoneTarget | undefined) =>
  (done?.signs ?? []).filter((sign) => sign !== 'core' && sign !== 'bottom-crust');

function doneBlocks(
  dish: DishPlan,
  { bake }: LoadPlan,
  hasThermometer: boolean,
  say: Say,
): readonly Block[] {
  const { done } = bake;
  const signs = sentenceCase(listed(signsOf(done).map(signPhrase)));
  const middle = middleRow(dish, done, { hasThermometer, signs }, say);
  const isSignSaid = middle.some(({ value }) => value === signs);
  const rows = [
    ...middle,
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
  return [
    { type: 'facts', rows },
    ...(signs === '' || isSignSaid
      ? []
      : [{ type: 'paragraph', parts: [{ text: `${signs}.` }] } as const]),
  ];
}

/** One line for the middle: the stricter of the recipe's core and the safe one; a sign without probe. */
function middleRow(
  dish: DishPlan,
  done: DoneTarget,
  { hasThermometer, signs }: { readonly hasThermometer: boolean; readonly signs: string },
  say: Say,
): readonly FactRow[] {
  if (done.core === undefined) return [];
  const core = `${say.degrees(done.core)} or more`;
  if (!hasThermometer && signs !== '') {
    return [{ label: 'Middle', value: signs, note: `a probe would read ${core}` }];
  }
  const notes = [...safeNote(dish, done.core, say), ...boilNote(done, say)];
  return [
    {
      label: 'Middle',
      value: core,
      ...(notes.length === 0 ? {} : { note: notes.join('; ') }),
    },
  ];
}

function safeNote({ safety: { least } }: DishPlan, core: number, say: Say): readonly string[] {
  if (least === undefined || least.core > core + 0.1) return [];
  return [
    `safe from ${say.degrees(least.core)}${least.rest > 0 ? `, then rest ${say.minutes(least.rest)}` : ''}`,
  ];
}

const boilNote = ({ cappedByBoil, wantedCore }: DoneTarget, say: Say): readonly string[] =>
  cappedByBoil && wantedCore !== undefined
    ? [`the recipe says ${say.degrees(wantedCore)}; water boils lower here, so it never gets there`]
    : [];

function outLines(dish: DishPlan, oven: CampOven, say: Say): readonly string[] {
  const isHeavy = oven.diameter >= TWO_PERSON_METRES && oven.depth >= TWO_PERSON_DEPTH_METRES;
  const { rest, canWait } = dish.recipe.target;
  const lines = [
    'Lid with its coals to the lid stand first, never face down on the ground.',
    isHeavy ? 'This oven is lifted by two people.' : undefined,
    ...(isBread(dish)
      ? [
          `${liftOut(dish)} If it sticks: lid on, no coals, five minutes, and try again.`,
          `${dish.recipe.kind === 'biscuit' ? 'Stand them' : 'Tap the bottom, stand it'} on a rack so that steam does not soften the crust.`,
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

function liftOut(dish: DishPlan): string {
  if (isLined(dish)) return 'A thin knife round the edge; lift out by the tabs.';
  return dish.recipe.kind === 'biscuit'
    ? 'A broad blade under each, one after the other.'
    : 'A thin knife round the edge, a board over it, turn both over.';
}

function cutLines({ recipe, dish }: DishPlan): readonly string[] {
  return recipe.division
    .filter(({ shape }) => dish.pieces === undefined || dish.pieces.includes(shape))
    .filter(({ portionsEach }) => Math.round(portionsEach) > 1)
    .map(({ shape, portionsEach }) => `Cut each ${shape} in ${Math.round(portionsEach)}.`);
}
