// The day of a meal before anyone asks what would help: found, explained, with its doubts.

import { type Notice, notice, type Refusal } from '../notice/notice.ts';
import { type Attempt, hopelessIn, type TryWish, tryEasing } from './attempt.ts';
import type { DayJudge } from './day-judge.ts';
import type { DaySheet, TimetableRequest } from './day-sheet.ts';
import { RUNS } from './doubt/runs.ts';
import { planNotices } from './plan-notices.ts';
import { unplannedNotice } from './unplanned.ts';

export interface FirstOptions extends TryWish {
  /** Runs of the day with drawn bakes and rises; 0 for none. */
  readonly doubtRuns?: number;
  /** Left out, nothing is proven and no doubt is drawn: a first screen goes without both. */
  readonly judge?: DayJudge;
}

/** The sheet without advice: a late one says that advice was not looked for yet. */
export function firstSheet(request: TimetableRequest, options: FirstOptions): DaySheet {
  if (request.camp.hands.length === 0) return withoutHands();
  if (request.dishes.length === 0) return emptySheet([]);
  const best = tryEasing(request, options);
  const aside = hopelessIn(request, best);
  if (aside === undefined) return sheetOf(request, best, options);
  const dishes = request.dishes.filter((work) => work.dish.id !== aside.dish);
  const rest = firstSheet({ ...request, dishes }, options);
  const proven = provenOf([...(options.judge?.proven(request) ?? []), ...(rest.proven ?? [])]);
  const isProven = proven.length > 0;
  const status = isProven ? 'impossible' : rest.status === 'planned' ? 'late' : rest.status;
  const isItsOwn = proven.some(({ about }) => about.dish === aside.dish);
  const notices = [unplannedNotice(aside, { isProven: isItsOwn }), ...rest.notices];
  return { ...rest, status, isAdvicePending: true, ...(isProven ? { proven } : {}), notices };
}

/** What is proven of the whole day stays proven of it, whatever is set aside; each said once. */
function provenOf(refusals: readonly Refusal[]): readonly Refusal[] {
  const keyOf = ({ code, about, conflicts }: Refusal) =>
    JSON.stringify([code, about.dish, about.dish === undefined ? conflicts : []]);
  return [...new Map(refusals.map((each) => [keyOf(each), each])).values()];
}

/** An attempt as the sheet that a cook reads. */
export function sheetOf(request: TimetableRequest, best: Attempt, options: FirstOptions): DaySheet {
  const { doubtRuns = RUNS, seed = 1, judge } = options;
  const { day, found, laid, extra, unwashed } = best;
  const isLate = found.status === 'late';
  const proven = isLate && judge !== undefined ? judge.proven(request) : [];
  const { servings, jobs } = laid;
  const runs = { seed, runs: doubtRuns };
  const doubt = doubtRuns > 0 ? judge?.doubt(request, day, found.plan, runs) : undefined;
  const isUnsure = doubt !== undefined && doubt.inTime < SURE_ENOUGH;
  return {
    status: proven.length > 0 ? 'impossible' : isLate ? 'late' : 'planned',
    ...laid,
    advice: [],
    ...(isLate || isUnsure ? { isAdvicePending: true } : {}),
    ...(proven.length > 0 ? { proven } : {}),
    ...(doubt === undefined ? {} : { doubt }),
    notices: [
      ...planNotices({ request, day, plan: found.plan, servings, jobs, unwashed }),
      ...extra,
      ...day.notices,
    ],
  };
}

/** From this share in time on nobody looks for a surer day; a judgement. */
const SURE_ENOUGH = 0.9;

const withoutHands = (): DaySheet => ({
  ...emptySheet([notice('TIMETABLE_NO_HANDS', 'stop')]),
  status: 'impossible',
});

const emptySheet = (notices: readonly Notice[]): DaySheet => ({
  status: 'planned',
  jobs: [],
  spans: [],
  lightings: [],
  lit: [],
  servings: [],
  advice: [],
  notices,
});
