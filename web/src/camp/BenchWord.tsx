// From a dish card to the formula of its dough.

import { Link } from 'wouter-preact';
import { valueAt } from '../draft/path.ts';
import type { DraftFile } from '../draft/use-draft.ts';
import { useSheetPath } from './Sheets.tsx';

/** What is counted against its flour. */
export const BREADS: readonly string[] = [
  ...['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread', 'cobbler'],
];

interface BenchWordProps {
  readonly file: DraftFile;
  readonly root: string;
}

type Named = { readonly id?: unknown; readonly recipe?: unknown; readonly kind?: unknown };

const listAt = (file: DraftFile, place: string): readonly Named[] => {
  const found = valueAt(file, [place]);
  return Array.isArray(found) ? (found as readonly Named[]) : [];
};

/** Only where the sheet on screen is the card of a dough. */
export function BenchWord({ file, root }: BenchWordProps) {
  const [, dishId] = /^dish\/(.+)$/.exec(useSheetPath()) ?? [];
  const dish = listAt(file, 'menu').find(({ id }) => id === dishId);
  const recipe = listAt(file, 'recipes').find(({ id }) => id === dish?.recipe);
  if (recipe === undefined || !BREADS.includes(String(recipe.kind))) return null;
  return (
    <p className="no-print bench-word">
      <Link href={`/bench${root}/${String(recipe.id)}`} className="button">
        This dough as a formula
      </Link>
    </p>
  );
}
