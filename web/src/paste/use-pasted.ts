// The recipe that was pasted last, as the other screens take it.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { useShelf } from '../storage/ShelfContext.tsx';
import type { OwnRecipe } from '../worker/messages.ts';
import type { FileFoodItem, PasteQuestion } from '../worker/paste-messages.ts';
import { ownFoodsIn } from './own-foods.ts';
import { type Pasted, rememberedPaste } from './pasted.ts';

/** Undefined where nothing was pasted, or nothing in it was read as going in. */
export function usePastedRecipe(): OwnRecipe | undefined {
  const [pasted] = useState(() => rememberedPaste(localStorage));
  const question = usePasteQuestion(pasted);
  const { answer } = useAnswer(question);
  return answer?.ok === true ? answer.recipe : undefined;
}

export function usePasteQuestion(pasted: Pasted): PasteQuestion | undefined {
  const { measures, clock } = useReader().reader;
  const foods = useOwnFoods();
  return useMemo(
    (): PasteQuestion | undefined =>
      pasted.text.trim() === ''
        ? undefined
        : { ask: 'paste', ...pasted, foods, voice: { measures, clock } },
    [pasted, foods, measures, clock],
  );
}

const NO_FOODS: readonly FileFoodItem[] = [];

/** The foods of every camp in this browser are known here too. */
function useOwnFoods(): readonly FileFoodItem[] {
  const shelf = useShelf();
  const [foods, setFoods] = useState(NO_FOODS);
  useEffect(() => {
    void shelf
      .then((open) => open.list())
      .then((camps) => {
        const found = ownFoodsIn(camps);
        if (found.length > 0) setFoods(found);
      });
  }, [shelf]);
  return foods;
}
