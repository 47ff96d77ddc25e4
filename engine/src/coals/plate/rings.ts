// A round plate cut into rings of one width. Plain geometry, no source.

export interface Rings {
  readonly count: number;
  readonly width: number; // m
}

export const ringsOfPlate = (radiusMetres: number, count: number): Rings => ({
  count,
  width: radiusMetres / count,
});

export const ringArea = ({ width }: Rings, ring: number): number =>
  Math.PI * width ** 2 * (2 * ring + 1);
