// One dough without a camp and without an oven: what raises it, how long it takes, how it is carried.

import { useMemo } from 'preact/hooks';
import { Page } from '../parts/Page.tsx';
import { QuestionPart } from '../parts/QuestionPage.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type { BreadQuestion } from '../worker/bread-messages.ts';
import type { BreadAnswers } from './answers.ts';
import { BreadQuestions } from './BreadQuestions.tsx';
import { DoughDoors } from './DoughDoors.tsx';
import { type BreadDoorName, doughHints, doughTitles } from './doors.ts';
import { useBreadAnswers } from './use-bread-answers.ts';
import { WhichBread } from './WhichBread.tsx';

export default function BreadPage({ door }: { readonly door: BreadDoorName }) {
  const { answers, change } = useBreadAnswers();
  const question = useBreadQuestion(door, answers);
  const { answer, isStale, failure } = useAnswer(question);
  return (
    <Page title={`The dough: ${doughTitles[door]}`} lead={`${doughHints[door]}.`}>
      <DoughDoors open={door} />
      <QuestionPart
        sheet={question === undefined ? undefined : answer}
        isStale={isStale}
        failure={failure}
        unasked={
          question === undefined ? 'Choose the bread, and its answer stands here.' : undefined
        }
      >
        <WhichBread what={answers.what} onChoose={(what) => change({ what })} />
        <BreadQuestions door={door} answers={answers} change={change} />
      </QuestionPart>
    </Page>
  );
}

function useBreadQuestion(door: BreadDoorName, answers: BreadAnswers): BreadQuestion | undefined {
  const { measures, clock } = useReader().reader;
  return useMemo(() => {
    const { what, tinCubicMetres, ...rest } = answers;
    if (what === undefined) return undefined;
    const tin = tinCubicMetres === undefined ? {} : { tinCubicMetres };
    return { ask: 'bread', door, what, ...rest, ...tin, voice: { measures, clock } };
  }, [door, answers, measures, clock]);
}
