// What one door asks: the coals as they lie, how old, what is in the oven, what is wanted.

import {
  type AgedDoor,
  COAL_LOOK_WORDS,
  coalLooks,
  type Symptom,
  USUAL_INSIDE_MINUTES,
} from '#engine';
import { Choice } from '../parts/Choice.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import type { OpenWish } from '../tonight/wish.ts';
import type { FireMethod } from '../worker/messages.ts';
import { type FireAnswers, heatFor, litFor, stayFor } from './answers.ts';
import { CountStep } from './CountStep.tsx';
import type { DoorName } from './doors.ts';
import { MoreCoals } from './MoreCoals.tsx';
import { Pick } from './Pick.tsx';

export interface QuestionsProps {
  readonly door: DoorName;
  readonly wish: OpenWish;
  readonly answers: FireAnswers;
  readonly change: (part: Partial<FireAnswers>) => void;
}

export function DoorQuestions(props: QuestionsProps) {
  switch (props.door) {
    case 'what-now':
      return (
        <>
          <Signs {...props} />
          <Laid {...props} />
          <div className="field-row">
            <Age {...props} />
            <Inside {...props} />
            <Method {...props} />
          </div>
          <MoreCoals {...props} />
        </>
      );
    case 'layout':
      return (
        <>
          <Laid {...props} />
          <div className="field-row">
            <Heat {...props} />
            <Age {...props} />
            <Inside {...props} />
            <Method {...props} />
          </div>
          <MoreCoals {...props} />
        </>
      );
    case 'left':
      return (
        <>
          <Coals {...props} label="Still glowing" name="left" />
          <div className="field-row">
            <Age {...props} />
          </div>
          <MoreCoals {...props} />
        </>
      );
    default:
      return (
        <div className="field-row">
          <Heat {...props} />
          <Stay {...props} />
          <Method {...props} />
          {props.door === 'stack' ? <Upper {...props} /> : null}
        </div>
      );
  }
}

const signs: readonly (readonly [Symptom, string])[] = [
  ['bottom-dark', 'Bottom dark'],
  ['top-pale', 'Top pale'],
  ['one-side-hot', 'One side hot'],
  ['coals-dying', 'Coals dying'],
  ['raw-middle', 'Middle raw, crust done'],
  ['late', 'Late'],
];

const Signs = ({ answers, change }: QuestionsProps) => (
  <Choice
    className="signs"
    legend="What is wrong"
    value={answers.symptom}
    options={signs.map(([value, label]) => ({ value, label }))}
    onChoose={(symptom) => change({ symptom })}
  />
);

const Laid = (props: QuestionsProps) => (
  <div className="laid">
    <Coals {...props} label="On the lid" name="above" />
    <Coals {...props} label="Below" name="below" />
  </div>
);

interface CoalsProps extends QuestionsProps {
  readonly label: string;
  readonly name: 'above' | 'below' | 'left';
}

function Coals({ wish, answers, change, label, name }: CoalsProps) {
  const isWood = wish.fuel === 'wood-coals';
  return (
    <CountStep
      label={label}
      value={answers[name]}
      highest={isWood ? 25 : 100}
      step={isWood ? 0.5 : 1}
      unit={isWood ? 'shovels' : 'coals'}
      onChange={(count) => change({ [name]: count })}
    />
  );
}

const ages = [20, 25, 30, 40, 50, 60, 75, 90];

const LOOK = 'look:';
const looks = coalLooks.map((look) => [`${LOOK}${look}`, COAL_LOOK_WORDS[look]] as const);

/** By the clock, or by what they look like. */
function Age({ door, wish, answers, change }: QuestionsProps) {
  const lit = isAged(door) ? litFor(door, answers, wish.fuel) : 0;
  const isSaid = answers.litMinutes !== undefined;
  const all = [...new Set([...ages, ...(isSaid ? [lit] : [])])].sort((one, other) => one - other);
  const words = all.map((age): readonly [string, string] => [
    String(age),
    age === 20 ? '20 min ago: fresh' : `${age} min ago`,
  ]);
  const choose = (value: string) => {
    const look = coalLooks.find((each) => value === `${LOOK}${each}`);
    const isAge = look === undefined && value !== '';
    change({ litMinutes: isAge ? Number(value) : undefined, look });
  };
  return (
    <Pick
      label="The coals were lit"
      words={[['', 'not said'], ...words, ...looks]}
      value={answers.look === undefined ? String(isSaid ? lit : '') : `${LOOK}${answers.look}`}
      onChoose={choose}
    />
  );
}

