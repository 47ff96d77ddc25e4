// How a load lies in its oven: of one dish, or of a recipe wherever it is cooked.

import { type DraftForm, troubleAt } from '../draft/DraftField.tsx';
import { OptionalPick, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { type Path, pathText, valueAt } from '../draft/path.ts';

interface InOvenProps {
  readonly form: DraftForm;
  /** Of the dish or the recipe. */
  readonly path: Path;
  /** What holds where nothing is said. */
  readonly unsaid: string;
}

const rests = [
  { value: 'iron', label: 'the greased floor' },
  { value: 'paper', label: 'baking paper' },
  { value: 'rack', label: 'a rack' },
  { value: 'tin', label: 'its own tin, on a rack' },
  { value: 'meal', label: 'coarse meal' },
];
const lids = [
  { value: 'hot', label: 'hot: heated by itself first' },
  { value: 'cold', label: 'cold' },
];
const starts = [
  { value: 'preheated', label: 'hot' },
  { value: 'cold', label: 'cold' },
];
const closeness = [
  { value: 'touching', label: 'touching' },
  { value: 'apart', label: 'apart' },
];

const keys = ['on', 'lid', 'oven', 'pieces', 'tin'] as const;

export const inOvenSaid = (form: DraftForm, path: Path) =>
  saidAt(
    form,
    keys.map((key) => [...path, 'inOven', key]),
  );

export function InOvenFields({ form, path, unsaid }: InOvenProps) {
  const at = (key: (typeof keys)[number]) => [...path, 'inOven', key];
  const isInTin =
    valueAt(form.file, at('on')) === 'tin' || valueAt(form.file, at('tin')) !== undefined;
  const common = { form, unsaid };
  return (
    <>
      <OptionalPick {...common} path={at('on')} label="It rests on" options={rests} />
      {isInTin ? <TinFields form={form} path={at('tin')} /> : null}
      <div className="field-row is-broad">
        <OptionalPick {...common} path={at('lid')} label="The lid" options={lids} />
        <OptionalPick {...common} path={at('oven')} label="Into an oven" options={starts} />
        <OptionalPick {...common} path={at('pieces')} label="Its pieces" options={closeness} />
      </div>
    </>
  );
}

const sides = [
  ['length', 'Tin, length inside'],
  ['width', 'Tin, width inside'],
  ['height', 'Tin, height'],
] as const;

/** A tin is its three measures, so that the last one emptied takes the tin out. */
function TinFields({ form, path }: Pick<InOvenProps, 'form' | 'path'>) {
  const withoutEmptyTin: DraftForm = {
    ...form,
    set: (place, value) => {
      const others = sides.filter(([side]) => side !== place.at(-1));
      const isLast =
        value === undefined &&
        saidAt(
          form,
          others.map(([side]) => [...path, side]),
        ) === 0;
      form.set(isLast ? path : place, value);
    },
  };
  return (
    <>
      <div className="field-row">
        {sides.map(([side, label]) => (
          <OptionalQuantity
            key={side}
            form={withoutEmptyTin}
            path={[...path, side]}
            label={label}
            kind="small-length"
          />
        ))}
      </div>
      <TinShape form={form} path={[...path, 'round']} />
    </>
  );
}

/** Only beside measures: a shape alone is no tin. */
function TinShape({ form, path }: Pick<InOvenProps, 'form' | 'path'>) {
  const id = pathText(path);
  if (valueAt(form.file, path.slice(0, -1)) === undefined) return null;
  const trouble = troubleAt(form, path);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Tin, its shape
      </label>
      <select
        id={id}
        value={valueAt(form.file, path) === true ? 'round' : 'oblong'}
        onChange={(event) =>
          form.set(path, event.currentTarget.value === 'round' ? true : undefined)
        }
      >
        <option value="oblong">oblong</option>
        <option value="round">round</option>
      </select>
      {trouble === undefined ? null : <span className="field-trouble">{trouble}</span>}
    </div>
  );
}
