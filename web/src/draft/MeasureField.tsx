// A quantity that may be left unsaid, typed with or without its unit, in the reader's measures.

import { Field } from '../parts/Field.tsx';
import type { Reading } from '../parts/read-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { baseOf, shownText, type TextKind, unitHint, withUnit } from './quantity-text.ts';

interface MeasureFieldProps {
  readonly label: string;
  readonly kind: TextKind;
  /** In base units (°C, m/s, m, g, %), like the bounds. */
  readonly value: number | undefined;
  readonly lowest: number;
  readonly highest: number;
  /** What holds where nothing is typed. */
  readonly empty: string;
  readonly onChange: (value: number | undefined) => void;
}

/** The unit that a base value is written in before it is shown to a reader. */
const BASE_SIGN: Readonly<Record<TextKind, string>> = {
  air: '°C',
  'oven-heat': '°C',
  wind: 'm/s',
  height: 'm',
  'oven-size': 'm',
  ten: 'g',
  charcoal: 'g',
  rain: 'm',
  share: '%',
  'small-length': 'm',
  'label-mass': 'g',
  'iron-mass': 'g',
};

export function MeasureField(props: MeasureFieldProps) {
  const { label, kind, value, lowest, highest, empty, onChange } = props;
  const { measures } = useReader().reader;
  const written = (base: number) => shownText(`${base} ${BASE_SIGN[kind]}`, kind, measures);
  const read = (text: string): Reading<number | undefined> => {
    if (text.trim() === '') return { ok: true, value: undefined };
    const base = baseOf(withUnit(text, kind, measures));
    return base !== undefined && lowest <= base && base <= highest
      ? { ok: true, value: base }
      : { ok: false };
  };
  return (
    <Field
      label={label}
      value={value}
      write={(base) => (base === undefined ? '' : written(base))}
      read={read}
      onChange={onChange}
      takes={`${written(lowest)} to ${written(highest)}`}
      hint={`${unitHint(kind, measures)}; empty: ${empty}`}
      inputMode="text"
    />
  );
}
