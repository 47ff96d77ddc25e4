// All sentences, stage by stage in the order of the job. A code belongs to one stage only.

import type { Words } from '../say.ts';
import { bakeWords } from './bake.ts';
import { campWords } from './camp.ts';
import { coalsWords } from './coals.ts';
import { formulaWords } from './formula.ts';
import { larderWords } from './larder.ts';
import { menuWords } from './menu.ts';
import { provisionsWords } from './provisions.ts';
import { safetyWords } from './safety.ts';
import { timetableWords } from './timetable.ts';

export const allWords: Words = {
  ...campWords,
  ...larderWords,
  ...menuWords,
  ...formulaWords,
  ...coalsWords,
  ...bakeWords,
  ...safetyWords,
  ...timetableWords,
  ...provisionsWords,
};
