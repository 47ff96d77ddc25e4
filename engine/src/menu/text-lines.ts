// Which line of a pasted recipe is what? Every letter of the text belongs to exactly one piece, in
// order, so that nothing is lost: what is no title, ingredient, step, yield or heading stays as a
// piece that was not understood.
// Sources: the words are common practice, no source.

import type { Food } from '../larder/food.ts';
import { type LineRead, LONGEST_LINE, readLine } from '../larder/read-line.ts';
import { amountAt, type Manner, type Span } from '../quantity/index.ts';
import { heatIn, minutesIn, yieldIn } from './text-facts.ts';
import { coalsIn } from './text-oven.ts';
import { beginsBehind, foodsOfLine, told } from './text-told.ts';
import { type Group, groupAt, headingAt, type Section, workIn } from './text-words.ts';

export type LineRole =
  | 'title'
  | 'heading'
  | 'ingredient'
  | 'step'
  | 'yield'
  | 'heat'
  | 'note'
  | 'blank'
  | 'unread';

/** A piece of the text: a line, or a part of one, with the white space behind it. */
export interface TextPiece {
  readonly span: Span;
  readonly role: LineRole;
  readonly group: Group;
  /** Of an ingredient. */
  readonly line?: LineRead;
  /** More foods of the same line, and ingredients that are told in the middle of the work. */
  readonly told?: readonly LineRead[];
}

export interface PieceOptions {
  readonly manner: Manner;
  readonly own?: readonly Food[];
  /** By the number of the piece: what the cook says it is. */
  readonly roles?: Readonly<Record<number, LineRole>>;
  readonly foods?: Readonly<Record<number, Food>>;
}

const MOST_INGREDIENTS = 150;

/** Every piece of the text, in order; their spans join up to the whole of it. */
export function piecesOf(text: string, options: PieceOptions): readonly TextPiece[] {
  const state: State = { section: 'start', group: 'dough', hasTitle: false, ingredients: 0 };
  const pieces: TextPiece[] = [];
  for (const span of linesOf(text)) {
    for (const part of partsOf(text, span, state, options)) {
      const index = pieces.length;
      const own = options.roles?.[index];
      pieces.push(pieceOf(text, part, { state, options, index, ...(own ? { own } : {}) }));
    }
  }
  return told(text, pieces, options);
}

interface State {
  section: Section;
  group: Group;
  hasTitle: boolean;
  ingredients: number;
}

// --- Lines and their parts ----------------------------------------------------------------------------

const LINE = /[^\r\n\u2028\u2029]*(?:\r\n|[\r\n\u2028\u2029]|$)/gu;

/** What lies past so many lines is one piece that nobody reads. */
const MOST_LINES = 1200;

function linesOf(text: string): readonly Span[] {
  const lines: Span[] = [];
  for (const found of text.matchAll(LINE)) {
    if (found[0] === '') break;
    if (MOST_LINES <= lines.length) return [...lines, { from: found.index, to: text.length }];
    lines.push({ from: found.index, to: found.index + found[0].length });
  }
  return lines;
}

interface Part extends Span {
  /** What is known of it before it is looked at. */
  readonly known?: 'heading' | 'list';
}

