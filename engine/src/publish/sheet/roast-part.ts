// What the heat of a roast's middle was worth against germs, reckoned along its way; it explains and
// never lowers a target.

import type { LoadPlan } from '../../meal.ts';
import { fromFahrenheit } from '../../quantity/unit.ts';
import { lethalityOf, SALMONELLA_PATTY } from '../../safety/index.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';

/** More than this is said as "more than": the line was never measured so far. */
const MOST_LOGS = 7;

/** Nothing for what is no roast. */
export function roastBlocks({ bake }: LoadPlan, say: Say): readonly Block[] {
  const { coreReadings, done } = bake;
  const last = coreReadings?.at(-1);
  if (coreReadings === undefined || last === undefined || done.core === undefined) return [];
  const { equivalent, logReduction } = lethalityOf(coreReadings);
  const logs =
    logReduction > MOST_LOGS
      ? `more than ${MOST_LOGS} logs`
      : `${logReduction.toFixed(1)} ${logReduction === 1 ? 'log' : 'logs'}`;
  const held = say.minutes(Math.max(0, equivalent.at(-1) ?? 0));
  const at = say.degrees(fromFahrenheit(SALMONELLA_PATTY.referenceFahrenheit));
  const text = `On its way to ${say.degrees(last.core)} the middle has had what ${held} at ${at} do: ${logs} fewer salmonella, reckoned. It lowers no target: probe.`;
  return [{ type: 'paragraph', parts: [{ text }] }];
}
