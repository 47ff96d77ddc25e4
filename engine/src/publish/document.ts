// A sheet as a tree of plain blocks. Screen, paper, PDF and terminal draw the same tree.

export interface SheetDocument {
  /** `dish-card`, `day-sheet`, …: the class a style sheet can hold on to. */
  readonly kind: string;
  readonly title: string;
  /**
   * The camp's title, first of the line above the title. For paper, which leaves its camp; a screen
   * that shows the camp already leaves it out.
   */
  readonly camp?: string;
  /** Above the title: oven, mark, place and date. */
  readonly eyebrow?: string;
  /** In the title line (AT-THE-FIRE 11): what it is kept free of, and how. Never folded away. */
  readonly flag?: string;
  readonly blocks: readonly Block[];
}

export type Block =
  /** `half`: on paper this section may stand beside the next one, in two columns. */
  | { readonly type: 'heading'; readonly text: string; readonly half?: boolean }
  | { readonly type: 'lead'; readonly parts: readonly Part[] }
  | { readonly type: 'paragraph'; readonly parts: readonly Part[] }
  /** The few numbers that matter, large: `17 above`, `8 below`. */
  | { readonly type: 'figures'; readonly figures: readonly BigFigure[] }
  /** How the coals lie, as big as the dish's name (AT-THE-FIRE 19). */
  | { readonly type: 'placement'; readonly lines: readonly string[] }
  /** Narrow drawings that follow each other stand side by side. */
  | {
      readonly type: 'drawing';
      readonly svg: string;
      readonly alt: string;
      readonly wide: boolean;
      /** The same, drawn anew for a screen as narrow as a phone; never on paper. */
      readonly phone?: string;
      /**
       * The day's lanes: legible from about 720 px. On a narrow screen they stand after the list and
       * scroll sideways.
       */
      readonly lanes?: true;
      /** The same as the lanes before it, for a screen as narrow as a phone; never on paper. */
      readonly narrow?: true;
    }
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
      /** Codes of all that is told in one box. */
      readonly codes?: readonly string[];
    }
  /** The fixed safety strip. */
  | { readonly type: 'strip'; readonly items: readonly string[] }
  /** Folded away on screen, printed in full. */
  | {
      readonly type: 'why';
      readonly question: string;
      readonly blocks: readonly Block[];
      readonly half?: boolean;
      /** Background that the fire does not ask for: not printed, so that a card stays two pages. */
      readonly isScreenOnly?: boolean;
    }
  /** A boxed piece that is never torn over two pages: a bag label, one oven of several. */
  | {
      readonly type: 'card';
      readonly title: string;
      readonly flag?: string;
      readonly blocks: readonly Block[];
    }
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
  /** The clock beside `when`, where `when` counts minutes from "coals on" (AT-THE-FIRE 5). */
  readonly clock?: string;
  readonly what: string;
  readonly who?: string;
  readonly note?: string;
  readonly strong?: boolean;
}
