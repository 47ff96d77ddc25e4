// What larder/ offers: foods, their names, their measures, and lines of a recipe read by them.

export { allFoods, anyFoodWithKey, moreFoods } from './all-foods.ts';
export { type AllergenWords, allAllergens, allergensNamed, openAllergensOf } from './allergens.ts';
export { larderCodes } from './codes.ts';
export { calledIn, type FoodSearch, findFood, readAsIn, type SearchOptions } from './find-food.ts';
export type * from './food.ts';
export type { FoodForm, FormsFound } from './form.ts';
export { foods, foodWithKey } from './larder.ts';
export { gramsOf, householdMeasure } from './measure.ts';
export { foodNamed } from './name.ts';
export { lettersApart, nearestFoods } from './nearest.ts';
export { type FoodLabel, foodFromLabel, type OwnFood } from './own-food.ts';
export { type LineOptions, type LineRead, LONGEST_LINE, readLine } from './read-line.ts';
export { doubtOf, type WeighedAmount, type WeighedHow, weighAmount } from './weigh.ts';
