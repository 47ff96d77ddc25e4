// The coals door as it is read: sizes of both measures, what moved the count, where a line stands.

import { describe, expect, it } from 'vitest';
import { heard } from './heard.ts';

const coals = (...words: readonly string[]) => heard(['coals', ...words]);

const TWELVE = ['--oven', '12 in', '--heat', '350 F'] as const;

describe('an oven measured in centimetres', () => {
  it.each(['20 cm', '41 cm'])('%s is within what the refusal says is known', (size) => {
    const { exit, error } = coals('--oven', size, '--heat', '180 C');
    expect(error).toBe('');
    expect(exit).toBe(0);
  });

  it.each(['19.5 cm', '41.5 cm'])('%s is not', (size) => {
    expect(coals('--oven', size, '--heat', '180 C').error).toMatch(/20.cm to 41.cm/);
  });

  it('is called by its centimetres where only these are whole', () => {
    expect(coals('--oven', '30 cm', '--heat', '180 C').out).toMatch(/^30-cm regular\n/);
    expect(coals('--oven', '12 in', '--heat', '180 C').out).toMatch(/^12-inch regular\n/);
    expect(coals('--oven', '30.48 cm', '--heat', '180 C').out).toMatch(/^12-inch regular\n/);
  });
});

describe('the lines of the sheet', () => {
  it('says warm air, never a cold below zero', () => {
    const { flat } = coals(...TWELVE, '--air', 'hot');
    expect(flat).toMatch(/warm air −\d/);
    expect(flat).not.toMatch(/cold −/);
  });

  it.each([
    ['fry', ['--heat', '375 F']],
    ['keep-warm', []],
  ])('does not say that a %s bakes', (method, more) => {
    const { flat } = coals('--oven', '12 in', '--method', method, '--minutes', '60', ...more);
    expect(flat).not.toContain('while it bakes');
  });

  it('puts what is done at the oven before what is lit for later', () => {
    const { flat } = coals(...TWELVE, '--minutes', '90');
    expect(flat).not.toMatch(/ashed over in about 20 min\. (Food|Turn|Add)/);
  });

  it('underlines a title by its own length', () => {
    const [, title, line] = coals(...TWELVE).out.split('\n');
    expect(line).toBe('='.repeat(title!.length));
  });

  it('asks for a whole number, none being 0', () => {
    expect(coals(...TWELVE, '--above', '-3').error).toContain('a whole number, none is 0');
  });
});

describe('the wind', () => {
  it('is read by its force: Beaufort 3 is 3.4 to 5.4 m/s (wmo306 code table 1100)', () => {
    const named = coals(...TWELVE, '--wind', 'Beaufort 3');
    expect(named.error).toBe('');
    expect(named.out).toBe(coals(...TWELVE, '--wind', '4.4 m/s').out);
    expect(coals(...TWELVE, '--wind', 'Beaufort 13').exit).toBe(3);
  });

  it('is said as what reaches the oven, without the name of a wind ten metres up', () => {
    const { flat } = coals(...TWELVE, '--wind', '12 m/s', '--measures', 'metric');
    expect(flat).toMatch(/About \d\.\d m\/s of the wind reaches 12-inch regular, near the ground/);
    expect(flat).not.toContain('light breeze');
  });
});

describe('an oven too heavy for one', () => {
  it.each([
    ['14 in', true],
    ['16 in', true],
    ['16 in', false],
  ])('of %s, deep %s, is lifted and turned by two (AT-THE-FIRE 9)', (size, deep) => {
    const { flat } = coals('--oven', size, '--heat', '350 F', ...(deep ? ['--deep'] : []));
    expect(flat).toContain('Two people turn: oven with its lid');
    expect(flat).toContain('Two people lift this oven');
  });

  it.each(['12 in', '14 in'])('is not a regular one of %s', (size) => {
    expect(coals('--oven', size, '--heat', '350 F').flat).not.toContain('Two people');
  });
});
