// The commands end to end: what is printed, what is written, how it ends.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { demoIds } from '#formats';
import { heard, testShell, UNSAYABLE } from './heard.ts';
import { run } from './run.ts';
import { realShell } from './shell.ts';

/** Mouths, shopping, labels, boxes, fuel with water and ice; fire card, log, allergens, wash, ash. */
const CARRIED = 10;

const folder = mkdtempSync(join(tmpdir(), 'emberwright-'));
const inFolder = (name: string) => join(folder, name);

const command = (...words: readonly string[]) => heard(words, { ...testShell, columns: 90 });

describe('emberwright tonight', () => {
  it('prints a dish card from two answers and says what it assumed', () => {
    const { exit, out } = command('tonight', '--what', 'biscuits', '--oven', '12 in');
    expect(exit).toBe(0);
    expect(out).toMatch(/\d+ above: /);
    expect(out).toContain('Checks: every count is only a start');
    expect(out).toMatch(/Assumed, change what is wrong: .*briquettes of 25 g/s);
    expect(out).not.toMatch(UNSAYABLE);
    expect(out).toContain('Inside the bread'); // and nobody here has a thermometer
  });

  it('keeps a pinned count and says so', () => {
    const { out } = command(
      'tonight',
      '--what',
      'biscuits',
      '--oven',
      '12 in',
      '--above',
      '17',
      '--below',
      '8',
    );
    expect(out).toContain('17 above');
    expect(out).toContain('8 below');
    expect(out).toContain('pinned');
  });

  it('reads weather, height, fuel and amount in a cook’s words', () => {
    const { exit, out, error } = command(
      'tonight',
      '--what',
      'soda-bread',
      '--oven',
      '30 cm',
      '--wind',
      'leaves rustle',
      '--air',
      '45 F',
      '--height',
      'boils at 198 F',
      '--fuel',
      'wood',
      '--amount',
      '2 cups',
    );
    expect(error).toBe('');
    expect([0, 1]).toContain(exit);
    expect(out).toMatch(/shovels? above/);
    expect(out).not.toMatch(/briquette/i);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(/Assumed, .*feeder fire lit 1 h before/);
  });

  it('asks for more than was given as wrong use, and shows what to write', () => {
    for (const [words, wanted] of [
      [['--what', 'biscuits', '--oven', 'big'], /--oven: found "big".*Write --oven "12 in"/s],
      [
        ['--what', 'biscuits', '--oven', '12 in', '--eat-at', 'noonish'],
        /--eat-at: found "noonish"/,
      ],
      [['--what', 'biscuits', '--oven', '12 in', '--wind', 'lots'], /leaves rustle/],
      [['--what', 'biscuits', '--oven', '12 in', '--amount', 'some'], /--amount: found "some"/],
      [['--what', 'cake-walk', '--oven', '12 in'], /emberwright recipes/],
      [['--what', 'biscuits', '--oven', '12 in', '--height', 'boils at 300 F'], /--height/],
      [['--what', 'biscuits'], /--oven/],
    ] as const) {
      const { exit, error } = command('tonight', ...words);
      expect(error).toMatch(wanted);
      expect(exit).toBe(3);
    }
  });

  it('takes ground, chimneys, hands, weighed coals and a cold oven, and assumes them no longer', () => {
    const bread = ['tonight', '--what', 'fire-bread', '--oven', '12 in', '--clock', '24'] as const;
    const { error, out } = command(
      ...bread,
      ...['--ground', 'gravel', '--chimneys', '2', '--hands', '2', '--wind-from', 'south-west'],
      ...['--coal-mass', 'ten weigh 240 g', '--cold-oven'],
    );
    expect(error).toBe('');
    const assumed = /Assumed, change what is wrong: (.*)/s.exec(out)?.[1] ?? '';
    expect(assumed).not.toMatch(/chimney|hands|briquettes|soil|oven cold|wind from/);
    expect(command(...bread).out).toMatch(/wind from the [NESW]+/);
    expect(command(...bread, '--ground', 'moon').error).toMatch(/soil or grass/);
    expect(command(...bread, '--coal-mass', '9 kg').error).toMatch(/ten weigh 240 g/);
    expect(command(...bread, '--cold-oven', '--hot-oven').exit).toBe(3);
  });

  it('says why it plans nothing in a storm, in killing cold or below the sea', () => {
    for (const [words, wanted] of [
      [['--wind', '200 m/s'], /Stop: .*wind/i],
      [['--air', '-80 C'], /Stop: .*cold|air/i],
      [['--height', '-900 m'], /Stop: /],
    ] as const) {
      const { exit, error } = command('tonight', '--what', 'biscuits', '--oven', '12 in', ...words);
      expect(exit).toBe(1);
      expect(error).toMatch(wanted);
      expect(error).not.toMatch(UNSAYABLE);
    }
  });

  it('is never late where no serving time was wished', () => {
    for (const what of ['biscuits', 'corn-bread', 'rolls']) {
      const { exit, out } = command(
        ...['tonight', '--what', what, '--oven', '12 in', '--fuel', 'wood', '--now', '16:00'],
      );
      expect(exit, what).toBe(0);
      expect(out).not.toMatch(/late by|too late|in time only/i);
    }
  });

  it('says that a serving time is past, as something that stops the plan', () => {
    const { exit, error } = command(
      'tonight',
      '--what',
      'biscuits',
      '--oven',
      '12 in',
      '--eat-at',
      '11:00',
    );
    expect(exit).toBe(1);
    expect(error).toMatch(/^Stop: /);
    expect(error).not.toMatch(UNSAYABLE);
  });

  it('takes a recipe out of a camp file', () => {
    command('demo', 'pilcrow-creek', inFolder('camp.json'));
    const { out, error } = command('tonight', '--what', inFolder('camp.json'), '--oven', '10 in');
    expect(error).toBe('');
    expect(out).toContain('Meadow pot loaf');
  });
});

