// How is the food when it is measured: sifted, packed, chopped, melted? The word before the food
// says how it is measured ("1 cup sifted flour"), the word behind a comma what is done to it after
// ("1 cup flour, sifted"). Common practice of the trade, no source.

import type { WrittenPieceSize } from '../quantity/index.ts';
import type { Word } from './words.ts';

export type FoodForm =
  | 'sifted'
  | 'unsifted'
  | 'spooned'
  | 'packed'
  | 'loose'
  | 'melted'
  | 'softened'
  | 'chopped'
  | 'diced'
  | 'sliced'
  | 'slivered'
  | 'shredded'
  | 'mashed'
  | 'ground'
  | 'whole'
  | 'halves'
  | 'whipped'
  | 'chips'
  | 'drained'
  | 'beaten'
  | 'peeled'
  | 'cooked'
  | 'cold'
  | 'warm';

const WORDS: Readonly<Record<FoodForm, string>> = {
  sifted: 'sifted tamizada tamizado',
  unsifted: 'unsifted',
  spooned: 'spooned',
  packed: 'packed',
  loose: 'unpacked loose loosely',
  melted: 'melted fundida',
  softened: 'softened soft',
  chopped: 'chopped minced picada picado broken crushed quartered chunk',
  diced: 'diced cubed cube',
  sliced: 'sliced slice ring strip',
  slivered: 'slivered sliver',
  shredded: 'shredded grated rallado',
  mashed: 'mashed pureed',
  ground: 'ground',
  whole: 'whole',
  halves: 'half halved',
  whipped: 'whipped',
  chips: 'chip',
  drained: 'drained rinsed',
  beaten: 'beaten whisked batido',
  peeled: 'peeled pared skinned skinless',
  cooked: 'cooked leftover',
  cold: 'cold chilled iced icy fria ice cool frozen',
  warm: 'warm lukewarm tepid hot boiling tibia room',
};

const FORM_OF: ReadonlyMap<string, FoodForm> = new Map(
  Object.entries(WORDS).flatMap(([form, words]) =>
    words.split(' ').map((word) => [word, form as FoodForm] as const),
  ),
);

const SIZE_OF: Readonly<Record<string, WrittenPieceSize>> = {
  small: 'small',
  medium: 'medium',
  large: 'large',
  jumbo: 'jumbo',
};

export interface FormsFound {
  /** As it is measured. */
  readonly measured: readonly FoodForm[];
  /** What is done to it afterwards. */
  readonly after: readonly FoodForm[];
  readonly size?: WrittenPieceSize;
  /** Words that name a form or a size. */
  readonly words: readonly Word[];
}

/** Forms among the words of a line; `part` is the part of the line in which the food stands. */
export function formsIn(words: readonly Word[], part: number): FormsFound {
  const measured = new Set<FoodForm>();
  const after = new Set<FoodForm>();
  const used: Word[] = [];
  let size: WrittenPieceSize | undefined;
  for (const each of words) {
    const form = FORM_OF.get(each.word);
    size ??= SIZE_OF[each.word];
    if (form === undefined && SIZE_OF[each.word] === undefined) continue;
    used.push(each);
    if (form !== undefined) (each.part <= part ? measured : after).add(form);
  }
  return {
    measured: [...measured],
    after: [...after],
    ...(size === undefined ? {} : { size }),
    words: used,
  };
}
