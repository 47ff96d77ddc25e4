// It is going wrong: three moves in order, each with its effect and its wait.

import type { Feels, Rescue, RescueMove, Symptom } from '../../coals/rescue.ts';
import { degrees } from '../../quantity/unit.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { type Door, doorSheet, laidPhrase, paragraph } from './door.ts';
import { moveWords, sentenceCase, turnPhrase } from './phrases.ts';

export interface WhatNowAsked {
  readonly door: Door;
  readonly above: number;
  readonly below: number;
  readonly rescue: Rescue;
}

export function whatNowSheet(asked: WhatNowAsked, say: Say): SheetDocument {
  const { door, rescue } = asked;
  const blocks: readonly Block[] = [
    paragraph(`With ${laidPhrase(asked, door.fuel)}. Try them in this order, and wait between.`),
    ...movesBlocks(rescue, door, say),
  ];
  const title = LOOKS[rescue.symptom];
  return doorSheet(door, { kind: 'what-now', title, blocks, notices: [] }, say);
}

const LOOKS: Readonly<Record<Symptom, string>> = {
  'bottom-dark': 'Bottom dark',
  'top-pale': 'Top pale',
  'one-side-hot': 'One side hot',
  'coals-dying': 'Coals dying',
  'raw-middle': 'Middle raw, crust done',
  late: 'Late',
};

function movesBlocks({ moves }: Rescue, { fuel }: Door, say: Say): readonly Block[] {
  const wood = fuel === 'wood-coals';
  if (moves.length === 0)
    return [paragraph('No move with these coals brings what can be felt: lay fresh ones.')];
  const rows = moves.map((move, index) => ({
    when: String(index + 1),
    what: sentenceCase(rescueWords(move, wood)),
    note: effectPhrase(move, say),
  }));
  const fewer = moves.length < 3 ? [paragraph('Nothing else helps with these coals.')] : [];
  return [{ type: 'steps', rows }, ...fewer];
}

const HALF_TURN = { kind: 'food', angle: degrees(180) } as const;

function rescueWords({ do: move, ...much }: RescueMove, wood: boolean): string {
  if (move === 'turn') return turnPhrase(HALF_TURN);
  if (move === 'raise-oven') return 'raise the oven on a riser, coals as they lie';
  if (move === 'wait') return 'leave it in, lid on, and look again';
  return moveWords({ do: move, ...much }, wood);
}

/** `floor about 20 °F cooler in 8 min`. */
function effectPhrase({ feels, effect, after }: RescueMove, say: Say): string {
  const much = say.difference(Math.abs(effect));
  const wait = say.minutes(after);
  if (feels === 'side') return `the hot side about ${much} less hot in ${wait}`;
  return `${FELT[feels]} about ${much} ${effect < 0 ? 'cooler' : 'hotter'} in ${wait}`;
}

const FELT: Readonly<Record<Exclude<Feels, 'side'>, string>> = {
  oven: 'oven',
  lid: 'lid',
  floor: 'floor',
  load: 'food',
};
