// Is this value something that a file can hold? For camps that are handed over as objects.

import { MOST_DEPTH } from './json-text.ts';
import { asIs, type FileTrouble, type PathStep, trouble } from './trouble.ts';

const MOST_ENTRIES = 200_000;

/** The first thing in a value that JSON can't hold; undefined where all of it is plain. */
export function notPlain(value: unknown): FileTrouble | undefined {
  const left = { entries: MOST_ENTRIES };
  return notPlainAt(value, [], left);
}

function notPlainAt(
  value: unknown,
  path: readonly PathStep[],
  left: { entries: number },
): FileTrouble | undefined {
  left.entries -= 1;
  if (left.entries < 0) return tooMuch('FILE_TOO_LONG', path, `${MOST_ENTRIES} entries at most`);
  if (path.length > MOST_DEPTH)
    return tooMuch('FILE_TOO_DEEP', path, `${MOST_DEPTH} levels at most`);
  if (value === null || ['string', 'boolean', 'undefined'].includes(typeof value)) return undefined;
  if (typeof value === 'number' && Number.isFinite(value)) return undefined;
  if (!isListOrGroup(value))
    return trouble('FILE_NOT_PLAIN', path, {
      found: asIs(typeof value === 'number' ? String(value) : `a ${typeof value}`),
      wanted: 'text, a number, true, false, a list or a group',
    });
  for (const [key, item] of Object.entries(value)) {
    const step = Array.isArray(value) ? Number(key) : key;
    const found = notPlainAt(item, [...path, step], left);
    if (found !== undefined) return found;
  }
  return undefined;
}

function isListOrGroup(value: unknown): value is object {
  if (typeof value !== 'object' || value === null) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return Array.isArray(value) || prototype === null || Object.getPrototypeOf(prototype) === null;
}

const tooMuch = (
  code: 'FILE_TOO_LONG' | 'FILE_TOO_DEEP',
  path: readonly PathStep[],
  wanted: string,
) => trouble(code, path.slice(0, 4), { found: asIs('more'), wanted });
