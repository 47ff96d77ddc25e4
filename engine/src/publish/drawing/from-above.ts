// What does the cook see, looking straight down on lid and floor? Every coal where it lies.
// Known weakness: wood coals are drawn as a ring of broken pieces, their real lie is rougher.

import type { CampOven } from '../../camp/camp.ts';
import type { CoalSet } from '../../coals/coal-plan.ts';
import type { Degrees } from '../../quantity/unit.ts';
import type { Around } from './around.ts';
import { chalkMark, cookMark, cookStandsAt, windArrow, windScreen } from './around.ts';
import { coals } from './coal.ts';
import { circle, element, group, ink, picture, words } from './svg.ts';

export interface FromAbove {
  readonly oven: CampOven;
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly coals: CoalSet;
  readonly windFrom: Degrees;
  readonly isStill: boolean;
  readonly screened: boolean;
  /** Counts and wind in words, made by the sheet. */
  readonly caption: string;
  readonly alt: string;
}

const WIDTH = 300;
const CAPTION = 26;
const CENTRE: readonly [number, number] = [WIDTH / 2, WIDTH / 2];
/** The rim on the page; ovens of all sizes are drawn alike, coals to the oven's scale. */
const RIM = 100;

/** The lid with its handle, its chalk mark and every coal on it. */
export function lidDrawing(view: FromAbove): string {
  const scale = RIM / (view.oven.diameter / 2);
  const around = aroundOf(view, RIM + 6);
  return frame('lid', view, [
    windScreen(around),
    circle(...CENTRE, RIM + 6, { fill: ink.iron, stroke: ink.ink, 'stroke-width': 1.5 }),
    circle(...CENTRE, RIM - 1, { fill: 'none', stroke: ink.soft, 'stroke-width': 1.5 }),
    coals({ fuel: view.fuel, places: view.coals.places, centre: CENTRE, scale }),
    handle(),
    chalkMark(CENTRE[0], CENTRE[1] - RIM - 1.5),
    windArrow(around),
    cookMark(around),
  ]);
}

/** The floor as an outline: the coals show beneath it in their ring, between the three legs. */
export function floorDrawing(view: FromAbove): string {
  const scale = RIM / (view.oven.diameter / 2);
  const floor = (view.oven.floorDiameter ?? view.oven.diameter * FLOOR_SHARE) / 2;
  const around = aroundOf(view, RIM + 6);
  return frame('floor', view, [
    windScreen(around),
    circle(...CENTRE, RIM + 6, { fill: ink.sheet, stroke: ink.line, 'stroke-width': 1.5 }),
    coals({ fuel: view.fuel, places: view.coals.places, centre: CENTRE, scale }),
    circle(...CENTRE, floor * scale, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 2.5,
      'stroke-dasharray': '7 4',
    }),
    ...LEGS.map((degrees) => leg(degrees, floor * scale)),
    windArrow(around),
    cookMark(around),
  ]);
}

/** Floor diameter over nominal where the owner has not measured it: a 12-inch oven has about ten. */
const FLOOR_SHARE = 10 / 12; // ovenSizing
const LEGS = [90, 210, 330] as const;

const leg = (degrees: number, radius: number) => {
  const angle = (degrees * Math.PI) / 180;
  const x = CENTRE[0] + (radius - 5) * Math.cos(angle);
  const y = CENTRE[1] - (radius - 5) * Math.sin(angle);
  return group(
    { class: 'leg' },
    circle(x, y, 7, { fill: ink.ink, stroke: ink.sheet, 'stroke-width': 2 }),
    circle(x, y, 2.2, { fill: ink.sheet }),
  );
};

/** The loop in the middle of the lid, lying east and west: the witness that the lid stands as before. */
const handle = () =>
  element('rect', {
    class: 'handle',
    x: CENTRE[0] - 17,
    y: CENTRE[1] - 5.5,
    width: 34,
    height: 11,
    rx: 5.5,
    fill: ink.ash,
    stroke: ink.ink,
    'stroke-width': 2.5,
  });

const aroundOf = (view: FromAbove, radius: number): Around => ({
  centre: CENTRE,
  radius: view.screened ? radius + 6 : radius,
  windFrom: view.windFrom,
  isStill: view.isStill,
  screened: view.screened,
});

const frame = (kind: 'lid' | 'floor', view: FromAbove, children: readonly string[]) => {
  const bottom = WIDTH - (isFreeBelow(view) ? FREE_BELOW : 0);
  return picture({
    width: WIDTH,
    height: bottom + CAPTION,
    kind,
    title: kind === 'lid' ? 'Lid from above' : 'Floor from above',
    alt: view.alt,
    children: [
      ...children,
      words({
        x: WIDTH / 2,
        y: bottom + CAPTION - 8,
        text: view.caption,
        size: 17,
        bold: true,
        anchor: 'middle',
      }),
    ],
  });
};

/** Room under the rim that only wind or cook would take. */
const FREE_BELOW = 34;

/** True where neither the wind's strokes nor the cook's feet are drawn south of the oven. */
const isFreeBelow = ({ windFrom, isStill }: FromAbove) =>
  !isStill &&
  [windFrom, cookStandsAt(windFrom)].every((from) => Math.cos((from * Math.PI) / 180) > -0.2);
