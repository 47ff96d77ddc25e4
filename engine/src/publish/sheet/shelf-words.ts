// What the shelves of a shop are called.

import type { ShoppingLine } from '../../provisions/provisions.ts';

export const SHELF: Readonly<Record<ShoppingLine['shelf'], string>> = {
  dry: 'Dry goods',
  produce: 'Vegetables and fruit',
  meat: 'Meat',
  cold: 'Cold',
  tins: 'Tins',
  spice: 'Spice',
  other: 'Other',
};
