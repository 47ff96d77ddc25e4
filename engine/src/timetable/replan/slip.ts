// What may have happened by now, and what a re-plan offers.

import type { Notice } from '../../notice/notice.ts';
import type { ClockMinutes, Minutes } from '../../quantity/unit.ts';
import type { DaySheet, TimetableRequest, Violation } from '../day-sheet.ts';

export type Slip =
  /** Work is so far behind: what the sheet has done in the last minutes is not. One dish, or all. */
  | { readonly kind: 'behind'; readonly minutes: number; readonly dish?: string }
  /** A rise, a bake or any other job takes so much longer than the sheet says. */
  | { readonly kind: 'takes-longer'; readonly job: string; readonly minutes: number }
  /** A chimneyful that did not catch: its coals have to be lit again. */
  | { readonly kind: 'chimney-failed'; readonly lighting: string }
  /** They eat so much later than wished: one dish, or all. */
  | { readonly kind: 'guests-late'; readonly minutes: number; readonly dish?: string }
  /** Cracked, spilt or dropped: of no more use. */
  | { readonly kind: 'oven-dropped'; readonly oven: string }
  | { readonly kind: 'hand-gone'; readonly hand: string };

/** What is known of a job; all others are as the sheet and the slips have them. */
export interface JobWord {
  readonly job: string;
  readonly state: 'done' | 'running' | 'not-begun';
  /** When it really began. */
  readonly start?: ClockMinutes;
  /** When it was really done; for one that runs, when it will be. */
  readonly end?: ClockMinutes;
}

export interface ReplanAsked {
  /** As it was planned. */
  readonly request: TimetableRequest;
  readonly sheet: DaySheet;
  readonly now: ClockMinutes;
  readonly slips: readonly Slip[];
  readonly known?: readonly JobWord[];
  readonly seed?: number;
  readonly decodes?: number;
}

export interface Replanned {
  /** At most two: least change, and least late where that is sooner. */
  readonly offers: readonly Offer[];
  /** What only the cook can decide: a pin that can't be kept, a dish that is lost. */
  readonly asks: readonly Notice[];
}

export interface Offer {
  readonly kind: 'least-change' | 'least-late';
  /** 'shift': the same order, later; 'affected': only the dishes that it hits; 'all': planned anew. */
  readonly how: 'shift' | 'affected' | 'all';
  readonly request: TimetableRequest;
  /** The whole day: what was done stands in it as it was. */
  readonly sheet: DaySheet;
  /** Worst minutes after the time wished now. */
  readonly lateBy: Minutes;
  /** Jobs that stand elsewhere or are somebody else's, soonest first. */
  readonly moves: readonly Move[];
  /** Rules that it breaks, by the checker; empty where the day is sound from here on. */
  readonly violations: readonly Violation[];
}

export interface Move {
  readonly job: string;
  /** Undefined for work that is new. */
  readonly was?: ClockMinutes;
  /** Undefined for work that is no longer done. */
  readonly now?: ClockMinutes;
  readonly handsWere: readonly string[];
  readonly hands: readonly string[];
}
