// A cut through the bread while it bakes: four slices side by side, and under them when middle, top
// and bottom come to their colours, with the line at which it is done. Tones tell on paper without
// colour: the darker, the browner; every tone has its word beside it.

import type { InsidePlan, InsidePoint } from '../../bake/bake-plan.ts';
import { COLOUR_MARKS, colourWord } from '../../bake/inside/index.ts';
import { element, fits, group, ink, line, picture, words } from './svg.ts';

export interface CutDrawing {
  readonly inside: InsidePlan;
  /** Minutes from load in to done. */
  readonly done: number;
  readonly words: {
    readonly minutes: (minute: number) => string;
    readonly degrees: (kelvin: number) => string;
    readonly length: (metres: number) => string;
  };
  readonly alt: string;
}

const WIDTH = 640;
const CUT_TOP = 40;
const CUT_HEIGHT = 120;
const CUT_WIDTH = 132;
const CUT_FOOT = CUT_TOP + CUT_HEIGHT;
const BARS_TOP = CUT_FOOT + 104;
const BAR = 24;
const BAR_LEFT = 76;
const BAR_RIGHT = WIDTH - 14;
const HEIGHT = BARS_TOP + 3 * (BAR + 8) + 46;

/** Starch stiffens from here on [K]; below it is dough. */
const STIFF_KELVIN = 343.15;

export function cutDrawing(drawing: CutDrawing): string {
  return picture({
    width: WIDTH,
    height: HEIGHT,
    kind: 'cut',
    title: 'Cut through the bread',
    alt: drawing.alt,
    children: [...key(), ...cuts(drawing), ...bars(drawing)],
  });
}

type ColourWord = ReturnType<typeof colourWord>;

/** Share of ink of each colour of crust. */
const TONE: Readonly<Record<ColourWord, number>> = {
  pale: 0,
  straw: 0.1,
  brown: 0.26,
  dark: 0.72,
  burnt: 0.92,
};

const CRUMB = [
  { text: 'dough', fill: ink.ash, dotted: true },
  { text: 'set', fill: ink.oat, dotted: false },
  { text: 'baked', fill: ink.sheet, dotted: false },
] as const;

const stateOf = (kelvin: number, core: number) =>
  kelvin < STIFF_KELVIN ? CRUMB[0] : kelvin < core ? CRUMB[1] : CRUMB[2];

function key(): readonly string[] {
  return CRUMB.flatMap(({ text, fill, dotted }, index) => {
    const x = 8 + index * 96;
    return [
      element('rect', { x, y: 6, width: 22, height: 14, fill, stroke: ink.soft }),
      ...(dotted ? [dots(x, 6, 22, 14)] : []),
      words({ x: x + 29, y: 19, text, size: 16.5, fill: ink.soft }),
    ];
  });
}

/** A few dots, so that raw dough is told from baked crumb on any printer. */
function dots(x: number, y: number, width: number, height: number): string {
  const drawn: string[] = [];
  const row = (at: number, shift: number) => {
    for (let dot = x + 5 + shift; dot < x + width - 2; dot += 11)
      drawn.push(element('circle', { cx: dot, cy: at, r: 1.1, fill: ink.soft }));
  };
  for (let at = y + 4, shift = 0; at < y + height - 1; at += 7, shift = 5.5 - shift) row(at, shift);
  return drawn.join('');
}

function cuts(drawing: CutDrawing): readonly string[] {
  const { inside } = drawing;
  const tallest = Math.max(...inside.cuts.map(({ edges }) => edges.at(-1) ?? 0), 1e-6);
  const scale = CUT_HEIGHT / tallest;
  const gap = (WIDTH - inside.cuts.length * CUT_WIDTH) / (inside.cuts.length + 1);
  return inside.cuts.map((_, index) =>
    oneCut(drawing, index, { x: gap + index * (CUT_WIDTH + gap), scale }),
  );
}

interface CutPlace {
  readonly x: number;
  readonly scale: number;
}

function oneCut(drawing: CutDrawing, index: number, { x, scale }: CutPlace): string {
  const { inside } = drawing;
  const cut = inside.cuts[index]!;
  const at = pointAt(inside, cut.minute);
  const yOf = (metres: number) => CUT_FOOT - metres * scale;
  const layers = cut.kelvins.map((kelvin, slice) => {
    const [low, high] = [cut.edges[slice]!, cut.edges[slice + 1]!];
    const { fill, dotted } = stateOf(kelvin, inside.core);
    const [y, height] = [yOf(high), (high - low) * scale];
    const layer = element('rect', { x, y, width: CUT_WIDTH, height: height + 0.2, fill });
    return dotted ? layer + dots(x, y, CUT_WIDTH, height) : layer;
  });
  const top = cut.edges.at(-1) ?? 0;
  return group(
    { class: 'cut' },
    ...layers,
    crust(x, yOf(top), at.topCrust * scale, colourWord(at.topColour)),
    crust(
      x,
      CUT_FOOT - at.bottomCrust * scale,
      at.bottomCrust * scale,
      colourWord(at.bottomColour),
    ),
    element('rect', {
      x,
      y: yOf(top),
      width: CUT_WIDTH,
      height: top * scale,
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 1.6,
    }),
    ...captions(drawing, index, x),
  );
}

