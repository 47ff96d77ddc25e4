// Rain, sun, wet ground, what lies under the coals, a riser, the weight of the lid. Left unsaid, each
// is as the engine takes it: none, dry, on its legs, as ovens of its size weigh.

import { MeasureField } from '../draft/MeasureField.tsx';
import { Pick } from '../fire/Pick.tsx';
import type { OpenWish, WishChange } from '../tonight/wish.ts';

interface PlaceFieldsProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

const grounds = [
  ['dry', 'dry'],
  ['wet', 'wet'],
  ['frozen', 'frozen'],
] as const;

const hearths = [
  ['ground', 'the ground'],
  ['fire-pan', 'a fire pan'],
  ['fire-table', 'a fire table'],
] as const;

/** mm to m, share to per cent: the fields speak in base units. */
const scaled = (value: number | undefined, by: number) =>
  value === undefined ? undefined : value * by;

export default function PlaceFields({ wish, change }: PlaceFieldsProps) {
  return (
    <>
      <div className="field-row">
        <Pick
          label="The ground is"
          words={grounds}
          value={wish.groundIs ?? 'dry'}
          onChoose={(word) => change({ groundIs: word === 'dry' ? undefined : word })}
        />
        <Pick
          label="Coals below lie on"
          words={hearths}
          value={wish.hearth ?? 'ground'}
          onChoose={(word) => change({ hearth: word === 'ground' ? undefined : word })}
        />
      </div>
      <MeasureField
        label="Rain in an hour"
        kind="rain"
        value={scaled(wish.rainMillimetres, 0.001)}
        lowest={0}
        highest={0.05}
        empty="none"
        onChange={(metres) => change({ rainMillimetres: scaled(metres, 1000) })}
      />
      <MeasureField
        label="Sun on the oven, of a high, clear sun"
        kind="share"
        value={scaled(wish.sunRatio, 100)}
        lowest={0}
        highest={100}
        empty="none"
        onChange={(percent) => change({ sunRatio: scaled(percent, 0.01) })}
      />
      <MeasureField
        label="Riser under the legs"
        kind="small-length"
        value={wish.riserMetres}
        lowest={0}
        highest={0.2}
        empty="on its legs"
        onChange={(riserMetres) => change({ riserMetres })}
      />
      <MeasureField
        label="The lid alone weighs"
        kind="iron-mass"
        value={wish.lidGrams}
        lowest={500}
        highest={20_000}
        empty="as lids of this size do"
        onChange={(lidGrams) => change({ lidGrams })}
      />
    </>
  );
}
