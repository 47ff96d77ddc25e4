// Two ovens stacked: coals of each layer, what that saves, when, and what has to be done with care.
// The cautions are common practice, no source.

import type { CampOven, Place } from '../../camp/camp.ts';
import type { Addition, Check, CheckWay, CoalSet } from '../../coals/coal-plan.ts';
import type { CoalNeed, FireLighting } from '../../coals/lighting-batches.ts';
import type { StackPlan } from '../../coals/stack.ts';
import { metres } from '../../quantity/unit.ts';
import { isHeavyOven } from '../../timetable/oven-work.ts';
import type { Block, SheetDocument, StepRow } from '../document.ts';
import { stackDrawing } from '../drawing/stack.ts';
import type { Say } from '../say.ts';
import { BOTTOM_LOOK, checksBlocks } from './check-phrases.ts';
import { coalsWord, curveTable, type Door, doorSheet, paragraph, widestLine } from './door.ts';
import { layoutPhrase, listed, sentenceCase, woodPhrase } from './phrases.ts';
import { setFigure } from './set-figure.ts';
import { type Deed, lightingDeeds, visitRows } from './visit-rows.ts';

export interface StackAsked {
  readonly door: Door;
  readonly lower: CampOven;
  readonly upper: CampOven;
  readonly hearth: Place['hearth'];
  readonly stack: StackPlan;
  /** Left out, no row says when to light. */
  readonly lighting?: FireLighting;
  /** Both are pots; their own heat is then shown beside the oven's. */
  readonly isPot?: boolean;
}

export function stackSheet(asked: StackAsked, say: Say): SheetDocument {
  const { door, stack } = asked;
  const { sets } = stack;
  const blocks: readonly Block[] = [
    {
      type: 'figures',
      figures: [
        setFigure(sets.above, 'on top'),
        setFigure(sets.between, 'between'),
        setFigure(sets.below, 'below'),
      ],
    },
    { type: 'drawing', wide: true, ...picture(asked, say) },
    { type: 'placement', lines: placementLines(asked) },
    { type: 'heading', text: 'What it saves' },
    ...savingBlocks(asked, say),
    { type: 'heading', text: 'When: minutes from "coals on"' },
    { type: 'steps', rows: stepRows(asked, say) },
    { type: 'heading', text: 'Before you stack' },
    { type: 'list', tick: true, items: careLines(asked) },
    ...(['upper', 'lower'] as const).flatMap((which) => ovenBlocks(asked, which, say)),
  ];
  const title = 'Two ovens stacked';
  return doorSheet(door, { kind: 'ovens-stacked', title, blocks, notices: stack.notices }, say);
}

/** Heat, what makes its range, and the checks of one of the two. */
function ovenBlocks(asked: StackAsked, which: 'upper' | 'lower', say: Say): readonly Block[] {
  const { stack } = asked;
  const wood = isWood(asked);
  const curve = which === 'upper' ? stack.upperCurve : stack.lowerCurve;
  const hasPot = asked.isPot ?? false;
  const checks = stack.checks[which];
  const asks = (by: CheckWay['by']) => checks.some(({ ways }) => ways.some((way) => way.by === by));
  const words = {
    ...{ wood, noun: 'food', flour: 'flour', hasThermometer: false },
    whenOf: ({ minute }: Check) => ({ minute, clock: '' }),
  };
  return [
    curveTable(curve, { from: `"coals on", ${which} oven`, hasPot }, say),
    ...widestLine(stack.widest[which], wood),
    ...(checks.length === 0
      ? []
      : [
          { type: 'heading', text: `Checks of the ${which} oven` } as const,
          paragraph(which === 'lower' ? LOWER_LOOK : UPPER_LOOK),
          ...(asks('top-colour') && !asks('bottom-corner') ? [paragraph(BOTTOM_LOOK)] : []),
          ...checksBlocks(checks, words, say),
        ]),
  ];
}

const UPPER_LOOK =
  'Where it stands. Its lid goes, coals on it, level to the lid stand on the ground, never onto the ' +
  'coals between; a tin of flour goes in and comes out with the lid there, and the lid is on between.';
const LOWER_LOOK =
  'Only with the upper oven lifted off. Moves below are of the outer layer: what lies between is felt in both.';

/** A heavy oven held out at arm's length is no work for one. */
const careLines = ({ upper, lower }: StackAsked): readonly string[] => [
  ...(isHeavyOven(upper) ? ['Two people lift the upper oven, off and on, every time.'] : []),
  ...(isHeavyOven(lower) ? ['Two people lift the lower oven, turn it and carry it.'] : []),
  ...CARE,
];

