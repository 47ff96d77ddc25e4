// Which fire, which job does a cook mean who says a few words in the middle of the day? What burns or
// runs at this minute comes first, then what is due, then what is over.

import type { DaySheet, Job, Lighting } from '../day-sheet.ts';

/**
 * The lighting of this chimney that may still have failed: the last one lit whose coals nobody has
 * laid, else the next that is due, else the last of all.
 *
 * @param chimney  as the sheet counts them; undefined is found where none has this number
 */
export function lightingMeant(sheet: DaySheet, chimney: number, now: number): Lighting | undefined {
  const own = sheet.lightings
    .filter((each) => each.chimney === chimney)
    .toSorted((one, other) => one.at - other.at);
  const starts = new Map(sheet.jobs.map((job) => [job.id, job.start]));
  const isLaid = ({ uses }: Lighting) => uses.some(({ job }) => (starts.get(job) ?? now) < now);
  const burning = own.findLast((each) => each.at <= now && !isLaid(each));
  return burning ?? own.find((each) => each.at > now) ?? own.at(-1);
}

/** A job of the dish by its kind; of a dough's rises the one that goes on now. */
export function jobMeant(
  sheet: DaySheet,
  said: { readonly dish: string; readonly kind: string; readonly longer: number },
  now: number,
): Job | undefined {
  const own = sheet.jobs.filter((job) => isOf(job, said.dish) && isKind(job, said.kind));
  const exact = own.filter(({ kind }) => kind === said.kind);
  const isNow = ({ start, end }: Job) => start <= now && now < end;
  const isJustOver = (job: Job) =>
    job.end <= now && now < job.end + said.longer && !isFollowed(sheet, job, now);
  const isAhead = ({ start }: Job) => start > now;
  const ranked = [isNow, isJustOver, isAhead].flatMap((isMeant) => [
    exact.filter(isMeant),
    own.filter(isMeant),
  ]);
  return longest(ranked.find((jobs) => jobs.length > 0) ?? exact);
}

const isOf = ({ dish, values }: Job, id: string) =>
  dish === id ||
  String(values.with ?? '')
    .split(' ')
    .includes(id);

/** Who says "rise" may mean either. */
const isKind = ({ kind }: Job, said: string) =>
  kind === said || (said === 'rise' && kind === 'second-rise');

/** Hands have gone on with it already. */
const isFollowed = ({ jobs }: DaySheet, done: Job, now: number) =>
  jobs.some(
    (job) =>
      job.dish === done.dish && job.hands.length > 0 && job.start >= done.end && job.start < now,
  );

const longest = (jobs: readonly Job[]): Job | undefined =>
  jobs.toSorted((one, other) => other.end - other.start - (one.end - one.start))[0];
