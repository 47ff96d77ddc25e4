// Which food does a line of a recipe mean, in which form, and what else could it be? A word that
// means several foods shows its choices; a word that turns one food into another ("almond",
// "soup") makes the food unknown, which is safer than wheat for what is called almond.
// Sources: words by common practice, no source.

import choiceTable from '../../data/larder-choices.json' with { type: 'json' };
import type { Manner } from '../quantity/index.ts';
import type { Span } from '../quantity/written-amount.ts';
import { allFoods, anyFoodWithKey } from './all-foods.ts';
import type { Food } from './food.ts';
import { type FormsFound, formsIn } from './form.ts';
import { wordsOf } from './name.ts';
import { nearestFoods } from './nearest.ts';
import { isLink, type Word, wordsIn } from './words.ts';

export interface FoodSearch {
  /** Undefined where no name that we know stands there, or a word turns it into another food. */
  readonly food?: Food;
  /** The words that were looked for, as they stand in the line. */
  readonly name: string;
  /** Where the food's name stands; the whole place where it was not found. */
  readonly span: Span;
  readonly forms: FormsFound;
  /** Other foods that the word may mean; for an unknown food, those that come nearest. */
  readonly choices: readonly Food[];
  /** A second food named in the same line: "salt and pepper", "lard or butter". */
  readonly also: readonly Food[];
  /** Words of the food's own part that nobody understood. */
  readonly unread: readonly Word[];
}

export interface SearchOptions {
  readonly manner: Manner;
  /** It comes out of a can or jar, so that "black beans" are the cooked ones. */
  readonly isCanned?: boolean;
  /** The cook's own foods, found before the larder's. */
  readonly own?: readonly Food[];
  /** Leaves out what comes near to an unknown name: only whether it is known is asked. */
  readonly isQuick?: boolean;
}

/** The food named between two places of a line, with its form and its choices. */
export function findFood(text: string, place: Span, options: SearchOptions): FoodSearch {
  const words = wordsIn(text, place);
  const found = bestName(words, options);
  if (found === undefined) return unknown(text, place, words, options);
  const part = found.words[0]!.part;
  const forms = formsIn(
    words.filter((each) => !found.words.includes(each)),
    part,
  );
  const left = words.filter((each) => !found.words.includes(each) && !forms.words.includes(each));
  const own = left.filter((each) => each.part === part && !isLink(each));
  if (own.some((each) => turnsFood(each, found)) || isPieFilling(own) || isCreamed(own, found))
    return unknown(text, place, words, { ...options, near: found.food });
  const food = chosen(found, options.manner);
  return {
    food,
    name: text.slice(found.words[0]!.from, found.words.at(-1)!.to),
    span: { from: found.words[0]!.from, to: found.words.at(-1)!.to },
    forms,
    choices: otherFoods(found, food),
    also: secondFoods(text, words, found, options),
    unread: own.filter((each) => !isHarmless(each, food)),
  };
}

/** The larder's name; the writer's own word for what only shares a row: cumin, not "ground spice". */
export const calledIn = ({ food, name }: Pick<FoodSearch, 'food' | 'name'>): string =>
  food === undefined || food.isSeveral === true ? name.trim() : food.name;

/** The same with the row that it is weighed by: "cumin, as ground spice". */
export function readAsIn(search: Pick<FoodSearch, 'food' | 'name'>): string {
  const called = calledIn(search);
  const row = search.food?.name ?? called;
  return wordsOf(called).join(' ') === wordsOf(row).join(' ') ? row : `${called}, as ${row}`;
}

function unknown(
  text: string,
  place: Span,
  words: readonly Word[],
  { near, isQuick }: SearchOptions & { readonly near?: Food },
): FoodSearch {
  const part = words[0]?.part ?? 0;
  const own = words.filter((each) => each.part === part);
  const span = own.length === 0 ? place : { from: own[0]!.from, to: own.at(-1)!.to };
  const name = text.slice(span.from, span.to);
  const nearest = isQuick ? [] : nearestFoods(name).filter((food) => food.key !== near?.key);
  return {
    name,
    span,
    forms: formsIn(words, part),
    choices: near === undefined ? nearest : [near, ...nearest].slice(0, 3),
    also: [],
    unread: [],
  };
}

// --- Names ------------------------------------------------------------------------------------------

interface Name {
  readonly words: readonly string[];
  readonly food: Food;
}

interface NameFound {
  readonly food: Food;
  readonly name: string;
  readonly words: readonly Word[];
}

