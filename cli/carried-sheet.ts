// One sheet of what is bought, weighed out, packed and burnt, or of what keeps people safe, by the name
// that the command line has for it.

import {
  allergenCards,
  bagLabels,
  boxesSheet,
  fireCard,
  fuelWaterIceSheet,
  ironAndAshSheet,
  type MealPlan,
  mouthsSheet,
  provisionsSheet,
  type Say,
  type SheetDocument,
  safetyLogSheet,
  shoppingSheet,
  waterAndWashSheet,
} from '#engine';
import { wrongUse } from './exit.ts';

const SHEETS: Readonly<Record<string, (plan: MealPlan, say: Say) => SheetDocument>> = {
  mouths: mouthsSheet,
  provisions: provisionsSheet,
  shopping: shoppingSheet,
  bags: bagLabels,
  boxes: boxesSheet,
  'fuel-water-ice': fuelWaterIceSheet,
  'fire-card': fireCard,
  'safety-log': safetyLogSheet,
  'allergen-cards': allergenCards,
  'water-and-wash': waterAndWashSheet,
  'iron-and-ash': ironAndAshSheet,
};

export const SHEET_NAMES = Object.keys(SHEETS);

export function carriedSheet(name: string, plan: MealPlan, say: Say): SheetDocument {
  const sheet = Object.hasOwn(SHEETS, name) ? SHEETS[name] : undefined;
  if (sheet !== undefined) return sheet(plan, say);
  throw wrongUse('--sheet', `"${name}"`, `one of ${SHEET_NAMES.join(', ')}`, 'Take one of these.');
}
