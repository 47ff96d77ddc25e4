// One number at least so much above another, always or where a literal holds. Each arc is heeded both
// ways: as soon as it would not hold, its literal is false.

import { BySide } from './calls.ts';
import type { Field, Literal, Side } from './field.ts';

interface Arc {
  readonly from: Side;
  readonly to: Side;
  readonly least: number;
  readonly where: Literal | undefined;
}

export class Arcs {
  readonly #field: Field;
  readonly #from = new BySide<Arc>();
  readonly #where = new BySide<Arc>();

  constructor(field: Field) {
    this.#field = field;
  }

  /** to - from >= least, for sides; the mirrored arc comes with it. */
  add(from: Side, to: Side, least: number, where?: Literal): void {
    this.#keep({ from, to, least, where });
    this.#keep({ from: to ^ 1, to: from ^ 1, least, where });
  }

  #keep(arc: Arc): void {
    this.#from.add(arc.from, arc);
    if (arc.where !== undefined) this.#where.add(arc.where.side, arc);
  }

  heed(risen: Side): boolean {
    const from = this.#from.of(risen);
    if (from !== undefined) {
      for (let at = 0; at < from.length; at += 1) if (!this.press(from[at]!)) return false;
    }
    const where = this.#where.of(risen);
    if (where !== undefined) {
      for (let at = 0; at < where.length; at += 1) if (!this.press(where[at]!)) return false;
    }
    return true;
  }

  press(arc: Arc): boolean {
    const { bound } = this.#field;
    const least = bound[arc.from]! + arc.least;
    if (least <= bound[arc.to]!) return true;
    const { where } = arc;
    if (where === undefined || bound[where.side]! >= where.least) return this.#rise(arc, least);
    if (least <= -bound[arc.to ^ 1]! || this.#field.isFalse(where.side, where.least)) return true;
    return this.#rule(arc, where);
  }

  #rise({ from, to, least: apart, where }: Arc, least: number): boolean {
    const field = this.#field;
    const reason = field.reason(true);
    field.because(reason, from, least - apart);
    if (where !== undefined) field.because(reason, where.side, where.least);
    return field.raise(to, least, reason);
  }

  /** It can not hold, so its literal is false. */
  #rule({ from, to, least }: Arc, where: Literal): boolean {
    const field = this.#field;
    const reason = field.reason(false);
    const most = -field.bound[to ^ 1]!;
    field.because(reason, from, most - least + 1);
    field.because(reason, to ^ 1, -most);
    return field.raise(where.side ^ 1, 1 - where.least, reason);
  }

  pressAll(): boolean {
    return this.#from.all.every((arcs) => arcs.every((arc) => this.press(arc)));
  }
}
