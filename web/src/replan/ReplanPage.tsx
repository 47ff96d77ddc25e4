// The day slipped: what has happened on one side, how it can go on below.

import { useMemo, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { Slip } from '#engine';
import { OpenedCamp } from '../draft/OpenedCamp.tsx';
import { Computing } from '../parts/Computing.tsx';
import { DocumentView } from '../parts/DocumentView.tsx';
import { Field } from '../parts/Field.tsx';
import { Page } from '../parts/Page.tsx';
import { readClock, writeClock } from '../parts/read-text.ts';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type { ReplanAnswer, ReplanChoices, ReplanQuestion } from '../worker/replan-messages.ts';
import { SlipForm } from './SlipForm.tsx';
import { slipWord } from './slip-words.ts';

interface ReplanPageProps {
  readonly shelf: 'camp' | 'demo';
  readonly id: string;
}

export default function ReplanPage({ shelf, id }: ReplanPageProps) {
  return (
    <OpenedCamp shelf={shelf} id={id}>
      {({ file }) => <SlippedDay file={JSON.stringify(file)} back={`/${shelf}/${id}/day`} />}
    </OpenedCamp>
  );
}

const minuteNow = () => {
  const now = new Date();
  return now.getHours() * 60 + now.getMinutes();
};

function SlippedDay({ file, back }: { readonly file: string; readonly back: string }) {
  const { measures, clock } = useReader().reader;
  const [nowMinutes, setNow] = useState(minuteNow);
  const [slips, setSlips] = useState<readonly Slip[]>([]);
  const question = useMemo(
    (): ReplanQuestion => ({
      ask: 'replan',
      file,
      nowMinutes,
      slips,
      voice: { measures, clock },
    }),
    [file, nowMinutes, slips, measures, clock],
  );
  const { answer, isStale, failure } = useAnswer(question);
  return (
    <Page title="Something slipped" eyebrow={<Link href={back}>Back to the day sheet</Link>}>
      <p>What is done stands. Say what has happened; the rest of the day is planned again.</p>
      <div className="form-stack">
        <Field
          label="It is"
          value={nowMinutes}
          write={(minutes) => writeClock(minutes, clock)}
          read={readClock}
          onChange={setNow}
          takes={clock === '24' ? 'a time such as 17:10' : 'a time such as 5:10 pm'}
        />
        {answer?.choices === undefined ? null : (
          <>
            <Told slips={slips} choices={answer.choices} onChange={setSlips} />
            <SlipForm choices={answer.choices} onSlip={(slip) => setSlips([...slips, slip])} />
          </>
        )}
      </div>
      <Computing isBusy={isStale} failure={isStale ? undefined : failure} />
      <Ways answer={answer} isStale={isStale} />
    </Page>
  );
}

interface ToldProps {
  readonly slips: readonly Slip[];
  readonly choices: ReplanChoices;
  readonly onChange: (slips: readonly Slip[]) => void;
}

function Told({ slips, choices, onChange }: ToldProps) {
  if (slips.length === 0) return null;
  return (
    <ul aria-label="What has happened">
      {slips.map((slip, at) => {
        const word = slipWord(slip, choices);
        return (
          <li key={word}>
            {word}{' '}
            <button
              type="button"
              className="button is-quiet"
              onClick={() => onChange(slips.filter((_, index) => index !== at))}
            >
              Not so
            </button>
          </li>
        );
      })}
    </ul>
  );
}

function Ways({
  answer,
  isStale,
}: {
  readonly answer?: ReplanAnswer | undefined;
  readonly isStale: boolean;
}) {
  if (answer === undefined) return null;
  if (answer.sheet === undefined) {
    return (
      <p className="word is-trouble" role="alert">
        Something typed in the camp can’t be read yet: put that right first.
      </p>
    );
  }
  return (
    <div className={isStale ? 'is-stale' : undefined} aria-busy={isStale}>
      <DocumentView document={answer.sheet} level={2} />
    </div>
  );
}
