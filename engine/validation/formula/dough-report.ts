// Doughs, water and rises beside published figures, doubtful rows too.

import { formulaFor } from '../../src/formula/scale.ts';
import { iceFor, ruleOfThree } from '../../src/formula/water-temperature.ts';
import { bakersYeastRate, lactobacilliRate, wildYeastRate } from '../../src/formula/yeast/rate.ts';
import { type Feed, ripeAfter } from '../../src/formula/yeast/starter.ts';
import type { RecipeKind } from '../../src/menu/recipe.ts';
import { fromUnit, inUnit } from '../../src/quantity/convert.ts';
import {
  fromCelsius,
  fromFahrenheit,
  grams,
  kelvinDifference,
  metres,
  toFahrenheit,
} from '../../src/quantity/unit.ts';
import { dishMade, ingredientMade, recipeMade } from '../menu/made.ts';
import { fixed, type ReportRow, reportTable, spanRow } from '../table.ts';
import ice from './dough-ice.json' with { type: 'json' };
import cards from './service-formulas.json' with { type: 'json' };
import sourdough from './sourdough-growth.json' with { type: 'json' };
import chart from './starter-chart.json' with { type: 'json' };
import water from './water-temperature.json' with { type: 'json' };
import rates from './yeast-rate.json' with { type: 'json' };

type Numbers = readonly number[];

export const doughReport = (): string =>
  [cardReport(), waterReport(), yeastReport(), starterReport()].join('\n\n');

function cardReport(): string {
  const rows = cards.rows.flatMap((card): readonly ReportRow[] => {
    const flour = fromUnit(card.flourPounds, 'pound');
    const made = recipeMade(card.name, {}, { kind: card.kind as RecipeKind, portions: 100 });
    const ingredients = Object.entries(card.percent).map(([key, percent]) =>
      ingredientMade(key.replaceAll('-', ' '), (flour * Number(percent)) / 100),
    );
    const recipe = { ...made, ingredients };
    const dish = dishMade(recipe);
    const formula = formulaFor({
      dish,
      recipe,
      factor: 1,
      elevation: metres(0),
      air: fromCelsius(20),
    });
    const { batchOunces, pieces, pieceGrams } = card;
    const printed = { source: 'armedForcesRecipes', say: fixed(1) };
    const batch = spanRow({
      what: `${card.name}, whole batch, oz`,
      least: batchOunces,
      most: batchOunces,
      ours: inUnit(formula.batch, 'ounce'),
      rounding: 0.0025 * batchOunces,
      ...printed,
    });
    if (pieces === undefined || pieceGrams === undefined) return [batch];
    const each = spanRow({
      what: `${card.name}, each of ${pieces}, g`,
      least: pieceGrams,
      most: pieceGrams,
      ours: formula.batch / pieces,
      rounding: 0.5,
      ...printed,
    });
    return [batch, each];
  });
  return reportTable('Service cards: batch and pieces by our formula', rows);
}

function waterReport(): string {
  const examples = (water.rows as readonly Numbers[]).map(
    ([wanted, flour, room, friction, found]) =>
      spanRow({
        what: `dough ${wanted} F, flour ${flour}, room ${room}, friction ${friction}: water, F`,
        source: 'doughTemperatures',
        least: found!,
        most: found!,
        ours: toFahrenheit(
          ruleOfThree({
            wanted: fromFahrenheit(wanted!),
            flourTemperature: fromFahrenheit(flour!),
            room: fromFahrenheit(room!),
            friction: kelvinDifference(friction! / 1.8),
          }),
        ),
        rounding: 0.5,
        say: fixed(0),
      }),
  );
  const cubes = (ice.rows as readonly Numbers[]).map(([wanted, tap, share]) =>
    spanRow({
      what: `ice for water of ${wanted} F from a tap of ${tap} F, lb a lb`,
      source: 'iceTable',
      least: share!,
      most: share!,
      ours: iceFor({
        water: grams(1),
        tap: fromFahrenheit(tap!),
        wanted: fromFahrenheit(wanted!),
      }),
      rounding: 0.01,
      say: fixed(3),
    }),
  );
  return reportTable(
    'Water for the dough',
    [...examples, ...cubes],
    [
      'The ice table leaves its own rule by up to 0.008 in its cold rows; a hundredth of the water is its doubt.',
    ],
  );
}

function yeastReport(): string {
  const bakers = (rates.rows as readonly Numbers[]).map(([fahrenheit, hours]) =>
    spanRow({
      what: `baker's yeast at ${fahrenheit} F, h to double`,
      source: 'yeastRate',
      least: hours!,
      most: hours!,
      ours: 2 / bakersYeastRate(fromFahrenheit(fahrenheit!)),
      rounding: 0.03 * hours!,
      say: fixed(2),
      ...(fahrenheit === 80 ? { verdict: 'fitted' as const } : {}),
    }),
  );
  const wild = sourdough.rows.map((row) => {
    const [organism, celsius, rate] = row as unknown as readonly [string, number, number];
    const of = organism === 'yeast' ? wildYeastRate : lactobacilliRate;
    return spanRow({
      what: `sourdough ${organism} at ${celsius} C, of its best`,
      source: 'gaenzle1998',
      least: rate,
      most: rate,
      ours: of(fromCelsius(celsius)),
      rounding: 0.01,
      say: fixed(2),
      verdict: 'fitted',
    });
  });
  return reportTable(
    'Speed of yeast and sourdough',
    [...bakers, ...wild],
    [
      'The 80 F row sets the pace. At 97 F the law has ended (95 F) and stays on the slow side: apart.',
      "The sourdough points are the author's own and our curve runs through them: no proof, a check on typing.",
    ],
  );
}

function starterReport(): string {
  const rows = (chart.rows as readonly Numbers[]).map(([parts, least, most], at, all) =>
    spanRow({
      what: `starter fed 1:${parts}:${parts} at 20 C, h to its peak`,
      source: 'starterChart',
      least: least!,
      most: most!,
      ours: ripeAfter(parts as Feed, fromCelsius(20))! / 60,
      rounding: 0.05,
      say: fixed(1),
      ...(at === 0 || at === all.length - 1 ? { verdict: 'fitted' as const } : {}),
    }),
  );
  const warm = ([feed, hours]: readonly [Feed, number]) =>
    spanRow({
      what: `starter fed 1:${feed}:${feed} at 22 C, h, about`,
      source: 'starterAt22',
      least: hours,
      most: hours,
      ours: ripeAfter(feed, fromCelsius(22))! / 60,
      rounding: 0.25 * hours,
      say: fixed(1),
    });
  return reportTable(
    'A starter from its feed to its peak',
    [
      ...rows,
      ...(
        [
          [1, 3.5],
          [10, 12],
        ] as const
      ).map(warm),
    ],
    [
      'The growth law is fitted on the first and last feed of the chart; the four between judge it.',
    ],
  );
}
