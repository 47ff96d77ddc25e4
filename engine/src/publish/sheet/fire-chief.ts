// The fire chief's sheet: what to light, lay, add and turn in each quarter hour, chimneys numbered,
// how many coals stand lit and waiting, how many lie on ovens. Wood coals in shovels.

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import { fireWatch, type Quarter, shovelsOf } from '../../timetable/fire-watch.ts';
import { walksOf } from '../../timetable/walks.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { turnOnce } from './day-sheet.ts';
import { stripBlocks } from './dish-card.ts';
import { sentenceCase, shovelsWord } from './phrases.ts';
import { coalsWord, whereOf } from './short-work.ts';

export function fireChiefSheet(plan: MealPlan, say: Say): SheetDocument {
  const quarters = fireWatch(plan.daySheet);
  return {
    kind: 'fire-chief',
    title: 'Fire chief',
    camp: plan.camp.title,
    eyebrow: plan.camp.date,
    blocks: [
      ...(quarters.length === 0
        ? [{ type: 'lead', parts: [{ text: 'No fire in this plan.' }] } as const]
        : [
            leadBlock(plan, quarters, say),
            ...figures(plan),
            howToRead(plan),
            watchTable(plan, quarters, say),
          ]),
      ...stripBlocks(plan, say),
    ],
  };
}

const isWoodCamp = ({ camp }: MealPlan) => camp.fuel.kind === 'wood-coals';

function leadBlock(plan: MealPlan, quarters: readonly Quarter[], say: Say): Block {
  const first = plan.daySheet.firstFire ?? quarters[0]!.from;
  return {
    type: 'lead',
    parts: [
      { text: 'First fire ' },
      { text: say.clock(first), strong: true },
      {
        text: `. Begin a walk round in each quarter hour; what is due twice in it, on the same ovens, is told twice, with its minute on the day sheet.${turnOnce(plan)}`,
      },
    ],
  };
}

/** The numbers that the fire has to reach. */
function figures(plan: MealPlan): readonly Block[] {
  if (isWoodCamp(plan)) return [];
  const { lit, lightings } = plan.daySheet;
  const most = Math.max(0, ...lit.map(({ waiting, onOvens }) => waiting + onOvens));
  const all = lightings.reduce((sum, { coals }) => sum + coals, 0);
  const chimneys = Math.max(0, ...lightings.map(({ chimney }) => chimney ?? 0));
  return [
    {
      type: 'figures',
      figures: [
        { figure: String(Math.round(most)), label: 'coals lit at most' },
        { figure: String(Math.round(all)), label: 'coals in all' },
        ...(chimneys > 0
          ? [{ figure: String(chimneys), label: chimneys === 1 ? 'chimney' : 'chimneys at work' }]
          : []),
      ],
    },
  ];
}

const howToRead = (plan: MealPlan): Block => ({
  type: 'paragraph',
  parts: [
    {
      text: isWoodCamp(plan)
        ? 'Feed the fire so that the next quarter hour finds its coals in the bed.'
        : 'Coals are for all the ovens of a line together; the dish card says how they lie. Standing by: the most that wait at once, lit and ashed over.',
    },
  ],
});

function watchTable(plan: MealPlan, quarters: readonly Quarter[], say: Say): Block {
  const isWood = isWoodCamp(plan);
  const rows = quarters.map((quarter, index) => [
    say.clock(quarter.from),
    lightCell(quarter, isWood),
    coalCell(quarter.lays, isWood, say),
    coalCell(quarter.adds, isWood, say),
    ovensCell(quarter.turns, say),
    ...(isWood
      ? [bedCell(quarters[index + 1])]
      : [String(Math.round(quarter.standingBy)), String(Math.round(quarter.onOvens))]),
  ]);
  return {
    type: 'table',
    caption: '',
    head: [
      'from',
      'light',
      'lay',
      'add',
      'turn',
      ...(isWood ? ['in the bed'] : ['standing by', 'on ovens']),
    ],
    rows,
    numeric: [false, false, false, false, false, true, true],
  };
}

function lightCell({ lights, feeds }: Quarter, isWood: boolean): string {
  const lit = lights.map(({ chimney, coals }) =>
    isWood
      ? 'the feeder fire'
      : chimney === undefined
        ? `a heap: ${coals}`
        : `chimney ${chimney}: ${coals}`,
  );
  return lines([...lit, ...(feeds.length > 0 ? ['wood on the fire'] : [])]);
}

/** A line for each walk: `215 on bread 1 to 5`. */
const coalCell = (jobs: readonly Job[], isWood: boolean, say: Say) =>
  lines(
    walksOf(jobs).map(({ jobs: own }) => {
      const ash = own[0]?.values.clearAsh === 1 ? ', ash off first' : '';
      return `${coalsWord(own, isWood)} on ${whereOf(own, say)}${ash}`;
    }),
  );

const ovensCell = (jobs: readonly Job[], say: Say) =>
  lines(walksOf(jobs).map(({ jobs: own }) => whereOf(own, say)));

function bedCell(next: Quarter | undefined): string {
  const wanted = next === undefined ? 0 : shovelsOf([...next.lays, ...next.adds]);
  return wanted > 0 ? shovelsWord(wanted) : '';
}

const lines = (all: readonly string[]) => all.map(sentenceCase).join('\n');
