// Foods that a recipe tells in its sentences, or two of them in one line: "take two cups of flour and a
// teaspoon of salt", "powder one tablespoon", "the milk (3/4-1 cup)".
// Sources: the words are common practice, no source.

import { type LineOptions, type LineRead, readLine } from '../larder/read-line.ts';
import { weighAmount } from '../larder/weigh.ts';
import { amountAt, type Manner, type Span } from '../quantity/index.ts';
import type { PieceOptions, TextPiece } from './text-lines.ts';

// --- Two foods in one line ------------------------------------------------------------------------------

export interface FoodsOfLine {
  readonly line: LineRead;
  readonly told: readonly LineRead[];
}

const MOST_FOODS = 5;
const SECOND = /,? (?:and|plus|with) |,? [&+] /giu;
/** "1 tsp each salt and pepper": the amount is meant of both. */
const OF_EACH = /^\s*each(?: of)?\b|\beach of\b/iu;

/** Every food of one line of a list, each with its own amount. */
export function foodsOfLine(text: string, place: Span, options: LineOptions): FoodsOfLine {
  const { food: _, ...others } = options;
  const lines: LineRead[] = [];
  let rest = place;
  for (let count = 0; count < MOST_FOODS; count++) {
    const own = count === 0 ? options : others;
    const read = readLine(text, rest, own);
    const at = secondAt(text, rest, read, options);
    if (at === undefined) {
      lines.push(read);
      break;
    }
    lines.push(readLine(text, { from: rest.from, to: at.from }, own));
    rest = { from: at.to, to: rest.to };
  }
  const [line, ...told] = lines;
  return { line: line!, told: told.map((each) => sharing(line!, each, text, options)) };
}

/** Where a second food begins: behind "and" with an amount, or a food's name alone. */
function secondAt(text: string, { from, to }: Span, read: LineRead, options: LineOptions) {
  if (read.search.food === undefined) return undefined;
  const raw = text.slice(from, to);
  for (const link of raw.matchAll(SECOND)) {
    const start = from + link.index;
    const next = start + link[0].length;
    if (start < read.search.span.to || next < (read.amount?.span.to ?? 0)) continue;
    const second = readLine(text, { from: next, to }, { manner: options.manner, isQuick: true });
    const isNear = second.search.span.from - (second.amount?.span.to ?? next) < 20;
    if (second.search.food === undefined || !isNear) continue;
    if (second.amount?.span.from === next) return { from: start, to: next };
    const isNamed = read.search.also.some(({ key }) => key === second.search.food?.key);
    if (isNamed && second.amount === undefined && !/with/iu.test(link[0])) {
      return { from: start, to: next };
    }
  }
  return undefined;
}

function sharing(first: LineRead, other: LineRead, text: string, options: LineOptions): LineRead {
  const { amount } = first;
  if (amount === undefined || other.amount !== undefined) return other;
  const isShared = OF_EACH.test(text.slice(amount.span.to, first.search.span.to));
  const isEach = isShared || /each/iu.test(text.slice(amount.span.from, amount.span.to));
  if (!isEach) return other;
  const { manner } = options;
  const weight = weighAmount(amount, other.search.food, { manner, forms: other.search.forms });
  const { unmeasured: _, ...bare } = other;
  const notices = other.notices.filter(({ code }) => code !== 'LARDER_AMOUNT_UNSAID');
  return { ...bare, amount, notices, ...(weight === undefined ? {} : { weight }) };
}

const LONGEST_ITEM = 50;

/** "powder - 1 Tbsp", "salt half a teaspoon": a food that we know, then its amount. */
export function beginsBehind(item: string, manner: Manner): boolean {
  if (LONGEST_ITEM < item.length || amountAt(item, 0, manner) !== undefined) return false;
  const read = readLine(item, { from: 0, to: item.length }, { manner, isQuick: true });
  return isBehind(read, 0);
}

function isBehind({ amount, search }: LineRead, from: number): boolean {
  if (amount === undefined || search.food === undefined) return false;
  const gap = amount.span.from - search.span.to;
  return search.span.from - from < 14 && 0 <= gap && gap < 8;
}

// --- Ingredients told in the work -----------------------------------------------------------------------

