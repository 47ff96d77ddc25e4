// What judges a day once it is found: that a late one can't be otherwise, and how sure it is. Handed in to
// whoever finds days, so that a first screen need not load it.

import { dayDoubt } from './doubt/doubt.ts';
import { provenTrouble } from './proof.ts';

export interface DayJudge {
  readonly proven: typeof provenTrouble;
  readonly doubt: typeof dayDoubt;
}

export const dayJudge: DayJudge = { proven: provenTrouble, doubt: dayDoubt };
