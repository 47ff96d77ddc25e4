// Which class of the law does an allergen of ours belong to, and which of ours does a word mean?
// Sources: falcpa-faster (nine of the United States), eu-1169-2011 (fourteen of the European Union).

import type { Allergen } from '../camp/camp.ts';

/** The nine that must stand on a label in the United States (falcpa-faster). */
export const US_NINE = [
  'milk',
  'egg',
  'fish',
  'crustacean shellfish',
  'tree nuts',
  'peanut',
  'wheat',
  'soybean',
  'sesame',
] as const;

/** The fourteen of Annex II (eu-1169-2011). */
export const EU_FOURTEEN = [
  'cereals containing gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soybeans',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const;

export interface AllergenClasses {
  /** Undefined where no label of the United States must name it. */
  readonly us?: (typeof US_NINE)[number];
  readonly eu: (typeof EU_FOURTEEN)[number];
}

const CLASSES: Readonly<Record<Allergen, AllergenClasses>> = {
  // Rye, barley and oats are gluten cereals of the one list and on none of the other.
  gluten: { eu: 'cereals containing gluten' },
  wheat: { us: 'wheat', eu: 'cereals containing gluten' },
  milk: { us: 'milk', eu: 'milk' },
  egg: { us: 'egg', eu: 'eggs' },
  fish: { us: 'fish', eu: 'fish' },
  crustacean: { us: 'crustacean shellfish', eu: 'crustaceans' },
  mollusc: { eu: 'molluscs' },
  'tree-nut': { us: 'tree nuts', eu: 'nuts' },
  peanut: { us: 'peanut', eu: 'peanuts' },
  soy: { us: 'soybean', eu: 'soybeans' },
  sesame: { us: 'sesame', eu: 'sesame' },
  celery: { eu: 'celery' },
  mustard: { eu: 'mustard' },
  lupin: { eu: 'lupin' },
  sulphite: { eu: 'sulphites' },
};

/** @source falcpa-faster, eu-1169-2011 */
export const classesOfAllergen = (allergen: Allergen): AllergenClasses => CLASSES[allergen];

/** What people write for it: from memory. A word for several means all of them. */
const MEANT: readonly (readonly [RegExp, readonly Allergen[]])[] = [
  [/^(dairy|lactose|cow'?s? milk|casein|whey|butter|cheese)$/, ['milk']],
  [/^(c(o)?eliac|celiac disease|rye|barley|oats?|spelt|malt)$/, ['gluten']],
  [/^(nuts|all nuts)$/, ['tree-nut', 'peanut']],
  [
    /^(nut|tree nuts?|almonds?|hazelnuts?|walnuts?|cashews?|pecans?|pistachios?|brazil nuts?|macadamias?)$/,
    ['tree-nut'],
  ],
  [/^(groundnuts?|monkey nuts?)$/, ['peanut']],
  [/^(shellfish|seafood)$/, ['crustacean', 'mollusc']],
  [/^(shrimps?|prawns?|crabs?|lobsters?|crayfish|crustacean shellfish)$/, ['crustacean']],
  [/^(mussels?|clams?|oysters?|squid|scallops?|snails?|mollus[ck]s?)$/, ['mollusc']],
  [/^(soya|soybeans?|soya beans?|tofu|lecithin)$/, ['soy']],
  [/^(eggs|egg white|albumen)$/, ['egg']],
  [/^(sul(f|ph)(ites?|ur dioxide)|so2|e22[0-8])$/, ['sulphite']],
  [/^(lupine?|lupins)$/, ['lupin']],
  [/^(tahini|benne)$/, ['sesame']],
  [/^(celeriac)$/, ['celery']],
  [/^(anchov(y|ies)|salmon|cod|tuna)$/, ['fish']],
];

/** Words of the camp file that an allergy word of another's stands for; none where it means nothing. */
export function allergyMeant(word: string): readonly Allergen[] {
  const plain = word
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ')
    .replace(/ (allergy|allergic|free|intolerance|intolerant)$/, '');
  if (plain in CLASSES) return [plain as Allergen];
  return MEANT.find(([pattern]) => pattern.test(plain))?.[1] ?? [];
}
