// Does each feature of the drawn meals bind? Shown where the meal without it has a plan that is
// cheaper than what was found with it, by as much work; what binds in few meals is hardly tested.
import { learner } from '../../engine/src/solver/learned-plan.ts';
import { searchPlan } from '../../engine/src/solver/search.ts';
import { drawMeal, SCALES, type Size } from './draw-meal.ts';
import { FEATURES } from './relaxed.ts';

export interface Binding {
  readonly size: Size;
  readonly meals: number;
  /** By feature: meals in which it costs something, or keeps the meal from being on time. */
  readonly counts: Readonly<Record<string, number>>;
}

const DECODES = 120;
/** A gain below this share may be the search's own luck. */
const LUCK = 0.02;

export function bindingOf(
  size: Size,
  wish: { readonly first: number; readonly many: number },
): Binding {
  const counts = Object.fromEntries(Object.keys(FEATURES).map((name) => [name, 0]));
  for (let seed = wish.first; seed < wish.first + wish.many; seed += 1) {
    const meal = drawMeal(seed, SCALES[size]);
    const wishOf = { seed, decodes: DECODES, learner };
    const whole = searchPlan(meal.problem, wishOf);
    const own = whole.cost - 2 * (meal.problem.to - meal.lastServing);
    for (const [name, without] of Object.entries(FEATURES)) {
      const { cost } = searchPlan(without(meal), wishOf);
      if (whole.cost - cost > LUCK * own) counts[name] = counts[name]! + 1;
    }
  }
  return { size, meals: wish.many, counts };
}

export function sayBinding({ size, meals, counts }: Binding, say: (text: string) => void): void {
  const rows = Object.entries(counts).map(([name, count]) => {
    const percent = Math.round((100 * count) / meals);
    return `${name} ${percent} %${percent < 5 ? ' (NOT TESTED)' : ''}`;
  });
  say(`${size}, ${meals} meals, a feature binds in: ${rows.join('; ')}`);
}
