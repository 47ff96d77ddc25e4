// Which fire and which job is meant by a few words in the middle of a day. Days are hand-made; that a
// cook speaks of what burns or runs now is common practice, no source.

import { describe, expect, it } from 'vitest';
import { at } from '../../../validation/timetable/build-meal.ts';
import type { DaySheet } from '../day-sheet.ts';
import { jobMeant, lightingMeant } from './meant.ts';

const job = (id: string, kind: string, from: string, to: string, hands: readonly string[] = []) =>
  ({ id, kind, dish: 'rolls', start: at(from), end: at(to), hands, values: {} }) as never;
const fire = (id: string, chimney: number, from: string, use: string) =>
  ({ id, chimney, at: at(from), readyAt: at(from) + 27, uses: [{ job: use, coals: 9 }] }) as never;

const sheet = {
  jobs: [
    job('rise-1', 'rise', '14:00', '15:30'),
    job('shape-1', 'shape', '15:40', '16:00', ['anna']),
    job('second-rise-1', 'second-rise', '16:20', '17:00'),
    job('lay-1', 'lay-coals', '15:10', '15:12', ['anna']),
    job('lay-2', 'lay-coals', '17:05', '17:07', ['anna']),
    job('lay-3', 'lay-coals', '18:05', '18:07', ['anna']),
  ],
  lightings: [
    fire('lighting-1', 2, '14:42', 'lay-1'),
    fire('lighting-2', 1, '16:00', 'lay-2'),
    fire('lighting-3', 2, '16:37', 'lay-2'),
    fire('lighting-4', 2, '17:38', 'lay-3'),
  ],
} as unknown as DaySheet;

describe('the fire that is meant by its chimney', () => {
  it.each([
    ['burns and is not laid yet', 2, '16:40', 'lighting-3'],
    ['is due next, all before it being laid', 2, '17:20', 'lighting-4'],
    ['is due first, before any is lit', 2, '14:00', 'lighting-1'],
    ['was the last, when all is over', 2, '20:00', 'lighting-4'],
    ['stands in the other chimney', 1, '16:40', 'lighting-2'],
  ])('is the one that %s', (_, chimney, now, id) => {
    expect(lightingMeant(sheet, chimney, at(now))?.id).toBe(id);
  });

  it('is none where no chimney has that number', () => {
    expect(lightingMeant(sheet, 5, at('16:40'))).toBeUndefined();
  });
});

describe('the rise that is meant', () => {
  it.each([
    ['the first while it runs', '15:00', 'rise-1'],
    ['the first where it is just over and nobody has gone on', '15:35', 'rise-1'],
    ['the second while that runs', '16:40', 'second-rise-1'],
    ['the second before it, the dough being shaped', '16:10', 'second-rise-1'],
  ])('is %s', (_, now, id) => {
    const said = { dish: 'rolls', kind: 'rise', longer: 15 };
    expect(jobMeant(sheet, said, at(now))?.id).toBe(id);
  });
});
