// How are many mouths fed at one minute? Over lines that each get their share of every dish's ovens,
// the oven that comes out last kept shut for those who come late.
// Common practice, no source; the pace of a line is ours.

import type { DaySheet } from './day-sheet.ts';

/** Fewer mouths than this walk past one pot. */
const MANY_MOUTHS = 60;
/** Mouths that one line feeds in a minute, and how long the last may stand in it [min]. */
const MOUTHS_A_MINUTE = 6;
const LONGEST_LINE = 20;

export interface LineDish {
  readonly dish: string;
  /** By line, neighbours together. */
  readonly ovens: readonly (readonly string[])[];
  /** Kept shut for latecomers; empty where nothing is held back or there is but one oven. */
  readonly kept: readonly string[];
  readonly keptPortions: number;
}

export interface ServingLines {
  readonly lines: number;
  readonly dishes: readonly LineDish[];
}

export interface LinesAsked {
  readonly mouths: number;
  readonly sheet: Pick<DaySheet, 'spans'>;
  readonly dishes: readonly {
    readonly dish: string;
    readonly reserve: number;
    readonly loads: readonly {
      readonly oven: string;
      readonly id: string;
      readonly portions: number;
    }[];
  }[];
}

/** Lines and what stands on each; undefined where one line does. */
export function servingLines({ mouths, sheet, dishes }: LinesAsked): ServingLines | undefined {
  if (mouths < MANY_MOUTHS) return undefined;
  const lines = Math.max(1, Math.ceil(mouths / (MOUTHS_A_MINUTE * LONGEST_LINE)));
  const outAt = new Map(
    sheet.spans.filter(({ state }) => state === 'cooking').map(({ load, to }) => [load, to]),
  );
  return {
    lines,
    dishes: dishes.map(({ dish, reserve, loads }) => {
      const inOrder = [...loads].sort(
        (one, other) => (outAt.get(one.id) ?? 0) - (outAt.get(other.id) ?? 0),
      );
      const kept = keptFrom(inOrder, reserve);
      const open = loads.filter((load) => !kept.includes(load));
      return {
        dish,
        ovens: Array.from({ length: lines }, (_, line) =>
          open.slice(share(line, open.length, lines), share(line + 1, open.length, lines)),
        ).map((own) => own.map(({ oven }) => oven)),
        kept: kept.map(({ oven }) => oven),
        keptPortions: kept.length === 0 ? 0 : reserve,
      };
    }),
  };
}

const share = (line: number, ovens: number, lines: number) => Math.round((line * ovens) / lines);

/** The last ovens that hold the reserve; never more than half of them. */
function keptFrom<Load extends { readonly portions: number }>(
  inOrder: readonly Load[],
  reserve: number,
): readonly Load[] {
  let [count, held] = [0, 0];
  while (held < reserve && count < Math.floor(inOrder.length / 2)) {
    count += 1;
    held += inOrder[inOrder.length - count]!.portions;
  }
  return count === 0 ? [] : inOrder.slice(-count);
}
