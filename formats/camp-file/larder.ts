// The larder as the camp file needs it.

import type { Allergen, Food } from '#engine';
import * as engine from '#engine';

interface LarderPort {
  readonly foodNamed?: (text: string) => Food | undefined;
  readonly foodWithKey?: (key: string) => Food | undefined;
  readonly allergensNamed?: (
    text: string,
    food?: Food,
  ) => { readonly allergens: readonly Allergen[]; readonly checkLabel: readonly Allergen[] };
}

const port = engine as LarderPort;
export const foodNamed = (text: string) => port.foodNamed?.(text);
export const foodWithKey = (key: string) => port.foodWithKey?.(key);
export const allergensNamed = (text: string, food: Food | undefined) =>
  port.allergensNamed?.(text, food) ?? { allergens: [], checkLabel: [] };
