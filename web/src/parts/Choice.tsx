// One of a few: native radio buttons behind square labels.

import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: ComponentChildren;
  readonly note?: string;
}

interface ChoiceProps<Value extends string> {
  readonly legend: ComponentChildren;
  readonly value: Value | undefined;
  readonly options: readonly ChoiceOption<Value>[];
  readonly onChoose: (value: Value) => void;
  readonly isSmall?: boolean;
  readonly isRow?: boolean;
  readonly className?: string;
}

export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const name = useId();
  const { legend, value, options, onChoose, isSmall, isRow, className } = props;
  return (
    <fieldset className={`choice ${isSmall ? 'is-small' : ''} ${className ?? ''}`}>
      <legend>{legend}</legend>
      <div className={`choice-options ${isRow ? 'is-row' : ''}`}>
        {options.map((option) => (
          <div className="choice-option" key={option.value}>
            <input
              type="radio"
              name={name}
              id={`${name}-${option.value}`}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <label htmlFor={`${name}-${option.value}`}>
              <span>{option.label}</span>
              {option.note === undefined ? null : <small>{option.note}</small>}
            </label>
          </div>
        ))}
      </div>
    </fieldset>
  );
}
