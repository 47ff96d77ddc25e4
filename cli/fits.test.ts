// What fits, as printed: the engine's answer, in both measures; every kind in every usual size.

import { describe, expect, it } from 'vitest';
import { FIT_KINDS, fromUnit, isRefusal, nominalOven, sayFor, whatFits } from '#engine';
import { heard, UNSAYABLE } from './heard.ts';

const command = (...words: readonly string[]) => heard(['fits', ...words]);

describe('emberwright fits', () => {
  it('prints what the engine says, for every kind and size, in both measures, or a plain stop', () => {
    const names = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };
    for (const what of FIT_KINDS) {
      for (const inches of [8, 10, 12, 14, 16]) {
        for (const measures of ['us', 'metric'] as const) {
          const told = command('--what', what, '--oven', `${inches} in`, '--measures', measures);
          expect(told.out + told.error, `${what} ${inches}`).not.toMatch(UNSAYABLE);
          const fit = whatFits(nominalOven(fromUnit(inches, 'inch')), { what });
          expect(told.exit).toBe(isRefusal(fit) ? 1 : 0);
          if (isRefusal(fit)) continue;
          const say = sayFor({ measures, clock: '24', plan: names });
          const mass = say.mass(fit.mass).replaceAll('\u00a0', ' ');
          expect(told.flat.replaceAll('\u00a0', ' '), `${what} ${inches}`).toContain(mass);
          expect(told.flat).toMatch(/has a floor of about/);
        }
      }
    }
  });

  it('has no column that is empty for every oven', () => {
    const loaf = command('--what', 'loaf', '--amount', '2.05 kg', '--oven', '12 in', '10 in');
    expect(loaf.out).toMatch(/^oven +floor +weight *$/m);
    const cut = command('--what', 'biscuits', '--amount', '1 kg', '--oven', '12 in', '10 in');
    expect(cut.out).toMatch(/^oven +floor +weight +pieces/m);
  });

  it('says which floor it reckoned with: the usual one, or the one that was measured', () => {
    const measured = command('--what', 'round', '--oven', '12 in', '--floor', '9 1/2 in');
    expect(measured.flat).toMatch(/floor that you measured/);
    expect(measured.flat).toMatch(/called 12 in/);
  });

  it('shares an amount over ovens, with what is left over; or names the sizes that hold it', () => {
    const over = ['--what', 'batter', '--amount', '4 kg', '--oven', '12 in', '10 in'];
    expect(command(...over).flat).toMatch(
      /left over: make it .* thick instead of .* or bake it in 2 turns/,
    );
    const which = command('--what', 'round', '--amount', '570 g', '--thick', '1/2 in');
    expect(which.flat).toMatch(/12-inch deep/);
    expect(which.exit).toBe(0);
  });

  it('asks again, by name, for what it can not read or lay', () => {
    const asked: readonly (readonly [readonly string[], RegExp])[] = [
      [['--what', 'trifle', '--oven', '12 in'], /--what/],
      [['--what', 'round'], /--oven/],
      [['--what', 'round', '--oven', '12 in', '10 in'], /amount/],
      [['--what', 'round', '--oven', '12 in', '--thick', '0 in'], /--thick/],
      [['--what', 'round', '--oven', '12 in', '--floor', '20 in'], /--floor/],
      [['--what', 'rolls', '--oven', '12 in', '--wedges', 'many'], /--wedges/],
    ];
    for (const [words, named] of asked) {
      const told = command(...words);
      expect(told.exit, words.join(' ')).toBe(3);
      expect(told.error).toMatch(named);
    }
    const stopped = command('--what', 'batter', '--oven', '8 in', '--thick', '3 in');
    expect([stopped.exit, stopped.out]).toEqual([1, '']);
    expect(command('--what', 'round', '--oven', '40 in').exit).toBe(1);
  });
});
