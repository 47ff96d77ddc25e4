// Life of coals, ash over and the heat of one pair beside the published ranges, printed for people.

import { ashOverMinutes, coalLifeMinutes } from '../../src/coals/lighting.ts';
import { grams, metres, metresPerSecond, minutes } from '../../src/quantity/unit.ts';
import { pairStepFahrenheit } from './compare.ts';
import published from './published-minutes.json' with { type: 'json' };
import steps from './published-steps.json' with { type: 'json' };

const CALM = metresPerSecond(0);
const BRIQUETTES = { kind: 'briquettes', pieceMass: grams(24.5), isMeasured: true } as const;
const WOOD = { kind: 'wood-coals', lead: minutes(45) } as const;

/** Ours for each published row, in its order. */
const OURS: readonly number[] = [
  coalLifeMinutes({ fuel: BRIQUETTES, wind: CALM }),
  coalLifeMinutes({ fuel: WOOD, wind: CALM }),
  ashOverMinutes({ elevation: metres(0), wind: CALM }),
  ashOverMinutes({ elevation: metres(1676), wind: CALM }),
  30,
];

export function minutesReport(): string {
  return [
    'Coals: minutes beside published ones',
    '',
    `${'what'.padEnd(46)}  ours  published`,
    ...published.rows.map(
      ([what, least, most], index) =>
        `${String(what).padEnd(46)}  ${String(OURS[index]).padStart(4)}  ${least} to ${most}`,
    ),
    'The last row fixes the burn law, so it proves nothing.',
    '',
    'One pair of coals more, one above and one below, near 350 F:',
    ...[8, 10, 12, 14, 16].map(
      (inches) => `  ${String(inches).padStart(2)} inch ${pairStepFahrenheit(inches).toFixed(0)} F`,
    ),
    `Published: ${steps.rows.map(([rule, least, most]) => `${rule}: ${least === most ? least : `${least} to ${most}`}`).join('; ')}.`,
  ].join('\n');
}
