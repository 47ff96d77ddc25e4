// For tests: a command on a shell whose day, hour and width are known, and what it said.

import { run } from './run.ts';
import { realShell, type Shell } from './shell.ts';

export const testShell: Shell = {
  ...realShell(),
  today: '2026-09-01',
  nowMinutes: 12 * 60,
  columns: 100,
};

/** What no sheet may say. */
export const UNSAYABLE = /NaN|undefined|Infinity|\[object|not known|no words yet/;

export function heard(words: readonly string[], shell: Shell = testShell) {
  let out = '';
  let error = '';
  const exit = run(words, {
    ...shell,
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { exit, out, error, flat: out.replaceAll(/\s+/g, ' ') };
}