const isAged = (door: DoorName): door is AgedDoor => door !== 'coals' && door !== 'stack';

const insides = [0, 5, 10, 15, 20, 30, 45, 60, 90];

/** What goes wrong goes wrong with food in; a layout may lie under an empty oven. */
function Inside({ door, answers, change }: QuestionsProps) {
  const words = insides.map((inside): readonly [string, string] => [
    String(inside),
    inside === 0 ? 'is just in' : `in for ${inside} min`,
  ]);
  const isAsked = door === 'layout';
  const usual = isAsked ? 'empty' : String(USUAL_INSIDE_MINUTES);
  return (
    <Pick
      label="The food"
      words={isAsked ? [['empty', 'is not in yet'], ...words] : words}
      value={answers.minutesIn === undefined ? usual : String(answers.minutesIn)}
      onChoose={(inside) => change({ minutesIn: inside === 'empty' ? undefined : Number(inside) })}
    />
  );
}

const methods: readonly (readonly [FireMethod, string])[] = [
  ['bake', 'bake'],
  ['roast', 'roast'],
  ['simmer', 'simmer a pot'],
  ['boil', 'boil a pot'],
  ['fry', 'fry, lid off'],
  ['keep-warm', 'keep warm'],
];

function Method({ door, answers, change }: QuestionsProps) {
  const words = door === 'stack' ? methods.slice(0, 3) : methods;
  const value = words.some(([each]) => each === answers.method) ? answers.method : 'bake';
  return (
    <Pick label="To do" words={words} value={value} onChoose={(method) => change({ method })} />
  );
}

const stays = [10, 15, 20, 25, 30, 40, 50, 60, 75, 90, 120];

const Stay = ({ answers, change }: QuestionsProps) => (
  <Pick
    label="In the oven"
    words={stays.map((stay) => [String(stay), `${stay} min`])}
    value={String(stayFor(answers))}
    onChoose={(stay) => change({ minutes: Number(stay) })}
  />
);

const fahrenheit = [200, 250, 275, 300, 325, 350, 375, 400, 425, 450, 475];
const celsius = [100, 120, 135, 150, 165, 175, 190, 205, 220, 230, 245];
const toKelvin = (degrees: number, isUs: boolean) =>
  isUs ? (degrees + 459.67) / 1.8 : degrees + 273.15;

function Heat({ answers, change }: QuestionsProps) {
  const isUs = useReader().reader.measures === 'us';
  const { method } = answers;
  const heatKelvin = heatFor(answers);
  // A pot is kept at its boil, whatever is wished.
  if (method === 'simmer' || method === 'boil') return null;
  const heats = isUs ? fahrenheit : celsius;
  const far = (degrees: number) => Math.abs(toKelvin(degrees, isUs) - heatKelvin);
  const nearest = heats.reduce((best, each) => (far(each) < far(best) ? each : best));
  return (
    <Pick
      label="Heat wanted"
      words={heats.map((each) => [String(each), `${each} ${isUs ? '°F' : '°C'}`])}
      value={String(nearest)}
      onChoose={(each) => change({ heatKelvin: toKelvin(Number(each), isUs) })}
    />
  );
}

const sizes = [8, 10, 12, 14, 16];

/** No larger than the one under it. */
function Upper({ wish, answers, change }: QuestionsProps) {
  const isUs = useReader().reader.measures === 'us';
  const words = sizes
    .filter((inches) => inches <= wish.ovenInches)
    .map((inches): readonly [string, string] => [
      String(inches),
      isUs ? `${inches} inch` : `${Math.round(inches * 2.54)} cm`,
    ]);
  const value = String(Math.min(answers.upperInches, wish.ovenInches));
  return (
    <Pick
      label="The upper oven"
      words={words}
      value={value}
      onChoose={(inches) => change({ upperInches: Number(inches) })}
    />
  );
}
