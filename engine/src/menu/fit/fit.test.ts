// What goes into an oven. Truth: published yields of service cards, plane and solid geometry, the
// best-known packings of circles, Archimedes; one trade figure as a check value only.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import yields from '../../../validation/menu/fit-yields.json' with { type: 'json' };
import { ovenMade } from '../../../validation/menu/made.ts';
import sizes from '../../../validation/menu/oven-sizes.json' with { type: 'json' };
import type { CampOven } from '../../camp/camp.ts';
import { isRefusal } from '../../notice/notice.ts';
import { fromUnit, inUnit } from '../../quantity/convert.ts';
import { grams, metres } from '../../quantity/unit.ts';
import { floorOf } from '../geometry.ts';
import { contactFigures } from '../in-oven.ts';
import { recipeMass } from '../pieces.ts';
import { readyRecipes } from '../ready-recipes.ts';
import { askAbout } from './as-recipe.ts';
import { portionsIn } from './feeds.ts';
import { FIT_KINDS, type FitAsk, type OvenFit } from './fit.ts';
import { sizesFor } from './sizes.ts';
import { spreadBatch } from './spread-batch.ts';
import { howItLies, whatFits } from './what-fits.ts';

const FINGER = 0.012;
const SIZES = [8, 10, 12, 14, 16] as const;
const inch = (inches: number) => fromUnit(inches, 'inch');

function fitIn(oven: CampOven, ask: FitAsk): OvenFit {
  const fit = whatFits(oven, ask);
  if (isRefusal(fit)) throw new Error(fit.code);
  return fit;
}
const wanted = (what: string) => {
  const row = yields.rows.find(([name]) => name === what);
  if (row === undefined) throw new Error(`no row "${what}"`);
  return { value: Number(row[1]), tolerance: Number(row[2]) };
};
const expectNear = (found: number, what: string) => {
  const { value, tolerance } = wanted(what);
  expect(Math.abs(found / value - 1), `${what}: ${found}`).toBeLessThanOrEqual(tolerance);
};

describe('cut rounds', () => {
  const half = { what: 'biscuits', cutter: inch(2.5), thickness: inch(0.5) } as const;

  it('weigh what the service cards weigh (armedForcesRecipes D 001 00 and D-001)', () => {
    const { gramsEach } = fitIn(ovenMade('A', 12), half);
    expectNear(gramsEach, 'grams of one piece, card D 001 00');
    expectNear(gramsEach, 'grams of one piece, card D-001');
    expectNear(1000 / gramsEach, 'pieces of one kilogram of dough, card D 001 00');
  });

  it('lie on the floor as the packings have it, apart and touching (birginGentil2009)', () => {
    const oven = ovenMade('A', 12, { floorDiameter: inch(10) });
    expect(fitIn(oven, half).pieces).toBe(9);
    expect(fitIn(oven, { ...half, inOven: { pieces: 'touching' } }).pieces).toBe(11);
    const small = { ...half, cutter: inch(2) };
    expect(fitIn(oven, small).pieces).toBe(15);
    expect(fitIn(oven, { ...small, inOven: { pieces: 'touching' } }).pieces).toBe(19);
  });

  it('are as many as are drawn, none over another, none over the wall', () => {
    for (const inches of SIZES) {
      const { placed, pieces, floor } = fitIn(ovenMade('A', inches), half);
      expect(placed).toHaveLength(pieces);
      for (const [index, one] of placed.entries()) {
        expect(Math.hypot(one.x, one.y) + one.diameter / 2).toBeLessThan(floor / 2 + 1e-6);
        for (const other of placed.slice(index + 1)) {
          const apart = Math.hypot(one.x - other.x, one.y - other.y);
          expect(apart).toBeGreaterThan(one.diameter - 1e-6);
        }
      }
    }
  });
});

