// Lid and floor from above with every coal, the wind, where the cook stands, and when more coals come.

import type { Air, CampOven } from '../../camp/camp.ts';
import type { CoalPlan, CoalSet } from '../../coals/coal-plan.ts';
import type { Block } from '../document.ts';
import { compassPoint } from '../drawing/around.ts';
import { type FromAbove, floorDrawing, lidDrawing } from '../drawing/from-above.ts';
import type { Say } from '../say.ts';
import { isWood, layoutPhrase, lidSet, shovelsWord, type Where, woodPhrase } from './phrases.ts';

/** Wind that moves no leaf and bends no heat: lower bound of light air (wmo306). */
const STILL_METRES_PER_SECOND = 0.3;

export interface FromAbovePart {
  readonly oven: CampOven;
  readonly coals: CoalPlan;
  readonly air: Air;
  readonly screened: boolean;
  /** The minute on this sheet of an addition's minute in the plan. */
  readonly minuteOf: (planned: number) => number;
}

export function fromAboveBlocks(seen: FromAbovePart, say: Say): readonly Block[] {
  const { oven, coals, air } = seen;
  const isStill = air.wind < STILL_METRES_PER_SECOND;
  const screened = seen.screened && !isStill;
  const around = aroundPhrase(seen, say);
  const view = (set: CoalSet, where: Where): FromAbove => {
    const lies = isWood(coals)
      ? woodPhrase(set, where)
      : `${set.pieces}: ${layoutPhrase(set, where)}`;
    const later = laterLines(seen, where, say);
    const stands = isStill ? '' : ' The cook stands across the wind.';
    return {
      oven,
      fuel: coals.fuel,
      coals: set,
      windFrom: air.windFrom,
      isStill,
      screened,
      caption: where === 'above' ? 'lid, from above' : 'under the floor, from above',
      later,
      alt: `${LOOKS[where]}. Coals ${where}: ${lies}. ${around}${stands}${laterSentence(later)}`,
    };
  };
  const lid = view(lidSet(coals), 'above');
  const floor = view(coals.below, 'below');
  const stand = `Stand ${isStill ? '' : 'across the wind, '}where the feet are drawn.`;
  return [
    { type: 'drawing', wide: false, svg: lidDrawing(lid), alt: lid.alt },
    { type: 'drawing', wide: false, svg: floorDrawing(floor), alt: floor.alt },
    { type: 'paragraph', parts: [{ text: `North is up. ${around} ${stand}` }] },
  ];
}

const LOOKS: Readonly<Record<Where, string>> = {
  above: 'Lid seen from above, handle in the middle, chalk mark at the top',
  below: 'Floor seen from above as an outline with its three legs, coals beneath it',
};

function aroundPhrase({ air, screened }: FromAbovePart, say: Say): string {
  if (air.wind < STILL_METRES_PER_SECOND) return 'Still air.';
  const wind = `Wind from the ${compassPoint(air.windFrom)}, ${say.wind(air.wind)} at the oven.`;
  const screen = ' A screen stands on the wind side, its open side away from the wind.';
  return `${wind}${screened ? screen : ''}`;
}

const MOST_LATER = 3;

/** `+9 at 35 min`, for each time that coals are added here. */
function laterLines({ coals, minuteOf }: FromAbovePart, where: Where, say: Say): readonly string[] {
  const wood = isWood(coals);
  const lines = coals.additions.flatMap((addition) => {
    const shovels = where === 'above' ? addition.shovelsAbove : addition.shovelsBelow;
    const pieces = where === 'above' ? addition.above : addition.below;
    const amount = wood ? (shovels ?? 0) : pieces;
    if (amount <= 0) return [];
    const minute = minuteOf(addition.minute);
    return [`+${wood ? shovelsWord(amount) : amount} at ${say.minutes(minute)}`];
  });
  if (lines.length <= MOST_LATER) return lines;
  return [...lines.slice(0, MOST_LATER - 1), `and ${lines.length - MOST_LATER + 1} times more`];
}

const laterSentence = (lines: readonly string[]) =>
  lines.length === 0 ? '' : ` More coals: ${lines.join(', ')}.`;
