// The rest of a day that slipped: what the cook has to decide, and at most two ways to go on, each with
// what moves and what comes next.

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import type { Move, Offer, Replanned, Slip } from '../../timetable/replan/slip.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { jobName, ovenWord } from '../words/jobs.ts';
import { brokenRules } from './broken-rules.ts';
import { doubtLines } from './doubt-part.ts';
import { jobRow, numberedJobs } from './job-list.ts';
import { listed } from './phrases.ts';
import { slipLines } from './slip-lines.ts';

export interface ReplanShown {
  readonly plan: MealPlan;
  readonly now: number;
  /** What was said of the day; none where that stands beside the sheet. */
  readonly slips?: readonly Slip[];
  readonly replanned: Replanned;
}

export function replanSheet(
  { plan, now, slips = [], replanned }: ReplanShown,
  say: Say,
): SheetDocument {
  const { offers, asks } = replanned;
  return {
    kind: 'replan',
    title: `From ${say.clock(now)} on: ${plan.camp.title}`,
    eyebrow: `${plan.camp.place.name} · ${plan.camp.date}`,
    blocks: [
      ...slipLines(plan, slips, say),
      ...noticeBlocks(asks, say),
      ...(isAllDone(offers, now)
        ? [
            {
              type: 'paragraph',
              parts: [{ text: 'All is done: nothing of this sheet is left.' }],
            } as const,
          ]
        : offers.flatMap((offer) => offerBlocks({ plan, now, offer }, say))),
      ...(offers.length === 0
        ? [{ type: 'paragraph', parts: [{ text: 'There is nothing left to plan.' }] } as const]
        : []),
    ],
  };
}

/** Whatever slipped, it is over. */
const isAllDone = (offers: readonly Offer[], now: number) =>
  offers.length > 0 &&
  offers.every(
    ({ sheet, moves, violations }) =>
      moves.length + violations.length === 0 && sheet.jobs.every(({ end }) => end <= now),
  );

interface Shown {
  readonly plan: MealPlan;
  readonly now: number;
  readonly offer: Offer;
}

const NAMES = { 'least-change': 'Least change', 'least-late': 'Least late' } as const;

const HOW = {
  shift: 'the same order, only later',
  affected: 'only the dishes that it hits are planned anew',
  all: 'all that is left is planned anew',
} as const;

function offerBlocks({ plan, now, offer }: Shown, say: Say): readonly Block[] {
  const next: MealPlan = { ...plan, daySheet: offer.sheet };
  const isStill = offer.moves.length === 0 && offer.violations.length === 0;
  return [
    {
      type: 'heading',
      text: isStill ? 'The sheet still holds' : `${NAMES[offer.kind]}: ${HOW[offer.how]}`,
    },
    leadBlock(offer, say),
    ...brokenBlocks(offer, say),
    servedTable(offer, say),
    ...doubtLines(next, say),
    ...movesBlocks({ plan, now, offer }, say),
    {
      type: 'why',
      question: 'All that is left, in order',
      blocks: [
        {
          type: 'steps',
          rows: numberedJobs(next)
            .filter(({ job }) => job.end > now)
            .map((each) =>
              jobRow(each, next, say, { isNamed: plan.camp.hands.length > 1, isBrief: true }),
            ),
        },
      ],
    },
  ];
}

function leadBlock({ lateBy, sheet }: Offer, say: Say): Block {
  const late = sheet.servings.filter((serving) => serving.lateBy > 0);
  const text =
    lateBy < 0.5
      ? 'Everything is on the table at its hour'
      : `${listed(late.map(({ dish, lateBy: by }) => `${say.dish(dish)} ${say.minutes(by)} late`))}`;
  return { type: 'lead', parts: [{ text, strong: true }, { text: '.' }] };
}

/** An offer that breaks a rule is only made where none was found that breaks none. */
function brokenBlocks(offer: Offer, say: Say): readonly Block[] {
  const rules = brokenRules(offer, say);
  if (rules.length === 0) return [];
  const text = `No plan was found that keeps every rule. This one breaks: ${rules.join('; ')}.`;
  return [{ type: 'notice', level: 'stop', text }];
}

function servedTable({ sheet }: Offer, say: Say): Block {
  return {
    type: 'table',
    caption: '',
    head: ['wanted', 'served', 'dish'],
    numeric: [],
    rows: sheet.servings.map(({ dish, wanted, served }) => [
      say.clock(wanted),
      say.clock(served),
      say.dish(dish),
    ]),
  };
}

/** More than these are a new sheet, not a list of changes. */
const MOST_MOVES = 12;

function movesBlocks({ plan, offer }: Shown, say: Say): readonly Block[] {
  const { moves } = offer;
  if (moves.length === 0) return [];
  const jobs = new Map(
    [...plan.daySheet.jobs, ...offer.sheet.jobs].map((job) => [job.id, job] as const),
  );
  const manned = moves.filter(({ hands, handsWere }) => hands.length + handsWere.length > 0);
  const rows = manned.slice(0, MOST_MOVES).map((move) => moveRow(move, jobs.get(move.job), say));
  const more = manned.length - rows.length;
  return [
    {
      type: 'table',
      caption: 'What moves',
      head: ['was', 'now', 'job', 'who'],
      numeric: [],
      rows,
    },
    ...(more > 0
      ? [{ type: 'paragraph', parts: [{ text: `And ${say.count(more)} more jobs.` }] } as const]
      : []),
  ];
}

function moveRow({ was, now, hands, handsWere }: Move, job: Job | undefined, say: Say) {
  const about =
    job === undefined
      ? ''
      : [
          jobName(job),
          job.oven === undefined
            ? job.dish === undefined
              ? ''
              : say.dish(job.dish)
            : ovenWord(say.ovenName(job.oven)),
        ]
          .filter((word) => word !== '')
          .join(', ');
  const who = hands.length > 0 ? hands : handsWere;
  return [
    was === undefined ? 'new' : say.clock(was),
    now === undefined ? 'not at all' : say.clock(now),
    about,
    listed(who.map((id) => say.hand(id))),
  ];
}
