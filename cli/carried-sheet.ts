// One sheet of what is bought, weighed out, packed and burnt, by the name that the command line has
// for it.

import {
  bagLabels,
  boxesSheet,
  fuelWaterIceSheet,
  type MealPlan,
  mouthsSheet,
  provisionsSheet,
  type Say,
  type SheetDocument,
  shoppingSheet,
} from '#engine';
import { wrongUse } from './exit.ts';

const SHEETS: Readonly<Record<string, (plan: MealPlan, say: Say) => SheetDocument>> = {
  mouths: mouthsSheet,
  provisions: provisionsSheet,
  shopping: shoppingSheet,
  bags: bagLabels,
  boxes: boxesSheet,
  'fuel-water-ice': fuelWaterIceSheet,
};

export const SHEET_NAMES = Object.keys(SHEETS);

export function carriedSheet(name: string, plan: MealPlan, say: Say): SheetDocument {
  const sheet = Object.hasOwn(SHEETS, name) ? SHEETS[name] : undefined;
  if (sheet !== undefined) return sheet(plan, say);
  throw wrongUse('--sheet', `"${name}"`, `one of ${SHEET_NAMES.join(', ')}`, 'Take one of these.');
}
