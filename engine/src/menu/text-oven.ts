// How the writer of a recipe baked it: how many coals lay where, and how warm its middle was when it
// was done. Kept as the writer's own way, to stand beside ours; a count without an oven, a wind and
// an air is no plan.
// Sources: the words are common practice, no source.

import { fromCelsius, fromFahrenheit, type Kelvin, type Span } from '../quantity/index.ts';
import type { WriterCoals } from './recipe.ts';

export interface CoalsRead {
  readonly span: Span;
  readonly coals: WriterCoals;
}

export interface CoreRead {
  readonly span: Span;
  readonly kelvin: Kelvin;
}

// --- Coals --------------------------------------------------------------------------------------------

const MOST_COALS = 99;
const MOST_LOOKS = 40;
const COUNT = String.raw`(?<![\d.,/½¼¾])(\d{1,2})(?: ?(?:-|–|to) ?(\d{1,2}))?`;
const COAL = String.raw`(?:coals?|briquettes?|briquets?|briqs?\.?|charcoals?|embers?)`;
const COAL_WORD = new RegExp(String.raw`\b${COAL}(?!\p{L})`, 'iu');
const NOT_COUNT = String.raw`(?! ?(?:°|º|deg|[FC]\b|min|hours?|hrs?|-?inch|in\.|"|cm|%|of an|slices|wedges|pieces of))`;
const LEAD = '(?:go |goes |put |placed |set |on |over |for |in |at |up |of them |the |its |each )*';
const TOP = String.raw`(?:top|lid|above|over|cover)(?!\p{L})`;
const BOTTOM = String.raw`(?:below|beneath|underneath|under|bottom|base|floor)(?!\p{L})`;

const ahead = (side: string) =>
  new RegExp(
    `${COUNT}${NOT_COUNT} ?(?:hot |lit |live |good |red |burning )*${COAL}? ?${LEAD}${side}`,
    'giu',
  );
const behind = (side: string) =>
  new RegExp(String.raw`\b${side} ?(?:coals? ?)?[:=–-]? ?${COUNT}${NOT_COUNT}(?!\p{L})`, 'giu');

const SIDES = {
  above: [ahead(TOP), behind(TOP)],
  below: [ahead(BOTTOM), behind(BOTTOM)],
} as const;
const PAIR = new RegExp(
  String.raw`(?<![\d.,/])(\d{1,2}) ?(?:/|\+|over|and) ?(\d{1,2}) ?\(?(?:${COAL} ?)?\(?(?:top|lid|above) ?(?:/|and|over|&) ?(?:bottom|below|base|floor|under)`,
  'iu',
);
const SHARE = new RegExp(
  String.raw`(?<![\d.,/])(1/2|2/3|3/4|3/5|half|two[- ]thirds|three[- ]quarters)\b(?: of)?(?: the| all| your)?(?: ${COAL})? ?${LEAD}${TOP}`,
  'iu',
);
const SHARES: Readonly<Record<string, number>> = {
  '1/2': 1 / 2,
  half: 1 / 2,
  '2/3': 2 / 3,
  'two thirds': 2 / 3,
  '3/4': 3 / 4,
  'three quarters': 3 / 4,
  '3/5': 3 / 5,
};
const ALONE = new RegExp(
  String.raw`${COUNT} ?(?:hot |lit |live |good |red |burning )*${COAL}(?!\p{L})`,
  'iu',
);

/** "17 coals on top, 8 below", "Top: 17 Bottom: 8", "24 briquettes", "two thirds of the coals on the lid". */
export function coalsIn(text: string, from = 0): CoalsRead | undefined {
  const pair = PAIR.exec(text);
  if (pair) {
    return coalsRead(from, [pair], { above: Number(pair[1]), below: Number(pair[2]) });
  }
  const hasWord = COAL_WORD.test(text);
  const above = countOn(text, SIDES.above, hasWord);
  const below = countOn(text, SIDES.below, hasWord);
  const isSaid = hasWord || (above !== undefined && below !== undefined);
  const found = [above, below].filter((each) => each !== undefined);
  if (isSaid && 0 < found.length) {
    const coals = {
      ...(above === undefined ? {} : { above: middle(above) }),
      ...(below === undefined ? {} : { below: middle(below) }),
    };
    return coalsRead(from, found, coals);
  }
  if (!hasWord) return undefined;
  const share = SHARE.exec(text);
  if (share) {
    const aboveShare = SHARES[share[1]!.toLowerCase().replace('-', ' ')]!;
    return coalsRead(from, [share], { aboveShare });
  }
  const alone = ALONE.exec(text);
  return alone === null || middle(alone) < 1
    ? undefined
    : coalsRead(from, [alone], { total: middle(alone) });
}

