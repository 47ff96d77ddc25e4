// What provisions/ offers.

export { goesIntoBag } from './bags.ts';
export {
  type BreadAlone,
  type BreadWish,
  breadAlone,
  type DryMix,
  dryMixOf,
  isRaised,
  usualBread,
} from './bread-alone.ts';
export { type ProvisionsCode, provisionsCodes } from './codes.ts';
export type { DishToProvide } from './dish-to-provide.ts';
export type { Bag, FuelNeed, Provisions, ShoppingLine, WaterNeed } from './provisions.ts';
export { provisionsFor } from './provisions-for.ts';
export { asBought } from './shopping.ts';
