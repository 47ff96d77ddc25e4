// The whole day: one drawing of hands, ovens and lit coals over the clock, and the list under it.

import type { MealPlan } from '../../meal.ts';
import type { LitCoals, OvenSpan, Serving } from '../../timetable/day-sheet.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { LitPoint } from '../drawing/lane-lit.ts';
import type { SpanBar } from '../drawing/lane-oven.ts';
import { dayDrawing } from '../drawing/lanes.ts';
import { noticeBlocks, noticeBox, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { axisClock } from '../speak-time.ts';
import { isFireJob, JOB_NAME, ovenWord, shortName } from '../words/jobs.ts';
import { advicePhrase } from './advice.ts';
import { assumedBlocks, stripBlocks } from './dish-card.ts';
import { jobRow, type NumberedJob, numberedJobs } from './job-list.ts';
import { areAlike, listed, turnMove } from './phrases.ts';
import { doughsBlocks } from './rise-part.ts';
import { servedBlocks } from './served.ts';
import { withoutUnfit } from './unfit.ts';

export function daySheet(plan: MealPlan, say: Say): SheetDocument {
  const { daySheet: day } = plan;
  return {
    kind: 'day-sheet',
    title: `Day sheet: ${plan.camp.title}`,
    eyebrow: `${plan.camp.place.name} · ${plan.camp.date}`,
    blocks: [
      leadBlock(plan, say),
      ...refusalBlocks(plan.refusals, say),
      ...noticeBox(
        withoutUnfit(day.notices).filter(({ level }) => level === 'danger' || level === 'stop'),
        say,
      ),
      ...servedBlocks(plan, say),
      ...lightingBlocks(plan, say),
      ...adviceBlocks(plan, say),
      ...doughsBlocks(plan, say),
      ...drawingBlocks(plan, say),
      { type: 'heading', text: 'In order', half: true },
      howToRead(plan),
      {
        type: 'steps',
        rows: numberedJobs(plan).map((each) =>
          jobRow(each, plan, say, { isNamed: plan.camp.hands.length > 1, isBrief: true }),
        ),
      },
      ...noticeBlocks(
        withoutUnfit(day.notices).filter(({ level }) => level === 'doubt' || level === 'note'),
        say,
      ),
      ...assumedBlocks(plan, say),
      ...stripBlocks(plan, say),
    ],
  };
}

/** How to read the rows. */
const howToRead = (plan: MealPlan): Block => ({
  type: 'paragraph',
  parts: [
    {
      text: `Behind each job: how long it takes, and the latest it may begin where that is later.${turnOnce(plan)}`,
    },
  ],
});

/** The turn is described once where all are alike; the rows then only say whose turn it is. */
export function turnOnce({ dishes }: MealPlan): string {
  const turns = dishes.flatMap(({ loads }) => loads.flatMap(({ coals }) => coals.turns));
  const [first] = turns;
  return first === undefined || !areAlike(turns)
    ? ''
    : ` Every turn, seen from above: ${turnMove(first)}.`;
}

const STATUS = {
  planned: '',
  late: ' It will be late: see below.',
  impossible: ' It can not be done as wished: see below.',
} as const;

function leadBlock({ daySheet: day, dishes }: MealPlan, say: Say): Block {
  const times = servedTimes(day.servings).map(say.clock);
  return {
    type: 'lead',
    parts: [
      { text: dishes.length === 1 ? 'One dish' : `${dishes.length} dishes`, strong: true },
      { text: ', on the table ' },
      { text: listed(times), strong: true },
      ...(day.firstFire === undefined
        ? [{ text: ', no fire' }]
        : [{ text: '. First fire ' }, { text: say.clock(day.firstFire), strong: true }]),
      { text: `.${STATUS[day.status]}` },
    ],
  };
}

function adviceBlocks({ daySheet: day }: MealPlan, say: Say): readonly Block[] {
  if (day.advice.length === 0) return [];
  return [
    { type: 'heading', text: 'What is short', half: true },
    { type: 'list', tick: false, items: day.advice.map((each) => advicePhrase(each, say)) },
  ];
}

function drawingBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const jobs = numberedJobs(plan);
  const { spans, servings } = plan.daySheet;
  const times = [
    ...jobs.flatMap(({ job }) => [job.start, job.end]),
    ...spans.flatMap(({ from, to }) => [from, to]),
    ...servings.map(({ served }) => served),
  ];
  if (times.length === 0) return [];
  const from = Math.floor(Math.min(...times) / 15) * 15;
  const to = Math.ceil((Math.max(...times) + 1) / 15) * 15;
  return strips(plan, jobs, [from, to]).map((stretch, index, all) =>
    stripBlock({ plan, jobs, stretch, isLast: index === all.length - 1, say }),
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
    ...plan.camp.hands.map(({ id }) => jobs.filter(({ job }) => job.hands.includes(id)).length),
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
}

function stripBlock({ plan, jobs, stretch: [from, to], isLast, say }: Strip): Block {
  const { daySheet: day, camp } = plan;
  // A lane that is empty on this strip would only take its room from the others.
  const isHere = (thing: { readonly start: number; readonly end: number }) =>
    from < thing.end && thing.start < to;
  const used = camp.ovens.filter(({ id }) =>
    day.spans.some((span) => span.oven === id && isHere({ start: span.from, end: span.to })),
  );
  const working = camp.hands.filter(({ id }) =>
    jobs.some(({ job }) => job.hands.includes(id) && isHere(job)),
  );
  const alt = `Lanes of ${counted(working.length, 'pair')} of hands and ${counted(used.length, 'oven')} from ${say.clock(from)} to ${say.clock(to)}; the list below has every job in order.`;
  const svg = dayDrawing({
    from,
    to,
    clockAt: (minute) => axisClock(minute, say.clock),
    hands: working.map(({ id, name }) => ({
      name,
      work: jobs
        .filter(({ job }) => job.hands.includes(id))
        .flatMap((each) => boxIn(each, [from, to])),
    })),
    ovens: used.map(({ id, name }) => ({
      name: ovenWord(name),
      spans: day.spans
        .filter(({ oven }) => oven === id)
        .flatMap((span) => barIn(span, [from, to], say)),
    })),
    lit: litIn(day.lit, [from, to]),
    countsCoals: camp.fuel.kind === 'briquettes',
    servings: servingMarks(plan, say).filter(({ at }) => from <= at && at <= to),
    words: { name: 'Coals', lit: 'lit', onOvens: 'needed on ovens' },
    hasKey: isLast,
    alt,
  });
  return { type: 'drawing', wide: true, lanes: true, svg, alt };
}

const counted = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`;

function boxIn({ job, number }: NumberedJob, [from, to]: Stretch) {
  if (job.end <= from || to <= job.start) return [];
  return [
    {
      from: Math.max(from, job.start),
      to: Math.min(to, job.end),
      number,
      text: JOB_NAME[job.kind],
      isFire: isFireJob(job.kind),
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

/** Soonest first, each once. */
export const servedTimes = (servings: readonly Serving[]): readonly number[] =>
  [...new Set(servings.map(({ served }) => Math.round(served)))].sort(
    (left, right) => left - right,
  );

function servingMarks({ daySheet: day }: MealPlan, say: Say) {
  return servedTimes(day.servings).map((at) => ({ at, text: `serve ${axisClock(at, say.clock)}` }));
}

/** Coals to light and what they are for, as numbers; wood camps feed a fire, without counts. */
export function lightingBlocks({ daySheet: day, camp }: MealPlan, say: Say): readonly Block[] {
  if (day.lightings.length === 0) return [];
  const wood = camp.fuel.kind === 'wood-coals';
  const rows = day.lightings.map(({ chimney, at, readyAt, coals, uses }) => [
    say.clock(at),
    chimney === undefined ? 'feeder fire' : `chimney ${chimney}`,
    ...(wood ? [] : [String(coals), String(uses.reduce((sum, use) => sum + use.coals, 0))]),
    say.clock(readyAt),
  ]);
  return [
    { type: 'heading', text: 'Fires', half: true },
    {
      type: 'table',
      caption: wood ? 'Rake coals from the feeder fire as they are called for.' : '',
      head: ['light at', '', ...(wood ? [] : ['coals lit', 'coals needed']), 'ready at'],
      rows,
      numeric: [false, false, ...(wood ? [] : [true, true]), false],
    },
  ];
}
