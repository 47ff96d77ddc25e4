// What does the oven look like from the side, cut open? Ground or pan, legs, coals under the rim of
// the floor and not under its middle, lid with coals inside its flange, food and its headroom.

import type { CampOven, Place } from '../../camp/camp.ts';
import type { CoalSet } from '../../coals/coal-plan.ts';
import { contactFigures } from '../../menu/index.ts';
import type { OvenLoad } from '../../menu/load.ts';
import { coalRow } from './coal-row.ts';
import { type Frame, PHONE_TEXT, PHONE_WIDTH } from './frame.ts';
import { hearth, legs, lid, type OvenShape, ovenShape, pot, WALL } from './oven-side.ts';
import {
  circle,
  element,
  group,
  ink,
  line,
  path,
  picture,
  shortNumber,
  words,
  wrap,
} from './svg.ts';

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
/** Still 7 points where the drawing is half as wide as a sheet of paper. */
const LABEL = 17;
const LABEL_ROW = 19;

/** On a phone numbers stand where labels would, and the words are a list below. */
export function sideDrawing(view: SideView, frame: Frame = 'sheet'): string {
  const isPhone = frame === 'phone';
  const shape = ovenShape(
    view.oven,
    isPhone
      ? { left: 30, width: PHONE_WIDTH - 86, lidY: 66 }
      : { left: POT_LEFT, width: POT_WIDTH, lidY: 66 },
  );
  const labels = isPhone ? numberLabels(view, shape) : placeLabels(view, shape);
  const height = Math.max(shape.groundY + 42, labels.bottom + 8);
  return picture({
    width: isPhone ? PHONE_WIDTH : WIDTH,
    height,
    kind: 'side',
    title: 'Oven from the side, cut open',
    alt: view.alt,
    children: [
      hearth(view.hearth, shape),
      legs(shape),
      setRow(view, shape, 'below'),
      food(view, shape),
      pot(shape),
      setRow(view, shape, 'above'),
      lid(shape),
      labels.drawn,
    ],
  });
}

/** Every coal of a set: the ring is seen as a ring, and an empty middle stays empty. */
const setRow = (view: SideView, shape: OvenShape, where: 'above' | 'below') =>
  coalRow({
    fuel: view.fuel,
    set: where === 'above' ? view.above : view.below,
    middle: (shape.left + shape.right) / 2,
    groundY: where === 'above' ? shape.lidY - 11 : shape.groundY,
    scale: shape.scale,
  });

/** Where the food stands: on the floor, or as high above it as its rack or meal is. */
function standsAt({ load }: SideView, { floorY, scale }: OvenShape): number {
  const isLifted = load.shape !== 'pot' && load.inOven !== undefined;
  return isLifted ? floorY - contactFigures(load.inOven.contact).height * scale : floorY;
}

function food(view: SideView, shape: OvenShape): string {
  const { scale } = shape;
  const floorY = standsAt(view, shape);
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
    under(view, shape),
  );
}

/** A rack on its feet, or a bed of meal, between the food and the floor. */
function under(view: SideView, shape: OvenShape): string {
  const contact = view.load.shape === 'pot' ? undefined : view.load.inOven?.contact;
  const top = standsAt(view, shape);
  const [left, right] = foodWidth(view, shape);
  const stroke = { stroke: ink.steel, 'stroke-width': 2 };
  if (contact === 'meal') {
    const bed = { x: left - 8, y: top, width: right - left + 16, height: shape.floorY - top };
    return element('rect', { class: 'meal', ...bed, fill: ink.soft, 'stroke-width': 0 });
  }
  if (contact !== 'rack' && contact !== 'tin') return '';
  return group(
    { class: 'rack' },
    line(left - 8, top + 1, right + 8, top + 1, stroke),
    ...[left - 4, (left + right) / 2, right + 4].map((x) =>
      line(x, top + 1, x, shape.floorY - 1, stroke),
    ),
  );
}

/** Pieces that lie under the cut, as wide as it cuts them; else the food as one. */
function cutPieces(view: SideView, shape: OvenShape): readonly (readonly [number, number])[] {
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
function foodWidth(view: SideView, shape: OvenShape): readonly [number, number] {
  const middle = (shape.left + shape.right) / 2;
  const whole = (shape.floorRight - shape.floorLeft) / 2 - WALL / 2;
  if (view.load.shape !== 'disc') return [middle - whole, middle + whole];
  const half = Math.min(whole, Math.sqrt(view.load.planArea / Math.PI) * shape.scale);
  return [middle - half, middle + half];
}

/** What is labelled, and where it is. */
function wantedLabels(view: SideView, shape: OvenShape) {
  const { lidY, groundY, scale, right } = shape;
  const floorY = standsAt(view, shape);
  const [, foodRight] = foodWidth(view, shape);
  const raw = (view.load.provedHeight ?? view.load.thickness) * scale;
  const risen = view.load.risenHeight * scale;
  return [
    { y: lidY - 22, x: right + 14, text: view.labels.lid },
    ...(view.labels.risen === undefined
      ? []
      : [{ y: floorY - risen, x: foodRight, text: view.labels.risen }]),
    { y: floorY - raw / 2, x: foodRight, text: view.labels.food },
    { y: groundY - 12, x: shape.floorRight + 10, text: view.labels.below },
    { y: groundY + 16, x: right + 28, text: view.labels.hearth },
  ];
}

const DISC = 9;

/** Numbered discs beside the oven, never one over another, and their words as a list under it. */
function numberLabels(view: SideView, shape: OvenShape) {
  const x = PHONE_WIDTH - DISC - 1;
  let discFree = DISC + 1;
  let free = shape.groundY + 42;
  const drawn = wantedLabels(view, shape).map((label, index) => {
    const number = String(index + 1);
    const discY = Math.max(label.y, discFree);
    discFree = discY + 2 * DISC + 3;
    const top = Math.max(free, discY);
    free = top;
    const lines = wrap(label.text, PHONE_WIDTH - 24, PHONE_TEXT);
    const from = Math.min(label.x, x - DISC - 4);
    const said = lines.map((text, row) =>
      words({ x: 22, y: top + 14 + row * 17, text, size: PHONE_TEXT }),
    );
    free += lines.length * 17 + 4;
    return group(
      { class: 'label' },
      line(from, label.y, x - DISC, discY, { stroke: ink.soft, 'stroke-width': 1 }),
      circle(x, discY, DISC, { fill: ink.sheet, stroke: ink.ink, 'stroke-width': 1.3 }),
      words({ x, y: discY + 4.5, text: number, size: 13, bold: true, anchor: 'middle' }),
      words({ x: 4, y: top + 14, text: number, size: PHONE_TEXT, bold: true }),
      ...said,
    );
  });
  return { drawn: drawn.join(''), bottom: free };
}

/** Labels on the right, each on its own height, never one over another. */
function placeLabels(view: SideView, shape: OvenShape) {
  const wanted = wantedLabels(view, shape);
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
