// Lethality of a run, holding times, boiling by height and cores of bread beside published figures.

import kinds from '../../data/bake-kinds.json' with { type: 'json' };
import { boilingPointAt, pressureAtElevation } from '../../src/camp/air.ts';
import { fromUnit } from '../../src/quantity/convert.ts';
import {
  fromFahrenheit,
  metres,
  minutes,
  toCelsius,
  toFahrenheit,
} from '../../src/quantity/unit.ts';
import { holdMinutesFor, lethalityOf } from '../../src/safety/lethality.ts';
import cores from '../bake/done-temperatures.json' with { type: 'json' };
import boiling from '../camp/boiling.json' with { type: 'json' };
import { fixed, type ReportRow, reportTable, spanRow } from '../table.ts';
import run from './lethality-run.json' with { type: 'json' };
import table from './lethality-table.json' with { type: 'json' };

type Numbers = readonly number[];

export const safetyReport = (): string =>
  [boilingReport(), coreReport(), runReport(), holdReport()].join('\n\n');

const boilsAt = (metresHigh: number) => boilingPointAt(pressureAtElevation(metres(metresHigh)));

function boilingReport(): string {
  const same = (what: string, source: string, value: number, ours: number, rounding: number) =>
    spanRow({
      what,
      source,
      least: value,
      most: value,
      ours,
      rounding,
      say: fixed(rounding < 0.1 ? 3 : 1),
    });
  const rows = [
    ...(boiling.metres.rows as readonly Numbers[]).map(([height, celsius]) =>
      same(
        `water boils at ${height} m, C`,
        'iapws-fluids',
        celsius!,
        toCelsius(boilsAt(height!)),
        0.001,
      ),
    ),
    ...(boiling.kitchen.rows as readonly Numbers[]).map(([feet, fahrenheit]) =>
      same(
        `water boils at ${feet} ft, F`,
        'csu',
        fahrenheit!,
        toFahrenheit(boilsAt(fromUnit(feet!, 'foot'))),
        0.5,
      ),
    ),
  ];
  return reportTable('Boiling by height', rows, [
    'The kitchen table prints whole degrees; at 10,000 ft it rounds down where other codes give 193.67.',
  ]);
}

function coreReport(): string {
  const rows = cores.rows.map((row) => {
    const [bread, kind, least, most, how] = row as unknown as readonly [
      string,
      string,
      number,
      number,
      string,
    ];
    const own = kinds.rows.find((each) => each.kind === kind)!.coreCelsius!;
    return spanRow({
      what: `${bread} (${how}), core when done, C`,
      source: 'bakery-cores',
      least,
      most,
      ours: own,
      rounding: 0.5,
      say: fixed(0),
      verdict: 'taken',
    });
  });
  return reportTable('Core of bread when done, at sea level', rows, [
    'Practice, not science. Higher up the crumb stays below the boil there: above some 5,000 ft no bread',
    'reaches 95 C, and the plan says so and takes 3 K below the boil.',
  ]);
}

function runReport(): string {
  const readings = (run.rows as readonly Numbers[]).map(([core], at) => ({
    minute: minutes(at / 2),
    core: fromFahrenheit(core!),
  }));
  const { equivalent } = lethalityOf(readings);
  const rows = (run.rows as readonly Numbers[]).map(([core, published], at) =>
    spanRow({
      what: `${(at / 2).toFixed(1)} min, core ${core} F: minutes at 150 F`,
      source: 'lethality-worksheet',
      least: published!,
      most: published!,
      ours: equivalent[at]!,
      rounding: 0.0006,
      say: fixed(3),
    }),
  );
  return reportTable('Lethality, the worksheet of a meat patty', rows);
}

function holdReport(): string {
  const rows = (table.rows as readonly Numbers[])
    .filter(([, seconds]) => 0 < seconds!)
    .flatMap(([core, six, seven]): readonly ReportRow[] => {
      const unit = core! <= 145 ? 60 : 1;
      const held = (logs: number) =>
        Math.ceil((holdMinutesFor(fromFahrenheit(core!), logs) * 60) / unit - 1e-9);
      const row = (logs: number, seconds: number) =>
        spanRow({
          what: `${core} F, ${logs} logs, ${unit === 60 ? 'min' : 's'}`,
          source: 'fsis-appendix-a',
          least: seconds / unit,
          most: seconds / unit,
          ours: held(logs),
          rounding: 1,
          say: fixed(0),
        });
      return [row(6.5, six!), row(7, seven!)];
    });
  return reportTable('Holding times of red meat, federal table', rows, [
    'One printed unit either way agrees. The column of 7 logs is not used to judge: the log-linear law misses',
    'it by up to two units, and the rows stay.',
  ]);
}
