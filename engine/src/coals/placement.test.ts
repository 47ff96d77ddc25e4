import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualOven } from './charts.ts';
import type { CoalPlace } from './coal-plan.ts';
import { ovenBody } from './geometry.ts';
import { lidLayouts, setAbove, setBelow } from './placement.ts';
import { HANDLE, LEG_WIDTH, LEGS, legPlaces, ringUnderFloor, roomFor } from './room.ts';

const SEED = 20265;
const INCH = 0.0254;
const WIDTH = 0.0445;
const how = { coalWidth: WIDTH, isWood: false };

const inches = fc.constantFrom(8, 10, 12, 14, 16);
const floorRadius = (size: number) => ovenBody(usualOven(size * INCH)).floorDiameter / 2;

const under = (size: number, pieces: number) =>
  setBelow({ ...how, pieces, outerRadius: floorRadius(size), isBaked: true });

/** Angles clockwise from the southern leg, as parts of a third. */
const thirdsOf = (places: readonly CoalPlace[]): readonly number[] =>
  places.map(({ x, y }) => {
    const angle = (Math.atan2(x, y) - Math.PI + 4 * Math.PI) % (2 * Math.PI);
    return (LEGS * angle) / (2 * Math.PI);
  });

describe('a ring under the floor', () => {
  const ringCase = inches.chain((size) =>
    fc.record({
      size: fc.constant(size),
      pieces: fc.integer({ min: 1, max: ringUnderFloor({ outerRadius: floorRadius(size) }) }),
    }),
  );

  it('has as many coals in each third between legs, or one more, at equal angles (AT-THE-FIRE rule)', () => {
    fc.assert(
      fc.property(ringCase, ({ size, pieces }) => {
        const thirds = thirdsOf(under(size, pieces).places);
        const counts = [0, 1, 2].map((at) => thirds.filter((each) => Math.floor(each) === at));
        const lengths = counts.map((each) => each.length);
        expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
        for (const [at, third] of counts.entries()) {
          const inside = third.map((each) => each - at);
          const gaps = inside.slice(1).map((each, index) => each - inside[index]!);
          expect(Math.max(0, ...gaps) - Math.min(1, ...gaps)).toBeLessThan(1e-9);
          if (inside.length > 0) expect(inside[0]! + inside.at(-1)!).toBeCloseTo(1, 9);
        }
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('lays no coal on a leg, nor on another coal', () => {
    fc.assert(
      fc.property(ringCase, ({ size, pieces }) => {
        const { places } = under(size, pieces);
        for (const leg of legPlaces(floorRadius(size)))
          for (const place of places) expect(sideGap(place, leg)).toBeGreaterThan(LEG_WIDTH / 2);
        expect(nearest(places)).toBeGreaterThan(0.99 * WIDTH);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('is even all round, legs or no legs, where there is room: six or nine coals under a 12-inch oven', () => {
    for (const pieces of [3, 6, 9]) {
      const thirds = [...thirdsOf(under(12, pieces).places)].sort((one, other) => one - other);
      const gaps = thirds.map((each, at) => (thirds[at + 1] ?? thirds[0]! + LEGS) - each);
      expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-9);
    }
  });
});

/** How far a point lies from a coal, whose sides run along its own radius. */
const sideGap = (coal: CoalPlace, point: { readonly x: number; readonly y: number }): number => {
  const radius = Math.hypot(coal.x, coal.y);
  const [along, across] = [
    (point.x * coal.x + point.y * coal.y) / radius - radius,
    (point.x * coal.y - point.y * coal.x) / radius,
  ].map((each) => Math.max(0, Math.abs(each) - WIDTH / 2)) as [number, number];
  return Math.hypot(along, across);
};

const nearest = (places: readonly CoalPlace[]): number =>
  Math.min(
    Infinity,
    ...places.flatMap((one, at) =>
      places.slice(at + 1).map((other) => Math.hypot(one.x - other.x, one.y - other.y)),
    ),
  );

describe('coals on the lid', () => {
  const lidCase = inches.chain((size) => {
    const oven = usualOven(size * INCH);
    const { lidAll } = roomFor(ovenBody(oven), oven.diameter, WIDTH);
    return fc.record({ size: fc.constant(size), pieces: fc.integer({ min: 1, max: lidAll }) });
  });

  it('lie flat, all of them, with the handle free and the rim even, as many as a lid holds', () => {
    fc.assert(
      fc.property(lidCase, ({ size, pieces }) => {
        for (const set of lidLayouts({ ...how, pieces, outerRadius: (size * INCH) / 2 })) {
          expect(set.places.length).toBe(pieces);
          expect(nearest(set.places)).toBeGreaterThan(0.96 * WIDTH);
          for (const { x, y } of set.places) expect(handleGap(x, y)).toBeGreaterThan(0.49 * WIDTH);
          expect(set.places.filter((place) => place.in === 'ring').length).toBe(set.ring);
        }
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('are heaped where a pin asks for more than lies flat, none lost', () => {
    const set = setAbove({ ...how, pieces: 60, outerRadius: 5 * INCH });
    expect(set.places.length).toBe(60);
    expect(set.places.every(({ x, y }) => Math.hypot(x, y) < 5 * INCH)).toBe(true);
  });

  it('may be none', () => {
    expect(setAbove({ ...how, pieces: 0, outerRadius: 6 * INCH }).places).toEqual([]);
  });
});

const handleGap = (x: number, y: number) =>
  Math.hypot(
    Math.max(0, Math.abs(x) - HANDLE.halfLength),
    Math.max(0, Math.abs(y) - HANDLE.halfWidth),
  );
