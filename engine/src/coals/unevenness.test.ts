import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import colour from '../../data/bake-colour.json' with { type: 'json' };
import oneSided from '../../validation/coals/one-sided-plate.json' with { type: 'json' };
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { degrees, type Minutes, minutes } from '../quantity/unit.ts';
import type { CoalPlace, CoalPlan, CoalSet, Turn } from './coal-plan.ts';
import { evenest, evenestBelow, spreadsUnder } from './evenest.ts';
import { type FoodView, facesSeen, foodSight, windExcess } from './food-sight.ts';
import { FOOD_HOW, ROUGH_HOW } from './iron-plates.ts';
import { layCoals } from './lay-coals.ts';
import { lidLayouts, setAbove, setBelow } from './placement.ts';
import { coalsOn, plateSolver, settledPlate } from './plate/plate.ts';
import { circleKelvins, spreadOf } from './plate/reading.ts';
import { COLOUR_PER_KELVIN, minutesSooner } from './unevenness.ts';

const SEED = 20266;

const planOf = (change: Change): CoalPlan => {
  const plan = layCoals(coalRequest(change));
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

// A lid and a floor of a usual 12-inch oven, in round figures of coalsOvenModelNotes 5.1.
const PLATE = {
  spreadWattsPerKelvin: 45 * 0.0052,
  joulesPerSquareMetreKelvin: 7.2e6 * 0.5 * 0.0052,
};
const how = { coalWidth: 0.0445, isWood: false };
const LAYOUTS = lidLayouts({ ...how, pieces: 17, outerRadius: 0.1524 });
const VIEW: FoodView = {
  plates: {
    lid: {
      plate: { ...PLATE, radiusMetres: 0.165, lossWattsPerSquareMetreKelvin: 40 },
      watts: 450,
      rimWatts: 140,
    },
    floor: {
      plate: { ...PLATE, radiusMetres: 0.128, lossWattsPerSquareMetreKelvin: 25 },
      watts: 270,
      rimWatts: 150,
    },
  },
  above: setAbove({ ...how, pieces: 16, outerRadius: 0.1524 }),
  below: setBelow({ ...how, pieces: 9, outerRadius: 0.128, isBaked: true }),
  coalWidth: how.coalWidth,
  foodRadius: 0.115,
  gapMetres: 0.048,
  windMetresPerSecond: 0,
  windFromRadians: 0,
};

const STAY = { loadInMinute: 20, outMinute: 80 };
const turnsOf = (kind: Turn['kind'], minutesAt: readonly number[], angle = 90): readonly Turn[] =>
  minutesAt.map((minute) => ({ minute: minute as Minutes, kind, angle: degrees(angle) }));
const QUARTERS = [35, 50, 65];

const facesOf = (view: FoodView, turns: readonly Turn[], cut = FOOD_HOW) =>
  facesSeen(foodSight(view, cut), STAY, turns);

describe('one-sided heat on a plate', () => {
  const value = (name: string): number =>
    Number(oneSided.rows.find(([what]) => `${what},`.startsWith(`${name},`))?.[1]);

  it.each([
    ['spread', value('patches at half power')],
    ['spread of an equal ring', 0],
  ])('agrees with the exact disc within 0.5 K: %s (plateTurning)', (name, weak) => {
    const plate = {
      radiusMetres: value('radius of the disc'),
      spreadWattsPerKelvin: value('conductivity') * value('thickness'),
      joulesPerSquareMetreKelvin: 2e4,
      lossWattsPerSquareMetreKelvin: value('coefficient both faces'),
    };
    const solver = plateSolver(plate, { stepSeconds: 60 });
    const patches = Array.from({ length: value('patches') }, (_, index) => ({
      radiusMetres: value('patch radius'),
      angleRadians: (index * 2 * Math.PI) / value('patches'),
      sideMetres: 0.05,
      watts: value('full power') / (index < weak ? 2 : 1),
    }));
    const settled = settledPlate(solver, coalsOn(solver, patches));
    const round = circleKelvins(settled, solver.rings, { radiusMetres: 0.12, places: 72 });
    expect(Math.abs(spreadOf(round) - value(name))).toBeLessThan(0.5);
  });

  it('grows with wind and is nothing of the wind in still air (burnWind)', () => {
    expect(windExcess(0)).toBe(0);
    expect(windExcess(2)).toBeGreaterThan(windExcess(1));
  });
});

describe('turning, as the food sees it', () => {
  const still = facesOf(VIEW, []);

  it('of oven and lid against each other evens out both faces', () => {
    const { top, bottom } = facesOf(VIEW, turnsOf('food', QUARTERS));
    expect(top.round).toBeLessThan(0.1 * still.top.round);
    expect(bottom.round).toBeLessThan(0.25 * still.bottom.round);
  });

  it('of the oven with its lid evens out the bottom and leaves uneven coals on the lid over the same food', () => {
    const bare = lopsided(VIEW);
    const before = facesOf(bare, []);
    const { top, bottom } = facesOf(bare, turnsOf('oven-with-lid', QUARTERS));
    expect(bottom.round).toBeLessThan(0.25 * before.bottom.round);
    expect(top.round).toBeGreaterThan(0.8 * before.top.round);
  });

  it('of the lid alone evens out the top and leaves the bottom as it was', () => {
    const bare = lopsided(VIEW);
    const before = facesOf(bare, []);
    const { top, bottom } = facesOf(bare, turnsOf('lid-alone', QUARTERS));
    expect(top.round).toBeLessThan(0.25 * before.top.round);
    expect(bottom.round).toBeCloseTo(before.bottom.round, 1);
  });

  it('of the oven with its lid takes the food round in the wind, since the wind stays', () => {
    const windy = { ...VIEW, windMetresPerSecond: 3 };
    const before = facesOf(windy, []).top.round;
    expect(facesOf(windy, turnsOf('oven-with-lid', QUARTERS)).top.round).toBeLessThan(0.2 * before);
    expect(facesOf(windy, turnsOf('lid-alone', QUARTERS)).top.round).toBeGreaterThan(0.5 * before);
  });

  it('cures no hot rim and no hot middle: only placing does', () => {
    for (const name of ['top', 'bottom'] as const) {
      const turned = facesOf(VIEW, turnsOf('food', QUARTERS))[name];
      expect(turned.edgeOverMiddle).toBeCloseTo(still[name].edgeOverMiddle, 6);
    }
  });

  it('is chosen on a rough plate that agrees with the fine one within 3 K', () => {
    const windy = { ...VIEW, windMetresPerSecond: 2 };
    for (const turns of [[], turnsOf('food', [50], 180), turnsOf('food', QUARTERS)]) {
      const [rough, fine] = [facesOf(windy, turns, ROUGH_HOW), facesOf(windy, turns)];
      expect(Math.abs(rough.top.round - fine.top.round)).toBeLessThan(3);
    }
  });

  it('is told from a plate that agrees with one cut three times as fine within 1.5 K', () => {
    const windy = { ...VIEW, windMetresPerSecond: 2 };
    for (const turns of [[], turnsOf('food', QUARTERS)]) {
      const [ours, fine] = [
        facesOf(windy, turns),
        facesOf(windy, turns, { rings: 72, highest: 36 }),
      ];
      for (const name of ['top', 'bottom'] as const) {
        expect(Math.abs(ours[name].round - fine[name].round)).toBeLessThan(1.5);
        expect(Math.abs(ours[name].edgeOverMiddle - fine[name].edgeOverMiddle)).toBeLessThan(1.5);
      }
    }
  });
});

/** The same oven, a third of the lid's coals gone from one side. */
const lopsided = (view: FoodView): FoodView => {
  const left = (places: readonly CoalPlace[]) => places.filter(({ x }) => x < 0.08);
  return { ...view, above: { ...view.above, places: left(view.above.places) } };
};

describe('the layout of the lid', () => {
  it('is the evenest of those tried, on the food', () => {
    const best = evenest(LAYOUTS, VIEW);
    const spreads = spreadsUnder(LAYOUTS, VIEW);
    expect(LAYOUTS.length).toBeGreaterThan(4);
    expect(spreads[LAYOUTS.indexOf(best!)]).toBeLessThan(Math.min(...spreads) + 1);
  });

  it('beats all coals on the rim of a 12-inch lid without loss over it, whose middle stays cold (coalsOvenModelNotes 5.6: 123 K)', () => {
    const { lid } = VIEW.plates;
    const closed = { ...VIEW, plates: { ...VIEW.plates, lid: { ...lid, rimWatts: 0 } } };
    const onRim = LAYOUTS.filter((set) => set.spread === 0);
    expect(onRim.length).toBe(1);
    const [rim = 0] = spreadsUnder(onRim, closed);
    expect(rim).toBeGreaterThan(2 * Math.min(...spreadsUnder(LAYOUTS, closed)));
  });
});

describe('the ring under the floor', () => {
  it('has its odd coal where it evens out the wind, and any third of it in still air is as good', () => {
    for (const pieces of [7, 8, 10, 11]) {
      const ring = { ...how, pieces, outerRadius: 0.128, isBaked: true };
      const layouts: CoalSet[] = [];
      setBelow(ring, (tried) => {
        layouts.push(...tried);
        return tried[0];
      });
      const windy = { ...VIEW, windMetresPerSecond: 3, windFromRadians: 1.5 * Math.PI };
      const round = layouts.map((below) => facesOf({ ...windy, below }, []).bottom.round);
      const best = layouts.indexOf(evenestBelow(layouts, windy)!);
      expect(round[best]).toBeLessThan(Math.min(...round) + 3);
      expect(Math.max(...round)).toBeGreaterThan(round[best]! + 10);
    }
  });
});

describe('the unevenness of a plan', () => {
  it('is mostly taken away by its turns and has a windward side in wind', () => {
    const { unevenness } = planOf({ wind: 1, stay: 60 });
    expect(unevenness.turned).toBeLessThan(0.35 * unevenness.unturned);
    expect(unevenness.top?.turned).toBeLessThan(0.1 * unevenness.top!.unturned);
    expect(unevenness.windward).toBe(true);
  });

  it('grows with the wind on the top of the food, and so do the minutes', () => {
    const [calm, windy] = [planOf({}), planOf({ wind: 2 })].map(({ unevenness }) => unevenness);
    expect(windy!.top!.unturned).toBeGreaterThan(calm!.top!.unturned);
    expect(windy!.sooner!.unturned).toBeGreaterThan(calm!.sooner!.unturned);
  });

  it('is finite, never below zero, and no turn of a plan makes it worse', () => {
    const site = fc.record({
      inches: fc.constantFrom(8, 10, 12, 14, 16),
      wind: fc.double({ min: 0, max: 6, noNaN: true }),
      stay: fc.integer({ min: 8, max: 150 }),
      wood: fc.boolean(),
      preheat: fc.boolean(),
      method: fc.constantFrom('bake' as const, 'roast' as const, 'simmer' as const),
    });
    fc.assert(
      fc.property(site, (change) => {
        const plan = layCoals(coalRequest(change));
        if (isRefusal(plan)) return;
        const { unturned, turned, top, bottom, sooner } = plan.unevenness;
        const all = [unturned, turned, top!.turned, bottom!.turned, sooner!.turned];
        expect(all.every((each) => Number.isFinite(each) && each >= 0)).toBe(true);
        expect(turned).toBeLessThanOrEqual(unturned + 0.5);
        expect(sooner!.turned).toBeLessThanOrEqual(plan.outMinute - plan.loadInMinute);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});

describe('minutes sooner', () => {
  const rows = colour.rows;
  it('take the slope of the whole table of colour (trial-bake-model)', () => {
    const [first, last] = [rows[0]!, rows.at(-1)!];
    const slope = Math.log(first.minutes / last.minutes) / (last.lidCelsius - first.lidCelsius);
    expect(Math.abs(COLOUR_PER_KELVIN / slope - 1)).toBeLessThan(0.01);
  });

  it('agree with any two rows of it within 40 % of what they differ by (trial-bake-model)', () => {
    for (const [index, cool] of rows.entries())
      for (const hot of rows.slice(index + 1)) {
        const stay = { loadInMinute: 0, outMinute: Math.sqrt(cool.minutes * hot.minutes) };
        const told = minutesSooner(hot.lidCelsius - cool.lidCelsius, stay);
        expect(Math.abs(told / (cool.minutes - hot.minutes) - 1)).toBeLessThan(0.4);
      }
  });

  it('are none where both sides are alike, and never more than the bake', () => {
    const stay = { loadInMinute: 10, outMinute: minutes(40) };
    expect(minutesSooner(0, stay)).toBe(0);
    expect(minutesSooner(1000, stay)).toBe(30);
  });
});
