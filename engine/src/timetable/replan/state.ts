// How does the day stand at this minute? Each job of the sheet is done, running or not begun, by what
// the cook says, else by the sheet and the slips.

import type { Job } from '../day-sheet.ts';
import type { DayWork } from '../work.ts';
import type { Lost } from './changed-request.ts';
import type { JobWord, ReplanAsked, Slip } from './slip.ts';

export interface JobState {
  readonly job: Job;
  /** 'lost': begun or not, it is not gone on with. */
  readonly state: 'done' | 'running' | 'open' | 'lost';
  /** As it was, is, or was planned. */
  readonly start: number;
  readonly end: number;
}

/** By job id. */
export type DayState = ReadonlyMap<string, JobState>;

/** `isEased`: hands are washed again before anything that is still to come. */
export function dayState(
  asked: ReplanAsked,
  day: DayWork,
  { isEased, lost }: { readonly isEased: boolean; readonly lost: Lost },
): DayState {
  const { sheet, known = [] } = asked;
  const words = new Map(known.map((each) => [each.job, each]));
  const states = new Map(
    sheet.jobs.map((job) => [job.id, stateOf(asked, job, words.get(job.id))] as const),
  );
  reopened(states, day);
  washedAgain(states, day, isEased ? Number.POSITIVE_INFINITY : asked.now);
  for (const [id, each] of states) {
    const isLost = lost.loads.has(each.job.load ?? '') || isOfLost(each, lost);
    if (isLost && each.state !== 'done') states.set(id, { ...each, state: 'lost' });
  }
  return states;
}

/** Dough that is shared with another dish is still mixed. */
const isOfLost = ({ job }: JobState, { dishes }: Lost) =>
  dishes.has(job.dish ?? '') && job.values.with === undefined;

/** Hands that were washed too long ago for the work that is still to come. */
function washedAgain(states: Map<string, JobState>, day: DayWork, before: number): void {
  for (const { from, to, most } of day.problem.lags) {
    if (most === undefined || day.meanings[from]!.kind !== 'wash-hands') continue;
    const wash = states.get(day.problem.tasks[from]!.id);
    const work = states.get(day.problem.tasks[to]!.id);
    if (wash === undefined || wash.state === 'open' || work?.state !== 'open') continue;
    if (wash.start + most >= before) continue;
    const { job } = wash;
    states.set(job.id, { job, state: 'open', start: job.start, end: job.end });
  }
}

function stateOf(asked: ReplanAsked, job: Job, word: JobWord | undefined): JobState {
  const planned = { job, ...bySheet(asked, job) };
  if (word === undefined) return planned;
  const start = word.start ?? Math.min(planned.start, asked.now);
  if (word.state === 'not-begun') return { job, state: 'open', start: job.start, end: job.end };
  if (word.state === 'running') {
    return { job, state: 'running', start, end: Math.max(asked.now, word.end ?? planned.end) };
  }
  const end = Math.min(asked.now, word.end ?? Math.min(asked.now, planned.end));
  return { job, state: 'done', start: Math.min(start, end), end };
}

/** What hands do slips with them; what goes on by itself keeps its minutes once it has begun. */
function bySheet({ now, slips }: ReplanAsked, job: Job): Omit<JobState, 'job'> {
  const behind = job.hands.length === 0 ? 0 : behindOf(slips, job);
  const longer = slips.reduce(
    (sum, slip) => (slip.kind === 'takes-longer' && slip.job === job.id ? sum + slip.minutes : sum),
    0,
  );
  const { start } = job;
  const end = job.end + Math.max(0, longer);
  const isGone = slips.some((slip) => slip.kind === 'hand-gone' && job.hands.includes(slip.hand));
  if (start >= now - behind || (isGone && end > now)) return { state: 'open', start, end };
  if (end <= now - behind) return { state: 'done', start, end };
  return { state: 'running', start, end: Math.max(now, end + behind) };
}

const behindOf = (slips: readonly Slip[], job: Job) =>
  Math.max(
    0,
    ...slips.flatMap((slip) => {
      if (slip.kind !== 'behind') return [];
      return slip.dish === undefined || slip.dish === job.dish ? [slip.minutes] : [];
    }),
  );

/** Nothing has begun that waits for what is not done. */
function reopened(states: Map<string, JobState>, day: DayWork): void {
  const { problem } = day;
  const idOf = (task: number) => problem.tasks[task]!.id;
  for (let round = 0; round <= problem.tasks.length; round += 1) {
    let isChanged = false;
    for (const { from, to, least } of problem.lags) {
      const before = states.get(idOf(from));
      const after = states.get(idOf(to));
      if (before === undefined || after === undefined || after.state === 'open') continue;
      const each = day.meanings[from]!.round?.minutes ?? problem.tasks[from]!.minutes;
      const waitsForEnd = least >= each && each > 0;
      const isOpen = before.state === 'open' && least >= 0;
      const isRunning = before.state === 'running' && waitsForEnd && after.start < before.end;
      if (!isOpen && !isRunning) continue;
      const { job } = after;
      states.set(job.id, { job, state: 'open', start: job.start, end: job.end });
      isChanged = true;
    }
    if (!isChanged) return;
  }
}
