// Makes broken camp files out of whole ones, the same ones for the same seed: what a slip of the
// thumb, a torn download, a hasty edit and a malicious neighbour would hand in.

import { seededRandom } from './random.ts';

export interface Mutant {
  readonly seed: number;
  /** What was done, for the report of a failure. */
  readonly done: readonly string[];
  readonly text: string;
}

type Random = () => number;
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
interface Spot {
  readonly holder: Json[] | { [key: string]: Json };
  readonly key: string;
}

/** One broken (sometimes still whole) camp file. */
export function mutantOf(source: unknown, seed: number): Mutant {
  const random = seededRandom(seed);
  const file = structuredClone(source) as Json;
  const done: string[] = [];
  const isGentle = random() < 0.5;
  const many = 1 + Math.floor(random() * 3);
  for (let turn = 0; turn < many; turn += 1) {
    const spot = pick(spotsIn(file), random);
    const [name, change] = pick(isGentle ? GENTLE_CHANGES : CHANGES, random)!;
    if (spot !== undefined) change(spot, random);
    done.push(`${name} at ${spot?.key}`);
  }
  const text = JSON.stringify(file);
  const [name, tear] =
    !isGentle && random() < 0.3 ? pick(TEARS, random)! : ['whole', (whole: string) => whole];
  return { seed, done: [...done, name], text: tear(text, random) };
}

const pick = <Item>(list: readonly Item[], random: Random): Item | undefined =>
  list[Math.floor(random() * list.length)];

const MOST_SPOTS = 5000;

function spotsIn(file: Json): readonly Spot[] {
  const spots: Spot[] = [];
  const holders: Json[] = [file];
  for (let at = 0; at < holders.length && spots.length < MOST_SPOTS; at += 1) {
    const holder = holders[at];
    if (typeof holder !== 'object' || holder === null) continue;
    for (const key of Object.keys(holder)) {
      spots.push({ holder, key });
      holders.push(valueAt({ holder, key }));
    }
  }
  return spots;
}

const valueAt = ({ holder, key }: Spot): Json => (holder as { [key: string]: Json })[key] ?? null;

function put({ holder, key }: Spot, value: Json): void {
  Object.defineProperty(holder, key, {
    value,
    enumerable: true,
    writable: true,
    configurable: true,
  });
}

function drop({ holder, key }: Spot): void {
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
}

function deepList(): Json {
  let list: Json = [];
  for (let depth = 0; depth < 200; depth += 1) list = [list];
  return list;
}

const NUMBERS = [0, -1, 1e308, -1e308, 1e-300, 0.1, 2.5, 1e9, 9007199254740992, -0] as const;

const TEXTS = [
  '',
  ' ',
  'NaN',
  'Infinity',
  '-Infinity kg',
  'NaN °C',
  '1e400 g',
  '0 g',
  '-5 min',
  '0 in',
  '1/0 cups',
  '999999999999 m',
  '25:99',
  '+99 10:00',
  '24:00',
  'null',
  '__proto__',
  'constructor',
  '\u0000',
  '\ud800',
  '🔥🔥🔥',
  'ﷺ'.repeat(50),
  'é́́́́',
  '2026-02-30',
  '361°',
  'x'.repeat(5000),
] as const;

const KEYS = [
  '__proto__',
  'constructor',
  'diametre',
  'toString',
  '',
  '🔥',
  'a.b[0]',
  'x'.repeat(300),
];

/** A quantity that stays readable but is pushed to where no camp is. */
function stretch(text: string, random: Random): string {
  const factor = pick([0, 0.001, 0.1, 3, 10, 1000, -1], random)!;
  return text.replace(/\d+(\.\d+)?/, (digits) => String(Number(digits) * factor));
}

type Change = readonly [string, (spot: Spot, random: Random) => void];

/** What often leaves a whole file, whose numbers then go to the planner. */
const GENTLE_CHANGES: readonly Change[] = [
  ['drop', drop],
  ['stretch', stretchSpot],
  ['stretch more', stretchSpot],
  ['stretch again', stretchSpot],
  ['twice', twice],
];

const CHANGES: readonly Change[] = [
  ['drop', drop],
  ['number', (spot, random) => put(spot, pick(NUMBERS, random)!)],
  ['text', (spot, random) => put(spot, pick(TEXTS, random)!)],
  [
    'kind',
    (spot, random) => put(spot, pick<Json>([null, true, [], {}, [null], { a: 1 }], random)!),
  ],
  ['deep', (spot) => put(spot, deepList())],
  ['stretch', stretchSpot],
  ['stretch more', stretchSpot],
  ['twice', twice],
  ['rename', rename],
  ['huge list', hugeList],
  ['swap', swap],
];

function stretchSpot(spot: Spot, random: Random): void {
  const value = valueAt(spot);
  if (typeof value === 'string') put(spot, stretch(value, random));
  if (typeof value === 'number') put(spot, value * pick([0, -1, 3, 50, 0.5], random)!);
}

function twice(spot: Spot): void {
  const value = structuredClone(valueAt(spot));
  if (Array.isArray(spot.holder)) spot.holder.push(value);
  else put({ ...spot, key: `${spot.key}2` }, value);
}

function rename(spot: Spot, random: Random): void {
  const value = valueAt(spot);
  if (Array.isArray(spot.holder)) return;
  drop(spot);
  put({ ...spot, key: pick(KEYS, random)! }, value);
}

const HUGE_CHARACTERS = 300_000;

function hugeList(spot: Spot): void {
  const value = valueAt(spot);
  const first = Array.isArray(value) ? (value[0] ?? 1) : value;
  // Large things are repeated less often, so that a huge list in a huge list still fits in memory.
  const many = Math.min(3000, Math.ceil(HUGE_CHARACTERS / JSON.stringify(first).length));
  put(
    spot,
    Array.from({ length: many }, () => first),
  );
}

/** Gives the spot the value of another: right in itself, wrong in its place. */
function swap(spot: Spot, random: Random): void {
  const other = pick(Object.keys(spot.holder), random);
  if (other !== undefined) put(spot, structuredClone(valueAt({ ...spot, key: other })));
}

const TEARS: readonly (readonly [string, (text: string, random: Random) => string])[] = [
  ['torn off', (text, random) => text.slice(0, Math.floor(random() * text.length))],
  ['head lost', (text, random) => text.slice(Math.floor(random() * 40))],
  ['letters lost', (text, random) => cut(text, random, '')],
  [
    'letters added',
    (text, random) => cut(text, random, pick([',', '}', '"', '\\', '\u0001'], random)!),
  ],
  ['not a camp', (_, random) => pick(['', 'null', '[]', '{}', '"camp"', '[[[[', '1e999'], random)!],
  ['key twice', (text) => text.replace('{', '{"id":"first",')],
  ['byte-order mark', (text) => `\uFEFF${text}`],
  ['deep', (text) => '['.repeat(50_000) + text],
];

function cut(text: string, random: Random, filling: string): string {
  const at = Math.floor(random() * text.length);
  return text.slice(0, at) + filling + text.slice(at + 1);
}
