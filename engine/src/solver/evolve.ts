// Better orders by a population. A genome is a number for each task, read as "the larger, the later";
// what a pass makes of it is handed back as a genome again. A peak of one parent is kept whole, what
// lies before and after follows the other; parents that are alike are shaken; a population that has
// stalled is drawn afresh. Work is counted in passes, so results repeat.

import { randomFrom } from './random.ts';

/** What turns a genome into a plan. */
export interface Placing<Shape> {
  readonly count: number;
  /** 2: passes go backwards and forwards in turn; 1: always the same way. */
  readonly senses: 1 | 2;
  /** Keys to begin with, for the first sense; drawn around by chance. */
  readonly hint: Float64Array;
  /** How much each task takes of what is scarce: where a peak is. */
  readonly weights: Float64Array;
  /** One pass; its keys are for a pass in the other sense. */
  pass(keys: Float64Array, sense: number): Passed<Shape>;
}

export interface Passed<Shape> {
  readonly cost: number;
  readonly keys: Float64Array;
  readonly shape: Shape;
  /** Work it took; one if nothing had to be redone. */
  readonly passes: number;
}

export interface EvolveWish<Shape> {
  readonly seed: number;
  readonly passes: number;
  /** No plan costs less: the search ends when one does no more. */
  readonly bound?: number;
  readonly onBetter?: (best: Passed<Shape>, passes: number) => void;
  readonly isStopped?: () => boolean;
}

export interface Evolved<Shape> {
  readonly best: Passed<Shape>;
  readonly passes: number;
  readonly isAtBound: boolean;
}

/** @tuned on the PSPLIB samples, seeds 1 to 5, up to 15,000 passes; it buys the last half per cent */
const TUNED = {
  /** For each task; never fewer than eight. */
  members: 0.3,
  /** First keys are drawn so far round the hint, in spans of it. */
  spread: 2,
  /** Generations without anything better before the best is searched round. */
  patience: 15,
  /** Parents of which less than this share of keys differs are alike, and their child is shaken. */
  alike: 0.1,
  shaken: 0.15,
  /** For each task: steps round the best without anything better, before all is drawn afresh. */
  steps: 12,
  /** Tasks in the stretch that such a step redraws, at most. */
  stretch: 19,
  /** So many epochs begin by chance; the next begins with the best of each. */
  gathered: 4,
};

class Search<Shape> {
  readonly placing: Placing<Shape>;
  readonly wish: EvolveWish<Shape>;
  readonly random: () => number;
  passes = 0;
  best: Passed<Shape> | undefined;
  /** The best of every epoch so far, with keys for sense 1. */
  readonly elite: Passed<Shape>[] = [];

  constructor(placing: Placing<Shape>, wish: EvolveWish<Shape>) {
    this.placing = placing;
    this.wish = wish;
    this.random = randomFrom(wish.seed);
  }

  get isOver(): boolean {
    const { passes, bound = Number.NEGATIVE_INFINITY, isStopped } = this.wish;
    if (this.best === undefined) return false;
    return this.passes >= passes || this.best.cost <= bound || isStopped?.() === true;
  }

  pass(keys: Float64Array, sense: number): Passed<Shape> {
    const passed = this.placing.pass(keys, sense);
    this.passes += passed.passes;
    if (this.best === undefined || passed.cost < this.best.cost) {
      this.best = passed;
      this.wish.onBetter?.(passed, this.passes);
    }
    return passed;
  }

  otherSense(sense: number): number {
    return this.placing.senses === 2 ? 1 - sense : 0;
  }
}

/**
 * The cheapest plan found within the passes allowed; one is always made.
 *
 * @source debelsVanhoucke2005 (populations pressed to either end in turn), shawLargeSteps1998 (large
 *         steps round the best); both from memory, held against PSPLIB by `npm run bench projects`
 */
export function evolve<Shape>(placing: Placing<Shape>, wish: EvolveWish<Shape>): Evolved<Shape> {
  const search = new Search(placing, wish);
  while (!search.isOver) epoch(search);
  const best = search.best!;
  return { best, passes: search.passes, isAtBound: best.cost <= (wish.bound ?? -Infinity) };
}

function epoch<Shape>(search: Search<Shape>): void {
  let members = firstMembers(search);
  let sense = search.otherSense(0);
  let least = Math.min(...members.map((each) => each.cost));
  let stalled = 0;
  while (!search.isOver && stalled < TUNED.patience) {
    members = nextMembers(search, members, sense);
    sense = search.otherSense(sense);
    const now = Math.min(...members.map((each) => each.cost));
    stalled = now < least ? 0 : stalled + 1;
    least = Math.min(least, now);
  }
  const own = members.reduce((one, each) => (each.cost < one.cost ? each : one), members[0]!);
  const last = search.isOver ? own : aroundIt(search, own, sense);
  if (search.isOver) return;
  search.elite.push(sense === search.otherSense(0) ? last : search.pass(last.keys, sense));
}

