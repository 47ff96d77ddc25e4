// Made-up meals by seed, as the solver gets them: hands of three skills and their own hours, ovens
// used again, coals that age, turns and added coals, pins, one or two servings, limits of holding.
// Minutes and coals are synthetic (common practice, no source): they test the clock, not the heat.
import type { Lag, Problem, Seat, Task } from '../../engine/src/solver/problem.ts';
import { randomFrom } from '../../engine/src/solver/random.ts';

export interface Scale {
  readonly dishes: number;
  readonly hands: number;
  /** Small and wide ovens where there are two servings; half as many again where all is for one. */
  readonly ovens: readonly [number, number];
  readonly chimneys: number;
  /** Minutes between two servings. */
  readonly apart: readonly [number, number];
  /** How often there are two. */
  readonly twice: number;
}

export const SCALES = {
  small: { dishes: 5, hands: 2, ovens: [1, 2], chimneys: 1, apart: [80, 150], twice: 0.7 },
  medium: { dishes: 10, hands: 3, ovens: [2, 4], chimneys: 2, apart: [80, 150], twice: 0.7 },
  large: { dishes: 40, hands: 8, ovens: [8, 12], chimneys: 8, apart: [280, 320], twice: 1 },
} as const satisfies Record<string, Scale>;

export type Size = keyof typeof SCALES;

/** Hands, ovens and chimneys in proportion: how the work grows with the dishes. */
export const scaleFor = (dishes: number): Scale => ({
  dishes,
  hands: Math.max(2, Math.round(dishes / 5) + 1),
  ovens: [Math.max(1, Math.round(dishes / 5)), Math.max(2, Math.round(dishes / 3))],
  chimneys: Math.max(1, Math.round(dishes / 5)),
  apart: [160, 200],
  twice: 1,
});

/** A drawn meal; what each part of it is for, so that the bench can take a feature away. */
export interface Meal {
  readonly problem: Problem;
  /** Minute of the last serving: what is priced after it is the same in every plan. */
  readonly lastServing: number;
  /** By task. */
  readonly kinds: readonly Kind[];
  /** By group: 0 or 1. */
  readonly servings: readonly number[];
  /** The tasks as they were before the cook pinned some. */
  readonly unpinned: readonly Task[];
}

export type Kind = 'make' | 'lay' | 'load' | 'turn' | 'add' | 'out' | 'finish' | 'served';

const LAST = 600;
const ROOM_AFTER = 180;

export class Draw {
  readonly #random: () => number;
  constructor(seed: number) {
    this.#random = randomFrom(seed * 7919 + 13);
    for (let skip = 0; skip < 5; skip += 1) this.#random();
  }
  within(least: number, most: number): number {
    return least + Math.floor(this.#random() * (most - least + 1));
  }
  isTrue(chance: number): boolean {
    return this.#random() < chance;
  }
}

/** What is written while a meal is drawn. */
class Making {
  readonly draw: Draw;
  readonly scale: Scale;
  readonly tasks: Task[] = [];
  readonly kinds: Kind[] = [];
  readonly lags: Lag[] = [];
  readonly holds: { id: string; pool: number; first: number; last: number }[] = [];
  readonly uses: { task: number; amount: number; waitMost: number; waitWell: number }[] = [];
  readonly prices: { from: number; to: number; price: number }[] = [];
  readonly servings: number[] = [];
  readonly pinned = new Map<number, Task>();
  /** Ovens of either size that a serving has left. */
  readonly free: number[][] = [];

  constructor(draw: Draw, scale: Scale) {
    this.draw = draw;
    this.scale = scale;
  }

  task(group: number, kind: Kind, minutes: number, more: Partial<Task> = {}): number {
    const id = `${group}.${kind}.${this.tasks.length}`;
    const team = `dish ${group}`;
    this.tasks.push({ id, group, minutes, seats: [], takes: [], team, ...more });
    this.kinds.push(kind);
    return this.tasks.length - 1;
  }

  /** From the end of one to the start of the other: at least, and at most so many minutes more. */
  after(from: number, to: number, gap: number, slack?: number): void {
    const least = this.tasks[from]!.minutes + gap;
    this.lags.push({ from, to, least, ...(slack === undefined ? {} : { most: least + slack }) });
  }

