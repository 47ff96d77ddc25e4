// It is going wrong: three moves in order, each with its effect and its wait.

import type { Move } from '../../coals/coal-plan.ts';
import { shovelsFor } from '../../coals/fuel.ts';
import type { Feels, Rescue, RescueMove, Symptom, WhyNot } from '../../coals/rescue.ts';
import type { AssumedAge } from '../../coals/usual-fire.ts';
import { degrees, minutes } from '../../quantity/unit.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { lookQuestion } from './assumed-age.ts';
import { type Door, doorSheet, laidPhrase, paragraph } from './door.ts';
import { guessPhrase, moveWords, sentenceCase, shovelsWord, turnPhrase } from './phrases.ts';

export interface WhatNowAsked {
  readonly door: Door;
  readonly above: number;
  readonly below: number;
  readonly rescue: Rescue;
  /** Where nobody said how old the coals are. */
  readonly ageAssumed?: AssumedAge | undefined;
}

export function whatNowSheet(asked: WhatNowAsked, say: Say): SheetDocument {
  const { door, rescue } = asked;
  const { notices = [] } = rescue;
  const laid = `With ${laidPhrase(asked, door.fuel)}.`;
  const blocks: readonly Block[] =
    notices.length > 0 && rescue.moves.length === 0
      ? [paragraph(laid)]
      : [
          paragraph(
            rescue.moves.length > 1 ? `${laid} Try them in this order, and wait between.` : laid,
          ),
          ...lookQuestion(asked.ageAssumed, say),
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

function movesBlocks(rescue: Rescue, { fuel }: Door, say: Say): readonly Block[] {
  const { moves, symptom } = rescue;
  const wood = fuel === 'wood-coals';
  const rows = moves.map((move, index) => ({
    when: String(index + 1),
    what: sentenceCase((rescue.isOpen && OPEN_WORDS[move.do]) || rescueWords(move, wood)),
    note: effectPhrase(move, say),
  }));
  const isEvened = moves.some(({ evens }) => evens !== false);
  const more = symptom === 'one-side-hot' ? ANOTHER_CAUSE[isEvened ? 'again' : 'instead'] : '';
  const instead =
    moves.length === 0 && !rescue.isOpen && symptom !== 'one-side-hot' ? INSTEAD[symptom] : '';
  const fewer = [leftOutPhrase(rescue, say), overPhrase(rescue), more, instead]
    .filter((part) => part !== '')
    .join(' ');
  return [
    ...(rows.length === 0 ? [] : [{ type: 'steps', rows } as const]),
    ...(fewer === '' ? [] : [paragraph(fewer)]),
  ];
}

const CAUSES =
  'coals in a heap on one side, an oven that leans, food off the middle. Level the oven and lay the ' +
  'ring anew.';
const ANOTHER_CAUSE = {
  again: `Hot again after that? Look for ${CAUSES}`,
  instead: `Wind and coals laid in their rings make no side hotter by what can be noticed. Look for ${CAUSES}`,
};

/** Where no move with the coals as they lie is left; common practice, no source. */
const INSTEAD: Readonly<Record<Exclude<Symptom, 'one-side-hot'>, string>> = {
  'bottom-dark':
    'Lift the food onto a rack or a ring of foil, or take it out and finish it in a cooler oven.',
  'top-pale': 'Lay fresh coals on the lid.',
  'coals-dying': 'Lay fresh coals.',
  'raw-middle': 'Cover the crust with paper or foil under the lid and leave it in.',
  late: 'Lay fresh coals, and serve something else first.',
};

const overPhrase = ({ isOpen, symptom }: Rescue) =>
  isOpen && (symptom === 'top-pale' || symptom === 'raw-middle') ? 'Turn the food over.' : '';

/** What was thought of besides, and why it is not among the moves. */
function leftOutPhrase({ leftOut = [], moves }: Rescue, say: Say): string {
  if (leftOut.length === 0) return '';
  const told = leftOut.map(({ do: move, why }) => `${MOVE_NAME[move]} (${WHY[why](say)})`);
  return `${moves.length === 0 ? 'Thought of and left out' : 'Left out'}: ${told.join('; ')}.`;
}

const MOVE_NAME: Readonly<Record<RescueMove['do'], string>> = {
  'take-below': 'take some from below',
  'take-above': 'take some off the lid',
  'add-above': 'add above',
  'add-below': 'add below',
  'below-to-above': 'move some from below to the lid',
  'knock-ash': 'knock the ash off',
  'screen-wind': 'a wind screen',
  'raise-oven': 'raise the oven',
  turn: 'a turn',
  'shift-above': 'shift coals on the lid',
  'shift-below': 'shift coals below',
  'thin-above': 'thin the lid',
  'thin-below': 'thin below',
  wait: 'wait',
};

const WHY: Readonly<Record<WhyNot, (say: Say) => string>> = {
  'too-few-below': () => 'too few lie there',
  'too-few-above': () => 'too few lie there',
  'no-room': () => 'no room',
  'no-ash': () => 'there is hardly any',
  screened: () => 'one stands there',
  calm: () => 'no wind to screen',
  'no-food': () => 'no food is in',
  'lid-off': () => 'the lid is off',
  'not-felt': (say) => `it would change less than ${say.difference(FELT_KELVIN)}, or for the worse`,
};

/** As rescue.ts leaves out what no thermometer of a camp would tell. */
const FELT_KELVIN = 2.8;

const HALF_TURN = { kind: 'food', angle: degrees(180) } as const;

/** The same with no lid to speak of. */
const OPEN_WORDS: Partial<Record<RescueMove['do'], string>> = {
  turn: 'turn the oven by half over its coals, seen from above clockwise',
  wait: 'leave it in and look again',
};

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
  if (feels === 'side') return sidesPhrase(move, say);
  const way = effect < 0 ? 'cooler' : 'hotter';
  const uneven = move.evens === false ? '; for the heat only, it evens nothing' : '';
  return `${FELT[feels]} about ${much} ${way} in ${wait}${guessPhrase(move, say)}${uneven}`;
}

/** `sides differ by about 65 °F now, after the turn by about 40 °F the other way in 12 min`. */
function sidesPhrase(move: RescueMove, say: Say): string {
  const { sides = { before: move.effect, after: move.effect }, after } = move;
  const much = (kelvins: number) => `about ${say.difference(Math.abs(kelvins))}`;
  const then =
    Math.abs(sides.after) < LEAST_KELVIN
      ? 'hardly at all'
      : `by ${much(sides.after)}${sides.after * sides.before < 0 ? ' the other way' : ''}`;
  return (
    `sides differ by ${much(sides.before)} now, ${THEN[move.do] ?? 'after that'} ${then} ` +
    `in ${say.minutes(after)}${laterPhrase(move)}`
  );
}

const LEAST_KELVIN = 1.5; // less is no step of what is printed
const THEN: Partial<Record<RescueMove['do'], string>> = { turn: 'after the turn' };

/** Of the top; less than a minute in twenty can't be told. */
const laterPhrase = ({ browning = minutes(0) }: RescueMove) => {
  const later = Math.round(browning);
  if (later < 1) return '';
  const much = later === 1 ? 'a minute' : `about ${later} minutes`;
  return `; the top on the hot side browns ${much} less in the next 20`;
};

const FELT: Readonly<Record<Exclude<Feels, 'side'>, string>> = {
  oven: 'oven',
  lid: 'lid',
  floor: 'floor',
  load: 'food',
};
