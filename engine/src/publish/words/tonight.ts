// Sentences that a bread of tonight usually needs. What else a card may come to say is in `allWords`:
// whoever says it fetches them.

import type { Words } from '../say.ts';
import { bakeWords } from './bake.ts';
import { coalsWords } from './coals.ts';
import { formulaWords } from './formula.ts';
import { menuWords } from './menu.ts';
import { safetyWords } from './safety.ts';
import { timetableWords } from './timetable.ts';

export const tonightWords: Words = {
  ...menuWords,
  ...formulaWords,
  ...coalsWords,
  ...bakeWords,
  ...safetyWords,
  ...timetableWords,
};
