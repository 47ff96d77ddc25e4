// A cut through the bread while it bakes: four slices side by side, and under them when middle, top
// and bottom come to their colours, with the line at which it is done. Tones tell on paper without
// colour: the darker, the browner; every tone has its word beside it.

import type { InsideCutPlan, InsidePlan, InsidePoint } from '../../bake/bake-plan.ts';
import { COLOUR_MARKS, colourWord } from '../../bake/inside/index.ts';
import { band, type Loaf, loafOf, topAt } from './cut-outline.ts';
import { type Frame, PHONE_TEXT, PHONE_WIDTH } from './frame.ts';
import { element, fits, group, ink, line, path, picture, words } from './svg.ts';

export interface CutDrawing {
  readonly inside: InsidePlan;
  /** Minutes from load in to done. */
  readonly done: number;
  readonly words: {
    readonly minutes: (minute: number) => string;
    readonly degrees: (kelvin: number) => string;
    readonly length: (metres: number) => string;
  };
  /** Mean height over the height of the middle, as the load stands: the outline is drawn by it. */
  readonly profile?: number;
  /** From edge to edge through its middle: to scale, unless it were too low to show its layers. */
  readonly widthMetres?: number;
  readonly alt: string;
}

interface Board {
  readonly width: number;
  /** So many cuts side by side. */
  readonly columns: number;
  readonly cutHeight: number;
  readonly cutWidth: number;
  readonly captionRow: number;
  readonly barLeft: number;
  readonly size: number;
}

const BOARDS: Readonly<Record<Frame, Board>> = {
  sheet: {
    width: 640,
    columns: 4,
    cutHeight: 120,
    cutWidth: 146,
    captionRow: 20,
    barLeft: 76,
    size: 16.5,
  },
  phone: {
    width: PHONE_WIDTH,
    columns: 2,
    cutHeight: 84,
    cutWidth: 140,
    captionRow: 17,
    barLeft: 58,
    size: PHONE_TEXT,
  },
};

const CUT_TOP = 40;
const BAR = 24;
const CAPTIONS = 4;

/** From the top of one row of cuts to the top of the next. */
const rowHeight = ({ cutHeight, captionRow }: Board) => cutHeight + CAPTIONS * captionRow + 24;
const barsTop = (board: Board, count: number) =>
  CUT_TOP + Math.ceil(count / board.columns) * rowHeight(board);

/** Starch stiffens from here on [K]; below it is dough. */
const STIFF_KELVIN = 343.15;

export function cutDrawing(asked: CutDrawing, frame: Frame = 'sheet'): string {
  const scale = scaleFor(asked, BOARDS[frame]);
  const board = { ...BOARDS[frame], cutHeight: scale * tallestOf(asked) };
  const drawing = { ...asked, board };
  const top = barsTop(board, drawing.inside.cuts.length);
  return picture({
    width: board.width,
    height: top + 3 * (BAR + 8) + 46,
    kind: 'cut',
    title: 'Cut through the bread',
    alt: drawing.alt,
    children: [...key(board), ...cuts(drawing), ...bars(drawing, top)],
  });
}

const tallestOf = ({ inside }: CutDrawing) =>
  Math.max(...inside.cuts.map(({ edges }) => edges.at(-1) ?? 0), 1e-6);

/** Layers and crusts are told apart from here on. */
const LEAST_HEIGHT = 46;

/** Of its heights; its width is as wide as there is room. */
function scaleFor(asked: CutDrawing, { cutHeight, cutWidth }: Board): number {
  const tallest = tallestOf(asked);
  const { widthMetres } = asked;
  const toScale = widthMetres === undefined ? cutHeight / tallest : cutWidth / widthMetres;
  return Math.min(cutHeight / tallest, Math.max(LEAST_HEIGHT / tallest, toScale));
}

type Drawn = CutDrawing & { readonly board: Board };

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

