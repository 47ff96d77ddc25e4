// Leavening and height beside published tables, doubtful rows too.

import published from '../../data/altitude.json' with { type: 'json' };
import { pressureAtElevation } from '../../src/camp/air.ts';
import { gasOfPowder, gasVolume } from '../../src/formula/gas.ts';
import { leaveningCutAt } from '../../src/formula/height.ts';
import { leaveningAcid, powderStrength, sodaPerGram } from '../../src/formula/leaven/table.ts';
import { fromUnit, inUnit } from '../../src/quantity/convert.ts';
import { fromCelsius, grams, pascals } from '../../src/quantity/unit.ts';
import { fixed, type ReportRow, reportTable, spanRow } from '../table.ts';
import extension from './altitude-leavening.json' with { type: 'json' };
import purdy from './altitude-purdy.json' with { type: 'json' };
import service from './altitude-service.json' with { type: 'json' };
import gas from './gas.json' with { type: 'json' };
import acids from './neutralising-values.json' with { type: 'json' };

type Numbers = readonly number[];

export const leaveningReport = (): string =>
  [heightReport(), acidReport(), gasReport()].join('\n\n');

const percent = fixed(0, '%');
const cutAt = (feet: number) => leaveningCutAt(fromUnit(feet, 'foot'));

/** An eighth of a teaspoon in one, as the tables count. */
const EIGHTH = 12.5;

function heightReport(): string {
  const printed = [
    ...eighths(extension.rows as readonly Numbers[], 'uwAltitude', 'cakes'),
    ...eighths(purdy.rows as readonly Numbers[], 'purdyAltitude', 'all baking'),
  ];
  const rows = [...printed, ...otherTables(), ...serviceRows()];
  return reportTable('Leavening left out for height: equal gas beside each table', rows, [
    'Our law is equal gas, 1 - P/P0 (decision 005); tables in eighths of a teaspoon stand for half an eighth',
    'either way. Tables for cakes cut more, because weak walls fall; the service manual cuts two to three',
    'times what the gas law asks. Those rows stay apart on purpose and are shown on the dish card.',
  ]);
}

const eighths = (rows: readonly Numbers[], source: string, of: string): readonly ReportRow[] =>
  rows.map(([feet, least, most]) =>
    spanRow({
      what: `${feet} ft, ${of}`,
      source,
      least: 100 * least!,
      most: 100 * most!,
      ours: 100 * cutAt(feet!),
      rounding: EIGHTH / 2,
      say: percent,
    }),
  );

/** The tables that have no case file of their own, at each height that they print. */
function otherTables(): readonly ReportRow[] {
  const own = ['uwAltitude', 'purdyAltitude', 'serviceAltitude'];
  return published.tables
    .filter(({ source }) => !own.includes(source))
    .flatMap(({ who, source, rows }) =>
      rows.map(({ feet, leavening }) => {
        const shares = leavening as Numbers;
        return spanRow({
          what: `${feet} ft, ${who}`,
          source,
          least: 100 * shares[0]!,
          most: 100 * (shares[1] ?? shares[0]!),
          ours: 100 * cutAt(feet),
          rounding: 2,
          say: percent,
        });
      }),
    );
}

function serviceRows(): readonly ReportRow[] {
  return [2000, 4000, 6000, 8000].map((feet, column) => {
    const cuts = (service.rows as readonly Numbers[]).map((row) => 1 - row[column + 1]! / row[0]!);
    return spanRow({
      what: `${feet} ft, service manual, its eight rows`,
      source: 'serviceAltitude',
      least: 100 * Math.min(...cuts),
      most: 100 * Math.max(...cuts),
      ours: 100 * (1 - pressureAtElevation(fromUnit(feet, 'foot')) / 101_325),
      rounding: 2,
      say: percent,
    });
  });
}

function acidReport(): string {
  const rows = acids.rows.map((row) => {
    const [key, first, other] = row as unknown as readonly [string, number, number | null];
    const both = other === null ? [first] : [first, other];
    return spanRow({
      what: key,
      source: 'neutralisingValues',
      least: Math.min(...both),
      most: Math.max(...both),
      ours: leaveningAcid(key)!.neutralisingValue,
      rounding: 0.5,
      say: fixed(1),
      verdict: 'taken',
    });
  });
  return reportTable('Soda that 100 g of an acid neutralise, g', rows, [
    'Our table is read from the same works. Where two print different values both stand: cream of tartar',
    'differs by a tenth. Acids of the kitchen are also worked from their molar masses, in the tests.',
  ]);
}

function gasReport(): string {
  const volumes = (gas.rows as readonly Numbers[]).map(([celsius, pressure, litres]) =>
    spanRow({
      what: `1 g of gas at ${celsius} C and ${(pressure! / 1000).toFixed(1)} kPa, l`,
      source: 'neutralisingValues',
      least: litres!,
      most: litres!,
      ours: inUnit(gasVolume(grams(1), fromCelsius(celsius!), pascals(pressure!)), 'litre'),
      rounding: 0.0001,
      say: fixed(4),
    }),
  );
  const one = (what: string, source: string, value: number, ours: number, rounding: number) =>
    spanRow({ what, source, least: value, most: value, ours, rounding, say: fixed(3) });
  return reportTable(
    'Gas of powder and soda',
    [
      ...volumes,
      {
        ...one(
          'least gas of powder by law, share',
          'legalPowder',
          0.12,
          powderStrength('baking-powder').least,
          1e-9,
        ),
        verdict: 'taken',
      },
      one('gas of 12 g of powder, g', 'legalPowder', 1.44, gasOfPowder(grams(12)), 1e-9),
      one(
        'soda to a tablespoon of vinegar, tsp',
        'sodaChemistry',
        0.23,
        (14.9 * sodaPerGram('vinegar-distilled')) / 4.6,
        0.005,
      ),
      one(
        'soda to a cup of buttermilk, tsp',
        'sodaChemistry',
        0.5,
        (245 * sodaPerGram('buttermilk')) / 4.6,
        0.05,
      ),
    ],
    [
      'Buttermilk: the kitchen rule says half a teaspoon, its usual acid takes 0.4; both are told at a swap.',
    ],
  );
}
