// One dough without a camp and without an oven: what raises it, how long it takes, how it is carried.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { Pick } from '../fire/Pick.tsx';
import { Page } from '../parts/Page.tsx';
import { QuestionDoors, QuestionPart } from '../parts/QuestionPage.tsx';
import { ask } from '../planning/planner.ts';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { RecipeFromCamp } from '../tonight/RecipeFromCamp.tsx';
import type { BreadQuestion } from '../worker/bread-messages.ts';
import type { ReadyRecipe } from '../worker/messages.ts';
import { type BreadAnswers, rememberBread, rememberedBread, usualAnswers } from './answers.ts';
import { BreadQuestions } from './BreadQuestions.tsx';
import { type BreadDoorName, breadDoors, breadTitles } from './doors.ts';

export default function BreadPage({ door }: { readonly door: BreadDoorName }) {
  const [answers, setAnswers] = useState(() => rememberedBread(localStorage));
  useEffect(() => rememberBread(localStorage, answers), [answers]);
  const change = (part: Partial<BreadAnswers>) => setAnswers((old) => ({ ...old, ...part }));
  const question = useBreadQuestion(door, answers);
  const { answer: sheet, isStale, failure } = useAnswer(question);
  return (
    <Page
      title={`The dough: ${breadTitles[door]}`}
      lead="One bread, no camp and no oven: choose it, and say where it stands."
    >
      <QuestionDoors
        root="/dough"
        doors={breadDoors.map((each) => [each, breadTitles[each]] as const)}
        open={door}
      />
      <QuestionPart sheet={sheet} isStale={isStale} failure={failure}>
        <WhichBread answers={answers} change={change} />
        <BreadQuestions door={door} answers={answers} change={change} />
      </QuestionPart>
    </Page>
  );
}

function useBreadQuestion(door: BreadDoorName, answers: BreadAnswers): BreadQuestion {
  const { measures, clock } = useReader().reader;
  return useMemo(() => {
    const { tinCubicMetres, ...rest } = answers;
    const tin = tinCubicMetres === undefined ? {} : { tinCubicMetres };
    return { ask: 'bread', door, ...rest, ...tin, voice: { measures, clock } };
  }, [door, answers, measures, clock]);
}

interface WhichBreadProps {
  readonly answers: BreadAnswers;
  readonly change: (part: Partial<BreadAnswers>) => void;
}

const DOUGHS: ReadonlySet<string> = new Set([
  ...['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread', 'cobbler'],
]);

function WhichBread({ answers, change }: WhichBreadProps) {
  const [ready, setReady] = useState<readonly ReadyRecipe[]>([]);
  useEffect(() => {
    void ask({ ask: 'ready-recipes' }).then(setReady);
  }, []);
  const { what } = answers;
  const doughs = ready.filter(({ kind }) => DOUGHS.has(kind));
  const isOwn = !('readyRecipe' in what);
  return (
    <>
      <Pick
        label="Which bread"
        words={[
          ...doughs.map(({ id, name }): readonly [string, string] => [id, name]),
          ...(isOwn ? [['', what.name] as const] : []),
        ]}
        value={isOwn ? '' : what.readyRecipe}
        onChoose={(id) => (id === '' ? undefined : change({ what: { readyRecipe: id } }))}
      />
      <RecipeFromCamp
        chosen={isOwn ? what : undefined}
        none="none: the bread above"
        onChoose={(recipe) => change({ what: recipe ?? usualAnswers.what })}
      />
    </>
  );
}