describe.each(demoIds)('emberwright plan of the demo camp %s', (id) => {
  const file = inFolder(`${id}.json`);

  it('is written by demo, read by look-over, planned to text, data and pages', () => {
    expect(command('demo', id, file).exit).toBe(0);
    expect([0, 1]).toContain(command('look-over', file).exit);
    for (const measures of ['us', 'metric']) {
      const { exit, out, error } = command('plan', file, '--measures', measures);
      expect([0, 1]).toContain(exit);
      expect(error).toBe('');
      expect(out).not.toMatch(UNSAYABLE);
      for (const line of out.split('\n').slice(0, -3)) expect(line.length).toBeLessThanOrEqual(92);
    }
    const data = JSON.parse(command('plan', file, '--json').out);
    expect(data.camp.id).toBe(id);
  });

  it('has a page for every dish and hand in the index, and nothing unsayable in them', () => {
    const sheets = inFolder(`${id}-sheets`);
    command('plan', file, '--sheets', sheets);
    const pages = readdirSync(sheets).filter((name) => name.endsWith('.html'));
    const { camp, menu } = JSON.parse(command('plan', file, '--json').out);
    expect(pages).toHaveLength(6 - 1 + 4 + CARRIED + menu.dishes.length + camp.hands.length + 1);
    const index = readFileSync(join(sheets, 'index.html'), 'utf8');
    for (const page of pages.filter((name) => name !== 'index.html'))
      expect(index).toContain(`href="${page}"`);
    for (const page of pages) {
      const html = readFileSync(join(sheets, page), 'utf8');
      expect(html).not.toMatch(UNSAYABLE);
      expect(html.match(/<svg/g)?.length ?? 0).toBe(html.match(/<\/svg>/g)?.length ?? 0);
    }
  });

  it('never counts briquettes where wood is burnt (AT-THE-FIRE 13)', () => {
    const { camp } = JSON.parse(command('plan', file, '--json').out);
    const book = readFileSync(join(inFolder(`${id}-sheets`), 'book.html'), 'utf8');
    const told = book.replace(/<style>.*?<\/style>/s, '');
    expect(/briquette|\b\d+ coals\b/i.test(told)).toBe(camp.fuel.kind === 'briquettes');
  });
});

