// Weighted sums that may not be more than so much: what a batch holds, how old a use is, what a plan
// may cost.

import { Calls } from './calls.ts';
import { type Field, type Literal, NO_SIDE, type Side } from './field.ts';

export interface Term {
  readonly side: Side;
  /** More than nothing. */
  readonly weight: number;
}

interface Sum {
  readonly sides: Int32Array;
  readonly weights: Int32Array;
  readonly most: number;
  readonly where: Literal | undefined;
  /** The field knows what it weighs: the one that is priced. */
  readonly isWeighed: boolean;
}

export class Sums {
  readonly #field: Field;
  readonly all: Sum[] = [];
  readonly calls = new Calls();

  constructor(field: Field) {
    this.#field = field;
  }

  /** Each side counted as what it is: weight * side summed is at most `most`. */
  add(terms: readonly Term[], most: number, where?: Literal, isWeighed = false): void {
    const sum: Sum = {
      sides: Int32Array.from(terms, ({ side }) => side),
      weights: Int32Array.from(terms, ({ weight }) => weight),
      most,
      where,
      isWeighed,
    };
    if (isWeighed) for (const { side, weight } of terms) this.#field.weigh(side, weight);
    this.all.push(sum);
    const sides = terms.map(({ side }) => side);
    this.calls.add(where === undefined ? sides : [...sides, where.side]);
  }

  /** Looks at one that is due; undefined when none is, else whether all is sound. */
  heedNext(): boolean | undefined {
    const place = this.calls.next();
    return place === undefined ? undefined : this.#heed(place);
  }

  #heed(place: number): boolean {
    const sum = this.all[place]!;
    const { bound } = this.#field;
    const { sides, weights, where } = sum;
    if (where !== undefined && -bound[where.side ^ 1]! < where.least) return true;
    const slack = sum.most - this.#weightOf(sum);
    const holds = where === undefined || bound[where.side]! >= where.least;
    if (slack < 0) return this.#over(sum, slack);
    if (!holds) return true;
    for (let at = 0; at < sides.length; at += 1) {
      const side = sides[at]!;
      const weight = weights[at]!;
      const least = bound[side]!;
      const range = -bound[side ^ 1]! - least;
      if (range * weight <= slack) continue;
      const room = Math.floor(slack / weight);
      const spare = weight * (room + 1) - slack - 1;
      if (!this.#field.raise(side ^ 1, -(least + room), this.#reason(sum, { but: at, spare }))) {
        return false;
      }
    }
    return true;
  }

  #weightOf({ sides, weights, isWeighed }: Sum): number {
    if (isWeighed) return this.#field.weight;
    const { bound } = this.#field;
    let weight = 0;
    for (let at = 0; at < sides.length; at += 1) weight += weights[at]! * bound[sides[at]!]!;
    return weight;
  }

  #over(sum: Sum, slack: number): boolean {
    const field = this.#field;
    const spare = -slack - 1;
    const { where } = sum;
    const reason = this.#reason(sum, { but: -1, spare });
    if (where !== undefined) return field.raise(where.side ^ 1, 1 - where.least, reason);
    return field.clash(NO_SIDE, 0, reason);
  }

  /** The bounds that make it so, each given up as far as there is something to spare. */
  #reason(sum: Sum, given: { readonly but: number; readonly spare: number }): number {
    const field = this.#field;
    const { sides, weights, where } = sum;
    const reason = field.reason(false);
    let { spare } = given;
    for (let at = 0; at < sides.length; at += 1) {
      if (at === given.but) continue;
      const side = sides[at]!;
      const weight = weights[at]!;
      const least = field.bound[side]!;
      const always = field.always[side]!;
      if (least === always) continue;
      const less = Math.min(least - always, Math.floor(spare / weight));
      spare -= less * weight;
      if (least - less > always) field.because(reason, side, least - less);
    }
    if (where !== undefined && given.but >= 0) field.because(reason, where.side, where.least);
    return reason;
  }
}
