// The worker's answer for a day that slipped, from a demo camp's file.

import { describe, expect, it } from 'vitest';
import { demoCamps } from '#formats';
import { replanAnswer } from './replan.ts';

const demo = demoCamps('2026-09-08').find(({ camp }) => camp.id === 'pilcrow-creek')!;
const file = JSON.stringify(demo.file);
const voice = { measures: 'us', clock: '12' } as const;

describe('a slipped day on the page', () => {
  it('says what can slip at this hour and how the day can go on, in the words of this reader', () => {
    const slips = [{ kind: 'guests-late' as const, minutes: 30 }];
    const answer = replanAnswer({ ask: 'replan', file, nowMinutes: 11 * 60, slips, voice });
    expect(answer.choices?.dishes.map(({ id }) => id)).toEqual(
      demo.menu.dishes.map(({ id }) => id),
    );
    expect(answer.choices?.running.length).toBeGreaterThan(0);
    const text = JSON.stringify(answer.sheet);
    expect(text).toContain('1:30'); // half an hour after one o'clock
    expect(text).not.toMatch(/undefined|NaN/);
  });

  it('says what can not be read in the camp instead of a sheet', () => {
    const broken = JSON.stringify({ ...demo.file, hands: 'many' });
    const answer = replanAnswer({
      ask: 'replan',
      file: broken,
      nowMinutes: 660,
      slips: [],
      voice,
    });
    expect(answer.sheet).toBeUndefined();
    expect(answer.troubles.length).toBeGreaterThan(0);
  });
});
