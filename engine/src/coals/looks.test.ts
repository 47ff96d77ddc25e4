import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { burnoutMinutes, massLeft } from './burn.ts';
import { fuelPiece } from './fuel.ts';
import { coalLooks, litMinutesOfLook } from './looks.ts';
import { usualLitMinutes } from './usual-fire.ts';

const ages = (wind: number) => {
  const { fuel, air } = coalRequest({ wind });
  return coalLooks.map((look) => litMinutesOfLook(look, { fuel, air }) as number);
};

describe('coals by what they look like', () => {
  it('are the older the smaller, and none is past its life (coalLife: 45 to 60 min useful, gone in still air by about 80)', () => {
    const still = ages(0);
    expect(still).toEqual([...still].sort((one, other) => one - other));
    const { fuel, air } = coalRequest();
    const gone = burnoutMinutes(fuelPiece(fuel), {
      windMetresPerSecond: 0,
      pressurePascals: air.pressure,
    });
    expect(still.at(-1)).toBeLessThan(gone);
  });

  it('grey with ash are half burned, half an hour after lighting in still air (chimneyMinutes: half burned at 30 min)', () => {
    const [, grey] = ages(0);
    expect(Math.abs(grey! - 30)).toBeLessThanOrEqual(3);
    const { fuel } = coalRequest();
    expect(fuel.kind).toBe('briquettes');
    expect(Math.abs(massLeft(1 - 0.8 ** 2) - 0.5)).toBeLessThan(0.02);
  });

  it('of one look are younger in wind, where they burn up sooner (emberWind)', () => {
    const [still, windy] = [ages(0), ages(2)];
    for (const at of [1, 2, 3]) expect(windy[at]!).toBeLessThan(still[at]!);
  });
});

describe('an age that nobody said', () => {
  it('is that of coals just ashed over under an empty oven, and counts the food in (chimneyMinutes: 15 to 25 min)', () => {
    expect(usualLitMinutes('layout', 'briquettes')).toBe(20);
    expect(usualLitMinutes('layout', 'briquettes', 15)).toBe(
      usualLitMinutes('what-now', 'briquettes'),
    );
    expect(usualLitMinutes('what-now', 'wood-coals')).toBeLessThan(
      usualLitMinutes('what-now', 'briquettes'),
    );
  });
});
