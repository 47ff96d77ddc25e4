// The day as lanes of hands and ovens over the clock: wide for a desk and for paper, and in short
// stretches for a phone.

import type { MealPlan } from '../../meal.ts';
import type { LitCoals, OvenSpan } from '../../timetable/day-sheet.ts';
import { endOf, startOf } from '../../timetable/walks.ts';
import type { Block } from '../document.ts';
import { type LaneFrame, NARROW, WIDE } from '../drawing/lane-axis.ts';
import type { LitPoint } from '../drawing/lane-lit.ts';
import type { SpanBar } from '../drawing/lane-oven.ts';
import { dayDrawing } from '../drawing/lanes.ts';
import type { Say } from '../say.ts';
import { axisClock } from '../speak-time.ts';
import { isFireJob, jobName, ovenWord, shortName } from '../words/jobs.ts';
import { byDay } from './by-day.ts';
import { servedTimes } from './day-sheet.ts';
import { type NumberedJob, numberedJobs, ownPart } from './job-list.ts';

/** Day by day where there are several: nobody works through the night. */
export const lanesBlocks = (plan: MealPlan, say: Say): readonly Block[] =>
  byDay(numberedJobs(plan), ({ job }) => job.start, { date: plan.camp.date, say }).flatMap(
    (told, _, all) =>
      dayLanes(all.length === 1 ? plan : ofDay(plan, told.day), told.items, told.say),
  );

/** What lies in ovens and is served on that day. */
const ofDay = (plan: MealPlan, day: number): MealPlan => {
  const [from, to] = [day * DAY_MINUTES, (day + 1) * DAY_MINUTES];
  const isOfDay = (at: number) => from <= at && at < to;
  const { spans, servings, ...rest } = plan.daySheet;
  return {
    ...plan,
    daySheet: {
      ...rest,
      spans: spans.filter((span) => isOfDay(span.from)),
      servings: servings.filter(({ served }) => isOfDay(served)),
    },
  };
};

const DAY_MINUTES = 1440;

function dayLanes(plan: MealPlan, jobs: readonly NumberedJob[], say: Say): readonly Block[] {
  const { spans, servings } = plan.daySheet;
  const times = [
    ...jobs.flatMap(({ walk }) => [startOf(walk), endOf(walk)]),
    ...spans.flatMap(({ from, to }) => [from, to]),
    ...servings.map(({ served }) => served),
  ];
  if (times.length === 0) return [];
  const from = Math.floor(Math.min(...times) / 15) * 15;
  const to = Math.ceil((Math.max(...times) + 1) / 15) * 15;
  const drawn = (stretches: readonly Stretch[], frame: LaneFrame) =>
    stretches.map((stretch, index, all) =>
      stripBlock({ plan, jobs, stretch, isLast: index === all.length - 1, say, frame }),
    );
  return [
    ...drawn(strips(plan, jobs, [from, to]), WIDE),
    ...drawn(shortStrips(jobs, [from, to]), NARROW),
  ];
}

/** As long as is told apart on a phone [min]. */
const SHORT_STRIP = 120;

/** On a phone: two hours at a time, and none in which nothing is done. */
function shortStrips(jobs: readonly NumberedJob[], [from, to]: Stretch): readonly Stretch[] {
  const count = Math.max(1, Math.ceil((to - from) / SHORT_STRIP));
  const length = Math.ceil((to - from) / count / 15) * 15;
  return Array.from(
    { length: count },
    (_, index): Stretch => [from + index * length, Math.min(to, from + (index + 1) * length)],
  ).filter(
    ([start, end]) =>
      start < end && jobs.some(({ walk }) => start < endOf(walk) && startOf(walk) < end),
  );
}

type Stretch = readonly [from: number, to: number];

/** So many jobs of one hand can still be told apart on one strip (tuned by eye on the demo camps). */
const JOBS_A_STRIP = 36;

/** A busy day is cut in strips of equal length, so that the numbers stay readable. */
function strips(
  plan: MealPlan,
  jobs: readonly NumberedJob[],
  [from, to]: Stretch,
): readonly Stretch[] {
  const busiest = Math.max(
    0,
    ...plan.camp.hands.map(({ id }) => jobs.filter((each) => ownPart(each, id)).length),
  );
  const count = Math.min(6, Math.max(1, Math.ceil(busiest / JOBS_A_STRIP)));
  const length = Math.ceil((to - from) / count / 15) * 15;
  return Array.from(
    { length: count },
    (_, index): Stretch => [from + index * length, Math.min(to, from + (index + 1) * length)],
  ).filter(([start, end]) => start < end);
}

interface Strip {
  readonly plan: MealPlan;
  readonly jobs: readonly NumberedJob[];
  readonly stretch: Stretch;
  readonly isLast: boolean;
  readonly say: Say;
  readonly frame: LaneFrame;
}

