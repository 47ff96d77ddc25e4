// A box to type in. It keeps what was typed, whatever that is; only what can be read is handed on,
// and what can't is answered with what the box takes.

import { useEffect, useId, useState } from 'preact/hooks';
import type { Reading } from './read-text.ts';

interface FieldProps<Value> {
  readonly label: string;
  /** The value as it stands in the plan. */
  readonly value: Value;
  readonly write: (value: Value) => string;
  readonly read: (text: string) => Reading<Value>;
  readonly onChange: (value: Value) => void;
  /** What the box takes, for example `a whole number from 0 to 500`; said where `read` fails. */
  readonly takes?: string;
  /** What someone else found wrong with the value. */
  readonly trouble?: string | undefined;
  readonly unit?: string;
  readonly hint?: string | undefined;
  readonly inputMode?: 'numeric' | 'decimal' | 'text';
  readonly type?: 'text' | 'time' | 'date';
}

export function Field<Value>(props: FieldProps<Value>) {
  const { label, value, write, read, onChange, takes, unit, hint } = props;
  const id = useId();
  const { text, setText } = useTypedText({ value, write, read });
  const reading = read(text);
  const type = (typed: string) => {
    setText(typed);
    const next = read(typed);
    if (next.ok) onChange(next.value);
  };
  const trouble = reading.ok ? props.trouble : `Not in the plan yet: this takes ${takes}.`;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <div className="field-box">
        <input
          id={id}
          type={(props.type ?? 'text') as 'text'} // the types ask for one kind by name
          inputMode={props.inputMode ?? 'text'}
          autoComplete="off"
          value={text}
          aria-invalid={trouble !== undefined}
          aria-describedby={trouble || hint ? `${id}-word` : undefined}
          onInput={(event) => type(event.currentTarget.value)}
        />
        {unit === undefined ? null : <span className="field-unit">{unit}</span>}
      </div>
      <span id={`${id}-word`} className={trouble ? 'field-trouble' : 'field-hint'} role="status">
        {trouble ?? hint}
      </span>
    </div>
  );
}

interface Typed<Value> {
  readonly value: Value;
  readonly write: (value: Value) => string;
  readonly read: (text: string) => Reading<Value>;
}

/** The text as typed; follows the value only when it was changed from elsewhere. */
function useTypedText<Value>({ value, write, read }: Typed<Value>) {
  const written = write(value);
  const [text, setText] = useState(written);
  const [followed, setFollowed] = useState(written);
  useEffect(() => {
    if (written === followed) return;
    setFollowed(written);
    const now = read(text);
    if (!now.ok || write(now.value) !== written) setText(written);
  }, [written, followed, read, write, text]);
  return { text, setText };
}
