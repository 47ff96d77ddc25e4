// One of a list, as a native box under its label.

import { useId } from 'preact/hooks';

interface PickProps<Value extends string> {
  readonly label: string;
  readonly words: readonly (readonly [Value, string])[];
  readonly value: Value;
  readonly onChoose: (value: Value) => void;
}

export function Pick<Value extends string>({ label, words, value, onChoose }: PickProps<Value>) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        onChange={(event) => onChoose(event.currentTarget.value as Value)}
      >
        {words.map(([each, word]) => (
          <option key={each} value={each}>
            {word}
          </option>
        ))}
      </select>
    </div>
  );
}
