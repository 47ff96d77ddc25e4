// From what zod found to what a cook can act on.

import * as z from 'zod';
import { allergyMeant } from '#engine';
import type { FileCode } from '../codes.ts';
import { nearestWord } from './nearest.ts';
import { asIs, type FileTrouble, type PathStep, trouble } from './trouble.ts';

type Issue = z.core.$ZodIssue;

/** Complaints, in the order of the file's paths; an unknown key is one complaint of its own. */
export function troublesFromIssues(
  issues: readonly Issue[],
  schema: z.ZodType,
  value: unknown,
): readonly FileTrouble[] {
  return issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? unknownKeys(issue, schema, value)
      : [troubleFromIssue(issue, value)],
  );
}

/** What is wanted, for all that the schema does not say in its own words; handed to zod. */
export function wantedByIssue(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return KIND_WORDS[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return oneOf(issue.values.map(String));
    case 'invalid_union':
      return oneOf(((issue as { options?: readonly string[] }).options ?? []).map(String));
    case 'too_small':
      return `${sizeWords(issue.origin)}at least ${issue.minimum}`;
    case 'too_big':
      return `${sizeWords(issue.origin)}at most ${issue.maximum}`;
    default:
      return 'something else';
  }
}

const KIND_WORDS: Readonly<Record<string, string>> = {
  string: 'text in double quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list [ … ]',
  tuple: 'a list [ … ] of two',
  object: 'a group { … }',
};

const sizeWords = (origin: string) =>
  ({ string: 'text with letters: ', array: 'a list with entries: ' })[origin] ?? '';

function oneOf(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length === 1 ? quoted[0]! : `one of ${quoted.join(', ')}`;
}

function troubleFromIssue(issue: Issue, value: unknown): FileTrouble {
  const path = issue.path as readonly PathStep[];
  const found = valueAt(value, path);
  const code = codeOf(issue, found);
  const next = nextFor(issue, found);
  return trouble(code, path, {
    found,
    wanted: issue.message,
    ...(next === undefined ? {} : { next }),
  });
}

function codeOf(issue: Issue, found: unknown): FileCode {
  if (found === undefined) return 'FILE_KEY_MISSING';
  const isText = typeof found === 'string';
  switch (issue.code) {
    case 'custom':
      return (issue.params as { code: FileCode }).code;
    case 'invalid_value':
    case 'invalid_union':
      return isText ? 'FILE_WORD_UNKNOWN' : 'FILE_KIND_WRONG';
    case 'too_small':
    case 'too_big':
      if (Array.isArray(found)) return 'FILE_LIST_LENGTH';
      return isText ? 'FILE_TEXT_LENGTH' : 'FILE_NUMBER_OUTSIDE';
    case 'invalid_type':
      return typeof found === 'number' && issue.expected === 'int'
        ? 'FILE_NUMBER_OUTSIDE'
        : 'FILE_KIND_WRONG';
    default:
      return 'FILE_KIND_WRONG';
  }
}

function nextFor(issue: Issue, found: unknown): string | undefined {
  if (typeof found !== 'string') return undefined;
  const words =
    issue.code === 'invalid_value'
      ? issue.values.map(String)
      : ((issue as { options?: readonly string[] }).options ?? []).map(String);
  const near = meantAllergen(found, words) ?? nearestWord(found, words);
  return near === undefined ? undefined : `Did you mean "${near}"?`;
}

/** "dairy" is no misspelling of milk, but it means it. */
function meantAllergen(found: string, words: readonly string[]): string | undefined {
  return words.includes('sulphite') ? allergyMeant(found).join('" and "') || undefined : undefined;
}

function unknownKeys(
  issue: Extract<Issue, { code: 'unrecognized_keys' }>,
  schema: z.ZodType,
  value: unknown,
): readonly FileTrouble[] {
  const path = issue.path as readonly PathStep[];
  const known = keysAt(schema, value, path);
  const group = valueAt(value, path);
  const free = known.filter((key) => !hasKey(group, key));
  return issue.keys.map((key) => {
    const near = nearestWord(key, free);
    return trouble('FILE_KEY_UNKNOWN', [...path, key], {
      found: asIs(`the key ${JSON.stringify(key.slice(0, 60))}`),
      wanted: `one of ${known.join(', ')}`,
      ...(near === undefined ? {} : { next: `Did you mean "${near}"? Rename it, or take it out.` }),
    });
  });
}

const hasKey = (group: unknown, key: string) =>
  typeof group === 'object' && group !== null && Object.hasOwn(group, key);

function valueAt(value: unknown, path: readonly PathStep[]): unknown {
  return path.reduce<unknown>(
    (inside, step) => (hasKey(inside, String(step)) ? (inside as never)[step] : undefined),
    value,
  );
}

/** The keys that the schema knows in the group at this path. */
function keysAt(schema: z.ZodType, value: unknown, path: readonly PathStep[]): readonly string[] {
  let here: unknown = schema;
  let inside = value;
  for (const step of path) {
    here = below(chosen(unwrapped(here), inside), step);
    inside = valueAt(inside, [step]);
  }
  const group = chosen(unwrapped(here), inside);
  return group instanceof z.ZodObject ? Object.keys(group.shape) : [];
}

function below(schema: unknown, step: PathStep): unknown {
  if (schema instanceof z.ZodArray) return schema.element;
  return schema instanceof z.ZodObject ? schema.shape[String(step)] : undefined;
}

const unwrapped = (schema: unknown): unknown =>
  schema instanceof z.ZodOptional ? unwrapped(schema.unwrap()) : schema;

/** Of a union by `kind`, the option that the value names. */
function chosen(schema: unknown, value: unknown): unknown {
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return schema;
  const kind = valueAt(value, ['kind']);
  return schema.options.find((option) => kindOf(option) === kind);
}

function kindOf(option: unknown): unknown {
  const kind = option instanceof z.ZodObject ? option.shape.kind : undefined;
  return kind instanceof z.ZodLiteral ? kind.value : undefined;
}
