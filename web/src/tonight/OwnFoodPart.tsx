// A dough of the cook's own: by kind, thickness and amount, or a recipe out of a camp. Fetched when it
// is chosen, so that the front door opens sooner.

import { Choice } from '../parts/Choice.tsx';
import { Field } from '../parts/Field.tsx';
import { readDecimal, writeNumber } from '../parts/read-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type { OwnRecipe } from '../worker/messages.ts';
import { INCH_METRES, OUNCE_GRAMS, type OwnFood, usualOwn } from './own-food.ts';
import { RecipeFromCamp } from './RecipeFromCamp.tsx';

interface OwnFoodPartProps {
  readonly what: OwnFood | OwnRecipe;
  readonly onChange: (what: OwnFood | OwnRecipe) => void;
}

export default function OwnFoodPart({ what, onChange }: OwnFoodPartProps) {
  const isUs = useReader().reader.measures === 'us';
  return (
    <>
      {'kind' in what ? <OwnDough own={what} onChange={onChange} /> : null}
      <RecipeFromCamp
        chosen={'camp' in what ? what : undefined}
        onChoose={(recipe) => onChange(recipe ?? usualOwn(isUs))}
      />
    </>
  );
}

const kinds = [
  { value: 'yeast-bread', label: 'Yeast bread' },
  { value: 'quick-bread', label: 'Quick bread' },
  { value: 'biscuit', label: 'Biscuits' },
  { value: 'corn-bread', label: 'Corn bread' },
] as const;

interface OwnDoughProps {
  readonly own: OwnFood;
  readonly onChange: (own: OwnFood) => void;
}

function OwnDough({ own, onChange }: OwnDoughProps) {
  const isUs = useReader().reader.measures === 'us';
  const length = isUs ? { unit: 'inch', inMetres: INCH_METRES } : { unit: 'cm', inMetres: 0.01 };
  const mass = isUs ? { unit: 'oz', inGrams: OUNCE_GRAMS } : { unit: 'g', inGrams: 1 };
  const thick = { lowest: writeLimit(0.005, length), highest: writeLimit(0.15, length) };
  const heavy = isUs ? { lowest: 4, highest: 350 } : { lowest: 100, highest: 10_000 };
  return (
    <>
      <Choice
        legend="Kind"
        isSmall
        value={own.kind}
        options={kinds}
        onChoose={(kind) => onChange({ ...own, kind })}
      />
      <div className="field-row">
        <Field
          label="Thick as it goes in"
          value={own.thicknessMetres}
          write={(metres) => writeNumber(metres / length.inMetres, 2)}
          read={(text) => scaled(readDecimal(text, thick), length.inMetres)}
          onChange={(thicknessMetres) => onChange({ ...own, thicknessMetres })}
          takes={`a number from ${thick.lowest} to ${thick.highest}`}
          unit={length.unit}
          inputMode="decimal"
        />
        <Field
          label="Dough in all"
          value={own.massGrams}
          write={(grams) => writeNumber(grams / mass.inGrams, isUs ? 1 : 0)}
          read={(text) => scaled(readDecimal(text, heavy), mass.inGrams)}
          onChange={(massGrams) => onChange({ ...own, massGrams })}
          takes={`a number from ${heavy.lowest} to ${heavy.highest}`}
          unit={mass.unit}
          inputMode="decimal"
        />
      </div>
    </>
  );
}

const writeLimit = (metres: number, { inMetres }: { readonly inMetres: number }) =>
  Math.round((metres / inMetres) * 10) / 10;

const scaled = (reading: ReturnType<typeof readDecimal>, by: number) =>
  reading.ok ? { ok: true as const, value: reading.value * by } : reading;
