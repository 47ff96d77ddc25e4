// Which loads are the same work? Many ovens of one make with one dish at one hour bake alike: coals
// and bake are reckoned once and carried over to the others, so that a big feed costs by its dishes.

import type { CampOven } from './camp/camp.ts';
import type { LoadPlan } from './meal.ts';
import type { OvenLoad } from './menu/load.ts';
import { isRefusal, type Notice, type OrRefusal } from './notice/notice.ts';
import type { ClockMinutes, Kelvin } from './quantity/unit.ts';

/** What is known of loads already planned, by all that moves coals and bake. */
export type LikeLoads = Map<string, LoadPlan>;

interface LoadToPlan {
  readonly dish: string;
  readonly load: OvenLoad;
  readonly oven: CampOven;
  /** What the oven held before, if anything. */
  readonly before: { readonly outAt: ClockMinutes; readonly iron: Kelvin } | undefined;
}

/** Planned, or taken over from a load that is like it; a refusal is not remembered. */
export function plannedOnce(
  likes: LikeLoads,
  asked: LoadToPlan,
  plan: () => OrRefusal<LoadPlan>,
): OrRefusal<LoadPlan> {
  const likeness = likenessOf(asked);
  const known = likes.get(likeness);
  const outcome = known === undefined ? plan() : carriedOver(known, asked.load);
  if (!isRefusal(outcome)) likes.set(likeness, outcome);
  return outcome;
}

/** A word that two loads share only if oven, load, dish and the oven's heat at the start are equal. */
function likenessOf({ dish, load, oven, before }: LoadToPlan): string {
  const { id: _load, oven: _in, ...lying } = load;
  const { id: _oven, name: _name, mark: _mark, ...make } = oven;
  return JSON.stringify([dish, before ?? null, make, lying]);
}

/** The plan of one load as the plan of another that is like it. */
function carriedOver(known: LoadPlan, load: OvenLoad): LoadPlan {
  const { coals, bake } = known;
  const own = (notices: readonly Notice[]) =>
    notices.map((each) => renamed(each, known.load, load));
  return {
    load,
    air: known.air,
    coals: { ...coals, load: load.id, oven: load.oven, notices: own(coals.notices) },
    bake: { ...bake, load: load.id, notices: own(bake.notices) },
  };
}

function renamed(notice: Notice, from: OvenLoad, to: OvenLoad): Notice {
  const { oven, task } = notice.about;
  const about = {
    ...notice.about,
    ...(oven === from.oven ? { oven: to.oven } : {}),
    ...(task === from.id ? { task: to.id } : {}),
  };
  return { ...notice, about };
}
