// What a cook has answered about one dough, all its screens alike so that nothing is typed twice.

import type { BreadQuestion, BreadSpot, DoughWish } from '../worker/bread-messages.ts';

export interface BreadAnswers {
  /** Undefined until one is chosen. */
  readonly what?: BreadQuestion['what'] | undefined;
  readonly spot: BreadSpot;
  readonly powder: BreadQuestion['powder'];
  readonly dough: DoughWish;
  readonly bags: number;
  readonly tinCubicMetres?: number | undefined;
}

/** So many stays of one dough may be told. */
export const MOST_STAYS = 4;

const usualAnswers: BreadAnswers = {
  spot: {},
  powder: {},
  dough: { stays: [] },
  bags: 1,
};

const KEY = 'emberwright.bread';
const SHAPE = 1;

export function rememberedBread(storage: Pick<Storage, 'getItem'>): BreadAnswers {
  try {
    const kept = JSON.parse(storage.getItem(KEY) ?? '{}') as {
      readonly shape?: number;
      readonly answers?: Partial<BreadAnswers>;
    };
    return kept.shape === SHAPE ? { ...usualAnswers, ...kept.answers } : usualAnswers;
  } catch {
    return usualAnswers;
  }
}

export function rememberBread(storage: Pick<Storage, 'setItem'>, answers: BreadAnswers): void {
  try {
    storage.setItem(KEY, JSON.stringify({ shape: SHAPE, answers }));
  } catch {
    // A browser that keeps nothing: the answers last as long as the page.
  }
}

/** Some places anew; `undefined` empties one. */
export type Change<Whole> = { readonly [Key in keyof Whole]?: Whole[Key] | undefined };

/** The same without the places that were emptied. */
export const withPart = <Whole extends object>(whole: Whole, part: Change<Whole>): Whole =>
  Object.fromEntries(
    Object.entries({ ...whole, ...part }).filter(([, value]) => value !== undefined),
  ) as Whole;
