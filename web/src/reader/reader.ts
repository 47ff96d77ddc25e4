// How this cook reads: measures, clock and ground. Remembered in the browser.

import type { Measures } from '#engine';

export interface Reader {
  readonly measures: Measures;
  readonly clock: '12' | '24';
  /** 'auto' follows the device. */
  readonly ground: 'auto' | 'day' | 'night';
}

const KEY = 'emberwright.reader';

/** What was remembered, or a guess from the language of the browser. */
export function rememberedReader(storage: Pick<Storage, 'getItem'>, language: string): Reader {
  const isUs = language === 'en-US' || language === 'en';
  const guess: Reader = {
    measures: isUs ? 'us' : 'metric',
    clock: isUs ? '12' : '24',
    ground: 'auto',
  };
  try {
    return { ...guess, ...knownParts(JSON.parse(storage.getItem(KEY) ?? '{}')) };
  } catch {
    return guess;
  }
}

/** Keeps it; a full or forbidden storage costs only the memory, never the screen. */
export function rememberReader(storage: Pick<Storage, 'setItem'>, reader: Reader): void {
  try {
    storage.setItem(KEY, JSON.stringify(reader));
  } catch {
    // Private windows may refuse; the choice then lasts as long as the page.
  }
}

function knownParts(found: unknown): Partial<Reader> {
  if (typeof found !== 'object' || found === null) return {};
  const { measures, clock, ground } = found as Record<string, unknown>;
  return {
    ...(measures === 'us' || measures === 'metric' ? { measures } : {}),
    ...(clock === '12' || clock === '24' ? { clock } : {}),
    ...(ground === 'auto' || ground === 'day' || ground === 'night' ? { ground } : {}),
  };
}

/** Puts the ground on the page; the style sheet does the rest. */
export function applyGround(root: HTMLElement, ground: Reader['ground']): void {
  if (ground === 'auto') delete root.dataset.ground;
  else root.dataset.ground = ground;
}
