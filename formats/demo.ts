// The demo camps: invented people, places and recipes, shipped with the product. They are files
// like any cook's; only their date is set when they are opened, so that they are always ahead.

import { dateAfter, isDate, weekday } from './camp-file/clock-text.ts';
import { type CampRead, readCampFile } from './camp-file/read.ts';
import harrowSaddle from './demo/harrow-saddle.camp.json' with { type: 'json' };
import pilcrowCreek from './demo/pilcrow-creek.camp.json' with { type: 'json' };
import pilcrowCreekWood from './demo/pilcrow-creek-wood.camp.json' with { type: 'json' };
import quillmoorFair from './demo/quillmoor-fair.camp.json' with { type: 'json' };

const SATURDAY = 6;
const THURSDAY = 4;

const DEMOS = [
  { file: pilcrowCreek, on: SATURDAY },
  { file: harrowSaddle, on: THURSDAY },
  { file: pilcrowCreekWood, on: SATURDAY },
  { file: quillmoorFair, on: SATURDAY },
] as const;

/** The demo camps as they stand in their files, without a date. */
export const demoSources = DEMOS.map(({ file }) => file);

/** Those that feed a table or a crew: one plan is quick, so that thousands can be made. */
export const smallDemoSources = [pilcrowCreek, harrowSaddle, pilcrowCreekWood] as const;

/** Ids of the demo camps, in the order in which they are shown. */
export const demoIds: readonly string[] = DEMOS.map(({ file }) => file.id);

/**
 * The demo camps, each on its own weekday of the week that follows `today`.
 *
 * @param today   ISO date where the cook is, `2026-09-12`
 * @throws        RangeError — `today` is no date
 */
export function demoCamps(today: string): readonly CampRead[] {
  if (!isDate(today)) throw new RangeError(`no date: ${today}`);
  return DEMOS.map(({ file, on }) => {
    const read = readCampFile({ ...file, date: nextWeekday(today, on) });
    if (!read.ok) throw new Error(`demo camp ${file.id}: ${read.troubles[0]?.path}`);
    return read;
  });
}

/** Never today: its meal may already be over. */
function nextWeekday(today: string, wanted: number): string {
  const days = (wanted - weekday(today) + 7) % 7;
  return dateAfter(today, days === 0 ? 7 : days);
}