const MARK = /^[\s#*>_•·–—+-]*(?:\[ ?\])?\s*/u;
const bare = (line: string) => line.replace(MARK, '').replace(/[\s*_]+$/u, '');

/** A heading with something behind its colon is two parts; a list in one line is many. */
function partsOf(text: string, span: Span, state: State, options: PieceOptions): readonly Part[] {
  const line = text.slice(span.from, span.to);
  const lead = MARK.exec(line)?.[0].length ?? 0;
  const rest = line.slice(lead);
  const heading =
    headingAt(rest.replace(/[*_#]+/gu, ' ').trimEnd()) ??
    groupAt(rest.replace(/[*_#]/gu, ' ').trimEnd());
  const cut = heading === undefined ? 0 : lead + heading.length;
  const behind = line.slice(cut);
  if (heading !== undefined && bare(behind) !== '') {
    const at = span.from + cut;
    return [
      { from: span.from, to: at, known: 'heading' },
      ...listOf(text, { from: at, to: span.to }, options),
    ];
  }
  if (heading !== undefined) return [{ ...span, known: 'heading' }];
  return state.section === 'method' || state.section === 'notes'
    ? sentences(text, span)
    : listOf(text, span, options);
}

/** "2 cups flour, 1 tsp salt; 1/2 cup lard": parts that each begin with an amount. */
function listOf(text: string, span: Span, options: PieceOptions): readonly Part[] {
  if (LONGEST_TEXT_LINE < span.to - span.from) return [span];
  const line = text.slice(span.from, span.to);
  if (isCoalsOnly(bare(line))) return [span];
  const starts = beginsWithAmount(line, options);
  if (!starts && workIn(line.replace(MARK, ''))?.isOrder === true) return sentences(text, span);
  if (!starts && /[.!?] +\p{Lu}/u.test(line.slice(0, 400))) return listsAmong(text, span, options);
  const cuts = cutsAt(text, span, /[,;.•|](?= )/gu).filter((at) => {
    if (ONLY_NUMBER.test(text.slice(span.from, at))) return false;
    const next = text.slice(at, Math.min(span.to, at + 60));
    if ((minutesIn(next)?.span.from ?? NEXT) < NEXT) return false;
    return OPEN_ITEM.test(next) || (ITEM.test(next) && beginsWithAmount(next, options));
  });
  const behind = starts ? [] : cutsAt(text, span, /[,;•|](?= )/gu);
  if (0 < behind.length && isListedBehind(text, span, behind, options)) {
    return spansBetween(span, behind).map((part) => ({ ...part, known: 'list' as const }));
  }
  if (cuts.length === 0 || (!starts && cuts.length < 2)) return sentences(text, span);
  return spansBetween(span, cuts).flatMap((part) => workBehind(text, part));
}

/** "..., 3/4 c milk. cut in lard. add milk": the work that a terse hand puts behind the last food. */
function workBehind(text: string, part: Span): readonly Part[] {
  const at = cutsAt(text, part, /[.;!](?= )/gu).find(
    (cut) => workIn(text.slice(cut, cut + 80).trim())?.isOrder === true,
  );
  if (at === undefined) return [{ ...part, known: 'list' }];
  return [
    { from: part.from, to: at, known: 'list' },
    { from: at, to: part.to },
  ];
}

/** "Flour - 2 cups, powder - 1 Tbsp": every item, or all but one, names its food first. */
function isListedBehind(
  text: string,
  span: Span,
  cuts: readonly number[],
  options: PieceOptions,
): boolean {
  const { manner } = options;
  const parts = spansBetween(span, cuts).map((part) => text.slice(part.from, part.to));
  const first = beginsBehind(bare(parts[0]!), manner);
  const isItem = (part: string) =>
    OPEN_ITEM.test(part) ||
    beginsBehind(part.replace(/^[\s,;•|]+/u, ''), manner) ||
    beginsWithAmount(part.replace(/^[\s,;•|]+/u, ''), options);
  const count = parts.filter(isItem).length;
  return first && 2 <= count && parts.length - 1 <= count;
}

/** "1. 2 cups flour": the number of the line is no item. */
const ONLY_NUMBER = /^\s*\(?\d{1,2}[.)]$/u;

/** A time that begins within so many letters is what the item is. */
const NEXT = 8;

const ITEM = /^\s*(?:and |with )?(?:an? |one |two |three |half |[\d½¼¾⅓⅔⅛])/iu;
/** Without an amount at its head: "butter the size of an egg", "milk to mix". */
const OPEN_ITEM =
  /^\s*(?:(?:butter|lard|fat|shortening) (?:the |about the )?size of|(?:sweet |sour |cold |warm )?(?:milk|water|buttermilk) (?:enough )?to (?:mix|make|moisten|form)|a? ?(?:little )?salt\b)/iu;

/** "BREAD. One quart flour, two spoons powder. Bake." The sentence that is a list falls into its items. */
function listsAmong(text: string, span: Span, options: PieceOptions): readonly Part[] {
  const found = sentences(text, span);
  if (found.length < 2) return found;
  return found.flatMap((part) =>
    beginsWithAmount(text.slice(part.from, part.to), options)
      ? listOf(text, part, options)
      : [part],
  );
}

function beginsWithAmount(text: string, { manner }: PieceOptions): boolean {
  return (
    amountAt(
      text
        .slice(0, 60)
        .replace(MARK, '')
        .replace(/^(?:and|with) /iu, ''),
      0,
      manner,
    ) !== undefined
  );
}

const LONGEST_TEXT_LINE = 6000;
const SENTENCE_LINE = 140;
const SENTENCE_END = /[.!?;](?=\s+["'“(]?[\p{Lu}\d])/gu;
const MOST_PARTS = 60;

/** Long lines of work fall into sentences; a short line stays whole. */
function sentences(text: string, span: Span): readonly Part[] {
  const length = span.to - span.from;
  if (length < SENTENCE_LINE || LONGEST_TEXT_LINE < length) return [span];
  return spansBetween(span, cutsAt(text, span, SENTENCE_END));
}

function cutsAt(text: string, span: Span, pattern: RegExp): readonly number[] {
  const line = text.slice(span.from, span.to);
  const cuts: number[] = [];
  for (const found of line.matchAll(pattern)) {
    const at = span.from + found.index + 1;
    const isShort = /(?:tsps?|tbsps?|oz|lbs?|min|mins|hrs?|approx|pkg|deg|c|T|t|in|qt|pt)\.$/u.test(
      text.slice(Math.max(span.from, at - 8), at),
    );
    if (!isShort) cuts.push(at);
    if (MOST_PARTS <= cuts.length) break;
  }
  return cuts;
}

function spansBetween(span: Span, cuts: readonly number[]): readonly Span[] {
  const ends = [...cuts.filter((at) => span.from < at && at < span.to), span.to];
  return ends.map((to, index) => ({ from: index === 0 ? span.from : ends[index - 1]!, to }));
}

// --- What a part is -----------------------------------------------------------------------------------

interface Around {
  readonly state: State;
  readonly options: PieceOptions;
  readonly index: number;
  /** What the cook says it is. */
  readonly own?: LineRole;
}

function pieceOf(text: string, part: Part, around: Around): TextPiece {
  const { state, options, index } = around;
  const raw = text.slice(part.from, part.to);
  const line = bare(raw);
  const span = { from: part.from, to: part.to };
  if (part.known === 'heading') takeHeading(line, state);
  const role = around.own ?? roleOf(line, part, { state, options });
  const { group } = state;
  if (role === 'title') state.hasTitle = true;
  if (role !== 'ingredient') return { span, role, group };
  state.ingredients += 1;
  if (state.section === 'start') state.section = 'ingredients';
  const place = trimmed(text, span);
  const food = options.foods?.[index];
  const { line: read, told: more } = foodsOfLine(text, place, {
    manner: options.manner,
    ...(options.own === undefined ? {} : { own: options.own }),
    ...(food === undefined ? {} : { food }),
  });
  return { span, role, group, line: read, ...(more.length === 0 ? {} : { told: more }) };
}

function takeHeading(line: string, state: State): void {
  const plain = line.replace(/[*_#]+/gu, ' ').trim();
  const heading = headingAt(plain);
  const group = heading === undefined ? groupAt(plain) : undefined;
  if (heading !== undefined) state.section = heading.section;
  if (heading?.section === 'ingredients') state.group = 'dough';
  if (group !== undefined) state.group = group.group;
  if (group !== undefined && state.section === 'start') state.section = 'ingredients';
}

function trimmed(text: string, { from, to }: Span): Span {
  const raw = text.slice(from, to);
  const lead =
    /^[\s#*>_•·–—+|,;.-]*(?:\[ ?\]\s*)?(?:\(?\d{1,2}[.)](?=\s+[\d½¼¾⅓⅔]))?\s*(?:(?:and|with) (?=[\p{L}\d½¼¾⅓⅔]))?/iu.exec(
      raw,
    )?.[0].length ?? 0;
  const tail = /[\s*_,;|]+$/u.exec(raw)?.[0].length ?? 0;
  return lead + tail < raw.length ? { from: from + lead, to: to - tail } : { from, to };
}

/** A title may end in how many it serves. */
const FEW_LETTERS = 4;
const NUMBERED = /^(?:step )?\(?\d{1,2}[.):]\s+/iu;

function roleOf(
  line: string,
  part: Part,
  { state, options }: Pick<Around, 'state' | 'options'>,
): LineRole {
  if (part.known === 'heading') return 'heading';
  if (line === '') return 'blank';
  if (/^[-=_*~.]{3,}$/u.test(line)) return 'heading';
  if (state.section === 'notes' || isLetter(line) || TIMES.test(line)) return 'note';
  const plain = line.replace(NUMBERED, '').replace(/^(?:and|with) (?=[\p{L}\d½¼¾⅓⅔])/iu, '');
  const work = workIn(plain);
  const said = line.length < 70 && !work?.isOrder ? yieldIn(line) : undefined;
  const isFirst = !state.hasTitle && state.ingredients === 0 && isTitleLike(line);
  if (said !== undefined && isFirst && FEW_LETTERS < said.span.from) return 'title';
  const isYield = said !== undefined;
  if (isYield && !isIngredient(plain, part, state, options)) return 'yield';
  if (isTimedHeat(plain, options.manner)) return stepAt(state);
  if (isHeatOnly(line, options.manner) || isCoalsOnly(line)) return 'heat';
  if (state.section === 'method') return stepOrMore(plain, work !== undefined, state, options);
  if (work?.isOrder && part.known !== 'list' && !startsWithAmount(plain, options)) {
    state.section = state.ingredients === 0 ? state.section : 'method';
    return 'step';
  }
  if (isIngredient(plain, part, state, options)) return 'ingredient';
  if (NUMBERED.test(line) || (work !== undefined && 20 < line.length)) return 'step';
  const isTitle = !state.hasTitle && state.ingredients === 0 && isTitleLike(line);
  return isTitle ? 'title' : 'unread';
}

/** How a letter begins and ends: prose, and no food. */
const GREETING =
  /^(?:dear|hi|hello|hullo|hey|greetings|good (?:morning|evening|day))\b[^.!?\d]{0,40}[,!:]?$/iu;
const SIGNED =
  /^(?:(?:much |with |lots of |all my )?love|yours?|(?:with )?(?:best|kind(?:est)?|warm(?:est)?)(?: regards| wishes)?|regards|cheers|many thanks|thank you|thanks|sincerely|hugs|happy baking|enjoy|x+o*)\b(?:[,.!–—-][^\d]{0,40}| (?:from|truly|ever|faithfully|sincerely|always)\b[^\d]{0,40})?$/iu;
const isLetter = (line: string) =>
  GREETING.test(line) || SIGNED.test(line) || /^p\.?s\.?[ :]/iu.test(line);

/** "Prep time: 15 minutes": how long a kitchen took, above the recipe. */
const TIMES =
  /^(?:prep(?:aration)?|cook(?:ing)?|total|active|hands-on|ready|rising|resting|bak(?:e|ing)) ?(?:time|in)\b\s*[:–-]?\s*[^.]{1,30}$/iu;

/** "It ought to go in for 30 minutes at 375": a heat with its time is the baking. */
const isTimedHeat = (line: string, manner: Manner) =>
  /^(?:it|this|that|mine|they|these|goes|in|(?:very )?(?:hot|quick|moderate|slow) oven)\b/iu.test(
    line,
  ) &&
  minutesIn(line) !== undefined &&
  heatIn(line, manner) !== undefined;

function stepAt(state: State): LineRole {
  state.section = state.ingredients === 0 ? state.section : 'method';
  return 'step';
}

/** "You want about two cups of flour": no title. */
const MEASURED =
  /\b(?:\d+|an?|one|two|three|four|five|six|half)\b.{0,12}\b(?:cups?|(?:table|tea)?spoons?|tsp|tbsp|pints?|quarts?|pounds?)\b/iu;

/** Short, without a verb; a full stop only behind a few words. */
const isTitleLike = (line: string) =>
  line.length <= 80 &&
  !MEASURED.test(line) &&
  (!/[.!?,]$/.test(line) || (line.length <= 50 && line.split(' ').length <= 7));

/** Below "Method" a list of ingredients may still begin again, and talk is no work. */
function stepOrMore(line: string, isWork: boolean, state: State, options: PieceOptions): LineRole {
  if (isWork || state.ingredients === 0) return isWork || 12 < line.length ? 'step' : 'unread';
  const isMore = line.length < 70 && startsWithMeasure(line, options);
  return isMore ? 'ingredient' : 12 < line.length ? 'step' : 'unread';
}

function isHeatOnly(line: string, manner: Manner): boolean {
  if (60 < line.length || heatIn(line, manner) === undefined) return false;
  if (minutesIn(line) !== undefined) return false;
  return (
    /^(?:pre-?heat|oven|bake(?:d)?|baking|temp(?:erature)?|heat|time)\b[^.]*\.?$/iu.test(line) &&
    !/\buntil\b|\bthen\b|\band (?!hot)/iu.test(line)
  );
}

/** "Coals: 18 over, 7 under", "17 briquettes on the lid". */
const isCoalsOnly = (line: string) =>
  line.length < LONGEST_COALS &&
  coalsIn(line) !== undefined &&
  minutesIn(line) === undefined &&
  workIn(line)?.isOrder !== true;
const LONGEST_COALS = 80;

const startsWithAmount = (line: string, { manner }: PieceOptions) =>
  amountAt(line, 0, manner) !== undefined;

function startsWithMeasure(line: string, options: PieceOptions): boolean {
  const read = quickly(line, options);
  const unit = read.amount?.terms[0]?.unit;
  return (
    read.amount?.span.from === 0 &&
    unit !== undefined &&
    (unit !== 'each' || read.search.food !== undefined)
  );
}

const quickly = (line: string, { manner, own }: PieceOptions) =>
  readLine(
    line,
    { from: 0, to: line.length },
    { manner, isQuick: true, ...(own === undefined ? {} : { own }) },
  );

function isIngredient(line: string, part: Part, state: State, options: PieceOptions): boolean {
  if (LONGEST_LINE < line.length || MOST_INGREDIENTS <= state.ingredients) return false;
  const read = quickly(line, options);
  const { amount, search, unmeasured } = read;
  const isNamed = search.food !== undefined;
  if (amount !== undefined) {
    const isPieces = amount.terms[0]!.unit === 'each';
    const isFirst = amount.span.from < 3;
    const isHead = state.section === 'start' && !state.hasTitle && state.ingredients === 0;
    if (isFirst && !isNamed && isHead) return false;
    const isSaidInFull = !/[\d½¼¾⅓⅔⅛]/u.test(line.slice(amount.span.from, amount.span.to));
    if (!isFirst && isHead && isSaidInFull && /\([^)]*$/u.test(line.slice(0, amount.span.from))) {
      return false; // "Soda bread (from the back of an envelope)"
    }
    if (isFirst)
      return isNamed || !isPieces || (state.section === 'ingredients' && line.length < 60);
    return isNamed && line.length < 90 && search.span.from < 25;
  }
  if (!isNamed)
    return state.section === 'ingredients' && part.known !== 'list' && looksLikeFood(line);
  const isShort = line.length < 70 && search.span.from < 25;
  const isListed =
    state.section === 'ingredients' || (unmeasured !== 'unsaid' && 0 < state.ingredients);
  return isShort && isListed && workIn(line)?.isOrder !== true;
}

/** Below "Ingredients" a few words without a verb or a full stop are a food that we don't know. */
const looksLikeFood = (line: string) =>
  line.length < 50 &&
  line.split(' ').length <= 6 &&
  !/[.!?:]$/.test(line) &&
  workIn(line) === undefined;
