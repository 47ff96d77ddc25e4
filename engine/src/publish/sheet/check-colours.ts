// Which colour does a look ask for? That of the cut at its minute, and never past "done when", or the
// card would say two things of one crust.

import type { DoneTarget, InsidePoint } from '../../bake/bake-plan.ts';
import { colourWord } from '../../bake/inside/index.ts';
import type { Check, CheckWay } from '../../coals/coal-plan.ts';
import type { LoadPlan } from '../../meal.ts';

type Colour = NonNullable<DoneTarget['top']>;
type Seen = 'pale' | Colour;
const SHADES: readonly Seen[] = ['pale', 'straw', 'brown', 'dark'];
const PALER = { straw: 'pale', brown: 'straw', dark: 'brown' } as const;

/** Where nothing is known of the inside, the last look asks for "done when", earlier ones for less. */
export function asDone({ coals, bake: { done, inside } }: LoadPlan): readonly Check[] {
  const last = coals.checks.at(-1);
  return coals.checks.map((check): Check => {
    const now = inside?.moments[Math.round(check.minute - coals.loadInMinute)];
    const usual = (wanted: Colour) => (check === last ? wanted : PALER[wanted]);
    const ways = check.ways.map((way): CheckWay => {
      const face = FACE_OF[way.by as keyof typeof FACE_OF];
      const wanted = face === undefined ? undefined : done[face];
      if (face === undefined || wanted === undefined) return way;
      const colour = now === undefined ? usual(wanted) : seenUpTo(wanted, now, face);
      return { ...way, colour } as CheckWay;
    });
    return { ...check, ways };
  });
}

const FACE_OF = { 'top-colour': 'top', 'bottom-corner': 'bottom' } as const;

function seenUpTo(wanted: Colour, now: InsidePoint, face: 'top' | 'bottom'): Seen {
  const word = colourWord(face === 'top' ? now.topColour : now.bottomColour);
  const seen = word === 'burnt' ? SHADES.length - 1 : SHADES.indexOf(word);
  return SHADES[Math.min(seen, SHADES.indexOf(wanted))]!;
}