const CARE: readonly string[] = [
  'Two, never three: a third sways, and one kick brings all of them down.',
  'Try it cold: all three legs of the upper oven inside the flange of the lower lid, none on a coal ' +
    'or on the handle. It must not rock.',
  'Keep everybody a long step away, and the bails of both ovens down.',
  'To look at the lower oven: gloves and lifter, upper oven straight up and off to bare ground or a ' +
    'pan. Two people where one can not hold it out level at arm’s length.',
  'Then sweep ash and coals between to one side of the lower lid, lift that lid level, far edge ' +
    'first. A tilted lid spills ash into the food.',
  'No turning while they are stacked: turn each food when the ovens are apart, as the lines above say.',
  'Look at the lower one seldom; what is opened most stands on top.',
];

const isWood = ({ door }: StackAsked) => door.fuel === 'wood-coals';

function picture(asked: StackAsked, say: Say) {
  const { lower, upper, stack, door, hearth } = asked;
  const { below, between, above } = stack.sets;
  const word = (set: CoalSet) => coalsWord(set.pieces, door.fuel);
  const labels = {
    above: [`${word(above)} on top`, 'on the upper lid'],
    between: [
      `${word(between)} between`,
      between.spread > 0 && !isWood(asked)
        ? `${between.ring} of them under the upper floor`
        : 'on the lower lid, under the upper floor',
    ],
    below: [`${word(below)} below`, 'under the rim of the lower floor'],
    lowerOven: `lower: ${say.length(lower.diameter)}`,
    upperOven: `upper: ${say.length(upper.diameter)}`,
  } as const;
  const layers = [labels.above, labels.between, labels.below].map((each) => each.join(', '));
  const alt =
    `Two ovens one on the other, cut open from the side. ${layers.join('; ')}. The legs of the ` +
    'upper oven stand on the lower lid between the coals. Coals in the cut are whole; those ' +
    'before and behind it are outlines.';
  const svg = stackDrawing({
    lower,
    upper,
    fuel: door.fuel,
    sets: stack.sets,
    hearth,
    labels,
    alt,
  });
  return { svg, alt };
}

function placementLines(asked: StackAsked): readonly string[] {
  const { below, above } = asked.stack.sets;
  const told = (set: CoalSet, where: 'above' | 'below') =>
    isWood(asked) ? woodPhrase(set, where) : `${set.pieces}: ${layoutPhrase(set, where)}`;
  return [
    `On top: ${told(above, 'above')}`,
    `Between: ${betweenPhrase(asked)}`,
    `Below: ${told(below, 'below')}`,
  ];
}

/** Under the upper floor no more than its ring holds; the rest lies beside it on the lower lid. */
function betweenPhrase(asked: StackAsked): string {
  const { between } = asked.stack.sets;
  const amount = coalsWord(between.pieces, asked.door.fuel);
  const { outer, inner } = ringsBetween(between);
  const isOne = inner === 0 && between.spread === 0;
  if (isOne || isWood(asked)) {
    const rest = isOne ? '' : '; what it does not hold inside it and beside it, off the handle';
    return `${amount}${isWood(asked) ? ',' : ':'} ring under the upper floor, off its legs${rest}`;
  }
  const parts = [
    `${outer} in a ring under the upper floor, off its legs`,
    ...(inner > 0 ? [`${inner} in a second ring inside it`] : []),
    ...(between.spread > 0 ? [`${between.spread} beside them on the lower lid`] : []),
  ];
  return `${amount}: ${parts.join('; ')}, off the handle`;
}

/** How many of a ring's coals lie on its outermost circle, and how many within. */
function ringsBetween({ places, pieceWidth = metres(0.02) }: CoalSet) {
  const radii = places
    .filter(({ in: lies }) => lies === 'ring')
    .map(({ x, y }) => Math.hypot(x, y));
  const most = Math.max(0, ...radii);
  const outer = radii.filter((radius) => most - radius < pieceWidth / 2).length;
  return { outer, inner: radii.length - outer };
}

function savingBlocks({ stack, door }: StackAsked, say: Say): readonly Block[] {
  const { coals, coalsInAll, apart, saved, savedAtLeast, published } = stack;
  const word = (pieces: number) => coalsWord(pieces, door.fuel);
  const span =
    saved <= 0
      ? 'nothing is saved'
      : savedAtLeast < saved
        ? `${word(Math.max(0, savedAtLeast))} to ${word(saved)} fewer, by how much the coals between give to both`
        : `${word(saved)} fewer`;
  const layers = [published.lower.below, published.between, published.upper.above].map(word);
  return [
    paragraph(
      `${word(coals)} to start with where side by side would take ${word(apart)}: ${span}. ` +
        `With what is added later ${word(coalsInAll)} in all; have a quarter more at hand.`,
    ),
    paragraph(
      'The one published line says one or two fewer between than on a lid, the rest as alone: ' +
        `${layers[2]} on top, ${layers[1]} between, ${layers[0]} below. By our reckoning that is ` +
        `${say.oven(published.upperMean)} in the upper oven and ${say.oven(published.lowerMean)} ` +
        'in the lower.',
    ),
  ];
}

