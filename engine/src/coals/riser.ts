// How much of the coals' heat still finds the floor when the oven stands higher above them?
// Source: bergman2011 table 13.2 (coaxial parallel discs). Weak spot: a view factor is only the
// radiated part; hot air that rises spreads too, and nobody has measured either.

import type { OvenBody } from './geometry.ts';

/** Legs of about two inches over coals of about one: what the charts and the fit were made with. */
const USUAL_GAP_METRES = 0.025;
/** Taller than this an oven hangs over a fire, which is another way of cooking. */
export const MOST_RISER_METRES = 0.2;

/**
 * What the floor receives on a riser, beside standing on its own legs (1). An estimate: the bed of
 * coals and the floor as two discs of the floor's size, and all heat taken to go as radiation does.
 *
 * @param riserMetres  extra height above the coals   [m]  0 … 0.2
 * @source             bergman2011 table 13.2 (grade B); that all heat follows it: ours (grade D)
 */
export const riserFactor = (body: Pick<OvenBody, 'floorDiameter'>, riserMetres: number): number => {
  const radius = body.floorDiameter / 2;
  const rise = Math.min(MOST_RISER_METRES, Math.max(0, riserMetres));
  const seen = (gap: number) => discView({ from: radius, to: radius, gap });
  return seen(USUAL_GAP_METRES + rise) / seen(USUAL_GAP_METRES);
};

/** Share of what one disc sends out that meets the other. @source bergman2011 table 13.2 */
export const discView = (discs: {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
}): number => {
  const near = discs.from / discs.gap;
  const far = discs.to / discs.gap;
  const sum = 1 + (1 + far ** 2) / near ** 2;
  return (sum - Math.sqrt(sum ** 2 - 4 * (far / near) ** 2)) / 2;
};
