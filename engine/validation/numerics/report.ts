// The model of a load without water beside one term and the whole series of conduction.

import { bakeInside } from '../../src/bake/inside/bake-inside.ts';
import type { Body } from '../../src/bake/inside/body.ts';
import {
  DRY_CONDUCTIVITY,
  SOLIDS_DENSITY,
  SOLIDS_JOULES,
} from '../../src/bake/inside/constants.ts';
import type { FacesAt } from '../../src/bake/inside/face.ts';
import { insidePhysics } from '../../src/bake/inside/physics.ts';
import { pascals } from '../../src/quantity/unit.ts';
import { fixed, reportTable, spanRow } from '../table.ts';
import oneTerm from './one-term.json' with { type: 'json' };
import { textbookAnswer, textbookCases } from './textbook.ts';

const START = 300;
const AIR = 350; // no boil, no water: nothing but conduction
const FOURIER = 0.5;
const SHAPES: readonly (readonly [Body['shape'], number])[] = [
  ['slab', 1],
  ['cylinder', 3],
  ['sphere', 5],
];

export function conductionReport(): string {
  const rows = SHAPES.flatMap(([shape, column]) =>
    oneTerm.rows
      .filter(([biot]) => [0.1, 1, 5, 20].includes(biot!))
      .map((row) => {
        const [biot, root, factor] = [row[0]!, row[column]!, row[column + 1]!];
        const exact = factor * Math.exp(-(root ** 2) * FOURIER);
        return spanRow({
          what: `${shape}, Bi ${biot}, Fo 0.5: left in the middle`,
          source: 'bergman2011',
          least: exact,
          most: exact,
          ours: leftOf(shape, biot),
          rounding: 0.005,
          say: fixed(4),
        });
      }),
  );
  const held = [0.05, 0.1, 0.2, 0.4, 0.7, 1].map((fourier) =>
    spanRow({
      what: `slab with held faces, Fo ${fourier}: left in the middle`,
      source: 'textbook series',
      least: seriesLeft(fourier),
      most: seriesLeft(fourier),
      ours: leftOf('slab', 1e4, fourier),
      rounding: 0.006,
      say: fixed(4),
    }),
  );
  return reportTable('Conduction alone: the bake model without water', [...rows, ...held]);
}

/** Textbook problems by name, on the stepper and the root search. */
export const textbookReport = (): string =>
  reportTable(
    'Textbook problems of heating and cooling: the stepper and the root search',
    textbookCases.map((each) =>
      spanRow({
        what: `${each.name}: ${each.asked}`,
        source: each.where.startsWith('bergman') ? 'bergman2011' : 'cengel',
        least: each.answer,
        most: each.answer,
        ours: textbookAnswer(each),
        rounding: each.rounding,
        say: fixed(each.answer < 1 ? 5 : 2),
      }),
    ),
    [
      'The silver sphere and the slab are recomputed answers; the book prints 445 for the brass plate.',
    ],
  );

/** Sum of 4/pi (-1)^n/(2n+1) exp(-((2n+1) pi/2)^2 Fo). */
function seriesLeft(fourier: number): number {
  let sum = 0;
  for (let n = 0; n < 40; n += 1) {
    const root = ((2 * n + 1) * Math.PI) / 2;
    sum += ((n % 2 === 0 ? 2 : -2) / root) * Math.exp(-(root ** 2) * fourier);
  }
  return sum;
}

/** Share of the start that is left in the middle of a body of this Biot number. */
function leftOf(shape: Body['shape'], biot: number, fourier = FOURIER): number {
  const diffusivity = DRY_CONDUCTIVITY / (SOLIDS_DENSITY * SOLIDS_JOULES);
  const minutes = Math.max(1, Math.round((fourier * 0.02 ** 2) / diffusivity / 60));
  const reach = Math.sqrt((minutes * 60 * diffusivity) / fourier);
  const film = (biot * DRY_CONDUCTIVITY) / reach;
  const faces: FacesAt = (_, bottom, top) => {
    for (const face of [bottom, top]) {
      face.film = film;
      face.airKelvin = AIR;
    }
  };
  const run = bakeInside({
    body: {
      shape,
      metres: shape === 'slab' ? 2 * reach : reach,
      density: SOLIDS_DENSITY,
      water: 0,
      rise: 1,
      startKelvin: START,
    },
    physics: insidePhysics(pascals(101_325)),
    faces,
    minutes,
    count: 41,
    stepSeconds: 2,
  });
  return (AIR - run.moments.at(-1)!.coreKelvin) / (AIR - START);
}
