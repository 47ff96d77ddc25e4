// The safety log: what is read when, with room to write it in by pencil. One row for each dish and check.

import type { DishPlan, MealPlan } from '../../meal.ts';
import { isRefusal } from '../../notice/notice.ts';
import { shelfOf } from '../../provisions/shelf.ts';
import { fromFahrenheit } from '../../quantity/unit.ts';
import { type FoodCheck, foodClock, foodLimits, heldSeconds } from '../../safety/index.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';
import { offTheFire } from './served.ts';

export function safetyLogSheet(plan: MealPlan, say: Say): SheetDocument {
  const isPublic = plan.camp.event === 'public';
  return {
    kind: 'safety-log',
    title: 'Safety log',
    camp: plan.camp.title,
    eyebrow: isPublic ? 'public event' : 'among friends',
    blocks: [
      ...noticeBlocks(
        plan.safety.cautions.filter(({ code }) => /^SAFETY_(PUBLIC|HIGH_RISK)/.test(code)),
        say,
      ),
      ...openingBlocks(plan, say),
      ...dishBlocks(plan, say),
      ...keptBlocks(plan, say),
      ...wardBlocks(isPublic, say),
      ...heldBlocks(plan, say),
    ],
  };
}

/** Enough for a pencil in a gloved hand, in letters that print on every machine. */
const ROOM = '________';

function openingBlocks({ camp }: MealPlan, say: Say): readonly Block[] {
  return [
    { type: 'heading', text: 'Before food is touched' },
    {
      type: 'facts',
      rows: [
        {
          label: 'Nobody who cooks was sick in 48 hours',
          value: `signed ${ROOM}${ROOM} at ${ROOM}`,
        },
        { label: 'Hand-wash line stands', value: `at ${ROOM}` },
        {
          label: `Probe in crushed ice and water reads ${say.degrees(273.15)}`,
          value: camp.gear.thermometer ? `${ROOM} at ${ROOM}` : 'no thermometer listed: borrow one',
        },
      ],
    },
  ];
}

function dishBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const rows = plan.dishes.flatMap((dish) => rowsOf(plan, dish, say));
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Dish by dish' },
    {
      type: 'table',
      caption:
        'Probe the coldest, thickest place; wipe the probe after raw food. Not there yet: cook on, read again. ' +
        'No reading is not a reading: write NOT CHECKED.',
      head: ['dish', 'check', 'limit', 'due', 'found', 'at', 'by'],
      rows,
      numeric: [],
    },
  ];
}

function rowsOf(plan: MealPlan, dish: DishPlan, say: Say): readonly (readonly string[])[] {
  const serving = plan.daySheet.servings.find((each) => each.dish === dish.dish.id);
  const out = offTheFire(plan, dish);
  const checks = foodClock({
    safety: dish.safety,
    isPerishable: dish.formula.lines.some(({ ingredient }) => isPerishable(ingredient)),
    times: {
      served: serving?.served ?? dish.dish.serveAt,
      ...(out === undefined ? {} : { out }),
    },
    event: plan.camp.event,
  });
  return checks
    .filter(({ kind }) => !LEFT.includes(kind))
    .map((check, index) => [
      index === 0 ? dish.dish.name : '',
      CHECKS[check.kind],
      limitWord(check, say),
      check.at === undefined ? '' : say.clock(check.at),
      check.kind === 'gone-by' ? 'thrown away' : ROOM,
      ROOM,
      '_____',
    ]);
}

/** Cooling counts from when the cook stops keeping it hot: its own table. */
const LEFT: readonly FoodCheck['kind'][] = ['cooled-between', 'cooled', 'heated-again'];

const CHECKS: Readonly<Record<FoodCheck['kind'], string>> = {
  'carried-cold': 'out of the cooler, no warmer than',
  'full-boil': 'hard boil in fresh water, at least',
  core: 'middle, at least',
  rest: 'rest before cutting, at least',
  'hot-until-served': 'kept hot until served, at least',
  'cold-until-served': 'kept cold until served, no warmer than',
  'gone-by': 'what is out of hot and cold is gone by',
  'cooled-between': 'cooled',
  cooled: 'cold',
  'heated-again': 'heated again',
};