function key({ size }: Board): readonly string[] {
  return CRUMB.flatMap(({ text, fill, dotted }, index) => {
    const x = 8 + index * 96;
    return [
      element('rect', { x, y: 6, width: 22, height: 14, fill, stroke: ink.soft }),
      ...(dotted ? [dots({ x, y: 6, width: 22, height: 14 }, () => true)] : []),
      words({ x: x + 29, y: 19, text, size, fill: ink.soft }),
    ];
  });
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A few dots, so that raw dough is told from baked crumb on any printer. */
function dots({ x, y, width, height }: Box, isIn: (x: number, y: number) => boolean): string {
  const drawn: string[] = [];
  const row = (at: number, shift: number) => {
    for (let dot = x + 5 + shift; dot < x + width - 2; dot += 11)
      if (isIn(dot, at)) drawn.push(element('circle', { cx: dot, cy: at, r: 1.1, fill: ink.soft }));
  };
  for (let at = y + 4, shift = 0; at < y + height - 1; at += 7, shift = 5.5 - shift) row(at, shift);
  return drawn.join('');
}

function cuts(drawing: Drawn): readonly string[] {
  const { inside, board } = drawing;
  const { width, cutWidth } = board;
  const columns = Math.min(board.columns, inside.cuts.length);
  const scale = board.cutHeight / tallestOf(drawing);
  const gap = (width - columns * cutWidth) / (columns + 1);
  return inside.cuts.map((_, index) =>
    oneCut(drawing, index, {
      x: gap + (index % columns) * (cutWidth + gap),
      foot: CUT_TOP + Math.floor(index / columns) * rowHeight(board) + board.cutHeight,
      scale,
    }),
  );
}

interface CutPlace {
  readonly x: number;
  readonly foot: number;
  readonly scale: number;
}

function oneCut(drawing: Drawn, index: number, { x, foot, scale }: CutPlace): string {
  const { inside, board, profile } = drawing;
  const cut = inside.cuts[index]!;
  const at = pointAt(inside, cut.minute);
  const top = cut.edges.at(-1) ?? 0;
  const loaf = loafOf({ x, foot, width: board.cutWidth, height: top * scale }, profile);
  const share = (metres: number) => (0 < top ? metres / top : 0);
  const [above, below] = [share(at.topCrust), share(at.bottomCrust)];
  return group(
    { class: 'cut' },
    ...layersOf(cut, inside.core).map(({ low, high, state }) =>
      layer(loaf, [share(low), share(high)], state),
    ),
    crust(loaf, [1 - seen(loaf, above), 1], colourWord(at.topColour)),
    crust(loaf, [0, seen(loaf, below)], colourWord(at.bottomColour)),
    path(band(loaf, 0, 1), {
      class: 'outline',
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 1.6,
    }),
    ...captions(drawing, index, { x, foot }),
  );
}

interface Layer {
  readonly low: number;
  readonly high: number;
  readonly state: (typeof CRUMB)[number];
}

/** Slices in one state lie together. */
function layersOf(cut: InsideCutPlan, core: number): readonly Layer[] {
  const layers: Layer[] = [];
  cut.kelvins.forEach((kelvin, slice) => {
    const state = stateOf(kelvin, core);
    const [low, high] = [cut.edges[slice]!, cut.edges[slice + 1]!];
    const last = layers.at(-1);
    if (last?.state === state) layers[layers.length - 1] = { ...last, high };
    else layers.push({ low, high, state });
  });
  return layers;
}

/** Heights are shares of the loaf's own height at each place: the layers follow its outline. */
function layer(loaf: Loaf, [low, high]: readonly [number, number], state: Layer['state']): string {
  const drawn = path(band(loaf, low, high), { fill: state.fill });
  if (!state.dotted) return drawn;
  const { x, width, height, foot } = loaf;
  const isIn = (dotX: number, dotY: number) => {
    const full = topAt(loaf, dotX);
    return low * full + 2 < foot - dotY && foot - dotY < high * full - 2;
  };
  return drawn + dots({ x, y: foot - height, width, height }, isIn);
}

/** A crust thinner than this would not be seen. */
const LEAST_CRUST = 2.5;
const seen = ({ height }: Loaf, share: number) =>
  Math.min(1, Math.max(share, LEAST_CRUST / Math.max(LEAST_CRUST, height)));

const crust = (loaf: Loaf, [low, high]: readonly [number, number], colour: ColourWord) =>
  path(band(loaf, low, high), {
    fill: ink.ink,
    'fill-opacity': String(Math.max(0.06, TONE[colour])),
  });

function captions(
  { inside, words: say, board }: Drawn,
  index: number,
  { x, foot }: Pick<CutPlace, 'x' | 'foot'>,
) {
  const cut = inside.cuts[index]!;
  const at = pointAt(inside, cut.minute);
  const middle = x + board.cutWidth / 2;
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
      y: foot + 22 + row * board.captionRow,
      text,
      size: board.size,
      anchor: 'middle',
      bold: row === 0,
    }),
  );
}

const pointAt = ({ moments }: InsidePlan, minute: number): InsidePoint =>
  moments[Math.min(moments.length - 1, Math.round(minute))]!;

function bars(drawing: Drawn, top: number): readonly string[] {
  const { inside, done, words: say, board } = drawing;
  const { barLeft, size } = board;
  const barRight = board.width - 14;
  const last = Math.max(done * 1.15, 5);
  const xOf = (minute: number) =>
    barLeft + (Math.min(last, Math.max(0, minute)) / last) * (barRight - barLeft);
  const y = (row: number) => top + row * (BAR + 8);
  const doneX = xOf(done);
  const foot = y(2) + BAR;
  return [
    coreBar(drawing, { y: y(0), xOf, last, board }),
    colourBar('top', (point) => point.topColour, inside, { y: y(1), xOf, last, board }),
    colourBar('bottom', (point) => point.bottomColour, inside, { y: y(2), xOf, last, board }),
    line(doneX, top - 12, doneX, foot + 8, { 'stroke-width': 2.6 }),
    words({
      x: doneX,
      y: foot + 26,
      text: `done, ${say.minutes(done)}`,
      size,
      bold: true,
      anchor: doneX > barRight - 60 ? 'end' : 'middle',
    }),
    words({ x: barLeft, y: foot + 26, text: 'load in', size, fill: ink.soft }),
  ];
}

interface BarPlace {
  readonly board: Board;
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

function bar(name: string, all: readonly Stretch[], { y, xOf, last, board }: BarPlace): string {
  const { barLeft, size } = board;
  return group(
    { class: 'bar' },
    words({ x: barLeft - 8, y: y + 18, text: name, size, anchor: 'end' }),
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
          (fits(text, end - x - 8, size)
            ? words({ x: x + 5, y: y + 18, text, size, fill: isDark ? ink.sheet : ink.ink })
            : '')
        );
      }),
  );
}
