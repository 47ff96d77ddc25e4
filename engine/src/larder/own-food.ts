// A cook's own food from the label of its packet, per 100 g or per serving, checked for sense.
// Labels of the United States count fibre as carbohydrate and tell sodium; those of the European
// Union leave fibre out and tell salt. Sources: labelEnergy for 4, 9 and 4 kcal; labelRounding.

import type { Allergen } from '../camp/camp.ts';
import { type Notice, notice, type OrRefusal, type Refusal, refusal } from '../notice/notice.ts';
import { fromUnit } from '../quantity/convert.ts';
import { type Grams, ratio } from '../quantity/unit.ts';
import { anyFoodWithKey } from './all-foods.ts';
import { allAllergens, allergensNamed } from './allergens.ts';
import { findFood } from './find-food.ts';
import type { Food, FoodPart, Measure } from './food.ts';

/** What a label says, of so many grams. */
export interface FoodLabel {
  readonly key: string;
  readonly name: string;
  readonly part: FoodPart;
  readonly alsoCalled?: readonly string[];
  /** 100, or the grams of one serving. */
  readonly of: Grams;
  readonly manner: 'us' | 'eu';
  readonly energyKilocalories: number;
  readonly fatGrams: number;
  readonly carbohydrateGrams: number;
  readonly sugarGrams?: number;
  readonly fibreGrams?: number;
  readonly proteinGrams: number;
  /** Either of the two; salt is sodium times 2.5 on labels of the European Union. */
  readonly sodiumMilligrams?: number;
  readonly saltGrams?: number;
  /** Where it is known; else it is what the rest leaves over. */
  readonly waterGrams?: number;
  /** Grams of one measure. */
  readonly measures?: Readonly<Partial<Record<Measure, Grams>>>;
  /** Undefined where nobody has read the label for them. */
  readonly contains?: readonly Allergen[];
  readonly mayContain?: readonly Allergen[];
  /** The label was read: free of these, whatever the name sounds like. */
  readonly labelSaysFree?: readonly Allergen[];
}

export interface OwnFood {
  readonly food: Food;
  readonly notices: readonly Notice[];
}

const SODIUM_IN_TABLE_SALT = 38_758; // mg in 100 g, sr28 NDB 02047
const SALT_PER_SODIUM = 2.5; // labels of the European Union, labelEnergy
/** Each part is rounded on the label: so much may be over the whole; tuned on the rows of sr28. */
const SUM_SLACK_GRAMS = 3;
const MOST_KILOCALORIES = 910; // pure fat is 902, sr28 NDB 04002

/**
 * The food of a label, per gram, for formula and provisions.
 *
 * @refuses LARDER_OWN_IMPOSSIBLE — a number below nothing, or more than the whole
 * @refuses LARDER_OWN_SUM — parts that add up to more than the whole
 * @notice  LARDER_OWN_ENERGY — further than 20 % and the label's rounding from 4, 9 and 4 kcal/g
 * @notice  LARDER_OWN_WATER — taken as the rest
 * @notice  LARDER_OWN_ALLERGENS_UNSAID, LARDER_OWN_ALLERGEN_LIKELY — a doubt is never left out
 * @source  labelEnergy (grade D, from memory)
 */
export function foodFromLabel(label: FoodLabel): OrRefusal<OwnFood> {
  const wrong = impossible(label);
  if (wrong !== undefined) return wrong;
  const per = 100 / label.of;
  const parts = partsOf(label, per);
  const sum = parts.fat + parts.carbohydrate + parts.fibre + parts.protein + parts.salt;
  const whole = sum + (parts.water ?? 0);
  const slack = SUM_SLACK_GRAMS * Math.max(1, per / 4);
  if (100 + slack < whole) {
    return refusal('LARDER_OWN_SUM', [`foods.${label.key}`], aboutOf(label), { sumGrams: whole });
  }
  const water = parts.water ?? Math.max(0, 100 - sum);
  const words = allergenWords(label);
  return {
    food: {
      key: label.key,
      name: label.name,
      alsoCalled: label.alsoCalled ?? [],
      part: label.part,
      measures: label.measures ?? {},
      water: ratio(water / 100),
      fat: ratio(parts.fat / 100),
      salt: ratio(parts.salt / 100),
      sugar: ratio(parts.sugar / 100),
      protein: ratio(parts.protein / 100),
      energyJoules: fromUnit((label.energyKilocalories * per) / 100, 'kilocalorie'),
      allergens: words.allergens,
      checkLabel: words.checkLabel,
      source: "the cook's own label",
    },
    notices: [
      ...energyNotices(label, parts),
      ...(parts.water === undefined
        ? [notice('LARDER_OWN_WATER', 'note', aboutOf(label), { waterGrams: water })]
        : []),
      ...words.notices,
    ],
  };
}

const aboutOf = ({ name }: FoodLabel) => ({ ingredient: name });

// --- Numbers ----------------------------------------------------------------------------------------

