// A planned meal as the sheets of one reader. The last plan is kept, so that a change of measures
// or clock only speaks it again.

import {
  type Assumption,
  type Camp,
  daySheet,
  dishCard,
  type MealPlan,
  type Menu,
  mealSummary,
  noticeText,
  planMeal,
  provisionsSheet,
  type Say,
  sayFor,
} from '#engine';
import type { MealSheets, PinWord, Voice } from './messages.ts';

export interface MealWish {
  readonly camp: Camp;
  readonly menu: Menu;
  readonly assumed: readonly Assumption[];
  readonly voice: Voice;
}

/** Every sheet of the meal, in the order in which a cook reads them. */
export function mealSheets({ camp, menu, assumed, voice }: MealWish): MealSheets {
  const plan = plannedBefore(camp, menu, assumed);
  const say = sayFor({ ...voice, plan });
  return {
    title: camp.title,
    summary: mealSummary(plan, say),
    dishCards: menu.dishes.map(({ id, name }) => ({
      dish: id,
      name,
      ...whereAndWhen(plan, id, say),
      pinned: pinWords(plan, id, say),
      card: dishCard(plan, id, say),
    })),
    daySheet: daySheet(plan, say),
    provisions: provisionsSheet(plan, say),
  };
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

function plannedBefore(camp: Camp, menu: Menu, assumed: readonly Assumption[]): MealPlan {
  const key = JSON.stringify([camp, menu, assumed]);
  if (last?.key !== key) last = { key, plan: planMeal(camp, menu, { assumed }) };
  return last.plan;
}
