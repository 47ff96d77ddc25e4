// Does this plan keep every constraint of the problem? Restated from the problem's own words,
// sharing no code with what makes plans. Lateness is allowed if declared; so is what is broken.

import type { Plan, Problem, Store } from './problem.ts';

export interface Fault {
  readonly rule: 'lag' | 'time' | 'unit' | 'crew' | 'pool' | 'hold' | 'store' | 'missing' | 'late';
  /** Tasks that it is about, as indices. */
  readonly tasks: readonly number[];
  readonly found: number;
  readonly wanted: number;
}

/** Every fault of the plan; empty for a sound one. */
export function faultsOf(problem: Problem, plan: Plan): readonly Fault[] {
  return [
    ...missing(problem, plan),
    ...wrongTimes(problem, plan),
    ...brokenLags(problem, plan),
    ...wrongCrews(problem, plan),
    ...doubleBooked(problem, plan),
    ...overfull(problem, plan),
    ...unsupplied(problem, plan),
  ];
}

function missing(problem: Problem, plan: Plan): readonly Fault[] {
  return problem.tasks.flatMap((task, index) => {
    const isLeft = plan.left.includes(task.group) && problem.groups[task.group]!.mayBeLeft;
    if (plan.starts[index] !== undefined || isLeft) return [];
    return [{ rule: 'missing' as const, tasks: [index], found: 0, wanted: 1 }];
  });
}

function wrongTimes(problem: Problem, plan: Plan): readonly Fault[] {
  const faults: Fault[] = [];
  problem.tasks.forEach((task, index) => {
    const start = plan.starts[index];
    if (start === undefined) return;
    const late = plan.lateBy[task.group] ?? 0;
    const say = (rule: Fault['rule'], found: number, wanted: number) =>
      faults.push({ rule, tasks: [index], found, wanted });
    if (!Number.isInteger(start)) say('time', start, Math.round(start));
    if (task.release !== undefined && start < task.release) say('time', start, task.release);
    if (task.latest !== undefined && start > task.latest) say('time', start, task.latest);
    if (task.fixed !== undefined && start !== task.fixed) say('time', start, task.fixed);
    if (task.due !== undefined && start !== task.due + late) say('late', start, task.due + late);
    if (late < 0) say('late', late, 0);
  });
  return faults;
}

function brokenLags(problem: Problem, plan: Plan): readonly Fault[] {
  const faults: Fault[] = [];
  for (const lag of problem.lags) {
    const from = plan.starts[lag.from];
    const to = plan.starts[lag.to];
    if (from === undefined || to === undefined) continue;
    const tasks = [lag.from, lag.to];
    const found = to - from;
    if (found < lag.least) faults.push({ rule: 'lag', tasks, found, wanted: lag.least });
    if (lag.most !== undefined && found > lag.most) {
      faults.push({ rule: 'lag', tasks, found, wanted: lag.most });
    }
  }
  return faults;
}

function wrongCrews(problem: Problem, plan: Plan): readonly Fault[] {
  const faults: Fault[] = [];
  problem.tasks.forEach((task, index) => {
    if (plan.starts[index] === undefined) return;
    const crew = plan.crews[index] ?? [];
    const isRight =
      crew.length === task.seats.length &&
      new Set(crew).size === crew.length &&
      task.seats.every((seat, at) => seat.includes(crew[at]!));
    if (!isRight) {
      const wanted = task.seats.length;
      faults.push({ rule: 'crew', tasks: [index], found: crew.length, wanted });
    }
    const partner = task.sameAs === undefined ? undefined : plan.crews[task.sameAs];
    if (partner !== undefined && partner[0] !== crew[0]) {
      faults.push({ rule: 'crew', tasks: [index], found: crew[0] ?? -1, wanted: partner[0] ?? -1 });
    }
  });
  return faults;
}

interface Busy {
  readonly task: number;
  readonly from: number;
  readonly to: number;
}

function doubleBooked(problem: Problem, plan: Plan): readonly Fault[] {
  return problem.units.flatMap((unit, index) => {
    const busy = busyOf(problem, plan, index).sort((a, b) => a.from - b.from);
    const faults: Fault[] = [];
    busy.forEach((each, at) => {
      const isThere = unit.windows.some((open) => open.from <= each.from && each.to <= open.to);
      if (!isThere) faults.push({ rule: 'unit', tasks: [each.task], found: each.from, wanted: 0 });
      const next = busy[at + 1];
      if (next === undefined || next.from >= each.to) return;
      const tasks = [each.task, next.task];
      faults.push({ rule: 'unit', tasks, found: next.from, wanted: each.to });
    });
    return faults;
  });
}

