// What larder/ offers: foods, their names, their measures.

export { type AllergenWords, allergensNamed } from './allergens.ts';
export type * from './food.ts';
export { foods, foodWithKey } from './larder.ts';
export { gramsOf, householdMeasure } from './measure.ts';
export { foodNamed } from './name.ts';