describe('trouble with a file', () => {
  it('names the path, what was found, what was wanted and what to do, and ends with 2', () => {
    const file = inFolder('wrong.json');
    const camp = JSON.parse(command('demo', 'pilcrow-creek').out);
    writeFileSync(
      file,
      JSON.stringify({ ...camp, ovens: [{ ...camp.ovens[0], diameter: 'wide' }] }),
    );
    for (const word of ['plan', 'look-over']) {
      const { exit, error } = command(word, file);
      expect(exit).toBe(2);
      expect(error).toMatch(/ovens\[0\]\.diameter: found .*wide.*, wanted .*\. /);
    }
  });

  it('says that a file is not there, is a folder, or is broken, and ends with 2', () => {
    writeFileSync(inFolder('broken.json'), '{ "emberwright": ');
    for (const path of [inFolder('nowhere.json'), folder, inFolder('broken.json')]) {
      const { exit, error } = command('plan', path);
      expect(exit).toBe(2);
      expect(error).toContain(path);
    }
  });
});

describe('a plan that something stops', () => {
  it('ends with 1 where fire is forbidden, and still prints the plan', () => {
    const file = inFolder('no-fire.json');
    const camp = JSON.parse(command('demo', 'pilcrow-creek').out);
    writeFileSync(
      file,
      JSON.stringify({ ...camp, place: { ...camp.place, restriction: 'stage-2' } }),
    );
    const { exit, out } = command('plan', file);
    expect(exit).toBe(1);
    expect(out).toMatch(/no charcoal|No coals|forbid|restriction/i);
  });

  it('ends with 1 where it is too late to begin', () => {
    command('demo', 'pilcrow-creek', inFolder('camp.json'));
    expect(command('plan', inFolder('camp.json'), '--now', '12:55').exit).toBe(1);
  });
});

describe('help and wrong use', () => {
  it('teaches with examples and the list of endings, for every command', () => {
    for (const words of [
      ['--help'],
      ['tonight', '--help'],
      ['plan', '--help'],
      ['demo', '--help'],
      ['look-over', '--help'],
    ]) {
      const { exit, out } = command(...words);
      expect(exit).toBe(0);
      expect(out).toMatch(/emberwright \w/);
      expect(out).toContain('How it ends');
    }
  });

  it('ends with 3 for a command, option or dish that is not known', () => {
    command('demo', 'pilcrow-creek', inFolder('camp.json'));
    for (const words of [
      ['bake'],
      ['plan'],
      ['plan', inFolder('camp.json'), '--colour'],
      ['plan', inFolder('camp.json'), '--dish', 'soup'],
      ['demo', 'nowhere'],
      ['plan', inFolder('camp.json'), '--measures', 'stones'],
    ]) {
      expect(command(...words).exit).toBe(3);
    }
  });

  it('lists ready recipes and demo camps', () => {
    expect(command('recipes').out).toMatch(/biscuits/);
    for (const id of demoIds) expect(command('demo').out).toContain(id);
  });
});

describe('a fault of ours', () => {
  it('ends with 70 and says that the file is untouched', () => {
    let error = '';
    const exit = run(['recipes'], {
      ...realShell(),
      out: () => {
        throw new Error('the pen broke');
      },
      error: (text) => {
        error += text;
      },
    });
    expect(exit).toBe(70);
    expect(error).toMatch(/fault of Emberwright.*the pen broke/s);
  });
});

describe('the program as it is started', () => {
  it('hands its exit code to the machine and reads a camp from the input', () => {
    const main = fileURLToPath(new URL('./main.ts', import.meta.url));
    const root = fileURLToPath(new URL('..', import.meta.url));
    const start = (words: readonly string[], input = '') =>
      spawnSync(process.execPath, ['--import', 'tsx', main, ...words], {
        cwd: root,
        input,
        encoding: 'utf8',
      });
    expect(start(['bake']).status).toBe(3);
    const camp = command('demo', 'pilcrow-creek').out;
    const read = start(['look-over', '-'], camp);
    expect(read.stdout).toContain('- is a camp');
    expect(start(['plan', '-'], 'no camp').status).toBe(2);
  });
});
