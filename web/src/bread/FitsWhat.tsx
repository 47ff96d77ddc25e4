// What goes into the oven: a shape of dough, or a bread as its recipe has it.

import type { FitKind } from '#engine';
import { Pick } from '../fire/Pick.tsx';
import type { BreadAnswers } from './answers.ts';
import { WhichBread } from './WhichBread.tsx';

interface FitsWhatProps {
  readonly kind: FitKind | 'bread';
  readonly bread: BreadAnswers['what'];
  readonly onKind: (kind: FitKind | 'bread') => void;
  readonly onBread: (bread: BreadAnswers['what']) => void;
}

const WORDS: readonly (readonly [FitKind | 'bread', string])[] = [
  ['bread', 'a bread, by its recipe'],
  ['round', 'a round, rolled out'],
  ['wedges', 'a round, scored in wedges'],
  ['biscuits', 'cut rounds'],
  ['rolls', 'rolls'],
  ['loaf', 'a loaf that stands free'],
  ['tin-loaf', 'a loaf in its tin, on a rack'],
  ['batter', 'a batter'],
  ['pot', 'a pot of food'],
  ['dumplings', 'dumplings on a stew'],
  ['cobbler', 'a cobbler'],
];

export const FitsWhat = ({ kind, bread, onKind, onBread }: FitsWhatProps) => (
  <>
    <Pick label="What goes in" words={WORDS} value={kind} onChoose={onKind} />
    {kind === 'bread' ? <WhichBread what={bread} onChoose={onBread} /> : null}
  </>
);
