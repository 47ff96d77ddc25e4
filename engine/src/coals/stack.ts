// Two ovens stacked: the coals on the lower lid lie under the upper floor. How many in each layer?
// Sources: stackSaving, stackLike, stackBetween; network.ts. Weak spot: nobody has measured what
// coals between two irons give each of them; grade D, so the band is wide and every answer warns.

import type { Notice, OrRefusal } from '../notice/notice.ts';
import { factorMoments } from './band.ts';
import type { Addition, CoalRequest, CurvePoint } from './coal-plan.ts';
import { type Counted, countCoals, meansWhileIn } from './count.ts';
import { curveOf } from './curve.ts';
import { beliefsFor, believed } from './factors.ts';
import type { OvenBody } from './geometry.ts';
import { siteNotices } from './range.ts';
import { replayed } from './replay.ts';
import type { RunSetting } from './run.ts';
import { siteFor } from './site.ts';
import { stackNotices, stackTrouble } from './stack-range.ts';

export interface StackRequest {
  readonly lower: CoalRequest;
  readonly upper: CoalRequest;
}

export interface StackPlan {
  readonly lower: { readonly above: number; readonly below: number };
  /** The lower lid's coals and the upper floor's: the same ones. */
  readonly between: number;
  readonly upper: { readonly above: number };
  readonly coals: number;
  /** The first sets of the same two ovens side by side, less this stack's; below zero it costs. */
  readonly saved: number;
  readonly lowerCurve: readonly CurvePoint[];
  readonly upperCurve: readonly CurvePoint[];
  readonly lowerAdditions: readonly Addition[];
  /** What is put between stands in the lower's alone; `below` is 0 while the lower is in. */
  readonly upperAdditions: readonly Addition[];
  readonly notices: readonly Notice[];
}

/**
 * Delivery of a coal between two ovens, down and up, beside what the network gives a lid coal and a
 * floor coal. 1: each iron gets the side of the coal that faces it, nothing is taken from the other.
 * If the coal had only one lid's heat to share it would be about a half: two deviations down.
 */
const BETWEEN_DELIVERY = { likely: 1, spread: 0.25 } as const; // ours, grade D
/** The upper floor keeps the bare lid under it from the sky and is about as hot; ours. */
const SHIELDED_SHARE = 0.9;

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
  const settings = settingsOf(stack, BETWEEN_DELIVERY.likely);
  const counted = countedStack(stack, settings);
  const weaker = settingsOf(stack, BETWEEN_DELIVERY.likely - BETWEEN_DELIVERY.spread);
  const lower = curveFor(stack.lower, settings.lower, counted.lower, weaker.lower);
  const upper = curveFor(stack.upper, settings.upper, counted.upper, weaker.upper);
  return {
    ...layersOf(counted),
    saved: coalsApart(stack) - layersOf(counted).coals,
    lowerCurve: lower,
    upperCurve: upper,
    lowerAdditions: counted.lower.run.additions,
    upperAdditions: counted.upper.run.additions.map((addition) =>
      addition.minute < counted.lower.run.outMinute ? { ...addition, below: 0 } : addition,
    ),
    notices: [
      ...siteNotices(stack.lower),
      ...stackNotices(stack, { lower: counted.lower.meanKelvin, upper: counted.upper.meanKelvin }),
    ],
  };
};

interface Pair<Each> {
  readonly lower: Each;
  readonly upper: Each;
}

const settingsOf = ({ lower, upper }: StackRequest, delivery: number): Pair<RunSetting> => {
  const below = believed(siteFor(lower), beliefsFor(lower));
  // The upper one stands on iron: neither ground nor riser weakens what lies under it.
  const above = believed(siteFor(onIron(upper)), beliefsFor(upper));
  return {
    lower: {
      ...below,
      body: shielded(below.body, above.body),
      strengthAbove: below.strengthAbove * delivery,
    },
    upper: { ...above, strengthBelow: above.strengthBelow * delivery },
  };
};

const onIron = (request: CoalRequest): CoalRequest => ({
  ...request,
  place: { ...request.place, hearth: 'fire-pan' },
  ...(request.conditions ? { conditions: withoutGround(request.conditions) } : {}),
});

const withoutGround = ({ rain, measures }: NonNullable<CoalRequest['conditions']>) => ({
  ...(rain === undefined ? {} : { rain }),
  ...(measures === undefined ? {} : { measures }),
});

/** The lid loses less under a hot floor; as in factors.ts the change is put on the rim. */
const shielded = (body: OvenBody, above: OvenBody): OvenBody => ({
  ...body,
  rimArea: Math.max(0, body.rimArea - SHIELDED_SHARE * BARE_LID_SHARE * above.floorArea),
});

const BARE_LID_SHARE = 0.6; // what about 17 coals leave bare of a 12 inch lid, as in factors.ts

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

const layersOf = ({ lower, upper }: Pair<Counted>) => {
  const { above: between, below } = lower.counts;
  const { above } = upper.counts;
  return {
    lower: { above: between, below },
    between,
    upper: { above },
    coals: below + between + above,
  };
};

const coalsApart = ({ lower, upper }: StackRequest): number =>
  [lower, upper]
    .map((request) => countCoals(request, believed(siteFor(request), beliefsFor(request))).counts)
    .reduce((sum, { above, below }) => sum + above + below, 0);

/** With the four factors and, as a fifth, how much a coal between two ovens gives each. */
const curveFor = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
  weaker: RunSetting,
): readonly CurvePoint[] => {
  const run = (changed: RunSetting) => replayed(request, changed, counted);
  const own = factorMoments(setting, beliefsFor(request), run);
  const between = { factor: 'coalStrength' as const, moments: run(weaker) };
  return curveOf(request.load, counted.run.moments, [...own, between]);
};
