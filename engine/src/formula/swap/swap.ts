// One food for another, with water, fat, salt and leavening as they were, and what can't be kept.
// Sources: each ratio names its own; see draft.ts.

import type { Allergen } from '../../camp/camp.ts';
import { foodWithKey } from '../../larder/larder.ts';
import { foodOf } from '../../menu/needs.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { type Notice, notice, type OrRefusal, type Refusal, refusal } from '../../notice/notice.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import { characterOf, type DoughCharacter } from '../bench/character.ts';
import type { WeighedIngredient } from '../dough.ts';
import { corrected, type KeptAmounts, keptAmounts } from './correct.ts';
import { draftOf } from './draft.ts';
import { gasOf } from './gas.ts';
import { lossesOf } from './losses.ts';
import { familyOf, isMadeOf, type SwapFamily, swapName, swapsFor } from './offers.ts';

export interface SwapWish {
  /** Place of the line that goes. */
  readonly line: number;
  /** A key of the larder, or one of `madeOf`. */
  readonly to: string;
}

export interface SwapAnswer {
  readonly family: SwapFamily;
  readonly lines: readonly WeighedIngredient[];
  readonly changes: readonly SwapChange[];
  readonly before: DoughCharacter;
  readonly after: DoughCharacter;
  /** What can't be kept: taste, milk solids, sourness, colour; and what no line could take up. */
  readonly losses: readonly Notice[];
  /** Allergens that come in: to be shouted. */
  readonly allergensIn: readonly Allergen[];
  readonly allergensOut: readonly Allergen[];
  /** Labels to read for what comes in. */
  readonly labels: readonly Allergen[];
  /** Part of the line that was swapped; below 1 where the bowl had no room for all of it. */
  readonly share: number;
}

export interface SwapChange {
  readonly name: string;
  readonly was: Grams;
  readonly now: Grams;
  readonly before?: Ingredient;
  readonly after?: Ingredient;
  readonly source: string;
}

/**
 * The formula with one food in place of another.
 *
 * @refuses  FORMULA_* of `characterOf` — the formula to begin with
 * @refuses  FORMULA_SWAP_UNKNOWN — no such food, or one that does other work; names what would do
 * @refuses  FORMULA_SWAP_NO_ROOM — the new food brings more water than there is to take away, even
 *           for a quarter of the line
 * @notice   FORMULA_SWAP_PART — only a part of the line can be swapped
 * @source   sr28, neutralisingValues, sodaChemistry, yeastKinds, selfRisingFlour
 */
export function swapped(
  lines: readonly WeighedIngredient[],
  wish: SwapWish,
): OrRefusal<SwapAnswer> {
  const before = characterOf(lines);
  if ('refused' in before) return before;
  const line = lines[wish.line];
  const family = line === undefined ? undefined : familyOf(line);
  const offers = swapsFor(lines).filter((offer) => offer.line === wish.line);
  if (line === undefined || family === undefined || !offers.some(({ to }) => to === wish.to)) {
    return unknownSwap(
      line,
      wish,
      offers.map(({ to }) => swapName(to)),
    );
  }
  for (const share of SHARES) {
    const answer = tried(lines, { ...wish, family, share }, before);
    if (answer !== undefined) return answer;
  }
  return refusal(
    'FORMULA_SWAP_NO_ROOM',
    [line.ingredient.name, swapName(wish.to)],
    { ingredient: line.ingredient.name },
    { food: swapName(wish.to) },
  );
}

/** All of the line, or as much of it as there is room for. */
const SHARES = [1, 0.75, 0.5, 0.25];

interface Tried extends SwapWish {
  readonly family: SwapFamily;
  readonly share: number;
}

