import { describe, expect, it } from 'vitest';
import type { LoadPlan } from '../../meal.ts';
import { fromFahrenheit, type Kelvin, minutes } from '../../quantity/unit.ts';
import { fixturePlan } from '../fixture.ts';
import { sayFor } from '../speak.ts';
import { roastBlocks } from './roast-part.ts';

const plan = fixturePlan();
const say = sayFor({ measures: 'us', clock: '24', plan });
const [part] = plan.dishes[0]!.loads as readonly [LoadPlan];

const told = (readings: readonly (readonly [number, Kelvin])[]) => {
  const coreReadings = readings.map(([minute, core]) => ({ minute: minutes(minute), core }));
  const core = fromFahrenheit(150);
  const bake = { ...part.bake, done: { ...part.bake.done, core }, coreReadings };
  return JSON.stringify(roastBlocks({ ...part, bake }, say));
};

describe('what a roast has had', () => {
  it('is one minute at 150 F for a minute there, 5.8 logs at 0.172 min each (lethality-worksheet table 1)', () => {
    const said = told([
      [0, fromFahrenheit(150)],
      [1, fromFahrenheit(150)],
    ]);
    expect(said).toMatch(/what 1\smin at/);
    expect(said).toContain('5.8 logs');
  });

  it('is told as more than seven logs beyond them, and never lowers a target', () => {
    const said = told([
      [0, fromFahrenheit(150)],
      [10, fromFahrenheit(160)],
    ]);
    expect(said).toContain('more than 7 logs');
    expect(said).toContain('lowers no target');
  });

  it('is not told of what is no roast', () => {
    expect(roastBlocks(part, say)).toEqual([]);
  });
});