const limitWord = ({ least, most, lasts, kind }: FoodCheck, say: Say) =>
  kind === 'gone-by' ? say.minutes(lasts ?? 0) : degreesOrMinutes(least ?? most, lasts, say);

const degreesOrMinutes = (mark: number | undefined, lasts: number | undefined, say: Say) =>
  mark === undefined ? say.minutes(lasts ?? 0) : say.degrees(mark);

function isPerishable(ingredient: Parameters<typeof shelfOf>[0]): boolean {
  const parts = ['meat', 'poultry', 'egg', 'cheese', 'liquid', 'bean'];
  return parts.includes(ingredient.part) && shelfOf(ingredient).keep !== 'dry';
}

/** Three empty rows: nobody knows beforehand what is left. */
function keptBlocks({ camp, dishes }: MealPlan, say: Say): readonly Block[] {
  if (dishes.every(({ safety }) => safety.isKeptDry === true)) return [];
  const { hotHold, cooling, coldHold, reheat } = foodLimits(camp.event ?? 'home');
  const empty = [ROOM, ROOM, `____ at ____`, `____ at ____`, `____ at ____`];
  return [
    { type: 'heading', text: 'What is left and kept' },
    {
      type: 'table',
      caption:
        `In pans no deeper than two fingers, in ice water, stirred. Under ${say.degrees(hotHold)} the clock runs: ` +
        `${say.degrees(cooling.between)} within ${say.minutes(cooling.toBetween)}, ${say.degrees(coldHold)} within ` +
        `${say.minutes(cooling.inAll)} in all. Missed the first: heat it to ${say.degrees(reheat.core)} and begin once ` +
        'more, one time. Missed the second: throw it away. Three to four days, then it is gone.',
      head: [
        'dish',
        `left ${say.degrees(hotHold)} at`,
        `${say.degrees(cooling.between)} by +${say.minutes(cooling.toBetween)}`,
        `${say.degrees(coldHold)} by +${say.minutes(cooling.inAll)}`,
        `again ${say.degrees(reheat.core)}, within ${say.minutes(reheat.within)}`,
      ],
      rows: [empty, empty, empty],
      numeric: [],
    },
  ];
}

function wardBlocks(isPublic: boolean, say: Say): readonly Block[] {
  const three = `${ROOM}  ${ROOM}  ${ROOM}`;
  return [
    { type: 'heading', text: 'Every four hours' },
    {
      type: 'facts',
      rows: [
        {
          label: `Cooler, no warmer than ${say.degrees(foodLimits('home').coldHold)}`,
          value: three,
        },
        { label: 'Last bucket by test strip, 50 to 100 ppm', value: three },
        ...(isPublic ? [{ label: 'Fresh spoons and ladles at the line', value: three }] : []),
      ],
    },
  ];
}

/** Explains beside the log; never a target. Only where a roast is cooked for nobody at risk. */
function heldBlocks({ camp, dishes }: MealPlan, say: Say): readonly Block[] {
  if (!dishes.some(({ safety }) => safety.least?.food === 'whole-meat')) return [];
  const isAnyoneAtRisk = camp.mouths.some(({ appetite }) =>
    ['child', 'over-65'].includes(appetite),
  );
  const rows = [140, 145, 150, 155, 158].flatMap((fahrenheit) => {
    const core = fromFahrenheit(fahrenheit);
    const seconds = heldSeconds({ core, food: 'whole-meat', isAnyoneAtRisk });
    return isRefusal(seconds) ? [] : [[say.degrees(core), heldWord(seconds, say)]];
  });
  if (rows.length === 0) return [];
  return [
    {
      type: 'why',
      question: 'What is a core worth that stays where it is?',
      blocks: [
        {
          type: 'table',
          caption: 'For whole red meat, 6.5 powers of ten of salmonella (federal table of 1999).',
          head: ['middle stays at', 'for'],
          rows,
          numeric: [true, true],
        },
        paragraph(
          'It explains a log; it never lowers what the card asks. Not for poultry, ground or stuffed meat, and ' +
            `nothing under ${say.degrees(fromFahrenheit(140))}: those times were not confirmed.`,
        ),
      ],
    },
  ];
}

const heldWord = (seconds: number, say: Say) =>
  seconds === 0 ? 'at once' : seconds < 120 ? `${seconds} s` : say.minutes(seconds / 60);
