import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromFahrenheit } from '../quantity/unit.ts';
import { fixturePlan } from './fixture.ts';
import { sayFor } from './speak.ts';
import { dateWord } from './speak-time.ts';

const plan = fixturePlan();
const us = sayFor({ measures: 'us', clock: '24', plan });
const metric = sayFor({ measures: 'metric', clock: '24', plan });
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('temperatures as a cook reads them', () => {
  it('says 350 °F as 350 °F and, by nist-sp811 B.9 (176.7 °C), as 175 °C to the nearest five', () => {
    expect(plain(us.oven(fromFahrenheit(350)))).toBe('350 °F');
    expect(plain(metric.oven(fromFahrenheit(350)))).toBe('175 °C');
  });

  it('says a core to the degree: 165 °F is 73.9 °C (nist-sp811 B.9)', () => {
    expect(plain(us.degrees(fromFahrenheit(165)))).toBe('165 °F');
    expect(plain(metric.degrees(fromFahrenheit(165)))).toBe('74 °C');
  });

  it('says a difference without the offset of the scale: 25 °F is 13.9 K', () => {
    expect(plain(us.difference(25 / 1.8))).toBe('25 °F');
    expect(plain(metric.difference(25 / 1.8))).toBe('14 °C');
  });
});

describe('masses, lengths and volumes', () => {
  it('says a pound of 453.592 37 g as 1 lb and two of them with an ounce as 2 lb 1 oz (nist-hb44)', () => {
    expect(plain(us.mass(453.59237))).toBe('1 lb');
    expect(plain(us.mass(2 * 453.59237 + 28.349523125))).toBe('2 lb 1 oz');
    expect(plain(metric.mass(1418))).toBe('1.42 kg');
    expect(plain(metric.mass(3.14))).toBe('3.1 g');
  });

  it('says an inch of 25.4 mm with its fraction, and long lengths in feet or metres (nist-hb44)', () => {
    expect(plain(us.length(0.0254 * 3.75))).toBe('3 3/4 in');
    expect(plain(us.length(0.3048 * 10))).toBe('10 ft');
    expect(plain(metric.length(0.3048))).toBe('30 cm');
    expect(plain(metric.length(3.048))).toBe('3 m');
  });

  it('says a US cup of 236.588 ml as one cup and four of them as a quart (nist-hb44)', () => {
    expect(plain(us.volume(236.5882365e-6))).toBe('1 cup');
    expect(plain(us.volume(4 * 236.5882365e-6))).toBe('1 qt');
    expect(plain(metric.volume(0.00064))).toBe('640 ml');
  });

  it('never says a second ounce pound as 16 oz', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 4000, noNaN: true }), (grams) => {
        expect(plain(us.mass(grams))).not.toMatch(/\b16 oz/);
      }),
      { seed: 7 },
    );
  });
});

describe('wind', () => {
  it('names the wind as wmo306 code table 1100 does', () => {
    expect(plain(metric.wind(0))).toBe('calm');
    expect(plain(metric.wind(2.5))).toBe('light breeze, 2.5 m/s');
    expect(plain(metric.wind(5.4))).toBe('gentle breeze, 5 m/s');
    expect(plain(metric.wind(13.8))).toBe('strong breeze, 14 m/s');
    expect(plain(us.wind(4.4704))).toBe('gentle breeze, 10 mph');
  });
});

describe('time', () => {
  it('says the day before and the next day, and noon and midnight on a 12-hour clock', () => {
    const twelve = sayFor({ measures: 'us', clock: '12', plan });
    expect(us.clock(1110)).toBe('18:30');
    expect(us.clock(-80)).toBe('22:40 the day before');
    expect(us.clock(1450)).toBe('00:10 the next day');
    expect(plain(twelve.clock(0))).toBe('12:00 am');
    expect(plain(twelve.clock(720))).toBe('12:00 pm');
    expect(plain(us.minutes(80))).toBe('1 h 20 min');
  });

  it('never says 60 minutes past an hour', () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 5000, noNaN: true }), (minutes) => {
        expect(us.clock(minutes)).toMatch(/^\d\d:[0-5]\d( |$)/);
      }),
      { seed: 7 },
    );
  });
});

describe('a number that is missing', () => {
  it('is said as not known and never as NaN', () => {
    for (const say of [us, metric]) {
      for (const speak of [say.oven, say.mass, say.length, say.wind, say.clock, say.count]) {
        expect(speak(Number.NaN)).toBe('not known');
      }
    }
  });
});

describe('the name of a day', () => {
  it('is that of the calendar from 1900 to 2199 (ECMA-262 dates), on both sides of the camp’s date', () => {
    for (let days = -20_000; days <= 80_000; days += 37) {
      const date = new Date(Date.UTC(2000, 0, 1) + days * 86_400_000);
      const wanted = new Intl.DateTimeFormat('en-GB', {
        weekday: 'long',
        day: 'numeric',
        month: 'long',
        timeZone: 'UTC',
      });
      const parts = Object.fromEntries(wanted.formatToParts(date).map((p) => [p.type, p.value]));
      const said = dateWord('2000-01-01', days);
      expect(said).toBe(`${parts.weekday} ${parts.day} ${parts.month}`);
      expect(dateWord(date.toISOString().slice(0, 10), 0)).toBe(said);
    }
  });

  it('is its number where the camp has no date', () => {
    expect(dateWord('some day', 1)).toBe('Day 2');
  });
});
