// A yeast dough rises, is shaped and rises again, also where the writer takes that for known; and
// how warm it is kept where the writer says so.
// Sources: the words are common practice, no source.

import { type Kelvin, toCelsius } from '../quantity/unit.ts';
import { degreesIn } from './cold-wait.ts';
import type { StepKind } from './recipe.ts';
import type { StepRead } from './text-steps.ts';

const RISES: ReadonlySet<StepKind> = new Set(['rise', 'second-rise']);
/** The oven's own work, before which a dough stands shaped. */
const IN_OVEN: ReadonlySet<StepKind> = new Set([
  'load',
  'cook',
  'brown',
  'take-out',
  'cut',
  'dress',
]);

/** Rise, shaping and second rise put in where no rise is told; shaping where only that is missing. */
export function withRises<Step extends StepRead>(
  read: readonly Step[],
  ours: (kind: StepKind) => Step,
): readonly Step[] {
  const shapeAt = read.findIndex(({ kind }) => kind === 'shape');
  const ovenAt = read.findIndex(({ kind }) => IN_OVEN.has(kind));
  const end = ovenAt < 0 ? read.length : ovenAt;
  if (!read.some(({ kind }) => RISES.has(kind))) {
    const at = 0 <= shapeAt && shapeAt < end ? shapeAt : end;
    const shape = at === shapeAt ? [read[at]!] : [ours('shape')];
    const rest = read.slice(at === shapeAt ? at + 1 : at);
    return [...read.slice(0, at), ours('rise'), ...shape, ours('second-rise'), ...rest];
  }
  if (0 <= shapeAt) return read;
  const second = read.findIndex(({ kind }) => kind === 'second-rise');
  const last = read.findLastIndex(({ kind }) => kind === 'rise');
  const at = 0 <= second ? second : last + 1;
  return [...read.slice(0, at), ours('shape'), ...read.slice(at)];
}

const LEAST_CELSIUS = 15; // colder, a dough waits by the clock
const MOST_CELSIUS = 45;

/** How warm a rise is kept, where the writer says so. */
export function keptAtIn(say: string): Kelvin | undefined {
  const said = degreesIn(say);
  if (said === undefined) return undefined;
  const celsius = toCelsius(said);
  return LEAST_CELSIUS <= celsius && celsius <= MOST_CELSIUS ? said : undefined;
}
