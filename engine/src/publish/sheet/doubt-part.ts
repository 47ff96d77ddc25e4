// How sure are the times? A band for each meal, the share of days on which it is in time, the dish
// that is last when it is late, and what more room would bring.

import type { MealPlan } from '../../meal.ts';
import type { Buy, DayDoubt, DishDoubt, MealDoubt } from '../../timetable/doubt/doubt.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';

/** In the head of the day sheet: one line; meal by meal it stands under "How sure are these times?". */
export function doubtLine({ daySheet: { doubt } }: MealPlan): readonly Block[] {
  if (doubt === undefined || doubt.meals.length === 0) return [];
  return [{ type: 'paragraph', parts: [{ text: `All of it is in time ${times(doubt.inTime)}.` }] }];
}

/** All of it in one breath, for a day that is offered anew. */
export function doubtLines(plan: MealPlan, say: Say): readonly Block[] {
  const texts = doubtTexts(plan, say);
  return texts.length === 0 ? [] : [{ type: 'paragraph', parts: [{ text: texts.join(' ') }] }];
}

/** Meal by meal, and what wins most. */
function doubtTexts(plan: MealPlan, say: Say): readonly string[] {
  const { doubt, status } = plan.daySheet;
  if (doubt === undefined || doubt.meals.length === 0) return [];
  const buy = status === 'planned' ? doubt.buys[0] : undefined;
  return [
    ...doubt.meals.map((meal) => mealLine(meal, doubt, say)),
    ...(doubt.meals.length > 1 ? [`All of it in time: ${times(doubt.inTime)}.`] : []),
    ...(buy === undefined ? [] : [`Most is won by ${buyPhrase(buy, plan, say)}.`]),
    ...surerTexts(plan, say),
  ];
}

/** What counts as in time stands beside the share of days on which it is: a dish may have its own latest. */
function mealLine(
  { wanted, likely, latest, inTime, limits, lastIfLate }: MealDoubt,
  { grace, meals }: DayDoubt,
  say: Say,
): string {
  const which = meals.length > 1 ? `What is wanted at ${say.clock(wanted)}` : 'All of it';
  const { soonest, latest: last } = limits;
  const by =
    soonest === last
      ? `by ${say.clock(last)}${last - wanted === grace ? '' : ', its latest'}`
      : `by its latest, ${say.clock(soonest)} to ${say.clock(last)} dish by dish`;
  const late =
    inTime > 0.995
      ? ''
      : `; as likely as not by ${say.clock(likely)}, 9 times in 10 by ${say.clock(latest)}`;
  const blamed =
    lastIfLate === undefined || inTime > 0.995 ? '' : `. If late, it is ${say.dish(lastIfLate)}`;
  return `${which} is in time (${by}) ${times(inTime)}${late}${blamed}.`;
}

/** Plans with time in hand that were made and checked. */
function surerTexts({ daySheet: { surer = [] } }: MealPlan, say: Say): readonly string[] {
  return surer.map(({ inHand, startEarlier, inTime }) => {
    const early =
      startEarlier === 0 ? '' : ` and everybody there ${say.minutes(startEarlier)} sooner`;
    return (
      `Planned with ${say.minutes(inHand)} in hand${early}, all is in time ` +
      `${hundreds(inTime)} times in 100.`
    );
  });
}

/** Surer than by fives nobody knows it from so many runs. */
const hundreds = (share: number) => String(5 * Math.round(share * 20));

/** `7 times in 10`; never surer than the runs are. */
export function times(share: number): string {
  if (share >= 0.97) return 'nearly always';
  if (share <= 0.03) return 'hardly ever';
  const tenths = Math.min(9, Math.max(1, Math.round(share * 10)));
  return `${tenths} ${tenths === 1 ? 'time' : 'times'} in 10`;
}

function buyPhrase(buy: Buy, plan: MealPlan, say: Say): string {
  const { kind, sooner, inTime, saved, dish } = buy;
  const by = say.minutes(sooner);
  const isFed = plan.camp.fuel.kind === 'wood-coals';
  const act =
    kind === 'ash-over'
      ? `${isFed ? 'the fire' : 'the chimneys'} lit ${by} sooner`
      : kind === 'rise'
        ? `the dough of ${say.dish(dish ?? '')} mixed ${by} sooner`
        : `${say.dish(dish ?? '')} put on ${by} sooner`;
  const gained = Math.round(100 * (inTime - (plan.daySheet.doubt?.inTime ?? inTime)));
  const more = gained < 1 ? '' : `in time ${gained} times more in 100, and `;
  return `${act}: ${more}${say.minutes(saved)} sooner on average`;
}

/** Each dish with its band, and all that more room would bring. */
export function doubtBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const { doubt } = plan.daySheet;
  if (doubt === undefined || doubt.dishes.length === 0) return [];
  const rows = doubt.dishes.map((each) => dishRow(each, say));
  const buys = doubt.buys.map((buy) => buyPhrase(buy, plan, say));
  return [
    { type: 'list', tick: false, items: doubtTexts(plan, say) },
    {
      type: 'paragraph',
      parts: [
        {
          text:
            `The day was run ${say.count(doubt.runs)} times with bakes, rises and coals as slow or ` +
            'quick as they may be, in the order of this sheet. Hands are taken to be as quick as ' +
            'written. In time is up to ' +
            `${say.minutes(doubt.grace)} late, or up to a dish’s own latest.`,
        },
      ],
    },
    {
      type: 'table',
      caption: 'Done and rested, 8 times in 10 between',
      head: ['dish', 'soonest', 'likely', 'latest', 'in time'],
      rows,
      numeric: [],
    },
    ...(buys.length === 0
      ? []
      : [{ type: 'list', tick: false, items: buys.map((item) => `With ${item}.`) } as const]),
  ];
}

const dishRow = ({ dish, soonest, likely, latest, inTime }: DishDoubt, say: Say) => [
  say.dish(dish),
  say.clock(soonest),
  say.clock(likely),
  say.clock(latest),
  times(inTime),
];
