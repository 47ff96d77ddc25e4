// Ovens and fuel.

import {
  CountField,
  type DraftForm,
  PickField,
  QuantityField,
  TextField,
} from '../draft/DraftField.tsx';
import { More, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { valueAt } from '../draft/path.ts';
import { baseOf, shownText, unitSign } from '../draft/quantity-text.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { freshId, itemsAt, wordOf } from './draft-lists.ts';

interface GroupProps {
  readonly form: DraftForm;
}

const inchesMade = [8, 10, 12, 14, 16];
const INCH_METRES = 0.0254;
/** A size that was computed or measured this near to a made one is that one. */
const NEAR_INCHES = 0.1;

const sizesFor = (isUs: boolean) =>
  inchesMade.map((inches) => ({
    value: `${inches} in`,
    label: isUs ? `${inches} inch` : `${inches} inch (${Math.round(inches * 2.54)} cm)`,
  }));

/** `0.3048 m` is the twelve; what is made in no such size stays as it is written. */
function madeSize(text: string): string {
  const inches = (baseOf(text) ?? Number.NaN) / INCH_METRES;
  const made = inchesMade.find((each) => Math.abs(each - inches) < NEAR_INCHES);
  return made === undefined ? text : `${made} in`;
}

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
          <OvenMore form={form} index={index} name={wordOf(oven.name, wordOf(oven.id))} />
        </ChangeItem>
      ))}
      <AddButton what="an oven" onAdd={add} />
    </ChangeGroup>
  );
}

/** A new size takes back what was measured on the old one. */
function OvenSize({ form, index }: GroupProps & { readonly index: number }) {
  const { measures } = useReader().reader;
  const measured = ['depth', 'capacity', 'weight', 'floorDiameter', 'lidWeight', 'lidDiameter'];
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
        options={sizesFor(measures === 'us')}
        usual="12 in"
        option={madeSize}
        labelOf={(size) => shownText(size, 'oven-size', measures)}
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

interface OvenMoreProps extends GroupProps {
  readonly index: number;
  readonly name: string;
}

function OvenMore({ form, index, name }: OvenMoreProps) {
  const at = (key: string) => ['ovens', index, key];
  const said = saidAt(form, ['riser', 'lidWeight', 'lidDiameter'].map(at));
  return (
    <More of={name} said={said}>
      <OptionalQuantity
        form={form}
        path={at('riser')}
        label="Riser under it"
        kind="small-length"
        hint="so much higher than on its legs"
      />
      <div className="field-row">
        <OptionalQuantity
          form={form}
          path={at('lidWeight')}
          label="The lid weighs"
          kind="charcoal"
        />
        <OptionalQuantity
          form={form}
          path={at('lidDiameter')}
          label="Across the lid"
          kind="small-length"
        />
      </div>
    </More>
  );
}

const fuels = [
  { value: 'briquettes', label: 'charcoal briquettes' },
  { value: 'wood-coals', label: 'coals from a wood fire' },
];

export function FuelGroup({ form }: GroupProps) {
  const { measures } = useReader().reader;
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
          <QuantityField
            form={form}
            path={['fuel', 'tenWeigh']}
            label="Ten briquettes weigh"
            kind="ten"
            hint={`in ${unitSign('ten', measures)}; leave it as it is if you have no scale`}
          />
          <QuantityField
            form={form}
            path={['fuel', 'onHand']}
            label="Charcoal on hand"
            kind="charcoal"
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
