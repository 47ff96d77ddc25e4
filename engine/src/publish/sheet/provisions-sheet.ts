// What to buy, weigh at home and carry: food by shelf, fuel with its spare, water by use.

import type { MealPlan } from '../../meal.ts';
import { isOwned, ownsThermometer } from '../../provisions/kit.ts';
import type { Provisions, ShoppingLine } from '../../provisions/provisions.ts';
import type { Block, Part, SheetDocument } from '../document.ts';
import { noticeBlocks, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { thousands } from '../speak-number.ts';
import { assumedBlocks } from './dish-card.ts';
import { allergenWord } from './free-from.ts';
import { fuelName, fuelRows, waterRows } from './fuel-water-rows.ts';
import { listed, measureWord } from './phrases.ts';
import { SHELF } from './shelf-words.ts';
import { moneyWord } from './shopping-sheet.ts';
import { countedWord, TOOL } from './tool-words.ts';

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
          ...carriedParts(provisions, say),
        ],
      },
      ...refusalBlocks(provisions.refusals ?? [], say),
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
      { type: 'facts', rows: waterRows(provisions.water, say) },
      ...gearBlocks(plan),
      ...kitBlocks(plan, say),
      ...assumedBlocks(plan, say),
    ],
  };
}

function carriedParts({ bill, packing }: Provisions, say: Say): readonly Part[] {
  return [
    ...(packing === undefined
      ? []
      : [
          { text: ' All of it but the water weighs ' },
          { text: say.mass(packing.mass), strong: true },
          { text: ' in its boxes.' },
        ]),
    ...(bill === undefined || bill.cost === 0
      ? []
      : [
          { text: ' The shop asks ' },
          { text: moneyWord(bill.cost, bill.money), strong: true },
          { text: bill.unpriced > 0 ? ` and ${bill.unpriced} lines without a price.` : '.' },
        ]),
  ];
}

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
    ...(gear.thermometer && !ownsThermometer(gear.others) ? ['Thermometer'] : []),
    ...gear.others,
  ];
  return [
    { type: 'heading', text: 'Carry', half: true },
    { type: 'list', tick: true, items },
  ];
}

/** What the camp lists by itself is not asked for twice. */
function kitBlocks({ camp, provisions }: MealPlan, say: Say): readonly Block[] {
  const { kit = [] } = provisions;
  const items = kit
    .filter(({ tool }) => tool !== 'lid-stand' || camp.gear.lidStands === 0)
    .filter(({ tool }) => !isOwned(tool, camp.gear.others))
    .map(({ tool, count, dishes }) => {
      const named = dishes.length > 3 ? `${dishes.length} dishes` : listed(dishes.map(say.dish));
      return `${countedWord(count, TOOL[tool])}: ${named}`;
    });
  if (items.length === 0) return [];
  return [
    { type: 'heading', text: 'At the ovens', half: true },
    { type: 'list', tick: true, items },
  ];
}
