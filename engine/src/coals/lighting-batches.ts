// When is which chimneyful lit, so that coals have ashed over when they are wanted?
// Sources: chimneyMinutes, chimneyAtHeight (lighting.ts). A few of each batch break or roll away:
// common practice, as provisions count.

import type { Air, Camp } from '../camp/camp.ts';
import { type Minutes, minutes } from '../quantity/unit.ts';
import { ashOverMinutes } from './lighting.ts';

/** How coals get ready at this camp. */
export interface FireLighting {
  /** From lighting to ashed over; for wood, until a fire gives its first shovel. */
  readonly readyMinutes: Minutes;
  readonly chimneyfulCoals: number;
}

export const fireLighting = (
  { fuel, place, gear }: Pick<Camp, 'fuel' | 'place' | 'gear'>,
  { wind }: Pick<Air, 'wind'>,
): FireLighting => ({
  readyMinutes:
    fuel.kind === 'wood-coals' ? fuel.lead : ashOverMinutes({ elevation: place.elevation, wind }),
  chimneyfulCoals: gear.chimneyfulCoals,
});

export interface LightingBatch {
  /** From coals on; below zero before it. */
  readonly minute: number;
  readonly coals: number;
  readonly chimneys: number;
  /** When its coals are laid. */
  readonly for: readonly number[];
}

export interface CoalNeed {
  readonly minute: number;
  readonly coals: number;
}

const LOST_SHARE = 0.05;
/** So long a chimneyful may wait, ashed over, before it is laid; half of chimneyMinutes' spread. */
const WAIT_MINUTES = 10;

/**
 * Batches, soonest first: each lit so that it has ashed over when it is laid. What is wanted within
 * ten minutes is lit together, and so is what would have to be lit while the first is in the chimney.
 */
export const lightingBatches = (
  needs: readonly CoalNeed[],
  { readyMinutes, chimneyfulCoals }: FireLighting,
): readonly LightingBatch[] => {
  const groups: CoalNeed[][] = [];
  for (const need of needs.filter(({ coals }) => coals > 0)) {
    const last = groups.at(-1);
    const first = last?.[0];
    const isWaiting = first !== undefined && need.minute - first.minute <= WAIT_MINUTES;
    const isBusy = groups.length === 1 && need.minute < readyMinutes;
    if (last !== undefined && (isWaiting || isBusy)) last.push(need);
    else groups.push([need]);
  }
  return groups.map((group) => {
    const laid = group.reduce((sum, { coals }) => sum + coals, 0);
    const coals = Math.ceil(laid * (1 + LOST_SHARE));
    return {
      minute: minutes((group[0]?.minute ?? 0) - readyMinutes),
      coals,
      chimneys: Math.max(1, Math.ceil(coals / Math.max(1, chimneyfulCoals))),
      for: group.map(({ minute }) => minute),
    };
  });
};
