// Whom the camp feeds, and what its wash line has: the public is asked for more than friends.

import type { DraftForm } from '../draft/DraftField.tsx';
import { More, OptionalPick, saidAt } from '../draft/OptionalField.tsx';
import { type Path, pathText, valueAt } from '../draft/path.ts';

const events = [
  { value: 'home', label: 'friends, family, a crew' },
  { value: 'public', label: 'the public: a health office looks' },
];

/** Labels that are sold; another stands in the file. */
const labels = ['5.25 %', '6 %', '7.5 %', '8.25 %'].map((value) => ({ value, label: value }));

const HAND_WASH: Path = ['gear', 'handWash'];
const places: readonly Path[] = [['event'], HAND_WASH, ['gear', 'bleach']];

export function EventFields({ form }: { readonly form: DraftForm }) {
  return (
    <More of="the event and the wash line" said={saidAt(form, places)}>
      <OptionalPick
        form={form}
        path={['event']}
        label="Who is fed"
        options={events}
        unsaid="not said: as for friends"
      />
      <HandWashField form={form} />
      <OptionalPick
        form={form}
        path={['gear', 'bleach']}
        label="Bleach, by its label"
        options={labels}
        unsaid="not read: no dose is chosen"
      />
    </More>
  );
}

function HandWashField({ form }: { readonly form: DraftForm }) {
  const said = valueAt(form.file, HAND_WASH);
  const id = pathText(HAND_WASH);
  const words = { yes: true, no: false } as const;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Hand-wash line: open tap, soap, paper, bucket
      </label>
      <select
        id={id}
        value={said === true ? 'yes' : said === false ? 'no' : ''}
        onChange={(event) => {
          const word = event.currentTarget.value as keyof typeof words | '';
          form.set(HAND_WASH, word === '' ? undefined : words[word]);
        }}
      >
        <option value="">not said</option>
        <option value="yes">stands ready</option>
        <option value="no">none</option>
      </select>
    </div>
  );
}
