// The weather: one plain block for the whole time, and the hours under a fold.

import { useRef } from 'preact/hooks';
import { usualWeather } from '#engine';
import {
  ClockField,
  clockShown,
  type DraftForm,
  QuantityField,
  TextField,
  troubleAt,
} from '../draft/DraftField.tsx';
import { readFileClock } from '../draft/file-clock.ts';
import { More, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { withEdits } from '../draft/path.ts';
import { shownText, type TextKind, unitHint, withUnit } from '../draft/quantity-text.ts';
import { isSteady, plainEdits, type Told } from '../draft/weather-edits.ts';
import { Field } from '../parts/Field.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import { AddButton, ChangeGroup, ChangeItem } from './ChangeForms.tsx';
import { type Item, itemsAt, wordOf } from './draft-lists.ts';

interface GroupProps {
  readonly form: DraftForm;
}

export function WeatherGroup({ form }: GroupProps) {
  const { measures } = useReader().reader;
  const hours = itemsAt(form.file, ['weather']);
  const [air, wind] = (['air', 'wind'] as const).map((key) => reachOf(hours, key, measures));
  return (
    <ChangeGroup title="Weather" now={[air, wind].filter((word) => word !== '').join(' · ')}>
      {hours.length === 0 ? null : <PlainWeather form={form} hours={hours} />}
      <details className="by-hour">
        <summary>By the hour</summary>
        <div className="change-body">
          <Hours form={form} hours={hours} />
        </div>
      </details>
    </ChangeGroup>
  );
}

/** `64 °F to 48 °F`, from the first hour to the last. */
function reachOf(hours: readonly Item[], key: 'air' | 'wind', measures: 'us' | 'metric'): string {
  const ends = [hours[0], hours.at(-1)].map((hour) =>
    shownText(wordOf(hour?.[key]), key, measures),
  );
  return [...new Set(ends)].join(' to ');
}

interface HoursProps extends GroupProps {
  readonly hours: readonly Item[];
}

/** What stands for the whole time is the weather at the first serving. */
function PlainWeather({ form, hours }: HoursProps) {
  const { clock, measures } = useReader().reader;
  const at = mealHour(form, hours);
  const when = clockShown(wordOf(hours[at]?.at), clock);
  const rest = (key: Told) =>
    isSteady(hours, key) ? undefined : `at ${when}; every hour moves by as much`;
  const set = (key: Told, hint: string) =>
    isSteady(hours, key) ? hint : `at ${when}; this sets it for every hour`;
  const common = { form, hours, at };
  return (
    <>
      <div className="field-row">
        <PlainField {...common} told="air" label="Air" hint={rest('air')} />
        <PlainField {...common} told="wind" label="Wind" hint={rest('wind')} />
        <PlainField
          {...common}
          told="windFrom"
          label="Wind from"
          hint={set('windFrom', 'such as WSW or north')}
        />
      </div>
      <More
        of="the weather"
        said={saidAt(
          form,
          ['rain', 'sun'].map((key) => ['weather', at, key]),
        )}
      >
        <PlainField
          {...common}
          told="rain"
          label="Rain in an hour"
          hint={set('rain', `${unitHint('rain', measures)}; empty: none`)}
        />
        <PlainField {...common} told="sun" label="Sun on the ovens" hint={set('sun', SUN_HINT)} />
      </More>
    </>
  );
}

const SUN_HINT = 'in % of a high, clear sun; empty: none';

/** The last row at or before the first serving; the first one where no time can be read. */
function mealHour(form: DraftForm, hours: readonly Item[]): number {
  const served = itemsAt(form.file, ['menu']).map((dish) => readFileClock(wordOf(dish.serve)));
  const first = Math.min(...served.filter((minutes) => minutes !== undefined));
  const isBefore = (hour: Item) => (readFileClock(wordOf(hour.at)) ?? Number.NaN) <= first;
  return Math.max(0, hours.findLastIndex(isBefore));
}

interface PlainFieldProps extends HoursProps {
  readonly told: Told;
  readonly at: number;
  readonly label: string;
  readonly hint: string | undefined;
}

const kinds: Readonly<Record<Told, TextKind | undefined>> = {
  air: 'air',
  wind: 'wind',
  windFrom: undefined,
  rain: 'rain',
  sun: 'share',
};

function PlainField({ form, hours, told, at, label, hint }: PlainFieldProps) {
  const { measures } = useReader().reader;
  const kind = kinds[told];
  const change = usePlainChange(form, hours, { told, at });
  return (
    <Field
      label={label}
      value={wordOf(hours[at]?.[told])}
      write={(value) => (kind === undefined ? value : shownText(value, kind, measures))}
      read={(text) => ({
        ok: true,
        value: kind === undefined ? text : withUnit(text, kind, measures),
      })}
      onChange={change}
      trouble={troubleAt(form, ['weather', at, told])}
      hint={hint ?? (kind && unitHint(kind, measures))}
    />
  );
}

/**
 * Every keystroke moves the hours as they were before the first of them: on the way from 8 to 12
 * a 1 is typed, and the shape of the day must outlast it.
 */
function usePlainChange(
  form: DraftForm,
  hours: readonly Item[],
  { told, at }: { readonly told: Told; readonly at: number },
) {
  const last = useRef<{ readonly base: readonly Item[]; readonly written: string }>(undefined);
  return (text: string) => {
    const isOwn = last.current?.written === JSON.stringify(hours);
    const base = (isOwn ? last.current?.base : undefined) ?? hours;
    const edits = plainEdits(base, { key: told, at, text });
    const written = JSON.stringify(withEdits({ weather: hours }, edits).weather);
    last.current = { base, written };
    form.setAll(edits);
  };
}

/** As the engine has it where nobody says: one source for every form. */
const USUAL_HOUR: Readonly<Record<string, unknown>> = {
  air: `${Math.round(usualWeather.air - 273.15)} °C`,
  wind: `${Math.round(10 * usualWeather.wind) / 10} m/s`,
};

function Hours({ form, hours }: HoursProps) {
  const { clock } = useReader().reader;
  const add = () => {
    const { at: _, ...last } = hours.at(-1) ?? USUAL_HOUR;
    form.set(['weather'], [...hours, { at: '18:00', ...last }]);
  };
  return (
    <>
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
              hint="such as WSW or north"
            />
          </div>
          <HourMore form={form} index={index} name={clockShown(wordOf(hour.at), clock)} />
        </ChangeItem>
      ))}
      <AddButton what="a time" onAdd={add} />
    </>
  );
}

interface HourMoreProps extends GroupProps {
  readonly index: number;
  readonly name: string;
}

function HourMore({ form, index, name }: HourMoreProps) {
  const rain = ['weather', index, 'rain'];
  const sun = ['weather', index, 'sun'];
  return (
    <More of={name} said={saidAt(form, [rain, sun])}>
      <div className="field-row">
        <OptionalQuantity form={form} path={rain} label="Rain in an hour" kind="rain" />
        <OptionalQuantity form={form} path={sun} label="Sun on the ovens" kind="share" />
      </div>
    </More>
  );
}
