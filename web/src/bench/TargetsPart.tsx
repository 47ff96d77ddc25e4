// Targets: mass, water, fat, salt, and lines that are held; worked out as they are typed.

import type { FigureName } from '#engine';
import { Field } from '../parts/Field.tsx';
import { type Reading, readDecimal } from '../parts/read-text.ts';
import type { BenchFill, BenchLine, BenchOven, BenchTargets } from '../worker/bench-messages.ts';
import { FillPart } from './FillPart.tsx';

/** Undefined is a wish that nobody has. */
export interface TypedTargets {
  readonly batchGrams?: number | undefined;
  readonly figures: Readonly<Partial<Record<FigureName, number | undefined>>>;
  readonly held: readonly number[];
  readonly fill?: BenchFill | undefined;
}

const WISHES: readonly (readonly [FigureName, string])[] = [
  ['hydration', 'Water'],
  ['fat', 'Fat'],
  ['salt', 'Salt'],
  ['sugar', 'Sugar'],
  ['powder', 'Baking powder'],
  ['soda', 'Soda'],
  ['yeast', 'Yeast'],
];

/** Undefined where nothing is wished; a held line alone is no wish. */
export function targetsFrom({
  batchGrams,
  figures,
  held,
  fill,
}: TypedTargets): BenchTargets | undefined {
  const shares = Object.fromEntries(
    Object.entries(figures).flatMap(([name, percent]) =>
      percent === undefined ? [] : [[name, percent / 100]],
    ),
  );
  const isWished = batchGrams !== undefined || fill !== undefined;
  if (!isWished && Object.keys(shares).length === 0) return undefined;
  return {
    ...(batchGrams === undefined ? {} : { batchGrams }),
    ...(fill === undefined ? {} : { fill }),
    figures: shares,
    held,
  };
}

interface TargetsPartProps {
  readonly targets: TypedTargets;
  readonly lines: readonly BenchLine[];
  readonly ovens: readonly BenchOven[];
  readonly onChange: (targets: TypedTargets) => void;
}

export function TargetsPart({ targets, lines, ovens, onChange }: TargetsPartProps) {
  const hold = (line: number, isHeld: boolean) =>
    onChange({
      ...targets,
      held: isHeld ? [...targets.held, line] : targets.held.filter((each) => each !== line),
    });
  return (
    <section aria-labelledby="bench-targets">
      <h2 id="bench-targets">What I want</h2>
      <p className="quiet">Fill in what matters; the rest stays as it is for 100 of flour.</p>
      <div className="field-row">
        <WishField
          label="Whole dough"
          unit="g"
          value={targets.batchGrams}
          onChange={(batchGrams) => onChange({ ...targets, batchGrams })}
        />
        {WISHES.map(([figure, label]) => (
          <WishField
            key={figure}
            label={label}
            unit="%"
            value={targets.figures[figure]}
            onChange={(percent) =>
              onChange({ ...targets, figures: { ...targets.figures, [figure]: percent } })
            }
          />
        ))}
      </div>
      <FillPart
        ovens={ovens}
        fill={targets.fill}
        onChange={(fill) => onChange({ ...targets, fill })}
      />
      <fieldset className="bench-held">
        <legend>Stays as it is</legend>
        {lines.map(({ name }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same food may stand twice
          <label key={`${at} ${name}`}>
            <input
              type="checkbox"
              checked={targets.held.includes(at)}
              onChange={(event) => hold(at, event.currentTarget.checked)}
            />{' '}
            {name}
          </label>
        ))}
      </fieldset>
    </section>
  );
}

interface WishFieldProps {
  readonly label: string;
  readonly unit: 'g' | '%';
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
}

/** Past what a dough can be is let through: the bench says what the nearest one is. */
const ANY_NUMBER = { lowest: -1_000_000, highest: 1_000_000 };

function WishField({ label, unit, value, onChange }: WishFieldProps) {
  return (
    <Field
      label={label}
      unit={unit}
      inputMode="decimal"
      value={value}
      write={(number) => (number === undefined ? '' : String(number))}
      read={(text): Reading<number | undefined> =>
        text.trim() === '' ? { ok: true, value: undefined } : readDecimal(text, ANY_NUMBER)
      }
      takes={unit === 'g' ? 'grams' : 'percent of the flour'}
      onChange={onChange}
    />
  );
}
