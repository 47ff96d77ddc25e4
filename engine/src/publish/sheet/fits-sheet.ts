// How much goes into this oven, or over these; or which oven for so much. No camp, no recipe, no coals.

import type { CampOven } from '../../camp/camp.ts';
import {
  type BatchPart,
  type FitKind,
  floorOf,
  type LeftOver,
  type OvenFit,
  portionBasis,
  portionsIn,
  type SizeFit,
  type SpreadBatch,
} from '../../menu/index.ts';
import { metres } from '../../quantity/unit.ts';
import type { Block, FactRow, SheetDocument } from '../document.ts';
import { piecesAbove } from '../drawing/pieces-above.ts';
import { roomSide } from '../drawing/room-side.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';
import { sentenceCase } from './phrases.ts';
import { drawnWord } from './rolled-word.ts';

/** What a cook calls so much of it. */
const NAME: Readonly<Record<FitKind, string>> = {
  round: 'round rolled out',
  wedges: 'round scored in wedges',
  biscuits: 'cut rounds',
  rolls: 'rolls',
  loaf: 'loaf that stands free',
  'tin-loaf': 'loaf in its tin on a rack',
  batter: 'batter',
  pot: 'pot of food',
  dumplings: 'dumplings on a stew',
  cobbler: 'cobbler',
};

const LIMIT: Readonly<Record<OvenFit['limitedBy'], string>> = {
  floor: 'the floor is full',
  lid: 'the lid is in the way of more',
  pot: 'three quarters full, so that it does not boil over',
  tin: 'the tin is full',
};

export interface FitAsked {
  readonly fit: OvenFit;
  /** Of the recipe that was asked about. */
  readonly name?: string;
}

/** The most of it that goes into one oven, or how so much of it lies there. */
export function fitSheet({ fit, name }: FitAsked, say: Say): SheetDocument {
  return {
    kind: 'what-fits',
    title: `${sentenceCase(name ?? NAME[fit.what])} in this oven`,
    eyebrow: fit.oven.name,
    blocks: [
      { type: 'figures', figures: figuresOf(fit, say) },
      { type: 'facts', rows: [...pieceRows(fit, say), ...heightRows(fit, say)] },
      paragraph(feedsSentence(fit, say)),
      paragraph(floorSentence(fit.oven, fit, say)),
      ...drawings(fit, say),
      ...layerBlocks(fit, say),
      whyBlock(fit, say),
    ],
  };
}

/** From above and from the side; two things on each other are told as a table. */
const drawings = (fit: OvenFit, say: Say): readonly Block[] => [
  ...piecesDrawing(fit, say),
  ...(fit.layers.length === 0 ? [roomDrawing(fit, say)] : []),
];

function roomDrawing(fit: OvenFit, say: Say): Block {
  const { oven, floor, thickness, risenHeight, headroom, placed, profile, what } = fit;
  const isPot = what === 'pot';
  const alt = `The oven from the side: ${isPot ? 'food' : 'risen to'} ${say.length(risenHeight)}, ${say.length(headroom)} to the lid.`;
  const svg = roomSide({
    floorMetres: floor,
    depthMetres: oven.depth,
    rawMetres: ['rolls', 'loaf', 'tin-loaf'].includes(what) ? undefined : thickness,
    risenMetres: risenHeight,
    standsMetres: Math.max(0, oven.depth - headroom - risenHeight),
    growsTogether: what === 'rolls',
    isPoured: isPot,
    placed,
    profile,
    words: {
      risen: `${isPot ? 'food' : 'risen'} ${say.length(risenHeight)}`,
      room: `${say.length(headroom)} to the lid`,
    },
    alt,
  });
  return { type: 'drawing', svg, alt, wide: false };
}

/** By room and weight; what is printed for sizes of ovens runs from 5 to 14 for one of 12 inches. */
function feedsSentence(fit: OvenFit, say: Say): string {
  const portions = Math.max(1, portionsIn(fit));
  const [least, most] = [Math.floor(portions + 1e-9), Math.round(portions)];
  const many = least === most ? say.count(least) : `${least} to ${most}`;
  const people = most === 1 ? 'one ordinary appetite' : `${many} ordinary appetites`;
  return `Feeds ${people}: ${basisWord(fit, say)}. Reckoned by room and weight; what is printed for a size of oven is not used, for one of 12 inches it runs from 5 people to 14.`;
}

function basisWord(fit: OvenFit, say: Say): string {
  const basis = portionBasis(fit);
  const name = NAME_OF_PIECE[fit.what] ?? 'pieces';
  switch (basis.by) {
    case 'volume':
      return `${say.volume(basis.each)} each of ${say.mass(fit.mass)}`;
    case 'mass':
      return `${say.mass(basis.each)} each of ${say.mass(fit.mass)}`;
    case 'pieces':
      return `${basis.each === 1 ? 'one' : basis.each} of ${say.count(fit.pieces)} ${name} each`;
  }
}

