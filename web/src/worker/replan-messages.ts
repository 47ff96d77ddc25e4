// What the page of a slipped day asks of the worker, and what it gets. Plain data.

import type { SheetDocument, Slip } from '#engine';
import type { PlaceTrouble, Voice } from './messages.ts';

export interface ReplanQuestion {
  readonly ask: 'replan';
  readonly file: string;
  readonly nowMinutes: number;
  readonly slips: readonly Slip[];
  readonly voice: Voice;
}

export interface ReplanAnswer {
  readonly troubles: readonly PlaceTrouble[];
  readonly sheet?: SheetDocument;
  readonly choices?: ReplanChoices;
}

/** What can slip on this day, as this reader reads it. */
export interface ReplanChoices {
  readonly dishes: readonly Choice[];
  readonly ovens: readonly Choice[];
  readonly hands: readonly Choice[];
  /** Lit by now, or about to be. */
  readonly lightings: readonly Choice[];
  /** Rises and bakes that are not over. */
  readonly running: readonly Choice[];
}

export interface Choice {
  readonly id: string;
  readonly label: string;
}
