// Packed, bought, served and kept cold: ours beside service cards, a buying guide, serving charts and
// ice.

import { insideOf } from '../../src/camp/stores.ts';
import { appetiteFactor } from '../../src/menu/mouths/appetites.ts';
import { boiledVolume, rawByGuide, rawForCooked } from '../../src/menu/mouths/cooked.ts';
import { publishedPortions } from '../../src/menu/mouths/published.ts';
import { inCups, toolHolds } from '../../src/menu/mouths/serving-tools.ts';
import { boxLeak, iceHeat, openingHeat } from '../../src/provisions/ice/heat.ts';
import { asBought } from '../../src/provisions/shopping.ts';
import { fromUnit, inUnit } from '../../src/quantity/convert.ts';
import {
  cubicMetres,
  fromCelsius,
  fromFahrenheit,
  grams,
  kelvinDifference,
  metres,
} from '../../src/quantity/unit.ts';
import energy from '../menu/appetite-energy.json' with { type: 'json' };
import portions from '../menu/published-portions.json' with { type: 'json' };
import tools from '../menu/serving-tools.json' with { type: 'json' };
import { fixed, reportTable, spanRow, type Verdict } from '../table.ts';

interface One {
  readonly what: string;
  readonly source: string;
  readonly published: number | readonly [number, number];
  readonly ours: number;
  readonly rounding: number;
  readonly digits?: number;
  readonly verdict?: Verdict;
}

function row({ what, source, published, ours, rounding, digits = 2, ...more }: One) {
  const [least, most] = typeof published === 'number' ? [published, published] : published;
  return spanRow({ what, source, least, most, ours, rounding, say: fixed(digits), ...more });
}

const JOULES_PER_BTU = 1055.05585; // nist-sp811
const pounds = (mass: number | undefined) => inUnit(grams(mass ?? Number.NaN), 'pound');

export const provisionsReport = (): string =>
  [boughtReport(), servedReport(), iceReport()].join('\n\n');

function boughtReport(): string {
  const ounce = fromUnit(1, 'ounce');
  const beef = { servings: 230, cookedEach: grams(2 * ounce), factor: 0.74 };
  const pound = fromUnit(1, 'pound');
  return reportTable(
    'Bought: service cards and a buying guide',
    [
      row({
        what: '1.25 lb for 348 portions, lb',
        source: 'afrs-a1',
        published: 4.35,
        ours: 1.25 * 3.48,
        rounding: 0.005,
      }),
      row({
        what: '3 lb of cucumber as purchased, lb',
        source: 'afrs-a6',
        published: 3.57,
        ours: pounds(asBought('cucumber', grams(3 * pound))),
        rounding: 0.005,
      }),
      row({
        what: '230 x 2 oz of ground beef by the guide, lb',
        source: 'usdaBuyingGuide',
        published: 39.1,
        ours: pounds(rawByGuide(beef)),
        rounding: 0.05,
        digits: 1,
      }),
      row({
        what: 'the same by its yield of 0.74, lb',
        source: 'usdaBuyingGuide',
        published: 39.1,
        ours: pounds(rawForCooked(beef)),
        rounding: 0.05,
      }),
      row({
        what: 'a pound of dry beans boiled, cups',
        source: 'fns23',
        published: [5, 7],
        ours: inCups(boiledVolume('dry beans', pound) ?? cubicMetres(0)),
        verdict: 'taken',
        rounding: 0.01,
        digits: 1,
      }),
    ],
    [
      'The guide rounds 8.446 lb for 100 servings of an ounce up to 8.5 before it multiplies: its own yield buys a',
      'quarter of a pound less on 39. Ours reckons with the yield, and the sheet says what the guide would buy.',
    ],
  );
}

type EnergyRow = readonly ['ordinary' | 'child' | 'over-65', number, number, number];
type ToolRow = readonly ['ladle' | 'scoop', number, number, number];

function servedReport(): string {
  const cards = new Map(portions.rows as unknown as readonly (readonly [string, number])[]);
  return reportTable(
    'Mouths and portions: energy needed, service cards, a serving chart',
    [
      ...(energy.rows as unknown as readonly EnergyRow[]).map(([appetite, men, women]) =>
        row({
          what: `${appetite}, part of an ordinary portion`,
          source: 'calorieNeeds',
          published: (men + women) / 4600,
          ours: appetiteFactor(appetite),
          verdict: 'taken',
          rounding: 0.01,
        }),
      ),
      ...publishedPortions().map(({ key, gramsEach, source }) =>
        row({
          what: `${key}, raw or dry in one portion, g`,
          source,
          published: cards.get(key) ?? Number.NaN,
          ours: gramsEach,
          verdict: 'taken',
          rounding: 0.06,
          digits: 1,
        }),
      ),
      ...(tools.rows as unknown as readonly ToolRow[]).map(([tool, size, cups]) =>
        row({
          what: `${tool} ${tool === 'scoop' ? 'no. ' : 'of '}${size}, cups`,
          source: 'servingBasics',
          published: cups,
          ours: inCups(toolHolds(tool, size)),
          rounding: 0.005,
          digits: 3,
        }),
      ),
    ],
    [
      'Appetites are rounded to a twentieth. The chart prints scoops in spoons that exist: no. 10 is 3.2 fl oz and',
      'is printed as 3/8 cup, no. 30 is 1.07 and is printed as two tablespoons.',
    ],
  );
}

function iceReport(): string {
  const melted = { from: fromFahrenheit(5), to: fromFahrenheit(40) };
  const inside = { length: metres(0.44), width: metres(0.34), height: metres(0.24) };
  const btu = (joules: number) => joules / JOULES_PER_BTU;
  const quarts = insideOf(cubicMetres(36 * fromUnit(1, 'us-quart')));
  return reportTable(
    'Ice and the box it lies in',
    [
      row({
        what: '25 lb of ice, 5 F to water of 40 F, Btu',
        source: 'iceRefrigerationText',
        published: 4140.2,
        ours: btu(iceHeat(fromUnit(25, 'pound'), melted)),
        rounding: 12,
        digits: 1,
      }),
      row({
        what: 'a kilogram melts, kcal',
        source: 'fao-ice',
        published: 80,
        ours: iceHeat(grams(1000), { from: fromCelsius(0), to: fromCelsius(0) }) / 4186.8,
        rounding: 0.5,
        digits: 1,
      }),
      row({
        what: 'chest of 3 cm foam, 25 K, six walls, W',
        source: 'iceChest',
        published: [18.52, 25.85],
        ours: boxLeak(inside, metres(0.03), kelvinDifference(25)),
        rounding: 0.1,
        digits: 1,
      }),
      row({
        what: 'ten openings of 36 quarts, Btu',
        source: 'lidOpenings',
        published: [30, 40],
        ours: btu(10 * openingHeat(quarts)),
        verdict: 'taken',
        rounding: 0.1,
        digits: 1,
      }),
    ],
    [
      'The text has 144 Btu/lb, 334.9 kJ/kg; ours is 334. The span of the chest is that of its inner and of its outer',
      'area, bottom counted: no published answer for a thick wall with its edges was found. The last row is the',
      'test that our figure of an opening is taken from, at the middle of its span.',
    ],
  );
}
