// What a packed camp is: boxes by kind, and who carries which.

import type { Tool } from '../../bake/index.ts';
import type { CarrierKind } from '../../camp/stores.ts';
import type { Grams } from '../../quantity/unit.ts';

/** Things of two kinds never share a box; that is the whole of keeping apart. */
export type BoxKind =
  | 'dry-tin'
  | 'free-from'
  | 'dry'
  | 'produce'
  | 'raw-meat'
  | 'ready'
  | 'kit'
  | 'oven'
  | 'fuel';

export type PackedThing =
  | { readonly thing: 'food'; readonly name: string }
  | { readonly thing: 'bag'; readonly dish: string; readonly bag: string }
  | { readonly thing: 'leavening'; readonly dish: string; readonly name: string }
  | { readonly thing: 'ice' }
  | { readonly thing: 'fuel' }
  | { readonly thing: 'oven'; readonly oven: string }
  | { readonly thing: 'tool'; readonly tool: Tool; readonly count: number }
  | { readonly thing: GearThing; readonly count: number }
  | { readonly thing: 'own'; readonly name: string };

export type GearThing = 'chimney' | 'lid-stand' | 'table' | 'wind-screen' | 'thermometer';

export interface PackItem {
  readonly what: PackedThing;
  readonly kind: BoxKind;
  readonly mass: Grams;
  /** It may go into two boxes: flour, potatoes, charcoal; an oven may not. */
  readonly divides: boolean;
}

export interface PackedBox {
  /** `dry-2`: the second of its kind. */
  readonly id: string;
  readonly kind: BoxKind;
  readonly number: number;
  readonly items: readonly PackItem[];
  /** Full, box and all. */
  readonly mass: Grams;
  /** By so much it is heavier than a box may be; 0 for most. */
  readonly over: Grams;
}

export interface CarriedLoad {
  readonly name: string;
  readonly kind: CarrierKind;
  /** Ids of its boxes. */
  readonly boxes: readonly string[];
  readonly mass: Grams;
  readonly limit: Grams;
}

export interface Packing {
  readonly boxes: readonly PackedBox[];
  readonly mass: Grams;
  /** Empty where the camp names no carriers. */
  readonly carriers: readonly CarriedLoad[];
  /** Ids of boxes that nobody can carry; empty without carriers. */
  readonly left: readonly string[];
  readonly leftMass: Grams;
}
