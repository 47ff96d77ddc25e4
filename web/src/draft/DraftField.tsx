// A field bound to one place of a camp being changed. Whatever is typed goes into the draft as it
// is; if the file can't be read with it, the trouble that names this place is shown here.

import { Field } from '../parts/Field.tsx';
import { readClock, writeClock } from '../parts/read-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type { PlaceTrouble } from '../worker/messages.ts';
import { type Edit, type Path, pathText, valueAt } from './path.ts';
import { shownText, type TextKind, unitSign, withUnit } from './quantity-text.ts';
import type { DraftFile } from './use-draft.ts';

/** What the fields of one draft share. */
export interface DraftForm {
  readonly file: DraftFile;
  readonly set: (path: Path, value: unknown) => void;
  /** Several places as one edit; `word` says what it did where it can be undone. */
  readonly setAll: (edits: readonly Edit[], word?: string) => void;
  readonly troubles: readonly PlaceTrouble[];
}

interface DraftFieldProps {
  readonly form: DraftForm;
  readonly path: Path;
  readonly label: string;
  readonly hint?: string;
}

/** The first trouble that names this place or something inside it. */
export function troubleAt(form: DraftForm, path: Path): string | undefined {
  const place = pathText(path);
  const found = form.troubles.find(
    (each) =>
      each.path === place || each.path.startsWith(`${place}.`) || each.path.startsWith(`${place}[`),
  );
  return found === undefined ? undefined : `Not in the plan yet: this takes ${found.wanted}.`;
}

const asText = (value: unknown) =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';

/** Words: a title, a name, an amount with its unit. */
export function TextField({ form, path, label, hint }: DraftFieldProps) {
  return (
    <Field
      label={label}
      value={asText(valueAt(form.file, path))}
      write={(value) => value}
      read={(text) => ({ ok: true, value: text })}
      onChange={(value) => form.set(path, value)}
      trouble={troubleAt(form, path)}
      hint={hint}
    />
  );
}

/** A whole number; anything else is kept as text for the file's own check to refuse. */
export function CountField({ form, path, label, hint }: DraftFieldProps) {
  return (
    <Field
      label={label}
      value={asText(valueAt(form.file, path))}
      write={(value) => value}
      read={(text) => ({ ok: true, value: text })}
      onChange={(text) => form.set(path, /^\s*\d{1,7}\s*$/.test(text) ? Number(text) : text)}
      trouble={troubleAt(form, path)}
      hint={hint}
      inputMode="numeric"
    />
  );
}

/** A quantity with its unit, in the reader's measures. */
export function QuantityField({ kind, ...props }: DraftFieldProps & { readonly kind: TextKind }) {
  const { form, path, label, hint } = props;
  const { measures } = useReader().reader;
  return (
    <Field
      label={label}
      value={asText(valueAt(form.file, path))}
      write={(value) => shownText(value, kind, measures)}
      read={(text) => ({ ok: true, value: withUnit(text, kind, measures) })}
      onChange={(value) => form.set(path, value)}
      trouble={troubleAt(form, path)}
      hint={hint ?? `in ${unitSign(kind, measures)}, or write the unit`}
    />
  );
}

/** A time of the camp's clock; a day before or after stays as the file writes it. */
export function ClockField({ form, path, label, hint }: DraftFieldProps) {
  const { clock } = useReader().reader;
  return (
    <Field
      label={label}
      value={asText(valueAt(form.file, path))}
      write={(value) => clockShown(value, clock)}
      read={(text) => ({ ok: true, value: clockWritten(text) })}
      onChange={(value) => form.set(path, value)}
      trouble={troubleAt(form, path)}
      hint={hint}
    />
  );
}

export function clockShown(text: string, clock: '12' | '24'): string {
  const reading = readClock(text);
  return reading.ok ? writeClock(reading.value, clock) : text;
}

export function clockWritten(text: string): string {
  const reading = readClock(text);
  return reading.ok ? writeClock(reading.value, '24') : text;
}

interface PickFieldProps extends DraftFieldProps {
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** What stands where the file does not say. */
  readonly usual: string;
  /** The option that what the file says amounts to. */
  readonly option?: (value: string) => string;
  /** How what the file says is shown where it is none of the options. */
  readonly labelOf?: (value: string) => string;
}

/** One of a few words. */
export function PickField(props: PickFieldProps) {
  const { form, path, label, options, usual, option = asText, labelOf = asText } = props;
  const value = option(asText(valueAt(form.file, path)) || usual);
  const known = options.some((each) => each.value === value);
  const all = known ? options : [{ value, label: labelOf(value) }, ...options];
  return (
    <div className="field">
      <label className="field-label" htmlFor={pathText(path)}>
        {label}
      </label>
      <select
        id={pathText(path)}
        value={value}
        onChange={(event) => form.set(path, event.currentTarget.value)}
      >
        {all.map((each) => (
          <option key={each.value} value={each.value}>
            {each.label}
          </option>
        ))}
      </select>
    </div>
  );
}
