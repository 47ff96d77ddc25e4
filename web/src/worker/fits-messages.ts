// What the room screen asks of the worker: this oven, this dough, so much of it. Plain data, SI units.

import type { FitKind, FloorContact, SheetDocument } from '#engine';
import type { OwnRecipe, Voice } from './messages.ts';

export interface FitsQuestion {
  readonly ask: 'fits';
  /** A shape of dough, or a bread as its recipe has it. */
  readonly what: { readonly kind: FitKind } | { readonly readyRecipe: string } | OwnRecipe;
  /** None: which oven for so much? */
  readonly ovens: readonly FitsOven[];
  /** The most that goes into the first oven is asked for, whatever there is. */
  readonly isMost: boolean;
  /** Left out, as much as the recipe makes. */
  readonly amountGrams?: number;
  readonly lying: FitsLying;
  readonly voice: Voice;
}

export interface FitsOven {
  readonly inches: number;
  readonly style: 'regular' | 'deep';
  /** Inside, as the cook measured it. */
  readonly floorMetres?: number;
  readonly depthMetres?: number;
}

/** Undefined is what is usual, and of a recipe what it says. */
export interface FitsLying {
  readonly thickMetres?: number;
  readonly cutterMetres?: number;
  readonly pieceGrams?: number;
  readonly wedges?: number;
  readonly contact?: FloorContact;
  readonly isTouching?: true;
}

/** Also where nothing fits: the sheet then says so. */
export type FitsAnswer = SheetDocument;
