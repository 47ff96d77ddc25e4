import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import boiling from '../../validation/camp/boiling.json' with { type: 'json' };
import atmosphere from '../../validation/camp/standard-atmosphere.json' with { type: 'json' };
import steam from '../../validation/camp/steam.json' with { type: 'json' };
import { isRefusal } from '../notice/notice.ts';
import { fromUnit, inUnit } from '../quantity/convert.ts';
import {
  fromFahrenheit,
  kelvin,
  kelvinDifference,
  metres,
  metresPerSecond,
  pascals,
  toCelsius,
  toFahrenheit,
} from '../quantity/unit.ts';
import {
  airDensity,
  boilingPointAt,
  elevationAtPressure,
  elevationForBoiling,
  pressureAtElevation,
  pressureAtGeopotential,
  saturationPressureAt,
  windAtHeight,
  windAtOven,
} from './air.ts';

const pairs = (rows: readonly (readonly number[])[]) =>
  rows as readonly (readonly [number, number])[];
const boilingAt = (elevation: number) => boilingPointAt(pressureAtElevation(metres(elevation)));

describe('pressure of the standard atmosphere', () => {
  it('matches ussa1976 by geopotential height within 0.05 Pa, half its last digit', () => {
    for (const [height, wanted] of pairs(atmosphere.geopotential)) {
      expect(Math.abs(pressureAtGeopotential(metres(height)) - wanted)).toBeLessThan(0.05);
    }
  });

  it('matches an independent code of ussa1976 by geometric height within 0.1 Pa', () => {
    for (const [height, wanted] of pairs(atmosphere.geometric)) {
      expect(Math.abs(pressureAtElevation(metres(height)) - wanted)).toBeLessThan(0.1);
    }
  });

  it('matches a printed table of ussa1976 in (geometric) feet and psi within its rounding', () => {
    for (const [feet, wanted] of pairs(atmosphere.feet.rows)) {
      const psi = inUnit(pressureAtElevation(fromUnit(feet, 'foot')), 'psi');
      expect(Math.abs(psi - wanted)).toBeLessThanOrEqual(0.0005);
    }
  });

  it('is within 0.1 % of ashrae2017 ch. 1 eq. 3 over the whole range of camps', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (let elevation = -430; elevation <= 5500; elevation += 10) {
      const wanted = psychrolib.GetStandardAtmPressure(elevation);
      expect(Math.abs(pressureAtElevation(metres(elevation)) / wanted - 1)).toBeLessThan(0.001);
    }
  });

  it('comes back to the elevation it was made from (seed 4711)', () => {
    fc.assert(
      fc.property(fc.double({ min: -430, max: 5500, noNaN: true }), (elevation) => {
        const back = elevationAtPressure(pressureAtElevation(metres(elevation)));
        expect(Math.abs(back - elevation)).toBeLessThan(1e-6);
      }),
      { seed: 4711 },
    );
  });

  it('stays finite far outside and throws on what is no number', () => {
    expect(pressureAtElevation(metres(90_000))).toBeGreaterThan(20_000);
    expect(pressureAtElevation(metres(-9000))).toBeLessThan(130_000);
    expect(() => pressureAtElevation(metres(Number.NaN))).toThrow(RangeError);
  });
});

describe('saturation line of water', () => {
  it('gives the boiling points of if97 table 36 to nine digits', () => {
    for (const [megapascals, wanted] of pairs(steam.table36.rows)) {
      expect(boilingPointAt(pascals(megapascals * 1e6))).toBeCloseTo(wanted, 6);
    }
  });

  it('gives the pressures of if97 table 35 to nine digits', () => {
    for (const [temperature, wanted] of pairs(steam.table35.rows)) {
      const got = saturationPressureAt(kelvin(temperature)) / 1e6;
      expect(Math.abs(got / wanted - 1)).toBeLessThan(2e-9);
    }
  });

  it('throws outside the range of the formula', () => {
    expect(() => boilingPointAt(pascals(500))).toThrow(RangeError);
    expect(() => boilingPointAt(pascals(Number.NaN))).toThrow(RangeError);
    expect(() => saturationPressureAt(kelvin(250))).toThrow(RangeError);
  });
});

