// What is the best plan of a meal, and is that proven? A constraint solver on a model of its own.
import type { Batch, Plan, Problem } from '../../engine/src/solver/problem.ts';
import { type Answer, solved } from './constraint-solver.ts';
import { oracleModel } from './oracle-model.ts';

export interface Oracle {
  /** 'best': proven. 'some': found, not proven. 'none': proven that there is none. */
  readonly status: Answer['status'];
  readonly cost: number | undefined;
  readonly plan: Plan | undefined;
  readonly seconds: number;
}

/**
 * @param atMost   cost of a plan at hand: 'none' then proves that nothing is so cheap
 * @param batches  how many batches a plan may have; more than any good plan needs
 */
export async function askOracle(
  problem: Problem,
  wish: { readonly atMost?: number; readonly batches: number; readonly seconds: number },
): Promise<Oracle> {
  const { status, values, seconds } = await solved(oracleModel(problem, wish), wish.seconds);
  if (values === undefined) return { status, cost: undefined, plan: undefined, seconds };
  return { status, cost: Number(values.cost) / 10, plan: planOf(problem, values), seconds };
}

type Values = Readonly<Record<string, unknown>>;

function planOf(problem: Problem, values: Values): Plan {
  const starts = values.s as number[];
  const units = values.w as number[];
  let seat = 0;
  const crews = problem.tasks.map(({ seats }) =>
    seats.map(() => {
      seat += 1;
      return units[seat - 1]!;
    }),
  );
  return {
    starts,
    crews,
    batches: problem.stores.flatMap((_, at) => batchesOf(problem, values, at)),
    upkeeps: [],
    lateBy: problem.groups.map(() => 0),
    left: [],
    broken: [],
  };
}

function batchesOf(problem: Problem, values: Values, store: number): readonly Batch[] {
  const { minutes, lead } = problem.stores[store]!;
  const starts = values[`bs${store}`] as number[];
  const isMade = values[`on${store}`] as number[];
  const crew = values[`bw${store}`] as number[];
  const amounts = values[`x${store}`] as number[][];
  return starts.flatMap((start, at): Batch[] => {
    if (isMade[at] !== 1) return [];
    const readyAt = start + minutes + lead;
    const uses = amounts.flatMap((row, use) => (row[at]! > 0 ? [{ use, amount: row[at]! }] : []));
    return [{ store, start, readyAt, emptiedAt: readyAt, crew: [crew[at]!], uses }];
  });
}
