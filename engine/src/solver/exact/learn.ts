// What does a contradiction teach? From the clash back along the reasons until one bound of the last
// level stands for all of it: its opposite, unless one of the bounds below does not hold, is a clause.

import type { Clause, Clauses } from './clauses.ts';
import type { Field, Side } from './field.ts';
import { NO_SIDE, TRIED } from './field.ts';

export interface Lesson {
  /** The first literal is false until the search goes back, then true. */
  readonly clause: Clause;
  /** Where to go back to. */
  readonly level: number;
  /** From how many levels it was learned. */
  readonly levels: number;
}

const UNNEEDED = -1_000_000_000;

/** @source marquesSilvaSakallah1999, schuttExplained2011 (both from memory) */
export class Learning {
  readonly #field: Field;
  readonly #clauses: Clauses;
  /** By side: how much of it the contradiction needs. */
  #needed = new Int32Array(0);
  readonly #sides: Side[] = [];
  #isListed = new Uint8Array(0);
  #open = 0;
  /** By unknown: how often and how lately it was part of a contradiction. */
  blame = new Float64Array(0);
  #step = 1;

  constructor(field: Field, clauses: Clauses) {
    this.#field = field;
    this.#clauses = clauses;
  }

  begin(): void {
    const { count } = this.#field;
    this.#needed = new Int32Array(2 * count).fill(UNNEEDED);
    this.#isListed = new Uint8Array(2 * count);
    this.blame = new Float64Array(count);
  }

  /** Of the clash in the field, above level 0. */
  learn(): Lesson {
    const field = this.#field;
    this.#open = 0;
    const { clashSide, clashLeast, clashWhy } = field;
    if (clashSide !== NO_SIDE) this.#need(clashSide ^ 1, 1 - clashLeast);
    this.#needWhy(clashSide, clashLeast, clashWhy);
    let at = field.entries - 1;
    for (; ; at -= 1) {
      const side = field.entrySide[at]!;
      const needed = this.#needed[side]!;
      if (needed <= field.entryOld[at]!) continue;
      if (this.#open === 1) break;
      this.#needed[side] = UNNEEDED;
      this.#open -= 1;
      this.#needWhy(side, needed, field.entryWhy[at]!, field.entryNew[at]!);
    }
    const lesson = this.#lessonFrom(field.entrySide[at]!);
    for (const side of this.#sides) {
      this.#needed[side] = UNNEEDED;
      this.#isListed[side] = 0;
    }
    this.#sides.length = 0;
    this.#step *= 1.1;
    if (this.#step > 1e100) this.#fade();
    return lesson;
  }

  #fade(): void {
    this.#step *= 1.1e-100;
    for (let at = 0; at < this.blame.length; at += 1) this.blame[at]! *= 1e-100;
  }

  /** The reason of a literal of which only so much is needed. */
  #needWhy(side: Side, needed: number, why: number, risen = needed): void {
    if (why === TRIED) return;
    if (why < TRIED) {
      const clause = this.#clauses.all[-2 - why]!;
      const isOwn = clause[0] === side ? 2 : 0;
      for (let at = isOwn; at < clause.length; at += 2) {
        this.#need(clause[at]! ^ 1, 1 - clause[at + 1]!);
      }
      return;
    }
    const { pool } = this.#field;
    const count = pool[why]!;
    const spare = pool[why + 1] === 1 ? risen - needed : 0;
    for (let at = 0; at < count; at += 1) {
      const place = why + 2 + 2 * at;
      this.#need(pool[place]!, pool[place + 1]! - (at === 0 ? spare : 0));
    }
  }

  #need(side: Side, least: number): void {
    const field = this.#field;
    if (least <= field.always[side]!) return;
    const before = this.#needed[side]!;
    if (least <= before) return;
    this.#needed[side] = least;
    if (this.#isListed[side] === 0) {
      this.#isListed[side] = 1;
      this.#sides.push(side);
    }
    this.blame[side >> 1]! += this.#step;
    const start = field.levelStarts.at(-1)!;
    const isNow = field.entryOf(side, least) >= start;
    const wasNow = before !== UNNEEDED && field.entryOf(side, before) >= start;
    if (isNow && !wasNow) this.#open += 1;
  }

  #lessonFrom(top: Side): Lesson {
    const field = this.#field;
    const kept = this.#sides.filter(
      (side) => side !== top && this.#needed[side] !== UNNEEDED && !this.#isImplied(side),
    );
    const clause = new Int32Array(2 + 2 * kept.length);
    clause[0] = top ^ 1;
    clause[1] = 1 - this.#needed[top]!;
    const levels = new Set<number>();
    let level = 0;
    kept.forEach((side, index) => {
      const at = 2 + 2 * index;
      clause[at] = side ^ 1;
      clause[at + 1] = 1 - this.#needed[side]!;
      const own = this.#levelOf(field.entryOf(side, this.#needed[side]!));
      levels.add(own);
      if (own <= level) return;
      level = own;
      exchange(clause, 2, at);
    });
    return { clause, level, levels: levels.size + 1 };
  }

  /** Follows from the others that are needed, by its own reason. */
  #isImplied(side: Side): boolean {
    const field = this.#field;
    const needed = this.#needed[side]!;
    const at = field.entryOf(side, needed);
    const why = field.entryWhy[at]!;
    if (why === TRIED) return false;
    if (why < TRIED) {
      const clause = this.#clauses.all[-2 - why]!;
      for (let place = 2; place < clause.length; place += 2) {
        if (!this.#isKnown(clause[place]! ^ 1, 1 - clause[place + 1]!, at)) return false;
      }
      return true;
    }
    const { pool } = field;
    const spare = pool[why + 1] === 1 ? field.entryNew[at]! - needed : 0;
    for (let index = 0; index < pool[why]!; index += 1) {
      const place = why + 2 + 2 * index;
      const less = index === 0 ? spare : 0;
      if (!this.#isKnown(pool[place]!, pool[place + 1]! - less, at)) return false;
    }
    return true;
  }

  /** Needed anyway, by something that came before this entry: so nothing follows from itself. */
  #isKnown(side: Side, least: number, before: number): boolean {
    if (least <= this.#field.always[side]!) return true;
    const needed = this.#needed[side]!;
    return needed >= least && this.#field.entryOf(side, needed) < before;
  }

  #levelOf(entry: number): number {
    const { levelStarts } = this.#field;
    let low = 0;
    let high = levelStarts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (levelStarts[middle]! <= entry) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

function exchange(clause: Clause, one: number, other: number): void {
  if (one === other) return;
  const [side, least] = [clause[one]!, clause[one + 1]!];
  clause[one] = clause[other]!;
  clause[one + 1] = clause[other + 1]!;
  clause[other] = side;
  clause[other + 1] = least;
}