function impossible(label: FoodLabel): Refusal | undefined {
  const { of } = label;
  const fields: readonly (readonly [string, number | undefined, number])[] = [
    ['serving', 0 < of ? of : -1, 100_000],
    ['energy', label.energyKilocalories, (MOST_KILOCALORIES * of) / 100 + 10],
    ['fat', label.fatGrams, of],
    ['carbohydrate', label.carbohydrateGrams, of],
    ['sugar', label.sugarGrams, label.carbohydrateGrams + 0.5],
    ['fibre', label.fibreGrams, of],
    ['protein', label.proteinGrams, of],
    ['sodium', label.sodiumMilligrams, SODIUM_IN_TABLE_SALT * (of / 100) * 1.05],
    ['salt', label.saltGrams, of],
    ['water', label.waterGrams, of],
    ...Object.entries(label.measures ?? {}).map(
      ([measure, mass]) => [measure, 0 < mass ? mass : -1, 5000] as const,
    ),
  ];
  const found = fields.find(
    ([, value, most]) => value !== undefined && !(0 <= value && value <= most),
  );
  if (found === undefined) return undefined;
  const values = { field: found[0], found: String(found[1]) };
  return refusal('LARDER_OWN_IMPOSSIBLE', [`foods.${label.key}`], aboutOf(label), values);
}

interface Parts {
  readonly fat: number;
  /** Without fibre. */
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly sugar: number;
  readonly protein: number;
  readonly salt: number;
  readonly water: number | undefined;
}

/** In 100 g, fibre apart from carbohydrate on both kinds of label. */
function partsOf(label: FoodLabel, per: number): Parts {
  const fibre = (label.fibreGrams ?? 0) * per;
  const carbohydrate = label.carbohydrateGrams * per;
  const sodium = label.sodiumMilligrams ?? ((label.saltGrams ?? 0) * 1000) / SALT_PER_SODIUM;
  return {
    fat: label.fatGrams * per,
    carbohydrate: label.manner === 'us' ? Math.max(0, carbohydrate - fibre) : carbohydrate,
    fibre,
    sugar: (label.sugarGrams ?? 0) * per,
    protein: label.proteinGrams * per,
    salt: (sodium * per * 100) / SODIUM_IN_TABLE_SALT,
    water: label.waterGrams === undefined ? undefined : label.waterGrams * per,
  };
}

/** Fibre gives 2 kcal/g on European labels, and up to 4 on American ones: either will do. */
const FIBRE_KILOCALORIES = [0, 2, 4];
const ENERGY_TOLERANCE = 0.2; // labelRounding
/** Halves of the label's steps: fat 0.5 g, carbohydrate and protein 1 g, energy 10 kcal. */
const ROUNDING_KILOCALORIES = 0.25 * 9 + 0.5 * 4 + 0.5 * 4 + 5; // labelRounding

function energyNotices(label: FoodLabel, parts: Parts): readonly Notice[] {
  const per = 100 / label.of;
  const said = label.energyKilocalories * per;
  const reckoned = FIBRE_KILOCALORIES.map(
    (each) => 4 * parts.carbohydrate + 9 * parts.fat + 4 * parts.protein + each * parts.fibre,
  );
  const slack = Math.max(ENERGY_TOLERANCE * said, ROUNDING_KILOCALORIES * Math.max(1, per));
  if (reckoned.some((each) => Math.abs(each - said) <= slack)) return [];
  return [
    notice('LARDER_OWN_ENERGY', 'doubt', aboutOf(label), {
      saidKilocalories: said,
      reckonedKilocalories: reckoned[0]!,
    }),
  ];
}

// --- Allergens --------------------------------------------------------------------------------------

/** What is said is kept; what the name sounds like, and what nobody read, stays a doubt. */
function allergenWords(label: FoodLabel) {
  const { contains, mayContain = [], labelSaysFree = [] } = label;
  const sure = withWheat(contains ?? []);
  const isOpen = (allergen: Allergen) =>
    !sure.includes(allergen) && !labelSaysFree.includes(allergen);
  const likely = soundsLike(label.name).filter(isOpen);
  const unread = contains === undefined ? allAllergens.filter(isOpen) : [];
  const doubts = [...new Set([...mayContain, ...likely, ...unread])].filter(isOpen);
  const isClash = likely.length > 0 && contains !== undefined;
  return {
    allergens: sure,
    checkLabel: doubts,
    notices: [
      ...(contains === undefined
        ? [notice('LARDER_OWN_ALLERGENS_UNSAID', 'doubt', aboutOf(label))]
        : []),
      ...(isClash
        ? [
            notice('LARDER_OWN_ALLERGEN_LIKELY', 'doubt', aboutOf(label), {
              allergens: likely.join(', '),
            }),
          ]
        : []),
    ],
  };
}

/** Wheat holds gluten. */
const withWheat = (contains: readonly Allergen[]): readonly Allergen[] =>
  contains.includes('wheat') ? [...new Set<Allergen>([...contains, 'gluten'])] : contains;

/** Allergens of the foods that the name speaks of, whatever stands beside them. */
function soundsLike(name: string): readonly Allergen[] {
  const words = name.toLowerCase().split(/[^\p{L}]+/u);
  const all = [name, ...words].flatMap((word) => {
    const found = findFood(word, { from: 0, to: word.length }, { manner: 'us' });
    const food = found.food ?? (word === name ? found.choices[0] : undefined);
    return food === undefined || anyFoodWithKey(food.key) === undefined
      ? []
      : allergensNamed(name, food).allergens;
  });
  return [...new Set(all)];
}
