// Two ovens stacked: the coals on the lower lid lie under the upper floor. How many in each layer?
// Sources: stackSaving, stackLike, stackBetween; stack-setting.ts. Weak spot: grade D throughout, so
// the band is wide, the saving is a span and every answer warns.

import type { Notice, OrRefusal } from '../notice/notice.ts';
import { type Kelvin, kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import { factorMoments } from './band.ts';
import { checksFor } from './checks.ts';
import type { Addition, Check, CoalRequest, CoalSet, CurvePoint, Move } from './coal-plan.ts';
import { type Counted, countCoals, meansWhileIn } from './count.ts';
import { curveOf } from './curve.ts';
import { beliefsFor, believed, type FactorName } from './factors.ts';
import type { OvenBody } from './geometry.ts';
import { setAbove, setBelow } from './placement.ts';
import { siteNotices } from './range.ts';
import { replayed } from './replay.ts';
import { coalWidth } from './room.ts';
import type { RunSetting } from './run.ts';
import { siteFor } from './site.ts';
import { isBaked } from './split.ts';
import { stackNotices, stackTrouble } from './stack-range.ts';
import { BETWEEN_DELIVERY, type Pair, type StackRequest, stackSettings } from './stack-setting.ts';
import { type Widest, widestFactor } from './widest.ts';

export type { StackRequest } from './stack-setting.ts';

/** Coals of a stack by layer. */
interface Layers {
  readonly lower: { readonly above: number; readonly below: number };
  /** The lower lid's coals and the upper floor's: the same ones. */
  readonly between: number;
  readonly upper: { readonly above: number };
  readonly coals: number;
}

/** Where each coal of a layer lies. */
export interface StackSets {
  readonly below: CoalSet;
  readonly between: CoalSet;
  readonly above: CoalSet;
}

export interface PublishedStack extends Layers {
  readonly saved: number;
  readonly lowerMean: Kelvin;
  readonly upperMean: Kelvin;
}

export interface StackPlan extends Layers {
  readonly sets: StackSets;
  readonly loadInMinute: Pair<Minutes>;
  readonly outMinute: Pair<Minutes>;
  /** The first sets of the same two ovens side by side. */
  readonly apart: number;
  /** `apart` less this stack's; below zero it costs. */
  readonly saved: number;
  /** The same if coals between give each oven as little as one time in ten. */
  readonly savedAtLeast: number;
  readonly published: PublishedStack;
  readonly lowerCurve: readonly CurvePoint[];
  readonly upperCurve: readonly CurvePoint[];
  readonly lowerAdditions: readonly Addition[];
  /** What is put between stands in the lower's alone; `below` is 0 while the lower is in. */
  readonly upperAdditions: readonly Addition[];
  /** First sets and all that is added. */
  readonly coalsInAll: number;
  /** Moves are those of an outer layer: what lies between is felt in both ovens. */
  readonly checks: Pair<readonly Check[]>;
  readonly widest: Pair<Widest<StackFactor> | undefined>;
  readonly notices: readonly Notice[];
}

/** The four factors, and how much a coal between two ovens gives each. */
export type StackFactor = FactorName | 'between';

/** Of a band that is right eight times in ten. */
const LOW_EDGE = 1.2816;

/**
 * First sets of two ovens, one on the other, with each one's heat. The coals between are half-way
 * from what the lower lid wants to what the upper floor wants; the outer layers make up the rest.
 *
 * @refuses  as layCoals for either oven, and as stackTrouble for two that do not stack
 * @notice   COALS_STACK_CAUTION — always; COALS_STACK_HEAT_OFF — one of them a step off
 * @valid    two ovens of a size, or the upper one smaller; baked dishes or simmered pots alike
 * @source   stackBetween (one or two fewer between), stackLike; grade D
 */
export const stackOvens = (stack: StackRequest): OrRefusal<StackPlan> => {
  const trouble = stackTrouble(stack);
  if (trouble) return trouble;
  const { likely, spread } = BETWEEN_DELIVERY;
  const settings = stackSettings(stack, likely);
  const counted = countedStack(stack, settings);
  const weaker = stackSettings(stack, likely - spread);
  const lower = curveFor(stack.lower, settings.lower, counted.lower, weaker.lower);
  const upper = curveFor(stack.upper, settings.upper, counted.upper, weaker.upper);
  const apart = countedApart(stack);
  const layers = layersOf(counted);
  const upperAdditions = counted.upper.run.additions.map((addition) =>
    addition.minute < counted.lower.run.outMinute ? { ...addition, below: 0 } : addition,
  );
  const lowerAdditions = counted.lower.run.additions;
  const leastGiving = countedStack(stack, stackSettings(stack, likely - LOW_EDGE * spread));
  return {
    ...layers,
    sets: setsOf(stack, settings, layers),
    loadInMinute: {
      lower: minutes(counted.lower.run.loadInMinute),
      upper: minutes(counted.upper.run.loadInMinute),
    },
    outMinute: {
      lower: minutes(counted.lower.run.outMinute),
      upper: minutes(counted.upper.run.outMinute),
    },
    apart: coalsOf(apart),
    saved: coalsOf(apart) - layers.coals,
    savedAtLeast: coalsOf(apart) - layersOf(leastGiving).coals,
    published: publishedStack(stack, settings, apart),
    lowerCurve: lower.curve,
    upperCurve: upper.curve,
    lowerAdditions,
    upperAdditions,
    coalsInAll: layers.coals + addedIn([...lowerAdditions, ...upperAdditions]),
    checks: checksOf(stack, settings, counted),
    widest: { lower: lower.widest, upper: upper.widest },
    notices: [
      ...siteNotices(stack.lower),
      ...stackNotices(stack, { lower: counted.lower.meanKelvin, upper: counted.upper.meanKelvin }),
    ],
  };
};

const countedStack = (stack: StackRequest, settings: Pair<RunSetting>): Pair<Counted> => {
  const between = betweenFor(stack, settings);
  const lower = countCoals(pinned(stack.lower, { above: between }), settings.lower);
  const request = pinned(stack.upper, { below: lower.counts.above });
  const alone = countCoals(request, settings.upper);
  return { lower, upper: tendedWith(lower, { request, setting: settings.upper, counted: alone }) };
};

const pinned = (request: CoalRequest, pins: CoalRequest['pins']): CoalRequest => ({
  ...request,
  pins: { ...request.pins, ...pins },
});

const betweenFor = ({ lower, upper }: StackRequest, settings: Pair<RunSetting>): number => {
  const pin = lower.pins.above ?? upper.pins.below;
  if (pin !== undefined) return pin;
  const under = countCoals(lower, settings.lower);
  const over = countCoals(upper, settings.upper);
  const middle = Math.round((under.counts.above + over.counts.below) / 2);
  return Math.min(middle, under.need.room.lidAll);
};

interface Tended {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly counted: Counted;
}

/** The layer between is added to once, when the lower lid wants it; the upper's heat follows. */
const tendedWith = (lower: Counted, { request, setting, counted }: Tended): Counted => {
  const { outMinute } = lower.run;
  const between = lower.run.additions.map((addition) => [addition.minute, addition.above] as const);
  const own = counted.run.additions.map(
    (addition) => [addition.minute, addition.minute < outMinute ? 0 : addition.below] as const,
  );
  const marks = new Set([...between, ...own].map(([minute]) => minute));
  const at = (all: readonly (readonly [number, number])[], minute: number) =>
    all.find(([each]) => each === minute)?.[1] ?? 0;
  const additions: readonly Addition[] = [...marks]
    .filter((minute) => minute < counted.run.outMinute)
    .sort((one, other) => one - other)
    .map((minute) => {
      const mine = counted.run.additions.find((each) => each.minute === minute);
      const below = at(between, minute) + at(own, minute);
      return { minute, above: mine?.above ?? 0, below, clearAsh: mine?.clearAsh ?? true };
    });
  const planned = { ...counted, run: { ...counted.run, additions } };
  const run = { ...planned.run, moments: replayed(request, setting, planned) };
  return { ...planned, run, meanKelvin: meansWhileIn(counted.feed, run).all };
};

const layersOf = ({ lower, upper }: Pair<Counted>): Layers => {
  const { above: between, below } = lower.counts;
  const { above } = upper.counts;
  return {
    lower: { above: between, below },
    between,
    upper: { above },
    coals: below + between + above,
  };
};

const countedApart = ({ lower, upper }: StackRequest): Pair<Counted> => ({
  lower: countCoals(lower, believed(siteFor(lower), beliefsFor(lower))),
  upper: countCoals(upper, believed(siteFor(upper), beliefsFor(upper))),
});

const coalsOf = ({ lower, upper }: Pair<Counted>): number =>
  lower.counts.above + lower.counts.below + upper.counts.above + upper.counts.below;

/** One or two fewer between than on a lid alone. @source stackBetween */
const PUBLISHED_FEWER = 1.5;

/** What the one published line would lay, each outer layer as alone, and what heat that gives. */
const publishedStack = (
  stack: StackRequest,
  settings: Pair<RunSetting>,
  apart: Pair<Counted>,
): PublishedStack => {
  const between = Math.max(0, Math.round(apart.lower.counts.above - PUBLISHED_FEWER));
  const laid = {
    lower: pinned(stack.lower, { above: between, below: apart.lower.counts.below }),
    upper: pinned(stack.upper, { above: apart.upper.counts.above, below: between }),
  };
  const counted = countedStack(laid, settings);
  const layers = layersOf(counted);
  return {
    ...layers,
    saved: coalsOf(apart) - layers.coals,
    lowerMean: kelvin(counted.lower.meanKelvin),
    upperMean: kelvin(counted.upper.meanKelvin),
  };
};

/** Where they lie: on each lid as on any; between, as a ring under the upper floor, off its legs. */
const setsOf = (stack: StackRequest, settings: Pair<RunSetting>, layers: Layers): StackSets => {
  const wishOf = (request: CoalRequest, pieces: number) => ({
    pieces,
    coalWidth: coalWidth(request.fuel),
    isWood: request.fuel.kind === 'wood-coals',
    isBaked: isBaked(request.wish.method),
  });
  const under = (body: OvenBody) => body.floorDiameter / 2;
  const { lower, upper } = stack;
  return {
    below: setBelow({
      ...wishOf(lower, layers.lower.below),
      outerRadius: under(settings.lower.body),
    }),
    between: setBelow({
      ...wishOf(upper, layers.between),
      outerRadius: under(settings.upper.body),
    }),
    above: setAbove({ ...wishOf(upper, layers.upper.above), outerRadius: upper.oven.diameter / 2 }),
  };
};

const addedIn = (additions: readonly Addition[]): number =>
  additions.reduce((sum, { above, below }) => sum + above + below, 0);

/** Looks join a visit where they can: to see into the lower one, the upper one is lifted off. */
const checksOf = (
  stack: StackRequest,
  settings: Pair<RunSetting>,
  counted: Pair<Counted>,
): Pair<readonly Check[]> => {
  const visits = [...counted.lower.run.additions, ...counted.upper.run.additions].map(
    ({ minute }) => minute,
  );
  const of = (which: keyof Pair<unknown>, outer: 'above' | 'below') =>
    checksFor({
      request: stack[which],
      setting: settings[which],
      counted: counted[which],
      visits,
    })
      .map((check) => outerOnly(check, outer))
      .filter(({ ways, ifHot, ifCool }) => isPotLook(ways) || ifHot.length + ifCool.length > 0);
  return { lower: seldom(of('lower', 'below')), upper: of('upper', 'above') };
};

/** A pot's look is worth it without a move: it says whether to wait. */
const isPotLook = (ways: Check['ways']): boolean => ways.some(({ by }) => by === 'simmer');

/** To look into the lower oven the hot one on it is lifted off: once with the food in. */
const seldom = (checks: readonly Check[]): readonly Check[] =>
  checks.filter((check, at) => check.oven === 'empty' || checks[at - 1]?.oven !== 'full');

const outerOnly = (check: Check, outer: 'above' | 'below'): Check => {
  const isOuter = (move: Move) => move.do.endsWith(outer);
  return {
    ...check,
    ifHot: check.ifHot.filter(isOuter),
    ifCool: check.ifCool.filter(isOuter),
  };
};

interface StackCurve {
  readonly curve: readonly CurvePoint[];
  readonly widest: Widest<StackFactor> | undefined;
}

/** With the four factors and, as a fifth, how much a coal between two ovens gives each. */
const curveFor = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
  weaker: RunSetting,
): StackCurve => {
  const run = (changed: RunSetting) => replayed(request, changed, counted);
  const own = factorMoments(setting, beliefsFor(request), run);
  const between = { factor: 'coalStrength' as const, moments: run(weaker) };
  const curve = curveOf(request.load, counted.run.moments, [...own, between]);
  const shown = (moments: typeof between.moments) => curveOf(request.load, moments, []);
  const runs = [
    ...own.map(({ factor, moments }) => ({ factor: factor as StackFactor, curve: shown(moments) })),
    { factor: 'between' as const, curve: shown(between.moments) },
  ];
  return { curve, widest: widestFactor<StackFactor>(curve, runs) };
};
