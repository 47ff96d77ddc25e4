// Options as a cook types them, read into the engine's terms, or said what was wanted instead.

import {
  type AirWord,
  airFromWord,
  airWords,
  elevationForBoiling,
  type Ground,
  isRefusal,
  type Kelvin,
  type Measures,
  type Metres,
  MOST_BEAUFORT,
  metres,
  type SayOptions,
  type WindSign,
  windFromForce,
  windFromSign,
  windSigns,
} from '#engine';
import { type QuantityKind, readClock, readDirection, readQuantity } from '#formats';
import { CommandTrouble, EXIT, wrongUse } from './exit.ts';
import type { Shell } from './shell.ts';

export const GROUNDS: readonly Ground[] = [
  'soil',
  'grass',
  'gravel',
  'sand',
  'rock',
  'snow',
  'paving',
];

export interface ReaderOptions {
  readonly measures?: string;
  readonly clock?: string;
}

/** Measures and clock of the reader; `usual` where nothing is said. */
export function readerOf(
  options: ReaderOptions,
  usual: Measures,
): Pick<SayOptions, 'measures' | 'clock'> {
  return {
    measures: oneOf('--measures', options.measures ?? usual, ['us', 'metric'] as const),
    clock: oneOf('--clock', options.clock ?? '24', ['12', '24'] as const),
  };
}

export function oneOf<Word extends string>(
  where: string,
  text: string,
  words: readonly Word[],
): Word {
  const found = words.find((word) => word === text.trim().toLowerCase());
  if (found === undefined) {
    throw wrongUse(where, `"${text}"`, words.join(' or '), `Write ${where} ${words[0]}.`);
  }
  return found;
}

export function clockOf(where: string, text: string): number {
  const read = readClock(text) ?? fromHalfDay(text);
  if (read === undefined) {
    throw wrongUse(
      where,
      `"${text}"`,
      'a time of day',
      `Write ${where} 18:30 or ${where} "6:30 pm".`,
    );
  }
  return read;
}

function fromHalfDay(text: string): number | undefined {
  const [, hour, minute, half] = /^(\d{1,2})(?::(\d{2}))?\s*([ap])m$/i.exec(text.trim()) ?? [];
  const hours = Number(hour);
  const minutes = Number(minute ?? 0);
  if (half === undefined || hours < 1 || hours > 12 || minutes > 59) return undefined;
  return ((hours % 12) + (half.toLowerCase() === 'p' ? 12 : 0)) * 60 + minutes;
}

export function quantityOf(
  where: string,
  text: string,
  kind: QuantityKind,
  example: string,
): number {
  const read = readQuantity(kind, text);
  if (read === undefined || !Number.isFinite(read)) {
    throw wrongUse(where, `"${text}"`, `a number and its unit`, `Write ${where} "${example}".`);
  }
  return read;
}

export function countOf(where: string, text: string): number {
  const number = Number(text);
  if (!/^\d{1,4}$/.test(text.trim())) {
    throw wrongUse(where, `"${text}"`, 'a whole number, none is 0', `Write ${where} 8.`);
  }
  return number;
}

/** `40`, `40 min`, `30 min ago` or `1 h`; `usual` where nothing is said. */
export function minutesOf(where: string, text: string | undefined, usual: number): number {
  if (text === undefined) return usual;
  const stretch = text.trim().replace(/\s+ago$/i, '');
  const read = readQuantity('duration', /^\d+$/.test(stretch) ? `${stretch} min` : stretch);
  if (read === undefined || !Number.isFinite(read) || read < 0) {
    throw wrongUse(where, `"${text}"`, 'so many minutes', `Write ${where} "40 min".`);
  }
  return read;
}

/** `leaves rustle`, `leaves-rustle`, `Beaufort 3` or `3 m/s`. */
export function windOf(text: string): number {
  const sign = text.trim().toLowerCase().replaceAll(/\s+/g, '-');
  const found = windSigns.find((each) => each === sign);
  if (found !== undefined) return windFromSign(found as WindSign).wind;
  const force = /^(?:beaufort|bft|force)-?(\d{1,2})$/.exec(sign)?.[1];
  if (force !== undefined && Number(force) <= MOST_BEAUFORT) return windFromForce(Number(force));
  const read = readQuantity('speed', text);
  if (read === undefined || read < 0) {
    const signs = windSigns.map((each) => `"${each.replaceAll('-', ' ')}"`).join(', ');
    throw wrongUse(
      '--wind',
      `"${text}"`,
      `one of ${signs}, "Beaufort 3", or a speed`,
      'Write --wind "3 m/s".',
    );
  }
  return read;
}

/** `west`, `SW` or `225°`. */
export function directionOf(where: string, text: string): number {
  const read = readDirection(text);
  if (read === undefined) {
    const wanted = 'a point of the compass or degrees';
    throw wrongUse(
      where,
      `"${text}"`,
      wanted,
      `Write ${where} west, ${where} SW or ${where} 225°.`,
    );
  }
  return read;
}

/** `frost` … `hot`, or `45 F`. */
export function airOf(text: string): number {
  const word = airWords.find((each) => each === text.trim().toLowerCase());
  return word === undefined
    ? quantityOf('--air', text, 'temperature', '45 F')
    : airFromWord(word as AirWord).air;
}

/** `2100 m`, or `boils at 198 F`. */
export function heightOf(text: string): Metres {
  const boil = /^(?:water\s+)?boils\s+at\s+(.+)$/i.exec(text.trim())?.[1];
  if (boil === undefined) return metres(quantityOf('--height', text, 'length', '2100 m'));
  const found = elevationForBoiling(quantityOf('--height', boil, 'temperature', '198 F') as Kelvin);
  if (isRefusal(found)) {
    throw wrongUse(
      '--height',
      `water that boils at ${boil}`,
      'a boil between high mountains and the sea',
      'Write --height "boils at 198 F".',
    );
  }
  return found.elevation;
}

/** The text of a file, or `-` for the input. */
export function fileText(path: string, shell: Shell): string {
  try {
    return shell.readText(path);
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code;
    const found =
      why === 'ENOENT' ? 'no such file' : why === 'EISDIR' ? 'a folder' : `trouble (${why})`;
    throw new CommandTrouble(
      EXIT.unreadable,
      `${path}: found ${found}, wanted a file that can be read. Look at its name, or write a demo with: emberwright demo pilcrow-creek camp.json`,
    );
  }
}