function stripBlock({ plan, jobs, stretch: [from, to], isLast, say, frame }: Strip): Block {
  const { daySheet: day, camp } = plan;
  // A lane that is empty on this strip would only take its room from the others.
  const isHere = (thing: { readonly start: number; readonly end: number }) =>
    from < thing.end && thing.start < to;
  const used = camp.ovens.filter(({ id }) =>
    day.spans.some((span) => span.oven === id && isHere({ start: span.from, end: span.to })),
  );
  const boxesOf = (id: string) => jobs.flatMap((each) => boxIn(each, id, [from, to]));
  const working = camp.hands.filter(({ id }) => boxesOf(id).length > 0);
  const alt = `Lanes of ${counted(working.length, 'pair')} of hands and ${counted(used.length, 'oven')} from ${say.clock(from)} to ${say.clock(to)}; the list below has every job in order.`;
  const svg = dayDrawing({
    from,
    to,
    clockAt: (minute) => axisClock(minute, say.clock),
    hands: working.map(({ id, name }) => ({
      name,
      work: boxesOf(id),
    })),
    ovens: used.map(({ id, name }) => ({
      name: ovenWord(name),
      spans: day.spans
        .filter(({ oven }) => oven === id)
        .flatMap((span) => barIn(span, [from, to], say)),
    })),
    ...fireIn(plan, jobs, [from, to]),
    lit: litIn(day.lit, [from, to]),
    countsCoals: camp.fuel.kind === 'briquettes',
    servings: servingMarks(plan, say).filter(({ at }) => from <= at && at <= to),
    words: { name: 'Coals', lit: 'lit', onOvens: 'needed on ovens' },
    keys: KEYS,
    hasKey: isLast,
    alt,
    frame,
  });
  const isNarrow = frame === NARROW;
  return {
    type: 'drawing',
    wide: true,
    lanes: true,
    svg,
    alt,
    ...(isNarrow ? { narrow: true } : {}),
  };
}

const KEYS = [
  ['work', 'hands at work'],
  ['fire', 'work at the fire'],
  ['heating', 'oven heating empty'],
  ['cooking', 'cooking'],
  ['holding', 'kept hot'],
  ['second-rise', 'dough rising in it'],
] as const;

const counted = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`;

/** What one pair of hands does of a job inside the stretch; a round is one box. */
function boxIn(each: NumberedJob, hand: string, [from, to]: Stretch) {
  const own = ownPart(each, hand);
  if (own === undefined) return [];
  const [start, end] = [startOf(own.walk), endOf(own.walk)];
  if (end <= from || to <= start) return [];
  return [
    {
      from: Math.max(from, start),
      to: Math.min(to, end),
      number: own.number,
      text: jobName(own.job),
      isFire: isFireJob(own.job.kind),
    },
  ];
}

function barIn(span: OvenSpan, [from, to]: Stretch, say: Say): readonly SpanBar[] {
  if (span.to <= from || to <= span.from) return [];
  const isNamed = span.state === 'cooking' || span.state === 'second-rise';
  return [
    {
      from: Math.max(from, span.from),
      to: Math.min(to, span.to),
      state: span.state,
      text: isNamed ? shortName(say.dish(span.dish)) : '',
    },
  ];
}

/** A feeder fire from its lighting to its last use, and when it is fed. */
function fireIn(plan: MealPlan, jobs: readonly NumberedJob[], [from, to]: Stretch) {
  const { jobs: all, lightings } = plan.daySheet;
  if (plan.camp.fuel.kind !== 'wood-coals') return {};
  const starts = new Map(all.map(({ id, start }) => [id, start]));
  const feeds = jobs.filter(({ job }) => job.kind === 'tend-fire');
  const bars = lightings.flatMap(({ at, readyAt, uses }) => {
    const last = Math.max(readyAt, ...uses.map(({ job }) => starts.get(job) ?? readyAt));
    if (last <= from || to <= at) return [];
    return [{ from: Math.max(from, at), readyAt: Math.max(from, readyAt), to: Math.min(to, last) }];
  });
  if (bars.length === 0) return {};
  const marks = feeds
    .filter(({ job }) => from <= job.start && job.start < to)
    .map(({ job, number }) => ({ at: job.start, number }));
  return { fire: { name: 'Feeder fire', bars, feeds: marks } };
}

/** The steps inside a stretch, with what is lit when it begins and when it ends. */
function litIn(lit: readonly LitCoals[], [from, to]: Stretch): readonly LitPoint[] {
  const all = lit.map(({ at, waiting, onOvens }) => ({ at, lit: waiting + onOvens, onOvens }));
  const before = all.filter(({ at }) => at <= from).at(-1);
  const inside = all.filter(({ at }) => from < at && at < to);
  const last = inside.at(-1) ?? before;
  return [
    ...(before === undefined ? [] : [{ ...before, at: from }]),
    ...inside,
    ...(last === undefined ? [] : [{ ...last, at: to }]),
  ];
}

function servingMarks({ daySheet: day }: MealPlan, say: Say) {
  return servedTimes(day.servings).map((at) => ({ at, text: `serve ${axisClock(at, say.clock)}` }));
}
