// The rise along its day: when it is ready, the water for it, and what would move it.

import type { DoughWater, RiseOption, RisePlan, StarterDay } from '../../formula/index.ts';
import type { DishPlan, MealDay } from '../../meal.ts';
import type { Block, FactRow } from '../document.ts';
import type { Say } from '../say.ts';
import { decimal } from '../speak-number.ts';
import { listed, sentenceCase } from './phrases.ts';

/** Water, temperatures, ready by touch; the moves folded away. Nothing for a dish without a rise. */
export function riseBlocks({ leavening, recipe }: DishPlan, say: Say): readonly Block[] {
  const { rise, water, starter } = leavening ?? {};
  if (rise === undefined) return [];
  return [
    { type: 'heading', text: 'The rise', half: true },
    {
      type: 'facts',
      rows: [...waterRows(water, say), ...riseRows(rise, say), ...coldRows(rise, recipe, say)],
    },
    ...moveBlocks(rise, say),
    ...(starter === undefined ? [] : starterBlocks(starter, say)),
  ];
}

export function waterRows(water: DoughWater | undefined, say: Say): readonly FactRow[] {
  if (water === undefined) return [];
  const { ice, limit, warmed = ['water'], hasEgg } = water;
  const rest = hasEgg ? 'flour and eggs' : 'flour';
  if (limit === 'nothing to warm') {
    return [
      {
        label: 'Dough as mixed',
        value: say.degrees(water.dough),
        note: `nothing in it can be warmed: bring ${rest} to room warmth first`,
      },
    ];
  }
  const isMilk = warmed.some((each) => !/water/i.test(each));
  const most = isMilk && limit === 'too hot for yeast' ? ', no hotter before yeast' : '';
  return [
    {
      label: `${sentenceCase(listed(warmed))} for the dough`,
      value:
        ice === undefined
          ? `${say.degrees(water.water)}${most}`
          : `${Math.round(ice)} g of it as ice${water.limit === 'all ice' ? ', which is all of it' : ''}`,
      note: `gives a dough of ${say.degrees(water.dough)}, with ${rest} as warm as the air`,
    },
  ];
}

/** Ready by the clock of the dough, and by a finger. */
export function riseRows(rise: RisePlan, say: Say): readonly FactRow[] {
  const { estimate, along, cold } = rise;
  return [
    {
      label: 'First rise',
      value: cold?.isFirstRise
        ? `${say.minutes(cold.minutes)} in the cold, as written`
        : estimate === undefined
          ? 'not within a day'
          : `${say.minutes(estimate.first)}, likely ${say.minutes(estimate.least)} to ${say.minutes(estimate.most)}`,
      note: `${pathPhrase(along, say)}. ${cold?.isFirstRise ? NIGHT_NOTE : MARK_NOTE}`,
    },
    {
      label: 'Is it ready?',
      value: 'press a wet finger in to the first joint',
      note: 'springs back: wait. Fills slowly, half way: go on. Stays, and the dough sighs: into the oven at once',
    },
  ];
}

const MARK_NOTE = 'A mark on the bowl knows better: shape it at double';
const NIGHT_NOTE = 'It need not have doubled: the second rise makes up for it';

/** After a night in the cold a dough begins its second rise cold: longer than a writer may say. */
function coldRows(
  { cold, estimate }: RisePlan,
  { steps, target: { writer } }: DishPlan['recipe'],
  say: Say,
): readonly FactRow[] {
  if (cold === undefined) return [];
  const step = steps.findLast(({ kind }) => kind === 'second-rise');
  const own = step?.minutes;
  const warmer = step?.keptAt === undefined ? 'A warm box makes it shorter; go' : 'Go';
  const written = writer === undefined ? own : writer.secondRise?.[1];
  const isShort =
    estimate !== undefined && written !== undefined && written < estimate.second - WORTH_SAYING;
  const short = isShort ? `; the recipe’s ${say.minutes(written)} is for warm dough` : '';
  return [
    {
      label: 'Second rise',
      value: estimate === undefined ? 'not within a day' : say.minutes(estimate.second),
      note:
        `it starts cold: dough ${say.degrees(cold.dough)} after ${say.minutes(cold.minutes)} at ` +
        `${say.degrees(cold.place)}${short}. ${warmer} by the finger`,
    },
  ];
}

const WORTH_SAYING = 10; // minutes, ours

/** `dough 25 °C, 20 °C after 1 h, 16 °C after 3 h; round it 8 to 12 °C`. */
export function pathPhrase(along: RisePlan['along'], say: Say): string {
  const first = along[0];
  if (first === undefined) return '';
  const some = thinned(along);
  const steps = some.map(({ dough, minute }) =>
    minute === 0 ? say.degrees(dough) : `${say.degrees(dough)} after ${say.minutes(minute)}`,
  );
  const places = along.map(({ place }) => place);
  const [low, high] = [Math.min(...places), Math.max(...places)].map((at) => say.degrees(at));
  const around = low === high ? low : `${low} to ${high}`;
  const isStill = new Set(along.map(({ dough }) => say.degrees(dough))).size === 1;
  return `dough ${isStill ? say.degrees(first.dough) : steps.join(', ')}; round it ${around}`;
}

/** First, one in the middle, last. */
function thinned(along: RisePlan['along']): RisePlan['along'] {
  if (along.length < 4) return along;
  const middle = along[Math.floor(along.length / 2)]!;
  return [along[0]!, middle, along.at(-1)!];
}