describe('a round rolled to just under half an inch', () => {
  it('of 568 g makes one 10-inch oven, by its floor: within 15 % (common practice, no source)', () => {
    const round = fitIn(ovenMade('A', 10), { what: 'round', thickness: metres(0.012) });
    expectNear(round.mass, 'grams of dough for the round of one 10-inch oven, rolled to 12 mm');
    expect(inUnit(round.floor, 'inch')).toBeCloseTo(8.4, 1);
  });

  it('wants 1.42 times as much if 10 inches are taken for the floor: so it is said which', () => {
    const nominal = ovenMade('A', 10, { floorDiameter: inch(10) });
    const ask = { what: 'round', thickness: metres(0.012) } as const;
    const more = fitIn(nominal, ask).mass / fitIn(ovenMade('A', 10), ask).mass;
    expect(more).toBeCloseTo((10 / 8.4) ** 2, 6);
    expect(fitIn(nominal, ask).isFloorMeasured).toBe(true);
    expect(fitIn(ovenMade('A', 10), ask).isFloorMeasured).toBe(false);
  });
});

describe('scaling from 8 to 16 inches', () => {
  it('keeps the thickness of all that is flat, so the mass goes with the floor (plane geometry)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('round' as const, 'wedges' as const, 'batter' as const),
        fc.double({ min: 0.008, max: 0.025, noNaN: true }),
        fc.constantFrom(...SIZES),
        fc.constantFrom(...SIZES),
        (what, thick, one, other) => {
          const ask = { what, thickness: metres(thick) };
          const [a, b] = [ovenMade('A', one), ovenMade('B', other)];
          const [small, large] = [fitIn(a, ask), fitIn(b, ask)];
          expect(small.rolledTo).toBe(ask.thickness);
          expect(large.thickness).toBeCloseTo(small.thickness, 6);
          expect(large.mass / small.mass).toBeCloseTo((floorOf(b) / floorOf(a)) ** 2, 5);
        },
      ),
      { seed: 29, numRuns: 200 },
    );
  });
});

describe('the lid', () => {
  it('is never nearer than a finger to what has risen, on a rack or off it, whatever is asked', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FIT_KINDS),
        fc.constantFrom(...SIZES),
        fc.constantFrom('regular' as const, 'deep' as const),
        fc.constantFrom('iron' as const, 'rack' as const, 'meal' as const, 'paper' as const),
        fc.double({ min: 0.002, max: 0.09, noNaN: true }),
        (what, inches, style, contact, thick) => {
          const oven = ovenMade('A', inches, { style });
          const ask = { what, thickness: metres(thick), inOven: { contact } };
          const fit = whatFits(oven, ask);
          if (isRefusal(fit)) {
            expect(fit.code).toBe('MENU_NOTHING_FITS');
            return;
          }
          expect(fit.headroom, `${what} in ${inches} ${style}`).toBeGreaterThan(FINGER - 1e-6);
          const under =
            what === 'pot' || fit.layers.length > 0 ? 0 : contactFigures(fit.inOven.contact).height;
          expect(fit.headroom + fit.risenHeight + under).toBeCloseTo(oven.depth, 6);
          for (const number of [fit.mass, fit.gramsEach, fit.thickness]) {
            expect(number).toBeGreaterThan(0);
            expect(Number.isFinite(number)).toBe(true);
          }
        },
      ),
      { seed: 31, numRuns: 400 },
    );
  });

  it('refuses what is thicker than any of it, by name', () => {
    const tooThick = whatFits(ovenMade('A', 12), { what: 'batter', thickness: metres(0.09) });
    expect(isRefusal(tooThick) && tooThick.code).toBe('MENU_NOTHING_FITS');
    const tooWide = whatFits(ovenMade('A', 8), { what: 'biscuits', cutter: metres(0.3) });
    expect(isRefusal(tooWide) && tooWide.code).toBe('MENU_NOTHING_FITS');
  });
});

describe('a pot', () => {
  it('feeds by its volume: three quarters of its quarts (potFill) in portions of 1 1/4 cups (L-23)', () => {
    expect(wanted('cups of stew in one portion, card L-23').value).toBe(1.25);
    for (const [inches, style, quarts] of sizes.rows as readonly (readonly unknown[])[]) {
      const oven = ovenMade('A', Number(inches), { style: style as CampOven['style'] });
      const portions = portionsIn(fitIn(oven, { what: 'pot' }));
      expect(portions).toBeCloseTo((Number(quarts) * 4 * 0.75) / 1.25, 6);
    }
  });

  it('of 12 inches feeds 14 by that: the upper end of the 5 to 14 that are published', () => {
    const portions = portionsIn(fitIn(ovenMade('A', 12), { what: 'pot' }));
    expect(portions).toBeGreaterThan(12);
    expect(portions).toBeLessThan(15);
  });
});