const namesOf = (all: readonly Food[]): readonly Name[] =>
  all.flatMap((food) =>
    [food.name, food.key.replaceAll('-', ' '), ...food.alsoCalled]
      .map((name) => ({ words: wordsOf(name), food }))
      .filter(({ words }) => 0 < words.length),
  );

const NAMES = namesOf(allFoods);
const PLAIN_NAMES: ReadonlySet<string> = new Set(NAMES.map(({ words }) => words.join(' ')));

function bestName(words: readonly Word[], options: SearchOptions): NameFound | undefined {
  const known = new Set(words.map(({ word }) => word));
  if (options.isCanned) known.add('canned');
  const own = namesOf(options.own ?? []);
  let best: { readonly found: NameFound; readonly score: number } | undefined;
  for (const name of [...own, ...NAMES]) {
    if (!name.words.every((word) => known.has(word) || canBeLeft(word, name))) continue;
    const at = placesOf(name, words, options.isCanned === true);
    if (at === undefined) continue;
    const score = scoreOf(name, at, own.includes(name));
    if (best !== undefined && score <= best.score) continue;
    best = { found: { food: name.food, name: name.words.join(' '), words: at }, score };
  }
  return best?.found;
}

/** "Of" and "with" inside a name need not be written. */
const canBeLeft = (word: string, { words }: Name) =>
  2 < words.length && (word === 'of' || word === 'with' || word === 'and');

/** More words first, then in one piece, then earlier in the line. */
function scoreOf(name: Name, at: readonly Word[], isOwn: boolean): number {
  const inOnePiece = at.every((each, index) => index === 0 || at[index - 1]!.to + 2 >= each.from);
  const early = 1 - Math.min(0.9, at[0]!.from / 500);
  const { part } = at[0]!;
  return (
    name.words.length * 10 + (inOnePiece ? 3 : 0) + early + (isOwn ? 5 : 0) - 12 * Math.min(2, part)
  );
}

/** Where a name's words stand: side by side, else strewn over the line. What the can says is said. */
function placesOf(name: Name, words: readonly Word[], isCanned: boolean) {
  const asked = name.words.filter((word) => !(isCanned && word === 'canned'));
  const run = runOf(asked, words);
  if (run !== undefined) return run;
  const needed = asked.filter((word) => !canBeLeft(word, name));
  if (new Set(needed).size < 2) return undefined;
  const found = needed.map((word) => words.find((each) => each.word === word));
  if (!found.every((each) => each !== undefined)) return undefined;
  const sorted = found.toSorted((one, other) => one.from - other.from);
  return isTogether(sorted, words) ? sorted : undefined;
}

/**
 * "Milk, dry" and "dry milk, instant" name one food; "milk to the dry things", "milk, or water if
 * dry" and "milk, dry weather takes more" do not: no "or" between, and the last part says no more.
 */
function isTogether(found: readonly Word[], words: readonly Word[]): boolean {
  const [first, last] = [found[0]!, found.at(-1)!];
  const between = words.filter((each) => first.from < each.from && each.from < last.from);
  if (between.some(isLink) || 1 < last.part - first.part) return false;
  if (last.part === first.part) return true;
  const rest = words.filter((each) => last.from < each.from && each.part === last.part);
  return rest.every((each) => isLink(each) || HARMLESS.has(each.word) || /^\d+$/.test(each.word));
}

function runOf(asked: readonly string[], words: readonly Word[]): readonly Word[] | undefined {
  const crosses = asked.some((word) => LINKED.has(word));
  const first = words.findIndex((start, at) =>
    asked.every((word, index) => {
      const each = words[at + index];
      return each?.word === word && (crosses || each.part === start.part);
    }),
  );
  return first < 0 || asked.length === 0 ? undefined : words.slice(first, first + asked.length);
}

const LINKED: ReadonlySet<string> = new Set(['and', 'with', 'in', 'for']);

// --- Choices ----------------------------------------------------------------------------------------

interface ChoiceRow {
  readonly word: string;
  readonly usual: string;
  readonly british?: string;
  readonly others: readonly string[];
}

const CHOICES: ReadonlyMap<string, ChoiceRow> = new Map(
  (choiceTable.rows as readonly ChoiceRow[]).map((row) => [wordsOf(row.word).join(' '), row]),
);

function chosen({ name, food }: NameFound, manner: Manner): Food {
  const row = CHOICES.get(name);
  const key = manner === 'us' ? row?.usual : (row?.british ?? row?.usual);
  return (key === undefined ? undefined : anyFoodWithKey(key)) ?? food;
}

