// A planned meal as the sheets of one reader. The last plan is kept, so that a change of measures
// or clock only speaks it again.

import {
  type Assumption,
  advisedPlan,
  allergenCards,
  bagLabels,
  boxesSheet,
  type Camp,
  daySheet,
  dishCard,
  fireCard,
  fireChiefSheet,
  fuelWaterIceSheet,
  handColumns,
  ironAndAshSheet,
  labelGrid,
  type MealPlan,
  type Menu,
  mealSummary,
  mouthsSheet,
  noticeText,
  planMeal,
  pocketCards,
  provisionsSheet,
  type Say,
  safetyLogSheet,
  sayFor,
  shoppingSheet,
  wallList,
  waterAndWashSheet,
} from '#engine';
import type { MealSheets, PinWord, Voice } from './messages.ts';

export interface MealWish {
  readonly camp: Camp;
  readonly menu: Menu;
  readonly assumed: readonly Assumption[];
  readonly voice: Voice;
  readonly isAdvised?: boolean;
}

/** Every sheet of the meal, in the order in which a cook reads them. */
export function mealSheets({ camp, menu, assumed, voice, isAdvised }: MealWish): MealSheets {
  const found = plannedBefore(camp, menu, assumed);
  const plan = isAdvised ? advisedBefore(found) : found;
  const say = sayFor({ ...voice, plan });
  return {
    title: camp.title,
    isAdvicePending: plan.daySheet.isAdvicePending === true,
    summary: mealSummary(plan, say),
    dishCards: menu.dishes.map(({ id, name }) => ({
      dish: id,
      name,
      ...whereAndWhen(plan, id, say),
      pinned: pinWords(plan, id, say),
      card: dishCard(plan, id, say),
    })),
    daySheet: daySheet(plan, say),
    boards: boardsOf(plan, say),
    provisions: provisionsSheet(plan, say),
    carried: carriedOf(plan, say),
  };
}

const carriedOf = (plan: MealPlan, say: Say): MealSheets['carried'] => [
  { path: 'mouths', sheet: mouthsSheet(plan, say) },
  { path: 'shopping', sheet: shoppingSheet(plan, say) },
  { path: 'bags', sheet: bagLabels(plan, say) },
  { path: 'labels', sheet: labelGrid(plan, say) },
  { path: 'boxes', sheet: boxesSheet(plan, say) },
  { path: 'fuel-water-ice', sheet: fuelWaterIceSheet(plan, say) },
  { path: 'fire-card', sheet: fireCard(plan, say) },
  { path: 'safety-log', sheet: safetyLogSheet(plan, say) },
  { path: 'allergen-cards', sheet: allergenCards(plan, say) },
  { path: 'water-and-wash', sheet: waterAndWashSheet(plan, say) },
  { path: 'iron-and-ash', sheet: ironAndAshSheet(plan, say) },
];

function boardsOf(plan: MealPlan, say: Say): MealSheets['boards'] {
  const boards = [
    { path: 'wall', sheet: wallList(plan, say) },
    { path: 'hands', sheet: handColumns(plan, say) },
    { path: 'pocket', sheet: pocketCards(plan, say) },
  ];
  const fire = { path: 'fire-chief', sheet: fireChiefSheet(plan, say) };
  return plan.daySheet.lightings.length === 0 ? boards : [fire, ...boards];
}

function whereAndWhen(plan: MealPlan, id: string, say: Say) {
  const dish = plan.dishes.find((each) => each.dish.id === id);
  const serving = plan.daySheet.servings.find((each) => each.dish === id);
  const ovens = new Set(dish?.loads.map(({ load }) => say.ovenName(load.oven)));
  const served = serving?.served ?? dish?.dish.serveAt;
  return { ovens: [...ovens].join(', '), served: served === undefined ? '' : say.clock(served) };
}

function pinWords(plan: MealPlan, id: string, say: Say): readonly PinWord[] {
  const dish = plan.dishes.find((each) => each.dish.id === id);
  const said = [
    ...(dish?.notices ?? []),
    ...(dish?.portions.notices ?? []),
    ...(dish?.loads.flatMap(({ coals, bake }) => [...coals.notices, ...bake.notices]) ?? []),
    ...[...plan.notices, ...plan.daySheet.notices].filter(({ about }) => about.dish === id),
  ].filter(({ code }) => /_PIN(NED)?_/.test(code));
  const words = said.map((each) => ({
    level: each.level,
    code: each.code,
    text: noticeText(each, say),
  }));
  return words.filter((each, at) => words.findIndex(({ text }) => text === each.text) === at);
}

let last: { readonly key: string; readonly plan: MealPlan } | undefined;

/** Without advice: a late day is shown first. */
export function plannedBefore(camp: Camp, menu: Menu, assumed: readonly Assumption[]): MealPlan {
  const key = JSON.stringify([camp, menu, assumed]);
  if (last?.key !== key) last = { key, plan: planMeal(camp, menu, { assumed, advice: 'later' }) };
  return last.plan;
}

function advisedBefore(plan: MealPlan): MealPlan {
  const advised = advisedPlan(plan);
  if (last !== undefined) last = { ...last, plan: advised };
  return advised;
}
