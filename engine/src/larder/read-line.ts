// One line of a recipe's list: how much of which food, in which form, what it weighs, and what in
// it was not understood. The line itself is never lost: amounts that are no measure and foods that
// nobody knows stay as they were written.
// Sources: the words are common practice, no source; weights by weigh.ts.

import { type Notice, notice } from '../notice/notice.ts';
import { matchAt, type Span } from '../quantity/index.ts';
import { type AmountTerm, amountAt, type WrittenAmount } from '../quantity/written-amount.ts';
import { type Manner, otherSize, sizeOfWritten } from '../quantity/written-unit.ts';
import { calledIn, type FoodSearch, findFood } from './find-food.ts';
import type { Food } from './food.ts';
import { type WeighedAmount, weighAmount } from './weigh.ts';

export interface LineRead {
  /** The line between these two places of the text. */
  readonly span: Span;
  readonly amount?: WrittenAmount;
  /** Said instead of an amount: "to taste", "as needed", or nothing at all. */
  readonly unmeasured?: 'to-taste' | 'as-needed' | 'unsaid';
  readonly search: FoodSearch;
  readonly weight?: WeighedAmount;
  /** In brackets or behind a comma: what is done to it. */
  readonly note: string;
  readonly isOptional: boolean;
  /** Places of the line that were not understood. */
  readonly unread: readonly Span[];
  readonly notices: readonly Notice[];
}

export interface LineOptions {
  readonly manner: Manner;
  /** The cook's own foods. */
  readonly own?: readonly Food[];
  /** The cook's choice for this line, instead of the food that was found. */
  readonly food?: Food;
  readonly isQuick?: boolean;
}

/** A line longer than this is no ingredient. */
export const LONGEST_LINE = 240;

/**
 * Reads one line of ingredients between two places of a text.
 *
 * @example  '1 cup flour, sifted' → 125 g of all-purpose flour, 112 … 138 g
 */
export function readLine(text: string, span: Span, options: LineOptions): LineRead {
  const line = text.slice(span.from, Math.min(span.to, span.from + LONGEST_LINE));
  const found = amountIn(line, options.manner);
  const place = foodPlace(line, found);
  const searched = findFood(foodText(line, found), place, {
    manner: options.manner,
    isCanned: found.amount !== undefined && isCanned(found.amount),
    ...(options.own === undefined ? {} : { own: options.own }),
    ...(options.isQuick ? { isQuick: true } : {}),
  });
  const search = options.food === undefined ? searched : overruled(searched, options.food);
  const { amount } = found;
  const weight =
    amount === undefined
      ? undefined
      : (weighAmount(amount, search.food, { manner: options.manner, forms: search.forms }) ??
        weighedInBrackets(line, amount, search, options.manner));
  const unmeasured = amount === undefined ? unmeasuredIn(line) : undefined;
  return {
    span,
    ...(amount === undefined ? {} : { amount: moved(amount, span.from) }),
    ...(unmeasured === undefined ? {} : { unmeasured }),
    search: movedSearch(search, span.from),
    ...(weight === undefined ? {} : { weight }),
    note: noteIn(line, search),
    isOptional: /\boptional\b|\bopt\b|\bif (?:you like|wanted|liked)\b/i.test(line),
    unread: unreadIn(line, search, span),
    notices: lineNotices(line, { amount, search, weight, manner: options.manner }),
  };
}

/** "1 box cake mix (15.25 oz)": so many of what the brackets weigh. */
function weighedInBrackets(
  line: string,
  amount: WrittenAmount,
  search: FoodSearch,
  manner: Manner,
): WeighedAmount | undefined {
  const [, inside] = /\(([^()]{2,16})\)/u.exec(line.slice(search.span.to)) ?? [];
  const [term, ...more] = amount.terms;
  const each = inside === undefined ? undefined : amountAt(inside, 0, manner);
  const [size, ...rest] = each?.terms ?? [];
  if (size === undefined || term === undefined || 0 < more.length + rest.length) return undefined;
  if (
    sizeOfWritten(size.unit, manner).kind !== 'mass' ||
    sizeOfWritten(term.unit, manner).kind === 'mass'
  ) {
    return undefined;
  }
  const many = { ...size, low: size.low * term.low, high: size.high * term.high };
  return weighAmount({ ...each!, terms: [many] }, search.food, { manner, forms: search.forms });
}

