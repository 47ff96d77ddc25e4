// Which oven for which dish: a bounded search over the candidates of every lot.

import type { Camp, CampOven } from '../camp/camp.ts';
import { isRefusal, type Notice, notice, type Refusal, refusal } from '../notice/notice.ts';
import { busySpan, overlapMinutes, type Span } from './busy.ts';
import { type Candidate, candidatesFor, pinnedCandidate } from './candidates.ts';
import { fitNotices } from './fit-notices.ts';
import type { DishFit, DishPortions, OvenLoad } from './load.ts';
import { type Lot, lotsOf } from './lots.ts';
import type { MenuDish } from './menu.ts';
import { allergensIn, labelsToCheck } from './needs.ts';
import type { Recipe } from './recipe.ts';
import { tooSmall } from './too-small.ts';

export interface DishToLay {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly portions: DishPortions;
}

export interface OvenShares {
  /** By dish id; a dish without fire has an entry without loads. */
  readonly fits: ReadonlyMap<string, DishFit>;
  readonly refusals: readonly Refusal[];
}

/** Bounds the search; with it spent, the best plan found so far stands. */
const MOST_NODES = 4000;
/** Two dishes in one oven at once: worse than any cut or wrong depth. Judged. */
const OVERLAP_COST = 6;
const OVERLAP_MINUTE_COST = 0.1;
/** Wheat in an oven before the dish that must be kept free of it. Judged: as good as forbidden. */
const BEFORE_KEPT_COST = 500;

/**
 * An oven for every dish, sharing, cutting and taking turns where one oven does not do.
 *
 * Pinned ovens are kept whatever they cost. Kept-free ovens go to the dishes that need them first.
 *
 * @refuses MENU_OVEN_TOO_SMALL — no oven, no set of ovens and no turns hold the batch
 * @refuses MENU_NO_OVEN — there is no oven that the dish may use
 * @refuses MENU_PIN_UNKNOWN — pinned to an oven that is not in the camp
 */
export function shareOvens(wish: SharesWish): OvenShares {
  return sharesInOrder(wish, { keep: 1, isPressed: false })[0]!;
}

export interface SharesWish {
  readonly dishes: readonly DishToLay[];
  readonly camp: Camp;
}

/** So many other sharings are handed on at most. */
const MOST_OTHERS = 3;

/**
 * Other sharings that may keep supper on time where the first does not, best first: pots fuller than
 * four fifths instead of over one more oven, then the next best with pots as usual, then both.
 * Equal ovens that change places are no other sharing.
 *
 * @returns  none to three
 * @notice   MENU_POT_PRESSED — a pot is fuller than four fifths, so that an oven stays free
 */
export function otherShares(wish: SharesWish, tried: OvenShares): readonly OvenShares[] {
  const pressed = sharesInOrder(wish, { keep: 2, isPressed: true });
  const usual = sharesInOrder(wish, { keep: 2, isPressed: false });
  const seen = new Set([ovensOf(tried, wish.camp)]);
  return [pressed[0], usual[1], pressed[1]]
    .filter((shares): shares is OvenShares => {
      const ovens = shares === undefined ? '' : ovensOf(shares, wish.camp);
      if (shares === undefined || seen.has(ovens)) return false;
      seen.add(ovens);
      return true;
    })
    .slice(0, MOST_OTHERS);
}

/** Which kind of oven holds which dish, as a word to compare by. */
const ovensOf = ({ fits }: OvenShares, camp: Camp): string =>
  [...fits.values()]
    .map(({ dish, loads }) => `${dish}:${loads.map(({ oven }) => likeOf(camp, oven)).sort()}`)
    .join(' ');

/** Ovens of one make are alike. */
function likeOf({ ovens }: Camp, id: string): string {
  const oven = ovens.find((each) => each.id === id);
  return oven === undefined
    ? id
    : `${oven.diameter} ${oven.depth} ${oven.capacity} ${oven.floorDiameter} ${oven.keptFreeOf}`;
}

interface SharesWay {
  /** So many sharings, best first; fewer where there are no more. */
  readonly keep: number;
  /** Pots may be fuller than we like. */
  readonly isPressed: boolean;
}

