// Weather, ovens and fuel.

import {
  ClockField,
  CountField,
  clockShown,
  type DraftForm,
  PickField,
  QuantityField,
  TextField,
} from '../draft/DraftField.tsx';
import { valueAt } from '../draft/path.ts';
import { shownText } from '../draft/quantity-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { freshId, itemsAt, wordOf } from './draft-lists.ts';

interface GroupProps {
  readonly form: DraftForm;
}

export function WeatherGroup({ form }: GroupProps) {
  const { measures, clock } = useReader().reader;
  const hours = itemsAt(form.file, ['weather']);
  const airs = hours.map((hour) => shownText(wordOf(hour.air), 'air', measures));
  const add = () => {
    const { at: _, ...last } = hours.at(-1) ?? { air: '16 °C', wind: '2 m/s' };
    form.set(['weather'], [...hours, { at: '18:00', ...last }]);
  };
  return (
    <ChangeGroup title="Weather" now={[...new Set([airs[0], airs.at(-1)])].join(' to ')}>
      {hours.map((hour, index) => (
        <ChangeItem
          // biome-ignore lint/suspicious/noArrayIndexKey: an hour may be half typed
          key={index}
          name={`From ${clockShown(wordOf(hour.at), clock)}`}
          onRemove={hours.length > 1 ? () => form.set(['weather', index], undefined) : undefined}
        >
          <div className="field-row">
            <ClockField form={form} path={['weather', index, 'at']} label="From" />
            <QuantityField form={form} path={['weather', index, 'air']} label="Air" kind="air" />
            <QuantityField form={form} path={['weather', index, 'wind']} label="Wind" kind="wind" />
            <TextField
              form={form}
              path={['weather', index, 'windFrom']}
              label="Wind from"
              hint="such as WSW"
            />
          </div>
        </ChangeItem>
      ))}
      <AddButton what="a time" onAdd={add} />
    </ChangeGroup>
  );
}

const sizes = [8, 10, 12, 14, 16].map((inches) => ({
  value: `${inches} in`,
  label: `${inches} inch (${Math.round(inches * 2.54)} cm)`,
}));

const depths = [
  { value: 'regular', label: 'regular' },
  { value: 'deep', label: 'deep' },
];

export function OvensGroup({ form }: GroupProps) {
  const ovens = itemsAt(form.file, ['ovens']);
  const count = ovens.reduce((sum, oven) => sum + (Number(oven.count ?? 1) || 0), 0);
  const add = () => {
    const id = freshId(ovens, 'oven');
    form.set(['ovens'], [...ovens, { id, name: `Oven ${ovens.length + 1}`, diameter: '12 in' }]);
  };
  return (
    <ChangeGroup title="Ovens" now={`${count}`}>
      {ovens.map((oven, index) => (
        <ChangeItem
          key={wordOf(oven.id, String(index))}
          name={wordOf(oven.name, wordOf(oven.id))}
          onRemove={() => form.set(['ovens', index], undefined)}
        >
          <TextField form={form} path={['ovens', index, 'name']} label="What you call it" />
          <OvenSize form={form} index={index} />
        </ChangeItem>
      ))}
      <AddButton what="an oven" onAdd={add} />
    </ChangeGroup>
  );
}

/** A new size takes back what was measured on the old one. */
function OvenSize({ form, index }: GroupProps & { readonly index: number }) {
  const measured = ['depth', 'capacity', 'weight', 'floorDiameter'];
  const withFreshMeasures: DraftForm = {
    ...form,
    set: (path, value) =>
      form.setAll([
        [path, value],
        ...measured
          .filter((key) => valueAt(form.file, ['ovens', index, key]) !== undefined)
          .map((key) => [['ovens', index, key], undefined] as const),
      ]),
  };
  return (
    <div className="field-row">
      <PickField
        form={withFreshMeasures}
        path={['ovens', index, 'diameter']}
        label="Size"
        options={sizes}
        usual="12 in"
      />
      <PickField
        form={withFreshMeasures}
        path={['ovens', index, 'style']}
        label="Depth"
        options={depths}
        usual="regular"
      />
    </div>
  );
}

const fuels = [
  { value: 'briquettes', label: 'charcoal briquettes' },
  { value: 'wood-coals', label: 'coals from a wood fire' },
];

export function FuelGroup({ form }: GroupProps) {
  const kind = wordOf(valueAt(form.file, ['fuel', 'kind']), 'briquettes');
  const withOneFuel: DraftForm = {
    ...form,
    set: (_, value) => form.set(['fuel'], { kind: value }),
  };
  return (
    <ChangeGroup title="Fuel" now={kind === 'briquettes' ? 'briquettes' : 'wood coals'}>
      <PickField
        form={withOneFuel}
        path={['fuel', 'kind']}
        label="You cook over"
        options={fuels}
        usual="briquettes"
      />
      {kind === 'briquettes' ? (
        <>
          <TextField
            form={form}
            path={['fuel', 'tenWeigh']}
            label="Ten briquettes weigh"
            hint="such as 250 g or 9 oz; leave as it is if you have no scale"
          />
          <TextField
            form={form}
            path={['fuel', 'onHand']}
            label="Charcoal on hand"
            hint="such as 8 kg or 18 lb"
          />
          <CountField form={form} path={['gear', 'chimneys']} label="Chimneys" />
        </>
      ) : (
        <TextField
          form={form}
          path={['fuel', 'lead']}
          label="From lighting the feeder fire to the first shovel"
          hint="such as 60 min"
        />
      )}
      <CountField form={form} path={['gear', 'windScreens']} label="Wind screens" />
    </ChangeGroup>
  );
}
