import { describe, expect, it } from 'vitest';
import { readClock, readDecimal, readWhole, writeClock } from './read-text.ts';

const value = (typed: string) => {
  const reading = readClock(typed);
  return reading.ok ? reading.value : undefined;
};

describe('a time as cooks type it', () => {
  it('is read on both clocks', () => {
    expect(value('18:30')).toBe(1110);
    expect(value('6:30 pm')).toBe(1110);
    expect(value('6pm')).toBe(1080);
    expect(value('12 am')).toBe(0);
    expect(value('12:15 pm')).toBe(735);
  });

  it('is not guessed where it is no time', () => {
    for (const typed of ['', '25:00', '18:75', '6', 'soon', '13 pm', '0 am']) {
      expect(value(typed)).toBeUndefined();
    }
  });

  it('is written on both clocks', () => {
    expect(writeClock(1110, '24')).toBe('18:30');
    expect(writeClock(1110, '12')).toBe('6:30 pm');
    expect(writeClock(15, '12')).toBe('12:15 am');
    expect(writeClock(-30, '24')).toBe('23:30');
  });
});

describe('a number as cooks type it', () => {
  const bounds = { lowest: 0, highest: 500 };
  it('is read with a point, a comma or a fraction', () => {
    expect(readDecimal('2,5', bounds)).toEqual({ ok: true, value: 2.5 });
    expect(readDecimal('1 1/2', bounds)).toEqual({ ok: true, value: 1.5 });
    expect(readDecimal('2½', bounds)).toEqual({ ok: true, value: 2.5 });
  });

  it('is refused outside its bounds, and where it is no number', () => {
    for (const typed of ['-1', '501', '', 'ten', '1e3', '1/0', 'NaN']) {
      expect(readDecimal(typed, bounds)).toEqual({ ok: false });
    }
    expect(readWhole('2.5', bounds)).toEqual({ ok: false });
  });
});