function sharesInOrder({ dishes, camp }: SharesWish, way: SharesWay): readonly OvenShares[] {
  const refusals: Refusal[] = [];
  const choices: Choice[] = [];
  for (const each of dishes) {
    if (each.recipe.method === 'none') continue;
    const own = choicesOf(each, camp, way);
    if (isRefusal(own)) refusals.push(own);
    else choices.push(...own);
  }
  const found = search(inOrder(choices), { keep: way.keep, camp });
  return found.map((chosen) => ({ fits: fitsOf(dishes, chosen, refusals), refusals }));
}

interface Choice {
  readonly lot: Lot;
  readonly candidates: readonly Candidate[];
}

interface Chosen {
  readonly lot: Lot;
  readonly candidate: Candidate;
}

function choicesOf(each: DishToLay, camp: Camp, way: SharesWay): readonly Choice[] | Refusal {
  const choices: Choice[] = [];
  for (const [turn, lot] of lotsOf(each.dish, each.recipe, each.portions).entries()) {
    if (!(0 < lot.mass) || !Number.isFinite(lot.mass)) return nothingToLay(each);
    const candidates = waysFor(lot, camp, { turn, ...way });
    if (isRefusal(candidates)) return candidates;
    choices.push({ lot, candidates });
  }
  return choices;
}

const nothingToLay = ({ dish, recipe }: DishToLay): Refusal =>
  refusal('MENU_NOBODY_EATS', [`menu.${dish.id}.portions`, `recipes.${recipe.id}`], {
    dish: dish.id,
    recipe: recipe.id,
  });

/** `turn` sets the lots of one dish that are pinned to one oven one after the other. */
function waysFor(
  lot: Lot,
  camp: Camp,
  { turn, isPressed }: { readonly turn: number; readonly isPressed: boolean },
): readonly Candidate[] | Refusal {
  const pin = lot.dish.pins.oven;
  if (pin !== undefined) {
    const oven = camp.ovens.find((each) => each.id === pin);
    return oven === undefined ? tooSmall(lot, [], { pin }) : [pinnedCandidate(lot, oven, turn)];
  }
  const ovens = ovensFor(lot, camp);
  const ways = candidatesFor(lot, ovens, { isPressed });
  return 0 < ways.length ? ways : tooSmall(lot, ovens, {});
}

/** A dish to be kept free takes the kept ovens if there are any; others take the rest. */
function ovensFor(lot: Lot, camp: Camp): readonly CampOven[] {
  const kept = camp.ovens.filter((oven) => 0 < oven.keptFreeOf.length && mayUse(lot, oven));
  if (lot.dish.freeFrom && 0 < kept.length) return kept;
  const open = camp.ovens.filter((oven) => oven.keptFreeOf.length === 0);
  return 0 < open.length ? open : kept;
}

/** Nothing that holds the allergen, or might, goes into an oven kept free of it. */
export function mayUse(lot: Lot, oven: CampOven): boolean {
  const found = [
    ...allergensIn(lot.recipe),
    ...labelsToCheck(lot.recipe).map((each) => each.allergen),
  ];
  const words = lot.dish.freeFrom ? allergensIn(lot.recipe) : found;
  return !oven.keptFreeOf.some((allergen) => words.includes(allergen));
}

/** Hardest first: pinned, kept free, few ways, much mass. */
const inOrder = (choices: readonly Choice[]) =>
  [...choices].sort(
    (a, b) =>
      Number(b.lot.dish.pins.oven !== undefined) - Number(a.lot.dish.pins.oven !== undefined) ||
      Number(b.lot.dish.freeFrom) - Number(a.lot.dish.freeFrom) ||
      a.candidates.length - b.candidates.length ||
      b.lot.mass - a.lot.mass,
  );

interface Sharing {
  readonly chosen: readonly Chosen[];
  readonly cost: number;
  /** Which kinds of oven it takes; two sharings with the same word are one. */
  readonly word: string;
}

/**
 * Depth-first branch and bound for the `keep` cheapest; bounded by MOST_NODES, deterministic.
 * Always at least one: that of no dishes is empty.
 */