const MOST_TOLD = 40;
const MOST_TRIES = 120;

/**
 * "Take two cups of flour, a teaspoon of salt": where no list stands, the sentences are one. Beside a
 * list, "brown it in 2 tbsp of oil" is one more food, unless the list has that food or it is poured away.
 */
export function told(
  text: string,
  pieces: readonly TextPiece[],
  options: PieceOptions,
): readonly TextPiece[] {
  let count = 0;
  const tries = { left: MOST_TRIES };
  const listed = new Set(pieces.flatMap(foodsIn));
  const hasList = pieces.some(({ role }) => role === 'ingredient');
  return pieces.map((piece) => {
    const isText = TEXTS.has(piece.role) && (!hasList || piece.role !== 'title');
    if (!isText || MOST_TOLD <= count) return piece;
    const all = toldIn(text, piece.span, options, tries);
    const isProse = piece.role === 'unread';
    const found = hasList ? all.filter((each) => isNew(text, each, { listed, isProse })) : all;
    for (const { search } of found) if (hasList && search.food) listed.add(search.food.key);
    count += found.length;
    return found.length === 0 ? piece : { ...piece, role: roleBeside(piece, hasList), told: found };
  });
}

/** Talk beside a list stays talk; where there is no list it is the work. */
const roleBeside = ({ role }: TextPiece, hasList: boolean): TextPiece['role'] =>
  role === 'title' ? 'title' : hasList && role === 'unread' ? 'note' : 'step';

const TEXTS: ReadonlySet<TextPiece['role']> = new Set(['step', 'unread', 'title']);

const foodsIn = ({ line, told: more = [] }: TextPiece): readonly string[] =>
  [...(line === undefined ? [] : [line]), ...more].flatMap(({ search }) =>
    [search.food, ...search.also].flatMap((food) => (food === undefined ? [] : [food.key])),
  );

/** Weighed or measured, in no list, and not soaked in, boiled in or thrown away. */
function isNew(
  text: string,
  { amount, search, weight }: LineRead,
  { listed, isProse }: { readonly listed: ReadonlySet<string>; readonly isProse: boolean },
) {
  const { food } = search;
  if (amount === undefined || weight === undefined || food === undefined) return false;
  const before = text.slice(Math.max(0, amount.span.from - 40), amount.span.from);
  const isPoured =
    (food.part === 'water' && !isProse) || /\b(?:soak|rinse|drain|serve|discard)/iu.test(before);
  return !isPoured && !listed.has(food.key);
}

/** Where an amount may begin, or a fat "the size of an egg", or milk "to mix". */
const TOLD_STARTS =
  /(?<![\p{L}\d.,/])(?=(?:about |the |enough )?(?:an? |one |two |three |four |five |six |half |three-|[\d½¼¾⅓⅔⅛]|heap|(?:butter|lard|fat|shortening)(?: or lard)? (?:the |about the )?size of|(?:sour |sweet |cold |warm |butter ?){0,2}(?:milk|water)(?: enough)?(?: to (?:mix|make|moisten|form|wet|bind)| (?:until|till)\b)|salt\b))/giu;

function toldIn(
  text: string,
  { from, to }: Span,
  { manner, own }: PieceOptions,
  tries: { left: number },
): readonly LineRead[] {
  const found: LineRead[] = [];
  const raw = text.slice(from, to);
  let end = 0;
  for (const start of raw.matchAll(TOLD_STARTS)) {
    if (start.index < end) continue;
    if (MOST_TOLD <= found.length || tries.left <= 0) break;
    tries.left -= 1;
    const clause = clauseAt(raw, start.index);
    const place = { from: from + start.index, to: from + clause };
    const read = readLine(text, place, { manner, ...(own === undefined ? {} : { own }) });
    const { food, span } = read.search;
    const isNear = span.from - (read.amount?.span.to ?? place.from) < 25;
    const isTold = food !== undefined && isNear && (isAtHead(read, place) || isOpen(read, place));
    if (!isTold) continue;
    found.push(read);
    end = read.search.span.to - from;
  }
  const between = toldBehind(
    text,
    { from, to },
    { manner, ...(own === undefined ? {} : { own }) },
    tries,
  );
  return withoutOverlap([...found, ...between]);
}

