// A dish without flour on the bench: said plainly, then weights, and a portion's water, fat, salt.

import { measureOf } from '../../../formula/bench/own-measure.ts';
import type { DishWithoutDough, PortionFigures } from '../../../formula/bench/portion.ts';
import type { WeighedIngredient } from '../../../formula/dough.ts';
import type { Block, FactRow, SheetDocument } from '../../document.ts';
import type { Say } from '../../say.ts';
import { decimal } from '../../speak-number.ts';
import { listed } from '../phrases.ts';
import { gramsText, weighedText } from './figures-part.ts';

export function portionSheet(title: string, dish: DishWithoutDough, say: Say): SheetDocument {
  const { lines, figures, isThickened } = dish;
  const text = isThickened
    ? 'The flour in this only thickens it, so it has no baker’s percentages.'
    : 'There is no flour in this, so it has no baker’s percentages.';
  const more = ' Here is what a portion holds instead, as it goes in.';
  return {
    kind: 'bench',
    title,
    blocks: [
      { type: 'lead', parts: [{ text, strong: true }, { text: more }] },
      portionFacts(figures, say),
      linesOf(lines, figures, say),
      ...uncountedBlock(figures),
    ],
  };
}

function portionFacts({ portions, whole, water, fat, salt }: PortionFigures, say: Say): Block {
  const row = (label: string, mass: number): FactRow => ({
    label,
    value: gramsText(mass / portions),
    note: `${say.mass(mass)} in all`,
  });
  return {
    type: 'facts',
    rows: [
      row(`A portion, one of ${decimal(portions, 1)}`, whole),
      row('Water in it', water),
      row('Fat in it', fat),
      row('Salt in it, with all sodium told as salt', salt),
    ],
  };
}

const linesOf = (
  lines: readonly WeighedIngredient[],
  { portions, whole }: PortionFigures,
  say: Say,
): Block => ({
  type: 'table',
  caption: `Whole dish ${say.mass(whole)}.`,
  head: ['', 'weigh, or measure', 'a portion'],
  rows: lines.map(({ ingredient, grams: mass }) =>
    ingredient.isUnweighed === true
      ? [ingredient.name, ingredient.asWritten, 'not weighed']
      : [
          ingredient.name,
          weighedText(mass, measureOf({ ingredient, grams: mass })),
          gramsText(mass / portions),
        ],
  ),
  numeric: [false, true, true],
});

/** What these figures leave out is named, never guessed. */
function uncountedBlock({ uncounted }: PortionFigures): readonly Block[] {
  if (uncounted.length === 0) return [];
  const text = `Not counted in water, fat and salt: ${listed(uncounted)}. Nobody weighed it, or the larder does not know it.`;
  return [{ type: 'notice', level: 'doubt', text }];
}
