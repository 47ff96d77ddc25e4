// Into the oven and out of it: each small job with its minutes, its tools and what it does to the bake.
// Source: common practice, no source, but where data/in-oven.json names one.
// Weak spot: the minutes are those of one steady cook with everything at hand.

import { canStartHot, isPot } from '../../menu/heat-kind.ts';
import { contactFigures, type InOven, inOvenOf, type Sticking } from '../../menu/in-oven.ts';
import type { OvenLoad } from '../../menu/load.ts';
import type { MenuDish } from '../../menu/menu.ts';
import type { Recipe } from '../../menu/recipe.ts';
import { type Minutes, minutes } from '../../quantity/unit.ts';
import { isBread } from '../kinds.ts';
import { cutsFor } from './cuts-for.ts';
import type { EvenCuts } from './even-cuts.ts';

export type HandlingWhen = 'before' | 'in' | 'out' | 'after';

export type HandlingWork =
  | 'oil-pot'
  | 'grease'
  | 'grease-wall'
  | 'grease-tin'
  | 'lay-paper'
  | 'set-rack'
  | 'strew-meal'
  | 'heat-lid'
  | 'dock'
  | 'load-hot'
  | 'load-cold'
  | 'lid-off'
  | 'lift-by-tabs'
  | 'lift-each'
  | 'turn-over'
  | 'tip-from-tin'
  | 'see-bottom'
  | 'to-rack'
  | 'rest'
  | 'cut'
  | 'keep-warm';

/** What it is done with; the kit list counts them. */
export type Tool =
  | 'gloves'
  | 'lid-lifter'
  | 'lid-stand'
  | 'fat-and-brush'
  | 'baking-paper'
  | 'oven-rack'
  | 'tin'
  | 'coarse-meal'
  | 'fork'
  | 'thin-knife'
  | 'broad-blade'
  | 'board'
  | 'cooling-rack'
  | 'bread-knife'
  | 'dry-cloth';

/** What a job changes in the oven, for the model of the bake and for the card. */
export type HandlingEffect =
  | { readonly kind: 'contact'; readonly conductance: number; readonly height: number }
  | { readonly kind: 'lid-off'; readonly minutes: number };

export interface HandlingStep {
  readonly when: HandlingWhen;
  readonly work: HandlingWork;
  /** Of hands, where `hands` is not 0; else of waiting, at most. */
  readonly minutes: Minutes;
  readonly hands: number;
  readonly tools: readonly Tool[];
  readonly effect?: HandlingEffect;
  readonly cuts?: EvenCuts;
}

export interface HandlingAsked {
  readonly recipe: Recipe;
  readonly dish: MenuDish;
  readonly load: OvenLoad;
  /** The oven stands on its coals before the load goes in. */
  readonly isHot: boolean;
}

/** Everything done by hand round one load, in the order in which it is done. */
export function handlingOf(asked: HandlingAsked): readonly HandlingStep[] {
  const inOven = asked.load.inOven ?? inOvenOf(asked.recipe, asked.dish);
  return [
    ...beforeSteps(asked, inOven),
    ...loadSteps(asked),
    ...outSteps(asked, inOven),
    ...afterSteps(asked),
  ];
}

/** Whole minutes of hands in one part of it. */
export const handMinutes = (steps: readonly HandlingStep[], when: HandlingWhen): number =>
  Math.ceil(
    steps.reduce(
      (sum, step) => sum + (step.when === when && step.hands > 0 ? step.minutes : 0),
      0,
    ) - 1e-9,
  );

/** How likely the bottom holds on, and what a second try costs: five minutes off the coals. */
export const stickingOf = ({ recipe, dish, load }: Omit<HandlingAsked, 'isHot'>): Sticking =>
  contactFigures((load.inOven ?? inOvenOf(recipe, dish)).contact).sticks;
export const UNSTICK_MINUTES = 5;

function step(
  when: HandlingWhen,
  work: HandlingWork,
  taken: number,
  tools: readonly Tool[],
  more: Partial<HandlingStep> = {},
): HandlingStep {
  return { when, work, minutes: minutes(taken), hands: 1, tools, ...more };
}

/** A lid over the fire until water spits on it. */
const LID_HEATS_MINUTES = 10;
/** Rounds no thicker than this are pricked, so that they rise level. */
const DOCKED_METRES = 0.02;

