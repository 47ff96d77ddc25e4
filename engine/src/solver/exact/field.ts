// What is known of every number at this point of a search: bounds that only rise, why each rose, and
// the way back. A number has two sides: side 2n is the number itself, side 2n + 1 is its negative;
// `bound[side]` is the least that side can be. So "at most" is "at least" on the other side, and a
// literal is a side with a least value.

/** A number of the model. */
export type Unknown = number;
export type Side = number;

export interface Literal {
  readonly side: Side;
  readonly least: number;
}

export const atLeast = (unknown: Unknown, least: number): Literal => ({ side: 2 * unknown, least });
export const atMost = (unknown: Unknown, most: number): Literal => ({
  side: 2 * unknown + 1,
  least: -most,
});
export const not = ({ side, least }: Literal): Literal => ({ side: side ^ 1, least: 1 - least });

/** Why a bound rose: it was tried, a clause (-2 - its place), or a list in the pool (its offset). */
export const TRIED = -1;
export const byClause = (clause: number) => -2 - clause;

/** A contradiction that is all in its reason. */
export const NO_SIDE = -1;
const NEVER = -1;

export class Field {
  bound = new Int32Array(0);
  /** The least of each side at level 0. */
  always = new Int32Array(0);
  /** Latest entry of the trail for each side. */
  last = new Int32Array(0);
  count = 0;
  /** By side: what each more of it weighs; and what all weighs now. */
  weights = new Int32Array(0);
  weight = 0;

  /** The trail: which side rose, from what, to what, why, and the entry of that side before. */
  entrySide = new Int32Array(4096);
  entryOld = new Int32Array(4096);
  entryNew = new Int32Array(4096);
  entryWhy = new Int32Array(4096);
  entryBefore = new Int32Array(4096);
  entries = 0;
  /** First entry of each level; level 0 is what holds always. */
  readonly levelStarts: number[] = [];
  readonly #levelPools: number[] = [];

  /** Reasons: literals that hold together, as [count, isShifting, side, least, side, least, …]. */
  pool = new Int32Array(1 << 16);
  poolTop = 0;

  /** Sides that rose and were not looked at yet. */
  queue = new Int32Array(0);
  queueHead = 0;
  queueTail = 0;
  isQueued = new Uint8Array(0);

  /** The last contradiction: a side that had to rise past what it can be, and why. */
  clashSide = 0;
  clashLeast = 0;
  clashWhy = TRIED;

  unknown(least: number, most: number): Unknown {
    const unknown = this.count;
    this.count += 1;
    this.#makeRoomForUnknowns();
    this.bound[2 * unknown] = this.always[2 * unknown] = least;
    this.bound[2 * unknown + 1] = this.always[2 * unknown + 1] = -most;
    return unknown;
  }

