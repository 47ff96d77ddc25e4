// What goes in: a ready recipe, or a dough of one's own by kind, thickness and amount.

import { useEffect, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Choice } from '../parts/Choice.tsx';
import { later } from '../parts/later.tsx';
import { ask } from '../planning/planner.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type { ReadyRecipe, TonightAmount } from '../worker/messages.ts';
import { AmountStep } from './AmountStep.tsx';
import { usualOwn } from './own-food.ts';
import type { OpenWish, WishChange } from './wish.ts';

const OwnFoodPart = later(() => import('./OwnFoodPart.tsx'), 'field-hint');

interface ChoiceProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

const OWN = 'own';
interface FoodChoiceProps extends ChoiceProps {
  /** How much is planned now; undefined where nothing is. */
  readonly planned: TonightAmount | undefined;
}

export function FoodChoice({ wish, change, planned }: FoodChoiceProps) {
  const isUs = useReader().reader.measures === 'us';
  const [readyRecipes, setReadyRecipes] = useState<readonly ReadyRecipe[]>([]);
  useEffect(() => {
    void ask({ ask: 'ready-recipes' }).then(setReadyRecipes);
  }, []);
  const { what } = wish;
  const chosen = what === undefined ? undefined : 'readyRecipe' in what ? what.readyRecipe : OWN;
  return (
    <div>
      <Choice
        className="ready-recipes"
        legend="What goes in"
        value={chosen}
        options={[
          ...readyRecipes.map(({ id, name }) => ({ value: id, label: name })),
          { value: OWN, label: 'A dough of my own' },
        ]}
        onChoose={(value) =>
          change({ what: value === OWN ? usualOwn(isUs) : { readyRecipe: value } })
        }
      />
      <p className="paste-link">
        <Link href="/paste">Paste a recipe</Link> · <Link href="/dough">The dough alone</Link>
      </p>
      {what === undefined || 'readyRecipe' in what ? null : (
        <div className="own-dough">
          <OwnFoodPart what={what} onChange={(own) => change({ what: own })} />
        </div>
      )}
      {what === undefined || 'kind' in what ? null : (
        <AmountStep what={what} planned={planned} onChange={(food) => change({ what: food })} />
      )}
    </div>
  );
}
