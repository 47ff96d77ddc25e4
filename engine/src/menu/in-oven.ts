// What lies between dough and iron, and how hot the iron is as the dough goes in.
// Sources: data/in-oven.json, row by row; most of it is reckoned, and says so.
// Weak spot: nobody has published a measured contact of dough with cast iron in a camp oven.

import table from '../../data/in-oven.json' with { type: 'json' };
import { type Metres, metres } from '../quantity/unit.ts';
import type { MenuDish } from './menu.ts';
import type { Recipe, RecipeKind } from './recipe.ts';

/**
 * What the bottom of the food rests on.
 *
 * 'iron': the greased floor itself. 'paper': a round of baking paper with two tabs to lift by.
 * 'rack': a half-inch rack, air beneath. 'tin': its own tin, standing on such a rack.
 * 'meal': a finger's breadth of coarse meal strewn on the floor.
 */
export type FloorContact = (typeof FLOOR_CONTACTS)[number];
export const FLOOR_CONTACTS = ['iron', 'paper', 'rack', 'tin', 'meal'] as const;

/** How a load meets its oven. What nobody has said is filled in by `inOvenOf`. */
export interface InOven {
  readonly contact: FloorContact;
  /** 'hot': the lid stood over the fire by itself before it was set on a cooler oven. */
  readonly lid: 'hot' | 'cold';
  /** Left out where neither cook nor recipe has said it: bake/ decides by the kind of dish. */
  readonly oven?: 'preheated' | 'cold';
  /** Pieces that touch rise higher and stay pale where they meet. One piece is apart. */
  readonly pieces: 'touching' | 'apart';
  /** Its own tin, where `contact` is 'tin' and the cook has said its size. */
  readonly tin?: Tin;
}

/** Inside measures; a round tin has one width both ways. */
export interface Tin {
  readonly length: Metres;
  readonly width: Metres;
  readonly height: Metres;
  readonly isRound?: boolean;
}

/** What the recipe or the dish says of it. */
export type InOvenWish = Partial<InOven>;

export type Sticking = 'no' | 'seldom' | 'often';

export interface ContactFigures {
  readonly contact: FloorContact;
  /** From the iron of the floor to the bottom crust [W/(m2 K)]. */
  readonly conductance: number;
  /** Room that it takes from under the lid. */
  readonly height: Metres;
  readonly sticks: Sticking;
}

/**
 * Conductance, height and risk of sticking of one kind of contact.
 *
 * @source  trial-bake-model for 'iron' (tuned between two of its figures, grade D); the others are
 *          reckoned (grade D)
 */
export function contactFigures(contact: FloorContact): ContactFigures {
  const row = table.rows.find((each) => each.contact === contact);
  if (row === undefined) throw new RangeError(`nothing called ${contact} lies on a floor`);
  return {
    contact,
    conductance: row.wattsPerSquareMetreKelvin,
    height: metres(row.heightMetres),
    sticks: row.sticks as Sticking,
  };
}

type RecipeSaid = Pick<Recipe, 'kind' | 'method' | 'steps' | 'target' | 'inOven'>;

/**
 * How this dish meets its oven: the dish's word first, then the recipe's, then what its steps tell,
 * then what is usual for its kind.
 */
export function inOvenOf(recipe: RecipeSaid, dish?: Pick<MenuDish, 'inOven' | 'pins'>): InOven {
  const said: InOvenWish = { ...recipe.inOven, ...dish?.inOven };
  const oven = ovenSaid(recipe, dish);
  return {
    contact: said.contact ?? (said.tin === undefined ? usualContact(recipe) : 'tin'),
    lid: said.lid ?? 'cold',
    ...(oven === undefined ? {} : { oven }),
    pieces: said.pieces ?? 'apart',
    ...(said.tin === undefined ? {} : { tin: said.tin }),
  };
}

/** A pin is nearest to the cook; the older word `coldOven` of a recipe comes last. */
function ovenSaid(
  { inOven, target }: RecipeSaid,
  dish?: Pick<MenuDish, 'inOven' | 'pins'>,
): InOven['oven'] {
  const pinned = dish?.pins.preheat;
  if (pinned !== undefined) return pinned ? 'preheated' : 'cold';
  const said = dish?.inOven?.oven ?? inOven?.oven;
  if (said !== undefined || target.coldOven === undefined) return said;
  return target.coldOven ? 'cold' : 'preheated';
}

/** Doughs that are lifted out whole; biscuits and batter lie on fat (common practice, no source). */
const LIFTED_WHOLE: readonly RecipeKind[] = ['yeast-bread', 'quick-bread'];
const ON_A_FLOOR: readonly RecipeKind[] = ['yeast-bread', 'quick-bread', 'biscuit'];

/** Paper or fat, never both: by the recipe's own words, else by its kind. */
function usualContact({ kind, steps }: RecipeSaid): FloorContact {
  if (!ON_A_FLOOR.includes(kind)) return 'iron';
  const said = steps.map(({ say }) => say.toLowerCase()).join(' ');
  if (/\bpaper\b/.test(said)) return 'paper';
  const isGreased = /\b(greased|oiled|buttered)\b/.test(said);
  return !isGreased && LIFTED_WHOLE.includes(kind) ? 'paper' : 'iron';
}
