// Coals only: how many for this oven and this heat, where they lie, when more come, and why so many.

import type { UsualLooks } from '../../bake/index.ts';
import type { CoalPlan, Turn } from '../../coals/coal-plan.ts';
import { shovelsFor } from '../../coals/fuel.ts';
import type { CoalNeed, FireLighting } from '../../coals/lighting-batches.ts';
import type { WarmWithFew } from '../../coals/warm-few.ts';
import { isHeavyOven } from '../../timetable/oven-work.ts';
import type { Block, SheetDocument, StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { fraction } from '../speak-number.ts';
import { BOTTOM_LOOK, checksBlocks } from './check-phrases.ts';
import { curveTable, type Door, doorSheet, paragraph, wideLine } from './door.ts';
import { type FromAbovePart, fromAboveBlocks } from './from-above-part.ts';
import {
  additionPhrase,
  isWood,
  movePhrase,
  placementLine,
  sentenceCase,
  turnBrief,
} from './phrases.ts';
import { practiceLines } from './practice-lines.ts';
import { setFigure } from './set-figure.ts';
import { type Deed, lightingDeeds, visitRows } from './visit-rows.ts';
import { whyBlocks } from './why-part.ts';

export function coalsAloneSheet(
  asked: {
    readonly door: Door;
    readonly coals: CoalPlan;
    readonly hasThermometer?: boolean;
    /** Left out, no row says when to light. */
    readonly lighting?: FireLighting;
    /** What the few coals of practice do, where a dish is kept warm. */
    readonly few?: WarmWithFew | undefined;
    /** Left out, nothing is drawn. */
    readonly spot?: Pick<FromAbovePart, 'oven' | 'air' | 'screened'>;
    /** What a usual dough looks like along this curve; left out, looks go by the clock. */
    readonly looks?: UsualLooks | undefined;
  },
  say: Say,
): SheetDocument {
  const { coals, door, spot, lighting, few, looks } = asked;
  const wood = isWood(coals);
  const hasPot = coals.method === 'simmer' || coals.method === 'boil';
  const blocks: readonly Block[] = [
    {
      type: 'figures',
      figures: [setFigure(coals.above, 'above'), setFigure(coals.below, 'below')],
    },
    ...(spot === undefined
      ? []
      : fromAboveBlocks({ ...spot, coals, minuteOf: (planned) => planned }, say)),
    {
      type: 'placement',
      lines: [placementLine(coals.above, 'above', wood), placementLine(coals.below, 'below', wood)],
    },
    ...whyBlocks(coals, say),
    ...practiceLines({ coals, few, diameter: door.oven.diameter }, say),
    { type: 'heading', text: 'When: minutes from "coals on"' },
    { type: 'steps', rows: stepRows(coals, { lighting, byTwo: isHeavyOven(door.oven) }, say) },
    paragraph(inAllPhrase(coals)),
    curveTable(coals.curve, { from: '"coals on"', hasPot }, say),
    ...wideLine(coals.curve, coals.factorRuns, wood),
    ...checksHeading({ ...coals, ...(looks === undefined ? {} : { checks: looks.checks }) }),
    ...looksLines(coals, looks, say),
    ...checksBlocks(
      looks?.checks ?? coals.checks,
      {
        wood,
        noun: 'food',
        flour: 'flour',
        hasThermometer: asked.hasThermometer ?? false,
        whenOf: ({ minute }) => ({ minute, clock: '' }),
      },
      say,
    ),
    ...moveBlocks(coals, wood, say),
  ];
  const wanted = (coals.wanted.low + coals.wanted.high) / 2;
  const title = `Coals for ${say.oven(wanted)}`;
  return doorSheet(door, { kind: 'coals-alone', title, blocks, notices: coals.notices }, say);
}

const NO_CHECK =
  'None is of use here: what it shows would come too late to change. Look when it is time to come out.';

/** A fry and a dish kept warm are watched as they stand. */
function checksHeading({ checks, method }: CoalPlan): readonly Block[] {
  const heading = { type: 'heading', text: 'Checks: every count is only a start' } as const;
  if (checks.length > 0) return [heading];
  return method === 'fry' || method === 'keep-warm' ? [] : [heading, paragraph(NO_CHECK)];
}

/** What the looks rest on, and what this heat does to a usual dough where that is not a crust. */
function looksLines(
  { method }: CoalPlan,
  looks: UsualLooks | undefined,
  say: Say,
): readonly Block[] {
  if (looks === undefined) return [];
  if (method === 'roast') return [paragraph(ROAST_LOOKS)];
  if (method !== 'bake') return [];
  const { burns, atEnd } = looks;
  if (burns !== undefined)
    return [
      paragraph(
        `Too hot for a usual dough: its top burns about ${say.minutes(burns)} after "coals on". Take it out before, or take coals off.`,
      ),
    ];
  const pale = atEnd === 'pale' || atEnd === 'straw' ? [paragraph(PALE_LOOKS(atEnd))] : [];
  return [...pale, paragraph(BOTTOM_LOOK)];
}

const ROAST_LOOKS =
  'No colour is asked for: what meat looks like by the minute nobody has reckoned.';
const PALE_LOOKS = (colour: string) =>
  `The top of a usual dough is still ${colour} when it comes out: give it longer or hotter if it should be brown.`;

/** All that is done at one minute is one entry: one visit, one lifting of the lid. */
function stepRows(
  coals: CoalPlan,
  { lighting, byTwo }: { readonly lighting: FireLighting | undefined; readonly byTwo: boolean },
  say: Say,
): readonly StepRow[] {
  const wood = isWood(coals);
  const isLate = coals.loadInMinute > 0;
  const rows: readonly Deed[] = [
    [0, isLate ? 'Coals on, oven still empty' : 'Coals on, food in'],
    ...(isLate ? [[coals.loadInMinute, 'Food in'] as const] : []),
    ...coals.turns.map((turn) => [turn.minute, turnLine(turn, byTwo)] as const),
    ...coals.additions.map(
      (each) =>
        [
          each.minute,
          `${each.clearAsh ? 'Clear the ash, then add' : 'Add'} ${additionPhrase(each, wood)}`,
        ] as const,
    ),
    [coals.outMinute, 'Food out'],
    // Last: what is done at the oven itself is not hidden behind it.
    ...(lighting === undefined ? [] : lightingDeeds(needsOf(coals), { lighting, wood }, say)),
  ];
  return visitRows(rows, say);
}

const turnLine = (turn: Turn, byTwo: boolean) =>
  byTwo ? `Two people ${turnBrief(turn)}` : sentenceCase(turnBrief(turn));

const needsOf = ({ above, below, additions }: CoalPlan): readonly CoalNeed[] => [
  { minute: 0, coals: above.pieces + below.pieces },
  ...additions.map((each) => ({ minute: each.minute, coals: each.above + each.below })),
];

const inAllPhrase = (coals: CoalPlan) =>
  isWood(coals)
    ? `About ${fraction(shovelsFor(coals.coalsInAll), 2)} shovels in all, what is added counted; keep the feeder fire for a quarter more.`
    : `${coals.coalsInAll} in all, what is added counted; have a quarter more at hand.`;

const BAKE_MOVES = 'Also near the end, for a paler bottom or a darker top';

/** Moves that no check has told already. */
function moveBlocks(coals: CoalPlan, wood: boolean, say: Say): readonly Block[] {
  const said = new Set(
    coals.checks.flatMap(({ ifHot, ifCool }) => [...ifHot, ...ifCool]).map(({ do: move }) => move),
  );
  const moves = coals.moves.filter(({ do: move }) => !said.has(move));
  if (moves.length === 0) return [];
  const items = moves.map((move) => sentenceCase(movePhrase(move, wood, say)));
  return [
    {
      type: 'heading',
      text: coals.method === 'bake' ? BAKE_MOVES : 'If it runs hot or cool',
    },
    { type: 'list', tick: false, items },
  ];
}
