// What a recipe's text says beside its amounts: how much it makes, how hot, how long, how thick, in
// which oven. Each answer says where it stands, so that a screen can show what was read.
// Sources: the heats of "slow" to "quick" ovens and of gas marks are common practice, no source.

import {
  fromCelsius,
  fromFahrenheit,
  fromUnit,
  type Kelvin,
  type Manner,
  type Metres,
  type Minutes,
  matchAt,
  metres,
  minutes,
  numberAt,
  type Span,
} from '../quantity/index.ts';
import type { Piece } from './recipe.ts';
import { coreIn } from './text-oven.ts';

/** "Serves 6", "makes 12 biscuits". */
export interface YieldRead {
  readonly span: Span;
  readonly portions?: readonly [number, number];
  readonly pieces?: {
    readonly count: number;
    /** Undefined where only the number is said: "makes 1". */
    readonly shape?: Piece['shape'];
  };
}

export interface HeatRead {
  readonly span: Span;
  readonly low: Kelvin;
  readonly high: Kelvin;
  /** No °F or °C stood there, or only a word for it. */
  readonly isGuessed: boolean;
}

export interface MinutesRead {
  readonly span: Span;
  readonly low: Minutes;
  readonly high: Minutes;
}

export interface SizeRead {
  readonly span: Span;
  readonly diameter: Metres;
  /** Said of a kitchen pan, which a camp oven of this size stands for. */
  readonly isPan: boolean;
}

const MOST_LOOKS = 40;

/** Looks at every place that a pattern finds, at most forty of them; the first answer counts. */
function firstAnswer<Answer>(
  text: string,
  pattern: RegExp,
  answer: (found: RegExpExecArray) => Answer | undefined,
): Answer | undefined {
  let looks = 0;
  for (const found of text.matchAll(pattern)) {
    looks += 1;
    const given = answer(found);
    if (given !== undefined) return given;
    if (MOST_LOOKS <= looks) return undefined;
  }
  return undefined;
}

// --- Yield ------------------------------------------------------------------------------------------

const YIELD =
  /\b(?:makes|make|yields?|gives|serves|serving|servings|feeds|portions|enough for|for|(?:shape|form|divide)(?: it| them| dough| the dough)? into|roll(?: it| them| the dough)? up(?: tightly)?,? (?:and |then )?(?:slice|cut)(?: it)? into)\b ?:? ?/giu;
const COUNTED =
  /\b(?=[\d\p{L}])(?=[^ ]{1,12} ?(?:-|–|to)? ?[^ ]{0,12} ?(?:servings?|portions?|helpings?)\b)/giu;
const YIELD_SKIP = /(?:about |approximately |approx\.? |around |up to |a )?/iuy;
const EATERS =
  /,? ?(?:hungry |ordinary |big |good |large |small )?(?:people|persons?|servings?|portions?|helpings?|hands|mouths|eaters|scouts|adults|folks?|hikers|riders|campers|cowboys|raciones|wedges|slices|squares)\b/iuy;
const PIECES =
  /,? ?(?:\d{1,2}(?: ?-? ?(?:inch|in\.?|cm|")|["”″])? ?)?(?:large |small |good |big |medium |round |flat |thick |soft |drop |dinner |camp ){0,2}(biscuits?|scones?|rolls?|buns?|loaf|loaves|rounds?|flat ?breads?|bannocks?|cakes?)\b/iuy;

const SHAPES: Readonly<Record<string, Piece['shape']>> = {
  bis: 'biscuit',
  sco: 'biscuit',
  rol: 'roll',
  bun: 'roll',
  loa: 'loaf',
};

export function yieldIn(text: string, from = 0): YieldRead | undefined {
  return (
    firstAnswer(text, YIELD, (found) => yieldBehind(text, found, from)) ??
    firstAnswer(text, COUNTED, (found) => servingsAt(text, found.index, from))
  );
}

