// What is taken at each minute, and where is room? The state that a decoder writes on.
// A minute grid: searching jumps past the minute that blocks (no step-by-step crawl).

import { PoolGrid } from './pools.ts';
import type { Problem, Seat, Task } from './problem.ts';

/** No room. */
export const NOWHERE = Number.NEGATIVE_INFINITY;

const NOBODY: readonly number[] = [];

/** Work to be fitted in: a task, or the work of a batch. */
export type Work = Pick<Task, 'minutes' | 'seats' | 'takes' | 'team'>;

export class Board {
  readonly problem: Problem;
  readonly #length: number;
  readonly #unitBusy: Uint8Array[];
  /** 1 where the unit is not there. */
  readonly #unitAway: Uint8Array[];
  /** Units may be asked to work while they are away: a last resort, declared afterwards. */
  isOvertime = false;
  readonly #unitLoad: number[];
  readonly #pools: PoolGrid;
  readonly #teamUnit = new Map<string, Int32Array>();
  /** Crews of one, made once. */
  readonly #alone: readonly (readonly number[])[];

  constructor(problem: Problem) {
    this.problem = problem;
    this.#length = problem.to - problem.from;
    this.#unitLoad = problem.units.map(() => 0);
    this.#alone = problem.units.map((_, unit) => [unit]);
    const capacities = problem.pools.map((pool) => pool.capacity);
    this.#pools = new PoolGrid(capacities, problem);
    this.#unitBusy = problem.units.map(() => new Uint8Array(this.#length));
    this.#unitAway = problem.units.map((unit) => {
      const away = new Uint8Array(this.#length).fill(1);
      for (const open of unit.windows) away.fill(0, this.#at(open.from), this.#at(open.to));
      return away;
    });
  }

  /** Is the unit there all the while? */
  isThere(unit: number, start: number, minutes: number): boolean {
    const away = this.#unitAway[unit]!;
    return !away.subarray(this.#at(start), this.#at(start + minutes)).includes(1);
  }

  /** Latest start in floor … ceiling at which the work finds all it needs. */
  latestFit(work: Work, crew: readonly Seat[], bounds: { floor: number; ceiling: number }): number {
    let start = Math.min(bounds.ceiling, this.problem.to - work.minutes);
    const floor = Math.max(bounds.floor, this.problem.from);
    while (start >= floor) {
      const next = Math.min(
        this.#pools.roomBefore(work.takes, work.minutes, start),
        this.#seatsBefore(work, crew, start),
      );
      if (next === start) {
        // One seat alone: that a unit is free was just seen.
        if (crew.length < 2 || this.crewAt(work, crew, start) !== undefined) return start;
        start -= 1;
      } else start = next;
    }
    return NOWHERE;
  }

  /** Soonest start in floor … ceiling; for the few tasks that are wanted early. */
  soonestFit(
    work: Work,
    crew: readonly Seat[],
    bounds: { floor: number; ceiling: number },
  ): number {
    const last = Math.min(bounds.ceiling, this.problem.to - work.minutes);
    for (let start = Math.max(bounds.floor, this.problem.from); start <= last; start += 1) {
      if (this.#pools.roomBefore(work.takes, work.minutes, start) !== start) continue;
      if (this.crewAt(work, crew, start) !== undefined) return start;
    }
    return NOWHERE;
  }

  /** A different free unit for each seat, or undefined. Prefers the team's own, then the idle. */
  crewAt(work: Work, crew: readonly Seat[], start: number): readonly number[] | undefined {
    if (crew.length === 0) return NOBODY;
    if (crew.length === 1) {
      const unit = this.#bestFree(work, crew[0]!, start);
      return unit < 0 ? undefined : this.#alone[unit]!;
    }
    const taken: number[] = [];
    return this.#fillSeats(work, crew, { start, seat: 0 }, taken) ? taken : undefined;
  }

  /** The free unit that is liked best for a seat; -1 if none is free. */
  #bestFree(work: Work, seat: Seat, start: number): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let at = 0; at < seat.length; at += 1) {
      const unit = seat[at]!;
      if (!this.#isUnitFree(unit, start, work.minutes)) continue;
      const score = this.#scoreOf(work, { unit, at, start });
      if (score >= least) continue;
      least = score;
      best = unit;
    }
    return best;
  }

  isPoolFree(pool: number, from: number, to: number): boolean {
    return this.poolBlock(pool, from, to) === undefined;
  }

  /** Last minute in from … to at which no more of the pool can be had. */
  poolBlock(pool: number, from: number, to: number): number | undefined {
    return this.#pools.lastFull(pool, from, to);
  }

  /** First minute of the unbroken run in which the pool is all taken. */
  blockStart(pool: number, inside: number): number {
    let minute = inside;
    while (minute > this.problem.from && !this.isPoolFree(pool, minute - 1, minute)) minute -= 1;
    return minute;
  }

  /** Writes (sign 1) or wipes (sign -1) work on the board. */
  mark(work: Work, units: readonly number[], start: number, sign: 1 | -1): void {
    for (const unit of units) {
      const busy = this.#unitBusy[unit]!;
      busy.fill(sign === 1 ? 1 : 0, this.#at(start), this.#at(start + work.minutes));
      this.#unitLoad[unit] = this.#unitLoad[unit]! + sign * work.minutes;
      this.#remember(work.team, unit, sign);
    }
    for (const take of work.takes) {
      this.markPool(take.pool, start, start + work.minutes, sign * take.amount);
    }
  }

  markPool(pool: number, from: number, to: number, amount: number): void {
    this.#pools.mark(pool, from, to, amount);
  }

  #at(minute: number): number {
    return Math.min(Math.max(minute - this.problem.from, 0), this.#length);
  }

  #remember(team: string | undefined, unit: number, sign: number): void {
    if (team === undefined) return;
    let counts = this.#teamUnit.get(team);
    if (counts === undefined) {
      counts = new Int32Array(this.problem.units.length);
      this.#teamUnit.set(team, counts);
    }
    counts[unit] = counts[unit]! + sign;
  }

  #isBlocked(unit: number, at: number): boolean {
    return this.#unitBusy[unit]![at] !== 0 || (!this.isOvertime && this.#unitAway[unit]![at] !== 0);
  }

