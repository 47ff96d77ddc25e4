// What does the oven look like from the side, cut open? Ground or pan, legs, coals under the rim of
// the floor and not under its middle, lid with coals inside its flange, food and its headroom.

import type { CampOven, Place } from '../../camp/camp.ts';
import type { CoalSet } from '../../coals/coal-plan.ts';
import type { OvenLoad } from '../../menu/load.ts';
import { coalRow } from './coal-row.ts';
import { element, group, ink, line, path, picture, shortNumber, words, wrap } from './svg.ts';

export interface SideView {
  readonly oven: CampOven;
  readonly load: OvenLoad;
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly above: CoalSet;
  readonly below: CoalSet;
  readonly hearth: Place['hearth'];
  readonly isLined: boolean;
  /** Words for the three things that are labelled, with their sizes. */
  readonly labels: {
    readonly lid: string;
    readonly food: string;
    readonly risen?: string;
    readonly below: string;
    readonly hearth: string;
  };
  readonly alt: string;
}

const WIDTH = 620;
const POT_LEFT = 40;
const POT_WIDTH = 300;
const LABEL_X = POT_LEFT + POT_WIDTH + 38;
const LABEL_ROOM = WIDTH - LABEL_X - 6;
const LEG_METRES = 0.05; // about 2 inches, common practice, no source
const WALL = 7;
/** Still 7 points where the drawing is half as wide as a sheet of paper. */
const LABEL = 17;
const LABEL_ROW = 19;

interface Shape {
  readonly scale: number;
  readonly left: number;
  readonly right: number;
  readonly lidY: number;
  readonly floorY: number;
  readonly groundY: number;
  readonly floorLeft: number;
  readonly floorRight: number;
}

export function sideDrawing(view: SideView): string {
  const shape = shapeOf(view.oven);
  const labels = placeLabels(view, shape);
  const height = Math.max(shape.groundY + 42, labels.bottom + 8);
  return picture({
    width: WIDTH,
    height,
    kind: 'side',
    title: 'Oven from the side, cut open',
    alt: view.alt,
    children: [
      hearth(view.hearth, shape),
      setRow(view, shape, 'below'),
      legs(shape),
      food(view, shape),
      pot(shape),
      setRow(view, shape, 'above'),
      lid(shape),
      labels.drawn,
    ],
  });
}

function shapeOf(oven: CampOven): Shape {
  const scale = POT_WIDTH / oven.diameter;
  const lidY = 66;
  const floorY = lidY + oven.depth * scale;
  const inset = ((oven.diameter - (oven.floorDiameter ?? (oven.diameter * 10) / 12)) / 2) * scale;
  return {
    scale,
    left: POT_LEFT,
    right: POT_LEFT + POT_WIDTH,
    lidY,
    floorY,
    groundY: floorY + WALL + LEG_METRES * scale,
    floorLeft: POT_LEFT + inset,
    floorRight: POT_LEFT + POT_WIDTH - inset,
  };
}

const pot = ({ left, right, lidY, floorY, floorLeft, floorRight }: Shape) =>
  group(
    { class: 'pot' },
    path(
      `M${shortNumber(left)} ${lidY}L${shortNumber(floorLeft)} ${shortNumber(floorY + WALL / 2)}` +
        `H${shortNumber(floorRight)}L${shortNumber(right)} ${lidY}`,
      { fill: 'none', stroke: ink.ink, 'stroke-width': WALL, 'stroke-linejoin': 'round' },
    ),
    // The ears that the bail hangs in.
    path(`M${shortNumber(left - 2)} ${lidY + 12}h-14v9h12`, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 4,
    }),
    path(`M${shortNumber(right + 2)} ${lidY + 12}h14v9h-12`, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 4,
    }),
  );

/** A slightly domed lid whose flange stands up and keeps the coals in. */
function lid({ left, right, lidY }: Shape): string {
  const middle = (left + right) / 2;
  const top = lidY - 8;
  return group(
    { class: 'lid' },
    path(
      `M${shortNumber(left - 8)} ${lidY - 22}V${top}Q${shortNumber(middle)} ${top - 13} ` +
        `${shortNumber(right + 8)} ${top}V${lidY - 22}`,
      { fill: 'none', stroke: ink.ink, 'stroke-width': 6, 'stroke-linejoin': 'round' },
    ),
    path(`M${shortNumber(middle - 20)} ${top - 8}v-18q20 -13 40 0v18`, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 6,
    }),
  );
}

const legs = ({ floorLeft, floorRight, floorY, groundY }: Shape) =>
  group(
    { class: 'legs' },
    ...[floorLeft + 16, floorRight - 16].map((x) =>
      path(
        `M${shortNumber(x - 8)} ${shortNumber(floorY + 4)}h16` +
          `L${shortNumber(x + 4)} ${shortNumber(groundY)}h-8z`,
        { fill: ink.ink },
      ),
    ),
  );

/** Every coal of a set: the ring is seen as a ring, and an empty middle stays empty. */
const setRow = (view: SideView, shape: Shape, where: 'above' | 'below') =>
  coalRow({
    fuel: view.fuel,
    set: where === 'above' ? view.above : view.below,
    middle: (shape.left + shape.right) / 2,
    groundY: where === 'above' ? shape.lidY - 11 : shape.groundY,
    scale: shape.scale,
  });

