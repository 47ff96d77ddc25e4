// `npm test`: everything a change must pass, as the first and only command in a fresh clone.
// It installs node modules only. A missing system tool fails under CI=true; elsewhere its checks are
// listed as NOT RUN with the line that installs it, and counted in the last line.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from './build.mjs';
import { ensureInstalled, ensureNode, root, runTool, say } from './ensure.mjs';
import { systemTools } from './system-tools.mjs';

ensureNode();
await ensureInstalled();

const isCI = process.env.CI === 'true';
const failures = [];
const notRun = systemTools.filter((tool) => !isPresent(tool));

function isPresent(tool) {
  return tool.programs.some(
    (program) => spawnSync(program, ['--version'], { stdio: 'ignore' }).status === 0,
  );
}

function step(name, code) {
  if (code !== 0) failures.push(name);
}

step('style (biome)', runTool('@biomejs/biome/bin/biome', ['check', '.', '--error-on-warnings']));
step('types (tsc)', runTool('typescript/bin/tsc', ['-b']));
step('leftovers (knip)', runTool('knip/bin/knip.js', ['--no-progress']));
await build(['web', 'server', 'cli']);

mkdirSync(join(root, '.build'), { recursive: true });
const results = join(root, '.build/test-results.json');
step(
  'tests (vitest)',
  runTool('vitest/vitest.mjs', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${results}`,
  ]),
);
const counts = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : undefined;

for (const tool of notRun) {
  say(`NOT RUN: ${tool.checks} (needs ${tool.name}: ${tool.install})`);
  if (isCI) failures.push(`missing system tool: ${tool.name}`);
}
for (const name of failures) say(`FAILED: ${name}`);
if (notRun.length > 0)
  say(`${notRun.length} of ${systemTools.length} groups of checks NOT RUN, see above`);
const failed = Math.max(failures.length, counts?.numFailedTests ?? 1);
const skipped = (counts?.numPendingTests ?? 0) + (counts?.numTodoTests ?? 0);
say(
  `${counts?.numPassedTests ?? 0} passed, ${failures.length === 0 ? 0 : failed} failed, ${skipped} skipped`,
);
process.exitCode = failures.length === 0 ? 0 : 1;
