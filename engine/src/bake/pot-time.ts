// When is a pot done? Counted from the boil; nothing but a fork knows.

import { notice } from '../notice/notice.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { boilMinuteOf, simmerMinutesFor } from './pot-minutes.ts';

/** By judgement: meat and beans differ from lot to lot, and slow is likelier than quick. */
const BAND = { least: 0.8, most: 1.4 };

/** Minutes at the simmer, with the notices that belong to them. */
export function potTime(asked: BakeRequest): CookTime {
  const { recipe, air, curve } = asked;
  const simmer = simmerMinutesFor(recipe, air);
  const boils = curve === undefined || boilMinuteOf(curve, air.boiling) !== undefined;
  return {
    minutes: simmer.minutes,
    least: simmer.minutes * BAND.least,
    most: simmer.minutes * BAND.most,
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
      ...(boils ? [] : [notice('BAKE_POT_NEVER_BOILS', 'stop')]),
    ],
  };
}
