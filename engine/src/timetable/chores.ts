// Work that is often forgotten: water, wiping an oven between dishes, the call, wash-up, ash.

import { openHours } from '../camp/index.ts';
import * as habits from './habits.ts';
import type { DishTasks, LoadTasks, Making } from './making.ts';
import { spreadOf } from './round.ts';

const HARDLY = 1;

/**
 * One trip for water, by anybody, back before the first food is washed, cut or mixed; none where the camp does not say from
 * where, since then it stands at hand.
 */
export function waterTasks(making: Making, dishes: readonly DishTasks[]): void {
  const { builder, crews } = making;
  const makes = dishes.flatMap((dish) => dish.makes.filter((task) => needsWater(making, task)));
  if (makes.length === 0 || making.request.camp.place.water === undefined) return;
  const group = builder.group({
    id: 'water',
    towards: 'early',
    mayBeLeft: true,
    latePrice: HARDLY,
  });
  const fetch = builder.task({
    kind: 'fetch-water',
    group,
    minutes: habits.FETCH_WATER,
    seats: crews.seats('new'),
  });
  for (const make of makes) builder.lag(fetch, make, { least: 0 });
}

/** Bags can be set out dry; washing, mixing and cutting can not. */
const needsWater = ({ builder }: Making, task: number) => builder.meanings[task]?.kind !== 'weigh';

/** Loads of one oven in the order of serving; between two of them it cools, is wiped and greased. */
export function wipeTasks(making: Making, dishes: readonly DishTasks[]): void {
  const { builder, crews } = making;
  for (const loads of loadsByOven(dishes).values()) {
    loads.slice(1).forEach(({ load: next, group }, at) => {
      const { load: before } = loads[at]!;
      const wipe = builder.task({
        kind: 'wipe-oven',
        group,
        minutes: habits.WIPE_OVEN,
        dish: next.dish,
        load: next.work.load.id,
        oven: next.work.load.oven,
        // It bakes again at once and is wiped hot, with gloves and tongs: nobody new does that alone.
        seats: crews.seats('steady'),
        team: `oven ${next.work.load.oven}`,
      });
      const least = before.servedFromOven ? habits.POT_EMPTIES : habits.COOL_TO_WIPE;
      // In a wave this oven is empty before the last one, and is greased after the first.
      builder.lag(before.emptied, wipe, { least: least - leftOf(making, before) });
      builder.lag(wipe, next.grease, { least: -next.after });
    });
  }
}

/** Minutes from this oven's end to the end of its round; 0 where it is emptied with all the others. */
function leftOf({ builder }: Making, { emptied, after }: LoadTasks): number {
  const { round } = builder.meanings[emptied]!;
  return round === undefined ? 0 : Math.max(0, spreadOf(round.wave) - after);
}

interface LoadInGroup {
  readonly load: LoadTasks;
  readonly group: number;
  readonly serveAt: number;
}

export function loadsByOven(dishes: readonly DishTasks[]): Map<string, LoadInGroup[]> {
  const byOven = new Map<string, LoadInGroup[]>();
  for (const dish of dishes) {
    for (const load of dish.loads) {
      const list = byOven.get(load.work.load.oven) ?? [];
      list.push({ load, group: dish.group, serveAt: dish.work.dish.serveAt });
      byOven.set(load.work.load.oven, list);
    }
  }
  for (const list of byOven.values()) list.sort((a, b) => a.serveAt - b.serveAt);
  return byOven;
}

/** Hands washed right before these tasks, by whoever has the first seat; written last of all, so that
 * the other tasks keep their names. */
export function washTasks(making: Making, before: ReadonlySet<string>): void {
  const { builder } = making;
  builder.tasks.slice().forEach(({ id, group, seats }, index) => {
    const { dish } = builder.meanings[index]!;
    if (!before.has(id) || dish === undefined) return;
    const wash = builder.task({
      kind: 'wash-hands',
      group,
      minutes: habits.WASH_HANDS,
      dish,
      seats: seats.slice(0, 1),
      sameAs: index,
      needsCare: true,
    });
    builder.lag(wash, index, { least: 0, most: habits.WASH_TO_WORK });
  });
}

/** One call for each serving time, when all of it is on the table. */
export function callTasks(making: Making, dishes: readonly DishTasks[]): void {
  const { builder } = making;
  for (const serveAt of new Set(dishes.map((dish) => dish.work.dish.serveAt))) {
    const group = builder.group({
      id: `call ${serveAt}`,
      towards: 'late',
      mayBeLeft: false,
      latePrice: HARDLY,
    });
    const called = dishes.filter((dish) => dish.work.dish.serveAt === serveAt);
    builder.task({
      kind: 'call',
      group,
      minutes: 0,
      due: serveAt,
      seats: whoCalls(making, serveAt),
      values: { dishes: called.map((dish) => dish.work.dish.id).join(' ') },
    });
    const call = builder.tasks.length - 1;
    for (const dish of called) builder.startLag(dish.served, call, { least: 0 });
  }
}

/** Shouting takes nobody's time: the most skilled who is there at the hour calls. */
function whoCalls(making: Making, serveAt: number) {
  const { hands } = making.request.camp;
  const isThere = (index: number) =>
    openHours(hands[index]!).some(({ from, to }) => from <= serveAt && serveAt <= to);
  const ranked = [...making.crews.seats('new')[0]!].reverse();
  const there = ranked.filter(isThere);
  return [there.length > 0 ? there.slice(0, 1) : ranked.slice(0, 1)];
}

/** Ash after the last coals, wash-up after each serving; both can wait till somebody is free. */
export function closingTasks(making: Making, dishes: readonly DishTasks[]): void {
  const loads = dishes.flatMap((dish) => dish.loads);
  if (loads.length > 0) ashTask(making, early(making, 'ash-out'), loads);
  for (const serveAt of new Set(dishes.map(({ work }) => work.dish.serveAt))) {
    washUpTask(
      making,
      dishes.filter(({ work }) => work.dish.serveAt === serveAt),
    );
  }
}

const early = ({ builder }: Making, id: string) =>
  builder.group({ id, towards: 'early', mayBeLeft: true, latePrice: HARDLY });

/** Grows with dishes, ovens and mouths; shared by several hands where it is long. */
function washUpTask(making: Making, dishes: readonly DishTasks[]): void {
  const { builder, crews, request } = making;
  const mouths = request.camp.mouths.reduce((sum, { count }) => sum + count, 0);
  const ovens = dishes.reduce((sum, { loads }) => sum + loads.length, 0);
  const minutes = habits.washUpMinutes({ dishes: dishes.length, ovens, mouths });
  const people = Math.min(request.camp.hands.length, Math.ceil(minutes / habits.WASH_UP_ALONE));
  const wash = builder.task({
    kind: 'wash-up',
    group: early(making, 'wash-up'),
    minutes: Math.ceil(minutes / people),
    seats: crews.seats('new', people),
  });
  for (const dish of dishes) builder.startLag(dish.served, wash, { least: habits.MEAL });
}

function ashTask(making: Making, group: number, loads: readonly LoadTasks[]): void {
  const { builder, crews } = making;
  const ash = builder.task({
    kind: 'ash-out',
    group,
    minutes: habits.ASH_OUT,
    seats: crews.seats('steady'),
    needsCare: true,
  });
  for (const load of loads) builder.lag(load.takeOut, ash, { least: habits.COALS_DOWN });
}
