// One thing that happened: what, to which, by how much.

import { useState } from 'preact/hooks';
import type { Slip } from '#engine';
import { Pick } from '../fire/Pick.tsx';
import { Field } from '../parts/Field.tsx';
import { readWhole } from '../parts/read-text.ts';
import type { Choice, ReplanChoices } from '../worker/replan-messages.ts';

interface SlipFormProps {
  readonly choices: ReplanChoices;
  readonly onSlip: (slip: Slip) => void;
}

const KINDS: readonly (readonly [Slip['kind'], string])[] = [
  ['behind', 'We are behind'],
  ['takes-longer', 'A rise or bake takes longer'],
  ['chimney-failed', 'A chimney did not catch'],
  ['guests-late', 'They eat later'],
  ['oven-dropped', 'An oven is of no more use'],
  ['hand-gone', 'Somebody has left'],
];

const ALL = { id: '', label: 'everything' };
const LONGEST = { lowest: 1, highest: 240 };

export function SlipForm({ choices, onSlip }: SlipFormProps) {
  const [kind, setKind] = useState<Slip['kind']>('behind');
  const [minutes, setMinutes] = useState(20);
  const [which, setWhich] = useState('');
  const list = listFor(kind, choices);
  const id = list.some((each) => each.id === which) ? which : (list[0]?.id ?? '');
  const hasMinutes = kind === 'behind' || kind === 'takes-longer' || kind === 'guests-late';
  return (
    <fieldset className="choice is-form">
      <legend>What has happened</legend>
      <Pick label="What" value={kind} words={KINDS} onChoose={setKind} />
      {list.length === 0 ? (
        <p>There is none at this hour.</p>
      ) : (
        <Pick
          label="Which"
          value={id}
          words={list.map(({ id: each, label }) => [each, label] as const)}
          onChoose={setWhich}
        />
      )}
      {hasMinutes ? (
        <Field
          label="By"
          unit="min"
          inputMode="numeric"
          value={minutes}
          write={String}
          read={(text) => readWhole(text, LONGEST)}
          onChange={setMinutes}
          takes="whole minutes from 1 to 240"
        />
      ) : null}
      <button
        type="button"
        className="button is-main"
        disabled={list.length === 0}
        onClick={() => onSlip(slipOf(kind, id, minutes))}
      >
        Add it
      </button>
    </fieldset>
  );
}

function listFor(kind: Slip['kind'], choices: ReplanChoices): readonly Choice[] {
  switch (kind) {
    case 'behind':
    case 'guests-late':
      return [ALL, ...choices.dishes];
    case 'takes-longer':
      return choices.running;
    case 'chimney-failed':
      return choices.lightings;
    case 'oven-dropped':
      return choices.ovens;
    case 'hand-gone':
      return choices.hands;
  }
}

function slipOf(kind: Slip['kind'], id: string, minutes: number): Slip {
  switch (kind) {
    case 'behind':
    case 'guests-late':
      return { kind, minutes, ...(id === '' ? {} : { dish: id }) };
    case 'takes-longer':
      return { kind, minutes, job: id };
    case 'chimney-failed':
      return { kind, lighting: id };
    case 'oven-dropped':
      return { kind, oven: id };
    case 'hand-gone':
      return { kind, hand: id };
  }
}
