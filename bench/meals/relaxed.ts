// The same meal without one of its features: what a plan costs less then, the feature costs. Each
// meal without is looser than the meal with, so a cheaper plan of it proves that the feature binds.
import type { Problem, Task } from '../../engine/src/solver/problem.ts';
import type { Kind, Meal } from './draw-meal.ts';

export const FEATURES: Readonly<Record<string, (meal: Meal) => Problem>> = {
  'skills of hands': ({ problem, unpinned }) => {
    const all = problem.units.map((_, unit) => unit);
    // A pinned hand is a wish, no skill.
    return withTasks(problem, (task, index) =>
      task.seats === unpinned[index]!.seats ? { ...task, seats: task.seats.map(() => all) } : task,
    );
  },
  'hours of hands': ({ problem }) => ({
    ...problem,
    units: problem.units.map((unit) => ({
      ...unit,
      windows: [{ from: problem.from, to: problem.to }],
    })),
  }),
  'coals age': ({ problem }) => ({
    ...problem,
    stores: problem.stores.map((store) => ({
      ...store,
      waitLiked: FOREVER,
      uses: store.uses.map((use) => ({ ...use, waitMost: FOREVER, waitWell: FOREVER })),
    })),
  }),
  'size of a batch': ({ problem }) => ({
    ...problem,
    stores: problem.stores.map((store) => ({ ...store, size: 10 * store.size })),
  }),
  chimneys: ({ problem }) => withPool(problem, 'chimney'),
  turns: ({ problem, kinds }) => idle(problem, kinds, 'turn'),
  'added coals': ({ problem, kinds }) => {
    const { stores } = idle(problem, kinds, 'add');
    return {
      ...idle(problem, kinds, 'add'),
      stores: stores.map((store) => ({
        ...store,
        uses: store.uses.filter((use) => kinds[use.task] !== 'add'),
      })),
    };
  },
  'ovens used again': ({ problem }) => withPool(withPool(problem, 'small oven'), 'wide oven'),
  'table space': ({ problem }) => withPool(problem, 'table'),
  pins: ({ problem, unpinned }) => ({ ...problem, tasks: unpinned }),
  'two servings': ({ problem, servings }) => ownHands(problem, servings),
  'limits of holding': ({ problem, kinds }) => ({
    ...problem,
    lags: problem.lags.map((lag) => {
      const { most: _, ...loose } = lag;
      return kinds[lag.to] === 'served' ? loose : lag;
    }),
  }),
};

const FOREVER = 10_000;

const withTasks = (problem: Problem, change: (task: Task, index: number) => Task): Problem => ({
  ...problem,
  tasks: problem.tasks.map(change),
});

const withPool = (problem: Problem, id: string): Problem => ({
  ...problem,
  pools: problem.pools.map((pool) => (pool.id === id ? { ...pool, capacity: 100 } : pool)),
});

/** Work that somebody has to do, as if it did itself. */
const idle = (problem: Problem, kinds: readonly Kind[], kind: Kind): Problem => ({
  ...problem,
  tasks: problem.tasks.map((task, at) => (kinds[at] === kind ? { ...task, seats: [] } : task)),
});

/** Each serving has hands, ovens and chimneys of its own: what two servings take from each other. */
function ownHands(problem: Problem, servings: readonly number[]): Problem {
  const many = problem.units.length;
  const moved = (seat: readonly number[]) => seat.map((unit) => unit + many);
  return {
    ...problem,
    units: [...problem.units, ...problem.units],
    pools: problem.pools.map((pool) => ({ ...pool, capacity: 2 * pool.capacity })),
    tasks: problem.tasks.map((task) =>
      servings[task.group] === 0 ? { ...task, seats: task.seats.map(moved) } : task,
    ),
    stores: problem.stores.map((store) => ({
      ...store,
      seats: store.seats.map((seat) => [...seat, ...moved(seat)]),
    })),
  };
}
