// The whole day: one drawing of hands, ovens and lit coals over the clock, and the list under it.

import type { MealPlan } from '../../meal.ts';
import type { OvenSpan } from '../../timetable/day-sheet.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { SpanBar } from '../drawing/lane-oven.ts';
import { dayDrawing } from '../drawing/lanes.ts';
import { noticeBlocks, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { isFireJob, JOB_NAME, ovenWord } from '../words/jobs.ts';
import { advicePhrase } from './advice.ts';
import { assumedBlocks, stripBlocks } from './dish-card.ts';
import { jobRow, numberedJobs } from './job-list.ts';
import { listed } from './phrases.ts';

export function daySheet(plan: MealPlan, say: Say): SheetDocument {
  const { daySheet: day } = plan;
  return {
    kind: 'day-sheet',
    title: `Day sheet: ${plan.camp.title}`,
    eyebrow: `${plan.camp.place.name} · ${plan.camp.date}`,
    blocks: [
      leadBlock(plan, say),
      ...refusalBlocks(plan.refusals, say),
      ...noticeBlocks(
        day.notices.filter(({ level }) => level === 'danger' || level === 'stop'),
        say,
      ),
      ...adviceBlocks(plan, say),
      ...drawingBlocks(plan, say),
      { type: 'heading', text: 'In order' },
      { type: 'steps', rows: numberedJobs(plan).map((each) => jobRow(each, plan, say)) },
      ...lightingBlocks(plan, say),
      ...noticeBlocks(
        day.notices.filter(({ level }) => level === 'doubt' || level === 'note'),
        say,
      ),
      ...stripBlocks(plan, say),
      ...assumedBlocks(plan, say),
    ],
  };
}

const STATUS = {
  planned: '',
  late: ' It will be late: see below.',
  impossible: ' It can not be done as wished: see below.',
} as const;

function leadBlock({ daySheet: day, dishes }: MealPlan, say: Say): Block {
  const times = [...new Set(day.servings.map(({ served }) => say.clock(served)))];
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
    { type: 'heading', text: 'What is short' },
    { type: 'list', tick: false, items: day.advice.map((each) => advicePhrase(each, say)) },
  ];
}

function drawingBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const { daySheet: day, camp } = plan;
  const jobs = numberedJobs(plan);
  const times = [
    ...jobs.flatMap(({ job }) => [job.start, job.end]),
    ...day.spans.flatMap(({ from, to }) => [from, to]),
    ...day.servings.map(({ served }) => served),
  ];
  if (times.length === 0) return [];
  const from = Math.floor(Math.min(...times) / 15) * 15;
  const to = Math.ceil((Math.max(...times) + 1) / 15) * 15;
  const used = camp.ovens.filter(({ id }) => day.spans.some(({ oven }) => oven === id));
  const alt = `Lanes of ${camp.hands.length} hands and ${used.length} ovens from ${say.clock(from)} to ${say.clock(to)}; the list below has every job in order.`;
  const svg = dayDrawing({
    from,
    to,
    clockAt: (minute) => say.clock(minute),
    hands: camp.hands.map(({ id, name }) => ({
      name,
      work: jobs
        .filter(({ job }) => job.hands.includes(id))
        .map(({ job, number }) => ({
          from: job.start,
          to: job.end,
          number,
          text: JOB_NAME[job.kind],
          isFire: isFireJob(job.kind),
        })),
    })),
    ovens: used.map(({ id, name }) => ({
      name: ovenWord(name),
      spans: day.spans.filter(({ oven }) => oven === id).map((span) => spanBar(span, say)),
    })),
    lit: day.lit.map(({ at, waiting, onOvens }) => ({ at, lit: waiting + onOvens, onOvens })),
    countsCoals: camp.fuel.kind === 'briquettes',
    servings: servingMarks(plan, say),
    words: { name: 'Coals', lit: 'lit', onOvens: 'needed on ovens' },
    alt,
  });
  return [{ type: 'drawing', wide: true, svg, alt }];
}

const spanBar = (span: OvenSpan, say: Say): SpanBar => ({
  from: span.from,
  to: span.to,
  state: span.state,
  text: span.state === 'cooking' || span.state === 'second-rise' ? say.dish(span.dish) : '',
});

function servingMarks({ daySheet: day }: MealPlan, say: Say) {
  const times = [...new Set(day.servings.map(({ served }) => served as number))].sort(
    (left, right) => left - right,
  );
  return times.map((at) => ({ at, text: `serve ${say.clock(at)}` }));
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
    { type: 'heading', text: 'Fires' },
    {
      type: 'table',
      caption: wood ? 'Rake coals from the feeder fire as they are called for.' : '',
      head: ['light at', '', ...(wood ? [] : ['coals lit', 'coals needed']), 'ready at'],
      rows,
      numeric: [false, false, ...(wood ? [] : [true, true]), false],
    },
  ];
}