function search(
  choices: readonly Choice[],
  { keep, camp }: { readonly keep: number; readonly camp: Camp },
): readonly (readonly Chosen[])[] {
  let best: readonly Sharing[] = [];
  let nodes = 0;
  const limit = () => (best.length < keep ? Number.POSITIVE_INFINITY : best.at(-1)!.cost);
  const descend = (index: number, chosen: readonly Chosen[], cost: number): void => {
    if (limit() <= cost || (MOST_NODES < nodes && 0 < best.length)) return;
    const choice = choices[index];
    if (choice === undefined) {
      best = withSharing(best, { chosen, cost, word: wordOf(chosen, camp) }, keep);
      return;
    }
    for (const { candidate, added } of byAddedCost(choice, chosen)) {
      nodes += 1;
      descend(index + 1, [...chosen, { lot: choice.lot, candidate }], cost + added);
    }
  };
  descend(0, [], 0);
  return 0 < best.length ? best.map(({ chosen }) => chosen) : [[]];
}

const wordOf = (chosen: readonly Chosen[], camp: Camp): string =>
  chosen
    .map(({ candidate }) => candidate.parts.map(({ oven }) => likeOf(camp, oven.id)).sort())
    .join(' ');

function withSharing(best: readonly Sharing[], found: Sharing, keep: number): readonly Sharing[] {
  const same = best.find(({ word }) => word === found.word);
  if (same !== undefined && same.cost <= found.cost) return best;
  return [...best.filter((each) => each !== same), found]
    .sort((a, b) => a.cost - b.cost)
    .slice(0, keep);
}

const byAddedCost = (choice: Choice, chosen: readonly Chosen[]) =>
  choice.candidates
    .map((candidate) => ({
      candidate,
      added: candidate.cost + clashCost({ lot: choice.lot, candidate }, chosen),
    }))
    .sort((a, b) => a.added - b.added);

function clashCost(next: Chosen, chosen: readonly Chosen[]): number {
  let cost = 0;
  for (const mine of spansOf(next)) {
    for (const other of chosen.flatMap(spansOf)) {
      if (mine.oven !== other.oven) continue;
      const overlap = overlapMinutes(mine, other);
      if (0 < overlap) cost += OVERLAP_COST + OVERLAP_MINUTE_COST * overlap;
      if (soils(mine, other) || soils(other, mine)) cost += BEFORE_KEPT_COST;
    }
  }
  return cost;
}

/** The first is in the oven before the second, and the second must be kept free. */
const soils = (first: Span, second: Span) =>
  second.keptFree && !first.keptFree && first.from <= second.from;

const spansOf = ({ lot, candidate }: Chosen): readonly Span[] =>
  candidate.parts.map((part) => busySpan(lot, part.oven.id, part.turn));

function fitsOf(
  dishes: readonly DishToLay[],
  chosen: readonly Chosen[],
  refusals: readonly Refusal[],
): ReadonlyMap<string, DishFit> {
  const fits = new Map<string, DishFit>();
  for (const { dish } of dishes) {
    if (refusals.some((each) => each.about.dish === dish.id)) continue;
    const own = chosen.filter((each) => each.lot.dish.id === dish.id);
    // In the order of baking: the last turn stands last.
    const parts = own.flatMap((each) => each.candidate.parts).sort((a, b) => b.turn - a.turn);
    const loads = parts.map(
      (part, index): OvenLoad => ({
        id: parts.length === 1 ? dish.id : `${dish.id}-${index + 1}`,
        dish: dish.id,
        oven: part.oven.id,
        mass: part.lot.mass,
        portions: part.lot.portions,
        ...part.lying,
      }),
    );
    const notices = [...fitNotices(dish, parts), ...tightNotices(dish, own, chosen)];
    fits.set(dish.id, { dish: dish.id, loads, notices });
  }
  return fits;
}

function tightNotices(
  dish: MenuDish,
  own: readonly Chosen[],
  all: readonly Chosen[],
): readonly Notice[] {
  return own.flatMap((each) => {
    const others = all.filter((other) => other !== each).flatMap(spansOf);
    return spansOf(each).flatMap((mine) =>
      others
        .filter((other) => other.oven === mine.oven && 0 < overlapMinutes(mine, other))
        .map((other) => tightNotice(dish, mine, other)),
    );
  });
}

const tightNotice = (dish: MenuDish, mine: Span, other: Span): Notice =>
  notice(
    'MENU_OVEN_TIGHT',
    'doubt',
    { dish: dish.id, oven: mine.oven },
    { otherDish: other.dish, overlapMinutes: Math.round(overlapMinutes(mine, other)) },
  );