  /** From start to start. */
  apart(from: number, to: number, least: number, most: number): void {
    this.lags.push({ from, to, least, most });
  }
}

const TABLE = 2;
const CHIMNEY = 3;

export function drawMeal(seed: number, scale: Scale): Meal {
  const draw = new Draw(seed);
  const making = new Making(draw, scale);
  const isTwice = draw.isTrue(scale.twice);
  const first = isTwice ? LAST - draw.within(...scale.apart) : LAST;
  const units = drawHands(draw, scale, first);
  const ovens = scale.ovens.map((many) => (isTwice ? many : Math.ceil(1.5 * many)));
  making.free.push([...ovens], [...ovens]);
  for (let dish = 0; dish < scale.dishes; dish += 1) {
    const serving = isTwice && dish % 2 === 0 ? 0 : 1;
    making.servings.push(serving);
    drawDish(making, dish, { serving, due: serving === 0 ? first : LAST });
  }
  const all = units.map((_, unit) => unit);
  const size = draw.within(38, 62);
  const life = draw.within(38, 70);
  const { kinds, servings, tasks: unpinned } = making;
  const problem: Problem = {
    from: first - 260,
    to: LAST + ROOM_AFTER,
    tasks: unpinned.map((task, index) => making.pinned.get(index) ?? task),
    lags: making.lags,
    units,
    pools: [
      { id: 'small oven', capacity: ovens[0]! },
      { id: 'wide oven', capacity: ovens[1]! },
      { id: 'table', capacity: Math.max(1, Math.ceil(scale.hands / 2)) },
      { id: 'chimney', capacity: scale.chimneys },
    ],
    holds: making.holds,
    stores: [
      {
        id: 'coals',
        size,
        minutes: 3,
        lead: draw.within(17, 24),
        seats: [all],
        holder: CHIMNEY,
        waitLiked: 15,
        uses: making.uses.map((use) => ({ ...use, waitMost: life })),
      },
    ],
    groups: making.servings.map((_, group) => ({
      id: `dish ${group}`,
      towards: 'late',
      mayBeLeft: false,
      latePrice: 1000,
    })),
    prices: making.prices,
  };
  return { problem, lastServing: LAST, kinds, servings, unpinned };
}

/** The first can do all and is there all day; the others come late or leave early now and then. */
function drawHands(draw: Draw, scale: Scale, firstServing: number): Problem['units'] {
  const from = firstServing - 260;
  const to = LAST + ROOM_AFTER;
  return Array.from({ length: scale.hands }, (_, at) => {
    const comes = at > 0 && draw.isTrue(0.35) ? firstServing - draw.within(35, 110) : from;
    const leaves = at > 0 && draw.isTrue(0.2) ? LAST - draw.within(0, 40) : to;
    return { id: `hand ${at}`, windows: [{ from: comes, to: leaves }] };
  });
}

/** 0: anybody. 1: a steady hand, two in three. 2: the cook, or one more in a large camp. */
function seat({ scale }: Making, skill: 0 | 1 | 2): Seat {
  const many = [scale.hands, Math.ceil(scale.hands / 1.5), Math.ceil(scale.hands / 5)][skill]!;
  const able = Array.from({ length: many }, (_, at) => at);
  // Who can do less is asked first, so that the cook stays free.
  return able.reverse();
}

const skillOf = (draw: Draw): 0 | 1 | 2 => (draw.isTrue(0.3) ? 2 : draw.isTrue(0.5) ? 1 : 0);

type DishKind = 'bread' | 'pot' | 'fruit';

function drawDish(
  making: Making,
  group: number,
  { serving, due }: { readonly serving: number; readonly due: number },
): void {
  const { draw } = making;
  const kind: DishKind = draw.isTrue(0.4) ? 'bread' : draw.isTrue(0.5) ? 'pot' : 'fruit';
  const oven = ovenFor(making, serving, kind);
  if (oven === undefined || draw.isTrue(0.08)) {
    coldDish(making, group, due);
    return;
  }
  const made = makeIt(making, group, kind);
  const lay = making.task(group, 'lay', 3, { seats: [seat(making, 1)] });
  const load = making.task(group, 'load', 2, { seats: [seat(making, 0)] });
  const heatUp = kind === 'bread' ? draw.within(6, 10) : 0;
  making.after(lay, load, heatUp, kind === 'bread' ? 4 : 6);
  making.after(made, load, 0, kind === 'bread' ? 20 : draw.within(20, 90));
  const inOven = draw.within(25, kind === 'pot' ? 100 : 45);
  const isHeavy = making.scale.hands > 1 && draw.isTrue(0.2);
  const lifters = isHeavy ? [seat(making, 1), seat(making, 0)] : [seat(making, 0)];
  const out = making.task(group, 'out', isHeavy ? 2 : 1, { seats: lifters });
  making.apart(load, out, inOven, inOven + (kind === 'pot' ? 6 : 2));
  turnsAndCoals(making, group, { lay, load, out, inOven });
  making.holds.push({ id: `oven of ${group}`, pool: oven, first: lay, last: out });
  const canWait = kind === 'bread' ? draw.within(4, 15) : draw.within(10, kind === 'pot' ? 60 : 30);
  serve(making, group, { out, due, canWait, price: kind === 'bread' ? 3 : 1 });
  pin(making, group, { lay, out, due, soonest: inOven + heatUp + canWait });
}

/** One that its serving has left; a pot goes into either size, and now and then after another. */
function ovenFor({ draw, free }: Making, serving: number, kind: DishKind): number | undefined {
  const own = free[serving]!;
  const wanted = kind === 'pot' && draw.isTrue(0.6) ? [0, 1] : [1, 0];
  const oven = wanted.find((size) => own[size]! > 0);
  if (oven === undefined) return kind === 'pot' && draw.isTrue(0.35) ? 1 : undefined;
  own[oven] = own[oven]! - 1;
  return oven;
}

/** Until it can go into the oven; the answer is the last of the making. */
function makeIt(making: Making, group: number, kind: DishKind): number {
  const { draw } = making;
  const skill = skillOf(draw);
  const takes = [{ pool: TABLE, amount: 1 }];
  const seats = [seat(making, skill)];
  const mix = making.task(group, 'make', draw.within(6, kind === 'bread' ? 12 : 18), {
    seats,
    takes,
  });
  if (kind !== 'bread') return mix;
  const isSame = draw.isTrue(0.5);
  const shape = making.task(group, 'make', draw.within(4, 8), {
    seats,
    takes,
    ...(isSame ? { sameAs: mix } : {}),
  });
  const rise = draw.within(25, 50);
  making.after(mix, shape, rise, 10);
  return shape;
}

function turnsAndCoals(
  making: Making,
  group: number,
  at: {
    readonly lay: number;
    readonly load: number;
    readonly out: number;
    readonly inOven: number;
  },
): void {
  const { draw, uses } = making;
  const waits = { waitMost: 0, waitWell: 30 };
  uses.push({ task: at.lay, amount: draw.within(14, 28), ...waits });
  if (draw.isTrue(0.75)) {
    const turn = making.task(group, 'turn', 1, { seats: [seat(making, 1)] });
    const half = Math.round(at.inOven / 2);
    making.apart(at.load, turn, half - 2, half + 2);
  }
  const after = draw.within(26, 36);
  if (at.inOven > after + 10) {
    const add = making.task(group, 'add', 2, { seats: [seat(making, 0)] });
    making.apart(at.lay, add, after - 3, after + 3);
    uses.push({ task: add, amount: draw.within(6, 14), ...waits });
  }
}

function serve(
  making: Making,
  group: number,
  wish: {
    readonly out: number;
    readonly due: number;
    readonly canWait: number;
    readonly price: number;
  },
): void {
  const { draw } = making;
  const finish = making.task(group, 'finish', draw.within(1, 4), { seats: [seat(making, 0)] });
  const served = making.task(group, 'served', 0, { due: wish.due });
  making.after(wish.out, finish, 0);
  making.after(finish, served, 0);
  const least = making.tasks[wish.out]!.minutes + making.tasks[finish]!.minutes;
  making.apart(wish.out, served, least, least + wish.canWait);
  making.prices.push({ from: wish.out, to: served, price: wish.price });
}

function coldDish(making: Making, group: number, due: number): void {
  const { draw } = making;
  const takes = [{ pool: TABLE, amount: 1 }];
  const made = making.task(group, 'make', draw.within(8, 18), {
    seats: [seat(making, 0)],
    takes,
  });
  const finish = making.task(group, 'finish', draw.within(2, 5), { seats: [seat(making, 0)] });
  const served = making.task(group, 'served', 0, { due });
  making.after(made, finish, 0);
  making.after(finish, served, 0);
  const least = making.tasks[made]!.minutes + making.tasks[finish]!.minutes;
  making.apart(made, served, least, least + draw.within(10, 45));
  making.prices.push({ from: made, to: served, price: 1 });
}

/** Now and then the coals' minute or the hand is the cook's own wish. */
function pin(
  making: Making,
  group: number,
  at: {
    readonly lay: number;
    readonly out: number;
    readonly due: number;
    readonly soonest: number;
  },
): void {
  const { draw, tasks, pinned } = making;
  if (!draw.isTrue(0.22)) return;
  if (draw.isTrue(0.5)) {
    const own = draw.within(0, making.scale.hands - 1);
    tasks.forEach((task, index) => {
      if (task.group !== group || making.kinds[index] !== 'make') return;
      if (task.seats[0]?.includes(own)) pinned.set(index, { ...task, seats: [[own]] });
    });
    return;
  }
  const fixed = at.due - at.soonest - draw.within(7, 11);
  pinned.set(at.lay, { ...tasks[at.lay]!, fixed });
}
