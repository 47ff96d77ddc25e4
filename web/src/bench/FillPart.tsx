// Which oven it is to fill, and how thick it is rolled or poured in it.

import { useId } from 'preact/hooks';
import { MeasureField } from '../draft/MeasureField.tsx';
import type { BenchFill, BenchOven } from '../worker/bench-messages.ts';

interface FillPartProps {
  readonly ovens: readonly BenchOven[];
  readonly fill: BenchFill | undefined;
  readonly onChange: (fill: BenchFill | undefined) => void;
}

/** Half a crumpet to a tall loaf; what does not go under the lid is answered by the bench. */
const THICK = { lowest: 0.003, highest: 0.15 };

export function FillPart({ ovens, fill, onChange }: FillPartProps) {
  const id = useId();
  if (ovens.length === 0) return null;
  const pick = (oven: string) => onChange(oven === '' ? undefined : { ...fill, oven });
  return (
    <div className="field-row">
      <div className="field">
        <label className="field-label" htmlFor={id}>
          Fills an oven
        </label>
        <select
          id={id}
          value={fill?.oven ?? ''}
          onChange={(event) => pick(event.currentTarget.value)}
        >
          <option value="">none in particular</option>
          {ovens.map((oven) => (
            <option key={oven.id} value={oven.id}>
              {oven.name}
            </option>
          ))}
        </select>
      </div>
      {fill === undefined ? null : (
        <MeasureField
          label="How thick, raw"
          kind="small-length"
          value={fill.thickMetres}
          {...THICK}
          empty="as the recipe has it"
          onChange={(thickMetres) =>
            onChange({ oven: fill.oven, ...(thickMetres === undefined ? {} : { thickMetres }) })
          }
        />
      )}
    </div>
  );
}
