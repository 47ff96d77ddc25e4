// Lethality of a run, holding times, boiling by height and cores of bread beside published figures.

import kinds from '../../data/bake-kinds.json' with { type: 'json' };
import { boilingPointAt, pressureAtElevation } from '../../src/camp/air.ts';
import { isRefusal } from '../../src/notice/notice.ts';
import { fromUnit } from '../../src/quantity/convert.ts';
import {
  cubicMetres,
  fromFahrenheit,
  metres,
  minutes,
  toCelsius,
  toFahrenheit,
} from '../../src/quantity/unit.ts';
import { drinkingDose } from '../../src/safety/drinking-water.ts';
import { holdMinutesFor, lethalityOf } from '../../src/safety/lethality.ts';
import { bleachStrength } from '../../src/safety/water.ts';
import cores from '../bake/done-temperatures.json' with { type: 'json' };
import boiling from '../camp/boiling.json' with { type: 'json' };
import { fixed, type ReportRow, reportTable, spanRow } from '../table.ts';
import bleach from './bleach.json' with { type: 'json' };
import drinking from './drinking-bleach.json' with { type: 'json' };
import run from './lethality-run.json' with { type: 'json' };
import table from './lethality-table.json' with { type: 'json' };

type Numbers = readonly number[];

export const safetyReport = (): string =>
  [boilingReport(), coreReport(), runReport(), holdReport(), bleachReport(), dropsReport()].join(
    '\n\n',
  );

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

const GALLON = 3.785411784e-3; // m3, exact
const FLUID_OUNCE = 29.5735295625e-6; // m3, exact

function bleachReport(): string {
  const rows = (bleach.rows as unknown as readonly (readonly [string, ...number[]])[]).map(
    ([source, gallons, percent, ounces, strength, tolerance]) =>
      spanRow({
        what: `${ounces} fl oz of ${percent} % in ${gallons} gal, mg/L`,
        source,
        least: strength!,
        most: strength!,
        ours: bleachStrength({
          water: cubicMetres(gallons! * GALLON),
          bleach: cubicMetres(ounces! * FLUID_OUNCE),
          percent: percent!,
        }),
        rounding: tolerance!,
        say: fixed(1),
      }),
  );
  return reportTable('Bleach for dishes and floors', rows, [
    'Weight by volume; density left out makes it up to 8 % stronger. The row called tip is no work: it is the',
    'common tablespoon a gallon by arithmetic, over the 200 mg/L at which dishes are to be rinsed again.',
  ]);
}

function dropsReport(): string {
  const rows = (drinking.rows as readonly Numbers[]).map(([percent, gallons, drops]) => {
    const dose = drinkingDose({ water: cubicMetres(gallons! * GALLON), percent: percent! });
    return spanRow({
      what: `${percent} % in ${gallons} gal to drink, drops`,
      source: percent === 10 || percent === 5.25 ? 'epa-older-leaflet' : 'epa-p100sp1s',
      least: drops!,
      most: drops!,
      ours: isRefusal(dose) ? Number.NaN : dose.drops,
      rounding: 0.5,
      say: fixed(0),
    });
  });
  return reportTable('Bleach in drinking water', rows, [
    'For 10 % the older leaflet prints four drops, the newer table six at 8.25 %: the newer, stricter one is',
    'taken above it, and the row that lies apart stays.',
  ]);
}
