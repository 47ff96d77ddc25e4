// Everything a command touches outside itself, so that a test can hand in its own.

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

export interface Shell {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** `-` is the input. */
  readonly readText: (path: string) => string;
  readonly readBytes: (path: string) => Uint8Array;
  /** Makes the folders that are missing. */
  readonly write: (path: string, content: string | Uint8Array) => void;
  /** Columns of the terminal. */
  readonly columns: number;
  /** The cook's own day and clock. */
  readonly today: string;
  readonly nowMinutes: number;
  readonly timeZone: string;
}

const STANDARD_INPUT = 0;

export function realShell(): Shell {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return {
    out: (text) => process.stdout.write(text),
    error: (text) => process.stderr.write(text),
    readText: (path) => readFileSync(path === '-' ? STANDARD_INPUT : path, 'utf8'),
    readBytes: (path) => readFileSync(path),
    write: (path, content) => {
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, content);
    },
    columns: Math.min(process.stdout.columns ?? 90, 110),
    today: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    nowMinutes: now.getHours() * 60 + now.getMinutes(),
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  };
}
