// The work of a pasted recipe as steps: kind by the verb, minutes where they are said, usual ones
// where not. What the engine times itself (into the oven, cooking, out of it) is there exactly once.
// Sources: usual minutes are ours, common practice.

import {
  fromCelsius,
  type Kelvin,
  type Metres,
  type Minutes,
  minutes,
  type Span,
} from '../quantity/index.ts';
import { waitsCold } from './cold-wait.ts';
import { isPot } from './heat-kind.ts';
import type { RecipeKind, RecipeStep, StepKind } from './recipe.ts';
import { clauseSaid, clausesOf } from './text-clauses.ts';
import { heatIn, type MinutesRead, minutesIn, thicknessIn, yieldIn } from './text-facts.ts';
import type { TextPiece } from './text-lines.ts';
import { coalsIn } from './text-oven.ts';
import { workIn } from './text-words.ts';
import { isNoRise, keptAtIn, withMixing, withRises } from './text-yeast.ts';

/** One sentence of work, before it has its place among the others. */
export interface StepRead {
  readonly span: Span;
  readonly kind: StepKind;
  readonly say: string;
  readonly minutes?: readonly [Minutes, Minutes];
}

const LONGEST_SAY = 600; // as in a camp file
const MOST_STEPS = 50;

/** Steps as they are told, in order; preheating is the coals' business and is left out. */
export function stepsRead(
  text: string,
  pieces: readonly TextPiece[],
  kind: RecipeKind,
): readonly StepRead[] {
  const all = pieces
    .filter(({ role }) => role === 'step')
    .flatMap(({ span }) => clausesOf(text, span))
    .flatMap((span) => stepOf(text, span, kind));
  return settled(all, kind).slice(0, MOST_STEPS);
}

function stepOf(text: string, span: Span, kind: RecipeKind): readonly StepRead[] {
  const say = clauseSaid(text.slice(span.from, span.to));
  if (say.replace(/[\W_]+/gu, '').length < 3) return [];
  const time = withMore(say, minutesIn(say));
  if (yieldIn(say) !== undefined && workIn(say) === undefined) return [];
  const found = kindOfStep(say, kind);
  if (found === 'heat') return [];
  const step = {
    span,
    kind: found,
    say: say.slice(0, LONGEST_SAY),
    ...(time === undefined ? {} : { minutes: [time.low, time.high] as const }),
  };
  return found === 'fold' ? folds(step) : [step];
}

/** "Lid on 30 min, lid off 15 min more": both. */
function withMore(say: string, first: MinutesRead | undefined) {
  const more = first && /\b(\d{1,2}) ?-?min(?:ute)?s? (?:more|longer)\b/iu.exec(say);
  if (!first || !more || more.index < first.span.to) return first;
  const add = Number(more[1]);
  return { low: minutes(first.low + add), high: minutes(first.high + add) };
}

const TIMES = /\b(\d|two|three|four|five|six) times\b[^.]{0,30}?\b(\d{1,3}) ?-?min(?:ute)?s?\b/iu;
const WORDS = ['', '', 'two', 'three', 'four', 'five', 'six'];

/** "Fold 3 times, 30 minutes apart" is three times the hands, with two waits between. */
function folds(step: StepRead): readonly StepRead[] {
  const found = TIMES.exec(step.say);
  if (!found) return [step];
  const times = Math.max(Number(found[1]) || 0, WORDS.indexOf(found[1]!.toLowerCase()));
  if (times < 2 || 8 < times) return [step];
  const apart = minutes(Number(found[2]));
  const { minutes: _, ...bare } = step;
  return Array.from({ length: times }, (_each, index) => [
    ...(index === 0
      ? []
      : [{ ...bare, kind: 'rest' as const, say: 'Let it lie.', minutes: [apart, apart] as const }]),
    { ...bare, say: `${step.say} (${index + 1} of ${times})` },
  ]).flat();
}

