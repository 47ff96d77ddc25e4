// The command `replan`, and `plan --why`, end to end.

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { heard, UNSAYABLE } from './heard.ts';

const folder = mkdtempSync(join(tmpdir(), 'emberwright-'));
const camp = join(folder, 'camp.json');

const command = (...words: readonly string[]) => heard(words);

command('demo', 'pilcrow-creek', camp);

describe('emberwright replan', () => {
  it('says that the sheet still holds where nothing slipped', () => {
    const { exit, out } = command('replan', camp, '--now', '11:00');
    expect(exit).toBe(0);
    expect(out).toContain('The sheet still holds');
    expect(out).not.toMatch(UNSAYABLE);
  });

  it('serves half an hour later for guests who are half an hour late, and shows what moves', () => {
    const { exit, out } = command('replan', camp, '--now', '9:00', '--slip', 'guests 30 min late');
    expect(exit).toBe(0);
    expect(out).toContain('13:30'); // wanted at 13:00
    expect(out).toContain('What moves');
    expect(out).not.toMatch(UNSAYABLE);
  });

  it('takes several slips, in US measures and a 12-hour clock, and ends with 1 where it is late', () => {
    const { exit, out } = command(
      'replan',
      camp,
      '--now',
      '12:10',
      '--slip',
      'chimney 1 failed',
      'bake of loaf 40 min longer',
      '--measures',
      'us',
      '--clock',
      '12',
    );
    expect(exit).toBe(1);
    expect(out).toMatch(/pm/);
    expect(out).not.toMatch(UNSAYABLE);
  });

  it('offers the same order first where work is behind, and the loaf at most those minutes later', () => {
    const { out } = command('replan', camp, '--now', '12:20', '--slip', '10 min behind');
    expect(out).toContain('the same order, only later');
    expect(out).toMatch(/13:00 +13:(0\d|10) +Meadow pot loaf/); // wanted, served
  });

  it('takes a chimney at its latest lighting, not the one of hours ago, and says which', () => {
    const harrow = join(folder, 'harrow.json');
    command('demo', 'harrow-saddle', harrow);
    const asked = ['replan', harrow, '--now', '16:40', '--slip'];
    const { out } = command(...asked, 'chimney 2 failed');
    expect(out).toMatch(/Heard: chimney 2, lit at 16:[0-3]\d, did not catch/);
    expect(out).not.toContain('The sheet still holds');
    expect(out).not.toMatch(UNSAYABLE);
    expect(command(...asked, 'rise of rolls 15 min longer').out).toMatch(/Heard: second rise of/);
  });

  it('says that all is done where nothing is left, and does not say that it holds', () => {
    const { out } = command('replan', camp, '--now', '23:00', '--slip', '10 min behind');
    expect(out).toContain('All is done');
    expect(out).not.toContain('still holds');
  });

  it('names who would work outside their hours, at which oven and how long', () => {
    const { out } = command('replan', camp, '--now', '12:20', '--slip', 'hand cook gone');
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /The cook would work .*min outside their hours \([a-z ]+, the ten-inch at 12:/i,
    );
    expect(out).not.toMatch(UNSAYABLE);
  });

  it('says what can slip where it can not read it', () => {
    const { exit, error } = command('replan', camp, '--now', '11:00', '--slip', 'the dog ate it');
    expect(exit).toBe(3);
    expect(error).toContain('--slip: found "the dog ate it"');
    const none = command('replan', camp, '--now', '11:00', '--slip', 'oven Z dropped');
    expect(none.error).toContain('an oven of this camp');
  });
});

describe('emberwright plan --why', () => {
  it('has a reason and a latest start for each job, and a band for each dish', () => {
    const { out } = command('plan', camp, '--why');
    expect(out).toContain('Why then, and how late may it begin?');
    expect(out).toContain('How sure are these times?');
    expect(out).toMatch(/before mix/);
    expect(out).not.toMatch(UNSAYABLE);
    expect(command('plan', camp).out).not.toContain('Why then');
  });
});