function busyOf(problem: Problem, plan: Plan, unit: number): Busy[] {
  const busy: Busy[] = [];
  problem.tasks.forEach((task, index) => {
    const from = plan.starts[index];
    if (from === undefined || task.minutes === 0 || !plan.crews[index]?.includes(unit)) return;
    busy.push({ task: index, from, to: from + task.minutes });
  });
  for (const batch of plan.batches) {
    if (!batch.crew.includes(unit)) continue;
    const to = batch.start + problem.stores[batch.store]!.minutes;
    busy.push({ task: -1, from: batch.start, to });
  }
  for (const each of plan.upkeeps) {
    if (!each.crew.includes(unit)) continue;
    const to = each.start + (problem.stores[each.store]!.upkeep?.minutes ?? 0);
    busy.push({ task: -1, from: each.start, to });
  }
  return busy;
}

interface Taking extends Busy {
  readonly amount: number;
  readonly rule: 'pool' | 'hold';
}

/** At every start of a taking: all that is taken at that minute, counted afresh. */
function overfull(problem: Problem, plan: Plan): readonly Fault[] {
  return problem.pools.flatMap((pool, index) => {
    const takings = takingsOf(problem, plan, index);
    return takings.flatMap((each) => {
      const there = takings.filter((other) => other.from <= each.from && each.from < other.to);
      const found = there.reduce((sum, other) => sum + other.amount, 0);
      if (found <= pool.capacity) return [];
      return [{ rule: each.rule, tasks: there.map((t) => t.task), found, wanted: pool.capacity }];
    });
  });
}

function takingsOf(problem: Problem, plan: Plan, pool: number): readonly Taking[] {
  const takings: Taking[] = [];
  problem.tasks.forEach((task, index) => {
    const from = plan.starts[index];
    if (from === undefined) return;
    for (const take of task.takes) {
      if (take.pool !== pool) continue;
      const to = from + task.minutes;
      takings.push({ task: index, from, to, amount: take.amount, rule: 'pool' });
    }
  });
  for (const hold of problem.holds) {
    const from = plan.starts[hold.first];
    const last = plan.starts[hold.last];
    if (hold.pool !== pool || from === undefined || last === undefined) continue;
    const to = last + problem.tasks[hold.last]!.minutes;
    takings.push({ task: hold.first, from, to, amount: 1, rule: 'hold' });
  }
  for (const batch of plan.batches) {
    if (problem.stores[batch.store]!.holder !== pool) continue;
    const { start: from, emptiedAt: to } = batch;
    takings.push({ task: -1, from, to, amount: 1, rule: 'pool' });
  }
  return takings.filter((taking) => taking.from < taking.to);
}

function unsupplied(problem: Problem, plan: Plan): readonly Fault[] {
  return problem.stores.flatMap((store, index) => [
    ...shortUses(plan, store, index),
    ...wrongBatches(plan, store, index),
  ]);
}

function shortUses(plan: Plan, store: Store, index: number): readonly Fault[] {
  return store.uses.flatMap((use, at) => {
    const start = plan.starts[use.task];
    if (start === undefined) return [];
    const given = plan.batches
      .filter((batch) => batch.store === index)
      .filter((batch) => batch.readyAt <= start && start - batch.readyAt <= use.waitMost)
      .flatMap((batch) => batch.uses.filter((each) => each.use === at))
      .reduce((sum, each) => sum + each.amount, 0);
    if (given === use.amount) return [];
    return [{ rule: 'store' as const, tasks: [use.task], found: given, wanted: use.amount }];
  });
}

function wrongBatches(plan: Plan, store: Store, index: number): readonly Fault[] {
  return plan.batches.flatMap((batch) => {
    if (batch.store !== index) return [];
    const faults: Fault[] = [];
    const used = batch.uses.reduce((sum, each) => sum + each.amount, 0);
    const ready = batch.start + store.minutes + store.lead;
    const say = (found: number, wanted: number) =>
      faults.push({ rule: 'store', tasks: [], found, wanted });
    if (used > store.size) say(used, store.size);
    if (batch.readyAt !== ready) say(batch.readyAt, ready);
    if (store.holder !== undefined && batch.emptiedAt < batch.readyAt) {
      say(batch.emptiedAt, batch.readyAt);
    }
    const isManned =
      batch.crew.length === store.seats.length &&
      store.seats.every((seat, at) => seat.includes(batch.crew[at]!));
    if (!isManned) say(batch.crew.length, store.seats.length);
    return faults;
  });
}