  #makeRoomForUnknowns(): void {
    const sides = 2 * this.count;
    if (sides <= this.bound.length) return;
    const size = Math.max(256, 2 * sides);
    this.bound = grown(this.bound, size);
    this.always = grown(this.always, size);
    this.weights = grown(this.weights, size);
    const before = this.last.length;
    this.last = grown(this.last, size);
    this.last.fill(NEVER, before);
    const queued = new Uint8Array(size);
    queued.set(this.isQueued);
    this.isQueued = queued;
    this.queue = grown(this.queue, size);
  }

  least(unknown: Unknown): number {
    return this.bound[2 * unknown]!;
  }

  most(unknown: Unknown): number {
    return -this.bound[2 * unknown + 1]!;
  }

  isTrue(side: Side, least: number): boolean {
    return this.bound[side]! >= least;
  }

  isFalse(side: Side, least: number): boolean {
    return -this.bound[side ^ 1]! < least;
  }

  get level(): number {
    return this.levelStarts.length;
  }

  /** Raises a side; false where it can not be so much. */
  raise(side: Side, least: number, why: number): boolean {
    if (least <= this.bound[side]!) return true;
    if (least > -this.bound[side ^ 1]!) return this.clash(side, least, why);
    this.#enter(side, least, why);
    if (this.isQueued[side] === 0) {
      this.isQueued[side] = 1;
      this.queue[this.queueTail] = side;
      this.queueTail = this.queueTail + 1 === this.queue.length ? 0 : this.queueTail + 1;
    }
    return true;
  }

  weigh(side: Side, weight: number): void {
    this.weights[side] = this.weights[side]! + weight;
    this.weight += weight * this.bound[side]!;
  }

  clash(side: Side, least: number, why: number): false {
    this.clashSide = side;
    this.clashLeast = least;
    this.clashWhy = why;
    return false;
  }

  #enter(side: Side, least: number, why: number): void {
    const at = this.entries;
    if (at === this.entrySide.length) this.#growTrail();
    this.entrySide[at] = side;
    this.entryOld[at] = this.bound[side]!;
    this.entryNew[at] = least;
    this.entryWhy[at] = why;
    this.entryBefore[at] = this.last[side]!;
    this.last[side] = at;
    this.weight += this.weights[side]! * (least - this.bound[side]!);
    this.bound[side] = least;
    if (this.levelStarts.length === 0) this.always[side] = least;
    this.entries = at + 1;
  }

  #growTrail(): void {
    const size = 2 * this.entrySide.length;
    this.entrySide = grown(this.entrySide, size);
    this.entryOld = grown(this.entryOld, size);
    this.entryNew = grown(this.entryNew, size);
    this.entryWhy = grown(this.entryWhy, size);
    this.entryBefore = grown(this.entryBefore, size);
  }

  /** Next side that rose, or -1. */
  nextRisen(): number {
    if (this.queueHead === this.queueTail) return -1;
    const side = this.queue[this.queueHead]!;
    this.queueHead = this.queueHead + 1 === this.queue.length ? 0 : this.queueHead + 1;
    this.isQueued[side] = 0;
    return side;
  }

  forgetRisen(): void {
    while (this.nextRisen() >= 0);
  }

  openLevel(): void {
    this.levelStarts.push(this.entries);
    this.#levelPools.push(this.poolTop);
  }

  backTo(level: number): void {
    if (level >= this.level) return;
    const start = this.levelStarts[level]!;
    for (let at = this.entries - 1; at >= start; at -= 1) {
      const side = this.entrySide[at]!;
      const old = this.entryOld[at]!;
      this.weight -= this.weights[side]! * (this.bound[side]! - old);
      this.bound[side] = old;
      this.last[side] = this.entryBefore[at]!;
    }
    this.entries = start;
    this.poolTop = this.#levelPools[level]!;
    this.levelStarts.length = level;
    this.#levelPools.length = level;
  }

  /** The entry that made the literal true; -1 where it always was. */
  entryOf(side: Side, least: number): number {
    let at = this.last[side]!;
    while (at >= 0 && this.entryOld[at]! >= least) at = this.entryBefore[at]!;
    return at;
  }

  /** Begins a reason. `isShifting`: its first literal may be less by as much as what follows may. */
  reason(isShifting: boolean): number {
    if (this.poolTop + 4 > this.pool.length) this.#growPool();
    const at = this.poolTop;
    this.pool[at] = 0;
    this.pool[at + 1] = isShifting ? 1 : 0;
    this.poolTop += 2;
    return at;
  }

  because(reason: number, side: Side, least: number): void {
    if (this.poolTop + 4 > this.pool.length) this.#growPool();
    this.pool[this.poolTop] = side;
    this.pool[this.poolTop + 1] = least;
    this.pool[reason] = this.pool[reason]! + 1;
    this.poolTop += 2;
  }

  #growPool(): void {
    this.pool = grown(this.pool, 2 * this.pool.length);
  }
}

function grown(from: Int32Array, size: number): Int32Array<ArrayBuffer> {
  const to = new Int32Array(size);
  to.set(from);
  return to;
}
