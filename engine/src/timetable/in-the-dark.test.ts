// Work outside daylight. When it is light comes from daylightAt, held against other codes in
// camp/daylight.test.ts; here: which work is told of, on which day, and when nothing can be known.

import { describe, expect, it } from 'vitest';
import cases from '../../validation/camp/daylight.json' with { type: 'json' };
import * as make from '../../validation/timetable/build-meal.ts';
import { campLight } from '../camp/index.ts';
import { degrees, minutes } from '../quantity/unit.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

type Row = readonly [number, number, string, string, string, string];
const [first] = cases.rows as unknown as readonly Row[];
const DENVER_SUMMER = minutes(-360);

const minutesOf = (clock: string) => {
  const [hours, whole, part] = clock.split(':').map(Number);
  return hours! * 60 + whole! + part! / 60;
};

const bread = make.recipe('bread', 'biscuit', [make.step('mix', 8)], { canWait: 20 });

/** One bread at this hour, where the first row of sun-codes is. */
function breadAt(serve: string, isSaid = true): TimetableRequest {
  const cook = make.hand('cook', 'steady', ['0:00', '23:59']);
  const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)] });
  const [latitude, longitude, date] = first!;
  const where = { latitude: degrees(latitude), longitude: degrees(longitude) };
  const place = { ...camp.place, ...where, ...(isSaid ? { utcOffset: DENVER_SUMMER } : {}) };
  const dish = make.dish('bread', bread, serve);
  const load = { oven: 'A', coals: [16, 8] as const, out: 22 };
  return make.request({ ...camp, place, date }, [make.work(bread, dish, [load])]);
}

const darkIn = (request: TimetableRequest) =>
  planTimetable(request, { doubtRuns: 0 }).notices.filter(({ code }) =>
    /BEFORE_LIGHT|AFTER_DARK/.test(code),
  );

describe('light at the camp', () => {
  it("is told on the camp's clock, within 8 s of sun-codes, and moves with the days", () => {
    const { camp } = breadAt('12:00');
    const [, , , rise, , dusk] = first!;
    const today = campLight(camp, 0)!;
    expect(Math.abs(today.sunrise! - (minutesOf(rise) - 360))).toBeLessThan(8 / 60);
    expect(Math.abs(today.dusk! - (minutesOf(dusk) - 360))).toBeLessThan(8 / 60);
    const next = campLight(camp, 1)!;
    expect(Math.abs(next.sunrise! - 1440 - today.sunrise!)).toBeLessThan(2);
  });
});

describe('work in the dark', () => {
  it('is told of where bread for 5:00 is begun before first light, and for 22:30 after dusk', () => {
    const [early] = darkIn(breadAt('5:00'));
    expect(early!.code).toBe('TIMETABLE_BEFORE_LIGHT');
    const { camp } = breadAt('5:00');
    expect(early!.values.lightClockMinutes).toBe(campLight(camp, 0)!.dawn);
    expect(Number(early!.values.fromClockMinutes)).toBeLessThan(campLight(camp, 0)!.dawn!);
    const late = darkIn(breadAt('22:30'));
    expect(late.map(({ code }) => code)).toEqual(['TIMETABLE_AFTER_DARK']);
  });

  it('is not told of at noon, nor where the camp does not say what its clock shows', () => {
    expect(darkIn(breadAt('12:00'))).toEqual([]);
    expect(darkIn(breadAt('5:00', false))).toEqual([]);
  });
});
