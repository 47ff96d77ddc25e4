// A sheet as a tree of plain blocks. Screen, paper, PDF and terminal draw the same tree.

export interface SheetDocument {
  /** `dish-card`, `day-sheet`, …: the class a style sheet can hold on to. */
  readonly kind: string;
  readonly title: string;
  /** Allergens and oven stand in the title line (AT-THE-FIRE 11). */
  readonly eyebrow?: string;
  readonly blocks: readonly Block[];
}

export type Block =
  | { readonly type: 'heading'; readonly text: string }
  | { readonly type: 'lead'; readonly parts: readonly Part[] }
  | { readonly type: 'paragraph'; readonly parts: readonly Part[] }
  /** The few numbers that matter, large: `17 above`, `8 below`. */
  | { readonly type: 'figures'; readonly figures: readonly BigFigure[] }
  | { readonly type: 'drawing'; readonly svg: string; readonly alt: string; readonly wide: boolean }
  | { readonly type: 'facts'; readonly rows: readonly FactRow[] }
  | {
      readonly type: 'table';
      readonly caption: string;
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      readonly numeric: readonly boolean[];
    }
  | { readonly type: 'steps'; readonly rows: readonly StepRow[] }
  | { readonly type: 'list'; readonly items: readonly string[]; readonly tick: boolean }
  /** A caution; `level` orders and marks it, never by colour alone. */
  | {
      readonly type: 'notice';
      readonly level: 'danger' | 'stop' | 'doubt' | 'note';
      readonly text: string;
      readonly code?: string;
    }
  /** The fixed safety strip. */
  | { readonly type: 'strip'; readonly items: readonly string[] }
  /** Folded away on screen, printed in full. */
  | { readonly type: 'why'; readonly question: string; readonly blocks: readonly Block[] }
  | { readonly type: 'page-break' };

export interface Part {
  readonly text: string;
  readonly strong?: boolean;
}

export interface BigFigure {
  readonly figure: string;
  readonly label: string;
  readonly note?: string;
}

export interface FactRow {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}

export interface StepRow {
  readonly when: string;
  readonly what: string;
  readonly who?: string;
  readonly note?: string;
  readonly strong?: boolean;
}
