// What has to lie ready at the ovens: gloves, lifter, rack, paper and what else the handling wants.
// Source: bake/handling, common practice, no source.

import { handlingOf, type Tool } from '../bake/index.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import type { KitLine } from './provisions.ts';

/** Used for one oven at a time and by everybody: one pair, one piece is enough for all. */
const SHARED: readonly Tool[] = [
  'gloves',
  'lid-lifter',
  'lid-stand',
  'fat-and-brush',
  'fork',
  'thin-knife',
  'broad-blade',
  'board',
  'bread-knife',
];

/**
 * By tool, as they are needed in the order of the work; ids of the dishes beside each. A dish that is
 * kept free of something has its own of everything.
 */
export function kitFor(dishes: readonly DishToProvide[]): readonly KitLine[] {
  const kit = new Map<Tool, { loads: number; dishes: Map<string, { freeFrom: boolean }> }>();
  for (const { recipe, dish, loads } of dishes) {
    for (const { load, coals } of loads) {
      if (load === undefined) continue;
      const steps = handlingOf({ recipe, dish, load, isHot: coals.loadInMinute > 0 });
      for (const tool of new Set(steps.flatMap(({ tools }) => tools))) {
        const line = kit.get(tool) ?? { loads: 0, dishes: new Map() };
        line.dishes.set(dish.id, dish);
        kit.set(tool, { ...line, loads: line.loads + 1 });
      }
    }
  }
  return [...kit].map(([tool, line]) => ({
    tool,
    count: SHARED.includes(tool)
      ? new Set([...line.dishes.values()].map(({ freeFrom }) => freeFrom)).size
      : line.loads,
    dishes: [...line.dishes.keys()],
  }));
}

const OWN_WORD: Readonly<Partial<Record<Tool, RegExp>>> = {
  gloves: /glove/i,
  'lid-lifter': /lifter/i,
  'baking-paper': /baking paper|parchment/i,
  'bread-knife': /bread knife/i,
};

/** What the cook lists by itself is not asked for twice. */
export const isOwned = (tool: Tool, others: readonly string[]): boolean =>
  others.some((item) => OWN_WORD[tool]?.test(item) === true);

/** A cook who lists their own thermometer is not asked for one more. */
export const ownsThermometer = (others: readonly string[]): boolean =>
  others.some((item) => /thermometer|probe/i.test(item));