function yieldBehind(text: string, found: RegExpExecArray, from: number): YieldRead | undefined {
  const word = found[0].toLowerCase();
  const start = found.index + found[0].length;
  const at = start + (matchAt(YIELD_SKIP, text, start)?.[0].length ?? 0);
  const range = countRange(text, at);
  if (range === undefined) return undefined;
  const span = (to: number) => ({ from: from + found.index, to: from + to });
  const eaters = matchAt(EATERS, text, range.to);
  const isForEaters = /^(?:serv|feeds|portions)/.test(word);
  if (isForEaters || eaters) {
    const to = range.to + (eaters?.[0].length ?? 0);
    return { span: span(to), portions: [range.low, range.high] };
  }
  const isForMany = range.low <= MOST_FOR && /^:(?= )/u.test(text.slice(range.to));
  if (word.startsWith('for') && isForMany) {
    return { span: span(range.to), portions: [range.low, range.high] }; // "Pot roast for 8: ..."
  }
  if (word.startsWith('for') || word.startsWith('enough')) return undefined;
  const pieces = matchAt(PIECES, text, range.to);
  if (!pieces && (range.isDozen || word.startsWith('roll'))) {
    const shape = word.startsWith('roll') ? 'roll' : 'biscuit';
    return { span: span(range.to), pieces: { count: range.low, shape } };
  }
  if (!pieces)
    return isAlone(text, found.index, range.to) ? bareYield(found, range, from) : undefined;
  const shape = SHAPES[pieces[1]!.slice(0, 3).toLowerCase()] ?? 'round';
  const count = Math.round((range.low + range.high) / 2);
  return { span: span(range.to + pieces[0].length), pieces: { count, shape } };
}

/** "Makes 1" and no more in the line, or in its brackets. */
const isAlone = (text: string, at: number, to: number) =>
  /(?:^[\s*_>–-]*|\()$/u.test(text.slice(0, at)) && /^(?:[\s.*_]*$|\))/u.test(text.slice(to));

const bareYield = (found: RegExpExecArray, range: CountRange, from: number): YieldRead => ({
  span: { from: from + found.index, to: from + range.to },
  pieces: { count: Math.round((range.low + range.high) / 2) },
});

function servingsAt(text: string, at: number, from: number): YieldRead | undefined {
  const range = countRange(text, at);
  const eaters = range ? matchAt(EATERS, text, range.to) : undefined;
  return range === undefined || !eaters
    ? undefined
    : {
        span: { from: from + at, to: from + range.to + eaters[0].length },
        portions: [range.low, range.high],
      };
}

const LINK = / ?(?:-|–|—|to|or) ?/iuy;
const MOST_COUNT = 2000;
const MOST_FOR = 60;
/** "Makes a dozen": the "a" is skipped before. */
const DOZEN = /(?:(\d|two|three|four) )?dozen\b/iuy;
const DOZENS: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4 };

interface CountRange {
  readonly low: number;
  readonly high: number;
  readonly to: number;
  readonly isDozen?: true;
}

function countRange(text: string, at: number): CountRange | undefined {
  const dozen = matchAt(DOZEN, text, at);
  if (dozen) {
    const times = dozen[1] === undefined ? 1 : (DOZENS[dozen[1].toLowerCase()] ?? Number(dozen[1]));
    const count = 12 * Math.max(1, times);
    return { low: count, high: count, to: at + dozen[0].length, isDozen: true };
  }
  const first = numberAt(text, at);
  if (first === undefined || first.value < 1 || MOST_COUNT < first.value) return undefined;
  const link = matchAt(LINK, text, first.to);
  const second = link ? numberAt(text, first.to + link[0].length) : undefined;
  return second !== undefined && first.value <= second.value && second.value <= MOST_COUNT
    ? { low: first.value, high: second.value, to: second.to }
    : { low: first.value, high: first.value, to: first.to };
}

// --- Heat -------------------------------------------------------------------------------------------

const DEGREES =
  /(?<![\d.,/])(\d{2,3})(?: ?(?:-|–|to) ?(\d{2,3}))? ?(?:(°|º|degrees?|degs?\.?) ?)?(fahrenheit|celsius|centigrade|[FC])?(?![\p{L}\d])/giu;
