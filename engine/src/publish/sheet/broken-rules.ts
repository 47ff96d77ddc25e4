// The rules that an offer breaks, said so that somebody can act: who, at which oven, when, how much.

import type { Job, Violation } from '../../timetable/day-sheet.ts';
import type { Offer } from '../../timetable/replan/slip.ts';
import type { Say } from '../say.ts';
import { jobName, ovenWord } from '../words/jobs.ts';
import { ruleWord } from './rule-words.ts';

/** One phrase for each rule, and for each pair of hands that would work too long. */
export function brokenRules({ sheet, violations }: Offer, say: Say): readonly string[] {
  const groups = new Map<string, Violation[]>();
  for (const each of violations) {
    const key = each.rule === 'hours' ? `hours ${each.wanted}` : each.rule;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()].map((group) => phraseFor(group, sheet.jobs, say));
}

function phraseFor(group: readonly Violation[], jobs: readonly Job[], say: Say): string {
  const first = group[0]!;
  const hit = group.flatMap((each) => jobHit(each, jobs) ?? []);
  const [job] = hit.toSorted((one, other) => one.start - other.start);
  const where = job === undefined ? '' : ` (${jobWord(job, say)}${moreWord(group, say)})`;
  if (first.rule === 'hours') {
    const work = hit.reduce((sum, each) => sum + each.end - each.start, 0);
    const long = work > 0 ? ` ${say.minutes(work)}` : '';
    return `${say.hand(String(first.wanted))} would work${long} outside their hours${where}`;
  }
  return `${ruleWord(first.rule)}${byMinutes(group, jobs, say)}${where}`;
}

/** The job itself; for a rule about a load its own job of that kind, or when it comes out. */
function jobHit({ rule, jobs: ids, wanted }: Violation, jobs: readonly Job[]): Job | undefined {
  const named = jobs.filter(({ id }) => ids.includes(id));
  if (named.length > 0) return named.at(-1);
  const own = jobs.filter(({ load, dish }) => ids.includes(load ?? '') || ids.includes(dish ?? ''));
  const kind = rule.replace(AT_ITS_MINUTE, '');
  const off = (job: Job) => offMinute(job, Number(wanted), jobs);
  const [nearest] = own
    .filter((job) => job.kind === kind)
    .toSorted((one, other) => off(one) - off(other));
  return nearest ?? own.find((job) => job.kind === 'take-out');
}

const AT_ITS_MINUTE = /-at-its-minute$/;

/** So far from the minute after coals on at which it was wanted. */
function offMinute({ start, load }: Job, wanted: number, jobs: readonly Job[]): number {
  const lay = jobs.find((job) => job.kind === 'lay-coals' && job.load === load);
  return lay === undefined ? 0 : Math.abs(start - lay.end - wanted);
}

function jobWord(job: Job, say: Say): string {
  const oven = job.oven === undefined ? undefined : ovenWord(say.ovenName(job.oven));
  const dish = job.dish === undefined ? undefined : say.dish(job.dish);
  const what = [jobName(job), oven ?? dish].filter((word) => word !== undefined).join(', ');
  return `${what} at ${say.clock(job.start)}`;
}

const moreWord = (group: readonly Violation[], say: Say) =>
  group.length > 1 ? `, and ${say.count(group.length - 1)} more` : '';

/** Rules whose two numbers are minutes of one kind. */
const IN_MINUTES = /^(?:minutes-in-the-oven|can-wait|recipe-order|risen-enough)$/;

function byMinutes(group: readonly Violation[], jobs: readonly Job[], say: Say): string {
  const { rule } = group[0]!;
  const isTimed = AT_ITS_MINUTE.test(rule);
  if (!isTimed && !IN_MINUTES.test(rule)) return '';
  const off = group.map((each) => {
    const job = isTimed ? jobHit(each, jobs) : undefined;
    return job === undefined
      ? Math.abs(Number(each.found) - Number(each.wanted))
      : offMinute(job, Number(each.wanted), jobs);
  });
  const most = Math.max(...off.filter(Number.isFinite), 0);
  return most > 0 ? ` by ${say.minutes(most)}` : '';
}
