// What was heard of the day, said back before the answer: which fire, which job, how much.

import type { MealPlan } from '../../meal.ts';
import type { Slip } from '../../timetable/replan/slip.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { jobName, ovenWord } from '../words/jobs.ts';

export function slipLines(plan: MealPlan, slips: readonly Slip[], say: Say): readonly Block[] {
  if (slips.length === 0) return [];
  const said = slips.map((slip) => slipWord(plan, slip, say));
  return [{ type: 'paragraph', parts: [{ text: `Heard: ${said.join('; ')}.` }] }];
}

function slipWord({ daySheet }: MealPlan, slip: Slip, say: Say): string {
  switch (slip.kind) {
    case 'behind':
      return `${say.minutes(slip.minutes)} behind${slip.dish === undefined ? '' : ` with ${say.dish(slip.dish)}`}`;
    case 'takes-longer': {
      const job = daySheet.jobs.find(({ id }) => id === slip.job);
      if (job === undefined) return `${say.minutes(slip.minutes)} longer`;
      const whose = job.dish === undefined ? '' : ` of ${say.dish(job.dish)}`;
      const begun = `begun at ${say.clock(job.start)} by the sheet`;
      return `${jobName(job)}${whose}, ${begun}, ${say.minutes(slip.minutes)} longer`;
    }
    case 'chimney-failed':
      return `${lightingWord(daySheet, slip.lighting, say)}, did not catch`;
    case 'guests-late':
      return `guests ${say.minutes(slip.minutes)} late${slip.dish === undefined ? '' : ` for ${say.dish(slip.dish)}`}`;
    case 'oven-dropped':
      return `${ovenWord(say.ovenName(slip.oven))} is of no more use`;
    case 'hand-gone':
      return `${say.hand(slip.hand)} has left`;
  }
}

function lightingWord({ lightings }: MealPlan['daySheet'], id: string, say: Say): string {
  const lighting = lightings.find((each) => each.id === id);
  if (lighting === undefined) return 'a fire';
  const what = lighting.chimney === undefined ? 'the fire' : `chimney ${lighting.chimney}`;
  return `${what}, lit at ${say.clock(lighting.at)}`;
}
