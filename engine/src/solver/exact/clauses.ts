// Of these literals one at least is true. Two of each clause are watched: as long as neither turns
// false nothing has to be done.

import { BySide } from './calls.ts';
import { byClause, type Field, type Literal } from './field.ts';

/** As [side, least, side, least, …]; what a clause has raised stands first. */
export type Clause = Int32Array;

export class Clauses {
  readonly #field: Field;
  readonly all: (Clause | undefined)[] = [];
  /** Learned ones, by place: how many levels they were learned from; they may be forgotten. */
  readonly learned = new Map<number, number>();
  readonly #free: number[] = [];
  /** By side that rises: clauses with a watched literal that may turn false by it, and its least. */
  readonly #watching = new BySide<number>();

  constructor(field: Field) {
    this.#field = field;
  }

  /** At the root: false where the clause contradicts what always holds. */
  add(literals: readonly Literal[]): boolean {
    const field = this.#field;
    if (literals.some(({ side, least }) => field.isTrue(side, least))) return true;
    const open = literals.filter(({ side, least }) => !field.isFalse(side, least));
    const [only] = open;
    if (only === undefined) return false;
    if (open.length === 1) return field.raise(only.side, only.least, field.reason(false));
    this.store(Int32Array.from(open.flatMap(({ side, least }) => [side, least])));
    return true;
  }

  /** Watches the first two literals. */
  store(clause: Clause): number {
    const place = this.#free.pop() ?? this.all.length;
    this.all[place] = clause;
    this.#watch(place, clause[0]!, clause[1]!);
    this.#watch(place, clause[2]!, clause[3]!);
    return place;
  }

  #watch(place: number, side: number, least: number): void {
    this.#watching.add(side ^ 1, place, least);
  }

  /** After a side rose; false on a contradiction. */
  heed(risen: number): boolean {
    const watching = this.#watching.of(risen);
    if (watching === undefined) return true;
    const most = -this.#field.bound[risen]!;
    const side = risen ^ 1;
    let kept = 0;
    let isSound = true;
    for (let at = 0; at < watching.length; at += 2) {
      const place = watching[at]!;
      const least = watching[at + 1]!;
      const stays = most >= least || !isSound || this.#stays(place, side, least);
      if (stays === 'clash') isSound = false;
      if (stays === false) continue;
      watching[kept] = place;
      watching[kept + 1] = least;
      kept += 2;
    }
    watching.length = kept;
    return isSound;
  }

  /** Is this still the one to watch? If so all others are false, or one of them is true. */
  #stays(place: number, side: number, least: number): boolean | 'clash' {
    const field = this.#field;
    const clause = this.all[place];
    if (clause === undefined) return false;
    if (clause[0] === side && clause[1] === least) swap(clause, 0, 2);
    if (field.isTrue(clause[0]!, clause[1]!)) return true;
    for (let at = 4; at < clause.length; at += 2) {
      if (field.isFalse(clause[at]!, clause[at + 1]!)) continue;
      swap(clause, 2, at);
      this.#watch(place, clause[2]!, clause[3]!);
      return false;
    }
    return field.raise(clause[0]!, clause[1]!, byClause(place)) || 'clash';
  }

  /** Drops the half of the learned clauses that says least, none that is a reason now. */
  forgetHalf(): void {
    const { entries, entryWhy } = this.#field;
    const inUse = new Set<number>();
    for (let at = 0; at < entries; at += 1) inUse.add(entryWhy[at]!);
    const ranked = [...this.learned]
      .filter(([place, levels]) => levels > 2 && !inUse.has(byClause(place)))
      .sort((one, other) => other[1] - one[1] || one[0] - other[0]);
    const dropped = ranked.slice(0, ranked.length >> 1).map(([place]) => place);
    for (const place of dropped) {
      this.all[place] = undefined;
      this.learned.delete(place);
    }
    this.#unwatch();
    this.#free.push(...dropped);
  }

  /** No list names a dropped clause any more, so that its place may be used again. */
  #unwatch(): void {
    for (const watching of this.#watching.all) {
      let kept = 0;
      for (let at = 0; at < watching.length; at += 2) {
        if (this.all[watching[at]!] === undefined) continue;
        watching[kept] = watching[at]!;
        watching[kept + 1] = watching[at + 1]!;
        kept += 2;
      }
      watching.length = kept;
    }
  }
}

function swap(clause: Clause, one: number, other: number): void {
  const [side, least] = [clause[one]!, clause[one + 1]!];
  clause[one] = clause[other]!;
  clause[one + 1] = clause[other + 1]!;
  clause[other] = side;
  clause[other + 1] = least;
}