/** Whole turns of phrase before single verbs. */
const PHRASES: readonly (readonly [RegExp, StepKind])[] = [
  [/^(?:proof|wake|prove) (?:the |your )?yeast\b/iu, 'rest'],
  [/\b(?:cut|rub|work) (?:in\b|the (?:fat|lard|butter|shortening)\b|it in)|\bknead\b/iu, 'mix'],
  [
    /\b(?:let|leave|allow|until|to|and|set)\b[^.]{0,60}\b(?:rise|risen|double[ds]?|proof|proved?|puffy)\b|\b(?:first|second|final|bulk|last) (?:rise|proof|ferment)|^(?:rise|prove|proof|ferment|bulk)\b|\bovernight\b/iu,
    'rise',
  ],
  [/\b(?:bake|simmer|roast|stew|boil gently|braise)\b(?! (?:sheet|powder|soda|pan))/iu, 'cook'],
  [/^done in\b[^.]*\d/iu, 'cook'],
  [/^lid (?:on|off)\b[^.]*\d ?-?(?:min|m\b|h)/iu, 'cook'],
  [
    /\b(?:brown|sear|fry|saut[eé])\b(?!ed|ing| sugar)[^.]{0,40}\b(?:beef|meat|bacon|onion|pork|sausage|chicken|all sides|it|them)\b/iu,
    'brown',
  ],
  [
    /\b(?:let|leave|allow)\b[^.]{0,40}\b(?:rest|cool|stand|sit|soak)\b|^(?:rest|stand|cool|chill|soak)\b|\bsoak\b[^.]{0,40}\b(?:hours?|overnight|minutes)\b/iu,
    'rest',
  ],
  [/\bkeep (?:it |them )?(?:warm|hot)\b/iu, 'hold'],
  [/\bstir(?:ring)? (?:it |them |now and then|every|once|twice|often|occasionally)/iu, 'stir'],
  [/^(?:then )?(?:slash|score|dock)\b/iu, 'shape'],
  [/\b(?:take|lift|turn|tip|get) (?:it |them |the \p{L}+ )?out\b|\bremove from\b/iu, 'take-out'],
  [
    /\bcut (?:out|into|the)\b[^.]{0,30}\b(?:rounds?|biscuits?|squares|circles|dough|scones)\b|\b(?:roll|pat|press|shape|form|drop)\b[^.]{0,50}\b(?:dough|out|thick|rounds?|balls?|loaf|loaves|spoonfuls?|inch)\b/iu,
    'shape',
  ],
  [
    /\b(?:put|place|set|pour|lay|arrange|spread|spoon|drop|dump|turn|tip|scrape)\b[^.]{0,70}\b(?:in|into|on|over)\b[^.]{0,28}\b(?:oven|pot|pan|skillet|kettle)\b/iu,
    'load',
  ],
  [
    /\b(?:slice|cut) (?:and|it|into \d|in)\b[^.]{0,20}\b(?:serve|wedges|pieces|slices)\b|\bserve\b/iu,
    'dress',
  ],
];

function kindOfStep(say: string, recipe: RecipeKind): StepKind | 'heat' {
  const phrase = PHRASES.find(([pattern]) => pattern.test(say));
  const work = workIn(say)?.kind;
  if (work === 'heat' && phrase?.[1] !== 'cook') return 'heat';
  if (HEATS_POT.test(say)) return 'heat';
  if (phrase?.[1] === 'rise' && isNoRise(say)) return 'prepare';
  const isCoals = coalsIn(say) !== undefined && phrase?.[1] !== 'cook' && !WORKS_FIRST.test(say);
  const isTimed = minutesIn(say) !== undefined;
  if (isCoals && !isTimed) return 'heat';
  const isFire = phrase === undefined && (isCoals || heatIn(say, 'us') !== undefined) && isTimed;
  const isChilled = phrase === undefined && isTimed && waitsCold(say);
  const found = isFire ? 'cook' : isChilled ? 'rest' : (phrase?.[1] ?? work ?? 'prepare');
  const isRise = recipe === 'yeast-bread' && found === 'rest' && isLongStand(say);
  const kind = isRise ? 'rise' : found;
  return kind === 'shape' && isPot({ kind: recipe, method: '' }) ? 'prepare' : kind;
}

/** "Heat the pot w/ lid 30 min at 450 F" is the coals' business. */
const HEATS_POT =
  /^(?:pre-?)?heat (?:up )?(?:the |your |a )?(?:pot|oven|lid|kettle|camp|dutch|iron)\b/iu;
/** "Mix, drop by spoonfuls; hot lid (20 coals)": the work is not lost for the coals behind it. */
const WORKS_FIRST =
  /^(?:mix|stir|add|pour|drop|pat|roll|shape|knead|combine|spoon|spread|grease)\b/iu;

