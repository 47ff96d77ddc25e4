// Reads the two public formats of project instances: .sm (one mode) and .sch (lags at most too).
import type { Project } from '../../engine/src/solver/shortest.ts';

/** PSPLIB, single mode: precedence rows, then durations and requests, then availabilities. */
export function readSingleMode(text: string): Project {
  const lines = text.split(/\r?\n/);
  const after = (heading: RegExp) => {
    const at = lines.findIndex((line) => heading.test(line));
    if (at < 0) throw new Error(`no line like ${heading}`);
    return lines.slice(at + 1);
  };
  const rows = (from: readonly string[]) => {
    const found: number[][] = [];
    for (const line of from) {
      const numbers = line.trim().split(/\s+/).map(Number);
      if (numbers.some(Number.isNaN) || line.trim() === '') {
        if (found.length > 0) break;
        continue;
      }
      found.push(numbers);
    }
    return found;
  };
  const precedence = rows(after(/^PRECEDENCE RELATIONS/));
  const requests = rows(after(/^REQUESTS\/DURATIONS/));
  const capacities = rows(after(/^RESOURCEAVAILABILITIES/))[0]!;
  const minutes = requests.map((row) => row[2]!);
  const takes = requests.map((row) => takesOf(row.slice(3)));
  const arcs = precedence.flatMap((row) =>
    row.slice(3).map((to) => {
      const from = row[0]! - 1;
      return { from, to: to - 1, least: minutes[from]! };
    }),
  );
  const horizon = minutes.reduce((sum, each) => sum + each, 0) + 1;
  return { minutes, takes, arcs, capacities, horizon };
}

const takesOf = (amounts: readonly number[]) =>
  amounts.flatMap((amount, pool) => (amount > 0 ? [{ pool, amount }] : []));

/** ProGen/max: successors with a lag each in brackets; negative ones are lags at most. */
export function readWithLags(text: string): Project {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const head = numbersIn(lines[0]!);
  const count = head[0]! + 2;
  const minutes: number[] = [];
  const takes: Project['takes'][number][] = [];
  for (const line of lines.slice(1 + count, 1 + 2 * count)) {
    const row = numbersIn(line);
    minutes.push(row[2]!);
    takes.push(takesOf(row.slice(3)));
  }
  const arcs = lines.slice(1, 1 + count).flatMap((line) => {
    const row = numbersIn(line);
    const from = row[0]!;
    const successors = row.slice(3, 3 + row[2]!);
    const leasts = row.slice(3 + row[2]!);
    return successors.map((to, at) => ({ from, to, least: leasts[at]! }));
  });
  const capacities = numbersIn(lines[1 + 2 * count]!);
  const furthest = arcs.reduce((sum, arc) => sum + Math.max(0, arc.least), 0);
  const horizon = minutes.reduce((sum, each) => sum + each, 0) + furthest + 1;
  return { minutes, takes, arcs, capacities, horizon };
}

const numbersIn = (line: string) => (line.match(/-?\d+/g) ?? []).map(Number);