function otherFoods({ name }: NameFound, food: Food): readonly Food[] {
  const row = CHOICES.get(name);
  if (row === undefined) return [];
  return [row.usual, ...row.others].flatMap((key) => {
    const other = anyFoodWithKey(key);
    return other === undefined || other.key === food.key ? [] : [other];
  });
}

/** Behind "or", "and" or "plus": a second food, by its own name. */
const SECOND_LINKS: ReadonlySet<string> = new Set(['or', 'and', 'plus']);

function secondFoods(
  text: string,
  words: readonly Word[],
  found: NameFound,
  options: SearchOptions,
) {
  const end = found.words.at(-1)!.to;
  const next = words.find((each) => end <= each.from);
  const isAmpersand = next !== undefined && /^ ?& ?$/u.test(text.slice(end, next.from));
  const link = isAmpersand ? next : words.find((each) => isLink(each) && end <= each.from);
  if (link === undefined || !(isAmpersand || SECOND_LINKS.has(link.word))) return [];
  const from = isAmpersand ? link.from : link.to;
  const rest = words.filter((each) => from <= each.from && each.part === link.part);
  const second = bestName(rest, { manner: options.manner });
  return second === undefined || second.food.key === found.food.key
    ? []
    : [chosen(second, options.manner)];
}

// --- Words that matter, and words that don't -----------------------------------------------------------

/** Behind or before a food's name these make another food of it. Common practice, no source. */
const TURNS: ReadonlySet<string> = new Set(
  (
    'vegan plant imitation substitute replacer alternative flavored flavoured flavoring flavouring ' +
    'soup sauce noodle cracker bread cake mix seasoning dressing spread crust paste vinegar wrap ' +
    'tortilla bun roll filling cookie biscuit pudding cereal bar candy liqueur essence syrup wine ' +
    'almond coconut cashew hemp soy soya oat rice pea hazelnut peanut chickpea lupin banana pumpkin ' +
    'apple cocoa walnut pecan sesame sunflower quinoa teff sorghum tapioca cassava amaranth millet'
  ).split(' '),
);

/** A word beside the name that is a food of its own or makes another food of it. */
function turnsFood(each: Word, { words, food }: NameFound): boolean {
  const isBeside = words.some(
    (one) => Math.abs(one.from - each.to) <= 2 || Math.abs(each.from - one.to) <= 2,
  );
  if (!isBeside || HARMLESS.has(each.word)) return false;
  if (wordsOfFood(food).includes(each.word)) return false;
  return TURNS.has(each.word) || PLAIN_NAMES.has(each.word);
}

/** "Blueberry pie filling" is no blueberries: starch, sugar and water make the most of it. */
const isPieFilling = (own: readonly Word[]): boolean =>
  own.some(({ word }, at) => word === 'pie' && own[at + 1]?.word === 'filling');

/** Creamed corn is no drained sweetcorn: its liquid and starch are in the tin. */
const isCreamed = (own: readonly Word[], { food }: NameFound): boolean =>
  food.key.startsWith('corn-') && own.some(({ word }) => word === 'creamed' || word === 'cream');

const isHarmless = ({ word }: Word, food: Food) =>
  HARMLESS.has(word) || /^\d+$/.test(word) || wordsOfFood(food).includes(word);

const wordsOfFood = ({ name, alsoCalled }: Food) => [name, ...alsoCalled].flatMap(wordsOf);

/** Said of a food without changing what it is or weighs. */
const HARMLESS: ReadonlySet<string> = new Set(
  (
    'a an the of or and some good best quality fresh freshly ripe firm tart sweet sour organic local ' +
    'natural pure real raw dry dried fine finely coarse coarsely thin thinly thick thickly roughly ' +
    'lightly firmly well big little extra more plenty about each any your favorite favourite my our ' +
    'all purpose plain regular ordinary common clean cut up torn deep new old young lean fat boneless ' +
    'bone trimmed cored pitted seeded stoned unpeeled washed scrubbed toasted roasted smoked cured ' +
    'salted unsalted unsweetened sweetened enriched bleached unbleached white yellow brown red green ' +
    'black golden dark light low full reduced free non gluten sodium de la el con para mas very ' +
    'piece size sized bite lb inch if needed as optional taste bought home homemade store camp ' +
    'instant active rapid quick fast acting double single strength stone milled strong canned tinned ' +
    'bottled powdered liquid evaporated tap clear hard kosher table level heaping measured total ' +
    'certified labelled labeled unflavored unflavoured long short grain medium head can tin packet ' +
    'bag jar package bunch clove stalk rib sprig egg-sized handful nice plump tender baby garden ' +
    'waxy floury mealy baking cooking eating fatty streaky thawed rendered leaf ground half prepared'
  ).split(' '),
);