function beforeSteps(asked: HandlingAsked, inOven: InOven): readonly HandlingStep[] {
  return [
    ...contactSteps(asked, inOven),
    ...(inOven.lid === 'hot' && !asked.isHot && canStartHot(asked.recipe)
      ? [step('before', 'heat-lid', 1, ['gloves', 'lid-lifter', 'lid-stand'])]
      : []),
    ...(isDocked(asked) ? [step('before', 'dock', 1, ['fork'])] : []),
  ];
}

/** Minutes that the lid has to lie over the fire; no hands. */
export const lidHeatMinutes = minutes(LID_HEATS_MINUTES);

function contactSteps({ recipe }: HandlingAsked, { contact }: InOven): readonly HandlingStep[] {
  if (isPot(recipe)) return [step('before', 'oil-pot', 2, ['fat-and-brush'])];
  const { conductance, height } = contactFigures(contact);
  const effect = { effect: { kind: 'contact', conductance, height } } as const;
  const wall = step('before', 'grease-wall', 1, ['fat-and-brush']);
  const paper = step('before', 'lay-paper', 1, ['baking-paper']);
  switch (contact) {
    case 'iron':
      return [step('before', 'grease', 2, ['fat-and-brush'], effect)];
    case 'paper':
      return [wall, { ...paper, ...effect }];
    case 'rack':
      return [wall, step('before', 'set-rack', 1, ['oven-rack'], effect), paper];
    case 'meal':
      return [wall, step('before', 'strew-meal', 1, ['coarse-meal'], effect), paper];
    case 'tin':
      return [
        step('before', 'grease-tin', 2, ['tin', 'fat-and-brush']),
        step('before', 'set-rack', 1, ['oven-rack'], effect),
      ];
  }
}

const isDocked = ({ recipe, load }: HandlingAsked): boolean =>
  (recipe.kind === 'quick-bread' || recipe.kind === 'biscuit') &&
  load.shape === 'disc' &&
  load.inOven?.contact !== 'tin' &&
  load.thickness <= DOCKED_METRES;

function loadSteps({ load, isHot }: HandlingAsked): readonly HandlingStep[] {
  const taken = load.shape === 'pieces' ? 3 : 2;
  if (!isHot) return [step('in', 'load-cold', taken, [])];
  const effect = { kind: 'lid-off', minutes: taken } as const;
  return [step('in', 'load-hot', taken, ['gloves', 'lid-lifter', 'lid-stand'], { effect })];
}

function outSteps({ recipe }: HandlingAsked, { contact }: InOven): readonly HandlingStep[] {
  const lid = step('out', 'lid-off', 0.5, ['gloves', 'lid-lifter', 'lid-stand']);
  if (!isBread(recipe)) return [{ ...lid, minutes: minutes(2) }];
  return [
    lid,
    letGo(recipe, contact),
    step('out', 'see-bottom', 0.25, []),
    step('out', 'to-rack', 0.25, ['cooling-rack']),
  ];
}

function letGo({ kind }: Recipe, contact: InOven['contact']): HandlingStep {
  if (contact === 'tin') return step('out', 'tip-from-tin', 2, ['gloves', 'thin-knife']);
  if (contact !== 'iron') return step('out', 'lift-by-tabs', 1, ['thin-knife']);
  return kind === 'biscuit'
    ? step('out', 'lift-each', 1, ['broad-blade'])
    : step('out', 'turn-over', 1, ['thin-knife', 'board']);
}

function afterSteps(asked: HandlingAsked): readonly HandlingStep[] {
  const { recipe } = asked;
  const { rest, canWait } = recipe.target;
  const cuts = isBread(recipe) ? cutsFor(asked) : undefined;
  const keeping: readonly Tool[] = isBread(recipe) ? ['dry-cloth'] : [];
  return [
    ...(rest > 0 ? [step('after', 'rest', rest, [], { hands: 0 })] : []),
    ...(cuts === undefined ? [] : [cutStep(cuts)]),
    ...(canWait > 0 ? [step('after', 'keep-warm', canWait, keeping, { hands: 0 })] : []),
  ];
}

/** A minute, and another for every eight pieces. */
const cutStep = (cuts: EvenCuts): HandlingStep =>
  step('after', 'cut', 1 + Math.floor(cuts.pieces / 8), ['board', 'bread-knife'], { cuts });
