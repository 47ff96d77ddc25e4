// Who does it, as unknowns: one literal for each unit that may fill a seat, and what follows from
// hours, pairs and being done by the same.

import type { Problem, Seat } from '../problem.ts';
import { atLeast, atMost, type Literal, not, type Unknown } from './field.ts';
import type { Prover } from './prover.ts';

/** By unit: when it is the one; 'always' where nobody else may. */
export type SeatModel = ReadonlyMap<number, Literal | 'always'>;

export function seatModel(prover: Prover, seat: Seat): SeatModel {
  const { clauses } = prover;
  const [only, other] = seat;
  if (only === undefined) return new Map();
  if (other === undefined) return new Map([[only, 'always']]);
  if (seat.length === 2) {
    const isOnly = newFlag(prover);
    return new Map([
      [only, atLeast(isOnly, 1)],
      [other, atMost(isOnly, 0)],
    ]);
  }
  const flags = seat.map((unit) => [unit, atLeast(newFlag(prover), 1)] as const);
  clauses.add(flags.map(([, flag]) => flag));
  flags.forEach(([, flag], at) => {
    for (const [, next] of flags.slice(at + 1)) clauses.add([not(flag), not(next)]);
  });
  return new Map(flags);
}

export function newFlag(prover: Prover): Unknown {
  const flag = prover.field.unknown(0, 1);
  prover.settled.push(flag);
  return flag;
}

/** A clause of literals that may be 'always'. */
export function addClause(
  prover: Prover,
  literals: readonly (Literal | 'always' | 'never')[],
): void {
  if (literals.includes('always')) return;
  prover.clauses.add(literals.filter((each) => typeof each !== 'string'));
}

export const opposite = (literal: Literal | 'always'): Literal | 'never' =>
  literal === 'always' ? 'never' : not(literal);

/** Two seats of one task are never the same unit. */
export function keepApart(prover: Prover, seats: readonly SeatModel[]): void {
  seats.forEach((seat, at) => {
    for (const next of seats.slice(at + 1)) {
      for (const [unit, literal] of seat) {
        const other = next.get(unit);
        if (other !== undefined) addClause(prover, [opposite(literal), opposite(other)]);
      }
    }
  });
}

export function keepSame(prover: Prover, one: SeatModel, other: SeatModel): void {
  for (const [own, next] of [
    [one, other],
    [other, one],
  ] as const) {
    for (const [unit, literal] of own) {
      addClause(prover, [opposite(literal), next.get(unit) ?? 'never']);
    }
  }
}

/** Within one of the stretches in which the unit is there. */
export function keepHours(
  prover: Prover,
  problem: Problem,
  work: { readonly seat: SeatModel; readonly start: Unknown; readonly minutes: number },
): void {
  for (const [unit, literal] of work.seat) {
    const { windows } = problem.units[unit]!;
    const inAny = windows.map(({ from, to }) => {
      const isIn = windows.length === 1 ? literal : atLeast(newFlag(prover), 1);
      addClause(prover, [opposite(isIn), atLeast(work.start, from)]);
      addClause(prover, [opposite(isIn), atMost(work.start, to - work.minutes)]);
      return isIn;
    });
    if (windows.length !== 1) addClause(prover, [opposite(literal), ...inAny]);
  }
}