/** "Leave 12-18 h on the counter": a yeast dough that stands for hours rises. */
function isLongStand(say: string): boolean {
  const time = minutesIn(say);
  return time !== undefined && 60 <= time.low && /\b(?:leave|stand|sit)\b/iu.test(say);
}

// --- In their places ----------------------------------------------------------------------------------

/** One cooking, to which later ones are added; a later rise, or one behind shaping, is the second. */
function settled(all: readonly StepRead[], kind: RecipeKind): readonly StepRead[] {
  const isWet = isPot({ kind, method: '' });
  const cooks = all.filter((step) => step.kind === 'cook');
  const main = isWet ? cooks.at(-1) : cooks[0];
  const at = main === undefined ? -1 : all.indexOf(main);
  let rises = 0;
  return all.flatMap((step, index): readonly StepRead[] => {
    if (step.kind === 'rise') {
      if (kind !== 'yeast-bread') return [{ ...step, kind: 'rest' }];
      rises += 1;
      const isSecond = 1 < rises || all.slice(0, index).some((each) => each.kind === 'shape');
      // A shaped dough, or one that has risen, goes by the writer's clock in the cold: no doubling.
      if (isSecond && waitsCold(step.say)) return [{ ...step, kind: 'rest' }];
      return [isSecond ? { ...step, kind: 'second-rise' } : step];
    }
    if (step.kind === 'rest' && isProof(step, all.slice(0, index), kind)) {
      rises += 1;
      return [{ ...step, kind: 'second-rise' }];
    }
    if (index === at) return [cooks.slice(cooks.indexOf(step) + 1).reduce(joined, step)];
    if (step.kind !== 'cook') return [step];
    return at < index ? [] : [{ ...step, kind: isWet ? 'brown' : 'prepare' }];
  });
}

/** A shaped yeast dough that rests so long rises; ours. */
const LEAST_PROOF_MINUTES = 15;

const isProof = (step: StepRead, before: readonly StepRead[], kind: RecipeKind) =>
  kind === 'yeast-bread' &&
  LEAST_PROOF_MINUTES <= (step.minutes?.[1] ?? 0) &&
  !waitsCold(step.say) &&
  before.some((each) => each.kind === 'shape') &&
  !before.some((each) => each.kind === 'cook' || each.kind === 'take-out');

/** "Take the lid off and bake 10 minutes more" belongs to the one baking. */
function joined(one: StepRead, more: StepRead): StepRead {
  const [first, then] = [one.minutes, more.minutes];
  const time =
    first === undefined || then === undefined
      ? (first ?? then)
      : ([minutes(first[0] + then[0]), minutes(first[1] + then[1])] as const);
  return {
    ...one,
    say: `${one.say} ${more.say}`.slice(0, LONGEST_SAY),
    ...(time === undefined ? {} : { minutes: time }),
  };
}

const USUAL_MINUTES: Readonly<Record<StepKind, number>> = {
  weigh: 5,
  prepare: 8,
  mix: 6,
  fold: 3,
  rise: 60,
  shape: 8,
  'second-rise': 35,
  load: 3,
  brown: 10,
  cook: 40,
  stir: 2,
  'take-out': 3,
  rest: 10,
  cut: 2,
  dress: 3,
  hold: 5,
};

export const usualCookMinutes: Readonly<Record<RecipeKind, number>> = {
  'yeast-bread': 40,
  'quick-bread': 40,
  biscuit: 18,
  'corn-bread': 30,
  cobbler: 45,
  braise: 150,
  stew: 75,
  beans: 120,
  roast: 120,
  fruit: 40,
  'cold-dish': 0,
};

const HANDS_OFF: ReadonlySet<StepKind> = new Set(['rise', 'second-rise', 'cook', 'rest', 'hold']);
const AT_TABLE: ReadonlySet<StepKind> = new Set(['shape', 'fold']);

export interface StepsMade {
  readonly steps: readonly RecipeStep[];
  /** Steps that the text does not tell and that had to be put in. */
  readonly added: readonly StepKind[];
  readonly cookMinutes?: readonly [Minutes, Minutes];
  /** As the writer says them. */
  readonly firstRise?: readonly [Minutes, Minutes];
  readonly secondRise?: readonly [Minutes, Minutes];
  readonly thickness?: Metres;
}

