// One thing that is wrong with a camp file: where, what was found, what was wanted, what to do.

import { type FileCode, fileCodes } from '../codes.ts';

export interface FileTrouble {
  readonly code: FileCode;
  /** `ovens[2].diameter`; `line 12, column 5` where the text itself is broken; '' for the file. */
  readonly path: string;
  readonly found: string;
  readonly wanted: string;
  readonly next: string;
}

export type PathStep = string | number;

export function trouble(
  code: FileCode,
  path: readonly PathStep[] | string,
  told: { readonly found: unknown; readonly wanted: string; readonly next?: string },
): FileTrouble {
  return {
    code,
    path: typeof path === 'string' ? path : pathText(path),
    found: told.found instanceof Words ? told.found.text : shortly(told.found),
    wanted: told.wanted,
    next: told.next ?? fileCodes[code].next,
  };
}

/** `ovens[2].diameter` */
export function pathText(path: readonly PathStep[]): string {
  return path.reduce<string>((text, step) => text + stepText(step, text === ''), '');
}

function stepText(step: PathStep, isFirst: boolean): string {
  if (typeof step === 'number') return `[${step}]`;
  if (!/^[\p{L}_$][\p{L}\p{N}_$-]*$/u.test(step)) return `[${shortly(step)}]`;
  return isFirst ? step : `.${step}`;
}

/** Words that stand for what was found, to be shown without quotes. */
export const asIs = (text: string) => new Words(text);

class Words {
  constructor(readonly text: string) {}
}

const LONGEST_FOUND = 60;

/** A value in few letters, as it stands in the file. */
export function shortly(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value))
    return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'a group { … }';
  const text = typeof value === 'string' ? JSON.stringify(value) : String(value);
  return text.length <= LONGEST_FOUND ? text : `${text.slice(0, LONGEST_FOUND - 1)}…`;
}
