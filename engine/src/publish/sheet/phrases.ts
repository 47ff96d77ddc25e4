// Coals in words: how a set lies, how much is added, what a move does. Wood coals are told in rings
// and shovels only; a count of pieces never reaches a sheet of theirs.

import type { Addition, CoalPlan, CoalSet, Move, Turn } from '../../coals/coal-plan.ts';
import { type CookMeasure, cookMeasureText } from '../../quantity/cook-measure.ts';
import type { Say } from '../say.ts';
import { fraction } from '../speak-number.ts';

export type Where = 'above' | 'below';

export const isWood = (coals: Pick<CoalPlan, 'fuel'>) => coals.fuel === 'wood-coals';

/** What lies on the lid; of a pot that is browned first, what is laid there after. */
export const lidSet = ({ above, browning }: Pick<CoalPlan, 'above' | 'browning'>): CoalSet =>
  browning?.thenAbove ?? above;

/** Is this the addition that lays the lid's set when the browning is over? */
export const endsBrowning = ({ browning }: CoalPlan, { minute }: Addition) =>
  browning !== undefined && Math.abs(minute - browning.until) < 0.5;

/** `13 on the rim, 4 inside`; short, since it stands as big as the dish's name. */
export function layoutPhrase(set: CoalSet, where: Where): string {
  const isTwo = where === 'below' && hasTwoRings(set);
  const under = isTwo ? 'in two rings under rim' : 'in a ring under rim';
  const ring = where === 'above' ? 'on the rim' : under;
  if (set.ring === 0 && set.spread === 0) return where === 'above' ? 'none above' : 'none below';
  if (set.spread === 0) {
    if (where === 'above') return `all ${ring}`;
    return `${isTwo ? 'two rings' : 'ring'} under rim, middle empty`;
  }
  if (set.ring === 0) return where === 'above' ? 'spread over the lid' : 'spread under the floor';
  return `${set.ring} ${ring}, ${set.spread} inside`;
}

/** Is some of the ring laid inside the first? */
function hasTwoRings({ places, pieceWidth }: CoalSet): boolean {
  const out = places.filter((place) => place.in === 'ring').map(({ x, y }) => Math.hypot(x, y));
  return Math.max(0, ...out) - Math.min(...out) > (pieceWidth ?? 0.02) / 2;
}

/** The same for wood coals: rings and shovels. */
export function woodPhrase(set: CoalSet, where: Where): string {
  if (set.pieces === 0) return where === 'above' ? 'none above' : 'none below';
  const rings = `${ringsWord(set.rings)} ${woodLies(set, where)}`;
  return set.shovels === undefined ? rings : `${shovelsWord(set.shovels)}, ${rings}`;
}

function woodLies({ spread }: CoalSet, where: Where): string {
  if (where === 'below') return spread === 0 ? 'under rim, middle empty' : 'under the floor';
  return spread === 0 ? 'on the rim' : 'from the rim inwards';
}

/** The line that is as big as the dish's name. */
export function placementLine(set: CoalSet, where: Where, wood: boolean): string {
  if (set.pieces === 0) return where === 'above' ? 'None above' : 'None below';
  if (wood) return `${where === 'above' ? 'Above' : 'Below'}: ${woodPhrase(set, where)}`;
  return `${set.pieces} ${where}: ${layoutPhrase(set, where)}`;
}

/** `17 above`, `2 1/2 shovels above`: the amount without its places. */
export function laidWord(set: CoalSet, where: Where, wood: boolean): string {
  if (set.pieces === 0) return `none ${where}`;
  if (!wood) return `${set.pieces} ${where}`;
  return `${set.shovels === undefined ? ringsWord(set.rings) : shovelsWord(set.shovels)} ${where}`;
}

export const shovelsWord = (shovels: number) =>
  `${fraction(shovels, 2)} ${shovels > 1 ? 'shovels' : 'shovel'}`;

export const ringsWord = (rings: number) => `${fraction(rings, 4)} ${rings > 1 ? 'rings' : 'ring'}`;

/** `3 above and 1 below`; shovels for wood. */
export function additionPhrase(addition: Addition, wood: boolean): string {
  const amounts: readonly (readonly [number, Where])[] = wood
    ? [
        [addition.shovelsAbove ?? 0, 'above'],
        [addition.shovelsBelow ?? 0, 'below'],
      ]
    : [
        [addition.above, 'above'],
        [addition.below, 'below'],
      ];
  const said = amounts
    .filter(([amount]) => amount > 0)
    .map(([amount, where]) => `${wood ? shovelsWord(amount) : amount} ${where}`);
  return said.length === 0 ? 'a few coals' : said.join(' and ');
}

export function turnPhrase({ kind, angle }: Pick<Turn, 'kind' | 'angle'>): string {
  const share = shareOfTurn(Math.abs(angle));
  const way = angle < 0 ? 'anticlockwise' : 'clockwise';
  if (kind === 'oven-with-lid') {
    return `Seen from above: oven with its lid ${share} ${way}. Handle and chalk mark go with it.`;
  }
  if (kind === 'lid-alone') {
    return `Seen from above: lid alone ${share} ${way}. The oven stays; the chalk mark moves.`;
  }
  return (
    `Seen from above: oven with its lid ${share} ${way}, then the lid alone ${share} back. ` +
    'Handle and chalk mark now stand over the ground as before; ' +
    `the food has moved ${share} against both sets of coals.`
  );
}

