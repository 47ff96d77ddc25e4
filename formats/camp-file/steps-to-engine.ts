// A recipe's steps: who waits for whom, with the usual filled in.

import { kelvin, minutes, type RecipeStep, type StepLag } from '#engine';
import { USUAL } from './defaults.ts';
import { readQuantity } from './quantity-text.ts';
import type { FileStep } from './v1.ts';

/** Nobody stands over these: a rise, a rest, a pot that simmers. */
const HANDS_OFF: readonly FileStep['kind'][] = ['rise', 'second-rise', 'cook', 'rest', 'hold'];

/** Steps with ids; one that names nothing to wait for comes after the step above it. */
export function stepsFromFile(steps: readonly FileStep[]): readonly RecipeStep[] {
  const ids = stepIds(steps);
  return steps.map((step, index) => stepFromFile(step, ids[index]!, ids[index - 1]));
}

function stepFromFile(step: FileStep, id: string, idAbove: string | undefined): RecipeStep {
  const usualAfter = idAbove === undefined ? [] : [{ step: idAbove }];
  return {
    id,
    kind: step.kind,
    say: step.say,
    minutes: minutes(
      step.takes === undefined ? USUAL.stepMinutes : readQuantity('duration', step.takes)!,
    ),
    hands: step.hands ?? (HANDS_OFF.includes(step.kind) ? 0 : 1),
    skill: step.skill ?? 'new',
    needsTable: step.table ?? false,
    ...(step.keptAt === undefined
      ? {}
      : { keptAt: kelvin(readQuantity('temperature', step.keptAt)!) }),
    after: (step.after ?? usualAfter).map(lagFromFile),
  };
}

function lagFromFile(lag: NonNullable<FileStep['after']>[number]): StepLag {
  const most = lag.most === undefined ? undefined : minutes(readQuantity('duration', lag.most)!);
  return {
    step: lag.step,
    least: minutes(lag.least === undefined ? 0 : readQuantity('duration', lag.least)!),
    ...(most === undefined ? {} : { most }),
  };
}

/** A step without an id is called by its kind: `mix`, then `mix-2`. Never one that is taken. */
export function stepIds(steps: readonly FileStep[]): readonly string[] {
  const taken = new Set(steps.map((step) => step.id).filter((id) => id !== undefined));
  return steps.map((step) => {
    if (step.id !== undefined) return step.id;
    let id: string = step.kind;
    for (let next = 2; taken.has(id); next += 1) id = `${step.kind}-${next}`;
    taken.add(id);
    return id;
  });
}
