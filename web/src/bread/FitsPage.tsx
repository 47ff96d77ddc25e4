// What fits? An oven and a dough: how much goes in and how it lies, or which oven for so much.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { MeasureField } from '../draft/MeasureField.tsx';
import { shownText } from '../draft/quantity-text.ts';
import { Choice } from '../parts/Choice.tsx';
import { Page } from '../parts/Page.tsx';
import { QuestionPart } from '../parts/QuestionPage.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { OvenChoice } from '../tonight/OvenChoice.tsx';
import { changedWish, rememberedWish, rememberWish, type WishChange } from '../tonight/wish.ts';
import type { FitsQuestion } from '../worker/fits-messages.ts';
import { DoughDoors } from './DoughDoors.tsx';
import { doughHints, doughTitles } from './doors.ts';
import { FitsLyingPart } from './FitsLyingPart.tsx';
import { FitsWhat } from './FitsWhat.tsx';
import {
  type FitsAnswers,
  type FitsKnown,
  fitsAsked,
  rememberedFits,
  rememberFits,
  USUAL_GRAMS,
  whatOf,
} from './fits-answers.ts';
import { OtherOvens } from './OtherOvens.tsx';
import { useBreadAnswers } from './use-bread-answers.ts';

export default function FitsPage() {
  const { answers: bread, change: changeBread } = useBreadAnswers();
  const { fits, change } = useFits();
  const { wish, changeOven } = useOven();
  const oven = { inches: wish.ovenInches, style: wish.ovenStyle };
  const question = useFitsQuestion(fitsAsked(fits, bread.what, oven));
  const { answer, isStale, failure } = useAnswer(question);
  const kind = whatOf(fits, bread.what);
  const usualAmount = shownText(`${USUAL_GRAMS} g`, 'ten', useReader().reader.measures);
  return (
    <Page title={`The dough: ${doughTitles.fits}`} lead={`${doughHints.fits}.`}>
      <DoughDoors open="fits" />
      <QuestionPart
        sheet={question === undefined ? undefined : answer}
        isStale={isStale}
        failure={failure}
        unasked={
          question === undefined ? 'Choose the bread, and its answer stands here.' : undefined
        }
      >
        <FitsWhat
          kind={kind}
          bread={bread.what}
          onKind={(what) => change({ what, lying: {} })}
          onBread={(what) => changeBread({ what })}
        />
        <Known known={fits.known} onChoose={(known) => change({ known })} />
        {fits.known === 'oven' ? null : (
          <MeasureField
            label="How much there is"
            kind="ten"
            value={fits.amountGrams}
            lowest={20}
            highest={50_000}
            empty={kind === 'bread' ? 'as much as the recipe makes' : usualAmount}
            onChange={(amountGrams) => change({ amountGrams })}
          />
        )}
        {fits.known === 'amount' ? null : <OvenChoice wish={wish} change={changeOven} />}
        {fits.known === 'both' ? (
          <OtherOvens ovens={fits.others} onChange={(others) => change({ others })} />
        ) : null}
        <FitsLyingPart kind={kind} fits={fits} change={change} />
      </QuestionPart>
    </Page>
  );
}

interface KnownProps {
  readonly known: FitsKnown;
  readonly onChoose: (known: FitsKnown) => void;
}

const Known = ({ known, onChoose }: KnownProps) => (
  <Choice
    legend="What is wanted"
    isSmall
    value={known}
    options={[
      { value: 'oven', label: 'How much goes into my oven' },
      { value: 'both', label: 'How so much lies in it' },
      { value: 'amount', label: 'Which oven for so much' },
    ]}
    onChoose={onChoose}
  />
);

function useFits() {
  const [fits, setFits] = useState(() => rememberedFits(localStorage));
  useEffect(() => rememberFits(localStorage, fits), [fits]);
  const change = (part: Partial<FitsAnswers>) => setFits((old) => ({ ...old, ...part }));
  return { fits, change };
}

/** The oven is that of the front door: nothing is typed again. */
function useOven() {
  const [wish, setWish] = useState(() => rememberedWish(localStorage));
  useEffect(() => rememberWish(localStorage, wish), [wish]);
  const changeOven = (part: WishChange) => setWish((old) => changedWish(old, part));
  return { wish, changeOven };
}

/** The same question stays the same one while nothing in it has changed. */
function useFitsQuestion(asked: Omit<FitsQuestion, 'voice'> | undefined): FitsQuestion | undefined {
  const { measures, clock } = useReader().reader;
  const text = JSON.stringify(asked);
  return useMemo(
    () =>
      text === undefined
        ? undefined
        : { ...(JSON.parse(text) as Omit<FitsQuestion, 'voice'>), voice: { measures, clock } },
    [text, measures, clock],
  );
}