/** Pieces between commas, "and" and "with". */
const SEGMENT = /[,;:.](?= |$)|\b(?:and|with|then|plus)\b|&/giu;
/** "the flour (2 cups)". */
const BRACKETED = /(?:\p{L}+ ){0,2}\p{L}+ \([^()]{1,24}\)/giu;

/** "your milk, 3/4-1 cup,". */
const AFTER_COMMA = /(?:\p{L}+ ){0,2}\p{L}+, [^,;.()]{1,24}(?=[,;.]|$)/giu;

const exactly = (text: string, { amount, search }: LineRead): Span => {
  const end = Math.max(search.span.to, amount?.span.to ?? 0);
  return { from: search.span.from, to: text[end] === ')' ? end + 1 : end };
};

/** A food first, its amount behind it or in brackets. */
function toldBehind(
  text: string,
  { from, to }: Span,
  { manner, own }: PieceOptions,
  tries: { left: number },
): readonly LineRead[] {
  const raw = text.slice(from, to);
  const options = { manner, ...(own === undefined ? {} : { own }) };
  const ends = [...raw.matchAll(SEGMENT)].map((cut) => [cut.index, cut.index + cut[0].length]);
  const starts = [0, ...ends.map(([, end]) => end!)];
  const matched = (pattern: RegExp) =>
    [...raw.matchAll(pattern)].map(({ index, 0: { length } }) => ({
      start: index,
      end: index + length,
    }));
  const segments = [
    ...matched(BRACKETED),
    ...starts.map((start, index) => ({ start, end: ends[index]?.[0] ?? raw.length })),
    ...matched(AFTER_COMMA),
  ];
  const all: LineRead[] = [];
  for (const { start, end } of segments) {
    if (tries.left <= 0 || MOST_TOLD <= all.length) break;
    const at = start + /^\s*/u.exec(raw.slice(start))![0].length;
    if (
      end - at < 4 ||
      LONGEST_ITEM < end - at ||
      !/[\d½¼¾⅓⅔]|\b(?:an?|one|two|three|four|half)\b/iu.test(raw.slice(at, end))
    )
      continue;
    tries.left -= 1;
    const place = { from: from + at, to: from + end };
    const read = readLine(text, place, options);
    if (isBehind(read, place.from)) all.push(readLine(text, exactly(text, read), options));
  }
  return all;
}

/** In order; of two that share a place the earlier found one stays. */
function withoutOverlap(all: readonly LineRead[]): readonly LineRead[] {
  const kept: LineRead[] = [];
  for (const read of all) {
    const [from, to] = reach(read);
    const isFree = kept.every((each) => to <= reach(each)[0] || reach(each)[1] <= from);
    if (isFree) kept.push(read);
  }
  return kept.toSorted((one, other) => one.span.from - other.span.from);
}

const reach = ({ amount, search }: LineRead) =>
  [
    Math.min(amount?.span.from ?? search.span.from, search.span.from),
    Math.max(amount?.span.to ?? search.span.to, search.span.to),
  ] as const;

const isAtHead = ({ amount }: LineRead, { from }: Span) => amount?.span.from === from;

/** Without an amount at its head: a fat of a size, else only salt, or a liquid "to mix". */
const isOpen = ({ amount, search }: LineRead, { from }: Span) => {
  const part = search.food?.part;
  const isFat = amount !== undefined && part === 'fat';
  const isLiquid =
    amount === undefined && (part === 'liquid' || part === 'water' || part === 'salt');
  return (isFat || isLiquid) && search.span.from - from < 12;
};

/** To the next comma, full stop or "and a", at most a few words on. */
function clauseAt(raw: string, start: number): number {
  const next =
    /,(?! ?(?:heap|rounded|scant|level\b|generous))|[;:()]|(?<!\b(?:t|c|tsp|tbsp|oz|lb|pkg))\.(?= |$)| and (?=(?:an? |one |two |three |four |half |enough |some |[\d½¼¾⅓⅔⅛]))| with (?=an? |\d)| to (?=make|mix|form|taste)/iu.exec(
      raw.slice(start + 2, start + 90),
    );
  return next === null ? Math.min(raw.length, start + 90) : start + 2 + next.index;
}
