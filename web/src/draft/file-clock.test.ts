import { describe, expect, it } from 'vitest';
import { readClock, writeClock } from '#formats';
import { readFileClock, writeFileClock } from './file-clock.ts';

describe('times of a camp file', () => {
  it('are read and written as the reader of camp files does it', () => {
    for (const minutes of [0, 5, 719, 720, 1110, 1439, 1440, 1800, -30, -1440, 2 * 1440 + 61]) {
      expect(writeFileClock(minutes)).toBe(writeClock(minutes));
      expect(readFileClock(writeClock(minutes))).toBe(readClock(writeClock(minutes)));
    }
    for (const text of ['', 'soon', '25:00', '18:75', '6 pm']) {
      expect(readFileClock(text)).toBe(readClock(text));
    }
  });
});
