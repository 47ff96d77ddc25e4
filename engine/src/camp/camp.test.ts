import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clockMinutes,
  cubicMetres,
  degrees,
  fromCelsius,
  grams,
  kelvin,
  metres,
  metresPerSecond,
  ratio,
} from '../quantity/unit.ts';
import type { Camp, WeatherHour } from './camp.ts';
import { campCodes } from './codes.ts';
import { airFromWord, airWords, beaufortOf, windFromSign, windSigns } from './senses.ts';
import { campTrouble } from './trouble.ts';
import { airAt, knowsWeatherAt, weatherAt } from './weather.ts';

const hour = (at: number, change: Partial<WeatherHour> = {}): WeatherHour => ({
  at: clockMinutes(at),
  air: fromCelsius(10),
  wind: metresPerSecond(2),
  gust: metresPerSecond(4),
  windFrom: degrees(350),
  ...change,
});

const soundCamp: Camp = {
  id: 'test',
  title: 'Test camp',
  place: { name: 'a meadow', elevation: metres(1500), ground: 'grass', hearth: 'fire-pan' },
  date: '2026-09-12',
  timeZone: 'UTC',
  weather: [hour(600), hour(660, { air: fromCelsius(16), windFrom: degrees(10) })],
  mouths: [{ count: 4, appetite: 'ordinary' }],
  needs: [],
  hands: [
    {
      id: 'a',
      name: 'first hand',
      skill: 'camp-cook',
      from: clockMinutes(560),
      to: clockMinutes(700),
    },
  ],
  ovens: [
    {
      id: 'A',
      name: 'A',
      diameter: metres(0.3048),
      depth: metres(0.095),
      style: 'regular',
      capacity: cubicMetres(0.0057),
      mass: grams(9000),
      keptFreeOf: [],
    },
  ],
  fuel: { kind: 'briquettes', pieceMass: grams(25), isMeasured: false, onHand: grams(5000) },
  gear: {
    chimneys: 1,
    chimneyfulCoals: 90,
    lidStands: 1,
    tables: 1,
    windScreens: 0,
    thermometer: true,
    others: [],
  },
  restriction: 'none',
};

const codesOf = (camp: Camp) => {
  const { refusals, notices } = campTrouble(camp);
  return [...refusals, ...notices].map(({ code }) => code);
};

describe('weather between the hours', () => {
  it('lies on a straight line, and the wind turns through north, not through south', () => {
    const between = weatherAt(soundCamp, clockMinutes(630));
    expect(between.air).toBeCloseTo(fromCelsius(13), 9);
    expect(between.windFrom).toBeCloseTo(0, 9);
    expect(weatherAt(soundCamp, clockMinutes(615)).windFrom).toBeCloseTo(355, 9);
  });

  it('is exactly the given hour at the hour, in whatever order the hours came', () => {
    const turned = { ...soundCamp, weather: soundCamp.weather.toReversed() };
    expect(weatherAt(turned, clockMinutes(660))).toEqual(soundCamp.weather[1]);
    expect(weatherAt(turned, clockMinutes(600))).toEqual(soundCamp.weather[0]);
  });

  it('is that of the nearest hour outside, and says that it is not known there', () => {
    expect(weatherAt(soundCamp, clockMinutes(100)).air).toBe(fromCelsius(10));
    expect(weatherAt(soundCamp, clockMinutes(2000)).air).toBe(fromCelsius(16));
    expect(knowsWeatherAt(soundCamp, clockMinutes(720))).toBe(true);
    expect(knowsWeatherAt(soundCamp, clockMinutes(721))).toBe(false);
  });

  it('carries humidity only where both hours have it', () => {
    const damp = {
      ...soundCamp,
      weather: [hour(0, { humidity: ratio(0.4) }), hour(60, { humidity: ratio(0.6) })],
    };
    expect(weatherAt(damp, clockMinutes(30)).humidity).toBeCloseTo(0.5, 12);
    expect('humidity' in weatherAt(soundCamp, clockMinutes(630))).toBe(false);
  });
});

describe('weather at any minute', () => {
  it('lies between the lowest and the highest hour, its direction within a turn (seed 4711)', () => {
    const anyHour = fc.record({
      at: fc.integer({ min: -600, max: 3000 }),
      celsius: fc.double({ min: -30, max: 45, noNaN: true }),
      from: fc.double({ min: 0, max: 359.9, noNaN: true }),
    });
    const hours = fc.array(anyHour, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(hours, fc.integer({ min: -2000, max: 5000 }), (given, at) => {
        const weather = given.map(({ at: minute, celsius, from }) =>
          hour(minute, { air: fromCelsius(celsius), windFrom: degrees(from) }),
        );
        const { air, windFrom } = weatherAt({ ...soundCamp, weather }, clockMinutes(at));
        const airs = weather.map((each) => each.air);
        expect(Math.min(...airs) - 1e-9 <= air && air <= Math.max(...airs) + 1e-9).toBe(true);
        expect(0 <= windFrom && windFrom <= 360).toBe(true);
      }),
      { seed: 4711 },
    );
  });
});

