// What does the cook see, looking straight down on lid and floor? Every coal where it lies.
// Known weakness: wood coals are drawn as a ring of broken pieces, their real lie is rougher.

import type { CampOven } from '../../camp/camp.ts';
import type { CoalSet } from '../../coals/coal-plan.ts';
import { ovenBody } from '../../coals/geometry.ts';
import { HANDLE, LEG_WIDTH, legPlaces } from '../../coals/room.ts';
import type { Degrees } from '../../quantity/unit.ts';
import type { Around } from './around.ts';
import { chalkMark, cookMark, cookStandsAt, windArrow, windScreen } from './around.ts';
import { coals } from './coal.ts';
import { circle, element, group, ink, picture, words, wrap } from './svg.ts';

export interface FromAbove {
  readonly oven: CampOven;
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly coals: CoalSet;
  readonly windFrom: Degrees;
  readonly isStill: boolean;
  readonly screened: boolean;
  /** Counts and wind in words, made by the sheet. */
  readonly caption: string;
  /** Coals that are added here and their minutes, one text each; drawn under the caption. */
  readonly later: readonly string[];
  readonly alt: string;
}

const WIDTH = 300;
const CAPTION = 26;
const LATER_ROW = 21;
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
    coals(drawnCoals(view, scale)),
    handle(scale),
    chalkMark(CENTRE[0], CENTRE[1] - RIM - 1.5),
    windArrow(around),
    cookMark(around),
  ]);
}

/** The floor as an outline: the coals show beneath it in their ring, between the three legs. */
export function floorDrawing(view: FromAbove): string {
  const scale = RIM / (view.oven.diameter / 2);
  const floor = ovenBody(view.oven).floorDiameter / 2;
  const around = aroundOf(view, RIM + 6);
  return frame('floor', view, [
    windScreen(around),
    circle(...CENTRE, RIM + 6, { fill: ink.sheet, stroke: ink.line, 'stroke-width': 1.5 }),
    coals(drawnCoals(view, scale)),
    circle(...CENTRE, floor * scale, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 2.5,
      'stroke-dasharray': '7 4',
    }),
    ...legPlaces(floor).map((place) => leg(place, scale)),
    windArrow(around),
    cookMark(around),
  ]);
}

const drawnCoals = ({ fuel, coals }: FromAbove, scale: number) => ({
  fuel,
  places: coals.places,
  pieceWidth: coals.pieceWidth,
  centre: CENTRE,
  scale,
});

/** Legs stand where the plan left room for them. */
const leg = ({ x, y }: { readonly x: number; readonly y: number }, scale: number) => {
  const at = [CENTRE[0] + x * scale, CENTRE[1] - y * scale] as const;
  const radius = (LEG_WIDTH / 2) * scale;
  return group(
    { class: 'leg' },
    circle(...at, radius - 0.5, { fill: ink.ink, stroke: ink.sheet, 'stroke-width': 1 }),
    circle(...at, radius * 0.3, { fill: ink.sheet }),
  );
};

/** The loop in the middle of the lid, lying east and west: the witness that the lid stands as before. */
const handle = (scale: number) => {
  const [along, across] = [HANDLE.halfLength * scale, HANDLE.halfWidth * scale];
  return element('rect', {
    class: 'handle',
    x: CENTRE[0] - along,
    y: CENTRE[1] - across,
    width: 2 * along,
    height: 2 * across,
    rx: across,
    fill: ink.ash,
    stroke: ink.ink,
    'stroke-width': 2.5,
  });
};

const aroundOf = (view: FromAbove, radius: number): Around => ({
  centre: CENTRE,
  radius: view.screened ? radius + 6 : radius,
  windFrom: view.windFrom,
  isStill: view.isStill,
  screened: view.screened,
});

const frame = (kind: 'lid' | 'floor', view: FromAbove, children: readonly string[]) => {
  const bottom = WIDTH - (isFreeBelow(view) ? FREE_BELOW : 0);
  const later = wrap(view.later.join(', '), WIDTH - 6, 17);
  return picture({
    width: WIDTH,
    height: bottom + CAPTION + later.length * LATER_ROW,
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
      ...later.map((text, index) =>
        words({
          x: WIDTH / 2,
          y: bottom + CAPTION + 12 + index * LATER_ROW,
          text,
          size: 17,
          anchor: 'middle',
        }),
      ),
    ],
  });
};

/** Room under the rim that only wind or cook would take. */
const FREE_BELOW = 34;

/** True where neither the wind's strokes nor the cook's feet are drawn south of the oven. */
const isFreeBelow = ({ windFrom, isStill }: FromAbove) =>
  !isStill &&
  [windFrom, cookStandsAt(windFrom)].every((from) => Math.cos((from * Math.PI) / 180) > -0.2);