/** Large steps round one plan: a stretch of it is drawn afresh, the rest keeps its order. */
function aroundIt<Shape>(search: Search<Shape>, from: Passed<Shape>, sense: number): Passed<Shape> {
  let now = from;
  const steps = TUNED.steps * search.placing.count;
  for (let failed = 0; failed < steps && !search.isOver; failed += 1) {
    const keys = withStretchRedrawn(now.keys, search.random);
    let next = search.pass(keys, sense);
    if (search.placing.senses === 2) next = search.pass(next.keys, 1 - sense);
    if (next.cost < now.cost) failed = 0;
    if (next.cost <= now.cost) now = next;
  }
  return now;
}

function withStretchRedrawn(keys: Float64Array, random: () => number): Float64Array {
  const { low, high } = rangeOf(keys);
  const share = Math.min(0.6, TUNED.stretch / keys.length);
  const length = (high - low) * share * random();
  const from = low + random() * (high - low - length);
  return keys.map((key) => (key >= from && key <= from + length ? from + random() * length : key));
}

function firstMembers<Shape>(search: Search<Shape>): Passed<Shape>[] {
  const { placing, random } = search;
  const isGathering = search.elite.length >= TUNED.gathered;
  const found = isGathering ? search.elite.splice(0) : [];
  const members = Math.max(8, Math.round(TUNED.members * placing.count));
  const span = spanOf(placing.hint);
  for (let at = found.length; at < members && !search.isOver; at += 1) {
    const spread = TUNED.spread * span * random();
    const keys = placing.hint.map((key) => key + spread * (random() - 0.5));
    found.push(search.pass(keys, 0));
  }
  return found;
}

function nextMembers<Shape>(
  search: Search<Shape>,
  members: readonly Passed<Shape>[],
  sense: number,
): Passed<Shape>[] {
  const { random } = search;
  const pick = () => members[Math.floor(random() * members.length)]!;
  let elite = 0;
  members.forEach((each, at) => {
    if (each.cost < members[elite]!.cost) elite = at;
  });
  const next: Passed<Shape>[] = [];
  for (let at = 0; at < members.length && !search.isOver; at += 1) {
    const father = members[at]!;
    if (at === elite) {
      next.push(search.pass(father.keys, sense));
      continue;
    }
    const one = pick();
    const other = pick();
    const mother = one.cost <= other.cost ? one : other;
    const first = search.pass(crossed(search, father, mother), sense);
    const second = search.pass(crossed(search, mother, father), sense);
    next.push(first.cost <= second.cost ? first : second);
  }
  return next;
}

function crossed<Shape>(
  search: Search<Shape>,
  keeper: Passed<Shape>,
  giver: Passed<Shape>,
): Float64Array {
  const { random, placing } = search;
  const { from, to } = peakOf(keeper.keys, placing.weights, random);
  const child = new Float64Array(placing.count);
  const far = 1e6;
  let differs = 0;
  for (let task = 0; task < child.length; task += 1) {
    const own = keeper.keys[task]!;
    const given = giver.keys[task]!;
    if (own !== given) differs += 1;
    child[task] = own < from ? given - far : own > to ? given + far : own;
  }
  if (differs < TUNED.alike * child.length) shake(child, random);
  return child;
}

/** The heaviest of a few stretches of random length. */
function peakOf(keys: Float64Array, weights: Float64Array, random: () => number) {
  const { low, high } = rangeOf(keys);
  const length = (high - low) * (0.25 + 0.5 * random());
  let best = { from: low, to: low + length, weight: -1 };
  for (let tries = 0; tries < 3; tries += 1) {
    const from = low + random() * (high - low - length);
    let weight = 0;
    for (let task = 0; task < keys.length; task += 1) {
      if (keys[task]! >= from && keys[task]! <= from + length) weight += weights[task]!;
    }
    if (weight > best.weight) best = { from, to: from + length, weight };
  }
  return best;
}

function shake(keys: Float64Array, random: () => number): void {
  const span = spanOf(keys);
  for (let task = 0; task < keys.length; task += 1) {
    if (random() < TUNED.shaken) keys[task] = keys[task]! + span * (random() - 0.5);
  }
}

const spanOf = (keys: Float64Array) => {
  const { low, high } = rangeOf(keys);
  return Math.max(1, high - low);
};

function rangeOf(keys: Float64Array) {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const key of keys) {
    if (key < low) low = key;
    if (key > high) high = key;
  }
  return { low, high };
}
