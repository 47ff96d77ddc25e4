// It is going wrong: three moves in order, each with its effect and its wait.

import type { Move } from '../../coals/coal-plan.ts';
import { shovelsFor } from '../../coals/fuel.ts';
import type { Feels, Rescue, RescueMove, Symptom } from '../../coals/rescue.ts';
import { degrees, minutes } from '../../quantity/unit.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { type Door, doorSheet, laidPhrase, paragraph } from './door.ts';
import { guessPhrase, moveWords, sentenceCase, shovelsWord, turnPhrase } from './phrases.ts';

export interface WhatNowAsked {
  readonly door: Door;
  readonly above: number;
  readonly below: number;
  readonly rescue: Rescue;
}

export function whatNowSheet(asked: WhatNowAsked, say: Say): SheetDocument {
  const { door, rescue } = asked;
  const { notices = [] } = rescue;
  const laid = `With ${laidPhrase(asked, door.fuel)}.`;
  const blocks: readonly Block[] =
    notices.length > 0
      ? [paragraph(laid)]
      : [
          paragraph(`${laid} Try them in this order, and wait between.`),
          ...movesBlocks(rescue, door, say),
        ];
  const title = LOOKS[rescue.symptom];
  return doorSheet(door, { kind: 'what-now', title, blocks, notices }, say);
}

const LOOKS: Readonly<Record<Symptom, string>> = {
  'bottom-dark': 'Bottom dark',
  'top-pale': 'Top pale',
  'one-side-hot': 'One side hot',
  'coals-dying': 'Coals dying',
  'raw-middle': 'Middle raw, crust done',
  late: 'Late',
};

function movesBlocks({ moves, symptom }: Rescue, { fuel }: Door, say: Say): readonly Block[] {
  const wood = fuel === 'wood-coals';
  if (moves.length === 0) return [paragraph(nothingPhrase(symptom))];
  const rows = moves.map((move, index) => ({
    when: String(index + 1),
    what: sentenceCase(rescueWords(move, wood)),
    note: effectPhrase(move, say),
  }));
  const fewer = moves.length < 3 ? [paragraph(noMorePhrase(symptom))] : [];
  return [{ type: 'steps', rows }, ...fewer];
}

const ANOTHER_CAUSE =
  'coals in a heap on one side, an oven that leans, food off the middle. Level the oven and lay the ' +
  'ring anew.';

const nothingPhrase = (symptom: Symptom) =>
  symptom === 'one-side-hot'
    ? `Wind and coals laid in their rings make no side hotter by what can be noticed. Look for ${ANOTHER_CAUSE}`
    : 'No move with these coals brings what can be felt: lay fresh ones.';

const noMorePhrase = (symptom: Symptom) =>
  symptom === 'one-side-hot'
    ? `Nothing else evens the sides by what can be noticed. Hot again after that? Look for ${ANOTHER_CAUSE}`
    : 'Nothing else helps with these coals.';

const HALF_TURN = { kind: 'food', angle: degrees(180) } as const;

function rescueWords({ do: move, ...much }: RescueMove, wood: boolean): string {
  if (move === 'turn') return turnPhrase(HALF_TURN);
  if (move === 'raise-oven') return 'raise the oven on a riser, coals as they lie';
  if (move === 'wait') return 'leave it in, lid on, and look again';
  const hot = HOT_SIDE[move];
  if (hot !== undefined) return hot(sideCoals(much, wood));
  return moveWords({ do: move, ...much } as Move, wood);
}

const HOT_SIDE: Partial<Record<RescueMove['do'], (coals: string) => string>> = {
  'shift-above': (coals) => `carry ${coals} on the lid from the hot side over to the cool side`,
  'shift-below': (coals) => `carry ${coals} below from the hot side over to the cool side`,
  'thin-above': (coals) => `take ${coals} off the hot side of the lid`,
  'thin-below': (coals) => `take ${coals} from below the hot side`,
};

const sideCoals = ({ coals, shovels }: Pick<RescueMove, 'coals' | 'shovels'>, wood: boolean) => {
  if (wood) return shovelsWord(shovels ?? shovelsFor(coals));
  return coals === 1 ? 'one coal' : `${coals} coals`;
};

/** `floor about 20 °F cooler in 8 min`. */
function effectPhrase(move: RescueMove, say: Say): string {
  const { feels, effect, after } = move;
  const much = say.difference(Math.abs(effect));
  const wait = say.minutes(after);
  if (feels === 'side') {
    const swap = move.do === 'turn' ? 'the sides change places; ' : '';
    return `${swap}${laterPhrase(move)}the hot side about ${much} less hot in ${wait}`;
  }
  const way = effect < 0 ? 'cooler' : 'hotter';
  return `${FELT[feels]} about ${much} ${way} in ${wait}${guessPhrase(move, say)}`;
}

/** Of the top; less than a minute in twenty can't be told. */
const laterPhrase = ({ browning = minutes(0) }: RescueMove) => {
  const later = Math.round(browning);
  if (later < 1) return '';
  const much = later === 1 ? 'a minute' : `about ${later} minutes`;
  return `its top browns ${much} less in the next 20; `;
};

const FELT: Readonly<Record<Exclude<Feels, 'side'>, string>> = {
  oven: 'oven',
  lid: 'lid',
  floor: 'floor',
  load: 'food',
};
