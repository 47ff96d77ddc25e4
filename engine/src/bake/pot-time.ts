// When is a pot done? Counted from the boil; nothing but a fork knows.

import { browningMinutes } from '../menu/heat-kind.ts';
import { notice } from '../notice/notice.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { boilMinuteOf, minutesToBoil, simmerMinutesFor } from './pot-minutes.ts';

/** By judgement: meat and beans differ from lot to lot, and slow is likelier than quick. */
const BAND = { least: 0.8, most: 1.4 };

/** A pot that boils this much later than the plan reckoned has a say in its minutes. */
const LATE_MINUTES = 3;

/** Minutes at the simmer, with the notices that belong to them. */
export function potTime(asked: BakeRequest): CookTime {
  const { recipe, air } = asked;
  const simmer = simmerMinutesFor(recipe, air);
  const boil = boilOf(asked);
  const found = simmer.minutes + boil.lateMinutes;
  return {
    minutes: found,
    least: found * BAND.least,
    most: found * BAND.most,
    notices: [
      notice(
        'BAKE_TENDER_BY_FORK',
        'note',
        {},
        {
          minutes: simmer.minutes,
          from: simmer.isRecipes ? 'recipe' : 'practice',
        },
      ),
      ...(simmer.isAboveEvidence
        ? [notice('BAKE_SIMMER_ABOVE_EVIDENCE', 'doubt', {}, { boilingKelvin: air.boiling })]
        : []),
      ...boil.notices,
    ],
  };
}

/** How much later than reckoned the simulated coals bring it to the boil. */
function boilOf(asked: BakeRequest): Pick<CookTime, 'notices'> & { lateMinutes: number } {
  const { curve, air, load } = asked;
  if (curve === undefined || curve.length === 0) return { lateMinutes: 0, notices: [] };
  const minute = boilMinuteOf(curve, air.boiling);
  if (minute === undefined) {
    return { lateMinutes: 0, notices: [notice('BAKE_POT_NEVER_BOILS', 'stop')] };
  }
  const lidOn = (asked.loadInMinute ?? 0) + browningMinutes(asked.recipe);
  const late = minute - lidOn - minutesToBoil({ load, air });
  if (late <= LATE_MINUTES) return { lateMinutes: 0, notices: [] };
  return {
    lateMinutes: late,
    notices: [notice('BAKE_POT_BOILS_LATE', 'note', {}, { minutes: minute, lateMinutes: late })],
  };
}
