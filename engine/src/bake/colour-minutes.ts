// How long until the top is golden? The lid decides: table in data/bake-colour.json, computed with
// a trial model. Thin bread is taken out when it looks right, so colour sets its time.
// Source: trial-bake-model.

import table from '../../data/bake-colour.json' with { type: 'json' };
import { fromCelsius, type Kelvin, type Minutes, minutes } from '../quantity/unit.ts';

const rows = table.rows;

/**
 * Minutes under a lid of this temperature until the top is golden.
 *
 * Log-linear between the rows. Below the first row its slope goes on (slower and slower, not
 * checked); above the last row nothing is gained.
 */
export function colourMinutesUnder(lid: Kelvin): Minutes {
  const last = rows.length - 1;
  const upper = rows.findIndex((row) => lid <= fromCelsius(row.lidCelsius));
  if (upper < 0) return minutes(at(last).minutes);
  const right = at(Math.max(1, upper));
  const left = at(Math.max(1, upper) - 1);
  const share = (lid - fromCelsius(left.lidCelsius)) / (right.lidCelsius - left.lidCelsius);
  return minutes(left.minutes * (right.minutes / left.minutes) ** share);
}

/** Share of the way to golden in one minute. */
export const colourRateUnder = (lid: Kelvin) => 1 / colourMinutesUnder(lid);

function at(index: number) {
  const row = rows[index];
  if (row === undefined) throw new RangeError(`no colour row ${index}`);
  return row;
}
