// Fields of what a file may leave out: emptied, they take their place out of the file again, and
// what is usual holds. They stand in a fold, so that a form stays short.

import type { ComponentChildren } from 'preact';
import { Field } from '../parts/Field.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import { type DraftForm, troubleAt } from './DraftField.tsx';
import { type Path, pathText, valueAt } from './path.ts';
import { shownText, type TextKind, unitHint, withUnit } from './quantity-text.ts';

interface OptionalProps {
  readonly form: DraftForm;
  readonly path: Path;
  readonly label: string;
  readonly hint?: string;
}

interface MoreProps {
  /** Whose, for one who can't see where the fold stands. */
  readonly of: string;
  /** How many of its places the file fills. */
  readonly said?: number;
  readonly children: ComponentChildren;
}

export function More({ of, said = 0, children }: MoreProps) {
  return (
    <details className="more">
      <summary>
        More<span className="unseen"> of {of}</span>
        {said === 0 ? null : <small> · {said} said</small>}
      </summary>
      <div className="change-body">{children}</div>
    </details>
  );
}

/** How many of these places the file fills. */
export const saidAt = (form: DraftForm, paths: readonly Path[]) =>
  paths.filter((path) => valueAt(form.file, path) !== undefined).length;

const asText = (value: unknown) =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';

const orNothing = <Value,>(value: Value): Value | undefined => (value === '' ? undefined : value);

/** A quantity with its unit, in the reader's measures. */
export function OptionalQuantity(props: OptionalProps & { readonly kind: TextKind }) {
  const { form, path, label, hint, kind } = props;
  const { measures } = useReader().reader;
  const unit = unitHint(kind, measures);
  return (
    <Field
      label={label}
      value={asText(valueAt(form.file, path))}
      write={(value) => shownText(value, kind, measures)}
      read={(text) => ({ ok: true, value: withUnit(text, kind, measures) })}
      onChange={(value) => form.set(path, orNothing(value.trim() === '' ? '' : value))}
      trouble={troubleAt(form, path)}
      hint={hint === undefined ? unit : `${hint}; ${unit}`}
    />
  );
}

/** A number of something that the label of the field names; a signed one may lie below nothing. */
export function NumberField({
  form,
  path,
  label,
  hint,
  isSigned = false,
}: OptionalProps & { readonly isSigned?: boolean }) {
  return (
    <Field
      label={label}
      value={asText(valueAt(form.file, path))}
      write={(value) => value}
      read={(text) => ({ ok: true, value: plainNumber(text) })}
      onChange={(text) => form.set(path, orNothing(NUMBER.test(text) ? Number(text) : text))}
      trouble={troubleAt(form, path)}
      hint={hint}
      inputMode={isSigned ? 'text' : 'decimal'}
    />
  );
}

const NUMBER = /^-?\d{1,7}(?:\.\d{1,4})?$/;

/** `2,50` as `2.5`; what is no number yet stays as it is, for the file's own check to refuse. */
function plainNumber(text: string): string {
  const plain = text.trim().replace(',', '.');
  return NUMBER.test(plain) ? String(Number(plain)) : plain;
}

interface OptionalPickProps extends OptionalProps {
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** What holds where the file does not say. */
  readonly unsaid: string;
}

/** One of a few words, or none of them. */
export function OptionalPick({ form, path, label, options, unsaid }: OptionalPickProps) {
  const value = asText(valueAt(form.file, path));
  const id = pathText(path);
  const isKnown = value === '' || options.some((each) => each.value === value);
  const trouble = troubleAt(form, path);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        aria-describedby={trouble === undefined ? undefined : `${id}-word`}
        onChange={(event) => form.set(path, orNothing(event.currentTarget.value))}
      >
        <option value="">{unsaid}</option>
        {isKnown ? null : <option value={value}>{value}</option>}
        {options.map((each) => (
          <option key={each.value} value={each.value}>
            {each.label}
          </option>
        ))}
      </select>
      {trouble === undefined ? null : (
        <span id={`${id}-word`} className="field-trouble" role="status">
          {trouble}
        </span>
      )}
    </div>
  );
}
