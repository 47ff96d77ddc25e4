// What the paste screen asks of the worker, and what it is answered. Plain data.

import type { LineRole, Manner, RecipeCorrections, RecipeKind, SheetDocument } from '#engine';
import type { OwnRecipe, Voice } from './messages.ts';

/** A food by its label, as a camp file holds it; any of it may be half typed. */
export type FileFoodItem = Readonly<Record<string, unknown>> & { readonly id: string };

export interface PasteQuestion {
  readonly ask: 'paste';
  readonly text: string;
  readonly corrections: RecipeCorrections;
  /** Foods of the cook's own, as camp files hold them. */
  readonly foods?: readonly FileFoodItem[];
  readonly voice: Voice;
}

export type PasteAnswer =
  | { readonly ok: false; readonly text: string }
  | {
      readonly ok: true;
      readonly title: string;
      readonly kind: RecipeKind;
      readonly portions?: number;
      readonly manner: Manner;
      readonly lines: readonly PasteLine[];
      /** The whole reading as a sheet: facts, dough, notices. */
      readonly sheet: SheetDocument;
      /** Nothing where no ingredient was found. */
      readonly recipe?: OwnRecipe;
      /** The recipe as it stands in a camp file, as JSON text. */
      readonly file?: string;
      /** The own foods that it needs. */
      readonly foods: readonly FileFoodItem[];
    };

export interface PasteLine {
  /** Its number among the pieces: corrections name it so. */
  readonly piece: number;
  readonly text: string;
  readonly role: LineRole;
  /** What it was read as, in words; '' for a blank. */
  readonly readAs: string;
  readonly state: 'understood' | 'look' | 'open';
  readonly food?: string;
  /** Foods to choose among, the one taken first. */
  readonly choices: readonly { readonly key: string; readonly name: string }[];
  readonly notices: readonly string[];
}
