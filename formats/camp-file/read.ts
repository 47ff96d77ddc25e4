// Reading a camp file: text in, camp and menu out, or everything that is wrong with it at once.

import { type Assumption, type Camp, type Menu, type Notice, notice } from '#engine';
import { checkTogether } from './checks.ts';
import { readJson } from './json-text.ts';
import { migrate } from './migrate.ts';
import { notPlain } from './plain.ts';
import { type ToEngineOptions, toEngine } from './to-engine.ts';
import { asIs, type FileTrouble, trouble } from './trouble.ts';
import { type CampFile, campFileSchema, NEWEST_VERSION } from './v1.ts';
import { troublesFromIssues, wantedByIssue } from './zod-troubles.ts';

export interface CampRead {
  readonly ok: true;
  readonly file: CampFile;
  readonly camp: Camp;
  readonly menu: Menu;
  readonly notices: readonly Notice[];
  readonly assumed: readonly Assumption[];
}

export interface CampNotRead {
  readonly ok: false;
  /** At least one; never more than `MOST_TROUBLES`. */
  readonly troubles: readonly FileTrouble[];
  /** Top-level parts that are all right as they stand. */
  readonly readable: readonly string[];
  /** Those parts, so that nothing is lost. */
  readonly salvaged?: Readonly<Record<string, unknown>>;
}

const MOST_TROUBLES = 100;

/**
 * A camp file in the engine's terms, or what has to be mended. Never throws.
 *
 * @param source   the text of the file, or what is in it
 * @notice         FILE_ASSUMED, FILE_FOOD_UNKNOWN, … — the camp stands, with this said beside it
 */
export function readCampFile(
  source: unknown,
  options: ToEngineOptions = {},
): CampRead | CampNotRead {
  try {
    return typeof source === 'string' ? readText(source, options) : readValue(source, options);
  } catch {
    // Only an object with a will of its own (a getter that throws) comes here; text never does.
    const told = { found: asIs('something that can not be looked into'), wanted: 'a camp file' };
    return { ok: false, troubles: [trouble('FILE_NOT_PLAIN', '', told)], readable: [] };
  }
}

function readText(text: string, options: ToEngineOptions): CampRead | CampNotRead {
  const json = readJson(text);
  if (json.troubles.length === 0) return readValue(json.value, options);
  const whole = isGroup(json.value) ? json.value : {};
  const parts = Object.fromEntries(json.complete.map((key) => [key, whole[key]]));
  return notRead(json.troubles, parts);
}

function readValue(value: unknown, options: ToEngineOptions): CampRead | CampNotRead {
  const first = notPlain(value) ?? headTrouble(value);
  if (first !== undefined || !isGroup(value)) return notRead([first!], value);
  const migrated = migrate(value, value.version as number);
  const parsed = campFileSchema.safeParse(migrated.value, { error: wantedByIssue });
  if (!parsed.success)
    return notRead(
      troublesFromIssues(parsed.error.issues, campFileSchema, migrated.value),
      migrated.value,
    );
  const apart = checkTogether(parsed.data);
  if (apart.length > 0) return notRead(apart, parsed.data);
  return inEngineTerms(parsed.data, migrated.from, options);
}

function inEngineTerms(
  file: CampFile,
  from: number | undefined,
  options: ToEngineOptions,
): CampRead | CampNotRead {
  const { camp, menu, notices, assumed, troubles } = toEngine(file, options);
  if (troubles.length > 0) return notRead(troubles, file);
  const carried =
    from === undefined ? [] : [notice('FILE_MIGRATED', 'note', {}, { from, to: NEWEST_VERSION })];
  return { ok: true, file, camp, menu, notices: [...carried, ...notices], assumed };
}

/** Is it a camp at all, and of a version that can be read? */
function headTrouble(value: unknown): FileTrouble | undefined {
  if (!isGroup(value))
    return trouble('FILE_NOT_A_CAMP', '', { found: value, wanted: 'a group { … }' });
  if (value.emberwright !== 'camp')
    return trouble('FILE_NOT_A_CAMP', ['emberwright'], {
      found: value.emberwright,
      wanted: '"emberwright": "camp"',
    });
  const { version } = value;
  if (!Number.isInteger(version) || Number(version) < 0)
    return trouble('FILE_VERSION_UNKNOWN', ['version'], {
      found: version,
      wanted: 'a whole number',
    });
  if (Number(version) > NEWEST_VERSION)
    return trouble('FILE_NEWER', ['version'], {
      found: asIs(`version ${version}, made by a newer Emberwright`),
      wanted: `version ${NEWEST_VERSION} or older`,
    });
  return undefined;
}

const HEAD_KEYS = ['emberwright', 'version', '$schema'];

function notRead(troubles: readonly FileTrouble[], value: unknown): CampNotRead {
  const parts = isGroup(value) ? value : {};
  const broken = new Set(troubles.map(({ path }) => path.split(/[.[]/)[0]));
  const readable = Object.keys(parts).filter(
    (key) => !HEAD_KEYS.includes(key) && !broken.has(key) && isReadablePart(key, parts[key]),
  );
  return {
    ok: false,
    troubles: troubles.slice(0, MOST_TROUBLES),
    readable,
    ...(readable.length === 0
      ? {}
      : { salvaged: Object.fromEntries(readable.map((key) => [key, parts[key]])) }),
  };
}

function isReadablePart(key: string, part: unknown): boolean {
  const schema = Object.hasOwn(campFileSchema.shape, key)
    ? campFileSchema.shape[key as keyof typeof campFileSchema.shape]
    : undefined;
  return schema?.safeParse(part).success ?? false;
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
