// The fire card: what is allowed today and who said so, ground and pan, clear space, wind, putting out, and
// what is eaten if nobody may light.

import type { MealPlan } from '../../meal.ts';
import type { FireHour, FireLeave } from '../../safety/index.ts';
import {
  CLEAR_SPACE,
  FIRE_PAN,
  FIRE_STAGES,
  fireHours,
  type NoFireDish,
  noFireMenu,
  stageOf,
} from '../../safety/index.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';
import { listed, sentenceCase } from './phrases.ts';

export function fireCard(plan: MealPlan, say: Say): SheetDocument {
  return {
    kind: 'fire-card',
    title: 'Fire card',
    camp: plan.camp.title,
    eyebrow: plan.camp.place.name,
    blocks: [
      { type: 'lead', parts: [{ text: LEAVE_TODAY[plan.camp.restriction], strong: true }] },
      ...noticeBlocks(
        plan.safety.cautions.filter(({ code }) => FIRE_CODES.test(code)),
        say,
      ),
      ...permitBlocks(),
      ...stageBlocks(plan, say),
      ...groundBlocks(plan, say),
      ...weatherBlocks(plan, say),
      ...outBlocks(say),
      ...fallbackBlocks(plan, say),
      gasBlock(),
    ],
  };
}

const FIRE_CODES = /^SAFETY_(FIRE|WIND|UNDER_ROOF|SNOW|TREATED)/;

const LEAVE_TODAY: Readonly<Record<MealPlan['camp']['restriction'], string>> = {
  unknown: 'Not asked yet: nobody lights before the lines below are filled in.',
  none: 'No restriction, says the camp. Ask again on the day; a local order overrides.',
  'coals-allowed-here':
    'Coals are allowed at this place, says the camp. Carry the paper that says so.',
  'stage-1': 'Stage 1: coals only in a ring or grate built in by the agency at a developed site.',
  'stage-2': 'Stage 2: no coals and no wood fire, of any kind. The menu without fire is below.',
};

const LINE = '______________________';

const permitBlocks = (): readonly Block[] => [
  { type: 'heading', text: 'Leave to light', half: true },
  {
    type: 'facts',
    rows: [
      { label: 'Who said yes', value: LINE },
      { label: 'Office and telephone', value: LINE },
      { label: 'Asked on', value: '____________ at ________' },
      { label: 'Good until', value: '____________ at ________' },
      { label: 'Stage today', value: '______  permit no. ____________' },
      { label: 'Never leaves the fire', value: LINE },
    ],
  },
];

const LEAVES: Readonly<Record<FireLeave, string>> = {
  yes: 'yes',
  'built-in-grate': 'in a built-in ring or grate only',
  no: 'no',
  ask: 'ask',
  'area-closed': 'closed, nobody in',
};

function stageBlocks({ camp }: MealPlan, say: Say): readonly Block[] {
  const now = stageOf(camp.restriction);
  return [
    { type: 'heading', text: 'What each stage allows', half: true },
    {
      type: 'table',
      caption: 'As most offices have it. The local order overrides this card, always.',
      head: ['stage', 'coals of any kind, wood fire', 'stove with a valve'],
      rows: FIRE_STAGES.map((row) => [
        row === now ? `${row.stage}, says the camp` : String(row.stage),
        LEAVES[row.charcoal === 'yes' ? row.wood : row.charcoal],
        row.stove === 'yes' ? `yes, ${say.height(CLEAR_SPACE.stove)} cleared` : LEAVES[row.stove],
      ]),
      numeric: [],
    },
    paragraph('Stage 1 counts a pan, a table or a ring of stones as no grate.'),
  ];
}

function groundBlocks({ camp }: MealPlan, say: Say): readonly Block[] {
  const { side, lip } = FIRE_PAN;
  const { bare, tents, structures } = CLEAR_SPACE;
  const onGround = camp.place.hearth === 'ground';
  return [
    { type: 'heading', text: 'Ground and clear space', half: true },
    {
      type: 'list',
      tick: true,
      items: [
        `Bare ground ${say.height(bare)} across, nothing hanging over it.`,
        `${say.height(tents)} from tents and gear, ${say.height(structures)} from anything built.`,
        `Where rules ask for a pan: at least ${say.length(side)} by ${say.length(side)}, lip ${say.length(lip)}, raised off the ground; all ash carried out.${onGround ? ' This camp lays on the ground: ask.' : ''}`,
        'Bucket of water and shovel here before anything is lit. Children outside the circle.',
      ],
    },
  ];
}

