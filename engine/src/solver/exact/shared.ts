// A place that several stays may have at once, each so much of it. Where what must be there fills it,
// what would be too much begins after or ends before.

import { Calls } from './calls.ts';
import { type Field, NO_SIDE } from './field.ts';
import {
  becauseBeginsBy,
  becauseEndsFrom,
  becauseThere,
  isAway,
  isThere,
  latest,
  latestEnd,
  type Stay,
  soonest,
  soonestEnd,
} from './stay.ts';

export interface Sharing extends Stay {
  readonly amount: number;
}

interface Place {
  readonly capacity: number;
  readonly stays: readonly Sharing[];
}

export class Shared {
  readonly #field: Field;
  readonly #places: Place[] = [];
  readonly calls = new Calls();

  constructor(field: Field) {
    this.#field = field;
  }

  add(stays: readonly Sharing[], capacity: number): void {
    this.#places.push({ stays, capacity });
    this.calls.add(
      stays.flatMap(({ first, last, where }) => [
        2 * first + 1,
        2 * last,
        ...(where === undefined ? [] : [where.side]),
      ]),
    );
  }

  heedNext(): boolean | undefined {
    const place = this.calls.next();
    if (place === undefined) return undefined;
    const { stays, capacity } = this.#places[place]!;
    // How much must be there changes only where something must begin.
    for (const stay of stays) {
      if (!this.#isSure(stay)) continue;
      if (!this.#heedAt(stays, capacity, latest(this.#field, stay))) return false;
    }
    return true;
  }

  /** Is there a minute at which it must be there? */
  #isSure(stay: Stay): boolean {
    const field = this.#field;
    return isThere(field, stay) && latest(field, stay) < soonestEnd(field, stay);
  }

  #mustBeAt(stay: Stay, minute: number): boolean {
    const field = this.#field;
    return (
      latest(field, stay) <= minute && minute < soonestEnd(field, stay) && isThere(field, stay)
    );
  }

  #heedAt(stays: readonly Sharing[], capacity: number, minute: number): boolean {
    let used = 0;
    for (const stay of stays) if (this.#mustBeAt(stay, minute)) used += stay.amount;
    if (used > capacity) {
      return this.#field.clash(NO_SIDE, 0, this.#becauseFull(stays, minute));
    }
    for (const stay of stays) {
      if (used + stay.amount <= capacity || this.#mustBeAt(stay, minute)) continue;
      if (!this.#keepOff(stays, stay, minute)) return false;
    }
    return true;
  }

  #becauseFull(stays: readonly Sharing[], minute: number): number {
    const reason = this.#field.reason(false);
    for (const stay of stays) {
      if (this.#mustBeAt(stay, minute)) this.#becauseAt(reason, stay, minute);
    }
    return reason;
  }

  #becauseAt(reason: number, stay: Stay, minute: number): void {
    becauseBeginsBy(this.#field, reason, stay, minute);
    becauseEndsFrom(this.#field, reason, stay, minute + 1);
    becauseThere(this.#field, reason, stay);
  }

  /** The place is full at this minute without it. */
  #keepOff(stays: readonly Sharing[], stay: Sharing, minute: number): boolean {
    const field = this.#field;
    if (isAway(field, stay) || latestEnd(field, stay) <= minute) return true;
    if (soonest(field, stay) > minute) return true;
    const endsAfter = soonestEnd(field, stay) > minute;
    const beginsBy = latest(field, stay) <= minute;
    if (!endsAfter && !beginsBy) return true;
    const reason = this.#becauseFull(stays, minute);
    if (endsAfter) becauseEndsFrom(field, reason, stay, minute + 1);
    if (beginsBy) becauseBeginsBy(field, reason, stay, minute);
    if (endsAfter && beginsBy) {
      const where = stay.where!;
      return field.raise(where.side ^ 1, 1 - where.least, reason);
    }
    if (!isThere(field, stay)) return true;
    becauseThere(field, reason, stay);
    if (endsAfter) return field.raise(2 * stay.first, minute + 1, reason);
    return field.raise(2 * stay.last + 1, stay.more - minute, reason);
  }
}
