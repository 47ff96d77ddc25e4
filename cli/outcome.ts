// Does anything stop this plan? The exit code says so to other programs.

import type { MealPlan } from '#engine';
import { EXIT, type ExitCode } from './exit.ts';

export function outcomeOf(plan: MealPlan): ExitCode {
  const isStopped =
    plan.refusals.length > 0 ||
    plan.daySheet.status !== 'planned' ||
    (plan.safety.fire === 'forbidden' && plan.menu.recipes.some(({ method }) => method !== 'none'));
  return isStopped ? EXIT.stopped : EXIT.fine;
}
