// What practice says beside our count, where no printed chart speaks: a simmer, a dish kept warm.
// Sources: splitByMethod (a camp-cooking page of 2017: its bake, D+5 above and D-4 below, with the
// halves swapped for a simmer); three or four on the lid to keep warm: common practice, no source.

import type { CoalPlan } from '../../coals/coal-plan.ts';
import type { WarmWithFew } from '../../coals/warm-few.ts';
import { inUnit } from '../../quantity/convert.ts';
import type { Metres } from '../../quantity/unit.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';

interface Beside {
  readonly coals: CoalPlan;
  readonly few: WarmWithFew | undefined;
  readonly diameter: Metres;
}

export function practiceLines(beside: Beside, say: Say): readonly Block[] {
  const { coals, few } = beside;
  if (coals.method === 'simmer' && coals.fuel === 'briquettes') return [paragraph(simmer(beside))];
  return few === undefined ? [] : [paragraph(warm(few, say))];
}

function simmer({ coals, diameter }: Beside): string {
  const inches = Math.round(inUnit(diameter, 'inch'));
  const up = coals.reckoning.because.find(({ cause }) => cause === 'load')?.coals ?? 0;
  const cold =
    up > 0
      ? ` Ours counts a pot that starts cold: ${up} of these only bring it to its boil; start it hot and far fewer do.`
      : '';
  return (
    `One printed page lays ${inches - 4} above and ${inches + 5} below for a simmer of this size; ` +
    `it names neither pot nor time.${cold}`
  );
}

function warm({ coals, hotEnough, until, minutes }: WarmWithFew, say: Say): string {
  const kept =
    until === undefined
      ? `for more than ${say.minutes(minutes)}`
      : `for about ${say.minutes(until)}, then it cools on`;
  return (
    `Common practice, no source: three or four on the lid. Run on, ${coals} laid once keep this dish above ` +
    `${say.degrees(hotEnough)} ${kept}; ours hold the oven at the heat that is wanted.`
  );
}
