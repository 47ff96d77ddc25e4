// How much room is left below the lid? The oven cut open through its middle, to scale: raw food
// filled, risen food as a dashed outline, both numbers beside it.

import type { PlacedPiece } from '../../menu/load.ts';
import { band, loafOf } from './cut-outline.ts';
import { element, ink, line, path, picture, words } from './svg.ts';

export interface RoomView {
  readonly floorMetres: number;
  readonly depthMetres: number;
  /** Left out where it has no one height: balls, a mound. */
  readonly rawMetres?: number | undefined;
  readonly risenMetres: number;
  /** So high above the floor, on a rack or in its tin. */
  readonly standsMetres: number;
  readonly growsTogether: boolean;
  /** It fills the oven from wall to wall with a level top. */
  readonly isPoured: boolean;
  readonly placed: readonly PlacedPiece[];
  readonly profile?: number | undefined;
  readonly words: { readonly risen: string; readonly room: string };
  readonly alt: string;
}

const WIDTH = 260;
const EDGE = 14;
const LID = 12;
const TEXT = 17;

export function roomSide(view: RoomView): string {
  const { floorMetres, depthMetres, alt } = view;
  const scale = (WIDTH - 2 * EDGE) / Math.max(1e-3, floorMetres);
  const foot = LID + 8 + depthMetres * scale;
  return picture({
    width: WIDTH,
    height: foot + 60,
    kind: 'room',
    title: 'Oven from the side',
    alt,
    children: [
      ...spansOf(view).flatMap((span) => food(view, span, { foot, scale })),
      ...wall(foot),
      words({ x: EDGE, y: foot + 26, text: view.words.risen, size: TEXT }),
      words({ x: EDGE, y: foot + 48, text: view.words.room, size: TEXT, bold: true }),
    ],
  });
}

const wall = (foot: number) => {
  const heavy = { stroke: ink.soft, 'stroke-width': 4 };
  return [
    line(EDGE - 2, LID, EDGE - 2, foot + 2, heavy),
    line(WIDTH - EDGE + 2, LID, WIDTH - EDGE + 2, foot + 2, heavy),
    line(EDGE - 4, foot + 2, WIDTH - EDGE + 4, foot + 2, heavy),
    line(4, LID + 4, WIDTH - 4, LID + 4, heavy),
  ];
};

type Span = readonly [from: number, to: number];

/** What a cut through the middle of the floor meets, in metres from the middle. */
function spansOf({ placed, floorMetres, growsTogether }: RoomView): readonly Span[] {
  const half = floorMetres / 2;
  if (placed.length === 0) return [[-half, half]];
  if (growsTogether) {
    const reach = Math.max(...placed.map(({ x, y, diameter }) => Math.hypot(x, y) + diameter / 2));
    return [[-Math.min(half, reach), Math.min(half, reach)]];
  }
  const nearest = Math.min(...placed.map(({ y }) => Math.abs(y)));
  const spans: Span[] = [];
  for (const { x, y, diameter } of placed.toSorted((one, other) => one.x - other.x)) {
    const isMet = Math.abs(y) < Math.max(nearest, 0.3 * diameter) + 1e-9;
    const from = x - diameter / 2;
    const isFree = (spans.at(-1)?.[1] ?? -half) <= from + 1e-6;
    if (isMet && isFree) spans.push([from, x + diameter / 2]);
  }
  return spans;
}

interface Scaled {
  readonly foot: number;
  readonly scale: number;
}

function food(view: RoomView, [from, to]: Span, { foot, scale }: Scaled): readonly string[] {
  const { rawMetres, risenMetres, standsMetres, profile, isPoured } = view;
  const place = {
    x: WIDTH / 2 + from * scale,
    width: (to - from) * scale,
    foot: foot - standsMetres * scale,
  };
  const risen = loafOf({ ...place, height: risenMetres * scale }, profile);
  const isGrown = rawMetres !== undefined && rawMetres < 0.99 * risenMetres;
  const raw = level(place, (rawMetres ?? 0) * scale);
  if (isPoured) return [raw];
  return [
    ...(isGrown ? [raw] : []),
    path(band(risen, 0, 1), {
      fill: isGrown ? 'none' : ink.oat,
      stroke: ink.ink,
      'stroke-width': 1.5,
      'stroke-dasharray': isGrown ? '4 3' : undefined,
    }),
  ];
}

const level = (
  place: { readonly x: number; readonly width: number; readonly foot: number },
  height: number,
) =>
  element('rect', {
    x: place.x,
    y: place.foot - height,
    width: place.width,
    height,
    fill: ink.oat,
    stroke: ink.ink,
    'stroke-width': 1.5,
  });
