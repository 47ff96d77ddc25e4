// The whole day: one drawing of hands, ovens and lit coals over the clock, and the list under it.

import { campLight } from '../../camp/index.ts';
import type { MealPlan } from '../../meal.ts';
import type { Lighting, Serving } from '../../timetable/day-sheet.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks, noticeBox, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { byDay } from './by-day.ts';
import { assumedBlocks, stripBlocks } from './dish-card.ts';
import { doubtLine } from './doubt-part.ts';
import { gradeBlocks } from './grades-part.ts';
import { jobRow, numberedJobs } from './job-list.ts';
import { lanesBlocks } from './lanes-part.ts';
import { areAlike, listed, turnMove } from './phrases.ts';
import { reasonBlocks } from './reasons-part.ts';
import { doughsBlocks } from './rise-part.ts';
import { servedBlocks } from './served.ts';
import { linesBlocks } from './serving-part.ts';
import { withoutUnfit } from './unfit.ts';

/** `hasReasons`: why each job stands there, and how sure it is, folded at the end of the list. */
export function daySheet(
  plan: MealPlan,
  say: Say,
  { hasReasons = true }: { readonly hasReasons?: boolean } = {},
): SheetDocument {
  const { daySheet: day } = plan;
  return {
    kind: 'day-sheet',
    title: `Day sheet: ${plan.camp.title}`,
    eyebrow: `${plan.camp.place.name} · ${plan.camp.date}`,
    blocks: [
      leadBlock(plan, say),
      ...lightBlocks(plan, say),
      ...doubtLine(plan),
      ...refusalBlocks(plan.refusals, say),
      ...noticeBox(
        withoutUnfit(day.notices).filter(({ level }) => level === 'danger' || level === 'stop'),
        say,
      ),
      ...servedBlocks(plan, say),
      ...linesBlocks(plan, say),
      ...lightingBlocks(plan, say),
      ...gradeBlocks(plan, say),
      ...doughsBlocks(plan, say),
      ...lanesBlocks(plan, say),
      { type: 'heading', text: 'In order', half: true },
      howToRead(plan),
      ...jobBlocks(plan, say),
      ...(hasReasons ? reasonBlocks(plan, say) : []),
      ...noticeBlocks(
        withoutUnfit(day.notices).filter(({ level }) => level === 'doubt' || level === 'note'),
        say,
      ),
      ...assumedBlocks(plan, say),
      ...stripBlocks(plan, say),
    ],
  };
}

/** Day by day where there are several. */
const jobBlocks = (plan: MealPlan, all: Say): readonly Block[] =>
  byDay(numberedJobs(plan), ({ job }) => job.start, { date: plan.camp.date, say: all }).flatMap(
    ({ heading, items, say }) => [
      ...heading,
      {
        type: 'steps',
        rows: items.map((each) =>
          jobRow(each, plan, say, { isNamed: plan.camp.hands.length > 1, isBrief: true }),
        ),
      },
    ],
  );

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

/** Of each day on which something is done; nothing where the camp does not say where its clock is. */
function lightBlocks({ camp, daySheet: day }: MealPlan, say: Say): readonly Block[] {
  const days = [...new Set(day.jobs.map(({ start }) => Math.floor(start / (24 * 60))))];
  const texts = days
    .sort((one, other) => one - other)
    .flatMap((at) => {
      const { dawn, dusk } = campLight(camp, at) ?? {};
      return dawn === undefined || dusk === undefined
        ? []
        : [`Light from ${say.clock(dawn)} to ${say.clock(dusk)}.`];
    });
  return texts.length === 0 ? [] : [{ type: 'paragraph', parts: [{ text: texts.join(' ') }] }];
}

const STATUS = {
  planned: '',
  late: ' No plan in time was found: see below.',
  impossible: ' It can not be done as wished: see below.',
} as const;

function leadBlock({ daySheet: day, dishes }: MealPlan, say: Say): Block {
  const times = servedTimes(day.servings).map(say.clock);
  return {
    type: 'lead',
    parts: [
      { text: dishes.length === 1 ? 'One dish' : `${dishes.length} dishes`, strong: true },
      { text: ', on the table ' },
      ...(times.length === 0 ? [{ text: 'at no time' }] : [{ text: listed(times), strong: true }]),
      ...(day.firstFire === undefined
        ? [{ text: times.length === 0 ? '' : ', no fire' }]
        : [{ text: '. First fire ' }, { text: say.clock(day.firstFire), strong: true }]),
      { text: `.${STATUS[day.status]}` },
    ],
  };
}

/** Soonest first, each once. */
export const servedTimes = (servings: readonly Serving[]): readonly number[] =>
  [...new Set(servings.map(({ served }) => Math.round(served)))].sort(
    (left, right) => left - right,
  );

/** Coals to light and what they are for, as numbers; wood camps feed a fire, without counts. */
export function lightingBlocks({ daySheet: day, camp }: MealPlan, say: Say): readonly Block[] {
  if (day.lightings.length === 0) return [];
  const wood = camp.fuel.kind === 'wood-coals';
  const needed = ({ uses }: Lighting) => uses.reduce((sum, use) => sum + use.coals, 0);
  // More than the tenth that never catches: the rest is there so that the chimney draws.
  const isFilled = day.lightings.some(
    (each) => each.chimney !== undefined && each.coals > Math.ceil(needed(each) * 1.1),
  );
  const few = isFilled
    ? 'So few coals do not draw in a chimney: what is lit beyond need stays spare.'
    : '';
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
      caption: wood ? 'Rake coals from the feeder fire as they are called for.' : few,
      head: ['light at', '', ...(wood ? [] : ['coals lit', 'coals needed']), 'ready at'],
      rows,
      numeric: [false, false, ...(wood ? [] : [true, true]), false],
    },
  ];
}
