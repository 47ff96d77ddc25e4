// From a plan to what the model makes of it, and back.

import type { Batch, Plan } from '../problem.ts';
import type { BatchModel, Share } from './batch-model.ts';
import type { SeatModel } from './crew-model.ts';
import type { Unknown } from './field.ts';
import type { Model } from './model.ts';

/** Tries first what stands in the plan; the answer is what the plan costs in the model's money. */
export function likePlan(model: Model, plan: Plan): number {
  const { prover, starts, seats, batches, terms } = model;
  const liked = new Int32Array(prover.field.count);
  for (let unknown = 0; unknown < liked.length; unknown += 1) {
    liked[unknown] = prover.field.least(unknown);
  }
  starts.forEach((start, task) => {
    if (start !== undefined) liked[start] = plan.starts[task]!;
  });
  seats.forEach((own, task) => {
    likeCrew(liked, own, plan.crews[task] ?? []);
  });
  batches.forEach((own, store) => {
    const made = plan.batches
      .filter((batch) => batch.store === store)
      .sort((one, other) => one.start - other.start);
    own.forEach((batch, at) => {
      likeBatch(liked, model, { batch, made: made[at] });
    });
  });
  likeRest(liked, model, plan);
  prover.liked = liked;
  return terms.reduce((sum, { side, weight }) => {
    const value = liked[side >> 1]!;
    return sum + weight * (side % 2 === 0 ? value : -value);
  }, 0);
}

function likeCrew(liked: Int32Array, seats: readonly SeatModel[], crew: readonly number[]): void {
  seats.forEach((seat, at) => {
    for (const [unit, literal] of seat) {
      if (literal === 'always') continue;
      const isIt = crew[at] === unit;
      if (isIt || literal.side % 2 === 0) liked[literal.side >> 1] = valueIn(literal, isIt);
    }
  });
}

/** Of a flag, when its literal is true or false. */
const valueIn = ({ side }: { readonly side: number }, isTrue: boolean) =>
  (side % 2 === 0) === isTrue ? 1 : 0;

function likeBatch(
  liked: Int32Array,
  { problem }: Model,
  { batch, made }: { readonly batch: BatchModel; readonly made: Batch | undefined },
): void {
  liked[batch.start] = made?.start ?? problem.to;
  liked[batch.isMade] = made === undefined ? 0 : 1;
  if (made === undefined) return;
  likeCrew(liked, batch.seats, made.crew);
  for (const share of batch.shares) {
    for (const { use, amount } of made.uses) {
      if (use === share.use) liked[share.amount] = liked[share.amount]! + amount;
    }
  }
}

/** What follows: ages, first batch, units of a team. */
function likeRest(liked: Int32Array, model: Model, plan: Plan): void {
  const { problem, batches, follows } = model;
  batches.forEach((own, store) => {
    for (const { start, shares } of own) {
      const { minutes, lead, uses, waitLiked } = problem.stores[store]!;
      for (const share of shares) {
        const { task, waitMost, waitWell = waitMost } = uses[share.use]!;
        const age =
          liked[share.amount] === 0 ? 0 : plan.starts[task]! - liked[start]! - minutes - lead;
        likeAge(liked, share, { liked: age - waitLiked, well: age - waitWell });
      }
    }
  });
  if (follows.first !== undefined) {
    const firsts = batches.flatMap(([own]) => (own === undefined ? [] : [liked[own.start]!]));
    liked[follows.first] = Math.min(...firsts);
  }
  for (const { task, unit, flag } of follows.teams) {
    if (plan.crews[task]?.[0] === unit) liked[flag] = 1;
  }
}

function likeAge(
  liked: Int32Array,
  { old, tooOld }: Share,
  past: { readonly liked: number; readonly well: number },
): void {
  if (old !== undefined) liked[old] = Math.max(0, past.liked);
  if (tooOld !== undefined) liked[tooOld] = Math.max(0, past.well);
}

/** The plan that the prover has found, for the groups that are in the model; the rest as it was. */
export function planIn(model: Model, from: Plan): Plan {
  const { problem, starts, seats } = model;
  const { field } = model.prover;
  const crewOf = (own: readonly SeatModel[]) =>
    own.flatMap((seat) =>
      [...seat].flatMap(([unit, literal]) => {
        const isIt = literal === 'always' || field.isTrue(literal.side, literal.least);
        return isIt ? [unit] : [];
      }),
    );
  const placed = starts.map((start) => (start === undefined ? undefined : field.least(start)));
  const batches = model.batches.flatMap((own, store) =>
    own.flatMap((batch): readonly Batch[] => {
      if (field.least(batch.isMade) === 0) return [];
      const { minutes, lead, uses } = problem.stores[store]!;
      const start = field.least(batch.start);
      const readyAt = start + minutes + lead;
      const given = batch.shares
        .map(({ use, amount }) => ({ use, amount: field.least(amount) }))
        .filter(({ amount }) => amount > 0)
        .sort((one, other) => placed[uses[other.use]!.task]! - placed[uses[one.use]!.task]!);
      return [
        { store, start, readyAt, emptiedAt: readyAt, crew: crewOf(batch.seats), uses: given },
      ];
    }),
  );
  return { ...from, starts: placed, crews: seats.map(crewOf), batches };
}

/** What it costs in the model's money. */
export function costIn({ prover, terms }: Model): number {
  return terms.reduce((sum, { side, weight }) => sum + weight * prover.field.bound[side]!, 0);
}

/** Tries first what was found last. */
export function likeFound({ prover }: Model): void {
  const liked = (unknown: Unknown) => prover.field.least(unknown);
  prover.liked = Int32Array.from({ length: prover.field.count }, (_, unknown) => liked(unknown));
}
