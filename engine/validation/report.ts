// `npm run report`: our answers beside published ones, badly fitting ones too. Committed as
// docs/validation.txt, so that a change shows as a difference.
import { writeFileSync } from 'node:fs';
import { bakeReport } from './bake/report.ts';
import { heatReport } from './coals/heat-report.ts';
import { minutesReport } from './coals/minutes-report.ts';
import { coalReport } from './coals/report.ts';
import { doughReport } from './formula/dough-report.ts';
import { leaveningReport } from './formula/leavening-report.ts';
import { fitReport } from './menu/report.ts';
import { conductionReport, textbookReport } from './numerics/report.ts';
import { provisionsReport } from './provisions/report.ts';
import { safetyReport } from './safety/report.ts';
import { VERDICTS } from './table.ts';

const parts = [
  coalReport(),
  minutesReport(),
  bakeReport(),
  VERDICTS,
  heatReport(),
  conductionReport(),
  textbookReport(),
  leaveningReport(),
  doughReport(),
  fitReport(),
  safetyReport(),
  provisionsReport(),
];
const report = `${parts.join('\n\n')}\n`;
writeFileSync(new URL('../../docs/validation.txt', import.meta.url), report);
process.stdout.write(report);
