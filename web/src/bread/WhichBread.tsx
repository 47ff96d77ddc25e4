// Which bread is asked about: a ready one, the one that was pasted, one out of a camp of one's own.

import { useEffect, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Pick } from '../fire/Pick.tsx';
import { usePastedRecipe } from '../paste/use-pasted.ts';
import { ask } from '../planning/planner.ts';
import { RecipeFromCamp } from '../tonight/RecipeFromCamp.tsx';
import type { OwnRecipe, ReadyRecipe } from '../worker/messages.ts';
import type { BreadAnswers } from './answers.ts';

type What = BreadAnswers['what'];

interface WhichBreadProps {
  readonly what: What;
  readonly onChoose: (what: What) => void;
}

const DOUGHS: ReadonlySet<string> = new Set([
  ...['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread', 'cobbler'],
]);
const PASTED = 'own:pasted';
const CHOSEN = 'own:chosen';

export function WhichBread({ what, onChoose }: WhichBreadProps) {
  const doughs = useReadyDoughs();
  const pasted = usePastedRecipe();
  const own = what === undefined || 'readyRecipe' in what ? undefined : what;
  const isPasted = own !== undefined && pasted !== undefined && isSame(own, pasted);
  const choose = (id: string) => {
    if (id === PASTED) onChoose(pasted);
    else if (id !== CHOSEN) onChoose(id === '' ? undefined : { readyRecipe: id });
  };
  return (
    <>
      <div>
        <Pick
          label="Which bread"
          words={[
            ...(what === undefined ? [['', 'choose one'] as const] : []),
            ...(pasted === undefined ? [] : [[PASTED, `${pasted.name}, as pasted`] as const]),
            ...(own === undefined || isPasted ? [] : [[CHOSEN, own.name] as const]),
            ...doughs.map(({ id, name }): readonly [string, string] => [id, name]),
          ]}
          value={valueIn(what, isPasted)}
          onChoose={choose}
        />
        <p className="paste-link">
          <Link href="/paste">{pasted === undefined ? 'Paste a recipe' : 'The pasted recipe'}</Link>
        </p>
      </div>
      <RecipeFromCamp
        chosen={isPasted ? undefined : own}
        none="none: the bread above"
        onChoose={onChoose}
      />
    </>
  );
}

const valueIn = (what: What, isPasted: boolean) => {
  if (what === undefined) return '';
  if ('readyRecipe' in what) return what.readyRecipe;
  return isPasted ? PASTED : CHOSEN;
};

const isSame = (one: OwnRecipe, other: OwnRecipe) =>
  one.recipe === other.recipe && one.camp === other.camp;

function useReadyDoughs(): readonly ReadyRecipe[] {
  const [ready, setReady] = useState<readonly ReadyRecipe[]>([]);
  useEffect(() => {
    void ask({ ask: 'ready-recipes' }).then(setReady);
  }, []);
  return ready.filter(({ kind }) => DOUGHS.has(kind));
}
