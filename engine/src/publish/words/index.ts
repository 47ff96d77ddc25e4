// All sentences, stage by stage the usual ones of a bread first. A code belongs to one stage only.

import type { Words } from '../say.ts';
import { campWords } from './camp.ts';
import { coalsDoorsWords } from './coals-doors.ts';
import { formulaBenchWords } from './formula-bench.ts';
import { larderWords } from './larder.ts';
import { menuMouthsWords } from './menu-mouths.ts';
import { menuTextWords } from './menu-text.ts';
import { menuWishesWords } from './menu-wishes.ts';
import { provisionsWords } from './provisions.ts';
import { timetableProofWords } from './timetable-proof.ts';
import { tonightWords } from './tonight.ts';

export const allWords: Words = {
  ...tonightWords,
  ...campWords,
  ...larderWords,
  ...menuMouthsWords,
  ...menuTextWords,
  ...menuWishesWords,
  ...formulaBenchWords,
  ...coalsDoorsWords,
  ...timetableProofWords,
  ...provisionsWords,
};
