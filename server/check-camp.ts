// The reader of camp files, as the server needs it.

import { readCampFile } from '#formats';
import type { CampCheck } from './camps.ts';

/** What a camp file is called, or what is wrong with it. */
export function checkCamp(file: string): CampCheck {
  const read = readCampFile(file);
  if (!read.ok) return { ok: false, troubles: read.troubles };
  const { id, title } = read.file;
  return { ok: true, id, title, date: read.file.date ?? '' };
}
