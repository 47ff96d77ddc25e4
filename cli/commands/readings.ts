// `emberwright readings`: what a run of probe readings says.

import {
  type CoreReading,
  foodClasses,
  isRefusal,
  kelvin,
  minutes,
  readingsSheet,
  refusalText,
  renderText,
  sayFor,
} from '#engine';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { airOf, clockOf, oneOf, quantityOf, readerOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface ReadingsOptions {
  readonly food?: string;
  readonly air?: string;
  readonly measures?: string;
}

export function readings(
  texts: readonly string[],
  options: ReadingsOptions,
  shell: Shell,
): ExitCode {
  const { food, air } = options;
  const say = sayFor({
    ...readerOf({ ...options, clock: '24' }, 'us'),
    plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } },
  });
  const sheet = readingsSheet(
    {
      readings: runOf(texts),
      ...(food === undefined ? {} : { food: oneOf('--food', food, foodClasses) }),
      ...(air === undefined ? {} : { air: kelvin(airOf(air)) }),
    },
    say,
  );
  if (isRefusal(sheet)) {
    shell.error(`Stop: ${refusalText(sheet, say)}\n`);
    return EXIT.stopped;
  }
  shell.out(renderText(sheet, { width: shell.columns }));
  return EXIT.fine;
}

const DAY = 24 * 60;
const MOST_READINGS = 200;
const LONGEST_GAP = 12 * 60;

/** `18:30 150 F`; a time before the one above it is of the next day. */
function runOf(texts: readonly string[]): readonly CoreReading[] {
  if (texts.length > MOST_READINGS) {
    throw wrongUse(
      'readings',
      `${texts.length} of them`,
      `at most ${MOST_READINGS}`,
      'Leave some out.',
    );
  }
  const run: CoreReading[] = [];
  for (const text of texts) run.push(readingOf(text, run.at(-1)?.minute));
  return run;
}

function readingOf(text: string, before: number | undefined): CoreReading {
  const [, time = '', heat = ''] = /^\s*(\d{1,2}:\d{2})\s*[ =,]\s*(.+)$/.exec(text) ?? [];
  if (time === '') {
    throw wrongUse('readings', `"${text}"`, 'a time and a heat', 'Write "18:30 150 F".');
  }
  const clock = clockOf('readings', time);
  const days = before === undefined || before <= clock ? 0 : Math.ceil((before - clock) / DAY);
  const minute = clock + days * DAY;
  if (before !== undefined && minute - before > LONGEST_GAP) {
    throw wrongUse(
      'readings',
      `"${text}"`,
      'less than 12 hours after the one before',
      'Put them in order, soonest first.',
    );
  }
  const core = kelvin(quantityOf('readings', heat, 'temperature', '150 F'));
  return { minute: minutes(minute), core };
}
