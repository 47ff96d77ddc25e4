// A place that one stay at a time may have. Of two that are both there one comes first; which of them
// is settled as soon as the other order has no room.

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

interface Called {
  readonly stays: readonly Stay[];
  readonly own: number;
}

export class OneAtATime {
  readonly #field: Field;
  readonly calls = new Calls();
  /** What each call is about. */
  readonly #called: Called[] = [];

  constructor(field: Field) {
    this.#field = field;
  }

  add(stays: readonly Stay[]): void {
    stays.forEach(({ first, last, where }, own) => {
      const sides = new Set([2 * first, 2 * first + 1, 2 * last, 2 * last + 1]);
      if (where !== undefined) sides.add(where.side);
      this.calls.add(sides);
      this.#called.push({ stays, own });
    });
  }

  /** Looks at one stay that is due; undefined when none is, else whether all is sound. */
  heedNext(): boolean | undefined {
    const call = this.calls.next();
    if (call === undefined) return undefined;
    const { stays, own } = this.#called[call]!;
    const one = stays[own]!;
    if (isAway(this.#field, one)) return true;
    for (let at = 0; at < stays.length; at += 1) {
      if (at !== own && !this.#part(one, stays[at]!)) return false;
    }
    return true;
  }

  #part(one: Stay, other: Stay): boolean {
    const field = this.#field;
    const oneFirst = soonestEnd(field, one) <= latest(field, other);
    const otherFirst = soonestEnd(field, other) <= latest(field, one);
    if (oneFirst && otherFirst) return true;
    const [isOne, isOther] = [isThere(field, one), isThere(field, other)];
    if (oneFirst) return !isOne || !isOther || this.#order(one, other);
    if (otherFirst) return !isOne || !isOther || this.#order(other, one);
    if (isOne) return this.#away(other, one);
    return !isOther || this.#away(one, other);
  }

  /** Both are there, and the later can not come first. */
  #order(sooner: Stay, later: Stay): boolean {
    const field = this.#field;
    const end = soonestEnd(field, sooner);
    if (soonest(field, later) < end) {
      const reason = field.reason(true);
      becauseEndsFrom(field, reason, sooner, end);
      this.#becauseNotFirst(reason, later, sooner);
      if (!field.raise(2 * later.first, end, reason)) return false;
    }
    const begins = latest(field, later);
    if (latestEnd(field, sooner) <= begins) return true;
    const reason = field.reason(true);
    becauseBeginsBy(field, reason, later, begins);
    this.#becauseNotFirst(reason, later, sooner);
    return field.raise(2 * sooner.last + 1, sooner.more - begins, reason);
  }

  #becauseNotFirst(reason: number, later: Stay, sooner: Stay): void {
    const field = this.#field;
    const begins = latest(field, sooner);
    becauseEndsFrom(field, reason, later, begins + 1);
    becauseBeginsBy(field, reason, sooner, begins);
    becauseThere(field, reason, later);
    becauseThere(field, reason, sooner);
  }

  /** No order of the two has room: one of them is elsewhere. */
  #away(one: Stay, there: Stay): boolean {
    const field = this.#field;
    if (isAway(field, one)) return true;
    const reason = field.reason(false);
    const [begins, other] = [latest(field, one), latest(field, there)];
    becauseEndsFrom(field, reason, there, begins + 1);
    becauseBeginsBy(field, reason, one, begins);
    becauseEndsFrom(field, reason, one, other + 1);
    becauseBeginsBy(field, reason, there, other);
    becauseThere(field, reason, there);
    const { where } = one;
    if (where !== undefined) return field.raise(where.side ^ 1, 1 - where.least, reason);
    return field.clash(NO_SIDE, 0, reason);
  }
}
