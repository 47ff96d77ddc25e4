// What has happened, in a few words.

import type { Slip } from '#engine';
import type { Choice, ReplanChoices } from '../worker/replan-messages.ts';

const named = (list: readonly Choice[], id: string) =>
  list.find((each) => each.id === id)?.label ?? id;

export function slipWord(slip: Slip, choices: ReplanChoices): string {
  switch (slip.kind) {
    case 'behind':
      return `${slip.minutes} min behind${slip.dish === undefined ? '' : ` with ${named(choices.dishes, slip.dish)}`}`;
    case 'takes-longer':
      return `${named(choices.running, slip.job)}: ${slip.minutes} min longer`;
    case 'chimney-failed':
      return `${named(choices.lightings, slip.lighting)}: did not catch`;
    case 'guests-late':
      return `guests ${slip.minutes} min late${slip.dish === undefined ? '' : ` for ${named(choices.dishes, slip.dish)}`}`;
    case 'oven-dropped':
      return `${named(choices.ovens, slip.oven)} is of no more use`;
    case 'hand-gone':
      return `${named(choices.hands, slip.hand)} has left`;
  }
}
