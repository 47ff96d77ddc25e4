// Everything one dish needs at the fire, on one card.

import type { DishPlan, LoadPlan, MealDay } from '../../meal.ts';
import type { Block, SheetDocument } from '../document.ts';
import { isGrave, noticeBlocks, noticeBox, noticeText, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { assumedLine } from './assumed.ts';
import { formulaBlocks } from './formula-part.ts';
import { freeFromFlag, ovenTitle } from './free-from.ts';
import { inOutBlocks, isSaidByDone } from './in-out.ts';
import { leaveningBlocks } from './leavening-part.ts';
import { ovenBlocks, ovenKitchenBlocks, ovenOf } from './oven-part.ts';
import { listed } from './phrases.ts';
import { riseBlocks } from './rise-part.ts';
import { unfitHere, withoutUnfit } from './unfit.ts';
import { whyBlocks } from './why-part.ts';
import { writerBlocks } from './writer-part.ts';

/**
 * The dish card: counts, drawings, times, checks and moves, formula, reasons, cautions.
 *
 * Ovens of one dish that are laid alike are one part of the card, told once for all of them.
 *
 * @throws RangeError — the plan has no such dish and no refusal about it
 */
export function dishCard(plan: MealDay, dishId: string, say: Say): SheetDocument {
  const dish = plan.dishes.find((each) => each.dish.id === dishId);
  if (dish === undefined) return refusedCard(plan, dishId, say);
  const groups = alike(plan, dish);
  const first = groups[0]?.[0];
  const flag = freeFromFlag(plan, dish);
  const where = groups.flat().map((part) => ovenTitle(ovenOf(plan, part), say));
  return {
    kind: 'dish-card',
    title: dish.dish.name,
    camp: plan.camp.title,
    eyebrow: first === undefined ? 'no fire needed' : listed([...new Set(where)]),
    ...(flag === undefined ? {} : { flag }),
    blocks: [
      leadBlock(plan, dish, say),
      ...dangerBlocks(plan, dish, say),
      ...groups.flatMap((group) => groupBlocks(plan, dish, group, groups.length > 1, say)),
      ...(first === undefined ? [] : kitchenBlocks(plan, dish, groups, first, say)),
      ...formulaBlocks(dish, say),
      ...leaveningBlocks(dish, say),
      ...riseBlocks(dish, say),
      ...stepBlocks(dish),
      ...groups.flatMap(([part]) => (part === undefined ? [] : whyBlocks(part.coals, say))),
      ...writerBlocks(dish, first, say),
      ...restBlocks(plan, dish, say),
      ...(first === undefined ? stripBlocks(plan, say) : []),
      ...assumedBlocks(plan, say),
    ],
  };
}

/** The back of the card: what is read in the kitchen. The side that lies at the fire ends before it. */
function kitchenBlocks(
  plan: MealDay,
  dish: DishPlan,
  groups: readonly (readonly LoadPlan[])[],
  first: LoadPlan,
  say: Say,
): readonly Block[] {
  return [
    ...groups.flatMap(([part]) =>
      part === undefined ? [] : ovenKitchenBlocks({ plan, dish, part, say }),
    ),
    ...inOutBlocks(
      dish,
      { part: first, oven: ovenOf(plan, first), hasThermometer: plan.camp.gear.thermometer },
      say,
    ),
  ];
}

/** A dish that could not be planned still has a card: it says why. */
function refusedCard(plan: MealDay, dishId: string, say: Say): SheetDocument {
  const about = plan.refusals.filter((refusal) => refusal.about.dish === dishId);
  const named = plan.menu.dishes.find(({ id }) => id === dishId);
  if (about.length === 0 && named === undefined) {
    throw new RangeError(`the plan has no dish "${dishId}"`);
  }
  return {
    kind: 'dish-card',
    title: named?.name ?? dishId,
    camp: plan.camp.title,
    blocks: [
      {
        type: 'lead',
        parts: [{ text: 'This dish can not be planned as it stands.', strong: true }],
      },
      ...refusalBlocks(about, say),
      ...stripBlocks(plan, say),
    ],
  };
}

/** Loads told as one: same size of oven, same coals, same minutes. */
function alike(plan: MealDay, dish: DishPlan): readonly (readonly LoadPlan[])[] {
  const groups = new Map<string, LoadPlan[]>();
  for (const part of dish.loads) {
    const { coals } = part;
    const oven = ovenOf(plan, part);
    const key = [
      oven.diameter,
      oven.depth,
      coals.above.pieces,
      coals.below.pieces,
      Math.round(coals.loadInMinute),
      Math.round(coals.outMinute),
    ].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()];
}

function groupBlocks(
  plan: MealDay,
  dish: DishPlan,
  group: readonly LoadPlan[],
  isOneOfMany: boolean,
  say: Say,
): readonly Block[] {
  const [part] = group;
  if (part === undefined) return [];
  const names = group.map(({ load }) => say.ovenName(load.oven));
  return [
    ...(isOneOfMany || group.length > 1
      ? [{ type: 'heading', text: listed([...new Set(names)]) } as const]
      : []),
    ...(group.length > 1
      ? [
          {
            type: 'paragraph',
            parts: [
              {
                text: `${group.length} ovens laid alike; times below are for the first. ${waves(plan, group, say)}`,
              },
            ],
          } as const,
        ]
      : []),
    ...ovenBlocks({ plan, dish, part, say }),
    ...stripBlocks(plan, say),
    { type: 'page-break' },
  ];
}

const waves = (plan: MealDay, group: readonly LoadPlan[], say: Say) =>
  group
    .map(({ load }) => {
      const span = plan.daySheet.spans.find(
        (each) => each.load === load.id && each.state === 'cooking',
      );
      return span === undefined
        ? say.ovenName(load.oven)
        : `${say.ovenName(load.oven)} in at ${say.clock(span.from)}`;
    })
    .join(', ');

function leadBlock(plan: MealDay, dish: DishPlan, say: Say): Block {
  const serving = plan.daySheet.servings.find(({ dish: id }) => id === dish.dish.id);
  const { eaters } = dish.portions;
  const pieces = piecesWord(dish, say);
  return {
    type: 'lead',
    parts: [
      ...(pieces === '' ? [] : [{ text: pieces, strong: true }, { text: ' · ' }]),
      { text: say.mass(dish.formula.batch), strong: true },
      ...(eaters > 0 ? [{ text: ` · for ${eatersWord(eaters, say)}` }] : []),
      { text: ' · on the table ' },
      { text: say.clock(serving?.served ?? dish.dish.serveAt), strong: true },
    ],
  };
}

const eatersWord = (eaters: number, say: Say) =>
  eaters === 1 ? 'one who eats it' : `${say.count(eaters)} who eat it`;

/** `24 rolls`; empty where it is not divided, or into pieces of several shapes. */
function piecesWord({ recipe, dish, loads }: DishPlan, say: Say): string {
  const shapes = recipe.division
    .map(({ shape }) => shape)
    .filter((shape) => dish.pieces === undefined || dish.pieces.includes(shape));
  const [shape] = shapes;
  const count = loads.reduce((sum, { load }) => sum + load.pieces.length, 0);
  if (shape === undefined || new Set(shapes).size > 1 || count === 0) return '';
  return `${say.count(count)} ${count === 1 ? shape : PLURAL[shape]}`;
}

const PLURAL = { roll: 'rolls', round: 'rounds', biscuit: 'biscuits', loaf: 'loaves' } as const;

/** What can hurt someone or stops the plan stands right under the title; so does too little food. */
function dangerBlocks(plan: MealDay, dish: DishPlan, say: Say): readonly Block[] {
  const grave = allNotices(plan, dish).filter(isGrave);
  return [...unfitHere(plan, dish.dish.id), ...noticeBox(grave, say)];
}

function restBlocks(plan: MealDay, dish: DishPlan, say: Say): readonly Block[] {
  const rest = allNotices(plan, dish).filter((notice) => !isGrave(notice));
  if (rest.length === 0) return [];
  return [{ type: 'heading', text: 'Worth knowing', half: true }, ...noticeBlocks(rest, say)];
}

/** Everything the stages said about this dish, each once. */
function allNotices(plan: MealDay, dish: DishPlan) {
  const own = [
    ...dish.safety.cautions,
    ...dish.notices,
    ...dish.portions.notices,
    ...dish.formula.notices,
    ...dish.loads.flatMap(({ coals, bake }) => [...coals.notices, ...bake.notices]),
    ...[...plan.notices, ...plan.daySheet.notices].filter(
      ({ about }) => about.dish === dish.dish.id,
    ),
  ];
  const seen = new Set<string>();
  const hasThermometer = plan.camp.gear.thermometer;
  return withoutUnfit(own).filter((notice) => {
    if (isSaidByDone(notice, dish, hasThermometer)) return false;
    const key = JSON.stringify([notice.code, notice.about, notice.values]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function stepBlocks({ recipe }: DishPlan): readonly Block[] {
  const said = recipe.steps.filter(({ say: text }) => text.trim() !== '');
  if (said.length === 0) return [];
  return [
    { type: 'heading', text: 'The work', half: true },
    { type: 'list', tick: true, items: said.map(({ say: text }) => text) },
  ];
}

export function stripBlocks(plan: MealDay, say: Say): readonly Block[] {
  const items = [...new Set(plan.safety.strip.map((notice) => noticeText(notice, say)))];
  return items.length === 0 ? [] : [{ type: 'strip', items }];
}

const BRIQUETTE_ONLY: ReadonlySet<string> = new Set(['piece-mass', 'chimneys']);

export function assumedBlocks(plan: MealDay, say: Say): readonly Block[] {
  // A wood camp hears nothing of briquettes and chimneys.
  const isWood = plan.camp.fuel.kind === 'wood-coals';
  const said = plan.assumed.filter(({ what }) => !isWood || !BRIQUETTE_ONLY.has(what));
  const text = assumedLine(said, say);
  return text === '' ? [] : [{ type: 'paragraph', parts: [{ text }] }];
}
