// Which oven: its size, drawn to scale, and regular or deep.

import { Choice } from '../parts/Choice.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import type { OpenWish, WishChange } from './wish.ts';

interface ChoiceProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

const inchesMade = [8, 10, 12, 14, 16] as const;

export function OvenChoice({ wish, change }: ChoiceProps) {
  const isUs = useReader().reader.measures === 'us';
  return (
    <div className="oven-choice">
      <Choice
        className="sizes"
        legend="Which oven"
        value={String(wish.ovenInches)}
        options={inchesMade.map((inches) => ({
          value: String(inches),
          label: <SizeLabel inches={inches} isUs={isUs} />,
        }))}
        onChoose={(value) => change({ ovenInches: Number(value) })}
      />
      <Choice
        legend={<span className="unseen">Depth of the oven</span>}
        isSmall
        isRow
        value={wish.ovenStyle}
        options={[
          { value: 'regular', label: 'Regular' },
          { value: 'deep', label: 'Deep' },
        ]}
        onChoose={(ovenStyle) => change({ ovenStyle })}
      />
    </div>
  );
}

function SizeLabel({ inches, isUs }: { readonly inches: number; readonly isUs: boolean }) {
  const radius = inches * 1.75;
  return (
    <>
      <svg className="size-lid" viewBox="0 0 60 60" aria-hidden="true">
        <circle
          cx="30"
          cy={58 - radius}
          r={radius}
          fill="none"
          stroke="currentColor"
          stroke-width="2"
        />
        <path
          d={`M${30 - radius * 0.3} ${58 - radius}H${30 + radius * 0.3}`}
          stroke="currentColor"
          stroke-width="4"
          stroke-linecap="round"
        />
      </svg>
      <span>
        {isUs ? inches : Math.round(inches * 2.54)}
        <span className="unseen">{isUs ? ' inch' : ' centimetres'}</span>
        <span aria-hidden="true">{isUs ? '″' : ' cm'}</span>
      </span>
    </>
  );
}
