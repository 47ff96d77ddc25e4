// What was answered about one dough, kept for the next question and the next day. Where no bread has
// been chosen here, it is the one of the front door.

import { useEffect, useState } from 'preact/hooks';
import { rememberedWish } from '../tonight/wish.ts';
import { type BreadAnswers, rememberBread, rememberedBread } from './answers.ts';

export function useBreadAnswers() {
  const [answers, setAnswers] = useState(() => withFrontDoor(rememberedBread(localStorage)));
  useEffect(() => rememberBread(localStorage, answers), [answers]);
  const change = (part: Partial<BreadAnswers>) => setAnswers((old) => ({ ...old, ...part }));
  return { answers, change };
}

function withFrontDoor(answers: BreadAnswers): BreadAnswers {
  const { what } = rememberedWish(localStorage);
  if (answers.what !== undefined || what === undefined || 'kind' in what) return answers;
  const { portions: _portions, ...bread } = what;
  return { ...answers, what: bread };
}