/** Where each piece lies; nothing to draw for a pot. */
function piecesDrawing(fit: OvenFit, say: Say): readonly Block[] {
  const { what, floor, placed, pieces } = fit;
  if (placed.length === 0) return [];
  const alt = placed.length === 1 ? aloneAlt(fit, say) : besideAlt(fit);
  const across = placed.map(({ x, y, diameter }) => 2 * Math.hypot(x, y) + diameter);
  const floorMetres = Math.max(floor, ...across);
  const wedges = what === 'wedges' ? pieces : 0;
  const svg = piecesAbove({ floorMetres, placed, wedges, alt });
  return [{ type: 'drawing', svg, alt, wide: false }];
}

const besideAlt = ({ what, pieces }: OvenFit) =>
  `The ${what === 'dumplings' ? 'stew' : 'floor'} from above: ${pieces} ${NAME_OF_PIECE[what] ?? 'pieces'} side by side, none over another.`;

/** Within this much of the floor it lies against the wall. */
const AT_THE_WALL = 0.995;

function aloneAlt({ what, floor, placed, pieces }: OvenFit, say: Say): string {
  const across = placed[0]?.diameter ?? floor;
  const lies =
    across < AT_THE_WALL * floor
      ? `${say.length(across)} across in the middle, floor free around it`
      : 'from wall to wall';
  return `The floor from above: it lies ${lies}${what === 'wedges' ? `, scored in ${pieces} wedges` : ''}.`;
}

function figuresOf(fit: OvenFit, say: Say) {
  const { pieces, mass } = fit;
  const isCounted = ['biscuits', 'rolls', 'dumplings', 'wedges'].includes(fit.what);
  return [
    { figure: say.mass(mass), label: fit.what === 'pot' ? 'of food' : 'in all' },
    ...(isCounted
      ? [{ figure: say.count(pieces), label: NAME_OF_PIECE[fit.what] ?? 'pieces' }]
      : []),
    { figure: say.count(Math.max(1, Math.round(portionsIn(fit)))), label: 'portions, about' },
  ];
}

const NAME_OF_PIECE: Readonly<Partial<Record<FitKind, string>>> = {
  wedges: 'wedges',
  rolls: 'rolls',
  dumplings: 'dumplings',
  biscuits: 'cut rounds',
};

/** As menu/lay.ts lays cut rounds. */
const GAP_METRES = 0.006;

function pieceRows({ what, pieces, gramsEach, inOven }: OvenFit, say: Say): readonly FactRow[] {
  if (pieces === 1) return [];
  const together = inOven.pieces === 'touching' || what === 'rolls';
  const lie = {
    biscuits: together ? 'side by side, touching' : `${say.length(GAP_METRES)} between them`,
    rolls: 'in rings; they grow together',
    dumplings: 'one layer, side by side on the stew',
    wedges: 'scored through before it is baked, left together',
  }[what as string];
  return [
    { label: 'Each', value: say.mass(gramsEach), ...(lie === undefined ? {} : { note: lie }) },
  ];
}

function heightRows(fit: OvenFit, say: Say): readonly FactRow[] {
  const { rolledTo, thickness, risenHeight, headroom, what, placed, floor } = fit;
  const across = placed.length === 1 ? placed[0]!.diameter : floor;
  const verb = what === 'batter' ? 'Poured' : 'Rolled';
  const isDrawn = rolledTo !== undefined && thickness > 1.05 * rolledTo;
  const oneRound = placed.length === 1 ? { across: metres(across) } : {};
  const deep = { label: what === 'pot' ? 'Depth of food' : 'Raw', value: say.length(thickness) };
  return [
    ...(rolledTo === undefined
      ? what === 'loaf' || what === 'tin-loaf' || what === 'rolls'
        ? []
        : [deep]
      : [
          {
            label: verb,
            value: say.length(rolledTo),
            ...(isDrawn ? { note: drawnWord({ rolledTo, thickness, ...oneRound }, say) } : {}),
          },
        ]),
    ...(across < AT_THE_WALL * floor ? [{ label: 'Across', value: say.length(across) }] : []),
    ...(what === 'pot' ? [] : [{ label: 'Risen', value: say.length(risenHeight) }]),
    {
      label: 'To the lid',
      value: say.length(headroom),
      ...(fit.isPart && fit.limitedBy !== 'lid' ? {} : { note: LIMIT[fit.limitedBy] }),
    },
  ];
}

/** Floor and nominal size are two numbers, and which of them was reckoned with is always said. */
function floorSentence(
  oven: CampOven,
  { floor, isFloorMeasured }: Pick<OvenFit, 'floor' | 'isFloorMeasured'>,
  say: Say,
): string {
  return isFloorMeasured
    ? `Reckoned with the floor that you measured, ${say.length(floor)}; the oven is called ${say.length(oven.diameter)}.`
    : `An oven called ${say.length(oven.diameter)} has a floor of about ${say.length(floor)}: that was reckoned with. Measure yours across the inside of its bottom.`;
}

