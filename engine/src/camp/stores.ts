// What a cook knows of buying, packing and carrying: packs as the shop sells them, what is in the
// larder already, boxes, who carries them, what is kept on ice.

import type { ClockMinutes, CubicMetres, Grams, Metres, Ratio } from '../quantity/unit.ts';

export interface Stores {
  readonly foods: readonly StoreFood[];
  /** As prices are written: `€`, `USD`. */
  readonly money?: string;
  /** One box as it is packed; a usual one where not said. */
  readonly box?: PackBox;
  readonly carriers: readonly Carrier[];
  readonly coolers: readonly Cooler[];
  /** When the boxes are closed: from then on ice melts. */
  readonly packedAt?: ClockMinutes;
}

/** One food in a shop and on the cook's shelf. */
export interface StoreFood {
  /** As it stands on the shopping list. */
  readonly name: string;
  /** Sizes that it is sold in; none where it is sold by weight. */
  readonly packs: readonly Pack[];
  readonly shop?: string;
  /** In the larder already. */
  readonly have?: Grams;
  /** So much of what is bought goes into the dish; 1 where nothing is lost. */
  readonly usable?: Ratio;
}

export interface Pack {
  readonly size: Grams;
  /** Of one pack, in the camp's money. */
  readonly price?: number;
}

export interface PackBox {
  /** Full, box and all. */
  readonly limit: Grams;
  /** Empty. */
  readonly mass: Grams;
}

export type CarrierKind = 'person' | 'mule' | 'boat' | 'car';

export interface Carrier {
  readonly name: string;
  readonly kind: CarrierKind;
  readonly count: number;
  /** What one of them carries; usual for its kind where not said. */
  readonly limit?: Grams;
}

/** A box kept cold by ice. */
export interface Cooler {
  readonly name: string;
  /** Inside; of the three measures where they are known, else of `volume`. */
  readonly inside: CoolerInside;
  readonly wall: Metres;
  /** Times a day that its lid is opened. */
  readonly openings?: number;
  /** Ice that goes in. */
  readonly ice?: Grams;
}

export interface CoolerInside {
  readonly length: Metres;
  readonly width: Metres;
  readonly height: Metres;
}

/** Inside measures of a box of which only its room is known: 3 long, 2 wide, 2 high; ours, no source. */
export function insideOf(volume: CubicMetres): CoolerInside {
  const side = Math.cbrt(volume / 12);
  return {
    length: (3 * side) as Metres,
    width: (2 * side) as Metres,
    height: (2 * side) as Metres,
  };
}
