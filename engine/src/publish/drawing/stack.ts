// Two ovens one on the other from the side, cut open: three layers of coals, each with its count.
// The upper oven's legs stand on the lower lid, between the coals.

import type { CampOven, Place } from '../../camp/camp.ts';
import type { CoalSet } from '../../coals/coal-plan.ts';
import { coalRow } from './coal-row.ts';
import { hearth, legs, lid, type OvenShape, ovenShape, pot } from './oven-side.ts';
import { group, ink, path, picture, shortNumber, words, wrap } from './svg.ts';

export interface StackView {
  readonly lower: CampOven;
  readonly upper: CampOven;
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly sets: Readonly<Record<'below' | 'between' | 'above', CoalSet>>;
  readonly hearth: Place['hearth'];
  readonly labels: Readonly<
    Record<'above' | 'between' | 'below', readonly [count: string, where: string]> &
      Record<'lowerOven' | 'upperOven', string>
  >;
  readonly alt: string;
}

const WIDTH = 460;
const POT_LEFT = 30;
const POT_WIDTH = 190;
const LABEL_X = POT_LEFT + POT_WIDTH + 38;
const LABEL = 18;
const COUNT = 21;
const LABEL_ROW = 20;
const TOP = 62;
/** From the middle of a lid, where legs stand on it, down to its rim. */
const LID_RISE = 12;

export function stackDrawing(view: StackView): string {
  const { upper, lower } = shapesOf(view);
  const height = lower.groundY + 42;
  return picture({
    width: WIDTH,
    height,
    kind: 'stack',
    title: 'Two ovens stacked, from the side, cut open',
    alt: view.alt,
    children: [
      hearth(view.hearth, lower),
      legs(lower),
      row(view, 'below', lower, lower.groundY),
      pot(lower),
      legs(upper),
      row(view, 'between', lower, lower.lidY - LID_RISE),
      lid(lower, 5),
      pot(upper),
      row(view, 'above', upper, upper.lidY - LID_RISE),
      lid(upper),
      nameIn(upper, view.labels.upperOven),
      nameIn(lower, view.labels.lowerOven),
      label(upper.lidY - 20, upper.right + 14, view.labels.above),
      label((upper.floorY + lower.lidY) / 2 - 2, lower.right + 14, view.labels.between),
      label(lower.groundY - 14, lower.floorRight + 12, view.labels.below),
    ],
  });
}

/** Both to one scale, the upper one over the middle of the lower. */
function shapesOf({ lower, upper }: StackView) {
  const scale = POT_WIDTH / lower.diameter;
  const width = upper.diameter * scale;
  const left = POT_LEFT + (POT_WIDTH - width) / 2;
  const over = ovenShape(upper, { left, width, lidY: TOP });
  const lidY = over.groundY + LID_RISE;
  return { upper: over, lower: ovenShape(lower, { left: POT_LEFT, width: POT_WIDTH, lidY }) };
}

const row = (
  { fuel, sets }: StackView,
  layer: keyof StackView['sets'],
  { left, right, scale }: OvenShape,
  groundY: number,
) => coalRow({ fuel, set: sets[layer], middle: (left + right) / 2, groundY, scale });

const nameIn = ({ left, right, lidY, floorY }: OvenShape, text: string) =>
  group(
    { class: 'oven-name' },
    ...wrap(text, (right - left) * 0.72, LABEL).map((line, index, lines) =>
      words({
        x: (left + right) / 2,
        y: (lidY + floorY) / 2 + 6 + (index - (lines.length - 1) / 2) * LABEL_ROW,
        text: line,
        size: LABEL,
        anchor: 'middle',
      }),
    ),
  );

/** The count on a line of its own, where it lies under it. */
function label(y: number, x: number, [count, where]: readonly [string, string]): string {
  const room = WIDTH - LABEL_X - 4;
  const counted = wrap(count, room, COUNT, true);
  const lines = [...counted, ...wrap(where, room, LABEL)];
  return group(
    { class: 'label' },
    path(`M${shortNumber(x)} ${shortNumber(y)}H${LABEL_X - 5}`, {
      fill: 'none',
      stroke: ink.soft,
      'stroke-width': 1,
    }),
    ...lines.map((line, index) =>
      words({
        x: LABEL_X,
        y: y + 6 + (index - (lines.length - 1) / 2) * LABEL_ROW,
        text: line,
        size: index < counted.length ? COUNT : LABEL,
        bold: index < counted.length,
      }),
    ),
  );
}