const overruled = (search: FoodSearch, food: Food): FoodSearch => ({
  ...search,
  food,
  choices: search.choices.filter((each) => each.key !== food.key),
  unread: [],
});

// --- Where amount and food stand ----------------------------------------------------------------------

interface AmountIn {
  readonly amount?: WrittenAmount;
  /** "Juice of 1 lemon": what comes before the amount belongs to the food. */
  readonly isJuice?: true;
  /** The line begins with the food: "flour ..... 2 cups". */
  readonly isBehind?: true;
}

const LEAD = /\s*(?:[-*•–·+>]|\[ ?\]|\(\d{1,2}\)|\d{1,2}\)(?= ))?\s*/uy;
const JUICE =
  /(?:the )?(?:juice|zest|rind|peel|grated (?:rind|zest|peel))(?: and (?:juice|zest|rind))? (?:of|from) /iuy;

/** First at the head of the line, else behind the food. */
function amountIn(line: string, manner: Manner): AmountIn {
  const start = matchAt(LEAD, line, 0)?.[0].length ?? 0;
  const juice = matchAt(JUICE, line, start);
  const at = start + (juice?.[0].length ?? 0);
  const amount = amountAt(line, at, manner);
  if (juice && amount !== undefined) return { amount: juiceOf(amount, start), isJuice: true };
  if (amount !== undefined) return { amount: filled(amount, line) };
  return amountBehind(line, start, manner);
}

const FILLED_BEHIND =
  /, ?\(?(heap(?:ed|ing)|rounded|scant|generous|level)\)?[\s.,;]*(?:$|,| and )/iu;

/** "Two cups of flour, heaped": how full it is stands behind. */
function filled(amount: WrittenAmount, line: string): WrittenAmount {
  const word = FILLED_BEHIND.exec(line.slice(amount.span.to))?.[1]?.toLowerCase();
  const full = word === 'heaping' ? 'heaped' : (word as AmountTerm['full']);
  if (full === undefined) return amount;
  return { ...amount, terms: amount.terms.map((term) => ({ full, ...term })) };
}

/** Juice of a lemon is weighed as what one fruit yields. */
const juiceOf = (amount: WrittenAmount, from: number): WrittenAmount => ({
  ...amount,
  span: { from, to: amount.span.to },
  terms: amount.terms.map((term) => (term.unit === 'each' ? { ...term, unit: 'fruit' } : term)),
});

