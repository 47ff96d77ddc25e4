import { describe, expect, it } from 'vitest';
import cases from '../../validation/camp/daylight.json' with { type: 'json' };
import { degrees, minutes } from '../quantity/unit.ts';
import { daylightAt } from './daylight.ts';

type Row = readonly [number, number, string, string, string, string];

const minutesOf = (clock: string) => {
  const [hours, whole, part] = clock.split(':').map(Number);
  return hours! * 60 + whole! + part! / 60;
};

const at = (latitude: number, longitude: number, date: string, utcOffset = 0) =>
  daylightAt({
    latitude: degrees(latitude),
    longitude: degrees(longitude),
    date,
    utcOffset: minutes(utcOffset),
  });

describe('daylight', () => {
  it('matches sun-codes within 8 s (they differ by 7 s themselves): sunrise, sunset, end of civil dusk', () => {
    for (const [latitude, longitude, date, rise, set, dusk] of cases.rows as unknown as Row[]) {
      const day = at(latitude, longitude, date);
      expect(day.sun).toBe('rises-and-sets');
      expect(Math.abs(day.sunrise! - minutesOf(rise))).toBeLessThan(8 / 60);
      expect(Math.abs(day.sunset! - minutesOf(set))).toBeLessThan(8 / 60);
      expect(Math.abs(day.dusk! - minutesOf(dusk))).toBeLessThan(8 / 60);
    }
  });

  it("matches the NOAA sheet's worked day within a minute: 18.58° N 72.4° E, 22 May 2012, 5:52 and 18:57", () => {
    // As a user of the sheet published it (noaa-solar), his clock put in as 5.3 h; whole minutes.
    const day = at(18.58, 72.4, '2012-05-22', 5.3 * 60);
    expect(Math.abs(day.sunrise! - (5 * 60 + 52))).toBeLessThan(1);
    expect(Math.abs(day.sunset! - (18 * 60 + 57))).toBeLessThan(1);
  });

  it("is told on the camp's own clock", () => {
    const [latitude, longitude, date, rise] = cases.rows[0] as unknown as Row;
    const day = at(latitude, longitude, date, -360);
    expect(Math.abs(day.sunrise! - (minutesOf(rise) - 360))).toBeLessThan(0.5);
  });

  it('knows that the sun neither sets nor rises beyond the polar circle (sun-codes: 21 June)', () => {
    const summer = at(69.65, 18.96, '2026-06-21');
    expect(summer.sun).toBe('never-sets');
    expect(summer.sunset).toBeUndefined();
    expect(at(69.65, 18.96, '2026-12-21').sun).toBe('never-rises');
  });

  it('has twelve hours and some minutes everywhere at an equinox', () => {
    for (const latitude of [-60, -30, 0, 30, 60]) {
      const { sunrise, sunset } = at(latitude, 0, '2026-03-20');
      expect(sunset! - sunrise!).toBeGreaterThan(720);
      expect(sunset! - sunrise!).toBeLessThan(740);
    }
  });

  it('stays finite and in order for every day of a year and every latitude with a night', () => {
    for (let month = 1; month <= 12; month += 1) {
      for (let latitude = -60; latitude <= 60; latitude += 15) {
        const { dawn, sunrise, sunset, dusk } = at(
          latitude,
          120,
          `2027-${`${month}`.padStart(2, '0')}-28`,
        );
        const order = [dawn, sunrise, sunset, dusk].filter((event) => event !== undefined);
        expect(order).toEqual(order.toSorted((one, other) => one - other));
        expect(order.every(Number.isFinite)).toBe(true);
      }
    }
  });

  it('throws on what is no date and no latitude', () => {
    expect(() => at(40, 0, '2026-13-01')).toThrow(RangeError);
    expect(() => at(40, 0, 'tomorrow')).toThrow(RangeError);
    expect(() => at(95, 0, '2026-06-01')).toThrow(RangeError);
  });
});