describe('boiling point by height', () => {
  it('matches iapws-fluids within 0.002 K in metres and in feet', () => {
    for (const [height, celsius] of pairs(boiling.metres.rows)) {
      expect(Math.abs(toCelsius(boilingAt(height)) - celsius)).toBeLessThan(0.002);
    }
    for (const [feet, fahrenheit] of pairs(boiling.feet.rows)) {
      const got = toFahrenheit(boilingAt(fromUnit(feet, 'foot')));
      expect(Math.abs(got - fahrenheit)).toBeLessThan(0.004);
    }
  });

  it("matches csu table 1, a kitchen's whole °F, within 0.7 °F", () => {
    for (const [feet, fahrenheit] of pairs(boiling.kitchen.rows)) {
      const got = toFahrenheit(boilingAt(fromUnit(feet, 'foot')));
      expect(Math.abs(got - fahrenheit)).toBeLessThan(0.7);
    }
  });

  it('falls all the way up', () => {
    for (let elevation = -430; elevation < 5500; elevation += 10) {
      expect(boilingAt(elevation + 10)).toBeLessThan(boilingAt(elevation));
    }
  });
});

describe('elevation from a boil', () => {
  it('finds the heights of iapws-fluids again within 1 m', () => {
    for (const [height, celsius] of pairs(boiling.metres.rows)) {
      const found = elevationForBoiling(kelvin(celsius + 273.15));
      if (isRefusal(found)) throw new Error(found.code);
      expect(Math.abs(found.elevation - height)).toBeLessThan(1);
    }
  });

  it('says 196 °F is about 8700 ft, give or take the 270 ft of half a degree', () => {
    const found = elevationForBoiling(fromFahrenheit(196));
    if (isRefusal(found)) throw new Error(found.code);
    expect(inUnit(found.elevation, 'foot')).toBeGreaterThan(8500);
    expect(inUnit(found.elevation, 'foot')).toBeLessThan(8900);
    expect(found.least).toBeLessThan(found.elevation);
    expect(inUnit(metres(found.most - found.elevation), 'foot')).toBeCloseTo(272, -1);
  });

  it('widens with a coarser thermometer', () => {
    const width = (within: number) => {
      const found = elevationForBoiling(kelvin(365), kelvinDifference(within));
      return isRefusal(found) ? Number.NaN : found.most - found.least;
    };
    expect(width(2)).toBeGreaterThan(1.9 * width(1));
  });

  it('refuses what no camp can be, also no number at all', () => {
    for (const fahrenheit of [150, 230, Number.NaN]) {
      const outcome = elevationForBoiling(fromFahrenheit(fahrenheit));
      expect(isRefusal(outcome) && outcome.code).toBe('CAMP_BOILING_IMPOSSIBLE');
    }
  });
});

describe('wind at the oven', () => {
  it('is within 4 % of fao56 example 14 at 2 m (3.2 m/s at 10 m is 2.39; its grass is shorter)', () => {
    const got = windAtHeight(metresPerSecond(3.2), metres(2));
    expect(Math.abs(got / 2.39 - 1)).toBeLessThan(0.04);
  });

  it('is the log law over grass: 5 m/s at 10 m is 3.615 at 2 m and 2.422 at half a metre', () => {
    expect(windAtHeight(metresPerSecond(5), metres(2))).toBeCloseTo(3.615, 3);
    expect(windAtHeight(metresPerSecond(5), metres(0.5))).toBeCloseTo(2.422, 3);
    expect(windAtHeight(metresPerSecond(5), metres(10))).toBeCloseTo(5, 12);
    expect(windAtHeight(metresPerSecond(5), metres(0.01))).toBe(0);
  });

  it('is a bit over a quarter of the forecast, and less behind a screen (common practice)', () => {
    const open = windAtOven(metresPerSecond(10), false);
    expect(open).toBeCloseTo(2.77, 2);
    expect(windAtOven(metresPerSecond(10), true)).toBeLessThan(open);
    expect(windAtOven(metresPerSecond(0), true)).toBe(0);
  });
});

describe('density of air', () => {
  it('is 1.2250 kg/m³ at sea level and 15 °C (iso2533 table 1), like ashrae2017 for dry air', () => {
    expect(airDensity(pascals(101_325), kelvin(288.15))).toBeCloseTo(1.225, 4);
    psychrolib.SetUnitSystem(psychrolib.SI);
    const wanted = psychrolib.GetMoistAirDensity(30, 0, 80_000);
    expect(airDensity(pascals(80_000), kelvin(303.15)) / wanted).toBeCloseTo(1, 4);
  });
});
