// What to buy, weigh at home and carry: food by shelf, fuel with its spare, water by use.

import type { Tool } from '../../bake/index.ts';
import type { MealPlan } from '../../meal.ts';
import type { FuelNeed, ShoppingLine } from '../../provisions/provisions.ts';
import type { Block, FactRow, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { thousands } from '../speak-number.ts';
import { assumedBlocks } from './dish-card.ts';
import { allergenWord } from './free-from.ts';
import { listed, measureWord, shovelsWord } from './phrases.ts';

export function provisionsSheet(plan: MealPlan, say: Say): SheetDocument {
  const { provisions } = plan;
  const shelves = [...new Set(provisions.shopping.map(({ shelf }) => shelf))];
  return {
    kind: 'provisions',
    title: 'Provisions',
    camp: plan.camp.title,
    blocks: [
      {
        type: 'lead',
        parts: [
          { text: 'Food ' },
          { text: say.mass(provisions.foodMass), strong: true },
          { text: ', water ' },
          { text: say.volume(provisions.waterInAll), strong: true },
          { text: `, ${fuelName(provisions.fuel)} ` },
          { text: say.mass(provisions.fuel.massWithSpare), strong: true },
          { text: ' with spare.' },
        ],
      },
      ...noticeBlocks(provisions.notices, say),
      ...shelves.flatMap((shelf) => [
        { type: 'heading', text: SHELF[shelf] } as const,
        shelfTable(
          provisions.shopping.filter((line) => line.shelf === shelf),
          say,
        ),
      ]),
      { type: 'heading', text: 'Fuel', half: true },
      { type: 'facts', rows: fuelRows(provisions.fuel, say) },
      { type: 'heading', text: 'Water', half: true },
      {
        type: 'facts',
        rows: provisions.water.map(({ use, volume }) => ({
          label: WATER[use],
          value: say.volume(volume),
        })),
      },
      ...gearBlocks(plan),
      ...kitBlocks(plan, say),
      ...assumedBlocks(plan, say),
    ],
  };
}

const SHELF: Readonly<Record<ShoppingLine['shelf'], string>> = {
  dry: 'Dry goods',
  produce: 'Vegetables and fruit',
  meat: 'Meat',
  cold: 'Cold',
  tins: 'Tins',
  spice: 'Spice',
  other: 'Other',
};

const WATER = {
  dough: 'In the dough',
  pots: 'In the pots',
  drinking: 'To drink',
  hands: 'To wash hands',
  wash: 'To wash up',
  ash: 'To drown ash',
} as const;

function shelfTable(lines: readonly ShoppingLine[], say: Say): Block {
  return {
    type: 'table',
    caption: '',
    head: ['', 'weight', 'or measure', 'keep', 'for', 'read the label for'],
    numeric: [false, true, true, false, false, false],
    rows: lines.map(({ name, grams, measure, unweighed, keep, dishes, checkLabel }) => [
      name,
      grams === 0 && unweighed ? 'not known' : gramsWord(grams, say),
      listed([...(measure ? [measureWord(measure)] : []), ...(unweighed ?? [])]),
      keep,
      dishes.length > 2 ? `${dishes.length} dishes` : listed(dishes.map(say.dish)),
      listed(checkLabel.map(allergenWord)),
    ]),
  };
}

const gramsWord = (grams: number, say: Say) =>
  say.measures === 'us'
    ? say.mass(grams)
    : grams < 999.5
      ? say.mass(grams)
      : `${thousands(grams)} g`;

const fuelName = (fuel: FuelNeed) => (fuel.kind === 'wood-coals' ? 'dry wood' : 'charcoal');

function fuelRows(fuel: FuelNeed, say: Say): readonly FactRow[] {
  const plan = [
    fuel.pieces === undefined ? undefined : `${say.count(fuel.pieces)} briquettes`,
    fuel.shovels === undefined ? undefined : `${shovelsWord(fuel.shovels)} of coals`,
    say.mass(fuel.mass),
  ].filter((part) => part !== undefined);
  return [
    { label: 'The plan burns', value: plan.join(', ') },
    {
      label: 'With spare',
      value: say.mass(fuel.massWithSpare),
      note: `${say.percent(fuel.spare)} more`,
    },
    {
      label: 'On hand',
      value:
        fuel.onHand === undefined
          ? 'not said: weigh or count what you have'
          : say.mass(fuel.onHand),
      ...(fuel.short > 0 ? { note: `short by ${say.mass(fuel.short)}` } : {}),
    },
  ];
}

/** A cook who lists their own is not asked for one more. */
const isThermometer = (item: string) => /thermometer|probe/i.test(item);

function gearBlocks({ camp }: MealPlan): readonly Block[] {
  const { gear } = camp;
  const counted: readonly (readonly [number, string])[] = [
    [gear.chimneys, 'chimney'],
    [gear.lidStands, 'lid stand'],
    [gear.tables, 'table'],
    [gear.windScreens, 'wind screen'],
  ];
  const items = [
    ...camp.ovens.map(({ name, mark }) => `Oven ${name}${mark === undefined ? '' : `, ${mark}`}`),
    ...counted
      .filter(([count]) => count > 0)
      .map(([count, word]) => `${count} ${word}${count > 1 ? 's' : ''}`),
    ...(gear.thermometer && !gear.others.some(isThermometer) ? ['Thermometer'] : []),
    ...gear.others,
  ];
  return [
    { type: 'heading', text: 'Carry', half: true },
    { type: 'list', tick: true, items },
  ];
}

const TOOL: Readonly<Record<Tool, readonly [one: string, many: string]>> = {
  gloves: ['pair of gloves to the forearm', 'pairs of gloves to the forearm'],
  'lid-lifter': ['lid lifter', 'lid lifters'],
  'lid-stand': ['lid stand', 'lid stands'],
  'fat-and-brush': ['fat, and a brush or cloth for it', 'fat, and brushes for it'],
  'baking-paper': ['circle of baking paper with tabs', 'circles of baking paper with tabs'],
  'oven-rack': [
    'rack that fits on the floor of the oven',
    'racks that fit on the floor of an oven',
  ],
  tin: ['tin', 'tins'],
  'coarse-meal': ['bag of coarse meal for the floor', 'bags of coarse meal for the floor'],
  fork: ['fork', 'forks'],
  'thin-knife': ['thin knife', 'thin knives'],
  'broad-blade': ['broad blade', 'broad blades'],
  board: ['board', 'boards'],
  'cooling-rack': ['rack to cool bread on', 'racks to cool bread on'],
  'bread-knife': ['bread knife', 'bread knives'],
  'dry-cloth': ['dry cloth to keep bread in', 'dry cloths to keep bread in'],
};

const OWN_WORD: Readonly<Partial<Record<Tool, RegExp>>> = {
  gloves: /glove/i,
  'lid-lifter': /lifter/i,
  'baking-paper': /baking paper/i,
  'bread-knife': /bread knife/i,
};

/** What the camp lists by itself is not asked for twice. */
function kitBlocks({ camp, provisions }: MealPlan, say: Say): readonly Block[] {
  const { kit = [] } = provisions;
  const items = kit
    .filter(({ tool }) => tool !== 'lid-stand' || camp.gear.lidStands === 0)
    .filter(({ tool }) => !camp.gear.others.some((item) => OWN_WORD[tool]?.test(item)))
    .map(({ tool, count, dishes }) => {
      const [one, many] = TOOL[tool];
      const named = dishes.length > 3 ? `${dishes.length} dishes` : listed(dishes.map(say.dish));
      return `${count} ${count === 1 ? one : many}: ${named}`;
    });
  if (items.length === 0) return [];
  return [
    { type: 'heading', text: 'At the ovens', half: true },
    { type: 'list', tick: true, items },
  ];
}
