// One set of coals as a big figure: briquettes counted, wood coals in shovels.

import type { CoalSet } from '../../coals/coal-plan.ts';
import type { BigFigure } from '../document.ts';
import { fraction } from '../speak-number.ts';

export function setFigure(set: CoalSet, where: string): BigFigure {
  if (set.shovels === undefined) return { figure: String(set.pieces), label: where };
  const unit = set.shovels > 1 ? 'shovels' : 'shovel';
  return { figure: fraction(set.shovels, 2), label: `${unit} ${where}` };
}