describe('dumplings on a stew', () => {
  it('lift it by what they weigh and stand out of it by what is lighter (Archimedes)', () => {
    const oven = ovenMade('A', 12, { style: 'deep' });
    const { layers, mass, pieces, gramsEach } = fitIn(oven, { what: 'dumplings' });
    const [stew, dumplings] = [layers[0]!, layers[1]!];
    const surface = oven.capacity / oven.depth;
    expect(stew.height * surface).toBeCloseTo((stew.mass + dumplings.mass) / 1e6, 6);
    expect(pieces * gramsEach).toBeCloseTo(dumplings.mass, 6);
    expect(mass).toBeCloseTo(stew.mass + dumplings.mass, 6);
    const grown = ((6 * ((2 * gramsEach) / 1.1e6)) / Math.PI) ** (1 / 3);
    expect(dumplings.risenHeight).toBeCloseTo(grown * (1 - 0.55), 6);
  });

  it('leave the stew no fuller than three quarters, dumplings counted (potFill)', () => {
    for (const inches of SIZES) {
      const oven = ovenMade('A', inches);
      const { mass } = fitIn(oven, { what: 'dumplings' });
      expect(mass / 1e6).toBeLessThanOrEqual(0.75 * oven.capacity + 1e-9);
    }
  });
});

describe('a cobbler', () => {
  it('is fruit no higher than half the oven and a topping that doubles below the lid', () => {
    for (const inches of SIZES) {
      const oven = ovenMade('A', inches);
      const { layers, mass } = fitIn(oven, { what: 'cobbler' });
      const [fruit, topping] = [layers[0]!, layers[1]!];
      expect(fruit.height).toBeLessThanOrEqual(oven.depth / 2 + 1e-9);
      expect(topping.risenHeight).toBeCloseTo(2 * topping.height, 9);
      expect(fruit.height + topping.risenHeight).toBeLessThanOrEqual(oven.depth - FINGER + 1e-9);
      expect(mass).toBeCloseTo(fruit.mass + topping.mass, 6);
    }
  });
});

describe('a batch over several ovens', () => {
  const ovens = [ovenMade('A', 12), ovenMade('B', 10), ovenMade('C', 14)];

  it('loses nothing: what goes in and what is left over are the batch', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FIT_KINDS.filter((what) => what !== 'tin-loaf')),
        fc.double({ min: 50, max: 30_000, noNaN: true }),
        fc.subarray(ovens, { minLength: 1 }),
        (what, mass, used) => {
          const spread = spreadBatch(grams(mass), used, { what });
          if (isRefusal(spread)) throw new Error(spread.code);
          const laid = spread.parts.reduce((sum, part) => sum + part.mass, 0);
          expect(laid).toBeCloseTo(spread.mass, 6);
          expect(laid + spread.left).toBeCloseTo(mass, 6);
          for (const part of spread.parts) {
            const most = fitIn(part.oven, { what });
            expect(part.mass).toBeLessThanOrEqual(most.mass + 1e-6);
            expect(part.pieces).toBeLessThanOrEqual(Math.max(1, most.pieces));
          }
        },
      ),
      { seed: 37, numRuns: 200 },
    );
  });

  it('lies as thick in a small oven as in a large one: all bake in the same minutes', () => {
    const spread = spreadBatch(grams(2000), ovens, { what: 'batter' });
    if (isRefusal(spread)) throw new Error(spread.code);
    const thick = spread.parts.map(({ thickness }) => thickness!);
    for (const each of thick) expect(each).toBeCloseTo(thick[0]!, 9);
    const [a, b] = spread.parts;
    expect(a!.mass / b!.mass).toBeCloseTo((12 / 10) ** 2, 9);
  });

  it('too large by a little may lie thicker, too large by much goes in turns, and less is named', () => {
    const most = spreadBatch(grams(1e6), ovens, { what: 'batter' });
    if (isRefusal(most)) throw new Error(most.code);
    const ways = (mass: number) => {
      const spread = spreadBatch(grams(mass), ovens, { what: 'batter' });
      return isRefusal(spread) ? [] : spread.ways;
    };
    expect(ways(most.mass)).toEqual([]);
    const [thicker] = ways(most.mass * 1.1);
    expect(thicker).toMatchObject({ way: 'thicker' });
    expect(thicker?.way === 'thicker' && thicker.thickness / thicker.wanted).toBeCloseTo(1.1, 6);
    // 75 mm of batter, which rises by 1.6, is higher than a plain oven is deep.
    expect(ways(most.mass * 2.5).map(({ way }) => way)).toEqual(['second-turn', 'less']);
    expect(ways(most.mass * 9).map(({ way }) => way)).toEqual(['less']);
  });

  it('of pieces is shared in whole ones', () => {
    const spread = spreadBatch(grams(1000), ovens, { what: 'biscuits' });
    if (isRefusal(spread)) throw new Error(spread.code);
    const count = spread.parts.reduce((sum, part) => sum + part.pieces, 0);
    expect(count).toBe(18); // 1,000 g in pieces of 54 g (armedForcesRecipes D 001 00)
    for (const { pieces } of spread.parts) expect(Number.isInteger(pieces)).toBe(true);
  });
});

