// Which colour does a look ask for? That of "done when", or the card would say two things of one crust.

import type { DoneTarget } from '../../bake/bake-plan.ts';
import type { Check, CheckWay } from '../../coals/coal-plan.ts';
import type { LoadPlan } from '../../meal.ts';

type Colour = NonNullable<DoneTarget['top']>;
const PALER = { straw: 'pale', brown: 'straw', dark: 'brown' } as const;

/** The last look asks for the colours of "done when", the looks before it for one shade less. */
export function asDone({ coals, bake: { done } }: LoadPlan): readonly Check[] {
  const last = coals.checks.at(-1);
  return coals.checks.map((check): Check => {
    const shade = (wanted: Colour) => (check === last ? wanted : PALER[wanted]);
    const ways = check.ways.map((way): CheckWay => {
      const wanted = WANTED_OF[way.by as keyof typeof WANTED_OF];
      const colour = wanted === undefined ? undefined : done[wanted];
      return colour === undefined ? way : ({ ...way, colour: shade(colour) } as CheckWay);
    });
    return { ...check, ways };
  });
}

const WANTED_OF = { 'top-colour': 'top', 'bottom-corner': 'bottom' } as const;
