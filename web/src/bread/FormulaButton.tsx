// From a bread to its formula: it goes onto the bench in a camp of the cook's own.

import { useLocation } from 'wouter-preact';
import { useShelf } from '../storage/ShelfContext.tsx';
import { grownFrom, wishFor } from '../tonight/grow.ts';
import { rememberedWish } from '../tonight/wish.ts';
import type { TonightFood } from '../worker/messages.ts';

export function FormulaButton({ what }: { readonly what: TonightFood }) {
  const shelf = useShelf();
  const [, go] = useLocation();
  const open = async () => {
    const path = await grownFrom(wishFor(what, rememberedWish(localStorage)), shelf, true);
    if (path !== undefined) go(path);
  };
  return (
    <button type="button" className="button" onClick={() => void open()}>
      Its formula, in a camp of my own
    </button>
  );
}