function stepRows(asked: StackAsked, say: Say): readonly StepRow[] {
  const { loadInMinute, outMinute, lowerAdditions, upperAdditions } = asked.stack;
  const isLate = loadInMinute.lower > 0 || loadInMinute.upper > 0;
  const both = Math.max(loadInMinute.lower, loadInMinute.upper);
  const rows: (readonly [number, string])[] = [
    [0, isLate ? 'Coals on, upper oven on the lower, both still empty' : 'Coals on, food in both'],
    ...(isLate
      ? [
          [
            both,
            'Food in both: upper oven off, lower lid up level, food in and lid straight back; upper ' +
              'oven on again, its food in',
          ] as const,
        ]
      : []),
    ...additionRows(asked, lowerAdditions, upperAdditions),
    ...outRows(outMinute),
  ];
  return visitRows([...rows, ...lightingRows(asked, say)], say);
}

function lightingRows(asked: StackAsked, say: Say): readonly Deed[] {
  const { lighting, stack } = asked;
  if (lighting === undefined) return [];
  const added = [...stack.lowerAdditions, ...stack.upperAdditions];
  const minutes = [...new Set(added.map(({ minute }) => minute))].sort((one, other) => one - other);
  const needs: readonly CoalNeed[] = [
    { minute: 0, coals: stack.coals },
    ...minutes.map((minute) => ({
      minute,
      coals: added
        .filter((each) => each.minute === minute)
        .reduce((sum, { above, below }) => sum + above + below, 0),
    })),
  ];
  return lightingDeeds(needs, { lighting, wood: isWood(asked) }, say);
}

const outRows = ({
  lower,
  upper,
}: StackPlan['outMinute']): readonly (readonly [number, string])[] =>
  lower === upper
    ? [[lower, 'Upper oven off and down, then food out of both']]
    : [
        [
          upper,
          upper < lower ? 'Upper food out; its coals stay on the lower lid' : 'Upper food out',
        ],
        [
          lower,
          lower < upper ? 'Upper oven off, lower food out, stack on again' : 'Lower food out',
        ],
      ];

/** One trip adds to all layers that want it. */
function additionRows(
  asked: StackAsked,
  lower: readonly Addition[],
  upper: readonly Addition[],
): readonly (readonly [number, string])[] {
  const marks = [...new Set([...lower, ...upper].map(({ minute }) => minute))];
  return marks.flatMap((minute) => {
    const [below, above] = [lower, upper].map((all) => all.find((each) => each.minute === minute));
    const between = amount(asked, (below?.above ?? 0) + (above?.below ?? 0), 'between');
    const outer = [
      amount(asked, above?.above, 'on top'),
      amount(asked, below?.below, 'below'),
    ].filter((part) => part !== '');
    const isLater = minute >= asked.stack.outMinute.upper;
    const deeds = [
      ...(between === ''
        ? []
        : [isLater ? `add ${between}` : BETWEEN(between, turnNow(asked, minute))]),
      ...(outer.length === 0 ? [] : [`clear the ash, then add ${listed(outer)}`]),
    ];
    return deeds.length === 0 ? [] : [[minute, sentenceCase(deeds.join('; '))]];
  });
}

/** Nobody reaches between two ovens: the upper one is lifted off for it. */
const BETWEEN = (between: string, turn: string) =>
  `upper oven straight up and off to bare ground, sweep the ash off the lower lid${turn}, add ` +
  `${between}, upper oven on again`;

/** The one chance to turn: both ovens have food in, and stand apart. A pot needs none. */
function turnNow({ stack, isPot }: StackAsked, minute: number): string {
  const { loadInMinute, outMinute } = stack;
  const isIn = (which: 'upper' | 'lower') =>
    loadInMinute[which] < minute && minute < outMinute[which];
  if (isPot || !isIn('lower')) return '';
  const which = isIn('upper') ? 'each oven' : 'the lower oven';
  return `, turn the food now: ${which} with its lid a quarter clockwise, then its lid alone a quarter back`;
}

const amount = ({ door }: StackAsked, pieces: number | undefined, where: string) =>
  pieces === undefined || pieces <= 0 ? '' : `${coalsWord(pieces, door.fuel)} ${where}`;
