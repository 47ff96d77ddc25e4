import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { grams, metres, ratio } from '../quantity/unit.ts';
import { conditionsOf, conditionTrouble, groundFactor, type SiteConditions } from './conditions.ts';
import { ovenBody } from './geometry.ts';
import { coalsToHold } from './hold.ts';
import { layCoals } from './lay-coals.ts';
import { holdCaseFor } from './need.ts';
import { rainWatts } from './rain.ts';
import { discView, riserFactor } from './riser.ts';
import { siteFor } from './site.ts';
import { sunWatts } from './sun.ts';

const SEED = 20264;
const request = coalRequest({ hearth: 'ground' });
const body = ovenBody(request.oven);

const held = (conditions: SiteConditions, hearth: 'ground' | 'fire-pan' = 'ground') => {
  const asked = { ...coalRequest({ hearth }), conditions };
  return coalsToHold(holdCaseFor(asked, siteFor(asked), 2 / 3));
};

describe('the view from the coals to the floor', () => {
  // The same double integral over both discs by plain quadrature, nothing of the closed form in it.
  const byQuadrature = (radius: number, gap: number): number => {
    const rings = 60;
    const angles = 48;
    let sum = 0;
    for (let i = 0; i < rings; i += 1)
      for (let j = 0; j < rings; j += 1)
        for (let k = 0; k < angles; k += 1) {
          const [from, to] = [((i + 0.5) * radius) / rings, ((j + 0.5) * radius) / rings];
          const angle = ((k + 0.5) * Math.PI) / angles;
          const apart = from ** 2 + to ** 2 - 2 * from * to * Math.cos(angle) + gap ** 2;
          sum += (gap ** 2 / (Math.PI * apart ** 2)) * to * from;
        }
    const cell = (radius / rings) ** 2 * ((2 * Math.PI) / angles) * 2 * Math.PI;
    return (sum * cell) / (Math.PI * radius ** 2);
  };

  it('is 0.382 for discs as far apart as their radius (bergman2011 table 13.2, fig. 13.5)', () => {
    expect(discView({ from: 1, to: 1, gap: 1 })).toBeCloseTo((3 - Math.sqrt(5)) / 2, 9);
  });

  it.each([0.08, 0.13, 0.3])(
    'is the double integral over both discs at a gap of %f m, within 1 %%',
    (gap) => {
      const closed = discView({ from: 0.128, to: 0.128, gap });
      expect(Math.abs(byQuadrature(0.128, gap) / closed - 1)).toBeLessThan(0.01);
    },
  );

  it('is 1 on the legs and falls with every riser, never below nothing', () => {
    const factors = [0, 0.02, 0.05, 0.09, 0.127, 0.2].map((riser) => riserFactor(body, riser));
    expect(factors[0]).toBe(1);
    expect(factors).toEqual([...factors].sort((one, other) => other - one));
    expect(factors.at(-1)).toBeGreaterThan(0);
  });
});

