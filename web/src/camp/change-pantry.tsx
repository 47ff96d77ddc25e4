// What the cook knows of the stores: how the powder fizzes and how long its tin has been open.

import type { DraftForm } from '../draft/DraftField.tsx';
import { NumberField, OptionalPick } from '../draft/OptionalField.tsx';
import { valueAt } from '../draft/path.ts';
import { ChangeGroup } from './ChangeForms.tsx';

const fizzes = [
  { value: 'hard', label: 'hard' },
  { value: 'weak', label: 'weakly' },
  { value: 'none', label: 'not at all' },
] as const;

const FIZZ = ['pantry', 'powderFizz'];
const OPENED = ['pantry', 'powderOpenedMonths'];

export function PantryGroup({ form }: { readonly form: DraftForm }) {
  const fizz = fizzes.find(({ value }) => value === valueAt(form.file, FIZZ));
  return (
    <ChangeGroup
      title="Pantry"
      now={fizz === undefined ? 'powder not tried' : `powder fizzes ${fizz.label}`}
    >
      <OptionalPick
        form={form}
        path={FIZZ}
        label="Half a teaspoon of powder in hot water fizzes"
        options={fizzes}
        unsaid="not tried"
      />
      <NumberField
        form={form}
        path={OPENED}
        label="The tin of powder has been open"
        hint="in months; empty: not said"
      />
    </ChangeGroup>
  );
}