export function moveBlocks({ options, leaven }: RisePlan, say: Say): readonly Block[] {
  if (options.length === 0) return [];
  const rows = options.map((option) => [
    optionPhrase(option, leaven, say),
    option.first === undefined ? 'does not rise' : say.minutes(option.first),
    option.later === undefined ? '' : laterPhrase(option.later, say),
  ]);
  return [
    {
      type: 'why',
      half: true,
      isScreenOnly: true,
      question: 'Sooner or later?',
      blocks: [
        {
          type: 'table',
          caption: 'First rise, if you change one thing',
          head: ['', 'takes', ''],
          rows,
          numeric: [false, true, false],
        },
      ],
    },
  ];
}

const laterPhrase = (later: number, say: Say) =>
  Math.abs(later) < 1
    ? 'the same'
    : `${say.minutes(Math.abs(later))} ${later < 0 ? 'sooner' : 'later'}`;

function optionPhrase(option: RiseOption, leaven: RisePlan['leaven'], say: Say): string {
  const what = leaven === 'yeast' ? 'yeast' : 'starter';
  switch (option.do) {
    case 'more-leaven':
      return `half as much ${what} again: ${sharePhrase(option, leaven)}`;
    case 'less-leaven':
      return `half the ${what}: ${sharePhrase(option, leaven)}`;
    case 'warmer-dough':
      return `mixed warmer: dough at ${say.degrees(option.kelvin!)}`;
    case 'colder-dough':
      return `mixed colder: dough at ${say.degrees(option.kelvin!)}`;
    case 'warm-box':
      return `in a box at ${say.degrees(option.kelvin!)}, near the fire`;
    case 'cold-night':
      return option.share === undefined
        ? `a night in the cold, at ${say.degrees(option.kelvin!)}`
        : `a night at ${say.degrees(option.kelvin!)}, with ${sharePhrase(option, leaven)}`;
  }
}

const sharePhrase = ({ share }: RiseOption, leaven: RisePlan['leaven']) =>
  leaven === 'yeast'
    ? `instant yeast ${decimal(100 * share!, 2)} % of the flour`
    : `${decimal(100 * share!, 0)} % of the flour in the starter`;

const STARTER_WORD: Readonly<Record<StarterDay['do'], string>> = {
  wake: 'wake it',
  feed: 'feed it',
  mix: 'mix the dough',
};

/** Counted back from mixing: woken, fed the evening before, ripe. */
export function starterBlocks(days: readonly StarterDay[], say: Say): readonly Block[] {
  const rows = days.map(({ before, do: what, feed }) => [
    before === 0 ? 'then' : `${say.minutes(before)} before`,
    STARTER_WORD[what],
    feed === undefined ? '' : feedPhrase(feed),
    feed === undefined
      ? ''
      : feed.needsWarmth
        ? 'not ripe in this cold: keep it warm'
        : `ripe after ${say.minutes(feed.ripeAfter ?? 0)}`,
  ]);
  return [
    {
      type: 'table',
      caption: 'The starter, counted back from mixing; 30 g stay for the next time',
      head: ['', '', 'feed', ''],
      rows,
      numeric: [false, false, false, false],
    },
  ];
}

/** For the day sheet: each dough with its clock, its temperatures and its doubt. */
export function doughsBlocks(plan: MealDay, say: Say): readonly Block[] {
  const rows = plan.dishes.flatMap(({ dish, leavening }) => {
    const { estimate, along } = leavening?.rise ?? {};
    if (estimate === undefined || along === undefined) return [];
    const mixed = plan.daySheet.jobs.find((job) => job.kind === 'mix' && ownsJob(job, dish.id));
    const clock = (minute: number) => (mixed === undefined ? '' : say.clock(mixed.end + minute));
    return [
      [
        say.dish(dish.id),
        mixed === undefined ? '' : say.clock(mixed.end),
        mixed === undefined
          ? say.minutes(estimate.first)
          : `${clock(estimate.first)} (${clock(estimate.least)} to ${clock(estimate.most)})`,
        pathPhrase(along, say),
      ],
    ];
  });
  if (rows.length === 0) return [];
  return [
    ...starterClocks(plan, say),
    { type: 'heading', text: 'Doughs', half: true },
    {
      type: 'table',
      caption: 'Likely doubled at this clock; look from the first one on',
      head: ['', 'mixed', 'doubled', 'as warm as this'],
      rows,
      numeric: [false, true, true, false],
    },
  ];
}

/** When a starter is woken and fed, by the clock of this day: the evening before, mostly. */
function starterClocks(plan: MealDay, say: Say): readonly Block[] {
  const items = plan.dishes.flatMap(({ dish, leavening }) => {
    const mixed = plan.daySheet.jobs.find((job) => job.kind === 'mix' && ownsJob(job, dish.id));
    const days = leavening?.starter ?? [];
    if (mixed === undefined) return [];
    return days.flatMap(({ before, do: what, feed }) =>
      feed === undefined
        ? []
        : [
            `${say.clock(mixed.start - before)} ${STARTER_WORD[what]}, for ${say.dish(dish.id)}: ${feedPhrase(feed)}${feed.needsWarmth ? '; keep it warm, it will not ripen in this cold' : ''}`,
          ],
    );
  });
  if (items.length === 0) return [];
  return [
    { type: 'heading', text: 'The starter', half: true },
    { type: 'list', tick: true, items },
  ];
}

const feedPhrase = ({ starter, flour, water }: NonNullable<StarterDay['feed']>) =>
  `${Math.round(starter)} g starter, ${Math.round(flour)} g flour, ${Math.round(water)} g water`;

const ownsJob = (job: MealDay['daySheet']['jobs'][number], dish: string) =>
  job.dish === dish ||
  String(job.values.with ?? '')
    .split(' ')
    .includes(dish);
