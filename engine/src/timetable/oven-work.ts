// One load in its oven while its work is being written down, and what all such work has in common.

import type { CampOven, Skill } from '../camp/camp.ts';
import type { StepKind } from '../menu/recipe.ts';
import type { Task } from '../solver/problem.ts';
import type { DishWork, JobKind, LoadWork } from './day-sheet.ts';
import * as habits from './habits.ts';
import { lidPool, type Making } from './making.ts';
import { crewsFor, walkMinutes } from './round.ts';
import type { Wave } from './waves.ts';

export interface OvenWork {
  readonly making: Making;
  readonly group: number;
  readonly dish: DishWork;
  readonly work: LoadWork;
  readonly isHeavy: boolean;
  /** The ovens that go round together; `work` is the first of them. */
  readonly wave: Wave;
}

export type Values = Readonly<Record<string, number | string>>;

interface AddWish {
  readonly values?: Values;
  readonly say?: string | undefined;
  readonly people?: number;
  readonly skill?: Skill;
  readonly fixed?: number | undefined;
  readonly aim?: Task['aim'];
}

export function add(at: OvenWork, kind: JobKind, minutes: number, wish: AddWish): number {
  const people = wish.people ?? 1;
  const hand = at.dish.dish.pins.hand;
  const isMany = at.wave.loads.length > 1;
  const crews = people > 0 ? crewsFor(at.wave, minutes) : 1;
  const seats = Array.from({ length: people > 0 ? crews : 0 }, () =>
    at.making.crews.seats(wish.skill ?? 'steady', people, hand),
  ).flat();
  // On a round the lids are kept apart by the order of its jobs: see `chained`.
  const isAtLid = people > 0 && !isMany;
  return at.making.builder.task({
    kind,
    minutes: people > 0 ? walkMinutes(at.wave, minutes) : minutes,
    seats,
    takes: isAtLid ? [{ pool: lidPool(at.making, at.work.load.oven), amount: 1 }] : [],
    ...(isMany || at.wave.isPart ? { round: { wave: at.wave, minutes, crews, people } } : {}),
    group: at.group,
    dish: at.dish.dish.id,
    load: at.work.load.id,
    oven: at.work.load.oven,
    team: `oven ${at.work.load.oven}`,
    ...(wish.values === undefined ? {} : { values: wish.values }),
    ...(wish.say === undefined ? {} : { say: wish.say }),
    ...(wish.fixed === undefined ? {} : { fixed: wish.fixed }),
    ...(wish.aim === undefined ? {} : { aim: wish.aim }),
    ...(kind === 'probe' ? { needsCare: true } : {}),
  });
}

/** A deep 14-inch oven, or anything wider than that: two lift it, where there are two. */
export const isHeavyOven = ({ style, diameter }: Pick<CampOven, 'style' | 'diameter'>) =>
  diameter >= habits.HEAVY_ANY_METRES || (style === 'deep' && diameter >= habits.HEAVY_DEEP_METRES);

/** Laying or adding so many coals one by one with tongs. */
export const coalMinutes = (coals: number) =>
  habits.LAY_COALS + Math.floor(Math.max(0, coals) / habits.COALS_A_MINUTE);

/** Minutes in the oven: what the cook pinned, else the coal plan's. */
export const cookMinutes = (dish: DishWork, work: LoadWork) =>
  Math.max(
    1,
    Math.round(dish.dish.pins.bakeMinutes ?? work.coals.outMinute - work.coals.loadInMinute),
  );

export const stepOf = (dish: DishWork, kind: StepKind) =>
  dish.recipe.steps.find((step) => step.kind === kind);

export const liftPeople = (at: OvenWork) => (at.isHeavy ? 2 : 1);

export const shovels = (above: number | undefined, below: number | undefined): Values => ({
  ...(above === undefined ? {} : { shovelsAbove: above }),
  ...(below === undefined ? {} : { shovelsBelow: below }),
});
