// How it lies, where the cook wants it otherwise than usual, and their own oven as measured.

import type { FitKind, FloorContact } from '#engine';
import { MeasureField } from '../draft/MeasureField.tsx';
import { Pick } from '../fire/Pick.tsx';
import type { FitsLying } from '../worker/fits-messages.ts';
import { type Change, withPart } from './answers.ts';
import type { FitsAnswers } from './fits-answers.ts';

interface FitsLyingProps {
  readonly kind: FitKind | 'bread';
  readonly fits: FitsAnswers;
  readonly change: (part: Partial<FitsAnswers>) => void;
}

type Kinds = readonly (FitKind | 'bread')[];
const FLAT: Kinds = ['bread', 'round', 'wedges', 'biscuits', 'batter', 'cobbler'];
const COUNTED: Kinds = ['rolls', 'dumplings'];
const BESIDE: Kinds = ['bread', 'biscuits', 'rolls'];

export function FitsLyingPart(props: FitsLyingProps) {
  const { kind, fits, change } = props;
  const { lying } = fits;
  const set = (part: Change<FitsLying>) => change({ lying: withPart(lying, part) });
  return (
    <>
      {FLAT.includes(kind) ? (
        <MeasureField
          label={kind === 'batter' ? 'How deep, poured' : 'How thick, raw'}
          kind="small-length"
          value={lying.thickMetres}
          lowest={0.003}
          highest={0.15}
          empty={kind === 'bread' ? 'as the recipe has it' : 'as is usual'}
          onChange={(thickMetres) => set({ thickMetres })}
        />
      ) : null}
      {kind === 'biscuits' ? (
        <MeasureField
          label="The cutter is wide"
          kind="small-length"
          value={lying.cutterMetres}
          lowest={0.02}
          highest={0.15}
          empty="as is usual"
          onChange={(cutterMetres) => set({ cutterMetres })}
        />
      ) : null}
      {COUNTED.includes(kind) ? (
        <MeasureField
          label="One of them weighs"
          kind="ten"
          value={lying.pieceGrams}
          lowest={10}
          highest={500}
          empty="as is usual"
          onChange={(pieceGrams) => set({ pieceGrams })}
        />
      ) : null}
      {kind === 'wedges' ? (
        <Pick
          label="Scored in"
          words={WEDGES.map((each) => [each, `${each} wedges`])}
          value={String(lying.wedges ?? 8)}
          onChoose={(wedges) => set({ wedges: Number(wedges) })}
        />
      ) : null}
      <MoreOfIt {...props} set={set} />
    </>
  );
}

const WEDGES = ['4', '6', '8', '10', '12', '16'];
const RESTS: readonly (readonly [FloorContact, string])[] = [
  ['iron', 'the greased floor'],
  ['paper', 'baking paper'],
  ['rack', 'a rack'],
  ['meal', 'coarse meal'],
];

interface MoreProps extends FitsLyingProps {
  readonly set: (part: Change<FitsLying>) => void;
}

function MoreOfIt({ kind, fits, change, set }: MoreProps) {
  const { lying } = fits;
  const isDough = !['pot', 'dumplings', 'tin-loaf'].includes(kind);
  const isMeasured = fits.known !== 'amount' && fits.others.length === 0;
  if (!isDough && !isMeasured) return null;
  return (
    <details className="more">
      <summary>
        More<small>: what it rests on, an oven you measured</small>
      </summary>
      <div className="change-body">
        {isDough ? (
          <Pick
            label="It rests on"
            words={[['', kind === 'bread' ? 'as the recipe has it' : 'as is usual'], ...RESTS]}
            value={lying.contact ?? ''}
            onChoose={(contact) => set({ contact: contact === '' ? undefined : contact })}
          />
        ) : null}
        {BESIDE.includes(kind) ? (
          <Pick
            label="Its pieces"
            words={[
              ['', 'as is usual'],
              ['touching', 'touch on purpose'],
            ]}
            value={lying.isTouching ? 'touching' : ''}
            onChoose={(word) => set({ isTouching: word === 'touching' ? true : undefined })}
          />
        ) : null}
        {isMeasured ? <Measured fits={fits} change={change} /> : null}
      </div>
    </details>
  );
}

const Measured = ({ fits, change }: Omit<FitsLyingProps, 'kind'>) => (
  <>
    <MeasureField
      label="Across the inside of its floor"
      kind="oven-size"
      value={fits.floorMetres}
      lowest={0.1}
      highest={0.45}
      empty="as is usual for its size"
      onChange={(floorMetres) => change({ floorMetres })}
    />
    <MeasureField
      label="Its depth inside"
      kind="oven-size"
      value={fits.depthMetres}
      lowest={0.03}
      highest={0.3}
      empty="as is usual for its size"
      onChange={(depthMetres) => change({ depthMetres })}
    />
  </>
);
