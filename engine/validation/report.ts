// `npm run report`: our answers beside published ones, badly fitting ones too. Committed as
// docs/validation.txt, so that a change shows as a difference.
import { writeFileSync } from 'node:fs';
import { bakeReport } from './bake/report.ts';
import { minutesReport } from './coals/minutes-report.ts';
import { coalReport } from './coals/report.ts';

const report = `${[coalReport(), minutesReport(), bakeReport()].join('\n\n')}\n`;
writeFileSync(new URL('../../docs/validation.txt', import.meta.url), report);
process.stdout.write(report);