describe('the air an oven stands in', () => {
  it('boils water at 94.984 °C at 1500 m (iapws-fluids), with the log-law wind of the hour', () => {
    const air = airAt(soundCamp, clockMinutes(600), { screened: false });
    expect(air.boiling).toBeCloseTo(fromCelsius(94.984), 2);
    expect(air.wind).toBeCloseTo(2 * 0.277, 3);
    expect(airAt(soundCamp, clockMinutes(600), { screened: true }).wind).toBeLessThan(air.wind);
  });

  it('is mild with a light breeze where the camp has no weather at all', () => {
    const air = airAt({ ...soundCamp, weather: [] }, clockMinutes(600), { screened: false });
    expect(Object.values(air).every(Number.isFinite)).toBe(true);
    expect(knowsWeatherAt({ ...soundCamp, weather: [] }, clockMinutes(600))).toBe(false);
  });
});

describe('trouble with a camp', () => {
  const { place, hands } = soundCamp;
  const windy = (wind: number, gust: number) => [
    hour(600),
    hour(660, { wind: metresPerSecond(wind), gust: metresPerSecond(gust) }),
  ];
  const late = { ...hands[0]!, to: clockMinutes(100) };

  it('finds none in a sound camp', () => {
    expect(campTrouble(soundCamp)).toEqual({ refusals: [], notices: [] });
  });

  it.each<[string, Partial<Camp>, string]>([
    ['nobody', { hands: [] }, 'CAMP_NO_HANDS'],
    ['hours upside down', { hands: [...hands, late] }, 'CAMP_HANDS_HOURS_UPSIDE_DOWN'],
    ['no oven', { ovens: [] }, 'CAMP_NO_OVENS'],
    ['too deep', { place: { ...place, elevation: metres(-431) } }, 'CAMP_ELEVATION_OUTSIDE_RANGE'],
    ['too high', { place: { ...place, elevation: metres(5501) } }, 'CAMP_ELEVATION_OUTSIDE_RANGE'],
    [
      'no height',
      { place: { ...place, elevation: metres(Number.NaN) } },
      'CAMP_ELEVATION_OUTSIDE_RANGE',
    ],
    ['a hurricane', { weather: windy(31, 40) }, 'CAMP_WIND_TOO_STRONG'],
    ['wind that is no number', { weather: windy(Number.NaN, 4) }, 'CAMP_WIND_TOO_STRONG'],
    ['wind below nothing', { weather: windy(-1, 4) }, 'CAMP_WIND_TOO_STRONG'],
    ['°F for °C', { weather: [hour(600, { air: fromCelsius(68) })] }, 'CAMP_AIR_OUTSIDE_RANGE'],
    ['no air', { weather: [hour(600, { air: kelvin(Number.NaN) })] }, 'CAMP_AIR_OUTSIDE_RANGE'],
    ['no weather', { weather: [] }, 'CAMP_WEATHER_MISSING'],
    ['a short forecast', { weather: [hour(600)] }, 'CAMP_WEATHER_BEYOND_FORECAST'],
    ['gusts', { weather: windy(4, 12) }, 'CAMP_GUSTS_STRONG'],
    ['a steady blow', { weather: windy(7, 8) }, 'CAMP_GUSTS_STRONG'],
    [
      'unknown fuel',
      { fuel: { kind: 'briquettes', pieceMass: grams(25), isMeasured: false } },
      'CAMP_FUEL_UNKNOWN',
    ],
  ])('names %s', (_, change, wanted) => {
    expect(codesOf({ ...soundCamp, ...change })).toContain(wanted);
  });

  it('says each kind once, and only what the list of codes holds, in its kind', () => {
    const all = {
      ...soundCamp,
      hands: [],
      ovens: [],
      weather: [hour(0, { air: fromCelsius(99) }), hour(60, { wind: metresPerSecond(40) })],
    };
    const codes = codesOf(all);
    expect(new Set(codes).size).toBe(codes.length);
    const { refusals, notices } = campTrouble(all);
    const kindOf = (code: string) => campCodes[code as keyof typeof campCodes].kind;
    expect(refusals.every(({ code }) => kindOf(code) === 'refusal')).toBe(true);
    expect(notices.every(({ code }) => kindOf(code) === 'notice')).toBe(true);
  });
});

describe('what a cook sees and feels', () => {
  it('turns signs into the wind of wmo306 code table 1100, calm to near gale', () => {
    const [calm, ...winds] = windSigns.map(windFromSign);
    expect(calm).toMatchObject({ force: 0, lowest: 0, highest: 0.2 });
    expect(windFromSign('leaves-rustle')).toMatchObject({ force: 2, lowest: 1.6, highest: 3.3 });
    winds.forEach((sense, index) => {
      expect(sense.force).toBe(index + 1);
      expect(beaufortOf(sense.wind)).toBe(sense.force);
      expect(beaufortOf(sense.lowest)).toBe(sense.force);
      expect(beaufortOf(sense.highest)).toBe(sense.force);
    });
    expect(beaufortOf(metresPerSecond(25))).toBe(8);
  });

  it('orders the words for air from cold to hot, each with its doubt (ours, no source)', () => {
    const senses = airWords.map(airFromWord);
    for (const { air, lowest, highest } of senses) expect(lowest < air && air < highest).toBe(true);
    expect(senses.map(({ air }) => air)).toEqual(
      senses.map(({ air }) => air).toSorted((a, b) => a - b),
    );
  });
});