/** What shows that it was done right; the drawing says the moves. */
export function turnWitness({ kind, angle }: Pick<Turn, 'kind' | 'angle'>): string {
  if (kind === 'oven-with-lid') return 'Seen from above. Handle and chalk mark go with it.';
  if (kind === 'lid-alone') return 'Seen from above. The oven stays; the chalk mark moves.';
  return (
    'Seen from above. Handle and chalk mark then stand as before; ' +
    `the food has moved ${shareOfTurn(Math.abs(angle))} against both sets of coals.`
  );
}

const BEFORE = 'before; the wedge is the food';

/** Captions of the drawing, one a state. */
export function turnCaptions({ kind, angle }: Pick<Turn, 'kind' | 'angle'>): readonly string[] {
  const share = shareOfTurn(Math.abs(angle));
  const way = angle < 0 ? 'anticlockwise' : 'clockwise';
  if (kind === 'lid-alone') return [BEFORE, `lid alone, ${share} ${way}`];
  const both = `1  oven with its lid, ${share} ${way}`;
  if (kind === 'oven-with-lid') return [BEFORE, both];
  return [BEFORE, both, `2  lid alone, ${share} back`];
}

/** One line for a list: the card has the whole of it. */
export const turnBrief = (turn: Pick<Turn, 'kind' | 'angle'>) =>
  `turn${turn.kind === 'food' ? ':' : ''} ${turnMove(turn)}, seen from above`;

/** `oven with its lid a quarter clockwise, then the lid alone a quarter back`. */
export function turnMove({ kind, angle }: Pick<Turn, 'kind' | 'angle'>): string {
  const share = shareOfTurn(Math.abs(angle));
  const way = angle < 0 ? 'anticlockwise' : 'clockwise';
  if (kind === 'oven-with-lid') return `oven with its lid ${share} ${way}`;
  if (kind === 'lid-alone') return `the lid alone ${share} ${way}`;
  return `oven with its lid ${share} ${way}, then the lid alone ${share} back`;
}

/** For a pocket or a wall: `Turn a quarter, lid back`. */
export function turnShort({ kind, angle }: Pick<Turn, 'kind' | 'angle'>): string {
  const way = angle < 0 ? ' anticlockwise' : '';
  const move = `${shareOfTurn(Math.abs(angle))}${way}`;
  if (kind === 'lid-alone') return `Turn the lid alone ${move}`;
  return kind === 'food' ? `Turn ${move}, lid back` : `Turn ${move} with its lid`;
}

export const areAlike = (turns: readonly Pick<Turn, 'kind' | 'angle'>[]) =>
  new Set(turns.map(({ kind, angle }) => `${kind} ${angle}`)).size < 2;

function shareOfTurn(degrees: number): string {
  const named: Readonly<Record<number, string>> = {
    45: 'an eighth of a turn',
    60: 'a sixth of a turn',
    90: 'a quarter',
    120: 'a third of a turn',
    180: 'a half turn',
  };
  return named[Math.round(degrees)] ?? `${Math.round(degrees)} degrees`;
}

/** `take 2 from below (about 20 °F cooler in 8 min)`. */
export function movePhrase(move: Move, wood: boolean, say: Say): string {
  return `${moveWords(move, wood)} (${effectWords(move, say)})`;
}

function effectWords(move: Move, say: Say): string {
  const { effect, floor, after } = move;
  const much = (kelvins: number) =>
    `about ${say.difference(Math.abs(kelvins))} ${kelvins < 0 ? 'cooler' : 'hotter'}`;
  const guess = guessPhrase(move, say);
  if (floor !== undefined) {
    const oven = Math.abs(effect) < 1.5 ? 'the oven as it was' : `the oven ${much(effect)}`;
    return `the floor ${much(floor)} in ${say.minutes(after)}, ${oven}${guess}`;
  }
  if (Math.abs(effect) < 0.5) return 'hardly felt';
  return `${much(effect)} in ${say.minutes(after)}${guess}`;
}

/** `: a guess, 0 to 30 °F`; nothing where the effect is reckoned. */
export const guessPhrase = ({ most }: Pick<Move, 'most'>, say: Say): string =>
  most === undefined ? '' : `: a guess, 0 to ${say.difference(Math.abs(most))}`;

/** The move alone, where its effect has been told before. */
export function moveWords(move: Move, wood: boolean): string {
  const much = amountWord(move, wood);
  switch (move.do) {
    case 'add-above':
      return `add ${much} above`;
    case 'add-below':
      return `add ${much} below`;
    case 'take-above':
      return `take ${much} off the lid`;
    case 'take-below':
      return `take ${much} from below`;
    case 'below-to-above':
      return `move ${much} from below to the lid`;
    case 'knock-ash':
      return 'knock the ash off the coals';
    case 'screen-wind':
      return 'set a screen on the wind side';
    case 'turn':
      return 'turn now';
  }
}

function amountWord(move: Move, wood: boolean): string {
  if (!wood) return String(move.coals);
  return move.shovels === undefined ? 'some' : shovelsWord(move.shovels);
}

/** `2 3/4 cups`, `2 large` for eggs; a fraction never parts from its whole at the end of a line. */
export const measureWord = (measure: CookMeasure): string =>
  cookMeasureText(measure, 'plain').replace(/ (?=\d\/\d)/g, '\u00a0');

export const sentenceCase = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** `a, b and c`. */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
