// Two ovens stacked, as printed: the engine's counts by layer, its span, its cautions.

import { describe, expect, it } from 'vitest';
import { isRefusal, kelvin, minutes, stackOvens, usualLoad } from '#engine';
import { fireOf } from './fire.ts';
import { heard, testShell, UNSAYABLE } from './heard.ts';

const command = (...words: readonly string[]) => heard(words);

const stacked = (oven: string, minutesIn = 40) => {
  const fire = fireOf({ oven }, testShell);
  if (isRefusal(fire)) throw new Error(fire.code);
  const request = (loadId: string) => ({
    loadId,
    oven: { ...fire.oven, id: loadId },
    air: fire.air,
    place: fire.camp.place,
    screened: false,
    fuel: fire.camp.fuel,
    load: usualLoad(fire, 'bake'),
    ironAtStart: fire.air.temperature,
    pins: {},
    wish: {
      method: 'bake' as const,
      wanted: kelvin((350 + 459.67) / 1.8),
      minutes: minutes(minutesIn),
      preheat: true,
    },
  });
  const stack = stackOvens({ lower: request('lower'), upper: request('upper') });
  if (isRefusal(stack)) throw new Error(stack.code);
  return stack;
};

describe('emberwright stack', () => {
  it.each(['10 in', '12 in', '14 in'])(
    'of %s prints each layer, all of them and the span saved',
    (oven) => {
      const { lower, between, upper, coals, apart, saved, savedAtLeast } = stacked(oven);
      const { exit, flat } = command('stack', '--oven', oven, '--heat', '350 F');
      expect(exit).toBe(0);
      expect(flat).toContain(`${upper.above} on top ${between} between ${lower.below} below`);
      expect(flat).toContain(`${coals} to start with where side by side would take ${apart}`);
      expect(flat).toContain(`${savedAtLeast} to ${saved} fewer`);
      expect(flat).not.toMatch(UNSAYABLE);
    },
  );

  it('counts what is added, says when each chimneyful is lit, how coals get between, and what to check (chimneyMinutes; common practice)', () => {
    const { coalsInAll } = stacked('12 in');
    const { flat } = command('stack', '--oven', '12 in', '--heat', '350 F');
    expect(flat).toContain(`With what is added later ${coalsInAll} in all`);
    expect(flat).toMatch(/(1[5-9]|2[0-5]) min before Light \d+ for the first set/);
    expect(flat).toMatch(
      /Upper oven straight up and off to bare ground.* add \d+ between, upper oven on again/,
    );
    expect(flat).toMatch(/Checks of the upper oven.*Checks of the lower oven/);
  });

  it('says what to mind: no third, lifting apart, ash at the lower lid, and where each coal is drawn', () => {
    const { out, flat } = command('stack', '--oven', '12 in', '--heat', '350 F');
    expect(out).toMatch(/never three/);
    expect(flat).toMatch(/upper oven straight up and off/);
    expect(flat).toMatch(/A tilted lid spills ash/);
    expect(flat).toMatch(/\[Drawing: Two ovens one on the other/);
    expect(flat).toMatch(/Published savings are 15 to 20 coals/);
  });

  it('speaks metric, shovels for wood, and keeps the cook’s own counts', () => {
    const wood = command('stack', '--oven', '30 cm', '--heat', '190 C', '--fuel', 'wood');
    expect(wood.out).toMatch(/shovels? between/);
    expect(wood.out).not.toMatch(/briquette|°F/);
    const own = command('stack', '--oven', '12 in', '--between', '14', '--below', '9');
    expect(own.flat).toMatch(/14 between 9 below/);
  });

  it('ends with 1 and says why two can not be stacked (stackLike)', () => {
    const large = command('stack', '--oven', '10 in', '--upper-oven', '12 in');
    expect(large.exit).toBe(1);
    expect(large.error).toMatch(/larger than the oven under it/);
    const unlike = command('stack', '--oven', '12 in', '--heat', '350 F', '--upper-heat', '450 F');
    expect(unlike.error).toMatch(/want different heat/);
    expect(command('stack', '--oven', '12 in', '--method', 'fry').error).toMatch(/--method/);
  });
});

describe('a small oven on a large deep one', () => {
  const { flat } = command(
    ...['stack', '--oven', '14 in', '--deep', '--upper-oven', '10 in', '--heat', '350 F'],
  );

  it('has no more in the ring under the upper floor than that floor holds', () => {
    const [, all, ring, inner] =
      /Between: (\d+): (\d+) in a ring under the upper floor, off its legs; (\d+) in a second ring/.exec(
        flat,
      ) ?? [];
    const beside = /(\d+) beside them on the lower lid/.exec(flat)?.[1] ?? 0;
    expect(Number(ring) + Number(inner) + Number(beside)).toBe(Number(all));
    // Coals of 25 g are about 45 mm wide; a 10 inch oven's floor is 0.84 of it (ovenSizing).
    expect(Number(ring)).toBeLessThanOrEqual((Math.PI * (0.84 * 254 - 45)) / 45);
  });

  it('says to turn at the only chance, when they stand apart with food in', () => {
    const lifts = flat.match(/Upper oven straight up and off to bare ground, sweep/g) ?? [];
    const turns = flat.match(/turn the food now: each oven with its lid a quarter/g) ?? [];
    expect(lifts.length).toBeGreaterThan(0);
    expect(turns.length).toBe(lifts.length);
  });

  it('says where the upper lid goes, and who lifts the heavy one (AT-THE-FIRE 6 and 9)', () => {
    expect(flat).toContain('Its lid goes, coals on it, level to the lid stand on the ground');
    expect(flat).toContain('Two people lift the lower oven');
    expect(flat).not.toContain('Two people lift the upper oven');
  });
});
