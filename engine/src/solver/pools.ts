// How much of each pool is taken at each minute? Searching jumps past the minute that blocks.

export interface Taking {
  readonly pool: number;
  readonly amount: number;
}

export class PoolGrid {
  readonly from: number;
  readonly length: number;
  readonly #capacities: Int32Array;
  readonly #used: readonly Int32Array[];

  constructor(capacities: readonly number[], span: { readonly from: number; readonly to: number }) {
    this.from = span.from;
    this.length = span.to - span.from;
    this.#capacities = Int32Array.from(capacities);
    this.#used = capacities.map(() => new Int32Array(this.length));
  }

  /** The ceiling if there is room from it on; else a start before it that may have room. */
  roomBefore(takes: readonly Taking[], minutes: number, ceiling: number): number {
    for (let at = 0; at < takes.length; at += 1) {
      const take = takes[at]!;
      const used = this.#used[take.pool]!;
      const room = this.#capacities[take.pool]! - take.amount;
      const first = this.#at(ceiling);
      for (let minute = this.#at(ceiling + minutes) - 1; minute >= first; minute -= 1) {
        if (used[minute]! > room) return minute + this.from - minutes;
      }
    }
    return ceiling;
  }

  /** Latest start from ceiling down to floor with room for all; undefined if there is none. */
  latestRoom(
    takes: readonly Taking[],
    minutes: number,
    bounds: { readonly floor: number; readonly ceiling: number },
  ): number | undefined {
    let start = bounds.ceiling;
    while (start >= bounds.floor) {
      const next = this.roomBefore(takes, minutes, start);
      if (next === start) return start;
      start = next;
    }
    return undefined;
  }

  /** Last minute in from … to at which no more of the pool can be had. */
  lastFull(pool: number, from: number, to: number): number | undefined {
    const used = this.#used[pool]!;
    const capacity = this.#capacities[pool]!;
    for (let minute = to - 1; minute >= from; minute -= 1) {
      if (used[this.#at(minute)]! >= capacity) return minute;
    }
    return undefined;
  }

  /** Takes (or gives back, when negative) from one minute to another. */
  mark(pool: number, from: number, to: number, amount: number): void {
    const used = this.#used[pool]!;
    const end = this.#at(to);
    for (let at = this.#at(from); at < end; at += 1) used[at] = used[at]! + amount;
  }

  clear(): void {
    for (const used of this.#used) used.fill(0);
  }

  #at(minute: number): number {
    return Math.min(Math.max(minute - this.from, 0), this.length);
  }
}