describe('which size', () => {
  it('holds it: the fewer ovens the larger they are, all of them enough', () => {
    const found = sizesFor(grams(568), { what: 'round', thickness: metres(0.012) });
    expect(found.length).toBe(7);
    for (const { oven, ovens: count, fill } of found) {
      const most = fitIn(oven, { what: 'round', thickness: metres(0.012) }).mass;
      expect(count * most).toBeGreaterThanOrEqual(568 - 1e-6);
      expect((count - 1) * most).toBeLessThan(568);
      expect(fill).toBeLessThanOrEqual(1);
    }
  });
});

describe('so much of it in one oven', () => {
  const oven = ovenMade('A', 12, { floorDiameter: inch(10) });
  const lying = (ask: FitAsk, mass: number) => {
    const fit = howItLies(oven, ask, grams(mass));
    if (isRefusal(fit)) throw new Error(fit.code);
    return fit;
  };

  it('lies as wide as its mass, density and thickness make it (plane geometry)', () => {
    const ask = { what: 'round', thickness: inch(0.5) } as const;
    const half = lying(ask, fitIn(oven, ask).mass / 2);
    expect(half.placed[0]!.diameter).toBeCloseTo(floorOf(oven) / Math.SQRT2, 6);
    expect(half.thickness).toBeCloseTo(fitIn(oven, ask).thickness, 9);
    expect(half.isPart).toBe(true);
  });

  it('is spread to the wall where nobody gave a thickness: twice as much, twice as thick', () => {
    for (const what of ['round', 'batter'] as const) {
      const [one, two] = [lying({ what }, 400), lying({ what }, 800)];
      expect(one.placed[0]!.diameter).toBeCloseTo(floorOf(oven), 6);
      expect(two.thickness / one.thickness).toBeCloseTo(2, 6);
      expect(two.rolledTo! / one.rolledTo!).toBeCloseTo(2, 6);
    }
  });

  it('is whole pieces, and refused where it goes under no lid or makes no piece', () => {
    expect(lying({ what: 'rolls', pieceMass: grams(60) }, 630).pieces).toBe(10);
    for (const mass of [20, 9000]) {
      const fit = howItLies(oven, { what: 'rolls', pieceMass: grams(60) }, grams(mass));
      expect(fit).toMatchObject({ code: 'MENU_NOTHING_FITS' });
    }
  });

  it('takes a recipe as it is written, with its portions: half of it, half of them', () => {
    for (const recipe of readyRecipes.filter(({ method }) => method === 'bake')) {
      const ask = askAbout(recipe);
      const most = fitIn(oven, ask);
      const half = lying(ask, most.mass / 2);
      expect(half.mass / most.mass, recipe.id).toBeLessThanOrEqual(0.5 + 1e-9);
      expect(portionsIn(half) / portionsIn(most), recipe.id).toBeCloseTo(half.mass / most.mass, 9);
      expect(portionsIn(most) / recipe.portions, recipe.id).toBeCloseTo(
        most.mass / recipeMass(recipe),
        9,
      );
      expect(spreadBatch(most.mass, [oven, oven], ask)).toMatchObject({ ways: [] });
    }
  });
});
