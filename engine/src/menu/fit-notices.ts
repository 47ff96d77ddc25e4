// What is worth saying about the way a dish lies in its ovens.

import { type Notice, notice } from '../notice/notice.ts';
import type { LaidPart } from './candidates.ts';
import { LEAST_HEADROOM_METRES } from './geometry.ts';
import { fitsIn, pressedPotFill } from './lay.ts';
import type { MenuDish } from './menu.ts';
import { allergensIn } from './needs.ts';
import { piecesMass, recipeMass } from './pieces.ts';
import type { Recipe } from './recipe.ts';

export function fitNotices(dish: MenuDish, parts: readonly LaidPart[]): readonly Notice[] {
  const recipe = parts[0]?.lot.recipe;
  if (recipe === undefined) return [];
  return [
    ...parts.flatMap((part) => partNotices(dish, part)),
    ...splitNotices(dish, parts),
    ...keptFreeNotices(dish, recipe, parts),
    ...divisionNotices(dish, recipe),
  ];
}

function partNotices(dish: MenuDish, { oven, lying, lot }: LaidPart): readonly Notice[] {
  const about = { dish: dish.id, oven: oven.id };
  const isPressed = dish.pins.oven === undefined && fitsIn(lying, pressedPotFill(lot.recipe.kind));
  if (!fitsIn(lying) && isPressed) {
    return [notice('MENU_POT_PRESSED', 'doubt', about, { fillRatio: lying.fill })];
  }
  if (!fitsIn(lying)) {
    const values = { fillRatio: lying.fill, massGrams: lot.mass };
    return [notice('MENU_PINNED_OVEN_OVERFULL', 'stop', about, values)];
  }
  if (lying.shape === 'pot' && 1 + 1e-6 < lying.fill) {
    return [notice('MENU_POT_FULL', 'note', about, { fillRatio: lying.fill })];
  }
  const isLow = lying.shape !== 'pot' && lying.headroom < 1.25 * LEAST_HEADROOM_METRES;
  return isLow
    ? [notice('MENU_LOW_HEADROOM', 'doubt', about, { headroomMetres: lying.headroom })]
    : [];
}

function splitNotices(dish: MenuDish, parts: readonly LaidPart[]): readonly Notice[] {
  const ovens = new Set(parts.map((part) => part.oven.id)).size;
  const turns = Math.max(...parts.map((part) => part.turn)) + 1;
  const about = { dish: dish.id };
  return [
    ...(1 < ovens ? [notice('MENU_SPLIT', 'note', about, { ovens })] : []),
    ...(1 < turns ? [notice('MENU_IN_TURNS', 'note', about, { turns })] : []),
  ];
}

function keptFreeNotices(
  dish: MenuDish,
  recipe: Recipe,
  parts: readonly LaidPart[],
): readonly Notice[] {
  const found = allergensIn(recipe);
  return parts.flatMap(({ oven }) => {
    const about = { dish: dish.id, oven: oven.id };
    const soiled = oven.keptFreeOf.filter((allergen) => found.includes(allergen));
    if (0 < soiled.length) {
      return [notice('MENU_PINNED_OVEN_NOT_KEPT_FREE', 'danger', about, { allergen: soiled[0]! })];
    }
    return dish.freeFrom && oven.keptFreeOf.length === 0
      ? [notice('MENU_NOT_KEPT_FREE', 'danger', about)]
      : [];
  });
}

function divisionNotices(dish: MenuDish, recipe: Recipe): readonly Notice[] {
  const pieces = piecesMass(recipe.division);
  const all = recipeMass(recipe);
  if (pieces === 0 || Math.abs(pieces / all - 1) <= 0.02) return [];
  const values = { piecesGrams: pieces, doughGrams: all };
  return [notice('MENU_DIVISION_LEFT_OVER', 'note', { dish: dish.id }, values)];
}
