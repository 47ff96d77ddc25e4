// What has to be looked at when a side rises? Each thing is called once, however much rose.

import type { Side } from './field.ts';

/** Lists by side, most of them empty. */
export class BySide<Of> {
  readonly #lists: (Of[] | undefined)[] = [];

  add(side: Side, ...items: readonly Of[]): void {
    const list = this.#lists[side];
    if (list === undefined) this.#lists[side] = [...items];
    else list.push(...items);
  }

  of(side: Side): Of[] | undefined {
    return this.#lists[side];
  }

  get all(): readonly Of[][] {
    return this.#lists.filter((list) => list !== undefined);
  }
}

export class Calls {
  readonly #of = new BySide<number>();
  readonly #isDue: number[] = [];
  readonly #due: number[] = [];

  /** The number of one more thing, called at once. */
  add(sides: Iterable<Side>): number {
    const thing = this.#isDue.length;
    this.#isDue.push(0);
    for (const side of sides) this.#of.add(side, thing);
    this.call(thing);
    return thing;
  }

  call(thing: number): void {
    if (this.#isDue[thing] === 1) return;
    this.#isDue[thing] = 1;
    this.#due.push(thing);
  }

  callFor(risen: Side): void {
    const of = this.#of.of(risen);
    if (of !== undefined) for (let at = 0; at < of.length; at += 1) this.call(of[at]!);
  }

  /** One that is due; undefined when none is. */
  next(): number | undefined {
    const thing = this.#due.pop();
    if (thing !== undefined) this.#isDue[thing] = 0;
    return thing;
  }

  forget(): void {
    while (this.next() !== undefined);
  }
}
