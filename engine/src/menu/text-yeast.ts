// A dough is mixed; a yeast dough rises, is shaped and rises again, also where the writer takes that
// for known, unless it is baked at once; and how warm it is kept where the writer says so.
// Sources: the words are common practice, no source.

import { type Kelvin, toCelsius } from '../quantity/unit.ts';
import { degreesIn, waitsCold } from './cold-wait.ts';
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

/** Rise, shaping and second rise put in where the writer leaves them out. */
export function withRises<Step extends StepRead>(
  read: readonly Step[],
  ours: (kind: StepKind) => Step,
): readonly Step[] {
  const shaped = withShape(read, ours);
  return isProved(shaped) || shaped.some(wantsNone) ? shaped : provedBehind(shaped, ours);
}

function withShape<Step extends StepRead>(
  read: readonly Step[],
  ours: (kind: StepKind) => Step,
): readonly Step[] {
  const shapeAt = read.findIndex(({ kind }) => kind === 'shape');
  const ovenAt = read.findIndex(({ kind }) => IN_OVEN.has(kind));
  const end = ovenAt < 0 ? read.length : ovenAt;
  if (!read.some(({ kind }) => RISES.has(kind))) {
    const at = 0 <= shapeAt && shapeAt < end ? shapeAt : end;
    const shape = at === shapeAt ? [] : [ours('shape')];
    return [...read.slice(0, at), ours('rise'), ...shape, ...read.slice(at)];
  }
  if (0 <= shapeAt) return read;
  const second = read.findIndex(({ kind }) => kind === 'second-rise');
  const last = read.findLastIndex(({ kind }) => kind === 'rise');
  const at = 0 <= second ? second : last + 1;
  return [...read.slice(0, at), ours('shape'), ...read.slice(at)];
}

/** "Bake at once", "without a second rise": the writer wants none. */
const AT_ONCE = /\b(?:at once|immediately|straight ?away|right away|directly)\b/iu;
const NO_RISE =
  /\b(?:without|no|not) (?:an?other |a |need a )?(?:second |further |more |final )?(?:rise|rising|proof|proving)\b/iu;
const wantsNone = ({ say }: StepRead) => AT_ONCE.test(say) || NO_RISE.test(say);

/** "It needs no second rise": said of the dough, and no work. */
export const isNoRise = (say: string): boolean => NO_RISE.test(say);
/** Done to a shaped dough just before it is baked. */
const LAST_TOUCH = /^(?:slash|score|prick|dock|brush|top|scatter|sprinkle)\b/iu;

/** It stands once it is shaped: a second rise, or a wait in the cold by the writer's clock. */
function isProved(read: readonly StepRead[]): boolean {
  const shaped = read.findIndex(({ kind }) => kind === 'shape');
  return read.some(
    ({ kind, say }, index) =>
      kind === 'second-rise' || (shaped < index && kind === 'rest' && waitsCold(say)),
  );
}

function provedBehind<Step extends StepRead>(
  read: readonly Step[],
  ours: (kind: StepKind) => Step,
): readonly Step[] {
  const at = read.findLastIndex(({ kind, say }) => kind === 'shape' && !LAST_TOUCH.test(say)) + 1;
  return [...read.slice(0, at), ours('second-rise'), ...read.slice(at)];
}

const BEFORE_MIXING: ReadonlySet<StepKind> = new Set(['weigh', 'prepare']);
const YEAST_WAKES = /\b(?:yeast|starter|soak|dissolve)/iu;

/** Mixing put in where none is told, behind what is made ready for it. */
export function withMixing<Step extends StepRead>(
  read: readonly Step[],
  ours: (kind: StepKind) => Step,
): readonly Step[] {
  const oven = read.findIndex(({ kind }) => kind === 'cook');
  const before = oven < 0 ? read : read.slice(0, oven);
  if (before.some(({ kind }) => kind === 'mix')) return read;
  const isReady = ({ kind, say }: Step, index: number) =>
    BEFORE_MIXING.has(kind) ||
    (kind === 'rest' && YEAST_WAKES.test(`${read[index - 1]?.say} ${say}`));
  const first = before.findIndex((step, index) => !isReady(step, index));
  const at = first < 0 ? before.length : first;
  return [...read.slice(0, at), ours('mix'), ...read.slice(at)];
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
