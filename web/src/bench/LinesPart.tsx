// Every line of the recipe: its amount by weight, by cup or in percent, and what could stand in.

import { useState } from 'preact/hooks';
import { type DraftForm, troubleAt } from '../draft/DraftField.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Field } from '../parts/Field.tsx';
import { type Reading, readDecimal } from '../parts/read-text.ts';
import type { BenchLine, BenchQuestion } from '../worker/bench-messages.ts';
import { recipeIndex } from './recipe-in-file.ts';

type Mode = 'weight' | 'measure' | 'percent';

interface LinesPartProps {
  readonly form: DraftForm;
  readonly recipe: string;
  readonly lines: readonly BenchLine[];
  readonly flourGrams: number | undefined;
  /** The formula in one line; stays in sight while the amounts are changed. */
  readonly brief: string | undefined;
  readonly swap: BenchQuestion['swap'];
  readonly onSwap: (swap: BenchQuestion['swap']) => void;
}

export function LinesPart(props: LinesPartProps) {
  const { form, recipe, lines, flourGrams, brief, swap, onSwap } = props;
  const [mode, setMode] = useState<Mode>('weight');
  const index = recipeIndex(form.file, recipe);
  return (
    <section aria-labelledby="bench-lines">
      <h2 id="bench-lines">What goes in</h2>
      {brief === undefined ? null : (
        <p className="bench-brief" role="status">
          {brief}
        </p>
      )}
      <Choice
        legend="Change it by"
        isSmall
        isRow
        value={mode}
        options={[
          { value: 'weight', label: 'weight' },
          { value: 'measure', label: 'cups' },
          { value: 'percent', label: 'percent' },
        ]}
        onChoose={setMode}
      />
      <ul className="bench-list">
        {lines.map((line, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same food may stand twice
          <li key={`${at} ${line.name}`}>
            <AmountField
              form={form}
              line={line}
              mode={mode}
              flourGrams={flourGrams}
              path={['recipes', index, 'ingredients', at]}
            />
            <SwapPick
              line={line}
              to={swap?.line === at ? swap.to : ''}
              onPick={(to) => onSwap(to === '' ? undefined : { line: at, to })}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface AmountFieldProps {
  readonly form: DraftForm;
  readonly line: BenchLine;
  readonly mode: Mode;
  readonly flourGrams: number | undefined;
  readonly path: readonly (string | number)[];
}

const tenths = (number: number) => String(Math.round(number * 10) / 10);
const weightOf = (grams: number) => `${tenths(grams)} g`;

function AmountField({ form, line, mode, flourGrams, path }: AmountFieldProps) {
  const trouble = troubleAt(form, path);
  const weigh = (grams: number) =>
    form.setAll([
      [[...path, 'weight'], weightOf(grams)],
      [[...path, 'measure'], undefined],
    ]);
  if (mode === 'measure') {
    return (
      <Field
        key={mode}
        label={line.name}
        value={line.measure}
        write={(value) => value}
        read={(text): Reading<string> => ({ ok: true, value: text })}
        onChange={(text) =>
          form.setAll([
            [[...path, 'measure'], text],
            [[...path, 'weight'], undefined],
          ])
        }
        trouble={trouble}
        hint={weightOf(line.grams)}
      />
    );
  }
  if (mode === 'percent' && (line.isFlour || flourGrams === undefined)) {
    return (
      <p className="bench-flour">
        <span>{line.name}</span> {percentText(line)}
      </p>
    );
  }
  const isPercent = mode === 'percent';
  return (
    <Field
      key={mode} // what was typed as a percentage is no weight
      label={line.name}
      unit={isPercent ? '%' : 'g'}
      inputMode="decimal"
      value={isPercent ? (line.percent ?? 0) : line.grams}
      write={tenths}
      read={(text) => readDecimal(text, BOUNDS[mode])}
      takes={isPercent ? 'percent of the flour, 0.1 to 300' : 'grams from 0.1 to 100000'}
      onChange={(value) => weigh(isPercent ? (value * (flourGrams ?? 0)) / 100 : value)}
      trouble={trouble}
      hint={
        isPercent
          ? weightOf(line.grams)
          : [percentText(line), line.measure].filter((each) => each !== '').join(' · ')
      }
    />
  );
}

const BOUNDS = {
  weight: { lowest: 0.1, highest: 100_000 },
  percent: { lowest: 0.1, highest: 300 },
} as const;

const percentText = ({ percent }: BenchLine) =>
  percent === undefined ? '' : `${tenths(percent)} %`;

interface SwapPickProps {
  readonly line: BenchLine;
  readonly to: string;
  readonly onPick: (to: string) => void;
}

/** Picking only shows the swap; it is taken by its own button. */
function SwapPick({ line, to, onPick }: SwapPickProps) {
  if (line.offers.length === 0) return null;
  return (
    <div className="field">
      <select
        aria-label={`Swap ${line.name} for`}
        value={to}
        onChange={(event) => onPick(event.currentTarget.value)}
      >
        <option value="">Swap for …</option>
        {line.offers.map((offer) => (
          <option key={offer.to} value={offer.to}>
            {offer.label}
          </option>
        ))}
      </select>
    </div>
  );
}
