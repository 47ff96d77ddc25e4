// Sentences of work cut into clauses that are one piece of work each: a rest behind a "let" is no
// work of the hands, and a shaping behind a rise is no part of it.
// Sources: the words are common practice, no source.

import type { Span } from '../quantity/index.ts';
import { minutesIn } from './text-facts.ts';
import { workIn } from './text-words.ts';

const MOST_CLAUSES = 50;

/** At full stops, and where one sentence goes on to a rise or into the oven. */
const END =
  /[.!?;](?=\s+["'“(]?\p{Lu})|,(?= (?:and )?then )|,(?= (?:and )?(?:let|leave) (?:it |them )?(?:rise|rest|prove|proof))|,(?= (?:and )?(?:bake|simmer|roast)\b)| (?=and (?:bake|simmer|roast)\b)/gu;
const JOIN = /(?:[,;:.]|\s[-–—])\s+(?:and then |then |and )?|\s(?:and then|then|and)\s/giu;

const WAIT_BEGINS =
  /^(?:(?:let|leave|allow|set|put)\b.{0,40}?\b(?:rests?|rise|proofs?|proved?|stand|sit|double|cool|soak|ferment|aside|overnight|by the fire|in (?:a|the) (?:warm place|cold|cool place|fridge|cooler))\b|(?:the |a |its )?(?:first|second|final|bulk|last) (?:rise|proof|proving|ferment(?:ation)?)\b|(?:rise|prove|proof|ferment|rest|stand|soak|chill|cool|fridge|refrigerate|retard)(?: again| it| them)?(?: (?:for|until|till|about|in|at|by|overnight|\d+|an?|one|two|half|another|covered|warm)\b|$|[,.]))/iu;
const SHAPE_BEGINS =
  /^(?:shape|form|divide|mould|mold|roll (?:it |them |the dough )?(?:out|into)|make (?:it |them )?into|cut (?:it |the dough )?into)\b/iu;
const COOK_BEGINS = /^(?:bake|simmer|roast|done in)\b(?! (?:sheet|powder|soda|pan))/iu;
/** "Cover and let rise" is one piece of work, and so is "watch and let rest". */
const NO_WORK_YET = /^\s*(?:and |then )?(?:cover|watch|check|wait)\b/iu;
const LASTS = /\d|\bhour|\bminute|\bovernight|\bdoubled?\b/iu;

/** The clauses of a piece of text, in order; together they are the whole of it. */
export function clausesOf(text: string, { from, to }: Span): readonly Span[] {
  const raw = text.slice(from, to);
  const cuts = new Set([...raw.matchAll(END)].map((found) => found.index + 1));
  let start = 0;
  for (const found of raw.matchAll(JOIN)) {
    const next = found.index + found[0].length;
    for (const cut of cuts) if (start < cut && cut <= next) start = cut;
    if (MOST_CLAUSES <= cuts.size) break;
    const ahead = raw.slice(next, next + 120);
    const isStop = found[0].startsWith('.') && isSentence(raw.slice(0, found.index + 1), ahead);
    if (!isStop && !isCut(raw.slice(start, found.index), ahead)) continue;
    cuts.add(found.index + 1);
    start = next;
  }
  const sorted = [...cuts].toSorted((one, other) => one - other).slice(0, MOST_CLAUSES);
  const ends = [...sorted.filter((cut) => 0 < cut && cut < raw.length), raw.length];
  return ends.map((end, index) => ({
    from: from + (index === 0 ? 0 : ends[index - 1]!),
    to: from + end,
  }));
}

/** A terse hand begins its sentences small: "add milk. pat flat. 450 12 min". */
const isSentence = (before: string, next: string) =>
  !SHORTENED.test(before.slice(-8)) && (/^\d{2}/.test(next) || workIn(next)?.isOrder === true);
const SHORTENED = /\b(?:tsps?|tbsps?|oz|lbs?|min|mins|hrs?|approx|pkg|deg|c|t|in|qt|pt)\.$/iu;

function isCut(before: string, next: string): boolean {
  const said = before.replace(LEAD, '');
  if (said.replace(/[\W_]+/gu, '').length < 3) return false;
  const wasWait = WAIT_BEGINS.test(said);
  if (WAIT_BEGINS.test(next)) return (!wasWait || LASTS.test(said)) && !NO_WORK_YET.test(said);
  if (COOK_BEGINS.test(next)) return true;
  const isOrder = workIn(next)?.isOrder === true;
  if (wasWait && isOrder && LASTS.test(said)) return true;
  return (SHAPE_BEGINS.test(next) && isWork(said)) || (isOrder && isOwnWork(said, next));
}

/** Two verbs of two kinds, one of them with its minutes: these belong to the verb they stand by. */
function isOwnWork(said: string, next: string): boolean {
  const [first, second] = [workIn(said), workIn(next)];
  const own = /^[^.;:!?]*/u.exec(next)![0].split(CLAUSE_ENDS)[0]!;
  const isTimed = minutesIn(said) !== undefined || minutesIn(own) !== undefined;
  const isKnown = first?.isOrder === true && first.kind !== undefined;
  return isTimed && isKnown && second?.kind !== undefined && first.kind !== second.kind;
}
const CLAUSE_ENDS = /, | and then | then | and /iu;

const isWork = (said: string) => !SHAPE_BEGINS.test(said) && workIn(said) !== undefined;

const LEAD =
  /^[\s,;:#*>_•·–—+.-]*(?:step )?(?:\(?\d{1,2}[.):](?=\s+\p{L}))?\s*(?:and )?(?:then )?/iu;

/** A clause as a cook reads it: no number at its head, a capital, no comma at its end. */
export function clauseSaid(raw: string): string {
  const said = raw
    .replace(LEAD, '')
    .replace(/\s+/gu, ' ')
    .replace(/[\s,;:–—-]+(?:and|then)?$/iu, '')
    .trim();
  return said.slice(0, 1).toUpperCase() + said.slice(1);
}
