// Words by which a recipe's lines are told apart: headings, groups, and the verbs that begin work.
// Common practice, no source.

import type { StepKind } from './recipe.ts';

export type Section = 'start' | 'ingredients' | 'method' | 'notes';

const HEADINGS: readonly (readonly [Section, RegExp])[] = [
  [
    'ingredients',
    /^(?:the )?(?:ingredients?|ingredientes|(?:\p{L}+ ?\/ ?)ingredients?|ingr\.?|you(?:['’]ll| will)? need|what you need|what goes in|shopping|stuff|things)(?: (?:list|needed|for \d+))?(?=\s*(?::|$| -))/iu,
  ],
  [
    'method',
    /^(?:the )?(?:method|directions?|instructions?|preparation|procedure|steps?|how to(?: make(?: it)?)?|to make|what to do|modo|process|at camp|in camp|making it)(?=\s*(?::|$| -))/iu,
  ],
  ['notes', /^(?:notes?|tips?|hints?|variations?|comments?|source|nota|n\.?b\.?)(?=\s*(?::|$))/iu],
];

export interface HeadingFound {
  readonly section: Section;
  readonly length: number;
}

/** A heading at the head of a line; what stands behind its colon belongs to the section. */
export function headingAt(line: string): HeadingFound | undefined {
  for (const [section, pattern] of HEADINGS) {
    const found = pattern.exec(line);
    if (found) {
      const colon = /^\s*[:-]?\s*/u.exec(line.slice(found[0].length));
      return { section, length: found[0].length + (colon?.[0].length ?? 0) };
    }
  }
  return undefined;
}

/** Groups that are no dough; the engine knows them by their word in brackets. */
const GROUP =
  /^(?:for (?:the )?|the )?(dough|batter|bread|biscuits?|crust|base|cake|dumplings?|topping|top|crumble|crumbs|streusel|filling|fruit|sauce|gravy|stew|pot|glaze|icing|frosting|marinade|rub|sponge|starter|dry(?: mix| things)?|wet|to finish|to serve|garnish)(?: (?:ingredients|mix))?\s*:?\s*$/iu;
const LEAD =
  /^(?:for (?:the )?)?(dough|batter|bread|biscuits?|crust|topping|filling|fruit|sauce|dumplings?|glaze|crumble|sponge|starter)\s*:\s*/iu;

export type Group = 'dough' | 'topping' | 'filling';

const GROUPS: Readonly<Record<string, Group>> = {
  fruit: 'filling',
  filling: 'filling',
  sauce: 'filling',
  gravy: 'filling',
  stew: 'filling',
  pot: 'filling',
  glaze: 'filling',
  icing: 'filling',
  frosting: 'filling',
  marinade: 'filling',
  rub: 'filling',
  garnish: 'filling',
  topping: 'topping',
  top: 'topping',
  crumble: 'topping',
  crumbs: 'topping',
  streusel: 'topping',
};

/** A line that begins a group of ingredients: "For the topping:". */
export function groupAt(
  line: string,
): { readonly group: Group; readonly length: number } | undefined {
  const alone = GROUP.exec(line);
  const found = alone ?? LEAD.exec(line);
  if (!found) return undefined;
  if (alone && !/:|^for /i.test(line) && /^(?:bread|cake|stew|pot|fruit|biscuits?)$/i.test(line)) {
    return undefined;
  }
  return { group: GROUPS[found[1]!.toLowerCase()] ?? 'dough', length: found[0].length };
}

// --- Verbs ------------------------------------------------------------------------------------------

/** Verbs by the work they begin; the first of them in a sentence tells its kind. */
const VERBS: Readonly<Record<StepKind | 'heat', string>> = {
  heat: 'preheat pre-heat light start',
  weigh: 'weigh measure sift',
  prepare:
    'chop peel dice mince slice core pit drain rinse soak wash trim grate shred crack melt dissolve warm scald grease butter oil line cut prepare season salt marinate open heat get cube crumble soften sprinkle dust',
  mix: 'mix stir combine whisk beat cream knead rub blend add make work moisten pour incorporate bring toss crumb sieve mash put take use mezclar amasar toast',
  fold: 'fold stretch punch knock deflate',
  rise: 'rise proof prove raise ferment double',
  shape:
    'shape form roll pat divide drop spoon flatten press cut-out stamp braid twist spread turn-out pinch ball slash score prick dock brush glaze top scatter layer',
  'second-rise': '',
  load: 'place set lay arrange transfer return lower position',
  brown: 'brown sear fry saute sauté sweat render',
  cook: 'bake cook simmer boil roast stew braise hornear steam',
  stir: '',
  'take-out': 'remove take-out lift turn-out unmold unmould',
  rest: 'rest cool stand let leave allow autolyse fridge',
  cut: 'carve',
  dress: 'serve garnish dress eat enjoy ladle',
  hold: 'keep hold',
};

const KIND_OF: ReadonlyMap<string, StepKind | 'heat'> = new Map(
  Object.entries(VERBS).flatMap(([kind, words]) =>
    words
      .split(' ')
      .filter((word) => word !== '')
      .map((word) => [word, kind as StepKind | 'heat'] as const),
  ),
);

/** Words that begin a sentence of work without being its verb. */
const OPENERS: ReadonlySet<string> = new Set(
  (
    'then next first now finally meanwhile in on to with when once after while until using gradually slowly ' +
    'gently carefully lightly quickly thoroughly well and again just before as if it the at for from ' +
    'evening morning night day a an by you your cover repeat check continue reduce step dip give shake begin watch test turn ' +
    'dough bread mixture biscuits everything all both'
  ).split(' '),
);

const WORD = /[\p{L}-]+/gu;
const MOST_WORDS = 14;

/** Verbs that are foods as well: an order only where something follows that it is done to. */
const FOODS_TOO: ReadonlySet<string> = new Set([
  'salt',
  'butter',
  'oil',
  'cream',
  'roast',
  'stew',
  'top',
  'core',
  'toast',
  'grease',
  'dust',
  'mince',
  'ball',
  'slice',
  'mash',
  'rub',
  'blend',
  'double',
]);
const DONE_TO: ReadonlySet<string> = new Set(
  'the a an your it them each well together lightly generously both butter fat lard shortening in with until all'.split(
    ' ',
  ),
);

export interface WorkFound {
  /** Undefined where a sentence begins like work, but with no verb that we know. */
  readonly kind?: StepKind | 'heat';
  /** The verb stands first, as in an order to the cook. */
  readonly isOrder: boolean;
}

/** The work that a sentence tells, from its first known verb. */
export function workIn(sentence: string): WorkFound | undefined {
  const words = [...sentence.slice(0, 200).matchAll(WORD)].slice(0, MOST_WORDS);
  const first = words[0]?.[0].toLowerCase() ?? '';
  const known = words.find(([word]) => KIND_OF.has(word.toLowerCase()));
  const kind = known === undefined ? undefined : KIND_OF.get(known[0].toLowerCase());
  const second = words[1]?.[0].toLowerCase() ?? '';
  const isOrder = KIND_OF.has(first) && (!FOODS_TOO.has(first) || DONE_TO.has(second));
  if (!isOrder && !OPENERS.has(first)) return undefined;
  if (
    !isOrder &&
    kind === undefined &&
    !/^(?:cover|check|repeat|continue|turn|reduce)$/.test(first)
  ) {
    return undefined;
  }
  return { ...(kind === undefined ? {} : { kind }), isOrder };
}
