// Who must not have what, and how strictly.

import { type DraftForm, PickField, TextField } from '../draft/DraftField.tsx';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { itemsAt, wordOf } from './draft-lists.ts';

export const allergenNames: readonly string[] = [
  'gluten',
  'wheat',
  'milk',
  'egg',
  'fish',
  'crustacean',
  'mollusc',
  'tree-nut',
  'peanut',
  'soy',
  'sesame',
  'celery',
  'mustard',
  'lupin',
  'sulphite',
];

const kinds = [...allergenNames, 'vegetarian', 'vegan'].map((value) => ({
  value,
  label: value.startsWith('veg') ? value : `no ${value.replace('-', ' ')}`,
}));

const strictnesses = [
  { value: 'strict', label: 'strict: its own oven and tools, made first' },
  { value: 'avoid', label: 'must avoid it' },
  { value: 'preference', label: 'would rather not' },
];

export function NeedsGroup({ form }: { readonly form: DraftForm }) {
  const needs = itemsAt(form.file, ['needs']);
  const add = () =>
    form.setAll(
      [[['needs'], [...needs, { who: 'A guest', kind: 'gluten', strictness: 'strict' }]]],
      'A need was added: gluten, strict, until you say',
    );
  return (
    <ChangeGroup title="Needs" now={needs.length === 0 ? 'none' : `${needs.length}`}>
      {needs.map((need, index) => (
        <ChangeItem
          // biome-ignore lint/suspicious/noArrayIndexKey: a need has no other name than its place
          key={index}
          name={wordOf(need.who, `Need ${index + 1}`)}
          onRemove={() => form.set(['needs', index], undefined)}
        >
          <TextField form={form} path={['needs', index, 'who']} label="Who" />
          <div className="field-row is-broad">
            <PickField
              form={form}
              path={['needs', index, 'kind']}
              label="Needs"
              options={kinds}
              usual="gluten"
            />
            <PickField
              form={form}
              path={['needs', index, 'strictness']}
              label="How strictly"
              options={strictnesses}
              usual="strict"
            />
          </div>
        </ChangeItem>
      ))}
      <AddButton what="a need" onAdd={add} />
    </ChangeGroup>
  );
}
