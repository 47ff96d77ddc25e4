// When: as soon as it can be, or on the table at a time.

import { Choice } from '../parts/Choice.tsx';
import { Field } from '../parts/Field.tsx';
import { readClock, writeClock } from '../parts/read-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { minuteOf, type OpenWish, type WishChange } from './wish.ts';

interface ChoiceProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

const USUAL_SUPPER_MINUTES = 18 * 60 + 30;
const LEAST_AHEAD_MINUTES = 180;

export function WhenChoice({ wish, change }: ChoiceProps) {
  const { clock } = useReader().reader;
  const { eatAtMinutes } = wish;
  const choose = (when: 'now' | 'at') =>
    change(when === 'at' ? { eatAtMinutes: firstGuess() } : { eatAtMinutes: undefined });
  return (
    <div className="when-choice">
      <Choice
        legend="When"
        isRow
        value={eatAtMinutes === undefined ? 'now' : 'at'}
        options={[
          { value: 'now', label: 'Start now' },
          { value: 'at', label: 'Eat at …' },
        ]}
        onChoose={choose}
      />
      {eatAtMinutes === undefined ? null : (
        <Field
          label="On the table at"
          value={eatAtMinutes}
          write={(minutes) => writeClock(minutes, clock)}
          read={readAhead}
          hint={eatAtMinutes < DAY_MINUTES ? undefined : 'tomorrow'}
          onChange={(minutes) => change({ eatAtMinutes: minutes })}
          takes={clock === '24' ? 'a time such as 18:30' : 'a time such as 6:30 pm'}
        />
      )}
    </div>
  );
}

const DAY_MINUTES = 1440;
const LONG_PAST_MINUTES = 8 * 60;

/** A time long past today is tomorrow's; one just past is taken as typed, and the card says so. */
function readAhead(text: string): ReturnType<typeof readClock> {
  const reading = readClock(text);
  const isTomorrow = reading.ok && reading.value < minuteOf(new Date()) - LONG_PAST_MINUTES;
  return isTomorrow ? { ok: true, value: reading.value + DAY_MINUTES } : reading;
}

/** Supper time, or the next half hour that leaves room to bake. */
function firstGuess(): number {
  const earliest = minuteOf(new Date()) + LEAST_AHEAD_MINUTES;
  return earliest <= USUAL_SUPPER_MINUTES ? USUAL_SUPPER_MINUTES : Math.ceil(earliest / 30) * 30;
}
