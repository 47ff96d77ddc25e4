// A job in as few words as a pocket or a wall holds: what, how many coals, on which ovens.

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import { coalsOf, shovelsOf } from '../../timetable/fire-watch.ts';
import type { Say } from '../say.ts';
import { jobName, ovenWord, shortName } from '../words/jobs.ts';
import { lightingWord } from './first-work.ts';
import { type NumberedJob, ovensInARow } from './job-list.ts';
import { nearestTo } from './load-jobs.ts';
import { listed, sentenceCase, shovelsWord, turnShort } from './phrases.ts';

/** `Turn bread 1 to 5`; `Lay 22 above, 4 below: bread 1 to 5`. */
export function shortWork({ job, walk }: NumberedJob, plan: MealPlan, say: Say): string {
  const where = whereOf(walk.jobs, say);
  const what = sentenceCase(jobName(job));
  switch (job.kind) {
    case 'light-chimney':
    case 'light-feeder':
      return lightOf(job, plan);
    case 'lay-coals':
    case 'add-coals': {
      const verb = job.kind === 'lay-coals' ? 'Lay' : 'Add';
      const ash = job.values.clearAsh === 1 ? ', ash off first' : '';
      return `${verb} ${amountWord(job)}${ash}: ${where}`;
    }
    case 'turn':
      return `${turnOf(job, plan) ?? what}: ${where}`;
    case 'call':
      return `Call: ${calledDishes(job, say)}`;
    case 'load':
    case 'take-out':
      return `${job.kind === 'load' ? 'In' : 'Out'}: ${where}${dishOf(job, say)}`;
    case 'wash-hands':
      return `Wash hands${dishOf(job, say)}`;
    default:
      if (where !== '') return `${what} ${where}`;
      return job.dish === undefined ? what : `${what}: ${shortName(say.dish(job.dish))}`;
  }
}

/** How far and which way, as the coal plan of its load has it. */
function turnOf({ load, values }: Job, { dishes }: MealPlan): string | undefined {
  const part = dishes.flatMap(({ loads }) => loads).find((each) => each.load.id === load);
  const turn = nearestTo(
    part?.coals.turns ?? [],
    Number(values.minute ?? 0),
    ({ minute }) => minute,
  );
  return turn === undefined ? undefined : turnShort(turn);
}

const dishOf = ({ dish }: Job, say: Say) =>
  dish === undefined ? '' : `, ${shortName(say.dish(dish))}`;

const calledDishes = ({ values }: Job, say: Say) =>
  listed(
    String(values.dishes ?? '')
      .split(' ')
      .filter((id) => id !== '')
      .map((id) => shortName(say.dish(id))),
  );

function lightOf(job: Job, { camp, daySheet }: MealPlan): string {
  const lighting = daySheet.lightings.find(({ id }) => id === job.id);
  if (lighting === undefined) return 'Light coals';
  return lightingWord(lighting, camp.fuel.kind === 'wood-coals');
}

/** On each oven: `22 above, 4 below`; shovels for wood. */
function amountWord(job: Job): string {
  const isWood = job.values.shovelsAbove !== undefined || job.values.shovelsBelow !== undefined;
  const sides = (['above', 'below'] as const).map((side) => {
    const shovels = Number(job.values[side === 'above' ? 'shovelsAbove' : 'shovelsBelow'] ?? 0);
    const amount = isWood ? shovels : Number(job.values[side] ?? 0);
    return amount > 0 ? `${isWood ? shovelsWord(amount) : amount} ${side}` : '';
  });
  return sides.filter((word) => word !== '').join(', ');
}

/** The ovens of a walk, each once; nothing where it is done at the table. */
export function whereOf(jobs: readonly Job[], say: Say): string {
  const names = jobs.flatMap(({ oven }) => (oven === undefined ? [] : [say.ovenName(oven)]));
  return ovensInARow([...new Set(names)].map((name) => ovenWord(name)));
}

/** All the coals of some jobs: `215 coals`, `12 shovels`. */
export const coalsWord = (jobs: readonly Job[], isWood: boolean): string =>
  isWood ? shovelsWord(shovelsOf(jobs)) : String(coalsOf(jobs));
