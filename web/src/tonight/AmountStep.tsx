// How much of a recipe: as it is written, or more or fewer portions.

import type { TonightAmount, TonightFood } from '../worker/messages.ts';

export type RecipeFood = Exclude<TonightFood, { kind: unknown }>;

interface AmountStepProps {
  readonly what: RecipeFood;
  /** As it is planned now; undefined until the card is there, or where it is refused. */
  readonly planned: TonightAmount | undefined;
  readonly onChange: (what: RecipeFood) => void;
}

const MOST_PORTIONS = 200;

export function AmountStep({ what, planned, onChange }: AmountStepProps) {
  const portions = what.portions ?? planned?.portions;
  const isSaid = what.portions !== undefined;
  const step = (by: number) => () =>
    portions === undefined ? undefined : onChange({ ...what, portions: portions + by });
  const { portions: _, ...asWritten } = what;
  return (
    <fieldset className="amount">
      <legend>How much</legend>
      <div className="amount-row">
        <button
          type="button"
          className="button"
          aria-label="One portion fewer"
          disabled={portions === undefined || portions <= 1}
          onClick={step(-1)}
        >
          −
        </button>
        <output className="amount-now">
          {portions === undefined ? '…' : `${portions} ${portions === 1 ? 'portion' : 'portions'}`}
        </output>
        <button
          type="button"
          className="button"
          aria-label="One portion more"
          disabled={portions === undefined || MOST_PORTIONS <= portions}
          onClick={step(1)}
        >
          +
        </button>
        {isSaid ? (
          <button
            type="button"
            className="button is-quiet"
            onClick={() => onChange(asWritten as RecipeFood)}
          >
            Back to the recipe
          </button>
        ) : null}
      </div>
      <p className="field-hint">{planned?.portions === portions ? hintOf(planned, isSaid) : ''}</p>
    </fieldset>
  );
}

function hintOf(planned: TonightAmount | undefined, isSaid: boolean): string {
  if (planned === undefined) return '';
  const { portions, written, mass } = planned;
  const all = `${mass} in all`;
  if (portions === written) return `${all}, as the recipe makes it`;
  return isSaid ? `${all}; the recipe makes ${written}` : `${all}: what suits this oven`;
}
