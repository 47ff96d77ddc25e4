// The first screen: what is served when, when the first fire is lit, what is short.

import type { DishPlan, MealPlan } from '../../meal.ts';
import type { Block, Part, SheetDocument } from '../document.ts';
import { isGrave, noticeBox, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { servedTimes } from './day-sheet.ts';
import { assumedBlocks } from './dish-card.ts';
import { freeWord, ovenTitle } from './free-from.ts';
import { gradeBlocks } from './grades-part.ts';
import { ovenOf } from './oven-part.ts';
import { isWood, laidWord, lidSet, listed } from './phrases.ts';
import { loadWaitsWord, servingsOf } from './served.ts';
import { aboutToday, unfitBlocks, withoutUnfit } from './unfit.ts';

export function mealSummary(plan: MealPlan, say: Say): SheetDocument {
  const { daySheet: day } = plan;
  const today = plan.safety.cautions.filter(aboutToday);
  const food = plan.dishes.flatMap(({ portions, notices }) => [...portions.notices, ...notices]);
  const short = food.filter(({ code }) => code === 'MENU_FOOD_SHORT');
  const grave = [...plan.notices, ...day.notices, ...today, ...short].filter(isGrave);
  return {
    kind: 'meal-summary',
    title: plan.camp.title,
    eyebrow: `${plan.camp.place.name} · ${plan.camp.date}`,
    blocks: [
      { type: 'lead', parts: firstWords(plan, say) },
      ...refusalBlocks(plan.refusals, say),
      dishTable(plan, say),
      ...gradeBlocks(plan, say),
      ...fuelBlock(plan, say),
      ...noticeBox(withoutUnfit(grave), say),
      ...unfitBlocks(plan, say),
      ...assumedBlocks(plan, say),
    ],
  };
}

function firstWords({ camp, daySheet: day }: MealPlan, say: Say): readonly Part[] {
  const mouths = camp.mouths.reduce((sum, { count }) => sum + count, 0);
  const served = servedTimes(day.servings).map(say.clock);
  const late = Math.max(0, ...day.servings.map(({ lateBy }) => lateBy as number));
  return [
    { text: mouths === 1 ? 'One mouth' : `${mouths} mouths`, strong: true },
    ...(served.length === 0
      ? [{ text: '. No serving time could be planned' }]
      : [{ text: ', served at ' }, { text: listed(served), strong: true }]),
    ...(late < 0.5 ? [] : [{ text: ` (up to ${say.minutes(late)} late)`, strong: true }]),
    ...(day.firstFire === undefined
      ? [{ text: '. No fire is lit.' }]
      : [
          { text: '. First fire at ' },
          { text: say.clock(day.firstFire), strong: true },
          { text: '.' },
        ]),
  ];
}

function dishTable(plan: MealPlan, say: Say): Block {
  return {
    type: 'table',
    caption: '',
    head: ['served', 'dish', 'oven', 'coals', 'coals on', 'out', 'waits'],
    numeric: [],
    rows: servingsOf(plan).flatMap(({ dish }) => dishRows(plan, dish, say)),
  };
}

function dishRows(plan: MealPlan, dish: DishPlan, say: Say): readonly (readonly string[])[] {
  const serving = plan.daySheet.servings.find((each) => each.dish === dish.dish.id);
  const served = say.clock(serving?.served ?? dish.dish.serveAt);
  const name = freeName(dish);
  if (dish.loads.length === 0) return [[served, name, 'no fire', '', '', '', '']];
  return dish.loads.map((part) => {
    const { coals } = part;
    const cooking = plan.daySheet.spans.find(
      (span) => span.load === part.load.id && span.state === 'cooking',
    );
    const on = cooking === undefined ? '' : say.clock(cooking.from - coals.loadInMinute);
    return [
      served,
      name,
      ovenTitle(ovenOf(plan, part), say),
      coalWord(part),
      on,
      cooking === undefined ? '' : say.clock(cooking.to),
      loadWaitsWord(plan, dish, part.load.id, say),
    ];
  });
}

/** What a dish is kept free of, unless its own name says so. */
function freeName({ dish, safety }: DishPlan): string {
  const free = safety.freeFrom.map(freeWord).filter((word) => !dish.name.includes(word));
  return free.length === 0 ? dish.name : `${dish.name}: ${free.join(', ')}`;
}

function coalWord({ coals }: DishPlan['loads'][number]): string {
  const wood = isWood(coals);
  const lid = laidWord(lidSet(coals), 'above', wood);
  const floor = laidWord(coals.below, 'below', wood);
  return coals.browning === undefined ? `${lid}, ${floor}` : `${floor}, later ${lid}`;
}

function fuelBlock({ provisions: { fuel }, dishes }: MealPlan, say: Say): readonly Block[] {
  if (dishes.every(({ loads }) => loads.length === 0)) return [];
  const name = fuel.kind === 'wood-coals' ? 'Dry wood' : 'Charcoal';
  return [
    {
      type: 'paragraph',
      parts: [
        { text: `${name}: ${say.mass(fuel.massWithSpare)} with spare` },
        ...(fuel.short > 0 ? [{ text: `, short by ${say.mass(fuel.short)}`, strong: true }] : []),
        { text: '.' },
      ],
    },
  ];
}
