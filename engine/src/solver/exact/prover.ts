// A search that learns: what is tried follows the best plan known, what clashes becomes a clause, and
// where nothing is left to try the best is proven. Parts of the plan may be held for a while, so that
// the rest of it is searched first. Work is counted in bounds raised, so results repeat.

import { Arcs } from './arcs.ts';
import { Clauses } from './clauses.ts';
import { byClause, Field, type Literal, TRIED, type Unknown } from './field.ts';
import { Learning } from './learn.ts';
import { OneAtATime } from './one-at-a-time.ts';
import { Shared } from './shared.ts';
import { Sums } from './sums.ts';

/** 'none': nothing is left. 'held': nothing is left while that is held. 'over': the work is done. */
export type Outcome = 'found' | 'none' | 'held' | 'over';

export interface ProverWish {
  /** Contradictions after which it is given up. */
  readonly clashes: number;
  /** Bounds raised after which it is given up, counted from the beginning of all. */
  readonly work: number;
  /** True while they can be; tried first. */
  readonly held: readonly Literal[];
}

export class Prover {
  readonly field = new Field();
  readonly clauses = new Clauses(this.field);
  readonly arcs = new Arcs(this.field);
  readonly sums = new Sums(this.field);
  readonly one = new OneAtATime(this.field);
  readonly shared = new Shared(this.field);
  readonly #learning = new Learning(this.field, this.clauses);
  /** What the search has to settle; all else follows or is as little as it can be. */
  settled: Unknown[] = [];
  /** Of what follows: these are as much as they can be. */
  readonly most = new Set<Unknown>();
  /** By unknown: what is tried first. */
  liked: Int32Array = new Int32Array(0);
  work = 0;
  clashes = 0;
  #mayLearn = 2000;
  #isLost = false;

  begin(): void {
    this.#learning.begin();
    this.#isLost = !this.arcs.pressAll() || !this.#propagate();
    this.#forgetCalls();
  }

  /** Holds from now on. */
  always({ side, least }: Literal): void {
    this.field.backTo(0);
    if (this.#isLost) return;
    const reason = this.field.reason(false);
    this.#isLost = !this.field.raise(side, least, reason) || !this.#propagate();
    if (this.#isLost) this.#forgetCalls();
  }

  /** Searches on; after 'found' every unknown has one value, until the next call. */
  search(wish: ProverWish): Outcome {
    this.field.backTo(0);
    const until = this.clashes + wish.clashes;
    const heldLevel = wish.held.length > 0 ? 1 : 0;
    while (!this.#isLost) {
      if (!this.#propagate()) {
        if (this.field.level > 0 && this.field.level === heldLevel) return this.#giveUp();
        this.#heedClash();
        continue;
      }
      if (this.field.level < heldLevel) {
        if (!this.#hold(wish.held)) return this.#giveUp();
        continue;
      }
      if (this.clashes >= until || this.work >= wish.work) return 'over';
      const next = this.#nextTried();
      if (next === undefined) return 'found';
      this.field.openLevel();
      this.field.raise(next.side, next.least, TRIED);
    }
    return 'none';
  }

  /** All that is held is tried in one level; false where it can not all be. */
  #hold(held: readonly Literal[]): boolean {
    this.field.openLevel();
    return held.every(({ side, least }) => this.field.raise(side, least, TRIED));
  }

  #giveUp(): 'held' {
    this.#forgetCalls();
    this.field.backTo(0);
    return 'held';
  }

  #heedClash(): void {
    this.clashes += 1;
    this.#forgetCalls();
    if (this.field.level === 0) {
      this.#isLost = true;
      return;
    }
    const { clause, level, levels } = this.#learning.learn();
    this.field.backTo(level);
    if (clause.length === 2) {
      this.#isLost = !this.field.raise(clause[0]!, clause[1]!, this.field.reason(false));
      return;
    }
    const place = this.clauses.store(clause);
    this.clauses.learned.set(place, levels);
    this.field.raise(clause[0]!, clause[1]!, byClause(place));
    if (this.clauses.learned.size < this.#mayLearn) return;
    this.clauses.forgetHalf();
    this.#mayLearn += 100;
  }

  /** What clashed most and latest, towards what is liked. */
  #nextTried(): Literal | undefined {
    const { bound } = this.field;
    const { blame } = this.#learning;
    let best = -1;
    let most = -1;
    for (let at = 0; at < this.settled.length; at += 1) {
      const unknown = this.settled[at]!;
      if (blame[unknown]! <= most || bound[2 * unknown] === -bound[2 * unknown + 1]!) continue;
      most = blame[unknown]!;
      best = unknown;
    }
    if (best < 0) return this.#nextLeft();
    const liked = this.liked[best]!;
    const [least, high] = [bound[2 * best]!, -bound[2 * best + 1]!];
    if (liked > least) return { side: 2 * best, least: Math.min(liked, high) };
    return { side: 2 * best + 1, least: -Math.max(liked, least) };
  }

  /** What is left follows: as little as it can be, or as much where that is cheaper. */
  #nextLeft(): Literal | undefined {
    const { bound, count } = this.field;
    for (let unknown = 0; unknown < count; unknown += 1) {
      const least = bound[2 * unknown]!;
      const most = -bound[2 * unknown + 1]!;
      if (least === most) continue;
      if (this.most.has(unknown)) return { side: 2 * unknown, least: most };
      return { side: 2 * unknown + 1, least: -least };
    }
    return undefined;
  }

  #propagate(): boolean {
    const { field, arcs, clauses, one, shared, sums } = this;
    for (;;) {
      for (let side = field.nextRisen(); side >= 0; side = field.nextRisen()) {
        this.work += 1;
        one.calls.callFor(side);
        shared.calls.callFor(side);
        sums.calls.callFor(side);
        if (!arcs.heed(side) || !clauses.heed(side)) return false;
      }
      const apart = one.heedNext();
      if (apart === false) return false;
      if (apart === true) continue;
      const fits = shared.heedNext();
      if (fits === false) return false;
      if (fits === true) continue;
      const summed = sums.heedNext();
      if (summed !== true) return summed === undefined;
    }
  }

  #forgetCalls(): void {
    this.field.forgetRisen();
    this.one.calls.forget();
    this.shared.calls.forget();
    this.sums.calls.forget();
  }
}
