// What the formula bench asks of the worker, and what it gets. Plain data.

import type { FigureName, SheetDocument } from '#engine';
import type { PlaceTrouble, Voice } from './messages.ts';

export interface BenchQuestion {
  readonly ask: 'bench';
  /** The camp as it is being typed, and which recipe of it is on the bench. */
  readonly file: string;
  readonly recipe: string;
  readonly beside?: BenchBeside;
  readonly targets?: BenchTargets;
  readonly swap?: { readonly line: number; readonly to: string };
  readonly voice: Voice;
}

/** A recipe of this or another state of the camp, or a ready one where no file is given. */
export interface BenchBeside {
  readonly file?: string;
  readonly recipe: string;
  readonly name?: string;
}

/** An oven of the camp, by its id. */
export interface BenchFill {
  readonly oven: string;
  /** As it is rolled out or poured; left out, as the recipe has it. */
  readonly thickMetres?: number;
}

export interface BenchOven {
  readonly id: string;
  readonly name: string;
}

export interface BenchTargets {
  readonly batchGrams?: number;
  readonly fill?: BenchFill;
  readonly figures: Readonly<Partial<Record<FigureName, number>>>;
  /** Places of the lines that stay as they are. */
  readonly held: readonly number[];
}

export interface BenchAnswer {
  readonly troubles: readonly PlaceTrouble[];
  /** The formula, or one sentence on why there is none. */
  readonly sheet?: SheetDocument;
  readonly lines?: readonly BenchLine[];
  readonly ovens?: readonly BenchOven[];
  readonly flourGrams?: number;
  /** `62 % water, 18 % fat, 1.7 % salt; 920 g`. */
  readonly brief?: string;
  readonly target?: Proposal;
  readonly swap?: Proposal;
}

export interface BenchLine {
  readonly name: string;
  readonly grams: number;
  readonly measure: string;
  /** Of the flour; undefined where there is no flour. */
  readonly percent?: number;
  /** Flour is what the rest is counted against. */
  readonly isFlour: boolean;
  readonly offers: readonly { readonly to: string; readonly label: string }[];
}

/** A changed recipe to be looked at first, and taken or left. */
export interface Proposal {
  readonly sheet: SheetDocument;
  /** All lines of the changed recipe in order; none where there is nothing to take. */
  readonly items: readonly ProposedItem[];
}

export interface ProposedItem {
  /** Which line it was; undefined for a new one. */
  readonly at?: number;
  /** What changes in it, as a camp file writes it; empty where it stays. */
  readonly changed: Readonly<Record<string, string>>;
}
