// What an offer breaks is told so that somebody can act on it. Jobs are hand-made; no source.

import { describe, expect, it } from 'vitest';
import type { Offer } from '../../timetable/replan/slip.ts';
import type { Say } from '../say.ts';
import { brokenRules } from './broken-rules.ts';

const say = {
  hand: (id: string) => id,
  dish: (id: string) => id,
  ovenName: (id: string) => `oven ${id}`,
  minutes: (minutes: number) => `${minutes} min`,
  clock: (minutes: number) => `minute ${minutes}`,
  count: String,
} as unknown as Say;
const job = (id: string, kind: string, start: number, end: number) => ({
  id,
  kind,
  start,
  end,
  load: 'rolls-1',
  oven: 'B',
  dish: 'rolls',
  hands: ['anna'],
});
const told = (violations: readonly object[]) =>
  brokenRules(
    {
      sheet: {
        jobs: [
          job('lay', 'lay-coals', 97, 100),
          job('add-1', 'add-coals', 117, 119),
          job('add-2', 'add-coals', 149, 151),
        ],
      },
      violations,
    } as unknown as Offer,
    say,
  ).join('; ');

describe('a rule that an offer breaks', () => {
  it('names who works too long, at which oven and how long: 2 + 2 min', () => {
    const hours = (id: string) => ({ rule: 'hours', jobs: [id], found: 0, wanted: 'anna' });
    expect(told([hours('add-1'), hours('add-2')])).toMatch(
      /^anna would work 4 min outside their hours \(add coals, .*oven B.* at minute 117, and 1 more\)$/,
    );
  });

  it('names the addition that is off its minute and how far: wanted at 40 after 100, done at 149', () => {
    const off = { rule: 'add-coals-at-its-minute', jobs: ['rolls-1'], found: 'none', wanted: 40 };
    expect(told([off])).toMatch(/add coals comes off its minute by 9 min \(.*at minute 149\)/);
  });
});
