// The cook's own foods, by the label on the packet. Ingredients mean them by their name.

import { type DraftForm, PickField, TextField, troubleAt } from '../draft/DraftField.tsx';
import { More, NumberField, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { type Path, pathText, valueAt } from '../draft/path.ts';
import { Field } from '../parts/Field.tsx';
import type { FoodWord } from '../worker/messages.ts';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { allergenNames } from './change-needs.tsx';
import { freshId, type Item, itemsAt, wordOf } from './draft-lists.ts';

interface FoodsProps {
  readonly form: DraftForm;
  /** What the labels that can be read leave in doubt. */
  readonly said: readonly FoodWord[];
}

export function FoodsGroup({ form, said }: FoodsProps) {
  const foods = itemsAt(form.file, ['foods']);
  const add = () => {
    const name = `My food ${foods.length + 1}`;
    const food = { id: freshId(foods, 'food'), name, part: 'flour', label: 'us' };
    form.setAll([[['foods'], [...foods, food]]], `${name} was added: now its label`);
  };
  return (
    <ChangeGroup title="Own foods" now={foods.length === 0 ? 'none' : `${foods.length}`}>
      {foods.map((food, index) => (
        <ChangeItem
          key={wordOf(food.id, String(index))}
          name={wordOf(food.name, wordOf(food.id))}
          onRemove={() => takeOut(form, index)}
        >
          <Label form={form} food={food} path={['foods', index]} />
          <ul className="food-words" aria-live="polite">
            {said
              .filter(({ name }) => name === food.name)
              .map(({ text }) => (
                <li key={text}>{text}</li>
              ))}
          </ul>
        </ChangeItem>
      ))}
      <AddButton what="a food of your own" onAdd={add} />
    </ChangeGroup>
  );
}

/** The last one takes the whole list along: a camp without own foods has none. */
function takeOut(form: DraftForm, index: number): void {
  const foods = itemsAt(form.file, ['foods']);
  const name = wordOf(foods[index]?.name, 'A food');
  const place = foods.length === 1 ? ['foods'] : ['foods', index];
  form.setAll([[place, undefined]], `${name} was taken out`);
}

const parts = [
  ['flour', 'flour'],
  ['meal', 'coarse meal'],
  ['liquid', 'liquid'],
  ['fat', 'fat'],
  ['sugar', 'sugar'],
  ['dry-milk', 'dry milk'],
  ['powder', 'baking powder'],
  ['meat', 'meat'],
  ['poultry', 'poultry'],
  ['bean', 'beans'],
  ['grain', 'grain'],
  ['vegetable', 'vegetable'],
  ['fruit', 'fruit'],
  ['nut', 'nuts or seeds'],
  ['cheese', 'cheese'],
  ['spice', 'spice'],
  ['other', 'something else'],
].map(([value = '', label = '']) => ({ value, label }));

const manners = [
  { value: 'us', label: 'United States: fibre in the carbohydrate' },
  { value: 'eu', label: 'European: fibre apart' },
];

interface LabelProps {
  readonly form: DraftForm;
  readonly food: Item;
  readonly path: Path;
}

function Label({ form, food, path }: LabelProps) {
  const at = (key: string) => [...path, key];
  const impossible = form.troubles.find((each) => each.path === pathText(path));
  return (
    <>
      <TextField form={form} path={at('name')} label="Its name, as your recipes call it" />
      <PickField form={form} path={at('part')} label="It is" options={parts} usual="other" />
      <PickField form={form} path={at('label')} label="Its label" options={manners} usual="us" />
      <OptionalQuantity
        form={form}
        path={at('of')}
        label="The numbers are of"
        kind="label-mass"
        hint="100 g if left empty, or one serving"
      />
      {impossible === undefined ? null : (
        <p className="field-trouble" role="status">
          Look at the label again: found {impossible.found}, wanted {impossible.wanted}.
        </p>
      )}
      <Numbers form={form} food={food} path={path} />
      <MoreOfLabel form={form} food={food} path={path} />
    </>
  );
}

function Numbers({ form, food, path }: LabelProps) {
  const number = (key: string, label: string) => (
    <NumberField key={key} form={form} path={[...path, key]} label={label} />
  );
  return (
    <div className="field-row">
      {number('kilocalories', 'Energy, kcal')}
      {number('fat', 'Fat, g')}
      {number('carbohydrate', 'Carbohydrate, g')}
      {number('sugar', 'of it sugar, g')}
      {number('fibre', 'Fibre, g')}
      {number('protein', 'Protein, g')}
      {food.label === 'eu' || food.salt !== undefined ? number('salt', 'Salt, g') : null}
      {food.label !== 'eu' || food.sodiumMilligrams !== undefined
        ? number('sodiumMilligrams', 'Sodium, mg')
        : null}
    </div>
  );
}

const measures = [
  ['cup', 'A cup of it weighs'],
  ['tbsp', 'A tablespoon of it'],
  ['tsp', 'A teaspoon of it'],
  ['each', 'One piece of it'],
] as const;

function MoreOfLabel({ form, food, path }: LabelProps) {
  const keys = ['water', 'measures', 'contains', 'mayContain', 'labelSaysFree'];
  const said = saidAt(
    form,
    keys.map((key) => [...path, key]),
  );
  const list = (key: string, label: string, hint: string) => (
    <AllergenList form={form} path={[...path, key]} label={label} hint={hint} />
  );
  return (
    <More of={wordOf(food.name, 'this food')} said={said}>
      {list(
        'contains',
        'The label says: contains',
        'such as wheat, milk; none if you have read it; empty: all are in doubt',
      )}
      {list('mayContain', 'The label says: may contain', 'such as egg, tree nut')}
      {list('labelSaysFree', 'The label says: free of', 'such as gluten')}
      <div className="field-row">
        {measures.map(([measure, label]) => (
          <OptionalQuantity
            key={measure}
            form={withoutEmptyGroup(form, [...path, 'measures'])}
            path={[...path, 'measures', measure]}
            label={label}
            kind="label-mass"
          />
        ))}
        <NumberField form={form} path={[...path, 'water']} label="Water, g" hint="else the rest" />
      </div>
    </More>
  );
}

/** A group with its last place emptied goes out of the file. */
function withoutEmptyGroup(form: DraftForm, group: Path): DraftForm {
  const set: DraftForm['set'] = (place, value) => {
    const held = Object.keys((valueAt(form.file, group) as object | undefined) ?? {});
    const isLast = value === undefined && held.every((key) => key === place.at(-1));
    form.set(isLast ? group : place, value);
  };
  return { ...form, set };
}

interface AllergenListProps {
  readonly form: DraftForm;
  readonly path: Path;
  readonly label: string;
  readonly hint: string;
}

/** Words between commas; `none` is a list without any, and empty is no word at all. */
function AllergenList({ form, path, label, hint }: AllergenListProps) {
  const value = valueAt(form.file, path);
  const named: readonly string[] | undefined = Array.isArray(value) ? value.map(String) : undefined;
  return (
    <Field
      label={label}
      value={named}
      write={(words) => (words?.length === 0 ? 'none' : (words ?? []).map(spoken).join(', '))}
      read={(text) => ({ ok: true, value: allergensIn(text) })}
      onChange={(words) => form.set(path, words)}
      trouble={troubleAt(form, path)}
      hint={hint}
    />
  );
}

const spoken = (word: string) => word.replaceAll('-', ' ');

function allergensIn(text: string): readonly string[] | undefined {
  const words = text
    .split(',')
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== '');
  if (words.length === 0) return undefined;
  return words.join() === 'none' ? [] : words.map(allergenNamed);
}

/** `tree nuts` is written `tree-nut`; what is none of them stays, for the file's check to refuse. */
function allergenNamed(word: string): string {
  const name = word.replace(/\s+/g, '-');
  return [name, name.replace(/s$/, '')].find((each) => allergenNames.includes(each)) ?? word;
}
