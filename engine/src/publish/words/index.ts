// All sentences, stage by stage in the order of the job. A code belongs to one stage only.

import type { Words } from '../say.ts';
import { bakeWords } from './bake.ts';
import { campWords } from './camp.ts';
import { coalsWords } from './coals.ts';
import { provisionsWords } from './provisions.ts';
import { safetyWords } from './safety.ts';

export const allWords: Words = {
  ...campWords,
  ...coalsWords,
  ...bakeWords,
  ...safetyWords,
  ...provisionsWords,
};