const MOST_TRIES = 60;
const BEFORE_AMOUNT = /[\s.:,;(–—_=-]/u;

function amountBehind(line: string, start: number, manner: Manner): AmountIn {
  let tries = 0;
  for (let at = start + 1; at < line.length && tries < MOST_TRIES; at += 1) {
    if (!BEFORE_AMOUNT.test(line[at - 1]!) || BEFORE_AMOUNT.test(line[at]!)) continue;
    tries += 1;
    const amount = amountAt(line, at, manner);
    const isMeasure =
      amount !== undefined && (amount.terms[0]!.unit !== 'each' || /\d\s*$/.test(line));
    if (amount !== undefined && isMeasure) return { amount, isBehind: true };
  }
  return sizedLike(line);
}

/** "Butter the size of an egg": a quarter cup, of a walnut two spoons. Common practice, no source. */
const SIZED =
  /,? ?(?:about )?(?:the )?size of (?:an? )?(?:small |large )?(hen['’]?s egg|egg|walnut|hickory nut|nut)/iu;

function sizedLike(line: string): AmountIn {
  const found = SIZED.exec(line);
  if (found === null) return {};
  const isEgg = /egg/i.test(found[1]!);
  const term = isEgg
    ? ({ low: 1 / 5, high: 3 / 10, unit: 'cup' } as const)
    : ({ low: 1, high: 3, unit: 'tbsp' } as const);
  const span = { from: found.index, to: found.index + found[0].length };
  return {
    amount: { span, terms: [term], same: [], isAbout: true, isMended: false },
    isBehind: true,
  };
}

/** "Yeast 1/4 tsp instant": what stands behind the amount belongs to the food as well. */
function foodText(line: string, { amount, isBehind }: AmountIn): string {
  const text = line.replace(TO_MAKE, (found) => ' '.repeat(found.length));
  if (amount === undefined || !isBehind) return text;
  const { from, to } = amount.span;
  return `${text.slice(0, from)}${' '.repeat(to - from)}${text.slice(to)}`;
}

/** "Milk to make a soft dough": what it becomes is no form of the milk. */
const TO_MAKE =
  /\b(?:enough )?(?:to|till it|until it) (?:make|makes|form|forms|give|gives|mix|get|bind)(?: (?:in)?to| it)?(?: up)?(?: an?| the)?(?: \p{L}+,?){0,3} (?:dough|batter|paste|mixture)\b/iu;

function foodPlace(line: string, { amount, isJuice, isBehind }: AmountIn): Span {
  if (amount === undefined || isJuice) return { from: 0, to: line.length };
  const isMore = BEHIND_TOO.test(line.slice(amount.span.to));
  if (isBehind) return { from: 0, to: isMore ? line.length : amount.span.from };
  return { from: amount.span.to, to: line.length };
}

/** Kinds that a hand writes behind the amount. */
const BEHIND_TOO = /^,? ?\(?(?:instant|active dry|fresh|dry|dried|whole|melted)\b/iu;

const CANS: ReadonlySet<string> = new Set(['can', 'jar']);
const isCanned = ({ terms }: WrittenAmount) => CANS.has(terms[0]!.unit);

function unmeasuredIn(line: string): 'to-taste' | 'as-needed' | 'unsaid' {
  if (/\bto taste\b|\bal gusto\b/i.test(line)) return 'to-taste';
  return /\b(?:as needed|as required|if needed|to (?:mix|make|form|bind)|enough|for (?:greasing|dusting|the (?:pot|pan|oven|board))|to (?:grease|dust|fry))\b/i.test(
    line,
  )
    ? 'as-needed'
    : 'unsaid';
}

const moved = (amount: WrittenAmount, by: number): WrittenAmount => ({
  ...amount,
  span: { from: amount.span.from + by, to: amount.span.to + by },
});

const movedSearch = (search: FoodSearch, by: number): FoodSearch => ({
  ...search,
  span: { from: search.span.from + by, to: search.span.to + by },
});

/** What stands behind the food's own part. */
function noteIn(line: string, { span, food }: FoodSearch): string {
  if (food === undefined) return '';
  return line
    .slice(span.to)
    .replace(/^[\s,;:.()–—-]+|[\s,;:)]+$/gu, '')
    .slice(0, 120);
}

const unreadIn = (_line: string, { unread, food }: FoodSearch, span: Span): readonly Span[] =>
  food === undefined
    ? []
    : unread.map(({ from, to }) => ({ from: from + span.from, to: to + span.from }));

// --- What is said about it --------------------------------------------------------------------------

interface Findings {
  readonly amount: WrittenAmount | undefined;
  readonly search: FoodSearch;
  readonly weight: WeighedAmount | undefined;
  readonly manner: Manner;
}

function lineNotices(line: string, found: Findings): readonly Notice[] {
  const { amount, search } = found;
  const about = { ingredient: calledIn(search) };
  const names = (all: readonly Food[]) => all.map(({ name }) => name).join(', ');
  return [
    ...(search.food === undefined
      ? [
          notice('LARDER_FOOD_UNKNOWN', 'doubt', about, {
            name: search.name,
            nearest: names(search.choices),
          }),
        ]
      : []),
    ...(search.food !== undefined && 0 < search.choices.length
      ? [
          notice('LARDER_FOOD_CHOICE', 'note', about, {
            name: search.name,
            taken: search.food.name,
            others: names(search.choices),
          }),
        ]
      : []),
    ...search.also.map((second) =>
      notice('LARDER_SECOND_FOOD', 'doubt', about, { name: search.name, second: second.name }),
    ),
    ...(search.food === undefined || search.unread.length === 0
      ? []
      : [
          notice('LARDER_WORD_UNREAD', 'note', about, {
            words: search.unread.map(({ from, to }) => line.slice(from, to)).join(' '),
          }),
        ]),
    ...(amount === undefined
      ? [notice('LARDER_AMOUNT_UNSAID', 'note', about)]
      : amountNotices(line, amount, found, about)),
  ];
}

type Named = { readonly ingredient: string };

function amountNotices(
  line: string,
  amount: WrittenAmount,
  { search, weight, manner }: Findings,
  about: Named,
): readonly Notice[] {
  const written = line.slice(amount.span.from, amount.span.to).trim().replace(/ of$/iu, '');
  const [term] = amount.terms;
  const isLoose = sizeOfWritten(term!.unit, manner).kind === 'loose';
  const other = otherSize(term!.unit, manner);
  const isRange = amount.terms.some(({ low, high }) => low !== high);
  return [
    ...(term!.unit === 'spoon' ? [notice('LARDER_SPOON', 'doubt', about, { written })] : []),
    ...(isLoose ? [notice('LARDER_AMOUNT_LOOSE', 'doubt', about, { written })] : []),
    ...(weight === undefined && !isLoose && search.food !== undefined
      ? [notice('LARDER_WEIGHT_UNKNOWN', 'doubt', about, { written })]
      : []),
    ...(isRange && weight !== undefined
      ? [
          notice('LARDER_AMOUNT_RANGE', 'note', about, {
            lowGrams: weight.low,
            highGrams: weight.high,
          }),
        ]
      : []),
    ...(amount.isMended
      ? [notice('LARDER_AMOUNT_MENDED', 'doubt', about, { written, readAs: `${term!.low}` })]
      : []),
    ...(other === undefined || weight?.how === 'scale'
      ? []
      : [
          notice('LARDER_US_OR_IMPERIAL', 'doubt', about, {
            unit: term!.unit.replace('-', ' '),
            taken: manner === 'us' ? 'us' : 'imperial',
            otherOver: other,
          }),
        ]),
    ...disagreement(amount, search, weight, manner, about),
  ];
}

/** A weight in brackets against the measure before it; a quarter off is past any way of filling. */
const AGREES = 0.25;

function disagreement(
  amount: WrittenAmount,
  search: FoodSearch,
  weight: WeighedAmount | undefined,
  manner: Manner,
  about: Named,
): readonly Notice[] {
  if (amount.same.length === 0 || weight === undefined) return [];
  const measure = [amount.terms, amount.same].find((terms) =>
    terms.every(({ unit }) => sizeOfWritten(unit, manner).kind !== 'mass'),
  );
  if (measure === undefined || weight.how !== 'scale') return [];
  const bare = { span: amount.span, terms: measure, same: [], isAbout: false, isMended: false };
  const spooned = weighAmount(bare, search.food, { manner, forms: search.forms });
  if (spooned === undefined || Math.abs(spooned.likely / weight.likely - 1) <= AGREES) return [];
  return [
    notice('LARDER_WEIGHT_DISAGREES', 'doubt', about, {
      scaleGrams: weight.likely,
      measureGrams: spooned.likely,
    }),
  ];
}
