// What the coals have to heat, as the oven sees it. coals/ declares it, bake/ implements it,
// plan.ts hands it in, so that imports run one way.

import type { Joules, Kelvin, SquareMetres, Watts } from '../quantity/unit.ts';

/** Numbers that describe the load at one moment; only the load itself knows what they mean. */
export type LoadState = readonly number[];

/** Watts = wattsPerKelvin x (floor - kelvin). */
export interface FloorTouch {
  readonly wattsPerKelvin: number;
  /** Of what lies on the floor, at its underside. */
  readonly kelvin: number;
}

export interface Load {
  readonly planArea: SquareMetres;
  readonly start: LoadState;
  /**
   * Heat that flows into the load.
   * @param oven   temperature inside the oven, between iron and food  [K]
   * @returns      never negative while the oven is hotter than the load [W]
   */
  heatInto(state: LoadState, oven: Kelvin): Watts;
  /** The state after taking up this much heat; pure. */
  after(state: LoadState, heat: Joules): LoadState;
  /**
   * What draws heat straight from the floor's iron, by lying on it, beside what comes through the
   * oven; left out, nothing does.
   */
  fromFloor?(state: LoadState): FloorTouch;
  /** Mean temperature. */
  temperature(state: LoadState): Kelvin;
}
