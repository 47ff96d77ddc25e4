// All ways worth thinking of to lay one lot into the camp's ovens, best first.

import type { CampOven } from '../camp/camp.ts';
import { discArea, floorOf } from './geometry.ts';
import { fitsIn, type Lying, layIn, pressedPotFill, usualThickness } from './lay.ts';
import { type Lot, partOfLot } from './lots.ts';

/** One part of a lot in one oven; `turn` 0 is the one that is served last. */
export interface LaidPart {
  readonly lot: Lot;
  readonly oven: CampOven;
  readonly lying: Lying;
  readonly turn: number;
}

export interface Candidate {
  readonly parts: readonly LaidPart[];
  /** Smaller is better; see COSTS. */
  readonly cost: number;
}

const MOST_CANDIDATES = 48;
const MOST_OVENS_FOR_ONE = 24;
const MOST_TURNS = 4;

/**
 * What we would rather not have. Judged, not measured: the numbers only set an order, e.g. a roll
 * in a deep oven (lid too far from the crust) is better than a batch cut in two.
 */
const COSTS = { wrongDepth: 1, halfEmpty: 1, thickness: 0.7, morePart: 2.5, turn: 4 };

/** Ways to lay the lot into these ovens; empty where nothing holds it. */
export function candidatesFor(
  lot: Lot,
  ovens: readonly CampOven[],
  { isPressed = false }: { readonly isPressed?: boolean } = {},
): readonly Candidate[] {
  const room = isPressed ? pressedPotFill(lot.recipe.kind) : undefined;
  const whole = ovens
    .map((oven) => candidateOf([laid(lot, oven)]))
    .filter(({ parts }) => parts.every(({ lying }) => fitsIn(lying, room)));
  const shared = 0 < whole.length ? [] : shares(lot, ovens);
  const turned = 0 < whole.length || lot.lie === 'pot' ? [] : turns(lot, ovens);
  return [...whole, ...shared, ...turned].sort((a, b) => a.cost - b.cost).slice(0, MOST_CANDIDATES);
}

/** The lot in this oven, whether it fits or not: what a pin asks for. */
export const pinnedCandidate = (lot: Lot, oven: CampOven, turn: number): Candidate =>
  candidateOf([laid(lot, oven, turn)]);

const laid = (lot: Lot, oven: CampOven, turn = 0): LaidPart => ({
  lot,
  oven,
  lying: layIn(oven, lot),
  turn,
});

const isRoomy = (candidate: Candidate) => candidate.parts.every((part) => fitsIn(part.lying));

const candidateOf = (parts: readonly LaidPart[]): Candidate => ({
  parts,
  cost:
    parts.reduce((sum, part) => sum + partCost(part), 0) / parts.length +
    COSTS.morePart * (parts.length - 1) +
    COSTS.turn * Math.max(...parts.map((part) => part.turn)),
});

function partCost({ lot, oven, lying }: LaidPart): number {
  const wantsDeep = lot.lie === 'pot';
  const depth = lot.lie === 'round' || wantsDeep === (oven.style === 'deep') ? 0 : COSTS.wrongDepth;
  const empty = COSTS.halfEmpty * Math.max(0, 1 - lying.fill);
  const wanted = lot.recipe.target.thickness ?? usualThickness(lot.recipe.kind);
  const isOff = lot.lie === 'disc' ? Math.abs(Math.log(lying.thickness / wanted)) : 0;
  return depth + empty + COSTS.thickness * isOff;
}

/** The lot over several ovens: roomiest or right depth first, from every place in the row on. */
function shares(lot: Lot, ovens: readonly CampOven[]): readonly Candidate[] {
  const deepFirst = lot.lie === 'pot';
  const rightFirst = (oven: CampOven) => ((oven.style === 'deep') === deepFirst ? 0 : 1);
  const roomy = [...ovens].sort((a, b) => b.capacity - a.capacity);
  const right = [...roomy].sort((a, b) => rightFirst(a) - rightFirst(b));
  return [roomy, right]
    .flatMap((order) => order.map((_, first) => order.slice(first, first + MOST_OVENS_FOR_ONE)))
    .map((order) => shareOver(lot, order))
    .filter((candidate) => candidate !== undefined);
}

/** Fewest ovens of this order that hold the lot, each filled alike. */
function shareOver(lot: Lot, ovens: readonly CampOven[]): Candidate | undefined {
  for (let used = 2; used <= ovens.length; used++) {
    const candidate = fillAlike(lot, ovens.slice(0, used), 0);
    if (candidate !== undefined && isRoomy(candidate)) return candidate;
  }
  return undefined;
}

function turns(lot: Lot, ovens: readonly CampOven[]): readonly Candidate[] {
  return ovens.flatMap((oven) => {
    for (let used = 2; used <= MOST_TURNS; used++) {
      const candidate = fillAlike(
        lot,
        Array.from({ length: used }, () => oven),
        1,
      );
      if (candidate !== undefined && isRoomy(candidate)) return [candidate];
    }
    return [];
  });
}

/** What runs to the wall shares by floor, so that it lies alike thick; all else by what goes in. */
const roomFor = (lot: Lot, oven: CampOven): number =>
  lot.lie === 'disc' && lot.inOven.contact !== 'tin'
    ? discArea(floorOf(oven))
    : 1 / layIn(oven, lot).fill;

/** Splits the lot over the ovens; whole pieces stay whole. */
function fillAlike(lot: Lot, ovens: readonly CampOven[], turnStep: 0 | 1): Candidate | undefined {
  const room = ovens.map((oven) => roomFor(lot, oven));
  const all = room.reduce((sum, each) => sum + each, 0);
  if (!(0 < all) || !Number.isFinite(all)) return undefined;
  const counts = lot.count === 1 ? undefined : wholeShares(lot.count, room, all);
  if (counts?.includes(0) === true) return undefined;
  const parts = ovens.map((oven, index) => {
    const part = counts === undefined ? room[index]! / all : counts[index]! / lot.count;
    return laid(partOfLot(lot, part, counts?.[index] ?? 1), oven, turnStep * index);
  });
  return candidateOf(parts);
}

/** Shares of whole pieces by largest remainder, so that their sum is the whole. */
function wholeShares(count: number, room: readonly number[], all: number): readonly number[] {
  const exact = room.map((each) => (count * each) / all);
  const whole = exact.map(Math.floor);
  let left = count - whole.reduce((sum, each) => sum + each, 0);
  const byRemainder = exact
    .map((each, index) => ({ index, rest: each - Math.floor(each) }))
    .sort((a, b) => b.rest - a.rest || a.index - b.index);
  for (const { index } of byRemainder) {
    if (left === 0) break;
    whole[index] = whole[index]! + 1;
    left -= 1;
  }
  return whole;
}
