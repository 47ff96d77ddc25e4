// Into and out of the oven: greasing, lining, loading a hot oven, the bottom crust, turning out,
// cutting, keeping warm. Common practice, no source, except where a line says otherwise.

import type { DoneTarget } from '../../bake/bake-plan.ts';
import { doneTargetFor, handlingOf } from '../../bake/index.ts';
import type { CampOven } from '../../camp/camp.ts';
import type { DishPlan, LoadPlan } from '../../meal.ts';
import type { Notice } from '../../notice/notice.ts';
import { isHeavyOven } from '../../timetable/oven-work.ts';
import type { Block, FactRow } from '../document.ts';
import type { Say } from '../say.ts';
import { signPhrase } from './check-phrases.ts';
import { beforeLines, cutLines, type Handled, outOfOvenLines } from './handling-lines.ts';
import { isBread, loadNoun } from './moments.ts';
import { listed, sentenceCase } from './phrases.ts';

export interface InAndOut {
  readonly part: LoadPlan;
  readonly oven: CampOven;
  readonly hasThermometer: boolean;
}

export function inOutBlocks(dish: DishPlan, { part, oven, ...kit }: InAndOut, say: Say) {
  const handled = { dish, part, steps: stepsOf(dish, part), say };
  const blocks: readonly Block[] = [
    { type: 'heading', text: 'Into the oven', half: true },
    { type: 'list', tick: true, items: intoLines(handled, oven) },
    { type: 'heading', text: 'Done when', half: true },
    ...doneBlocks(dish, part, kit.hasThermometer, say),
    { type: 'heading', text: 'Out of the oven', half: true },
    { type: 'list', tick: true, items: outLines(handled, oven) },
  ];
  return blocks;
}

const stepsOf = ({ recipe, dish }: DishPlan, { load, coals }: LoadPlan) =>
  handlingOf({ recipe, dish, load, isHot: coals.loadInMinute > 0 });

function intoLines(handled: Handled, oven: CampOven): readonly string[] {
  const { dish, part } = handled;
  const lines = [
    oven.keptFreeOf.length > 0 ? 'Own spoon, own cloth, own board; hands washed first.' : undefined,
    ...beforeLines(handled),
    part.coals.loadInMinute > 0
      ? `Hot oven: lid to the stand, ${intoHot(handled)}, gloves on both hands, lid straight back.`
      : `Cold oven: ${intoCold(dish)}, then lay the coals.`,
    'Handle of the lid east and west, chalk mark to the north, as in the drawing.',
  ];
  return lines.filter((line) => line !== undefined);
}

function intoHot({ dish, steps }: Handled): string {
  if (steps.some(({ work }) => work === 'tip-from-tin')) return 'set the tin on its rack';
  if (steps.some(({ work }) => work === 'lay-paper')) return 'lower the dough in by the tabs';
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
  part: LoadPlan,
  hasThermometer: boolean,
  say: Say,
): readonly Block[] {
  const { bake } = part;
  const { done } = bake;
  const signs = sentenceCase(listed(signsOf(done).map(signPhrase)));
  const middle = [
    ...middleRow(dish, done, { hasThermometer, signs }, say),
    ...(hasThermometer ? [] : crumbRow(dish, part, say)),
  ];
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

/**
 * Nobody probes it, but the boil caps a crumb all the same: waiting for more heat only dries it.
 * What to do is common practice, no source; the cap is `crumb-below-boil`.
 */
function crumbRow(dish: DishPlan, { air }: LoadPlan, say: Say): readonly FactRow[] {
  if (!isBread(dish)) return [];
  const { notices } = doneTargetFor({ recipe: dish.recipe, air });
  const capped = notices.find(({ code }) => code === 'BAKE_TARGET_CAPPED');
  if (capped === undefined) return [];
  const { boilingKelvin, coreKelvin, wantedKelvin } = capped.values;
  return [
    {
      label: 'Crumb',
      value: `gets no hotter than about ${say.degrees(Number(coreKelvin))} up here`,
      note:
        `water boils at ${say.degrees(Number(boilingKelvin))}; low down it is done at ` +
        `${say.degrees(Number(wantedKelvin))}. Once these signs are there it is baked: longer only ` +
        'dries it. Still gummy at its torn edge: lid back on, a few minutes more; where the bottom ' +
        'is dark take the coals from below away. It sets as it cools, so cut it late',
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

function outLines(handled: Handled, oven: CampOven): readonly string[] {
  const { dish, say } = handled;
  const { rest, canWait } = dish.recipe.target;
  const lines = [
    'Lid with its coals to the lid stand first, never face down on the ground.',
    isHeavyOven(oven) ? 'This oven is lifted by two people.' : undefined,
    ...outOfOvenLines(handled),
    rest > 0 ? `Let it rest ${say.minutes(rest)} before it is cut.` : undefined,
    ...cutLines(handled),
    canWait > 0
      ? `It may wait ${say.minutes(canWait)}${isBread(dish) ? ' wrapped in a dry cloth' : ' with the lid on'}; after that it is worse.`
      : 'It does not wait: serve it at once.',
  ];
  return lines.filter((line) => line !== undefined);
}
