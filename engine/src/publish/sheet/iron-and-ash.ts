// Iron and ash, after the last dish: when water may touch the iron, how it is cared for, how ash is put out,
// carried and watched for days. Care of iron is common practice, no source.

import type { CampOven } from '../../camp/camp.ts';
import { weatherAt } from '../../camp/weather.ts';
import type { LoadPlan, MealPlan } from '../../meal.ts';
import { type ClockMinutes, clockMinutes, type Kelvin, kelvin } from '../../quantity/unit.ts';
import {
  ASH_BAG_HOURS,
  ASH_CAN_METRES,
  ASH_LIVE_DAYS,
  coolMinutes,
  hotWaterLimit,
  TOUCH_LIMIT,
} from '../../safety/index.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { dayAfter } from '../speak-date.ts';
import { paragraph } from './door.ts';
import { allergenWord } from './free-from.ts';
import { listed } from './phrases.ts';

export function ironAndAshSheet(plan: MealPlan, say: Say): SheetDocument {
  return {
    kind: 'iron-and-ash',
    title: 'Iron and ash',
    camp: plan.camp.title,
    blocks: [
      gasBlock(),
      ...clockBlocks(plan, say),
      ...careBlocks(plan),
      ...ashBlocks(plan, say),
      ...canBlocks(plan, say),
    ],
  };
}

/** cpsc-5012 */
const gasBlock = (): Block => ({
  type: 'notice',
  level: 'danger',
  text:
    'Ovens, pans and cans that had coals in them stay in the open air until they are swept and cold: never in a ' +
    'tent, vehicle, cave or room for the night. Coals that feel cold still give the gas that kills.',
});

function clockBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const rows = plan.camp.ovens.flatMap((oven) => {
    const emptied = emptiedOf(plan, oven);
    return emptied === undefined ? [] : [clockRow(plan, emptied, say)];
  });
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Cool-down clock' },
    {
      type: 'table',
      caption:
        'From when the oven is emptied and its coals are off lid and ground, lid on, in still air. Coals left on it ' +
        'start the clock anew. No sooner than:',
      head: [
        'oven',
        'emptied',
        `iron about`,
        'hot water in',
        `bare hand, cold water`,
        'put away by',
      ],
      rows,
      numeric: [false, true, true, true, true, false],
    },
    paragraph(
      'Hot water first, a little, lid off and face away: it spits. Cold water in hot iron cracks it (from memory). ' +
        'Drop test: a drop that sits still and steams, not dances. Measured cooling was not found: these come from our ' +
        `oven model; ${say.degrees(TOUCH_LIMIT)} is for a hand, from memory.`,
    ),
  ];
}

interface Emptied {
  readonly oven: CampOven;
  readonly at: ClockMinutes;
  readonly iron: Kelvin;
  readonly part: LoadPlan;
}

/** When the last food leaves it, and how hot its hottest iron then is. */
function emptiedOf(plan: MealPlan, oven: CampOven): Emptied | undefined {
  const last = plan.daySheet.spans
    .filter(
      (span) => span.oven === oven.id && (span.state === 'cooking' || span.state === 'holding'),
    )
    .reduce<(typeof plan.daySheet.spans)[number] | undefined>(
      (late, span) => (late === undefined || span.to > late.to ? span : late),
      undefined,
    );
  if (last === undefined) return undefined;
  const part = plan.dishes
    .flatMap(({ loads }) => loads)
    .find(({ load }) => load.id === last.load && load.oven === oven.id);
  const end = part?.coals.curve.at(-1);
  if (part === undefined || end === undefined) return undefined;
  return { oven, at: last.to, iron: kelvin(Math.max(end.lid, end.wall, end.floor)), part };
}

function clockRow(plan: MealPlan, { oven, at, iron, part }: Emptied, say: Say): readonly string[] {
  const { air } = weatherAt(plan.camp, at);
  const asked = { iron, air, diameter: oven.diameter };
  const hot = coolMinutes({ ...asked, limit: hotWaterLimit(part.air.boiling) });
  const touch = coolMinutes({ ...asked, limit: TOUCH_LIMIT });
  const clock = (minutes: number | undefined) =>
    minutes === undefined ? 'feel it' : say.clock(clockMinutes(5 * Math.ceil((at + minutes) / 5)));
  const name = oven.mark === undefined ? oven.name : `${oven.name} (${oven.mark})`;
  return [name, say.clock(at), say.oven(iron), clock(hot), clock(touch), '__________'];
}

