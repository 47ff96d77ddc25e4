// What the dough screens ask of the worker. Plain data.

import type { FizzTest, SheetDocument } from '#engine';
import type { OwnRecipe, Voice } from './messages.ts';

export type BreadDoor = 'leaven' | 'rise' | 'mix';

export interface BreadQuestion {
  readonly ask: 'bread';
  readonly door: BreadDoor;
  readonly what: { readonly readyRecipe: string } | OwnRecipe;
  readonly spot: BreadSpot;
  readonly powder: { readonly fizz?: FizzTest; readonly openedMonths?: number };
  readonly dough: DoughWish;
  readonly bags: number;
  readonly tinCubicMetres?: number;
  readonly voice: Voice;
}

/** Undefined is guessed, and the sheet says so. */
export interface BreadSpot {
  readonly airKelvin?: number;
  readonly metres?: number;
  /** The height the recipe was written for. */
  readonly writtenMetres?: number;
}

export interface DoughWish {
  readonly mixedKelvin?: number;
  readonly flourKelvin?: number;
  readonly tapKelvin?: number;
  /** One place after the other; the last lasts on. None: the air all the while. */
  readonly stays: readonly DoughStay[];
}

export interface DoughStay {
  readonly minutes: number;
  readonly kelvin: number;
}

/** Also where the bread does not do that: the sheet then says so. */
export type BreadAnswer = SheetDocument;
