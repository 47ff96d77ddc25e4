// What goes into which box, what each weighs, and who carries which. A copy lies in every box.

import type { MealPlan } from '../../meal.ts';
import type {
  BoxKind,
  PackedBox,
  PackedThing,
  PackItem,
  Packing,
} from '../../provisions/boxes/packing.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { freeWord } from './free-from.ts';
import { ovensInARow } from './job-list.ts';
import { listed, sentenceCase } from './phrases.ts';
import { countedWord, GEAR, TOOL } from './tool-words.ts';

const OURS: ReadonlySet<string> = new Set([
  'PROVISIONS_OVERLOAD',
  'PROVISIONS_BOX_HEAVY',
  'PROVISIONS_RAW_BESIDE_READY',
]);

export function boxesSheet(plan: MealPlan, say: Say): SheetDocument {
  const { packing, notices, waterInAll } = plan.provisions;
  const ours = notices.filter(({ code }) => OURS.has(code));
  return {
    kind: 'boxes',
    title: 'Boxes',
    camp: plan.camp.title,
    blocks:
      packing === undefined
        ? []
        : [
            {
              type: 'lead',
              parts: [
                { text: say.mass(packing.mass), strong: true },
                { text: ` in ${packing.boxes.length} boxes and ovens. ` },
                { text: waterWord(plan, waterInAll, say) },
                {
                  text: ` Tools are judged by eye, what you list yourself as ${say.mass(1000)} each: weigh the boxes.`,
                },
              ],
            },
            ...noticeBlocks(ours, say),
            ...carrierBlocks(packing, say),
            ...boxBlocks(plan, packing, say),
          ],
  };
}

/** Water weighs what it measures, and nobody asks twice where it is drawn at camp. */
const waterWord = ({ camp }: MealPlan, volume: number, say: Say) =>
  camp.place.water === undefined
    ? `Water is not in it: where there is none at camp it is ${say.mass(volume * 1e6)} more.`
    : `Water is not in it: it is drawn at camp (${camp.place.water}).`;

function carrierBlocks({ carriers, boxes, left, leftMass }: Packing, say: Say): readonly Block[] {
  if (carriers.length === 0) return [];
  const names = (ids: readonly string[]) =>
    inRows(boxes.filter(({ id }) => ids.includes(id)).map((box) => boxName(box, say)));
  return [
    { type: 'heading', text: 'Who carries what' },
    {
      type: 'table',
      caption: '',
      head: ['', 'carries', 'of at most', 'boxes'],
      numeric: [false, true, true, false],
      rows: [
        ...carriers.map(({ name, mass, limit, boxes: ids }) => [
          sentenceCase(name),
          say.mass(mass),
          say.mass(limit),
          names(ids),
        ]),
        ...(left.length === 0 ? [] : [['Nobody', say.mass(leftMass), '', names(left)]]),
      ],
    },
  ];
}

/** `Dry box 1 to 5, Kit box 1 and Pot 1 to 14`: names of one stem stand together. */
function inRows(names: readonly string[]): string {
  const byStem = new Map<string, string[]>();
  for (const name of names) {
    const stem = name.replace(/\d+$/, '');
    byStem.set(stem, [...(byStem.get(stem) ?? []), name]);
  }
  return listed([...byStem.values()].map(ovensInARow));
}

/** Ovens in one table, every other box on a card of its own. */
function boxBlocks(plan: MealPlan, { boxes }: Packing, say: Say): readonly Block[] {
  const ovens = boxes.filter(({ kind }) => kind === 'oven');
  return [
    ...boxes.filter(({ kind }) => kind !== 'oven').map((box) => boxCard(plan, box, say)),
    ...(ovens.length === 0
      ? []
      : [
          {
            type: 'card',
            title: `Ovens · ${say.mass(ovens.reduce((sum, { mass }) => sum + mass, 0))}`,
            blocks: [
              {
                type: 'list',
                tick: true,
                items: ovens.map((box) => `${boxName(box, say)}, ${say.mass(box.mass)}`),
              },
            ],
          } as const,
        ]),
  ];
}

function boxCard({ provisions, camp }: MealPlan, box: PackedBox, say: Say): Block {
  const free = box.items.flatMap(({ what }) =>
    what.thing === 'bag' ? (provisions.bags.find(({ id }) => id === what.bag)?.freeFrom ?? []) : [],
  );
  const flag = listed([...new Set(free)].map(freeWord)).toUpperCase();
  const last = camp.stores?.carriers.length ?? 0;
  return {
    type: 'card',
    title: `${boxName(box, say)} · ${say.mass(box.mass)}`,
    ...(box.kind !== 'free-from' || flag === '' ? {} : { flag }),
    blocks: [
      { type: 'list', tick: true, items: box.items.map((item) => itemWord(item, say)) },
      {
        type: 'paragraph',
        parts: [
          { text: CARE[box.kind] },
          ...(last > 0 ? [{ text: ' Weighed: ________ Carried by: ________' }] : []),
        ],
      },
    ],
  };
}

const NAME: Readonly<Record<Exclude<BoxKind, 'oven'>, string>> = {
  'dry-tin': 'Dry tin',
  'free-from': 'Kept-apart box',
  dry: 'Dry box',
  produce: 'Vegetable box',
  'raw-meat': 'Cold box, raw meat',
  ready: 'Cold box, ready to eat',
  kit: 'Kit box',
  fuel: 'Charcoal',
};

const CARE: Readonly<Record<BoxKind, string>> = {
  'dry-tin': 'Shut tight, a bag of rice or a desiccant in it; out of the rain and the steam.',
  'free-from': 'Opened first, with washed hands and its own spoon; nothing else goes into it.',
  dry: 'Off the ground; what is used last lies at the bottom.',
  produce: 'In the shade, with air.',
  'raw-meat': 'Sealed, below everything; nothing that is eaten as it is goes into it.',
  ready: 'In the shade, full, opened seldom; meltwater stays in.',
  kit: 'Packed last, opened first.',
  oven: '',
  fuel: 'In a lidded bucket, away from all food.',
};

function boxName({ kind, number, items }: PackedBox, say: Say): string {
  const [first] = items;
  if (kind !== 'oven') return `${NAME[kind]} ${number}`;
  return first?.what.thing === 'oven' ? ovenWord(say.ovenName(first.what.oven)) : 'Oven';
}

/** `Oven B`; a nickname stands alone. */
const ovenWord = (name: string) =>
  /^[A-Z0-9]{1,2}$/i.test(name) ? `Oven ${name}` : sentenceCase(name);

const itemWord = ({ what, mass }: PackItem, say: Say) =>
  `${sentenceCase(thingWord(what, say))}, ${say.mass(mass)}`;

function thingWord(what: PackedThing, say: Say): string {
  switch (what.thing) {
    case 'food':
    case 'own':
      return what.name;
    case 'bag':
      return `bag for ${say.dish(what.dish)} (${what.bag})`;
    case 'leavening':
      return `${what.name} for ${say.dish(what.dish)}`;
    case 'oven':
      return say.ovenName(what.oven);
    case 'ice':
      return 'ice, in one block if you can';
    case 'fuel':
      return 'charcoal, with its spare';
    case 'tool':
      return countedWord(what.count, TOOL[what.tool]);
    default:
      return countedWord(what.count, GEAR[what.thing]);
  }
}
