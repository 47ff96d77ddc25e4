// In which orders are groups worth placing? What has least room, most work or the dearest lateness
// first; work that may be left always last.

import type { GroupNet } from './net.ts';
import type { Problem } from './problem.ts';
import { latestOnTime } from './temporal.ts';

/** The first to try in front; no order twice. */
export function firstOrders(
  problem: Problem,
  nets: readonly GroupNet[],
): readonly (readonly number[])[] {
  const latest = latestOnTime(problem, 0);
  const room = nets.map((net) => roomOf(problem, net, latest));
  const work = nets.map((net) => workOf(problem, net));
  const due = nets.map((net) => dueOf(problem, net));
  const dear = problem.groups.map((group) => -group.latePrice);
  const orders = [
    orderedBy(problem, [dear]),
    orderedBy(problem, [due.map((minute) => -minute), dear]),
    orderedBy(problem, [room, dear]),
    orderedBy(problem, [work.map((minutes) => -minutes), dear]),
    orderedBy(problem, [due, dear]),
  ];
  const seen = new Set<string>();
  return orders.filter((order) => {
    const isNew = !seen.has(order.join());
    seen.add(order.join());
    return isNew;
  });
}

function orderedBy(problem: Problem, keys: readonly (readonly number[])[]): readonly number[] {
  const { groups } = problem;
  return groups
    .map((_, index) => index)
    .sort((a, b) => {
      const chores = Number(groups[a]!.latePrice <= 1) - Number(groups[b]!.latePrice <= 1);
      if (chores !== 0) return chores;
      const key = keys.find((each) => each[a] !== each[b]);
      return key === undefined ? a - b : key[a]! - key[b]!;
    });
}

/** Least room that any task of the group has between its release and the latest it can be. */
function roomOf(problem: Problem, net: GroupNet, latest: Float64Array): number {
  const rooms = net.members.map((task) => {
    const soonest = problem.tasks[task]!.release ?? problem.from;
    return latest[task]! - soonest;
  });
  return Math.min(problem.to, ...rooms);
}

const workOf = (problem: Problem, net: GroupNet) =>
  net.members.reduce((sum, task) => {
    const { minutes, seats } = problem.tasks[task]!;
    return sum + minutes * seats.length;
  }, 0);

const dueOf = (problem: Problem, net: GroupNet) =>
  Math.min(problem.to, ...net.members.map((task) => problem.tasks[task]!.due ?? problem.to));