function tried(
  lines: readonly WeighedIngredient[],
  wish: Tried,
  before: DoughCharacter,
): SwapAnswer | undefined {
  const { family, share, to } = wish;
  const draft = draftOf(family, { lines, at: wish.line, to, share });
  const { lines: next, left } = corrected(draft.lines, keptAmounts(lines));
  const after = characterOf(next);
  if ('refused' in after || 0 < left.hydration || isOverRaised(lines, next)) return undefined;
  return {
    family,
    lines: next,
    changes: changesFrom(lines, next, draft.source),
    before,
    after,
    losses: [
      ...partNotice(lines, wish),
      ...lossesOf(lines, next, { family, to }),
      ...leftNotices(left),
    ],
    ...allergenChange(lines, next),
    share,
  };
}

/** Self-rising flour may bring more powder than there was to take away. */
const isOverRaised = (one: readonly WeighedIngredient[], other: readonly WeighedIngredient[]) =>
  gasOf(one).total * 1.02 + 0.01 < gasOf(other).total;

const partNotice = (lines: readonly WeighedIngredient[], { share, line, to }: Tried) =>
  share === 1
    ? []
    : [
        notice(
          'FORMULA_SWAP_PART',
          'doubt',
          { ingredient: lines[line]!.ingredient.name },
          { shareRatio: share, food: swapName(to) },
        ),
      ];

function leftNotices({ fat, salt }: KeptAmounts): readonly Notice[] {
  return [
    ...(fat === 0 ? [] : [notice('FORMULA_SWAP_FAT_LEFT', 'note', {}, { massGrams: fat })]),
    ...(salt === 0 ? [] : [notice('FORMULA_SWAP_SALT_LEFT', 'note', {}, { massGrams: salt })]),
  ];
}

const LEAST_CHANGE = 0.05; // g; a smaller one is not worth a line

function changesFrom(
  before: readonly WeighedIngredient[],
  after: readonly WeighedIngredient[],
  source: string,
): readonly SwapChange[] {
  const names = [...new Set([...before, ...after].map(({ ingredient }) => ingredient.name))];
  return names.flatMap((name) => {
    const named = (lines: readonly WeighedIngredient[]) =>
      lines.filter(({ ingredient }) => ingredient.name === name);
    const [old, next] = [named(before), named(after)];
    const [was, now] = [massOf(old), massOf(next)];
    if (Math.abs(now - was) < LEAST_CHANGE) return [];
    return [
      {
        name,
        was,
        now,
        ...(old[0] === undefined ? {} : { before: old[0].ingredient }),
        ...(next[0] === undefined ? {} : { after: next[0].ingredient }),
        source,
      },
    ];
  });
}

const massOf = (lines: readonly WeighedIngredient[]) =>
  grams(lines.reduce((sum, line) => sum + line.grams, 0));

function allergenChange(before: readonly WeighedIngredient[], after: readonly WeighedIngredient[]) {
  const [old, next] = [allergensOf(before), allergensOf(after)];
  const labels = after.flatMap(({ ingredient }) => ingredient.checkLabel);
  const known = before.flatMap(({ ingredient }) => ingredient.checkLabel);
  return {
    allergensIn: next.filter((each) => !old.includes(each)),
    allergensOut: old.filter((each) => !next.includes(each)),
    labels: [...new Set(labels)].filter((each) => !known.includes(each) && !next.includes(each)),
  };
}

const allergensOf = (lines: readonly WeighedIngredient[]): readonly Allergen[] => [
  ...new Set(
    lines.flatMap(({ ingredient }) => [
      ...ingredient.allergens,
      ...(foodOf(ingredient)?.allergens ?? []),
    ]),
  ),
];

/** Names what would do: the nearest thing that works. */
function unknownSwap(
  line: WeighedIngredient | undefined,
  { to }: SwapWish,
  offers: readonly string[],
): Refusal {
  const isKnown = isMadeOf(to) || foodWithKey(to) !== undefined;
  const name = line?.ingredient.name ?? '';
  return refusal(
    'FORMULA_SWAP_UNKNOWN',
    [name, swapName(to)],
    { ingredient: name },
    { food: swapName(to), known: isKnown ? 1 : 0, offers: offers.slice(0, 6).join(', ') },
  );
}
