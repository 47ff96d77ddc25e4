// A set of coals seen from the side, every coal where it lies: those in the cut are whole, those that
// lie before or behind it are outlines, so that a ring and its empty middle can be read.

import type { CoalPlace, CoalSet } from '../../coals/coal-plan.ts';
import { metres } from '../../quantity/unit.ts';
import { BRIQUETTE_METRES, coals, FLAT_SHARE } from './coal.ts';
import { group } from './svg.ts';

export interface CoalRow {
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly set: CoalSet;
  /** Of the oven, on the page. */
  readonly middle: number;
  /** What the nearest coals lie on. */
  readonly groundY: number;
  readonly scale: number;
  /** How much farther coals stand higher; less where little room is above them. */
  readonly tilt?: number;
}

const TILT = 0.05;

/** How high a row reaches above what it lies on. */
export const rowHeight = ({ set, scale, tilt = TILT }: Pick<CoalRow, 'set' | 'scale' | 'tilt'>) =>
  set.places.length === 0 ? 0 : sideOf(set) * scale * FLAT_SHARE + 2 * reachOf(set) * tilt * scale;

const sideOf = ({ pieceWidth }: CoalSet) => pieceWidth ?? BRIQUETTE_METRES;

const reachOf = ({ places }: CoalSet) => Math.max(0, ...places.map(({ y }) => Math.abs(y)));

export function coalRow(row: CoalRow): string {
  const { fuel, set, middle, groundY, scale, tilt = TILT } = row;
  const side = sideOf(set);
  const y = groundY - (side * FLAT_SHARE * scale) / 2 - reachOf(set) * tilt * scale;
  const drawn = (isCut: boolean) =>
    coals({
      fuel,
      places: set.places
        .filter((place) => isInCut(place, set) === isCut)
        .map((place) => ({ ...place, y: metres(place.y * tilt) })),
      pieceWidth: set.pieceWidth,
      centre: [middle, y],
      scale,
      flat: true,
      isOutline: !isCut,
    });
  return group(
    { class: 'coal-row' },
    fuel === 'briquettes' ? drawn(false) : group({ opacity: '0.45' }, drawn(false)),
    drawn(true),
  );
}

/** The cut goes through it, or it is the ring's outermost to one side where none is cut. */
const isInCut = (place: CoalPlace, set: CoalSet) => {
  if (Math.abs(place.y) <= sideOf(set) / 2) return true;
  const side = set.places.filter(({ x, in: how }) => how === 'ring' && x * place.x > 0);
  const reach = Math.max(0, ...side.map(({ x }) => Math.abs(x)));
  const isCutThere = side.some(({ y }) => Math.abs(y) <= sideOf(set) / 2);
  return place.in === 'ring' && !isCutThere && Math.abs(place.x) >= reach - 1e-6;
};
