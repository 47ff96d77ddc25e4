// What one dough is asked with: where it is made, and what its own question needs.

import { MeasureField } from '../draft/MeasureField.tsx';
import { CountStep } from '../fire/CountStep.tsx';
import { Pick } from '../fire/Pick.tsx';
import { type BreadAnswers, type Change, withPart } from './answers.ts';
import type { BreadDoorName } from './doors.ts';
import { StaysPart } from './StaysPart.tsx';

export interface BreadQuestionsProps {
  readonly door: BreadDoorName;
  readonly answers: BreadAnswers;
  readonly change: (part: Partial<BreadAnswers>) => void;
}

const ZERO_CELSIUS = 273.15;
const plus = (value: number | undefined, by: number) =>
  value === undefined ? undefined : value + by;

export function BreadQuestions(props: BreadQuestionsProps) {
  const { door } = props;
  return (
    <>
      {door === 'leaven' ? <Powder {...props} /> : null}
      {door === 'rise' ? <Dough {...props} /> : null}
      {door === 'mix' ? <Carried {...props} /> : null}
      <Spot {...props} />
    </>
  );
}

function Spot({ answers, change }: BreadQuestionsProps) {
  const { spot } = answers;
  const set = (part: Change<BreadAnswers['spot']>) => change({ spot: withPart(spot, part) });
  return (
    <>
      <MeasureField
        label="Air"
        kind="air"
        value={plus(spot.airKelvin, -ZERO_CELSIUS)}
        lowest={-30}
        highest={45}
        empty="mild"
        onChange={(celsius) => set({ airKelvin: plus(celsius, ZERO_CELSIUS) })}
      />
      <MeasureField
        label="Height above the sea"
        kind="height"
        value={spot.metres}
        lowest={-400}
        highest={5000}
        empty="low ground"
        onChange={(metres) => set({ metres })}
      />
      <MeasureField
        label="The recipe was written for a height of"
        kind="height"
        value={spot.writtenMetres}
        lowest={-400}
        highest={5000}
        empty="as the recipe says, else low ground"
        onChange={(writtenMetres) => set({ writtenMetres })}
      />
    </>
  );
}

const fizzes = [
  ['', 'not tried'],
  ['hard', 'hard'],
  ['weak', 'weakly'],
  ['none', 'not at all'],
] as const;

const months = ['', '1', '3', '6', '9', '12', '18', '24'];

function Powder({ answers, change }: BreadQuestionsProps) {
  const { fizz, openedMonths } = answers.powder;
  const set = (part: Change<BreadAnswers['powder']>) =>
    change({ powder: withPart(answers.powder, part) });
  return (
    <div className="field-row">
      <Pick
        label="Half a teaspoon of powder in hot water fizzes"
        words={fizzes}
        value={fizz ?? ''}
        onChoose={(word) => set({ fizz: word === '' ? undefined : word })}
      />
      <Pick
        label="The tin of powder was opened"
        words={months.map((each) => [each, each === '' ? 'not said' : `${each} months ago`])}
        value={openedMonths === undefined ? '' : String(openedMonths)}
        onChoose={(word) => set({ openedMonths: word === '' ? undefined : Number(word) })}
      />
    </div>
  );
}

function Dough(props: BreadQuestionsProps) {
  const { dough } = props.answers;
  const set = (part: Change<BreadAnswers['dough']>) =>
    props.change({ dough: withPart(dough, part) });
  const field = (
    label: string,
    place: 'mixedKelvin' | 'flourKelvin' | 'tapKelvin',
    empty: string,
  ) => (
    <MeasureField
      label={label}
      kind="air"
      value={plus(dough[place], -ZERO_CELSIUS)}
      lowest={-5}
      highest={60}
      empty={empty}
      onChange={(celsius) => set({ [place]: plus(celsius, ZERO_CELSIUS) })}
    />
  );
  return (
    <>
      <StaysPart stays={dough.stays} onChange={(stays) => set({ stays })} />
      {field('The dough when it is mixed', 'mixedKelvin', 'as the recipe wants it')}
      {field('The flour', 'flourKelvin', 'as the air')}
      {field('The water as it comes', 'tapKelvin', 'as the air')}
    </>
  );
}

const CUP_CUBIC_METRES = 0.0002365882365;
const tins = [0.5, 1, 2, 4];

function Carried({ answers, change }: BreadQuestionsProps) {
  const cups = Math.round(((answers.tinCubicMetres ?? 0) / CUP_CUBIC_METRES) * 10) / 10;
  return (
    <>
      <CountStep
        label="Bags"
        value={answers.bags}
        lowest={1}
        highest={40}
        step={1}
        unit="bags"
        onChange={(bags) => change({ bags })}
      />
      <Pick
        label="A tin without flour holds"
        words={[
          ['0', '250 ml, about a cup'],
          ...tins.map((each): readonly [string, string] => [
            String(each),
            `${each === 0.5 ? '½' : each} cup${each > 1 ? 's' : ''} (${Math.round(each * 237)} ml)`,
          ]),
        ]}
        value={String(cups)}
        onChoose={(word) =>
          change({ tinCubicMetres: word === '0' ? undefined : Number(word) * CUP_CUBIC_METRES })
        }
      />
    </>
  );
}