/** "Top: 16 Bottom: 8": the count stands behind the word of its side. */
const LABELLED = /\b(?:top|lid|above|over|below|under|bottom|base) ?(?:coals? ?)?[:=] ?\d/iu;

/** The count nearest before or behind the word of a side; one that names both sides counts for its own. */
function countOn(text: string, [first, second]: readonly [RegExp, RegExp], hasWord: boolean) {
  const good = (pattern: RegExp) =>
    [...text.matchAll(pattern)].slice(0, MOST_LOOKS).find((found) => middle(found) <= MOST_COALS);
  if (LABELLED.test(text)) return good(second) ?? good(first);
  return (
    good(first) ??
    (hasWord || /\b(?:top|lid)\b.{0,20}\bbottom\b/iu.test(text) ? good(second) : undefined)
  );
}

const middle = (found: RegExpExecArray) =>
  Math.round((Number(found[1]) + Number(found[2] ?? found[1])) / 2);

function coalsRead(from: number, all: readonly RegExpExecArray[], coals: WriterCoals): CoalsRead {
  const starts = all.map(({ index }) => index);
  const ends = all.map((found) => found.index + found[0].length);
  return { span: { from: from + Math.min(...starts), to: from + Math.max(...ends) }, coals };
}

// --- Core ---------------------------------------------------------------------------------------------

const DEGREES = String.raw`(\d{2,3}) ?(?:°|º|degrees?|degs?\.?)? ?(fahrenheit|celsius|centigrade|[FC])?(?![\p{L}\d])`;
const INSIDE =
  '(?:inside|internal(?:ly)?|in the (?:very )?(?:middle|cent(?:er|re)|core|thickest)|at the (?:cent(?:er|re)|core)|core)';
const CORE_BEHIND = new RegExp(
  String.raw`(?<![\d.,/])${DEGREES},? ?(?:is )?\(?${INSIDE}(?!\p{L})`,
  'giu',
);
const CORE_AHEAD = new RegExp(
  String.raw`\b(?:inside|internal|core|middle|cent(?:er|re)|thermometer)\b(?: (?:temp(?:erature)?\.?|heat|of|the|loaf|bread|meat|is|at|to|reads?|reach(?:es)?|registers?|says|shows|hits|about|around|it|in))*[ :=]{1,3}${DEGREES}`,
  'giu',
);
/** Nothing is done below 45 °C, and nothing wet is hotter than boiling water. */
const COOLEST = 45;
const HOTTEST = 104;
/** A number without a letter: past it nothing that boils can be in Celsius. */
const SURELY_FAHRENHEIT = 105;

/** "until 200 F inside", "core 96 C", "internal temperature of 190". */
export function coreIn(text: string, from = 0): CoreRead | undefined {
  for (const pattern of [CORE_BEHIND, CORE_AHEAD]) {
    for (const found of [...text.matchAll(pattern)].slice(0, MOST_LOOKS)) {
      const kelvin = coreKelvin(found);
      if (kelvin === undefined) continue;
      const at = from + found.index;
      return { span: { from: at, to: at + found[0].length }, kelvin };
    }
  }
  return undefined;
}

function coreKelvin(found: RegExpExecArray): Kelvin | undefined {
  const degrees = Number(found[1]);
  const letter = found[2];
  const isFahrenheit = letter === undefined ? SURELY_FAHRENHEIT <= degrees : /^f/i.test(letter);
  const kelvin = isFahrenheit ? fromFahrenheit(degrees) : fromCelsius(degrees);
  const celsius = kelvin - 273.15;
  return COOLEST <= celsius && celsius <= HOTTEST ? kelvin : undefined;
}
