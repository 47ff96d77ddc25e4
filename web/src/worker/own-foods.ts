// Own foods of camp files for whoever looks foods up by name. A label that can't be read is passed over.

import { type Food, foodFromLabel, isRefusal } from '#engine';
import { readCampFile } from '#formats';
import type { FileFoodItem } from './paste-messages.ts';

export interface ReadableFood {
  readonly written: FileFoodItem;
  readonly food: Food;
}

/** One by one, so that a half typed label hides none of the others. */
export const readableFoods = (foods: readonly FileFoodItem[]): readonly ReadableFood[] =>
  foods.flatMap((written) => {
    const read = readCampFile({ ...ANY_CAMP, foods: [written] });
    const label = read.ok ? read.menu.foods?.[0] : undefined;
    const made = label === undefined ? undefined : foodFromLabel(label);
    return made === undefined || isRefusal(made) ? [] : [{ written, food: made.food }];
  });

/** Only whole camps are read. */
const ANY_CAMP = {
  emberwright: 'camp',
  version: 1,
  id: 'foods',
  title: 'Foods',
  place: { name: 'Here' },
  mouths: [{ count: 1 }],
  menu: [{ id: 'dish', recipe: 'recipe', serve: '18:00' }],
  recipes: [
    {
      id: 'recipe',
      name: 'Salt',
      kind: 'cold-dish',
      method: 'none',
      portions: 1,
      ingredients: [{ name: 'salt', weight: '1 g' }],
    },
  ],
};
