// Does this plan of a drawn meal keep everything, and what does it cost? Counted minute by minute and
// coal by coal from the meal alone, with nothing of the solver's in it: neither its checker nor its
// prices. A plan on time with nothing declared is asked for.
import assert from 'node:assert/strict';
import type { Batch, Plan, Problem } from '../../engine/src/solver/problem.ts';

/** Throws at the first thing that is not kept. */
export function assertMealKept(problem: Problem, plan: Plan): void {
  assert.deepEqual([plan.left, plan.broken], [[], []], 'nothing left, nothing declared broken');
  assert.ok(
    plan.lateBy.every((late) => late === 0),
    'all on time',
  );
  assertTimes(problem, plan);
  assertPeople(problem, plan);
  assertPools(problem, plan);
  assertCoals(problem, plan);
}

function assertTimes(problem: Problem, plan: Plan): void {
  problem.tasks.forEach((task, at) => {
    const start = plan.starts[at];
    assert.ok(start !== undefined && Number.isInteger(start), `${task.id} has a whole minute`);
    assert.ok(
      start >= problem.from && start + task.minutes <= problem.to,
      `${task.id} is in the day`,
    );
    if (task.fixed !== undefined)
      assert.equal(start, task.fixed, `${task.id} is where it is pinned`);
    if (task.due !== undefined) assert.equal(start, task.due, `${task.id} is on time`);
    assert.ok(start >= (task.release ?? start) && start <= (task.latest ?? start), task.id);
  });
  for (const { from, to, least, most = Number.POSITIVE_INFINITY } of problem.lags) {
    const apart = plan.starts[to]! - plan.starts[from]!;
    const named = `${problem.tasks[from]!.id} to ${problem.tasks[to]!.id}: ${apart}`;
    assert.ok(least <= apart && apart <= most, named);
  }
}

/** Who does what at each minute: one thing at a time, by who may, while they are there. */
function assertPeople(problem: Problem, plan: Plan): void {
  const busy = problem.units.map(() => new Map<number, string>());
  const work = (unit: number, from: number, minutes: number, what: string) => {
    const own = busy[unit];
    assert.ok(own !== undefined, `${what} is done by somebody`);
    const isThere = problem.units[unit]!.windows.some(
      (open) => open.from <= from && from + minutes <= open.to,
    );
    assert.ok(minutes === 0 || isThere, `${what} within the hours of ${unit}`);
    for (let minute = from; minute < from + minutes; minute += 1) {
      assert.ok(!own.has(minute), `${unit} at ${minute}: ${own.get(minute)} and ${what}`);
      own.set(minute, what);
    }
  };
  problem.tasks.forEach((task, at) => {
    const crew = plan.crews[at]!;
    assert.equal(crew.length, task.seats.length, `${task.id} has its hands`);
    assert.equal(new Set(crew).size, crew.length, `${task.id} has different hands`);
    crew.forEach((unit, seat) => {
      assert.ok(task.seats[seat]!.includes(unit), `${task.id}: ${unit} may`);
      work(unit, plan.starts[at]!, task.minutes, task.id);
    });
    if (task.sameAs === undefined) return;
    assert.equal(crew[0], plan.crews[task.sameAs]![0], `${task.id} by the same hand`);
  });
  for (const batch of plan.batches) {
    const { seats, minutes, id } = problem.stores[batch.store]!;
    assert.equal(batch.crew.length, seats.length, `a batch of ${id} has its hands`);
    batch.crew.forEach((unit, seat) => {
      assert.ok(seats[seat]!.includes(unit), `a batch of ${id}: ${unit} may`);
      work(unit, batch.start, minutes, `a batch of ${id}`);
    });
  }
}

function assertPools(problem: Problem, plan: Plan): void {
  problem.pools.forEach((pool, index) => {
    const used = new Map<number, number>();
    const take = (from: number, to: number, amount: number) => {
      for (let minute = from; minute < to; minute += 1) {
        used.set(minute, (used.get(minute) ?? 0) + amount);
      }
    };
    problem.tasks.forEach((task, at) => {
      const start = plan.starts[at]!;
      for (const taken of task.takes) {
        if (taken.pool === index) take(start, start + task.minutes, taken.amount);
      }
    });
    for (const { pool: held, first, last } of problem.holds) {
      if (held !== index) continue;
      take(plan.starts[first]!, plan.starts[last]! + problem.tasks[last]!.minutes, 1);
    }
    for (const batch of plan.batches) {
      if (problem.stores[batch.store]!.holder === index) take(batch.start, batch.emptiedAt, 1);
    }
    for (const [minute, amount] of used) {
      assert.ok(amount <= pool.capacity, `${pool.id} at ${minute}: ${amount}`);
    }
  });
}

/** Each use gets what it needs, of batches that are ready and not past their life; no batch gives more. */
function assertCoals(problem: Problem, plan: Plan): void {
  problem.stores.forEach((store, index) => {
    const got = store.uses.map(() => 0);
    for (const batch of plan.batches.filter((each) => each.store === index)) {
      assert.equal(batch.readyAt, batch.start + store.minutes + store.lead, 'ready after its lead');
      assert.ok(batch.emptiedAt >= batch.readyAt, 'not emptied before it is ready');
      const given = batch.uses.reduce((sum, { amount }) => sum + amount, 0);
      assert.ok(given <= store.size, `a batch of ${store.id} gives ${given}`);
      for (const { use, amount } of batch.uses) {
        const wait = waitOf(problem, plan, { batch, use });
        assert.ok(amount > 0 && wait >= 0 && wait <= store.uses[use]!.waitMost, `old by ${wait}`);
        got[use] = got[use]! + amount;
      }
    }
    assert.deepEqual(
      got,
      store.uses.map(({ amount }) => amount),
      `every use of ${store.id} gets its own`,
    );
  });
}

function waitOf(
  problem: Problem,
  plan: Plan,
  { batch, use }: { readonly batch: Batch; readonly use: number },
): number {
  return plan.starts[problem.stores[batch.store]!.uses[use]!.task]! - batch.readyAt;
}

/** What a plan on time costs, from the words of the objective: waiting, first fire, batches, age, hands. */
export function mealCost(problem: Problem, plan: Plan): number {
  let cost = 0;
  for (const { from, to, price } of problem.prices) {
    cost += price * (plan.starts[to]! - plan.starts[from]!);
  }
  let first = problem.to;
  for (const batch of plan.batches) {
    first = Math.min(first, batch.start);
    cost += 5;
    const { uses, waitLiked } = problem.stores[batch.store]!;
    for (const { use } of batch.uses) {
      const wait = waitOf(problem, plan, { batch, use });
      cost += Math.max(0, wait - waitLiked);
      cost += 10 * Math.max(0, wait - (uses[use]!.waitWell ?? uses[use]!.waitMost));
    }
  }
  const teams = new Map<string, Set<number>>();
  problem.tasks.forEach(({ team }, at) => {
    const [lead] = plan.crews[at]!;
    if (team === undefined || lead === undefined) return;
    teams.set(team, (teams.get(team) ?? new Set()).add(lead));
  });
  for (const hands of teams.values()) cost += 3 * (hands.size - 1);
  return cost + 2 * (problem.to - first);
}