describe('rain', () => {
  it('takes from a hot lid half of what would boil all of it: 2257 kJ/kg and the warming (from memory)', () => {
    const watts = rainWatts(body, { rainMillimetresPerHour: 2, airKelvin: 288.15 }, 450);
    const all = (2 / 3600) * body.lidArea * (2.257e6 + 4190 * 85);
    expect(watts).toBeCloseTo(all / 2, 6);
  });

  it('takes nothing where none falls, and never less where more falls or the lid is hotter', () => {
    const outside = (rain: number) => ({ rainMillimetresPerHour: rain, airKelvin: 280 });
    expect(rainWatts(body, { airKelvin: 280 }, 450)).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 270, max: 600, noNaN: true }),
        (rain, lid) => {
          const watts = rainWatts(body, outside(rain), lid);
          expect(rainWatts(body, outside(rain + 1), lid)).toBeGreaterThanOrEqual(watts);
          expect(rainWatts(body, outside(rain), lid + 5)).toBeGreaterThanOrEqual(watts);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe('sun on the lid', () => {
  it('is some 60 W on a bare 12 inch lid at the most, and less where coals lie on it (coalsOvenModelNotes 5.4)', () => {
    expect(sunWatts(1, body.lidArea)).toBeGreaterThan(55);
    expect(sunWatts(1, body.lidArea)).toBeLessThan(65);
    expect(sunWatts(0.5, body.lidArea)).toBeCloseTo(sunWatts(1, body.lidArea) / 2, 9);
    expect(sunWatts(undefined, body.lidArea)).toBe(0);
  });

  it('saves a coal or two of a 12 inch oven at 350 F: about two lid coals by the same estimate', () => {
    const saved = held({}) - held({ sun: 1 });
    expect(saved).toBeGreaterThan(0.5);
    expect(saved).toBeLessThan(2.5);
  });
});

describe('what a camp says of spot and oven', () => {
  it('is taken over word for word, and is nothing where nothing is said', () => {
    const oven = { riser: metres(0.05), lidMass: grams(3600), lidDiameter: metres(0.33) };
    const said = {
      place: { groundIs: 'wet' },
      weather: { rain: 2, sun: ratio(0.5) },
      oven,
    } as const;
    expect(conditionsOf(said)).toEqual({
      rain: 2,
      sun: 0.5,
      groundIsWet: true,
      riser: 0.05,
      measures: { lidMass: 3600, lidDiameter: 0.33 },
    });
    expect(conditionsOf({ place: {}, weather: {}, oven: {} })).toEqual({});
    expect(conditionsOf({ ...said, place: { groundIs: 'frozen' } }).groundIsFrozen).toBe(true);
  });
});

describe('steady coals, before rounding', () => {
  it('are more in rain, on wet and on frozen ground and on a riser (signs: groundSaps, common practice)', () => {
    const dry = held({});
    for (const conditions of [
      { rain: 3 },
      { groundIsWet: true },
      { groundIsFrozen: true },
      { riser: metres(0.05) },
    ])
      expect(held(conditions)).toBeGreaterThan(dry);
  });

  it('are fewer over a fire pan, where the ground can be as wet as it likes (groundSaps)', () => {
    expect(held({}, 'fire-pan')).toBeLessThan(held({}));
    expect(held({ groundIsWet: true }, 'fire-pan')).toBe(held({}, 'fire-pan'));
  });

  it('order the grounds: pan, gravel, dry soil, wet soil, snow (signs only)', () => {
    const factor = (ground: 'gravel' | 'soil' | 'snow', wet = false) =>
      groundFactor({ ground, hearth: 'ground' }, { groundIsWet: wet });
    const order = [1, factor('gravel'), factor('soil'), factor('soil', true), factor('snow')];
    expect(order).toEqual([...order].sort((one, other) => other - one));
  });
});

describe('a plan in rain, on wet ground and a riser', () => {
  const wet: SiteConditions = { rain: 2, groundIsWet: true, riser: metres(0.03) };
  const planOf = (conditions: SiteConditions) => {
    const plan = layCoals({ ...request, conditions });
    if (isRefusal(plan)) throw new Error(plan.code);
    return plan;
  };

  it('lays more, burns at least as much, loses no heat (0.1 %) and its lines still add up', () => {
    const [plain, plan] = [planOf({}), planOf(wet)];
    const total = plan.reckoning.above + plan.reckoning.below;
    expect(total).toBeGreaterThan(plain.reckoning.above + plain.reckoning.below);
    expect(plan.coalsInAll).toBeGreaterThanOrEqual(plain.coalsInAll);
    const causes = plan.reckoning.because.map(({ cause }) => cause);
    expect(causes).toEqual(expect.arrayContaining(['rain', 'ground', 'riser']));
    expect(Math.abs(plan.energy.errorRatio)).toBeLessThan(1e-3);
    const chart = plan.reckoning.chart;
    const lines = plan.reckoning.because.reduce((sum, line) => sum + line.coals, 0);
    expect((chart?.above ?? 0) + (chart?.below ?? 0) + lines).toBe(total);
  });
});

describe('an oven that was weighed and measured', () => {
  it('keeps its whole mass, however heavy its lid', () => {
    const all = (lidGrams: number) => {
      const own = ovenBody(request.oven, { lidMass: grams(lidGrams) });
      return own.lidCapacity + own.wallCapacity + own.floorCapacity;
    };
    expect(all(3000)).toBeCloseTo(all(4500), 6);
    expect(ovenBody(request.oven, { lidMass: grams(4500) }).lidCapacity).toBeCloseTo(2250, 6);
  });

  it('has by its size alone the split that coalsOvenModelNotes infers: 44 % lid, 21 % floor, 35 % wall', () => {
    const all = body.lidCapacity + body.wallCapacity + body.floorCapacity;
    expect(body.lidCapacity / all).toBeCloseTo(0.44, 2);
    expect(body.floorCapacity / all).toBeCloseTo(0.21, 2);
    expect(body.wallCapacity / all).toBeCloseTo(0.35, 2);
  });
});

describe('conditions that can not be', () => {
  const refused = (conditions: SiteConditions) => {
    const answer = layCoals({ ...request, conditions });
    return isRefusal(answer) ? answer.code : 'planned';
  };

  it.each<[string, SiteConditions]>([
    ['rain of 80 mm/h', { rain: 80 }],
    ['more sun than there is', { sun: 1.2 }],
    ['rain that is not a number', { rain: Number.NaN }],
    ['a riser of half a metre', { riser: metres(0.5) }],
    ['a riser that lowers', { riser: metres(-0.01) }],
    ['a lid as heavy as the oven', { measures: { lidMass: grams(9000) } }],
    ['a lid narrower than the oven', { measures: { lidDiameter: metres(0.25) } }],
  ])('are refused: %s', (_, conditions) => {
    expect(refused(conditions)).toBe('COALS_CONDITIONS_IMPOSSIBLE');
  });

  it('are none where nothing is said', () => {
    expect(conditionTrouble(request)).toBeUndefined();
  });
});
