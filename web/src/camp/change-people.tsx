// Mouths, serving times, and the place.

import {
  ClockField,
  CountField,
  clockShown,
  type DraftForm,
  PickField,
  QuantityField,
  TextField,
} from '../draft/DraftField.tsx';
import { readFileClock, writeFileClock } from '../draft/file-clock.ts';
import { More, NumberField, OptionalPick, saidAt } from '../draft/OptionalField.tsx';
import { valueAt } from '../draft/path.ts';
import { Field } from '../parts/Field.tsx';
import { readClock, writeClock } from '../parts/read-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { todayOf } from '../storage/new-id.ts';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { EventFields } from './change-event.tsx';
import { LateField } from './change-stores.tsx';
import { freshId, itemsAt, wordOf } from './draft-lists.ts';

interface GroupProps {
  readonly form: DraftForm;
}

const appetites = [
  { value: 'ordinary', label: 'ordinary appetite' },
  { value: 'child', label: 'a child’s appetite' },
  { value: 'hard-work', label: 'after hard work' },
  { value: 'over-65', label: 'over 65' },
];

export function MouthsGroup({ form }: GroupProps) {
  const groups = itemsAt(form.file, ['mouths']);
  const total = groups.reduce((sum, group) => sum + (Number(group.count) || 0), 0);
  const add = () => form.set(['mouths'], [...groups, { count: 1, appetite: 'ordinary' }]);
  return (
    <ChangeGroup title="Mouths" now={`${total}`}>
      {groups.map((group, index) => (
        <ChangeItem
          // biome-ignore lint/suspicious/noArrayIndexKey: a group has no other name than its place
          key={index}
          name={wordOf(group.who, `Group ${index + 1}`)}
          onRemove={groups.length > 1 ? () => form.set(['mouths', index], undefined) : undefined}
        >
          <div className="field-row">
            <CountField form={form} path={['mouths', index, 'count']} label="How many" />
            <PickField
              form={form}
              path={['mouths', index, 'appetite']}
              label="Appetite"
              options={appetites}
              usual="ordinary"
            />
          </div>
          <LateField form={form} path={['mouths', index]} />
        </ChangeItem>
      ))}
      <AddButton what="a group" onAdd={add} />
      <EventFields form={form} />
    </ChangeGroup>
  );
}

export function ServingGroup({ form }: GroupProps) {
  const { clock } = useReader().reader;
  const dishes = itemsAt(form.file, ['menu']);
  const times = [...new Set(dishes.map((dish) => clockShown(wordOf(dish.serve), clock)))];
  return (
    <ChangeGroup title="Serving time" now={times.join(', ')}>
      <WholeMeal form={form} />
      {dishes.map((dish, index) => (
        <ClockField
          key={wordOf(dish.id, String(index))}
          form={form}
          path={['menu', index, 'serve']}
          label={dishName(form, dish)}
        />
      ))}
      <OptionalPick
        form={form}
        path={['inHand']}
        label="Time in hand before it is served"
        options={timesInHand}
        unsaid="5 min, where a dish may wait"
      />
    </ChangeGroup>
  );
}

const timesInHand = [0, 10, 15, 20, 30].map((minutes) => ({
  value: `${minutes} min`,
  label: minutes === 0 ? 'none: to the minute' : `${minutes} min`,
}));

/** Moves every dish by the same stretch, so that the first one is served at the time typed. */
function WholeMeal({ form }: GroupProps) {
  const { clock } = useReader().reader;
  const dishes = itemsAt(form.file, ['menu']);
  const served = dishes.map((dish) => readFileClock(wordOf(dish.serve)));
  const known = served.filter((minutes) => minutes !== undefined);
  if (dishes.length < 2 || known.length < dishes.length) return null;
  const first = Math.min(...known);
  const move = (to: number) =>
    form.setAll(
      known.map((minutes, index) => [
        ['menu', index, 'serve'],
        writeFileClock(minutes + to - first),
      ]),
    );
  return (
    <Field
      label="The whole meal from"
      value={first}
      write={(minutes) => writeClock(minutes, clock)}
      read={readClock}
      onChange={move}
      takes={clock === '24' ? 'a time such as 18:30' : 'a time such as 6:30 pm'}
      hint="every dish moves by as much"
    />
  );
}

function dishName(form: DraftForm, dish: Readonly<Record<string, unknown>>): string {
  const recipe = itemsAt(form.file, ['recipes']).find((each) => each.id === dish.recipe);
  return wordOf(dish.name, wordOf(recipe?.name, wordOf(dish.id, 'A dish')));
}

const skills = [
  { value: 'new', label: 'new to it' },
  { value: 'steady', label: 'steady' },
  { value: 'camp-cook', label: 'a camp cook' },
];