function food(view: SideView, shape: Shape): string {
  const { floorY, scale } = shape;
  const [left, right] = foodWidth(view, shape);
  const raw = (view.load.provedHeight ?? view.load.thickness) * scale;
  const risen = view.load.risenHeight * scale;
  const cuts = cutPieces(view, shape);
  const boxes = (top: number, radius: number, more: Record<string, string | number>) =>
    cuts
      .map(([from, to]) =>
        element('rect', {
          x: from,
          y: floorY - top,
          width: to - from,
          height: top,
          rx: Math.min(radius, top / 2, (to - from) / 2),
          'stroke-width': 1.5,
          stroke: ink.ink,
          ...more,
        }),
      )
      .join('');
  const paper = line(left - 8, floorY - 1, right + 8, floorY - 1, {
    class: 'paper',
    stroke: ink.steel,
    'stroke-width': 2,
    'stroke-dasharray': '8 3',
  });
  return group(
    { class: 'food' },
    risen > raw + 2 ? boxes(risen, 30, { fill: 'none', 'stroke-dasharray': '4 3' }) : '',
    boxes(raw, view.load.shape === 'pot' ? 2 : 12, { fill: ink.oat }),
    view.isLined ? paper : '',
  );
}

/** Pieces that lie under the cut, as wide as it cuts them; else the food as one. */
function cutPieces(view: SideView, shape: Shape): readonly (readonly [number, number])[] {
  const middle = (shape.left + shape.right) / 2;
  const cut = view.load.pieces.flatMap(
    ({ x, y, diameter }): readonly (readonly [number, number])[] => {
      const half = Math.sqrt(Math.max(0, (diameter / 2) ** 2 - y ** 2)) * shape.scale;
      const at = middle + x * shape.scale;
      return half < LEAST_CUT ? [] : [[at - half, at + half]];
    },
  );
  return cut.length === 0 ? [foodWidth(view, shape)] : cut;
}

/** A sliver narrower than this reads as a smudge. */
const LEAST_CUT = 8;

/** A pot's food touches the wall; a disc stands free as wide as its plan area says. */
function foodWidth(view: SideView, shape: Shape): readonly [number, number] {
  const middle = (shape.left + shape.right) / 2;
  const whole = (shape.floorRight - shape.floorLeft) / 2 - WALL / 2;
  if (view.load.shape !== 'disc') return [middle - whole, middle + whole];
  const half = Math.min(whole, Math.sqrt(view.load.planArea / Math.PI) * shape.scale);
  return [middle - half, middle + half];
}

function hearth(kind: Place['hearth'], { left, right, groundY }: Shape): string {
  const from = left - 26;
  const to = right + 26;
  if (kind === 'ground') {
    const strokes = Array.from({ length: 20 }, (_, index) => {
      const x = from + 8 + (index * (to - from)) / 20;
      return line(x, groundY, x - 8, groundY + 9, { stroke: ink.soft, 'stroke-width': 1.2 });
    });
    return group(
      { class: 'ground' },
      line(from, groundY, to, groundY, { 'stroke-width': 2.5 }),
      ...strokes,
    );
  }
  const lip = kind === 'fire-pan' ? 16 : 0;
  const foot = kind === 'fire-pan' ? 14 : 26;
  return group(
    { class: kind },
    path(
      `M${shortNumber(from)} ${shortNumber(groundY - lip)}V${shortNumber(groundY + 2)}` +
        `H${shortNumber(to)}V${shortNumber(groundY - lip)}`,
      { fill: 'none', stroke: ink.ink, 'stroke-width': 4 },
    ),
    ...[from + 30, to - 30].map((x) =>
      line(x, groundY + 3, x, groundY + 3 + foot, { 'stroke-width': 5 }),
    ),
  );
}

/** Labels on the right, each on its own height, never one over another. */
function placeLabels(view: SideView, shape: Shape) {
  const { lidY, floorY, groundY, scale, right } = shape;
  const [, foodRight] = foodWidth(view, shape);
  const raw = (view.load.provedHeight ?? view.load.thickness) * scale;
  const risen = view.load.risenHeight * scale;
  const wanted = [
    { y: lidY - 22, x: right + 14, text: view.labels.lid },
    ...(view.labels.risen === undefined
      ? []
      : [{ y: floorY - risen, x: foodRight, text: view.labels.risen }]),
    { y: floorY - raw / 2, x: foodRight, text: view.labels.food },
    { y: groundY - 12, x: shape.floorRight + 10, text: view.labels.below },
    { y: groundY + 16, x: right + 28, text: view.labels.hearth },
  ];
  let free = 14;
  const drawn = wanted.map((label) => {
    const lines = wrap(label.text, LABEL_ROOM, LABEL);
    const y = Math.max(label.y, free);
    free = y + lines.length * LABEL_ROW + 5;
    return group(
      { class: 'label' },
      path(
        `M${shortNumber(label.x)} ${shortNumber(label.y)}L${LABEL_X - 16} ${shortNumber(y)}H${LABEL_X - 5}`,
        {
          fill: 'none',
          stroke: ink.soft,
          'stroke-width': 1,
        },
      ),
      ...lines.map((text, index) =>
        words({ x: LABEL_X, y: y + 5 + index * LABEL_ROW, text, size: LABEL }),
      ),
    );
  });
  return { drawn: drawn.join(''), bottom: free };
}