function crust(x: number, y: number, height: number, colour: ColourWord): string {
  const shown = Math.max(2.5, height);
  return element('rect', {
    x,
    y: height < 2.5 && y > CUT_FOOT - 4 ? CUT_FOOT - shown : y,
    width: CUT_WIDTH,
    height: shown,
    fill: ink.ink,
    'fill-opacity': String(Math.max(0.06, TONE[colour])),
  });
}

function captions({ inside, words: say }: CutDrawing, index: number, x: number) {
  const cut = inside.cuts[index]!;
  const at = pointAt(inside, cut.minute);
  const middle = x + CUT_WIDTH / 2;
  const isLast = index === inside.cuts.length - 1;
  const rows = [
    `${say.minutes(cut.minute)}${isLast ? ', done' : ''}`,
    `middle ${say.degrees(at.core)}`,
    `top ${colourWord(at.topColour)}`,
    `bottom ${colourWord(at.bottomColour)}`,
  ];
  return rows.map((text, row) =>
    words({
      x: middle,
      y: CUT_FOOT + 22 + row * 20,
      text,
      size: 16.5,
      anchor: 'middle',
      bold: row === 0,
    }),
  );
}

const pointAt = ({ moments }: InsidePlan, minute: number): InsidePoint =>
  moments[Math.min(moments.length - 1, Math.round(minute))]!;

function bars(drawing: CutDrawing): readonly string[] {
  const { inside, done, words: say } = drawing;
  const last = Math.max(done * 1.15, 5);
  const xOf = (minute: number) =>
    BAR_LEFT + (Math.min(last, Math.max(0, minute)) / last) * (BAR_RIGHT - BAR_LEFT);
  const y = (row: number) => BARS_TOP + row * (BAR + 8);
  const doneX = xOf(done);
  const foot = y(2) + BAR;
  return [
    coreBar(drawing, { y: y(0), xOf, last }),
    colourBar('top', (point) => point.topColour, inside, { y: y(1), xOf, last }),
    colourBar('bottom', (point) => point.bottomColour, inside, { y: y(2), xOf, last }),
    line(doneX, BARS_TOP - 12, doneX, foot + 8, { 'stroke-width': 2.6 }),
    words({
      x: doneX,
      y: foot + 26,
      text: `done, ${say.minutes(done)}`,
      size: 16.5,
      bold: true,
      anchor: doneX > BAR_RIGHT - 60 ? 'end' : 'middle',
    }),
    words({ x: BAR_LEFT, y: foot + 26, text: 'load in', size: 16.5, fill: ink.soft }),
  ];
}

interface BarPlace {
  readonly y: number;
  readonly xOf: (minute: number) => number;
  readonly last: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly tone: number;
}

function coreBar({ inside, done }: CutDrawing, place: BarPlace): string {
  const stiff = inside.moments.find((point) => point.core >= STIFF_KELVIN)?.minute;
  const through =
    inside.through ?? inside.moments.find((point) => point.core >= inside.core)?.minute;
  const ends = [stiff ?? through ?? done * 2, through ?? done * 2, done * 2];
  return bar('middle', stretches(ends, ['dough', 'setting', 'baked'], [0.22, 0.1, 0]), place);
}

function colourBar(
  name: string,
  colourOf: (point: InsidePoint) => number,
  inside: InsidePlan,
  place: BarPlace,
): string {
  const names: readonly ColourWord[] = ['pale', 'straw', 'brown', 'dark', 'burnt'];
  const reached = (mark: number) =>
    inside.moments.find((point) => colourOf(point) >= mark)?.minute ?? Number.POSITIVE_INFINITY;
  const { straw, brown, dark, burnt } = COLOUR_MARKS;
  const ends = [...[straw, brown, dark, burnt].map(reached), Number.POSITIVE_INFINITY];
  return bar(
    name,
    stretches(
      ends,
      names,
      names.map((each) => TONE[each]),
    ),
    place,
  );
}

const stretches = (
  ends: readonly number[],
  texts: readonly string[],
  tones: readonly number[],
): readonly Stretch[] =>
  texts.map((text, index) => ({
    from: index === 0 ? 0 : ends[index - 1]!,
    to: ends[index]!,
    text,
    tone: tones[index]!,
  }));

function bar(name: string, all: readonly Stretch[], { y, xOf, last }: BarPlace): string {
  return group(
    { class: 'bar' },
    words({ x: BAR_LEFT - 8, y: y + 18, text: name, size: 16.5, anchor: 'end' }),
    ...all
      .filter(({ from, to }) => from < Math.min(last, to))
      .map(({ from, to, text, tone }) => {
        const [x, end] = [xOf(from), xOf(Math.min(last, to))];
        const isDark = tone > 0.5;
        return (
          element('rect', {
            x,
            y,
            width: end - x,
            height: BAR,
            fill: ink.ink,
            'fill-opacity': String(tone),
            stroke: ink.ink,
            'stroke-width': 1,
          }) +
          (fits(text, end - x - 8, 16.5)
            ? words({ x: x + 5, y: y + 18, text, size: 16.5, fill: isDark ? ink.sheet : ink.ink })
            : '')
        );
      }),
  );
}