/** Steps with ids, minutes and their order, as the timetable needs them. */
export function stepsFor(read: readonly StepRead[], kind: RecipeKind): StepsMade {
  const isCold = kind === 'cold-dish';
  const order = read.filter((step) => step.kind !== 'hold' || !isCold);
  const whole = isCold
    ? order.filter(({ kind: each }) => !OVEN_WORK.has(each))
    : withOven(withDough(order, kind), kind);
  const steps: RecipeStep[] = [];
  for (const step of whole.slice(0, MOST_STEPS)) steps.push(stepFor(step, kind, steps));
  const cook = read.find((step) => step.kind === 'cook')?.minutes;
  const isRolledUp = read.some((step) => ROLLED_UP.test(step.say));
  const thick = isRolledUp
    ? undefined
    : read.map((step) => thicknessIn(step.say)).find((each) => each !== undefined);
  return {
    steps,
    added: whole.filter((step: Ordered) => step.isAdded === true).map((step) => step.kind),
    ...(cook === undefined ? {} : { cookMinutes: cook }),
    ...(kind === 'yeast-bread' ? risesSaid(read) : {}),
    ...(thick === undefined ? {} : { thickness: thick }),
  };
}

/** Rolled out thin and rolled up again: the sheet's thickness is not that of what is baked. */
const ROLLED_UP = /\broll(?:ed)? (?:it |them |the dough |tightly )?up\b|\bjelly[- ]roll\b/iu;

const DOUGHS: ReadonlySet<RecipeKind> = new Set([
  'yeast-bread',
  'quick-bread',
  'biscuit',
  'corn-bread',
  'cobbler',
]);

/** What every dough needs before the oven, told or not. */
function withDough(read: readonly Ordered[], kind: RecipeKind): readonly Ordered[] {
  if (!DOUGHS.has(kind)) return read;
  const isYeast = kind === 'yeast-bread';
  const mixed = withMixing(
    read,
    isYeast ? (each) => (each === 'mix' ? kneaded : ours(each)) : ours,
  );
  const isChilled = mixed.some(({ kind: each, say }) => RESTS.has(each) && waitsCold(say));
  const second = (each: StepKind) => (isChilled && each === 'second-rise' ? warmed : ours(each));
  return isYeast ? withRises(mixed, second) : mixed;
}

/** The longest of each, in the writer's minutes. */
function risesSaid(read: readonly StepRead[]): Pick<StepsMade, 'firstRise' | 'secondRise'> {
  const longest = (kind: StepKind) =>
    read
      .flatMap((step) => (step.kind === kind && step.minutes ? [step.minutes] : []))
      .toSorted((one, other) => other[1] - one[1])[0];
  const [first, second] = [longest('rise'), longest('second-rise')];
  return {
    ...(first === undefined ? {} : { firstRise: first }),
    ...(second === undefined ? {} : { secondRise: second }),
  };
}

const OVEN_WORK: ReadonlySet<StepKind> = new Set([
  'load',
  'brown',
  'cook',
  'take-out',
  'stir',
  'hold',
]);

interface Ordered extends StepRead {
  readonly isAdded?: true;
  /** Where we put the step in, we say where the dough stands. */
  readonly kept?: Kelvin;
}

/** Said by us where the text is silent. */
const OURS: Readonly<Partial<Record<StepKind, string>>> = {
  mix: 'Mix it.',
  rise: 'Cover it and let it double.',
  shape: 'Shape it.',
  'second-rise': 'Let it rise again, until a finger leaves its mark.',
  load: 'Into the oven, lid on.',
  cook: 'Cook until it is done.',
  'take-out': 'Take it off the coals.',
};

/** Into the oven, cooking, out of it: each once; what else is told keeps its place before or behind. */
function withOven(read: readonly StepRead[], kind: RecipeKind): readonly Ordered[] {
  const at = read.findIndex((step) => step.kind === 'cook');
  const before = at < 0 ? read.filter((step) => !BEHIND.has(step.kind)) : read.slice(0, at);
  const behind = at < 0 ? read.filter((step) => BEHIND.has(step.kind)) : read.slice(at + 1);
  const load = before.findLast((step) => step.kind === 'load') ?? ours('load');
  const browns = before.filter((step) => step.kind === 'brown');
  const others = before.filter((step) => step !== load && step.kind !== 'brown');
  const isLate = (step: StepRead) =>
    0 < browns.length && before.indexOf(browns[0]!) < before.indexOf(step);
  const work = others
    .filter((step) => !isLate(step))
    .map((step) => (NOT_BEFORE.has(step.kind) ? { ...step, kind: 'prepare' as const } : step));
  const cook = others.filter(isLate).reduceRight(saidFirst, at < 0 ? ours('cook') : read[at]!);
  const stir = isPot({ kind, method: '' })
    ? behind.find((step) => step.kind === 'stir')
    : undefined;
  const out = behind.find((step) => step.kind === 'take-out') ?? ours('take-out');
  const after = behind
    .filter((step) => step !== stir && step !== out)
    .map((step) => (AFTER.has(step.kind) ? step : { ...step, kind: 'dress' as const }));
  return [
    ...(0 < work.length + browns.length ? work : [ours('mix')]),
    load,
    ...browns,
    cook,
    ...(stir === undefined ? [] : [stir]),
    out,
    ...after,
  ];
}

