// How is a dough rolled that draws together when it is cut or lifted?

import { type Metres, metres } from '../../quantity/unit.ts';
import type { Say } from '../say.ts';

interface Rolled {
  readonly rolledTo: Metres;
  /** As it lies, thicker than it was rolled. */
  readonly thickness: Metres;
  /** Of one round as it lies; undefined where pieces are cut. */
  readonly across?: Metres;
}

/** The dough is the same before and after: as much thinner as it is rolled, as much wider. */
export const rolledWidth = ({ rolledTo, thickness, across }: Required<Rolled>): Metres =>
  metres(across * Math.sqrt(thickness / rolledTo));

/** "roll it 11 1/4 in wide: it draws together to 10 1/8 in"; thickness only where it reads as another. */
export function drawnWord(rolled: Rolled, say: Say): string {
  const { rolledTo, thickness, across } = rolled;
  const isAlike = say.length(rolledTo) === say.length(thickness);
  const thick = `draws together to ${isAlike ? 'a little more' : say.length(thickness)}`;
  if (across === undefined) return thick;
  const wide = say.length(rolledWidth({ rolledTo, thickness, across }));
  return `${thick}: roll it ${wide} wide to lie ${say.length(across)}`;
}
