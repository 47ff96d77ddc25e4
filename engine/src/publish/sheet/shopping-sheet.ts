// The list for the shop: by shop or shelf, in packs where the cook names them, larder taken off, with
// its price; and what has to stay cold on the way.

import type { MealPlan } from '../../meal.ts';
import type { ShoppingLine } from '../../provisions/provisions.ts';
import type { Block, Part, SheetDocument } from '../document.ts';
import { noticeBlocks, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { allergenWord } from './free-from.ts';
import { listed, measureWord, sentenceCase } from './phrases.ts';
import { SHELF } from './shelf-words.ts';

const OURS: ReadonlySet<string> = new Set([
  'PROVISIONS_STORE_UNUSED',
  'PROVISIONS_FOOD_UNKNOWN',
  'PROVISIONS_AS_BOUGHT',
]);

export function shoppingSheet(plan: MealPlan, say: Say): SheetDocument {
  const { provisions } = plan;
  const groups = byShop(provisions.shopping);
  const arePriced = provisions.shopping.some(({ cost = 0 }) => cost > 0);
  return {
    kind: 'shopping',
    title: 'Shopping',
    camp: plan.camp.title,
    blocks: [
      { type: 'lead', parts: leadParts(plan, say) },
      ...refusalBlocks(provisions.refusals ?? [], say),
      ...[...groups].flatMap(([shop, lines]): readonly Block[] => [
        { type: 'heading', text: shop },
        shopTable(lines, arePriced, say),
      ]),
      ...coldBlocks(provisions.shopping, say),
      ...labelBlocks(provisions.shopping),
      ...noticeBlocks(
        provisions.notices.filter(({ code }) => OURS.has(code)),
        say,
      ),
    ],
  };
}

function leadParts({ provisions: { bill, foodMass } }: MealPlan, say: Say): readonly Part[] {
  if (bill === undefined) return [{ text: say.mass(foodMass), strong: true }];
  const priced = bill.cost > 0;
  return [
    { text: say.mass(bill.bought), strong: true },
    { text: ' to carry home' },
    ...(priced ? [{ text: ', ' }, { text: moneyWord(bill.cost, bill.money), strong: true }] : []),
    ...(priced && bill.unpriced > 0
      ? [{ text: `, and what ${bill.unpriced} more lines cost` }]
      : []),
    { text: '. Tick it off as it goes into the basket.' },
  ];
}

/** A shop that the cook names, else the shelf of any shop. */
function byShop(lines: readonly ShoppingLine[]): ReadonlyMap<string, readonly ShoppingLine[]> {
  const groups = new Map<string, ShoppingLine[]>();
  for (const line of [...lines.filter(({ shop }) => shop), ...lines.filter(({ shop }) => !shop)]) {
    const shop = line.shop === undefined ? SHELF[line.shelf] : sentenceCase(line.shop);
    groups.set(shop, [...(groups.get(shop) ?? []), line]);
  }
  return groups;
}

function shopTable(lines: readonly ShoppingLine[], arePriced: boolean, say: Say): Block {
  return {
    type: 'table',
    caption: '',
    head: ['', 'buy', 'needed', 'in the larder', ...(arePriced ? ['price'] : [])],
    numeric: [false, false, true, true, true],
    rows: lines.map((line) => [
      line.name,
      buyWord(line, say),
      neededWord(line, say),
      line.have === undefined ? '' : say.mass(line.have),
      ...(arePriced ? [line.cost === undefined ? '' : line.cost.toFixed(2)] : []),
    ]),
  };
}

/** `2 of 1 kg and 1 of 500 g`; a weight where no packs are named. */
function buyWord({ packs, bought, toBuy, grams, unweighed }: ShoppingLine, say: Say): string {
  const unknown = listed(unweighed ?? []);
  if (grams === 0 && unknown !== '') return unknown;
  if (packs !== undefined)
    return listed(packs.map(({ count, size }) => `${count} of ${say.mass(size)}`));
  if (toBuy === 0) return 'nothing';
  return [say.mass(bought ?? grams), unknown].filter(Boolean).join(' and ');
}

const neededWord = ({ grams, asBought, measure }: ShoppingLine, say: Say) => {
  if (grams === 0) return '';
  const measured =
    measure === undefined || asBought !== undefined ? '' : ` (${measureWord(measure)})`;
  return `${say.mass(asBought ?? grams)}${measured}`;
};

export const moneyWord = (cost: number, money: string) =>
  [cost.toFixed(2), money].filter((part) => part !== '').join('\u00a0');

const COLD = {
  frozen: 'Frozen, bought last',
  cold: 'Cold, into the cooler at once',
  cool: 'Cool and shady is enough',
  dry: 'Dry',
} as const;

/** By how it is kept, coldest first; the dry rest goes without saying. */
function coldBlocks(lines: readonly ShoppingLine[], say: Say): readonly Block[] {
  const rows = (['frozen', 'cold', 'cool'] as const).flatMap((keep) => {
    const kept = lines.filter((line) => line.keep === keep);
    const mass = kept.reduce((sum, line) => sum + (line.asBought ?? line.grams), 0);
    if (kept.length === 0) return [];
    const value = kept.map(({ name }) => name).join(', ');
    return [{ label: COLD[keep], value, ...(mass > 0 ? { note: say.mass(mass) } : {}) }];
  });
  return rows.length === 0
    ? []
    : [
        { type: 'heading', text: 'On the way home' },
        { type: 'facts', rows },
      ];
}

function labelBlocks(lines: readonly ShoppingLine[]): readonly Block[] {
  const items = lines
    .filter(({ checkLabel }) => checkLabel.length > 0)
    .map(({ name, checkLabel }) => `${name}: ${listed(checkLabel.map(allergenWord))}`);
  return items.length === 0
    ? []
    : [
        { type: 'heading', text: 'Read these labels in the shop' },
        { type: 'list', tick: true, items },
      ];
}