/** What goes into the pot behind the browning is said where the cooking begins. */
const saidFirst = (cook: Ordered, step: StepRead): Ordered => ({
  ...cook,
  say: `${step.say} ${cook.say}`.slice(0, LONGEST_SAY),
});

const BEHIND: ReadonlySet<StepKind> = new Set(['take-out', 'cut', 'dress']);
const NOT_BEFORE: ReadonlySet<StepKind> = new Set([
  'load',
  'stir',
  'hold',
  'take-out',
  'cut',
  'dress',
]);
const AFTER: ReadonlySet<StepKind> = new Set(['rest', 'cut', 'dress']);

const ours = (kind: StepKind): Ordered => ({
  span: { from: 0, to: 0 },
  kind,
  say: OURS[kind] ?? '',
  isAdded: true,
});

const RESTS: ReadonlySet<StepKind> = new Set(['rise', 'rest']);

/** Behind a night in the cold the open air may take a day; in a box it is hours. Ours. */
const warmed: Ordered = {
  ...ours('second-rise'),
  say: 'Let it rise again in a closed box with a jar of hot water, until a finger leaves its mark.',
  kept: fromCelsius(27),
};

/** Mixed and kneaded by hand; common practice, no source. */
const kneaded: Ordered = {
  ...ours('mix'),
  say: 'Mix it and knead it until it is smooth.',
  minutes: [minutes(12), minutes(12)],
};

function stepFor(step: Ordered, kind: RecipeKind, before: readonly RecipeStep[]): RecipeStep {
  const usual = step.kind === 'cook' ? usualCookMinutes[kind] : USUAL_MINUTES[step.kind];
  const [low, high] = step.minutes ?? [usual, usual];
  const last = before.at(-1);
  return {
    id: idFor(step.kind, before),
    kind: step.kind,
    say: step.say,
    minutes: minutes(Math.round((low + high) / 2)),
    hands: HANDS_OFF.has(step.kind) ? 0 : 1,
    skill: 'steady',
    needsTable: AT_TABLE.has(step.kind),
    ...keptAt(step),
    after:
      last === undefined
        ? []
        : [{ step: lastFor(step.kind, before), least: minutes(leastFor(step.kind, before)) }],
  };
}

function keptAt({ kind, say, kept }: Ordered): Pick<RecipeStep, 'keptAt'> {
  if (kept !== undefined) return { keptAt: kept };
  const kelvin = kind === 'rise' || kind === 'second-rise' ? keptAtIn(say) : undefined;
  return kelvin === undefined ? {} : { keptAt: kelvin };
}

/** A pot is stirred once it simmers; ours. */
const STIR_AFTER_MINUTES = 20;
const leastFor = (kind: StepKind, before: readonly RecipeStep[]) =>
  kind === 'stir' && before.some((step) => step.kind === 'cook') ? STIR_AFTER_MINUTES : 0;

/** A stir waits for the pot to cook, not for it to be done; what follows it waits for the cooking. */
const lastFor = (kind: StepKind, before: readonly RecipeStep[]): string => {
  const cook = before.find((step) => step.kind === 'cook');
  const last = before.at(-1)!;
  if (kind === 'stir' && cook !== undefined)
    return before.findLast((step) => step !== cook && step.kind !== 'stir')!.id;
  return last.kind === 'stir' && cook !== undefined ? cook.id : last.id;
};

function idFor(kind: StepKind, before: readonly RecipeStep[]): string {
  const count = before.filter((step) => step.kind === kind).length;
  return count === 0 ? kind : `${kind}-${count + 1}`;
}
