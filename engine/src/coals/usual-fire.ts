// What a question at the fire takes for granted until the cook says: one place for every shell.
// Ours, common practice without a source.

import type { Fuel } from '../camp/camp.ts';
import { fromFahrenheit, type Kelvin, type Minutes, minutes } from '../quantity/unit.ts';

/** The questions that ask how old the coals are. */
export type AgedDoor = 'layout' | 'left' | 'what-now';

interface UsualFire {
  /** Wanted in the oven. */
  readonly heat: Kelvin;
  /** The food stays in. */
  readonly stay: Minutes;
  /** From now until the food goes into an oven that is still empty. */
  readonly wait: Minutes;
  /** So far ahead a layout is looked at: half an hour's bake after its wait. */
  readonly look: Minutes;
  /** In already, where something goes wrong. */
  readonly inside: Minutes;
  /** Since the coals were lit. Wood coals live half as long. */
  readonly lit: Readonly<Record<AgedDoor, Readonly<Record<Fuel['kind'], Minutes>>>>;
}

export const usualFire: UsualFire = {
  heat: fromFahrenheit(350),
  stay: minutes(40),
  wait: minutes(15),
  look: minutes(45),
  inside: minutes(15),
  lit: {
    // ashed over, just laid
    layout: { briquettes: minutes(20), 'wood-coals': minutes(20) },
    left: { briquettes: minutes(30), 'wood-coals': minutes(20) },
    'what-now': { briquettes: minutes(50), 'wood-coals': minutes(25) },
  },
};
