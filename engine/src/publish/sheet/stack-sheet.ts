// Two ovens stacked: coals of each layer, what that saves, when, and what has to be done with care.
// The cautions are common practice, no source.

import type { CampOven, Place } from '../../camp/camp.ts';
import type { Addition, CoalSet } from '../../coals/coal-plan.ts';
import type { StackPlan } from '../../coals/stack.ts';
import type { Block, SheetDocument, StepRow } from '../document.ts';
import { stackDrawing } from '../drawing/stack.ts';
import type { Say } from '../say.ts';
import { coalsWord, curveTable, type Door, doorSheet, paragraph } from './door.ts';
import { layoutPhrase, woodPhrase } from './phrases.ts';
import { setFigure } from './set-figure.ts';

export interface StackAsked {
  readonly door: Door;
  readonly lower: CampOven;
  readonly upper: CampOven;
  readonly hearth: Place['hearth'];
  readonly stack: StackPlan;
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
    { type: 'list', tick: true, items: CARE },
    curveTable(stack.upperCurve, '"coals on", upper oven', say),
    curveTable(stack.lowerCurve, '"coals on", lower oven', say),
  ];
  const title = 'Two ovens stacked';
  return doorSheet(door, { kind: 'ovens-stacked', title, blocks, notices: stack.notices }, say);
}

const CARE: readonly string[] = [
  'Two, never three: a third sways, and one kick brings all of them down.',
  'Try it cold: all three legs of the upper oven inside the flange of the lower lid, none on a coal ' +
    'or on the handle. It must not rock.',
  'Keep everybody a long step away, and the bails of both ovens down.',
  'To look at the lower oven: gloves and lifter, upper oven straight up and off to bare ground or a ' +
    'pan. Two people where one can not hold it out level at arm’s length.',
  'Then sweep ash and coals between to one side of the lower lid, lift that lid level, far edge ' +
    'first. A tilted lid spills ash into the food.',
  'No turning while they are stacked: turn each food when the ovens are apart.',
  'Look at the lower one seldom; what is opened most stands on top.',
];

const isWood = ({ door }: StackAsked) => door.fuel === 'wood-coals';

function picture(asked: StackAsked, say: Say) {
  const { lower, upper, stack, door, hearth } = asked;
  const { below, between, above } = stack.sets;
  const word = (set: CoalSet) => coalsWord(set.pieces, door.fuel);
  const labels = {
    above: [`${word(above)} on top`, 'on the upper lid'],
    between: [`${word(between)} between`, 'on the lower lid, under the upper floor'],
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
  const { below, between, above } = asked.stack.sets;
  const told = (set: CoalSet, where: 'above' | 'below') =>
    isWood(asked) ? woodPhrase(set, where) : `${set.pieces}: ${layoutPhrase(set, where)}`;
  const amount = coalsWord(between.pieces, asked.door.fuel);
  return [
    `On top: ${told(above, 'above')}`,
    `Between: ${amount}${isWood(asked) ? ',' : ':'} ring under the upper floor, off its legs${between.spread > 0 ? '; what it does not hold beside it, off the handle' : ''}`,
    `Below: ${told(below, 'below')}`,
  ];
}

function savingBlocks({ stack, door }: StackAsked, say: Say): readonly Block[] {
  const { coals, apart, saved, savedAtLeast, published } = stack;
  const word = (pieces: number) => coalsWord(pieces, door.fuel);
  const span =
    saved <= 0
      ? 'nothing is saved'
      : savedAtLeast < saved
        ? `${word(Math.max(0, savedAtLeast))} to ${word(saved)} fewer, by how much the coals between give to both`
        : `${word(saved)} fewer`;
  const layers = [published.lower.below, published.between, published.upper.above].map(word);
  return [
    paragraph(`${word(coals)} in all where side by side would take ${word(apart)}: ${span}.`),
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
  return rows
    .toSorted(([one], [other]) => one - other)
    .map(([minute, what]) => ({ when: say.minutes(minute), what }));
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
    const parts = [
      amount(asked, below?.below, 'below'),
      amount(asked, (below?.above ?? 0) + (above?.below ?? 0), 'between'),
      amount(asked, above?.above, 'on top'),
    ].filter((part) => part !== '');
    return parts.length === 0 ? [] : [[minute, `Clear the ash, then add ${parts.join(', ')}`]];
  });
}

const amount = ({ door }: StackAsked, pieces: number | undefined, where: string) =>
  pieces === undefined || pieces <= 0 ? '' : `${coalsWord(pieces, door.fuel)} ${where}`;