const SOUR =
  /\b(tomato(es)?|vinegar|wine|lemon|lime|citrus|rhubarb|buttermilk|sauerkraut|peach(es)?|cherr(y|ies)|apples?|plums?|berries|pineapple)\b/i;

function careBlocks(plan: MealPlan): readonly Block[] {
  const free = plan.camp.ovens.filter(({ keptFreeOf }) => keptFreeOf.length > 0);
  const sour = plan.dishes
    .filter(
      ({ recipe, loads }) =>
        loads.length > 0 && recipe.ingredients.some(({ name }) => SOUR.test(name)),
    )
    .map(({ dish }) => dish.name);
  return [
    { type: 'heading', text: 'Iron', half: true },
    {
      type: 'list',
      tick: true,
      items: [
        ...free.map(
          ({ name, keptFreeOf }) =>
            `First ${name}: own cloth, own scraper, own water; free of ${listed(keptFreeOf.map(allergenWord))}.`,
        ),
        'Scrape with wood. What sticks: hot water in, back over a few coals until it lifts, out again. No wire, no sand.',
        'Wipe with hot water. Dry it over the last coals, lid too, until no drop is left.',
        'While it is warm: a thin film of plain oil inside and out, wiped until none of it shines.',
        ...(sour.length === 0
          ? []
          : [
              `Sour food was in it (${listed(sour)}): empty it at once, and give it a second film of oil.`,
            ]),
        'Cold: paper inside, lid ajar on a folded towel, so that air moves. Never shut damp.',
      ],
    },
    {
      type: 'heading',
      text: 'Season anew: rust, grey spots, sticky oil',
      half: true,
    },
    {
      type: 'list',
      tick: true,
      items: [
        'Scrub to bare iron where it rusts; rinse hot; dry over coals.',
        'Film of oil all over, wiped until it looks dry.',
        'Upside down in a closed oven or under coals above and below, out in the open, until it no longer smokes: about an hour.',
        'Let it cool where it stands. Twice more. Sticky again: too much oil, heat it and wipe.',
        `To be seasoned: ____________________  who: ____________`,
      ],
    },
  ];
}

/** usfs-campfire; the water by provisions/. */
function ashBlocks({ provisions }: MealPlan, say: Say): readonly Block[] {
  const ash = provisions.water.find(({ use }) => use === 'ash');
  const much = ash === undefined ? 'A bucket of water' : `${say.volume(ash.volume)} of water`;
  return [
    { type: 'heading', text: 'Ash out', half: true },
    {
      type: 'list',
      tick: true,
      items: [
        `${much} and a shovel beside it before you begin.`,
        'Drown: all of it, the grey coals too. Stand upwind: it steams and spits.',
        'Stir to a mud, scrape pan, table and ground.',
        'Drown again, stir again.',
        'Feel: back of a bare hand over it, then in it. Warm: once more.',
        'Never bury it: buried coals have lit again after two and three days, a dead heap after thirty hours.',
      ],
    },
    {
      type: 'facts',
      rows: [
        { label: 'Felt cold at', value: '________ by ____________' },
        { label: 'Felt again an hour later', value: '________ by ____________' },
      ],
    },
  ];
}

/** fire-departments, hearth-ash, river-fire-pan. */
function canBlocks({ camp }: MealPlan, say: Say): readonly Block[] {
  const until = dayAfter(camp.date, ASH_LIVE_DAYS);
  const isDated = until !== camp.date;
  return [
    { type: 'heading', text: 'The can', half: true },
    {
      type: 'list',
      tick: true,
      items: [
        'Metal, with a lid, ash wet in it and nothing else: no paper, no plastic, no scraps. Not galvanised while anything is hot.',
        `Outdoors, on bare ground, ${say.height(ASH_CAN_METRES)} from tent, wall, wood and vehicle (distance from memory).`,
        `Live for ${ASH_LIVE_DAYS} days${isDated ? `: until ${until}` : ''}. Into a bag no sooner than ${ASH_BAG_HOURS} hours, and felt first.`,
        'On a boat, a mule or in a car: cold, wet, shut, outside where people sit. Where rules ask, all of it is carried out.',
      ],
    },
    {
      type: 'facts',
      rows: [
        { label: 'Can stands at', value: '____________________' },
        { label: 'Emptied on', value: '__________ by ____________' },
      ],
    },
  ];
}
