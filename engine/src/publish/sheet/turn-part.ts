// How to turn, once on every card that turns: the drawing and what the turn is worth.

import type { CoalPlan, Turn } from '../../coals/coal-plan.ts';
import type { Block } from '../document.ts';
import { turnDrawing } from '../drawing/turn.ts';
import type { Say } from '../say.ts';
import { turnCaptions, turnPhrase, turnWitness } from './phrases.ts';

export function turnBlocks(coals: CoalPlan, say: Say): readonly Block[] {
  const kinds = new Map(coals.turns.map((turn) => [`${turn.kind} ${turn.angle}`, turn]));
  if (kinds.size === 0) return [];
  return [
    { type: 'heading', text: 'The turn', half: true },
    ...[...kinds.values()].flatMap((turn): readonly Block[] => [
      { type: 'drawing', wide: true, ...turnPicture(turn) },
      { type: 'paragraph', parts: [{ text: turnWitness(turn) }] },
    ]),
    ...unevenBlocks(coals, say),
  ];
}

/** Handle, chalk mark and ears as witnesses; the wedge is the food. */
export function turnPicture(turn: Pick<Turn, 'kind' | 'angle'>) {
  const alt = `${turnPhrase(turn)} The wedge beside the lid shows which way the food lies.`;
  const drawing = { turn, captions: turnCaptions(turn), alt };
  return { alt, svg: turnDrawing(drawing), phone: turnDrawing(drawing, 'phone') };
}

/** Less than this can't be seen on a crust (ours, no source). */
const SEEN_KELVIN = 3;

/** What turning is for, in degrees: the side that browns first, and what is left of it. */
function unevenBlocks({ unevenness }: CoalPlan, say: Say): readonly Block[] {
  const { unturned, turned, windward, sooner } = unevenness;
  if (unturned < SEEN_KELVIN) return [];
  const side = windward ? 'the windward side' : 'one side';
  const browns = Math.round(sooner?.unturned ?? 0);
  const first = browns < 1 ? 'browns first' : `its top is brown ${minutesWords(browns)} sooner`;
  const left = turned < SEEN_KELVIN ? 'hardly at all' : `about ${say.difference(turned)}`;
  return [
    {
      type: 'paragraph',
      parts: [
        {
          text:
            `Unturned, ${side} runs about ${say.difference(unturned)} hotter and ${first}; ` +
            `turned so, ${left}.`,
        },
      ],
    },
  ];
}

const minutesWords = (count: number) => (count === 1 ? 'a minute' : `about ${count} minutes`);
