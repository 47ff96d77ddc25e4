// What the app asks of the planning worker, and what it answers. Plain data: it is copied across.

import type {
  AirWord,
  CoalLook,
  Ground,
  Measures,
  NoticeLevel,
  SheetDocument,
  Symptom,
  WindSign,
} from '#engine';
import type { BenchAnswer, BenchQuestion } from './bench-messages.ts';
import type { BreadAnswer, BreadQuestion } from './bread-messages.ts';
import type { FitsAnswer, FitsQuestion } from './fits-messages.ts';
import type { PasteAnswer, PasteQuestion } from './paste-messages.ts';
import type { ReplanAnswer, ReplanQuestion } from './replan-messages.ts';

/** How the sheets are to be spoken. */
export interface Voice {
  readonly measures: Measures;
  readonly clock: '12' | '24';
}

export type Question =
  | { readonly ask: 'ready-recipes' }
  | { readonly ask: 'demos'; readonly today: string }
  | { readonly ask: 'open'; readonly text: string }
  | {
      readonly ask: 'meal';
      readonly file: string;
      readonly voice: Voice;
      /** What would help a late day is looked for too: asked once the day itself is shown. */
      readonly isAdvised?: boolean;
    }
  | { readonly ask: 'tonight'; readonly wish: TonightWish; readonly voice: Voice }
  | { readonly ask: 'grow'; readonly wish: TonightWish }
  | { readonly ask: 'ready-recipe'; readonly id: string }
  | {
      readonly ask: 'fire';
      readonly spot: FireSpot;
      readonly wish: FireWish;
      readonly voice: Voice;
    }
  | BenchQuestion
  | BreadQuestion
  | FitsQuestion
  | PasteQuestion
  | ReplanQuestion;

export interface Answers {
  readonly 'ready-recipes': readonly ReadyRecipe[];
  readonly demos: readonly CampEntry[];
  readonly open: Opened;
  readonly meal: MealAnswer;
  readonly tonight: TonightAnswer;
  /** The front door's wish as a camp file; nothing where the wish is refused. */
  readonly grow: CampEntry | undefined;
  /** A ready recipe as a camp file holds it; nothing where there is none of this name. */
  readonly 'ready-recipe': Readonly<Record<string, unknown>> | undefined;
  /** Also where the wish is refused: the sheet then says why. */
  readonly fire: SheetDocument;
  readonly bench: BenchAnswer;
  readonly bread: BreadAnswer;
  readonly fits: FitsAnswer;
  readonly paste: PasteAnswer;
  readonly replan: ReplanAnswer;
}

export type AnswerTo<Asked extends Question> = Answers[Asked['ask']];

/** A ready recipe, as the front door shows it. */
export interface ReadyRecipe {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
}

/** A camp as a list shows it, with its camp file as JSON text. */
export interface CampEntry {
  readonly id: string;
  readonly title: string;
  readonly date: string;
  readonly file: string;
}

/** What is wrong with one place of a camp file. */
export interface PlaceTrouble {
  readonly code: string;
  readonly path: string;
  readonly found: string;
  readonly wanted: string;
  readonly next: string;
}

export type Opened =
  | { readonly ok: true; readonly camp: CampEntry }
  | { readonly ok: false; readonly troubles: readonly PlaceTrouble[] };

export interface MealSheets {
  readonly title: string;
  /** The day is late and what would help was not looked for yet. */
  readonly isAdvicePending: boolean;
  readonly summary: SheetDocument;
  readonly dishCards: readonly {
    readonly dish: string;
    readonly name: string;
    /** Its ovens and when it is on the table, as this reader reads them; '' without an oven. */
    readonly ovens: string;
    readonly served: string;
    /** What the plan says about the dish's pins, each sentence once. */
    readonly pinned: readonly PinWord[];
    readonly card: SheetDocument;
  }[];
  readonly daySheet: SheetDocument;
  /** For the board and the pocket: the same day as each who works in it looks at it. */
  readonly boards: readonly { readonly path: string; readonly sheet: SheetDocument }[];
  readonly provisions: SheetDocument;
  /** For shop, kitchen table and loading, then what keeps people safe: fire, log, allergens, wash, ash. */
  readonly carried: readonly { readonly path: string; readonly sheet: SheetDocument }[];
}

export interface PinWord {
  readonly level: NoticeLevel;
  readonly code: string;
  readonly text: string;
}

/** Either may stand alone: troubles without sheets, or sheets without trouble. */
export interface MealAnswer {
  readonly troubles: readonly PlaceTrouble[];
  readonly sheets?: MealSheets;
  /** What the labels of the cook's own foods leave in doubt. */
  readonly foodWords?: readonly FoodWord[];
}

export interface FoodWord {
  readonly name: string;
  readonly text: string;
}

export interface TonightAnswer {
  readonly card: SheetDocument;
  /** False where the wish was refused: there is no camp to go on with. */
  readonly canGrow: boolean;
  /** How much is made; nothing where the wish was refused. */
  readonly amount?: TonightAmount;
}