export function HandsGroup({ form }: GroupProps) {
  const hands = itemsAt(form.file, ['hands']);
  const add = () => {
    const id = freshId(hands, 'hand');
    const { from = '08:00', to = '22:00' } = hands[0] ?? {};
    const name = `Hand ${hands.length + 1}`;
    form.set(['hands'], [...hands, { id, name, skill: 'steady', from, to }]);
  };
  return (
    <ChangeGroup title="Hands" now={`${hands.length}`}>
      {hands.map((hand, index) => (
        <ChangeItem
          key={wordOf(hand.id, String(index))}
          name={wordOf(hand.name, wordOf(hand.id))}
          onRemove={hands.length > 1 ? () => form.set(['hands', index], undefined) : undefined}
        >
          <TextField form={form} path={['hands', index, 'name']} label="Who" />
          <PickField
            form={form}
            path={['hands', index, 'skill']}
            label="Skill"
            options={skills}
            usual="steady"
          />
          <div className="field-row">
            <ClockField form={form} path={['hands', index, 'from']} label="Helps from" />
            <ClockField form={form} path={['hands', index, 'to']} label="until" />
          </div>
        </ChangeItem>
      ))}
      <AddButton what="a helper" onAdd={add} />
    </ChangeGroup>
  );
}

const grounds = ['soil', 'grass', 'gravel', 'sand', 'rock', 'snow', 'paving'].map((value) => ({
  value,
  label: value,
}));

const hearths = [
  { value: 'ground', label: 'the ground itself' },
  { value: 'fire-pan', label: 'a fire pan' },
  { value: 'fire-table', label: 'a fire table' },
];

const wetness = [
  { value: 'dry', label: 'dry' },
  { value: 'wet', label: 'wet' },
  { value: 'frozen', label: 'frozen' },
];

const restrictions = [
  { value: 'unknown', label: 'not asked yet' },
  { value: 'none', label: 'no restriction' },
  { value: 'coals-allowed-here', label: 'coals allowed here' },
  { value: 'stage-1', label: 'stage 1 restriction' },
  { value: 'stage-2', label: 'stage 2 restriction' },
];

/** A day that is past is taken, since a camp may be looked back at, but not in silence. */
function dateHint(form: DraftForm): string {
  const date = wordOf(valueAt(form.file, ['date']));
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(date);
  return isDay && date < todayOf(new Date()) ? 'this day is past' : 'such as 2026-09-12';
}

const placeMore = ['groundIs', 'latitude', 'longitude', 'utcOffset'].map((key) => ['place', key]);

/** ISO 8601, as clocks are set: whole hours, and the halves and quarters that are in use. */
const utcOffsets = [
  ...Array.from({ length: 12 }, (_, at) => `-${String(12 - at).padStart(2, '0')}:00`),
  ...Array.from({ length: 15 }, (_, at) => `+${String(at).padStart(2, '0')}:00`),
  ...['-09:30', '-03:30', '+03:30', '+04:30', '+05:30', '+05:45', '+06:30', '+09:30', '+10:30'],
].map((value) => ({ value, label: value }));

export function PlaceGroup({ form }: GroupProps) {
  return (
    <ChangeGroup title="Place and name" now={wordOf(valueAt(form.file, ['place', 'name']))}>
      <TextField form={form} path={['title']} label="What you call this camp" />
      <TextField form={form} path={['date']} label="Date" hint={dateHint(form)} />
      <TextField form={form} path={['place', 'name']} label="Place" />
      <QuantityField
        form={form}
        path={['place', 'elevation']}
        label="Height above sea level"
        kind="height"
      />
      <div className="field-row">
        <PickField
          form={form}
          path={['place', 'ground']}
          label="Ground"
          options={grounds}
          usual="soil"
        />
        <PickField
          form={form}
          path={['place', 'hearth']}
          label="Coals below lie on"
          options={hearths}
          usual="ground"
        />
      </div>
      <PickField
        form={form}
        path={['place', 'restriction']}
        label="Fire, says the keeper of the place"
        options={restrictions}
        usual="unknown"
      />
      <More of="the place" said={saidAt(form, placeMore)}>
        <div className="field-row">
          <NumberField
            form={form}
            path={['place', 'latitude']}
            label="Latitude"
            hint="degrees, south is below 0"
            isSigned
          />
          <NumberField
            form={form}
            path={['place', 'longitude']}
            label="Longitude"
            hint="degrees, west is below 0"
            isSigned
          />
        </div>
        <OptionalPick
          form={form}
          path={['place', 'utcOffset']}
          label="Your clock, less universal time"
          options={utcOffsets}
          unsaid="not said: no word on daylight"
        />
        <OptionalPick
          form={form}
          path={['place', 'groundIs']}
          label="The ground is"
          options={wetness}
          unsaid="as usual for it"
        />
      </More>
    </ChangeGroup>
  );
}
