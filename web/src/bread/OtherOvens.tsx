// Ovens beside the first, over which a batch is shared.

import { Pick } from '../fire/Pick.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import type { FitsOven } from '../worker/fits-messages.ts';
import { MOST_OVENS } from './fits-answers.ts';

interface OtherOvensProps {
  readonly ovens: readonly FitsOven[];
  readonly onChange: (ovens: readonly FitsOven[]) => void;
}

const NEXT: FitsOven = { inches: 10, style: 'regular' };
const MADE: readonly FitsOven[] = [8, 10, 12, 14, 16].flatMap((inches): readonly FitsOven[] => [
  { inches, style: 'regular' },
  { inches, style: 'deep' },
]);
const keyOf = ({ inches, style }: FitsOven) => `${inches} ${style}`;

export function OtherOvens({ ovens, onChange }: OtherOvensProps) {
  const isUs = useReader().reader.measures === 'us';
  const words = MADE.map((oven): readonly [string, string] => {
    const size = isUs ? `${oven.inches} inch` : `${Math.round(oven.inches * 2.54)} cm`;
    return [keyOf(oven), oven.style === 'deep' ? `${size}, deep` : size];
  });
  const pick = (at: number, key: string) =>
    onChange(ovens.with(at, MADE.find((each) => keyOf(each) === key) ?? NEXT));
  return (
    <>
      {ovens.map((oven, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: an oven has no other name than its place
        <div key={at}>
          <Pick
            label={`Oven ${at + 2}`}
            words={words}
            value={keyOf(oven)}
            onChoose={(key) => pick(at, key)}
          />
          <TakeOut
            what={`oven ${at + 2}`}
            onRemove={() => onChange(ovens.filter((_, each) => each !== at))}
          />
        </div>
      ))}
      {MOST_OVENS <= ovens.length + 1 ? null : (
        <div>
          <button type="button" className="button" onClick={() => onChange([...ovens, NEXT])}>
            Share it with another oven
          </button>
        </div>
      )}
    </>
  );
}
