// What a cook has said about room: what is known, how it lies, which ovens beside the first.

import type { FitKind } from '#engine';
import type { FitsLying, FitsOven, FitsQuestion } from '../worker/fits-messages.ts';
import type { BreadAnswers } from './answers.ts';

export type FitsKnown = 'oven' | 'both' | 'amount';

export interface FitsAnswers {
  readonly known: FitsKnown;
  /** `bread` is the recipe that is chosen; left out, that one if there is one, else a round. */
  readonly what?: FitKind | 'bread' | undefined;
  readonly amountGrams?: number | undefined;
  readonly lying: FitsLying;
  readonly floorMetres?: number | undefined;
  readonly depthMetres?: number | undefined;
  /** Beside the oven of the front door. */
  readonly others: readonly FitsOven[];
}

export const MOST_OVENS = 6;
/** A dough that is about a 10-inch oven's round at half an inch: common practice, no source. */
export const USUAL_GRAMS = 570;

const USUAL: FitsAnswers = { known: 'oven', lying: {}, others: [] };

export const whatOf = ({ what }: FitsAnswers, bread: BreadAnswers['what']) =>
  what ?? (bread === undefined ? 'round' : 'bread');

/** Undefined where a bread is wanted and none is chosen. */
export function fitsAsked(
  answers: FitsAnswers,
  bread: BreadAnswers['what'],
  first: FitsOven,
): Omit<FitsQuestion, 'voice'> | undefined {
  const { known, lying, others, floorMetres, depthMetres } = answers;
  const kind = whatOf(answers, bread);
  const what = kind === 'bread' ? bread : { kind };
  if (what === undefined) return undefined;
  const measured = {
    ...(floorMetres === undefined ? {} : { floorMetres }),
    ...(depthMetres === undefined ? {} : { depthMetres }),
  };
  const oven = { ...first, ...(others.length === 0 ? measured : {}) };
  const amountGrams = known === 'oven' ? undefined : amountOf(answers, kind);
  return {
    ask: 'fits',
    isMost: known === 'oven',
    what,
    ovens: known === 'amount' ? [] : known === 'oven' ? [oven] : [oven, ...others],
    ...(amountGrams === undefined ? {} : { amountGrams }),
    lying,
  };
}

/** Left open for a bread: as much as its recipe makes. */
const amountOf = ({ amountGrams }: FitsAnswers, kind: FitKind | 'bread') =>
  amountGrams ?? (kind === 'bread' ? undefined : USUAL_GRAMS);

const KEY = 'emberwright.fits';
const SHAPE = 1;

export function rememberedFits(storage: Pick<Storage, 'getItem'>): FitsAnswers {
  try {
    const kept = JSON.parse(storage.getItem(KEY) ?? '{}') as {
      readonly shape?: number;
      readonly answers?: Partial<FitsAnswers>;
    };
    return kept.shape === SHAPE ? { ...USUAL, ...kept.answers } : USUAL;
  } catch {
    return USUAL;
  }
}

export function rememberFits(storage: Pick<Storage, 'setItem'>, answers: FitsAnswers): void {
  try {
    storage.setItem(KEY, JSON.stringify({ shape: SHAPE, answers }));
  } catch {
    // A browser that keeps nothing: the answers last as long as the page.
  }
}
