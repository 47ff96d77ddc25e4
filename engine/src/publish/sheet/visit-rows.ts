// What is done when, minute by minute: all of one minute is one entry, since it is one visit. And
// when the coals for it are lit.

import { type CoalNeed, type FireLighting, lightingBatches } from '../../coals/lighting-batches.ts';
import type { StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { coalsWord } from './door.ts';
import { listed } from './phrases.ts';

/** Minute from "coals on", and what is done then. */
export type Deed = readonly [minute: number, what: string];

export function visitRows(deeds: readonly Deed[], say: Say): readonly StepRow[] {
  const minutes = [...new Set(deeds.map(([minute]) => minute))].sort((one, other) => one - other);
  return minutes.map((minute) => ({
    when: minute < 0 ? `${say.minutes(-minute)} before` : say.minutes(minute),
    what: deeds
      .filter(([each]) => each === minute)
      .map(([, what]) => what)
      .join('. '),
  }));
}

/** When to light the first chimneyful, and what is added later; wood is fed to a fire instead. */
export function lightingDeeds(
  needs: readonly CoalNeed[],
  { lighting, wood }: { readonly lighting: FireLighting; readonly wood: boolean },
  say: Say,
): readonly Deed[] {
  const ready = say.minutes(lighting.readyMinutes);
  if (wood) {
    const later = needs.length > 1 ? '; keep it fed, more comes from it' : '';
    return [
      [-lighting.readyMinutes, `Feed the fire: its first shovels come in about ${ready}${later}`],
    ];
  }
  return lightingBatches(needs, lighting).map((batch, index): Deed => {
    const later = batch.for.filter((minute) => minute > 0).map((minute) => say.minutes(minute));
    const meant = [
      ...(index === 0 ? ['the first set'] : []),
      ...(later.length > 0 ? [`what is added at ${listed(later)}`] : []),
    ].join(' and ');
    const chimneys = batch.chimneys > 1 ? ` in ${batch.chimneys} chimneys` : '';
    return [
      batch.minute,
      `Light ${coalsWord(batch.coals, 'briquettes')}${chimneys} for ${meant}; ashed over in about ${ready}`,
    ];
  });
}
