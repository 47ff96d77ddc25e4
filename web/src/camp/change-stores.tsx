// What the cook knows of buying, packing and carrying: packs and prices, the larder, who carries what,
// coolers. All of it may be left out.

import type { ComponentType } from 'preact';
import { ClockField, type DraftForm, PickField, TextField } from '../draft/DraftField.tsx';
import { More, NumberField, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { type Path, valueAt } from '../draft/path.ts';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { itemsAt, wordOf } from './draft-lists.ts';

interface GroupProps {
  readonly form: DraftForm;
}

interface ItemProps extends GroupProps {
  readonly path: Path;
}

const FOODS = ['stores', 'foods'];
const CARRIERS = ['stores', 'carriers'];
const COOLERS = ['stores', 'coolers'];

export function StoresGroup({ form }: GroupProps) {
  const [foods, carriers, coolers] = [FOODS, CARRIERS, COOLERS].map((path) =>
    itemsAt(form.file, path),
  );
  const said = [
    [foods?.length ?? 0, 'foods'],
    [carriers?.length ?? 0, 'carriers'],
    [coolers?.length ?? 0, 'coolers'],
  ].filter(([count]) => count !== 0);
  return (
    <ChangeGroup
      title="Stores"
      now={said.length === 0 ? 'nothing said' : said.map((each) => each.join(' ')).join(', ')}
    >
      <List form={form} path={FOODS} what="a food" first={{ food: 'bread flour' }} Item={Food} />
      <List
        form={form}
        path={CARRIERS}
        what="a carrier"
        first={{ kind: 'person' }}
        Item={Carrier}
      />
      <List
        form={form}
        path={COOLERS}
        what="a cooler"
        first={{ volume: '36 qt' }}
        Item={CoolerItem}
      />
      <AllStores form={form} />
    </ChangeGroup>
  );
}

interface ListProps extends ItemProps {
  readonly what: string;
  /** What a new one holds. */
  readonly first: Readonly<Record<string, unknown>>;
  readonly Item: ComponentType<ItemProps>;
}

function List({ form, path, what, first, Item }: ListProps) {
  const items = itemsAt(form.file, path);
  return (
    <>
      {items.map((item, index) => (
        <ChangeItem
          // biome-ignore lint/suspicious/noArrayIndexKey: it has no other name than its place
          key={index}
          name={wordOf(item.food, wordOf(item.name, wordOf(item.kind, `Cooler ${index + 1}`)))}
          onRemove={() => form.set([...path, index], undefined)}
        >
          <Item form={form} path={[...path, index]} />
        </ChangeItem>
      ))}
      <AddButton what={what} onAdd={() => form.set(path, [...items, first])} />
    </>
  );
}

function Food({ form, path }: ItemProps) {
  const at = (key: string) => [...path, key];
  const packs = itemsAt(form.file, at('packs'));
  return (
    <>
      <TextField form={form} path={at('food')} label="As on the shopping list" />
      <OptionalQuantity form={form} path={at('have')} label="In the larder" kind="charcoal" />
      {packs.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a pack has no other name than its place
        <div className="field-row" key={index}>
          <OptionalQuantity
            form={form}
            path={[...at('packs'), index, 'size']}
            label={`Pack ${index + 1}`}
            kind="charcoal"
          />
          <NumberField form={form} path={[...at('packs'), index, 'price']} label="Its price" />
        </div>
      ))}
      <AddButton what="a pack" onAdd={() => form.set(at('packs'), [...packs, { size: '1 kg' }])} />
      <More
        of={wordOf(valueAt(form.file, at('food')))}
        said={saidAt(form, [at('shop'), at('usable')])}
      >
        <OptionalText form={form} path={at('shop')} label="Shop" />
        <OptionalQuantity
          form={form}
          path={at('usable')}
          label="Usable of what is bought"
          kind="share"
          hint="once peeled and trimmed"
        />
      </More>
    </>
  );
}

const kinds = ['person', 'mule', 'boat', 'car'].map((value) => ({ value, label: value }));

function Carrier({ form, path }: ItemProps) {
  const at = (key: string) => [...path, key];
  return (
    <>
      <div className="field-row">
        <PickField form={form} path={at('kind')} label="Carrier" options={kinds} usual="person" />
        <NumberField form={form} path={at('count')} label="How many" hint="empty: one" />
      </div>
      <OptionalQuantity
        form={form}
        path={at('limit')}
        label="One of them carries"
        kind="charcoal"
        hint="empty: what is usual"
      />
    </>
  );
}

function CoolerItem({ form, path }: ItemProps) {
  const at = (key: string) => [...path, key];
  return (
    <>
      <OptionalText form={form} path={at('name')} label="What you call it" />
      <OptionalText form={form} path={at('volume')} label="Room inside" hint="36 qt or 34 l" />
      <OptionalQuantity
        form={form}
        path={at('wall')}
        label="Wall"
        kind="small-length"
        hint="empty: 3 cm"
      />
      <OptionalQuantity form={form} path={at('ice')} label="Ice that goes in" kind="charcoal" />
      <NumberField form={form} path={at('openings')} label="Opened a day" hint="empty: ten times" />
    </>
  );
}

/** Emptied, it takes its place out of the file. */
function OptionalText({
  form,
  path,
  label,
  hint,
}: ItemProps & { readonly label: string; readonly hint?: string }) {
  const orNothing: DraftForm = {
    ...form,
    set: (place, value) => form.set(place, String(value).trim() === '' ? undefined : value),
  };
  return (
    <TextField
      form={orNothing}
      path={path}
      label={label}
      {...(hint === undefined ? {} : { hint })}
    />
  );
}

/** What holds for all of them. */
function AllStores({ form }: GroupProps) {
  const packed = ['stores', 'packedAt'];
  return (
    <More of="stores" said={saidAt(form, [['stores', 'money'], packed])}>
      <OptionalText form={form} path={['stores', 'money']} label="Money" hint="€ or USD" />
      {valueAt(form.file, packed) === undefined ? (
        <AddButton what="when boxes are closed" onAdd={() => form.set(packed, '-1 20:00')} />
      ) : (
        <ClockField
          form={form}
          path={packed}
          label="Boxes are closed"
          hint="-1 20:00: the evening before"
        />
      )}
    </More>
  );
}

/** Who comes late, beside a group of mouths. */
export function LateField({ form, path }: ItemProps) {
  return (
    <OptionalText
      form={form}
      path={[...path, 'late']}
      label="Comes late by"
      hint="45 min; empty: in time"
    />
  );
}
