// Which work falls outside daylight? Between the end of civil dusk and first light hands need a lamp,
// and coals, hot lids and knives are handled by it.

import { campLight } from '../camp/index.ts';
import { type Notice, notice } from '../notice/notice.ts';
import type { Job, TimetableRequest } from './day-sheet.ts';

const DAY_MINUTES = 1440;

/** One notice for each morning and evening on which somebody works in the dark. */
export function darkNotices({ camp }: TimetableRequest, jobs: readonly Job[]): readonly Notice[] {
  const manned = jobs.filter(({ hands, kind }) => hands.length > 0 && kind !== 'call');
  const days = [...new Set(manned.map(({ start }) => Math.floor(start / DAY_MINUTES)))];
  return days
    .sort((one, other) => one - other)
    .flatMap((day): readonly Notice[] => {
      const light = campLight(camp, day);
      if (light === undefined || light.sun === 'never-sets') return [];
      const own = manned.filter(({ start }) => Math.floor(start / DAY_MINUTES) === day);
      const { dawn, dusk } = light;
      const early = dawn === undefined ? [] : own.filter(({ start }) => start < dawn);
      const late = dusk === undefined ? [] : own.filter(({ end }) => end > dusk);
      return [
        ...(early.length === 0 ? [] : [beforeLight(early, dawn!)]),
        ...(late.length === 0 ? [] : [afterDark(late, dusk!)]),
      ];
    });
}

function beforeLight(jobs: readonly Job[], lightClockMinutes: number): Notice {
  const values = { lightClockMinutes, fromClockMinutes: jobs[0]!.start, jobs: jobs.length };
  return notice('TIMETABLE_BEFORE_LIGHT', 'doubt', {}, values);
}

function afterDark(jobs: readonly Job[], darkClockMinutes: number): Notice {
  const last = Math.max(...jobs.map(({ end }) => end));
  const values = { darkClockMinutes, untilClockMinutes: last, jobs: jobs.length };
  return notice('TIMETABLE_AFTER_DARK', 'doubt', {}, values);
}
