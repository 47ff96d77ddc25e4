// The readings command beside the rules: cores, the two hours, cooling in two stages.

import { describe, expect, it } from 'vitest';
import { EXIT } from './exit.ts';
import { heard, UNSAYABLE } from './heard.ts';

const told = (...words: readonly string[]) => heard(['readings', ...words]);

describe('emberwright readings', () => {
  it('is done by the core alone: 145 F for a roast, 165 F for poultry (foodsafety-chart)', () => {
    const run = ['18:05 138 F', '18:12 146 F'];
    expect(told(...run, '--food', 'whole-meat').out).toContain('The middle was hot enough');
    expect(told(...run, '--food', 'poultry').out).toContain('NOT DONE: cook on');
    const hour = told('18:00 140 F', '19:00 140 F', '--food', 'whole-meat');
    expect(hour.out).toContain('NOT DONE'); // 35 powers of ten, and still not what the card asks
    expect(hour.flat).toContain('explains, never decides');
  });

  it('cools in time at 70 F in 2 h and 40 F by 6, past midnight too (food-code-3-501-14)', () => {
    const cooled = told('22:00 140 F', '23:40 70 F', '03:30 40 F', '--air', 'mild');
    expect(cooled.out).toContain('Cooled in time');
    expect(told('19:00 140 F', '21:30 72 F').out).toContain(
      'heat it to 165 °F and begin once more',
    );
    expect(told('19:00 140 F', '20:00 70 F', '02:00 45 F').out).toContain('throw it away');
    expect(told('19:00 100 F', '20:00 70 F').flat).toContain('the clock began before it');
    expect(told('18:00 60 °C', '19:00 30 °C', '--measures', 'metric').out).toContain(
      'In time so far',
    );
  });

  it('counts what is neither hot nor cold, 1 h where the air is hot or not said (fsis-two-hours)', () => {
    expect(told('12:00 90 F', '13:30 90 F', '--air', 'mild').flat).toContain('1 h 30 min');
    expect(told('12:00 90 F', '13:30 90 F', '--air', 'mild').out).not.toContain('thrown away');
    expect(told('12:00 90 F', '13:30 90 F', '--air', '95 F').out).toContain('thrown away');
    expect(told('12:00 90 F', '13:30 90 F').out).toContain('thrown away');
  });

  it('names a reading that can not be read, an unknown food, and readings out of order', () => {
    for (const [words, wanted] of [
      [['warm'], 'a time and a heat'],
      [['18:00 hot'], 'a number and its unit'],
      [['25:99 150 F'], 'a time of day'],
      [['18:30 150 F', '18:10 150 F'], 'less than 12 hours'],
      [['18:30 150 F', '--food', 'unicorn'], '--food'],
    ] as const) {
      const found = told(...words);
      expect(found.exit, words.join()).toBe(EXIT.wrongUse);
      expect(found.error, words.join()).toContain(wanted);
    }
    expect(told('18:30 150 F').out).not.toMatch(UNSAYABLE);
  });
});