function layerBlocks({ layers }: OvenFit, say: Say): readonly Block[] {
  if (layers.length === 0) return [];
  return [
    {
      type: 'table',
      caption: 'From the floor up',
      head: ['', 'weight', 'high', 'once done'],
      numeric: [false, true, true, true],
      rows: layers.map(({ what, mass, height, risenHeight }) => [
        sentenceCase(what),
        say.mass(mass),
        say.length(height),
        say.length(risenHeight),
      ]),
    },
  ];
}

const FINGER_METRES = 0.012;

/** Its figures, each with where it comes from: geometry does the rest. */
function whyBlock({ what, reckoned, placed, limitedBy }: OvenFit, say: Say): Block {
  const { heaviness, rise } = reckoned;
  const isPot = what === 'pot' || what === 'dumplings';
  const times = (value: number) => `${Math.round(value * 10) / 10} times`;
  const items = [
    'Depth and room: a published chart of sizes; the small deep ovens and the 16-inch from memory. What you measured wins.',
    isPot
      ? 'A pot is filled to three quarters of what it holds, so that it does not boil over.'
      : `Raw, ${times(heaviness)} as heavy as water; risen, ${times(rise)} the room. The rise is the biggest unknown here: look once how high yours comes.`,
    ...(placed.length < 2
      ? []
      : [
          'The pieces lie as the best circle packings that are published; a hand needs no such care.',
        ]),
    ...(limitedBy === 'lid' || !isPot
      ? [
          `A finger, ${say.length(FINGER_METRES)}, is kept free below the lid: common practice, no source.`,
        ]
      : []),
  ];
  return {
    type: 'why',
    question: 'What is this reckoned with?',
    blocks: [{ type: 'list', items, tick: false }],
  };
}

export interface SpreadAsked {
  readonly what: FitKind;
  readonly wanted: number;
  readonly spread: SpreadBatch;
  readonly name?: string;
}

/** So much of it over these ovens. */
export function spreadSheet({ what, wanted, spread, name }: SpreadAsked, say: Say): SheetDocument {
  const many = spread.parts.length;
  return {
    kind: 'what-fits',
    title: `${say.mass(wanted)} as ${name ?? NAME[what]}`,
    eyebrow: many === 1 ? (spread.parts[0]?.oven.name ?? '') : `${many} ovens`,
    blocks: [
      partsTable(spread, say),
      paragraph(
        spread.left <= 5
          ? 'Nothing is left over.'
          : `${say.mass(spread.left)} is left over: ${spread.ways.map((way) => wayWord(way, say)).join('; or ')}.`,
      ),
    ],
  };
}

/** A column that no oven has anything for is left out. */
function partsTable({ parts }: SpreadBatch, say: Say): Block {
  const columns = PART_COLUMNS.filter(({ of }) => parts.some((part) => of(part, say) !== ''));
  return {
    type: 'table',
    caption: 'Into each oven',
    head: columns.map(({ head }) => head),
    numeric: columns.map(({ head }) => head !== 'oven'),
    rows: parts.map((part) => columns.map(({ of }) => of(part, say))),
  };
}

const PART_COLUMNS: readonly {
  readonly head: string;
  readonly of: (part: BatchPart, say: Say) => string;
}[] = [
  { head: 'oven', of: ({ oven }) => oven.name },
  { head: 'floor', of: ({ oven }, say) => say.length(floorOf(oven)) },
  { head: 'weight', of: ({ mass }, say) => say.mass(mass) },
  { head: 'pieces', of: ({ pieces }, say) => (pieces === 1 ? '' : say.count(pieces)) },
  {
    head: 'thick',
    of: ({ thickness }, say) => (thickness === undefined ? '' : say.length(thickness)),
  },
];

function wayWord(way: LeftOver, say: Say): string {
  switch (way.way) {
    case 'thicker':
      return `make it ${say.length(way.thickness)} thick instead of ${say.length(way.wanted)}, and bake it longer`;
    case 'second-turn':
      return `bake it in ${way.turns} turns`;
    case 'less':
      return `make only ${say.mass(way.mass)}`;
  }
}

export interface SizesAsked {
  readonly what: FitKind;
  readonly wanted: number;
  readonly sizes: readonly SizeFit[];
  readonly name?: string;
}

/** Which size of oven for so much of it. */
export function sizesSheet({ what, wanted, sizes, name }: SizesAsked, say: Say): SheetDocument {
  return {
    kind: 'what-fits',
    title: `${say.mass(wanted)} as ${name ?? NAME[what]}: which oven?`,
    blocks: [
      {
        type: 'table',
        caption: 'Sizes as they are usually made; your own measurements win',
        head: ['oven', 'floor', 'how many', 'each is full to'],
        numeric: [false, true, true, true],
        rows: sizes.map(({ oven, ovens, fill }) => [
          oven.name,
          say.length(floorOf(oven)),
          say.count(ovens),
          say.percent(fill),
        ]),
      },
      ...(sizes.length === 0 ? [paragraph('No usual oven holds it.')] : []),
    ],
  };
}
