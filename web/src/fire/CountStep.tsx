// A number of coals, shovels or minutes: typed, or stepped by large buttons.

import { useId } from 'preact/hooks';
import { Field } from '../parts/Field.tsx';
import { readDecimal, readWhole, writeNumber } from '../parts/read-text.ts';

interface CountStepProps {
  readonly label: string;
  readonly value: number;
  readonly lowest?: number;
  readonly highest: number;
  /** Shovels go by halves, coals by one. */
  readonly step: 1 | 0.5;
  readonly unit: string;
  readonly onChange: (value: number) => void;
}

export function CountStep({
  label,
  value,
  lowest = 0,
  highest,
  step,
  unit,
  onChange,
}: CountStepProps) {
  const id = useId();
  const bounds = { lowest, highest };
  const stepped = (by: number) => () => onChange(Math.min(highest, Math.max(lowest, value + by)));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would say its legend before each button
    <div className="count-step" role="group" aria-label={label} id={id}>
      <button
        type="button"
        className="button"
        aria-label={`${label}: fewer`}
        disabled={value <= lowest}
        onClick={stepped(-step)}
      >
        −
      </button>
      <Field
        label={label}
        value={value}
        write={(count) => writeNumber(count, 1)}
        read={(text) => (step === 1 ? readWhole(text, bounds) : readDecimal(text, bounds))}
        onChange={onChange}
        takes={`a number from ${lowest} to ${highest}`}
        unit={unit}
        inputMode={step === 1 ? 'numeric' : 'decimal'}
      />
      <button
        type="button"
        className="button"
        aria-label={`${label}: more`}
        disabled={highest <= value}
        onClick={stepped(step)}
      >
        +
      </button>
    </div>
  );
}