const GAS = /\bgas(?: mark)?\.? ?(\d{1,2}|½|1\/2)\b/giu;
const WORDS =
  /\b(very (?:hot|slow)|hot|quick|brisk|moderately hot|moderate|medium|slow|cool) (?:camp )?oven\b/giu;
const IS_HEAT = /\b(?:at|to|oven|preheat(?:ed)?|bake|heat|temp(?:erature)?)\b[^.]{0,40}$/iu;

/** °F; common practice of old books, no source. */
const OVEN_WORDS: Readonly<Record<string, readonly [number, number]>> = {
  'very slow': [250, 275],
  slow: [300, 325],
  cool: [300, 325],
  moderate: [350, 375],
  medium: [350, 375],
  'moderately hot': [375, 400],
  quick: [400, 450],
  brisk: [400, 450],
  hot: [400, 450],
  'very hot': [450, 500],
};

export function heatIn(text: string, manner: Manner, from = 0): HeatRead | undefined {
  return (
    firstAnswer(text, DEGREES, (found) => degreesRead(text, found, manner, from)) ??
    firstAnswer(text, GAS, (found) => gasRead(found, from)) ??
    firstAnswer(text, WORDS, (found) => {
      const [low, high] = OVEN_WORDS[found[1]!.toLowerCase()]!;
      return heat(found, from, [fromFahrenheit(low), fromFahrenheit(high)], true);
    })
  );
}

const heat = (
  found: RegExpExecArray,
  from: number,
  [low, high]: readonly [Kelvin, Kelvin],
  isGuessed: boolean,
): HeatRead => ({
  span: { from: from + found.index, to: from + found.index + found[0].trimEnd().length },
  low,
  high,
  isGuessed,
});

/** "450 12 min": the heat, then the time. */
const BEFORE_TIME = /^(?:,| for)? ?\d{1,3}(?:-\d{1,3})? ?min/iu;

/** Oven heats of a camp oven: below 90 °C nothing bakes, above 320 °C all burns. */
const COOLEST = 90;
const HOTTEST = 320;

function degreesRead(text: string, found: RegExpExecArray, manner: Manner, from: number) {
  const [, low, high, sign, letter] = found;
  if (isNoHeat(text, found)) return undefined;
  const isSaid =
    letter !== undefined && (sign !== undefined || /^[FC]$/.test(letter) || 1 < letter.length);
  if (
    !isSaid &&
    sign === undefined &&
    !BEFORE_TIME.test(text.slice(found.index + found[0].length, found.index + 24)) &&
    !IS_HEAT.test(text.slice(Math.max(0, found.index - 60), found.index))
  ) {
    return undefined;
  }
  const isFahrenheit = isSaid ? /^f/i.test(letter) : isLikelyFahrenheit(Number(low), manner);
  const scale = isFahrenheit ? fromFahrenheit : fromCelsius;
  const range = [scale(Number(low)), scale(Number(high ?? low))] as const;
  const isOven = range.every((each) => COOLEST <= each - 273.15 && each - 273.15 <= HOTTEST);
  return isOven && range[0] <= range[1] ? heat(found, from, range, !isSaid) : undefined;
}

