// Where the dough stands while it rises: one place after the other, the last one lasts on.

import { MeasureField } from '../draft/MeasureField.tsx';
import { Pick } from '../fire/Pick.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import type { DoughStay } from '../worker/bread-messages.ts';
import { MOST_STAYS } from './answers.ts';

interface StaysPartProps {
  readonly stays: readonly DoughStay[];
  readonly onChange: (stays: readonly DoughStay[]) => void;
}

const ZERO_CELSIUS = 273.15;
/** A cold morning, then a warm box: what one who adds a place is likely to mean. */
const FIRST: DoughStay = { minutes: 120, kelvin: ZERO_CELSIUS + 5 };
const NEXT: DoughStay = { minutes: 120, kelvin: ZERO_CELSIUS + 28 };

export function StaysPart({ stays, onChange }: StaysPartProps) {
  const setAt = (at: number, part: Partial<DoughStay>) =>
    onChange(stays.with(at, { ...stays[at]!, ...part }));
  return (
    <>
      {stays.map((stay, at) => (
        <Stay
          // biome-ignore lint/suspicious/noArrayIndexKey: a place has no other name than its turn
          key={at}
          stay={stay}
          number={at + 1}
          isLast={at === stays.length - 1}
          onChange={(part) => setAt(at, part)}
          onRemove={() => onChange(stays.filter((_, each) => each !== at))}
        />
      ))}
      {stays.length === 0 ? (
        <p className="field-hint">The dough stands in the air all the while.</p>
      ) : null}
      {stays.length >= MOST_STAYS ? null : (
        <div>
          <button
            type="button"
            className="button"
            onClick={() => onChange([...stays, stays.length === 0 ? FIRST : NEXT])}
          >
            {stays.length === 0 ? 'It stands somewhere else' : 'Then another place'}
          </button>
        </div>
      )}
    </>
  );
}

interface StayProps {
  readonly stay: DoughStay;
  readonly number: number;
  readonly isLast: boolean;
  readonly onChange: (part: Partial<DoughStay>) => void;
  readonly onRemove: () => void;
}

const spans = [30, 60, 90, 120, 180, 240, 360, 480, 600, 720];
const spanWord = (minutes: number) =>
  minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)}${minutes % 60 ? '½' : ''} h`;

function Stay({ stay, number, isLast, onChange, onRemove }: StayProps) {
  return (
    <fieldset className="change-item">
      <legend>Place {number}</legend>
      <MeasureField
        label={`Warmth of place ${number}`}
        kind="air"
        value={stay.kelvin - ZERO_CELSIUS}
        lowest={-5}
        highest={45}
        empty="as it was"
        onChange={(celsius) =>
          celsius === undefined ? undefined : onChange({ kelvin: celsius + ZERO_CELSIUS })
        }
      />
      {isLast ? (
        <p className="field-hint">It stays there until it is risen.</p>
      ) : (
        <Pick
          label={`In place ${number} for`}
          words={spans.map((each) => [String(each), spanWord(each)])}
          value={String(stay.minutes)}
          onChoose={(minutes) => onChange({ minutes: Number(minutes) })}
        />
      )}
      <TakeOut what={`place ${number}`} onRemove={onRemove} />
    </fieldset>
  );
}
