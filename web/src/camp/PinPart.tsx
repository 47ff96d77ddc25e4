// What the cook has decided about a dish: kept as it is by every plan, and judged in words.

import {
  ClockField,
  CountField,
  clockShown,
  type DraftForm,
  PickField,
  TextField,
} from '../draft/DraftField.tsx';
import { type Path, valueAt } from '../draft/path.ts';
import { NoticeLine } from '../parts/DocumentView.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import type { MealSheets, PinWord } from '../worker/messages.ts';
import { itemsAt, wordOf } from './draft-lists.ts';
import { useSheetPath } from './Sheets.tsx';

interface PinPartProps {
  readonly form: DraftForm;
  readonly sheets: MealSheets;
}

export function PinPart({ form, sheets }: PinPartProps) {
  const current = useSheetPath();
  const index = itemsAt(form.file, ['menu']).findIndex(({ id }) => current === `dish/${id}`);
  const card = sheets.dishCards.find(({ dish }) => current === `dish/${dish}`);
  if (index < 0 || card === undefined) return null;
  return <Pins key={current} form={form} at={['menu', index, 'pins']} said={card.pinned} />;
}

interface PinsProps {
  readonly form: DraftForm;
  readonly at: Path;
  readonly said: readonly PinWord[];
}

function Pins({ form, at, said }: PinsProps) {
  const words = usePinWords(form, at);
  return (
    <details className="pins change-group no-print">
      <summary>
        {words.length === 0 ? 'Pin something' : 'Pinned'}{' '}
        <small>{words.length === 0 ? 'the plan keeps to it' : words.join(', ')}</small>
      </summary>
      <div className="change-body">
        <p className="field-hint">
          Your word wins: every plan keeps to what stands here, and says what it costs. An empty box
          leaves it to the plan.
        </p>
        <PinFields form={unpinning(form)} at={at} />
        {said.map(({ level, text, code }) => (
          <NoticeLine key={text} level={level} text={text} code={code} />
        ))}
        {words.length === 0 ? null : (
          <div>
            <button
              type="button"
              className="button"
              onClick={() => form.setAll([[at, undefined]], 'The pins were taken off')}
            >
              Un-pin everything
            </button>
          </div>
        )}
      </div>
    </details>
  );
}

function PinFields({ form, at }: Pick<PinsProps, 'form' | 'at'>) {
  const isWood = valueAt(form.file, ['fuel', 'kind']) === 'wood-coals';
  return (
    <>
      <div className="field-row">
        {isWood ? null : (
          <>
            <CountField form={form} path={[...at, 'coalsAbove']} label="Coals above" />
            <CountField form={form} path={[...at, 'coalsBelow']} label="Coals below" />
          </>
        )}
        <ClockField form={form} path={[...at, 'coalsOn']} label="Coals go on at" />
        <TextField form={withMinutes(form)} path={[...at, 'bake']} label="Minutes in the oven" />
      </div>
      <div className="field-row is-broad">
        <PickField
          form={form}
          path={[...at, 'oven']}
          label="Oven"
          options={[{ value: '', label: 'as the plan finds' }, ...ovenOptions(form)]}
          usual=""
        />
        <PickField
          form={form}
          path={[...at, 'hand']}
          label="Who does the oven work"
          options={[{ value: '', label: 'whoever is free' }, ...handOptions(form)]}
          usual=""
        />
        <StartPick form={form} path={[...at, 'preheat']} />
      </div>
    </>
  );
}

const starts = [
  { value: '', label: 'as the recipe wants' },
  { value: 'true', label: 'hot before it goes in' },
  { value: 'false', label: 'cold' },
];

/** The file has yes or no, the box has words. */
function StartPick({ form, path }: { readonly form: DraftForm; readonly path: Path }) {
  const now = valueAt(form.file, path);
  const inWords: DraftForm = {
    ...form,
    set: (place, value) => form.set(place, value === '' ? undefined : value === 'true'),
  };
  return (
    <PickField
      form={inWords}
      path={path}
      label="The oven at the start"
      options={starts}
      usual={typeof now === 'boolean' ? String(now) : ''}
    />
  );
}

/** An emptied box takes its pin off; the last one takes the whole group with it. */
const unpinning = (form: DraftForm): DraftForm => ({
  ...form,
  set: (path, value) => {
    const isEmpty = typeof value === 'string' && value.trim() === '';
    const group = path.slice(0, -1);
    const others = Object.keys((valueAt(form.file, group) ?? {}) as object).filter(
      (key) => key !== path.at(-1),
    );
    if (!isEmpty && value !== undefined) form.set(path, value);
    else form.set(others.length === 0 ? group : path, undefined);
  },
});

/** A bare number is minutes. */
const withMinutes = (form: DraftForm): DraftForm => ({
  ...form,
  set: (path, value) => {
    const isBare = typeof value === 'string' && /^\s*\d+\s*$/.test(value);
    form.set(path, isBare ? `${value.trim()} min` : value);
  },
});

/** An oven that stands for several is numbered, as the plan knows them. */
const ovenOptions = (form: DraftForm) =>
  itemsAt(form.file, ['ovens']).flatMap(({ id, name, count }) => {
    const label = wordOf(name, wordOf(id));
    const several = Number(count ?? 1) || 1;
    if (several === 1) return [{ value: wordOf(id), label }];
    return Array.from({ length: Math.min(60, several) }, (_, index) => ({
      value: `${wordOf(id)}-${index + 1}`,
      label: `${label} ${index + 1}`,
    }));
  });

const handOptions = (form: DraftForm) =>
  itemsAt(form.file, ['hands']).map(({ id, name }) => ({
    value: wordOf(id),
    label: wordOf(name, wordOf(id)),
  }));

function usePinWords(form: DraftForm, at: Path): readonly string[] {
  const { clock } = useReader().reader;
  const pin = (key: string) => wordOf(valueAt(form.file, [...at, key]));
  const nameOf = (options: readonly { readonly value: string; readonly label: string }[]) => {
    return (id: string) => options.find(({ value }) => value === id)?.label ?? id;
  };
  const words: readonly (readonly [string, (text: string) => string])[] = [
    ['coalsAbove', (count) => `${count} above`],
    ['coalsBelow', (count) => `${count} below`],
    ['coalsOn', (time) => `coals on at ${clockShown(time, clock)}`],
    ['bake', (text) => text],
    ['oven', nameOf(ovenOptions(form))],
    ['hand', nameOf(handOptions(form))],
  ];
  const start = valueAt(form.file, [...at, 'preheat']);
  return [
    ...words.flatMap(([key, say]) => (pin(key) === '' ? [] : [say(pin(key))])),
    ...(typeof start === 'boolean' ? [start ? 'hot at the start' : 'cold at the start'] : []),
  ];
}
