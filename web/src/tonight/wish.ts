// What the front door starts from: three open answers and a usual guess for all the rest.

import type { TonightFood, TonightWish } from '../worker/messages.ts';

/** As it stands on screen: what goes in is not chosen until the cook has chosen it. */
export type OpenWish = Omit<TonightWish, 'what' | 'today' | 'nowMinutes' | 'timeZone'> & {
  readonly what?: TonightFood;
};

/** A change of some answers; `undefined` goes back to the guess. */
export type WishChange = { readonly [Key in keyof OpenWish]?: OpenWish[Key] | undefined };

/** Two of the three answers have a usual one; the rest is guessed until the cook says. */
export const usualWish: OpenWish = { ovenInches: 12, ovenStyle: 'regular' };

export function changedWish(wish: OpenWish, change: WishChange): OpenWish {
  const entries = Object.entries({ ...wish, ...change }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as unknown as OpenWish;
}

const KEY = 'emberwright.tonight';
const SHAPE = 1;

/** What the cook had chosen before a reload, as far as it still makes sense. */
export function rememberedWish(storage: Pick<Storage, 'getItem'>): OpenWish {
  try {
    const found: unknown = JSON.parse(storage.getItem(KEY) ?? '{}');
    return isKept(found) ? changedWish(usualWish, found.wish) : usualWish;
  } catch {
    return usualWish;
  }
}

/** Kept by this version of the front door: an older shape is not guessed at. */
const isKept = (found: unknown): found is { readonly wish: OpenWish } =>
  typeof found === 'object' &&
  found !== null &&
  'shape' in found &&
  found.shape === SHAPE &&
  'wish' in found;

export function rememberWish(storage: Pick<Storage, 'setItem'>, wish: OpenWish): void {
  try {
    storage.setItem(KEY, JSON.stringify({ shape: SHAPE, wish }));
  } catch {
    // A browser that keeps nothing: the wish lasts as long as the page.
  }
}

export const minuteOf = (now: Date) => now.getHours() * 60 + now.getMinutes();