export interface TonightAmount {
  readonly portions: number;
  /** What the recipe makes as it is written. */
  readonly written: number;
  /** Spoken for this reader: `1 lb 15 oz`. */
  readonly mass: string;
}

/** The front door: three answers, and the rest as guessed or changed. Plain data, SI units. */
export interface TonightWish {
  /** `2026-05-02`, and the minute of the day, where the cook is. */
  readonly today: string;
  readonly nowMinutes: number;
  readonly timeZone: string;
  readonly what: TonightFood;
  readonly ovenInches: number;
  readonly ovenStyle: 'regular' | 'deep';
  /** Minute of the day to eat at; undefined: as soon as may be. */
  readonly eatAtMinutes?: number;
  /** From here on: undefined is a guess, and the card lists it as one. */
  readonly fuel?: 'briquettes' | 'wood-coals';
  readonly pieceGrams?: number;
  readonly air?: AirWord;
  readonly wind?: WindSign;
  readonly ground?: Ground;
  readonly groundIs?: 'wet' | 'frozen';
  readonly hearth?: 'ground' | 'fire-pan' | 'fire-table';
  /** What falls in an hour. */
  readonly rainMillimetres?: number;
  /** Of a high, clear sun on the oven, 0 … 1. */
  readonly sunRatio?: number;
  /** So much higher above the coals than on its legs. */
  readonly riserMetres?: number;
  readonly lidGrams?: number;
  readonly height?: TonightHeight;
  readonly hands?: number;
  readonly windScreens?: number;
  readonly thermometer?: boolean;
  /** Hot before the bread goes in, or cold; undefined: as the recipe wants it. */
  readonly startsHot?: boolean;
}

/** Left out, `portions` is the recipe as written, as far as the oven takes it. */
export type TonightFood =
  | { readonly readyRecipe: string; readonly portions?: number }
  | { readonly kind: OwnKind; readonly thicknessMetres: number; readonly massGrams: number }
  | OwnRecipe;

/** One recipe of a camp file, in a file that holds no other. */
export interface OwnRecipe {
  readonly camp: string;
  readonly recipe: string;
  readonly name: string;
  readonly portions?: number;
}

export type OwnKind = 'yeast-bread' | 'quick-bread' | 'biscuit' | 'corn-bread';

export type TonightHeight = { readonly metres: number } | { readonly boilsKelvin: number };

/** An oven and the spot it stands on, as the front door has them. */
export type FireSpot = Omit<
  TonightWish,
  'what' | 'nowMinutes' | 'eatAtMinutes' | 'hands' | 'thermometer' | 'startsHot'
>;

export type FireMethod = 'bake' | 'roast' | 'simmer' | 'boil' | 'fry' | 'keep-warm';

/** Coals as they lie: whole briquettes, or shovels of wood coals. */
export interface Laid {
  readonly above: number;
  readonly below: number;
}

/** Coals of one age beside the others. */
export interface LaidSet extends Laid {
  readonly litMinutes: number;
}

/** What few fires need: coals of other ages, an oven that was hot already. */
export interface LaidMore {
  readonly others?: readonly LaidSet[];
  /** The iron as a thermometer reads it; left out, as hot as these coals made it. */
  readonly ironKelvin?: number;
  /** What they look like, in place of their age. */
  readonly look?: CoalLook;
  /** Nobody said how old they are: as old as is usual, so that they still burn. */
  readonly isAgeAssumed?: true;
}

/** Questions about coals that need no camp and no recipe. */
export type FireWish =
  | {
      readonly door: 'coals';
      readonly method: FireMethod;
      readonly heatKelvin: number;
      readonly minutes: number;
      /** Nobody has said the minutes: a pot then stays in until it boils. */
      readonly isUsualStay?: true;
    }
  | ({
      readonly door: 'layout';
      readonly method: FireMethod;
      readonly heatKelvin: number;
      readonly litMinutes: number;
      /** Undefined: the oven is still empty, the food goes in after a quarter of an hour. */
      readonly minutesIn?: number;
    } & Laid &
      LaidMore)
  | ({
      readonly door: 'left';
      readonly coals: number;
      readonly litMinutes: number;
    } & Pick<LaidMore, 'ironKelvin' | 'look' | 'isAgeAssumed'>)
  | ({
      readonly door: 'what-now';
      readonly symptom: Symptom;
      readonly method: FireMethod;
      readonly litMinutes: number;
      readonly minutesIn: number;
    } & Laid &
      LaidMore)
  | {
      readonly door: 'stack';
      readonly method: 'bake' | 'roast' | 'simmer';
      readonly heatKelvin: number;
      readonly minutes: number;
      readonly upperInches: number;
    };

export interface Posted {
  readonly id: number;
  readonly question: Question;
}

export type Returned =
  | { readonly id: number; readonly ok: true; readonly answer: Answers[keyof Answers] }
  | { readonly id: number; readonly ok: false; readonly reason: string };
