// What few fires need: coals of another age among the others, an oven that is hot already.

import { MeasureField } from '../draft/MeasureField.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import type { LaidSet } from '../worker/messages.ts';
import { MOST_OTHERS } from './answers.ts';
import { CountStep } from './CountStep.tsx';
import type { QuestionsProps } from './DoorQuestions.tsx';
import { Pick } from './Pick.tsx';

export function MoreCoals(props: QuestionsProps) {
  const { door, answers } = props;
  const isAsked = door !== 'left';
  const others = isAsked ? (answers.others ?? []) : [];
  const said = others.length + (answers.ironKelvin === undefined ? 0 : 1);
  return (
    <details className="more">
      <summary>
        More
        <small>
          {isAsked ? ': coals of another age, a hot oven' : ': a hot oven'}
          {said === 0 ? '' : ` · ${said} said`}
        </small>
      </summary>
      <div className="change-body">
        {isAsked ? <Others {...props} /> : null}
        <Iron {...props} />
      </div>
    </details>
  );
}

const FRESH: LaidSet = { above: 4, below: 2, litMinutes: 5 };

function Others(props: QuestionsProps) {
  const { answers, change, wish } = props;
  const others = answers.others ?? [];
  const fresh = wish.fuel === 'wood-coals' ? { above: 1, below: 0.5, litMinutes: 5 } : FRESH;
  const setAt = (at: number, part: Partial<LaidSet>) =>
    change({ others: others.with(at, { ...others[at]!, ...part }) });
  return (
    <>
      {others.map((set, at) => (
        <Other
          // biome-ignore lint/suspicious/noArrayIndexKey: a set has no other name than its place
          key={at}
          set={set}
          number={at + 2}
          isWood={wish.fuel === 'wood-coals'}
          onChange={(part) => setAt(at, part)}
          onRemove={() => change({ others: others.filter((_, each) => each !== at) })}
        />
      ))}
      {others.length >= MOST_OTHERS ? null : (
        <div>
          <button
            type="button"
            className="button"
            onClick={() => change({ others: [...others, fresh] })}
          >
            Add coals of another age
          </button>
        </div>
      )}
    </>
  );
}

interface OtherProps {
  readonly set: LaidSet;
  readonly number: number;
  readonly isWood: boolean;
  readonly onChange: (part: Partial<LaidSet>) => void;
  readonly onRemove: () => void;
}

const ages = [5, 10, 15, 20, 30, 40, 50, 60, 75, 90];

function Other({ set, number, isWood, onChange, onRemove }: OtherProps) {
  const count = (place: 'above' | 'below', label: string) => (
    <CountStep
      label={`${label}, set ${number}`}
      value={set[place]}
      highest={isWood ? 25 : 100}
      step={isWood ? 0.5 : 1}
      unit={isWood ? 'shovels' : 'coals'}
      onChange={(pieces) => onChange({ [place]: pieces })}
    />
  );
  return (
    <fieldset className="change-item">
      <legend>Set {number}</legend>
      <div className="laid">
        {count('above', 'On the lid')}
        {count('below', 'Below')}
      </div>
      <Pick
        label={`Set ${number} was lit`}
        words={ages.map((age) => [String(age), `${age} min ago`])}
        value={String(set.litMinutes)}
        onChoose={(age) => onChange({ litMinutes: Number(age) })}
      />
      <TakeOut what={`set ${number}`} onRemove={onRemove} />
    </fieldset>
  );
}

const ZERO_CELSIUS = 273.15;

/** As far as the camp file goes, and iron over coals. */
function Iron({ answers, change }: QuestionsProps) {
  const { ironKelvin } = answers;
  return (
    <MeasureField
      label="The oven itself is at"
      kind="oven-heat"
      value={ironKelvin === undefined ? undefined : ironKelvin - ZERO_CELSIUS}
      lowest={-40}
      highest={400}
      empty="as hot as these coals made it"
      onChange={(celsius) =>
        change({ ironKelvin: celsius === undefined ? undefined : celsius + ZERO_CELSIUS })
      }
    />
  );
}
