// Which ovens of one dish go round together? Many that bake alike are one group in waves: one
// walking round greases, lays, turns or empties them in the same order at the same pace, so that
// each oven has its own minutes, a pace later than the one before it.
// Common practice, no source; sizes and paces are ours.

import { handlingOf, handMinutes } from '../bake/index.ts';
import type { DishWork, LoadWork, TimetableRequest } from './day-sheet.ts';
import { isLaterTurn, isUsedAgain } from './oven-turns.ts';
import { coalMinutes, isHeavyOven, stepOf } from './oven-work.ts';

export interface Wave {
  /** In the order of the round. */
  readonly loads: readonly LoadWork[];
  /** From one oven of the round to the next [min]. */
  readonly pace: number;
  /** Cut out of a larger one: its ovens still wait for each other. */
  readonly isPart?: boolean;
  /** Whoever walks it goes on to the next part. */
  readonly goesOn?: boolean;
}

/** Fewer ovens than this go each by itself: the cook sees them all. */
const LEAST_OVENS = 4;
/** So many ovens can be walked before the first needs its next turn. */
const MOST_OVENS = 6;
/** Slower than this the last oven waits too long; such a dish goes oven by oven. */
const SLOWEST_PACE = 3;
const MOST_CREWS = 3;

/** The loads of a dish as waves, each load in one; a load by itself is a wave of one. */
export function wavesOf(request: TimetableRequest, work: DishWork): readonly Wave[] {
  const pace = paceOf(request, work);
  const alone = (loads: readonly LoadWork[]) => loads.map((load) => ({ loads: [load], pace: 0 }));
  const { coalsOnAt, hand } = work.dish.pins;
  if (pace === undefined || coalsOnAt !== undefined || hand !== undefined) return alone(work.loads);
  return alikeIn(request, work).flatMap((loads) =>
    loads.length < LEAST_OVENS
      ? alone(loads)
      : inWaves(loads).map((each) => ({ loads: each, pace })),
  );
}

/** The same waves, cut before these loads: a walk that was broken off goes on as one of its own. */
export const cutWaves = (waves: readonly Wave[], before: ReadonlySet<string>): readonly Wave[] =>
  waves.flatMap(({ loads, pace }): readonly Wave[] => {
    const parts: LoadWork[][] = [];
    for (const work of loads) {
      if (parts.length === 0 || before.has(work.load.id)) parts.push([work]);
      else parts.at(-1)!.push(work);
    }
    if (parts.length < 2) return [{ loads, pace }];
    return parts.map((part, at) => ({
      loads: part,
      pace,
      isPart: true,
      ...(at < parts.length - 1 ? { goesOn: true } : {}),
    }));
  });

/** Sizes that differ by one oven at most. */
function inWaves(loads: readonly LoadWork[]): readonly (readonly LoadWork[])[] {
  const count = Math.ceil(loads.length / MOST_OVENS);
  return Array.from({ length: count }, (_, wave) =>
    loads.slice(
      Math.round((wave * loads.length) / count),
      Math.round(((wave + 1) * loads.length) / count),
    ),
  );
}

/** Loads whose coals and minutes are the same, in the order of the menu. */
function alikeIn(request: TimetableRequest, work: DishWork): readonly (readonly LoadWork[])[] {
  const groups = new Map<string, LoadWork[]>();
  for (const load of work.loads) {
    const isTurn = isUsedAgain(request, work, load) || isLaterTurn(request, work, load);
    const key = isTurn ? load.load.id : likeness(request, load);
    groups.set(key, [...(groups.get(key) ?? []), load]);
  }
  return [...groups.values()];
}

function likeness(request: TimetableRequest, { load, coals, bake }: LoadWork): string {
  const { turns, additions, checks, loadInMinute, outMinute, above, below, browning } = coals;
  const pieces = [above.pieces, below.pieces, above.shovels, below.shovels];
  const looks = checks.map(({ minute, oven }) => [minute, oven]);
  const inside = [load.shape, bake.done.core, bake.aimEarly, browning?.until];
  const minutes = [turns, additions, looks, loadInMinute, outMinute];
  return JSON.stringify([isHeavy(request, load.oven), minutes, pieces, inside]);
}

function isHeavy({ camp }: TimetableRequest, id: string): boolean {
  const oven = camp.ovens.find((each) => each.id === id);
  return oven !== undefined && isHeavyOven(oven);
}

/**
 * Minutes from oven to oven so that the longest job of the round is done by the crews there are;
 * undefined where the camp is too few for a round, or a pot is browned by hand.
 */
function paceOf(request: TimetableRequest, work: DishWork): number | undefined {
  const lift = work.loads.some(({ load }) => isHeavy(request, load.oven)) ? 2 : 1;
  const crews = Math.min(MOST_CREWS, Math.floor(request.camp.hands.length / 2 / lift));
  const isBrowned = work.recipe.steps.some((step) => step.kind === 'brown' && step.hands > 0);
  if (crews < 1 || isBrowned) return undefined;
  const longest = Math.max(...work.loads.map((load) => longestJob(work, load)));
  const pace = Math.ceil(longest / crews);
  return 0 < pace && pace <= SLOWEST_PACE ? pace : undefined;
}

function longestJob(work: DishWork, { load, coals }: LoadWork): number {
  const steps = handlingOf({ ...work, load, isHot: coals.loadInMinute > 0 });
  const { above, below, additions } = coals;
  const sets = [above.pieces + below.pieces, ...additions.map((a) => a.above + a.below)];
  const late = work.recipe.steps.filter((step) => step.kind === 'stir' && step.hands > 0);
  const out = stepOf(work, 'take-out')?.minutes ?? 0;
  return Math.max(
    ...sets.map(coalMinutes),
    ...(['before', 'in', 'out'] as const).map((when) => handMinutes(steps, when)),
    ...late.map((step) => step.minutes),
    Math.min(10, out),
  );
}
