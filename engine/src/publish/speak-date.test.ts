import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayAfter } from './speak-date.ts';

describe('days of the calendar', () => {
  it.each([
    ['2026-12-30', 3, '2027-01-02'],
    ['2028-02-28', 1, '2028-02-29'], // a leap year, iso8601
    ['2100-02-28', 1, '2100-03-01'], // a century that is none, iso8601
    ['2000-02-28', 1, '2000-02-29'],
    ['2026-03-01', -1, '2026-02-28'],
  ])('%s and %s more is %s (Gregorian calendar)', (date, days, expected) => {
    expect(dayAfter(date, days)).toBe(expected);
  });

  it('agree with the calendar of the machine over two centuries', () => {
    const first = Date.UTC(1950, 0, 1);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 70_000 }),
        fc.integer({ min: -400, max: 400 }),
        (at, days) => {
          const iso = (day: number) =>
            new Date(first + day * 86_400_000).toISOString().slice(0, 10);
          expect(dayAfter(iso(at), days)).toBe(iso(at + days));
        },
      ),
      { seed: 3 },
    );
  });

  it('leave alone what is no date', () => {
    expect(dayAfter('soon', 3)).toBe('soon');
  });
});
