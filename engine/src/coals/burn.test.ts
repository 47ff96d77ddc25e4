import { describe, expect, it } from 'vitest';
import published from '../../validation/coals/published-minutes.json' with { type: 'json' };
import { windAtOven } from '../camp/air.ts';
import { windFromSign } from '../camp/senses.ts';
import { grams, metres, metresPerSecond, minutes } from '../quantity/unit.ts';
import {
  burnoutMinutes,
  massLeft,
  meanStrength,
  STILL_BURNOUT_MINUTES,
  strengthAt,
} from './burn.ts';
import { fuelPiece, SHOVEL_PIECES, shovelsFor } from './fuel.ts';
import { ashOverMinutes, chimneyfuls, coalLifeMinutes } from './lighting.ts';

const briquettes = { kind: 'briquettes', pieceMass: grams(24.5), isMeasured: true } as const;
const wood = { kind: 'wood-coals', lead: minutes(45) } as const;
const calm = metresPerSecond(0);

const range = (name: string): readonly [number, number] => {
  const row = published.rows.find(([what]) => String(what).startsWith(name));
  return [Number(row?.[1]), Number(row?.[2])];
};

const expectWithin = (value: number, [least, most]: readonly [number, number]) => {
  expect(value).toBeGreaterThanOrEqual(least);
  expect(value).toBeLessThanOrEqual(most);
};

describe('a burning coal', () => {
  it('is half burned at 30 minutes (chimneyMinutes; the law is fixed by it)', () => {
    expect(massLeft(30 / STILL_BURNOUT_MINUTES)).toBeCloseTo(0.5, 2);
  });

  it('has mean strength 1 from 15 to 60 minutes, which is what a chart counts on', () => {
    expect(meanStrength(15 / STILL_BURNOUT_MINUTES, 60 / STILL_BURNOUT_MINUTES)).toBeCloseTo(1, 9);
  });

  it('gives as much power as it loses mass, and nothing once it is ash', () => {
    const slope = (massLeft(0.4 - 1e-6) - massLeft(0.4 + 1e-6)) / 2e-6;
    const other = (massLeft(0.7 - 1e-6) - massLeft(0.7 + 1e-6)) / 2e-6;
    expect(strengthAt(0.4) / strengthAt(0.7)).toBeCloseTo(slope / other, 5);
    expect(strengthAt(1)).toBe(0);
    expect(strengthAt(7)).toBe(0);
  });

  it('lasts within the published 20 to 60 minutes (coalLife), wood half as long (woodCoalLife)', () => {
    expectWithin(coalLifeMinutes({ fuel: briquettes, wind: calm }), range('briquettes'));
    expectWithin(coalLifeMinutes({ fuel: wood, wind: calm }), range('wood'));
  });

  it('lasts ever shorter in more wind: half as long between 1 and 2 m/s, as burnWind implies', () => {
    const lives = [0, 0.5, 1, 2, 4, 8, 15].map((wind) =>
      burnoutMinutes({ life: 1 }, { windMetresPerSecond: wind, pressurePascals: 101_325 }),
    );
    expect(lives).toEqual([...lives].sort((one, other) => other - one));
    expect((lives[2] ?? 0) / (lives[0] ?? 1)).toBeGreaterThan(0.5);
    expect((lives[3] ?? 0) / (lives[0] ?? 1)).toBeLessThan(0.5);
  });

  it('burns as if still in a breath of air, with the root of a strong wind (bergman2011 9.9: third powers; burnWind)', () => {
    const life = (wind: number) =>
      burnoutMinutes({ life: 1 }, { windMetresPerSecond: wind, pressurePascals: 101_325 });
    expect(life(0.1) / life(0)).toBeGreaterThan(0.95);
    expect(life(8) / life(2)).toBeCloseTo(0.5, 1);
    const [own, same] = [life(0), life(0.5)]; // as much forced as own: 2^(1/3) faster
    expect(own / same).toBeCloseTo(2 ** (1 / 3), 9);
  });

  it('in a light breeze is replaced 45 to 60 minutes after lighting, as cooks out of doors say (coalLife)', () => {
    const breeze = windAtOven(windFromSign('leaves-rustle').wind, false);
    const replaced = 15 + coalLifeMinutes({ fuel: briquettes, wind: breeze });
    expectWithin(replaced, [45, 60]);
  });

  it('keeps heat to mass when the piece is heavier: strength times life goes with mass', () => {
    const heavy = fuelPiece({ ...briquettes, pieceMass: grams(49) });
    expect(heavy.strength * heavy.life).toBeCloseTo(2, 9);
  });
});

describe('lighting', () => {
  it('ashes over within the published minutes, slower up high (chimneyMinutes, chimneyAtHeight)', () => {
    const low = ashOverMinutes({ elevation: metres(0), wind: calm });
    const high = ashOverMinutes({ elevation: metres(1676), wind: calm });
    expectWithin(low, range('chimney to ash over, lowland'));
    expectWithin(high, range('chimney to ash over, 1676 m'));
    expect(high).toBeGreaterThan(low);
  });

  it('never takes longer in a breeze, never less than the shortest published wait (chimneyMinutes)', () => {
    const waits = [0, 1, 2, 4, 8, 15].map((wind) =>
      ashOverMinutes({ elevation: metres(500), wind: metresPerSecond(wind) }),
    );
    expect(waits).toEqual([...waits].sort((one, other) => other - one));
    expectWithin(waits.at(-1) ?? 0, range('chimney to ash over, lowland'));
    expect(ashOverMinutes({ elevation: metres(9000), wind: calm })).toBeLessThanOrEqual(60);
  });

  it('counts whole chimneys, and shovels to the half', () => {
    expect(chimneyfuls(51, { chimneyfulCoals: 50 })).toBe(2);
    expect(chimneyfuls(0, { chimneyfulCoals: 50 })).toBe(0);
    expect(shovelsFor(SHOVEL_PIECES * 2.5)).toBe(2.5);
  });
});
