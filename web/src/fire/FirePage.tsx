// At the fire: five questions that need no camp and no recipe, each with its answer under it.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { Page } from '../parts/Page.tsx';
import { QuestionDoors, QuestionPart } from '../parts/QuestionPage.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { todayOf } from '../storage/new-id.ts';
import { GuessLine } from '../tonight/GuessLine.tsx';
import { OvenChoice } from '../tonight/OvenChoice.tsx';
import {
  changedWish,
  type OpenWish,
  rememberedWish,
  rememberWish,
  type WishChange,
} from '../tonight/wish.ts';
import type { FireSpot, Question } from '../worker/messages.ts';
import {
  type FireAnswers,
  fireWish,
  rememberAnswers,
  rememberedAnswers,
  usualAnswers,
} from './answers.ts';
import { DoorQuestions } from './DoorQuestions.tsx';
import { type DoorName, doors } from './doors.ts';

const titles: Readonly<Record<DoorName, readonly [name: string, hint: string]>> = {
  'what-now': ['What now?', 'It is going wrong'],
  layout: ['Will my layout do?', 'Coals as you have laid them'],
  left: ['What is left', 'So many coals still glow'],
  coals: ['Coals only', 'A size and a heat'],
  stack: ['Two stacked', 'One oven on another'],
};

export default function FirePage({ door }: { readonly door: DoorName }) {
  const { wish, change, answers, answer } = useFire();
  const question = useFireQuestion(door, wish, answers);
  const { answer: sheet, isStale, failure } = useAnswer(question);
  const [name, hint] = titles[door];
  return (
    <Page title={`At the fire: ${name}`} lead={`${hint}. No camp, no recipe: say what lies there.`}>
      <QuestionDoors
        root="/fire"
        doors={doors.map((each) => [each, titles[each][0]] as const)}
        open={door}
      />
      <QuestionPart sheet={sheet} isStale={isStale} failure={failure}>
        <DoorQuestions door={door} wish={wish} answers={answers} change={answer} />
        <OvenChoice wish={wish} change={change} />
        <GuessLine wish={wish} change={change} isSpotOnly />
      </QuestionPart>
    </Page>
  );
}

/** The oven and the spot are those of the front door: nothing is typed again. */
function useFire() {
  const [wish, setWish] = useState(() => rememberedWish(localStorage));
  const [answers, setAnswers] = useState(() => rememberedAnswers(localStorage, wish.fuel));
  useEffect(() => rememberWish(localStorage, wish), [wish]);
  useEffect(() => rememberAnswers(localStorage, wish.fuel, answers), [wish.fuel, answers]);
  const change = (part: WishChange) => {
    setWish((old) => changedWish(old, part));
    if (!('fuel' in part)) return;
    // Shovels are no briquettes: the counts start anew, the rest stays.
    const { above, below, left } = usualAnswers(part.fuel);
    setAnswers((old) => ({ ...old, above, below, left, others: undefined }));
  };
  const answer = (part: Partial<FireAnswers>) => setAnswers((old) => ({ ...old, ...part }));
  return { wish, change, answers, answer };
}

function useFireQuestion(door: DoorName, wish: OpenWish, answers: FireAnswers) {
  const { measures, clock } = useReader().reader;
  return useMemo((): Extract<Question, { ask: 'fire' }> => {
    const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
    const { what: _what, eatAtMinutes: _eatAt, hands: _hands, ...rest } = wish;
    const { thermometer: _thermometer, startsHot: _startsHot, ...of } = rest;
    const spot: FireSpot = { ...of, today: todayOf(new Date()), timeZone };
    const asked = fireWish(door, answers, wish);
    return { ask: 'fire', spot, wish: asked, voice: { measures, clock } };
  }, [door, wish, answers, measures, clock]);
}