/** "90 min", "25 coals" and "200 F inside" are no heat of an oven. */
function isNoHeat(text: string, found: RegExpExecArray): boolean {
  const end = found.index + found[0].length;
  const isBare = found[3] === undefined && found[4] === undefined;
  if (isBare && OTHER_UNIT.test(text.slice(end, end + 20))) return true;
  const core = coreIn(text);
  return core !== undefined && core.span.from < end && found.index < core.span.to;
}
const OTHER_UNIT =
  /^ ?-?(?:min|hours?\b|hrs?\b|sec|g\b|grams?|kg\b|ml\b|oz\b|lbs?\b|coals?|briq|charcoal|inch|in\b|cm\b|mm\b|["”″%]|cups?\b|tbsp|tsp|times|minutes)/iu;

const isLikelyFahrenheit = (degrees: number, manner: Manner) =>
  manner === 'us' ? 240 < degrees : 260 < degrees;

/** Gas mark 1 is 275 °F, every mark 25 °F more; common practice, no source. */
function gasRead(found: RegExpExecArray, from: number): HeatRead | undefined {
  const mark = Number(found[1]);
  if (!(1 <= mark && mark <= 10)) return undefined;
  const kelvin = fromFahrenheit(250 + 25 * mark);
  return heat(found, from, [kelvin, kelvin], true);
}

// --- Minutes ----------------------------------------------------------------------------------------

const TIME_UNIT =
  / ?-? ?(?:(minutes?|mins?\.?|(?<!\d{3})m(?!['’]))|(hours?|hrs?\.?|h)|(seconds?|secs?\.?))(?![\p{L}])/iuy;
const TIME_START =
  /(?<![\p{L}\d.,/])(?=[\d½¼¾⅓⅔]|(?:an?|one|two|three|four|five|six|eight|ten|twelve|half|quarter|thirty|twenty|fifteen|forty|overnight)\b)/giu;
const TENS: Readonly<Record<string, number>> = { fifteen: 15, twenty: 20, thirty: 30, forty: 40 };
const OVERNIGHT: readonly [number, number] = [480, 720]; // common practice, no source
const MOST_MINUTES = 72 * 60;

/** The first length of time in a text: "25-30 minutes", "an hour and a half", "overnight". */
export function minutesIn(text: string, from = 0): MinutesRead | undefined {
  return firstAnswer(text, TIME_START, (found) => timeAt(text, found.index, from));
}

function timeAt(text: string, at: number, from: number): MinutesRead | undefined {
  const night = matchAt(/overnight/iuy, text, at);
  if (night) return timeRead(from + at, night[0].length, OVERNIGHT);
  const first = timeNumber(text, at);
  if (first === undefined) return undefined;
  const own = matchAt(TIME_UNIT, text, first.to);
  const link = matchAt(LINK, text, own ? first.to + own[0].length : first.to);
  const start = (own ? first.to + own[0].length : first.to) + (link?.[0].length ?? 0);
  const second = link ? timeNumber(text, start) : undefined;
  const unit = second === undefined ? own : matchAt(TIME_UNIT, text, second.to);
  const isRange = second !== undefined && unit !== undefined;
  const last = isRange ? unit : own;
  if (last === undefined) return undefined;
  const low = first.value * factorOf(own ?? last);
  const high = isRange ? second.value * factorOf(unit) : low;
  const to = (isRange ? second.to : first.to) + last[0].length;
  const more = isRange ? undefined : moreTime(text, to, last);
  return timeRead(from + at, (more?.to ?? to) - at, [
    low + (more?.add ?? 0),
    high + (more?.add ?? 0),
  ]);
}

function timeRead(from: number, length: number, [low, high]: readonly [number, number]) {
  if (!(low <= high) || MOST_MINUTES < high) return undefined;
  return { span: { from, to: from + length }, low: minutes(low), high: minutes(high) };
}

function timeNumber(text: string, at: number) {
  const tens = matchAt(/(fifteen|twenty|thirty|forty)(?!\p{L})/iuy, text, at);
  return tens
    ? { value: TENS[tens[1]!.toLowerCase()]!, to: at + tens[0].length }
    : numberAt(text, at);
}

const factorOf = (unit: RegExpExecArray) =>
  unit[1] === undefined ? (unit[2] === undefined ? 1 / 60 : 60) : 1;

/** "1 hour 20 minutes", "an hour and a half". */
function moreTime(text: string, to: number, unit: RegExpExecArray) {
  if (unit[2] === undefined) return undefined;
  const half = matchAt(/ and an? (half|quarter)(?!\p{L})/iuy, text, to);
  if (half) return { add: /half/i.test(half[1]!) ? 30 : 15, to: to + half[0].length };
  const gap = matchAt(/,? (?:and )?/iuy, text, to);
  const number = gap ? numberAt(text, to + gap[0].length) : undefined;
  const next = number ? matchAt(TIME_UNIT, text, number.to) : undefined;
  return number === undefined || next?.[1] === undefined
    ? undefined
    : { add: number.value, to: number.to + next[0].length };
}

// --- Sizes ------------------------------------------------------------------------------------------

const OVEN_SIZE =
  /(?:#|no\.? ?)?\b(\d{1,2})(?: ?-? ?(inch|inches|in\.?|cm)\b\.?|(["”″]))?,? ?-?(?:(?:deep|shallow|regular|camp|cast|iron|dutch|black|covered|lidded|big|round) ?){0,3}(ovens?|pots?|kettles?)\b/giu;
const PAN_SIZE = /\b(\d{1,2}) ?(?:x|×|by) ?(\d{1,2})(?: ?-? ?(?:inch|in\.?|"))?(?: ?x ?\d)?/giu;
/** Sides of a kitchen pan and the camp oven of about its floor; common practice, no source. */
const PANS: readonly (readonly [number, number, number])[] = [
  [8, 8, 10],
  [9, 9, 10],
  [7, 11, 10],
  [9, 13, 12],
  [10, 15, 14],
];

export function ovenSizeIn(text: string, from = 0): SizeRead | undefined {
  const oven = firstAnswer(text, OVEN_SIZE, (found) => {
    const number = Number(found[1]);
    const isCentimetres = found[2]?.toLowerCase() === 'cm';
    const inches = isCentimetres ? number / 2.54 : number;
    if (inches < 7.5 || 17 < inches) return undefined;
    const diameter = metres(isCentimetres ? number / 100 : fromUnit(number, 'inch'));
    return { span: spanOf(found, from), diameter, isPan: false };
  });
  return (
    oven ??
    firstAnswer(text, PAN_SIZE, (found) => {
      const sides = [Number(found[1]), Number(found[2])].toSorted((one, other) => one - other);
      const pan = PANS.find(([short, long]) => short === sides[0] && long === sides[1]);
      return pan === undefined
        ? undefined
        : { span: spanOf(found, from), diameter: fromUnit(pan[2], 'inch'), isPan: true };
    })
  );
}

const spanOf = (found: RegExpExecArray, from: number): Span => ({
  from: from + found.index,
  to: from + found.index + found[0].length,
});

const THICK = /(?<![\d/.,])(?=[\d½¼¾⅓⅔]|(?:half|three|a quarter|one)\b)/giu;
const THICK_UNIT =
  / ?-? ?(?:(?:of )?an? )?(inch(?:es)?|in\.?|["”″]|cm|mm)[ -]?(?:thick|thickness|high|deep)\b/iuy;

/** "Pat 3/4 in": what is rolled is rolled to a thickness, unless it is a round or a square. */
const ROLLED = /\b(?:pat|roll(?:ed)?|press|flatten)\b(?! into)[^.,;]{0,25}$/iu;
const ROLLED_UNIT =
  / ?-? ?(?:(?:of )?an? )?(inch(?:es)?|in\.?|["”″]|cm|mm)(?![\p{L}])(?![ -]?(?:round|circle|square|disc|across|wide|diameter|log|rope|x\b|by\b|in dia))/iuy;

/** "Roll out 1/2 inch thick". */
export function thicknessIn(text: string): Metres | undefined {
  return firstAnswer(text, THICK, (found) => {
    const number = numberAt(text, found.index);
    const isRolled = ROLLED.test(text.slice(Math.max(0, found.index - 40), found.index));
    const pattern = isRolled ? ROLLED_UNIT : THICK_UNIT;
    const unit = number ? matchAt(pattern, text, number.to) : undefined;
    if (number === undefined || !unit) return undefined;
    const name = unit[1]!.toLowerCase();
    const each = name === 'cm' ? 0.01 : name === 'mm' ? 0.001 : fromUnit(1, 'inch');
    const thick = number.value * each;
    return 0.002 <= thick && thick <= 0.2 ? metres(thick) : undefined;
  });
}
