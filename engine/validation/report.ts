// `npm run report`: our answers beside published ones, badly fitting ones too. Committed as
// docs/validation.txt, so that a change shows as a difference.
import { writeFileSync } from 'node:fs';
import { coalReport } from './coals/report.ts';

const report = `${coalReport()}\n`;
writeFileSync(new URL('../../docs/validation.txt', import.meta.url), report);
process.stdout.write(report);
