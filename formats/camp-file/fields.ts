// The building blocks of the camp file's schema. The message of each says what is wanted, so that
// every complaint can name it.

import * as z from 'zod';
import type { FileCode } from '../codes.ts';
import { isDate, readClock, readDirection, readUtcOffset } from './clock-text.ts';
import {
  inMeasuresOf,
  type QuantityKind,
  quantityPattern,
  readQuantity,
  unitsInWords,
} from './quantity-text.ts';

// The compiled validator of zod needs `eval`, which the app's content security policy forbids.
z.config({ jitless: true });

export const text = (most: number) => z.string().min(1).max(most);

const ID_PATTERN = /^[\p{L}\p{N}][\p{L}\p{N}_-]*$/u;
const ID_WANTED = 'a short name of letters, digits, - and _, such as "blue-oven"';

export const id = () =>
  z
    .string({ error: ID_WANTED })
    .max(40, { error: ID_WANTED })
    .refine((value) => ID_PATTERN.test(value), {
      error: ID_WANTED,
      params: { code: 'FILE_TEXT_SHAPE' },
    })
    .meta({ pattern: '^[^\\s_-]\\S*$' });

export interface QuantityRange {
  readonly example: string;
  /** Both as a cook would write them; both may be used. */
  readonly least: string;
  readonly most: string;
}

/** Text that holds a number and its unit. */
export function quantity(kind: QuantityKind, range: QuantityRange) {
  const wanted = `${KIND_WORDS[kind]} with its unit (${unitsInWords(kind)}), such as "${range.example}"`;
  const least = readQuantity(kind, range.least)!;
  const most = readQuantity(kind, range.most)!;
  return z
    .string({ error: wanted })
    .max(60, { error: wanted })
    .superRefine((value, context) => {
      const inside = readQuantity(kind, value);
      if (inside === undefined) report(context, 'FILE_QUANTITY_UNREADABLE', wanted);
      else if (inside < least || most < inside) {
        report(context, 'FILE_QUANTITY_OUTSIDE', boundsFor(kind, range, value));
      }
    })
    .meta({ description: wanted, examples: [range.example], pattern: quantityPattern(kind) });
}

/** Bounds in the writer's own measures, so that nobody has to convert them. */
function boundsFor(kind: QuantityKind, { least, most }: QuantityRange, written: string): string {
  const [from, to] = [least, most].map((bound) => inMeasuresOf(kind, bound, written));
  return `${KIND_WORDS[kind]} between ${from} and ${to}`;
}

function report(context: z.core.$RefinementCtx<string>, code: FileCode, wanted: string) {
  context.addIssue({ code: 'custom', message: wanted, params: { code } });
}

const KIND_WORDS: Readonly<Record<QuantityKind, string>> = {
  length: 'a length',
  mass: 'a weight',
  volume: 'a volume',
  temperature: 'a temperature',
  speed: 'a speed',
  duration: 'a length of time',
  share: 'a share',
};

const said = <Code extends FileCode>(
  code: Code,
  wanted: string,
  isRight: (value: string) => boolean,
) =>
  z
    .string({ error: wanted })
    .refine((value) => value.length <= 40 && isRight(value), { error: wanted, params: { code } });

// Seven days either way is further than any dough rests or any crew walks.
const FURTHEST_MINUTES = 7 * 1440;

export const clock = () =>
  said('FILE_TIME_UNREADABLE', 'a time of day such as "18:30" or "+1 06:00"', (value) => {
    const minutes = readClock(value);
    return minutes !== undefined && Math.abs(minutes) <= FURTHEST_MINUTES;
  }).meta({
    pattern: '^\\s*([+-]\\d{1,2}\\s+)?\\d{1,2}:\\d{2}\\s*$',
    examples: ['18:30', '+1 06:00'],
  });

export const date = () =>
  said('FILE_DATE_UNREADABLE', 'a date such as "2026-09-12"', isDate).meta({ format: 'date' });

export const utcOffset = () =>
  said(
    'FILE_TIME_UNREADABLE',
    'what your clock shows less universal time, such as "-06:00" or "+05:30"',
    (value) => readUtcOffset(value) !== undefined,
  ).meta({ pattern: '^\\s*[+-]\\d{2}:\\d{2}\\s*$', examples: ['-06:00', '+02:00'] });

export const direction = () =>
  said(
    'FILE_DIRECTION_UNREADABLE',
    'where the wind comes from: "north", "WSW", or degrees such as "247°"',
    (value) => readDirection(value) !== undefined,
  ).meta({ examples: ['WSW', '247°'] });

export const count = (least: number, most: number) =>
  z
    .int({ error: `a whole number from ${least} to ${most}` })
    .min(least)
    .max(most);

export const listOf = <Item extends z.ZodType>(item: Item, most: number, least = 0) =>
  z.array(item).min(least).max(most);