function weatherBlocks({ camp }: MealPlan, say: Say): readonly Block[] {
  const hours = fireHours(camp.weather);
  const isDampKnown = camp.weather.some(({ humidity }) => humidity !== undefined);
  return [
    { type: 'heading', text: 'Wind and dry air', half: true },
    {
      type: 'facts',
      rows: [
        { label: 'Put out, do not light', value: `wind ${say.wind(15 * MPH)} or more` },
        { label: 'Dry', value: `humidity ${say.percent(0.25)} or less` },
        { label: 'Watch, screen up', value: `wind ${say.wind(10 * MPH)} or more`, note: 'judged' },
        { label: 'Read now', value: 'wind ______ humidity ______ at ______' },
      ],
    },
    paragraph(
      `Levels of one weather office; others use ${say.wind(25 * MPH)} and ${say.percent(0.2)}: the local office decides. ` +
        'Any Red Flag Warning: out.',
    ),
    ...(hours.length === 0
      ? [
          paragraph(
            `The forecast reaches none of them${isDampKnown ? '' : ', but it says nothing of dryness: ask'}.`,
          ),
        ]
      : [hoursTable(hours, say)]),
  ];
}

const MPH = 0.44704; // exact

/** The camp's wind is a forecast in the open; the office knows its own limit. */
const OVER = 'STOP, unless the office says yes to this wind';

const hoursTable = (hours: readonly FireHour[], say: Say): Block => ({
  type: 'table',
  caption: 'In the forecast',
  head: ['from', 'wind', 'humidity', 'so'],
  rows: hours.map(({ at, hour, level, because }) => [
    say.clock(at),
    because === 'gust' ? `gusts ${say.wind(hour.gust)}` : say.wind(hour.wind),
    hour.humidity === undefined ? 'not said' : say.percent(hour.humidity),
    because === 'red-flag' ? 'STOP: Red Flag weather' : level === 'stop' ? OVER : 'watch',
  ]),
  numeric: [],
});

/** usfs-campfire, fire-departments; the dry way where there is no water. */
const outBlocks = (say: Say): readonly Block[] => [
  { type: 'heading', text: 'Putting out', half: true },
  {
    type: 'list',
    tick: true,
    items: [
      'Let the coals burn down. Spread them.',
      'Drown all of them, not only the red ones.',
      'Stir to a wet mud; scrape the pan, turn over what lay under them.',
      'Drown again. Stir again.',
      'Feel with the back of a bare hand, close, then on it. Too hot to touch is too hot to leave.',
      `Walk ${say.height(CLEAR_SPACE.lookRound)} round and look. Never bury coals.`,
      'No water: stir in soil or sand until it is cold, nothing hot left below.',
    ],
  },
  { type: 'facts', rows: [{ label: 'Felt cold at', value: '________ by ____________' }] },
];

function fallbackBlocks({ menu }: MealPlan, say: Say): readonly Block[] {
  const { dishes, asTheyAre } = noFireMenu(menu);
  if (dishes.length === 0) return [];
  return [
    { type: 'heading', text: 'If nobody may light' },
    {
      type: 'table',
      caption:
        'From the same provisions. Raw dough, meat, egg, dry beans and rice are not food without heat.',
      head: ['dish', 'without fire', 'because'],
      rows: dishes.map((dish) => [say.dish(dish.dish), WAYS[dish.way], becauseWord(dish)]),
      numeric: [],
    },
    ...(asTheyAre.length === 0
      ? []
      : [paragraph(`Eaten as they are, from what is left over: ${listed(asTheyAre)}.`)]),
    ...(dishes.every(({ way }) => way === 'not')
      ? [
          paragraph(
            'No dish of this menu can be eaten without heat: carry bread, cheese, fruit and tins for one meal.',
          ),
        ]
      : []),
  ];
}

const WAYS: Readonly<Record<NoFireDish['way'], string>> = {
  'as-it-is': 'as planned',
  cold: 'cold',
  stove: 'only on a stove with a valve, where that is allowed',
  not: 'not at all',
};

function becauseWord({ way, needsHeat, keptCold }: NoFireDish): string {
  if (way === 'as-it-is') return 'it never needed fire';
  if (needsHeat.length > 0) return sentenceCase(`${listed(needsHeat)} must be cooked`);
  return keptCold.length > 0
    ? `only if ${listed(keptCold)} stayed cold all the way`
    : 'all of it can be eaten cold';
}

const gasBlock = (): Block => ({
  type: 'notice',
  level: 'danger',
  text:
    'Coals never in a tent, vehicle, cave or room, nor under a fly, even when they feel cold: no window and no fan ' +
    'makes it safe. Headache, dizzy, sick: everyone out into the air, call for help.',
});
