// What is tried for each trouble, in which order, and where it is felt.
// Source: which move helps which trouble is common practice, no source; none above a fry: splitByMethod.

import type { FireState } from './fire-state.ts';
import type { Feels, LeftOut, RescueMove, Symptom } from './rescue.ts';
import { isOpenMethod, isPotMethod } from './split.ts';

type Try = readonly [RescueMove['do'], Feels];

/** What is tried for each trouble, in order; the first three that can be done here and help. */
const TRIES: Readonly<Record<Symptom, readonly Try[]>> = {
  'bottom-dark': [
    ['take-below', 'floor'],
    ['raise-oven', 'floor'],
    ['below-to-above', 'floor'],
    ['take-above', 'floor'],
  ],
  'top-pale': [
    ['knock-ash', 'lid'],
    ['below-to-above', 'lid'],
    ['add-above', 'lid'],
    ['screen-wind', 'lid'],
    ['wait', 'load'],
  ],
  'one-side-hot': [], // its own: sideMoves
  'coals-dying': [
    ['knock-ash', 'oven'],
    ['add-above', 'oven'],
    ['add-below', 'oven'],
    ['screen-wind', 'oven'],
  ],
  'raw-middle': [
    ['take-above', 'lid'],
    ['take-below', 'floor'],
    ['wait', 'load'],
    ['raise-oven', 'floor'],
  ],
  late: [
    ['add-above', 'oven'],
    ['screen-wind', 'oven'],
    ['knock-ash', 'oven'],
    ['add-below', 'oven'],
    ['wait', 'load'],
  ],
};

/** Lid off: only what lies below heats. */
const OPEN_TRIES: Readonly<Record<Symptom, readonly Try[]>> = {
  'bottom-dark': [
    ['take-below', 'floor'],
    ['raise-oven', 'floor'],
  ],
  'top-pale': [['wait', 'load']], // and turn the food over
  'one-side-hot': [],
  'coals-dying': [
    ['knock-ash', 'floor'],
    ['add-below', 'floor'],
    ['screen-wind', 'floor'],
  ],
  'raw-middle': [
    ['take-below', 'floor'],
    ['wait', 'load'],
    ['raise-oven', 'floor'],
  ],
  late: [
    ['add-below', 'floor'],
    ['screen-wind', 'floor'],
    ['knock-ash', 'floor'],
    ['wait', 'load'],
  ],
};

/** A pot that is late is late to boil: what counts is its water, and a lid of coals helps too. */
const LATE_POT: readonly Try[] = [
  ['add-above', 'load'],
  ['add-below', 'load'],
  ['screen-wind', 'load'],
  ['wait', 'load'],
];

/** In order. */
export const triesFor = (symptom: Symptom, { method }: FireState): readonly Try[] => {
  if (isOpenMethod(method)) return OPEN_TRIES[symptom];
  return symptom === 'late' && isPotMethod(method) ? LATE_POT : TRIES[symptom];
};

const ON_THE_LID: ReadonlySet<RescueMove['do']> = new Set([
  'take-above',
  'add-above',
  'below-to-above',
]);

/** What is usual for this trouble, and is not where the lid is off. */
export const withoutLid = (symptom: Symptom, { method }: FireState): readonly LeftOut[] =>
  isOpenMethod(method)
    ? TRIES[symptom]
        .filter(([move]) => ON_THE_LID.has(move))
        .map(([move]) => ({ do: move, why: 'lid-off' }))
    : [];
