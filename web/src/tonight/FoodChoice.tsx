// What goes in: a ready recipe, or a dough of one's own by kind, thickness and amount.

import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { Choice } from '../parts/Choice.tsx';
import { Field } from '../parts/Field.tsx';
import { readDecimal, writeNumber } from '../parts/read-text.ts';
import { ask } from '../planning/planner.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type { OwnKind, ReadyRecipe, TonightAmount, TonightFood } from '../worker/messages.ts';
import { AmountStep } from './AmountStep.tsx';
import { RecipeFromCamp } from './RecipeFromCamp.tsx';
import type { OpenWish, WishChange } from './wish.ts';

interface ChoiceProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

const OWN = 'own';
type OwnFood = Extract<TonightFood, { kind: OwnKind }>;

const INCH_METRES = 0.0254;
const OUNCE_GRAMS = 28.349523125;

/** Common practice, no source: a dough that rises within a regular 12-inch oven. */
const usualOwn = (isUs: boolean): OwnFood => ({
  kind: 'yeast-bread',
  thicknessMetres: isUs ? INCH_METRES : 0.025,
  massGrams: isUs ? 28 * OUNCE_GRAMS : 800,
});

interface FoodChoiceProps extends ChoiceProps {
  /** How much is planned now; undefined where nothing is. */
  readonly planned: TonightAmount | undefined;
}

export function FoodChoice({ wish, change, planned }: FoodChoiceProps) {
  const isUs = useReader().reader.measures === 'us';
  const [readyRecipes, setReadyRecipes] = useState<readonly ReadyRecipe[]>([]);
  useEffect(() => {
    void ask({ ask: 'ready-recipes' }).then(setReadyRecipes);
  }, []);
  const { what } = wish;
  const chosen = what === undefined ? undefined : 'readyRecipe' in what ? what.readyRecipe : OWN;
  return (
    <div>
      <Choice
        className="ready-recipes"
        legend="What goes in"
        value={chosen}
        options={[
          ...readyRecipes.map(({ id, name }) => ({ value: id, label: name })),
          { value: OWN, label: 'A dough of my own' },
        ]}
        onChoose={(value) =>
          change({ what: value === OWN ? usualOwn(isUs) : { readyRecipe: value } })
        }
      />
      <p className="paste-link">
        <Link href="/paste">Paste a recipe</Link> · <Link href="/dough">The dough alone</Link>
      </p>
      {what === undefined || 'readyRecipe' in what ? null : (
        <div className="own-dough">
          {'kind' in what ? (
            <OwnDough own={what} onChange={(own) => change({ what: own })} />
          ) : null}
          <RecipeFromCamp
            chosen={'camp' in what ? what : undefined}
            onChoose={(recipe) => change({ what: recipe ?? usualOwn(isUs) })}
          />
        </div>
      )}
      {what === undefined || 'kind' in what ? null : (
        <AmountStep what={what} planned={planned} onChange={(food) => change({ what: food })} />
      )}
    </div>
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
