// What a core that stays a while at a lower heat is worth: told beside the log, never instead of the target.
// Source: fsis-appendix-a (red meat, 6.5 logs); mcminn-appendix-a found its lowest rows not confirmed.

import table from '../../data/safety-holds.json' with { type: 'json' };
import { type OrRefusal, refusal } from '../notice/notice.ts';
import { fromFahrenheit, type Kelvin, toFahrenheit } from '../quantity/unit.ts';
import type { FoodClass } from './safe-core.ts';

/** Rows under this are refused in camp (mcminn-appendix-a). */
const LEAST_TRUSTED = fromFahrenheit(140);

/**
 * Seconds at one core for 6.5 logs of salmonella in whole red meat, by the federal table: the row at or
 * below the core, never between rows. 0 is at once.
 *
 * @refuses  SAFETY_LOW_HOLD: under 140 F, for anything but whole red meat, and for people at risk
 * @source   fsis-appendix-a
 */
export function heldSeconds(asked: {
  readonly core: Kelvin;
  readonly food: FoodClass;
  readonly isAnyoneAtRisk: boolean;
}): OrRefusal<number> {
  const { core, food, isAnyoneAtRisk } = asked;
  const because =
    food !== 'whole-meat' ? 'food' : isAnyoneAtRisk ? 'people' : core < LEAST_TRUSTED ? 'low' : '';
  // A hundredth of a degree is what conversion may lose.
  const row = table.rows.findLast(({ fahrenheit }) => fahrenheit <= toFahrenheit(core) + 0.01);
  if (because === '' && row !== undefined && Number.isFinite(core)) return row.seconds;
  return refusal('SAFETY_LOW_HOLD', ['recipe.target.core'], {}, { coreKelvin: core, because });
}