  #isUnitFree(unit: number, start: number, minutes: number): boolean {
    for (let at = this.#at(start + minutes) - 1; at >= this.#at(start); at -= 1) {
      if (this.#isBlocked(unit, at)) return false;
    }
    return true;
  }

  #unitBefore(unit: number, ceiling: number, minutes: number): number {
    let start = ceiling - this.problem.from;
    let at = start + minutes - 1;
    while (start >= 0 && at >= start) {
      if (!this.#isBlocked(unit, at)) at -= 1;
      else {
        start = at - minutes;
        at = start + minutes - 1;
      }
    }
    return start < 0 ? NOWHERE : start + this.problem.from;
  }

  #seatsBefore(work: Work, crew: readonly Seat[], ceiling: number): number {
    let start = ceiling;
    for (const seat of crew) {
      let best = NOWHERE;
      for (const unit of seat) {
        best = Math.max(best, this.#unitBefore(unit, ceiling, work.minutes));
        if (best === ceiling) break;
      }
      start = Math.min(start, best);
    }
    return start;
  }

  #fillSeats(
    work: Work,
    crew: readonly Seat[],
    at: { readonly start: number; readonly seat: number },
    taken: number[],
  ): boolean {
    const seat = crew[at.seat];
    if (seat === undefined) return true;
    const free = seat.filter(
      (unit) => !taken.includes(unit) && this.#isUnitFree(unit, at.start, work.minutes),
    );
    for (const unit of free.length < 2
      ? free
      : this.#byLiking(free, { seat, work, start: at.start })) {
      taken.push(unit);
      if (this.#fillSeats(work, crew, { start: at.start, seat: at.seat + 1 }, taken)) return true;
      taken.pop();
    }
    return false;
  }

  /**
   * Whoever is there; own team first; then whoever has least to do, a place further down the list
   * weighing as much as a quarter hour of work.
   * @tuned by eye on two made-up meals; it buys fewer hand-overs, nothing rests on it
   */
  #scoreOf(work: Work, at: { readonly unit: number; readonly at: number; readonly start: number }) {
    const { unit, start } = at;
    let score = this.#unitLoad[unit]! + 15 * at.at;
    if (this.isOvertime && !this.isThere(unit, start, work.minutes)) score += 10_000;
    if (work.team === undefined) return score;
    const own = this.#teamUnit.get(work.team);
    return own !== undefined && own[unit]! > 0 ? score - 600 : score;
  }

  #byLiking(
    free: readonly number[],
    wish: { readonly seat: Seat; readonly work: Work; readonly start: number },
  ): readonly number[] {
    const { seat, work, start } = wish;
    const scores = new Map(
      free.map((unit) => [unit, this.#scoreOf(work, { unit, at: seat.indexOf(unit), start })]),
    );
    return [...free].sort((a, b) => scores.get(a)! - scores.get(b)!);
  }
}
