// One oven of a dish card: the counts, the drawings, the way the coals lie, times and checks.

import type { CampOven } from '../../camp/camp.ts';
import type { Check, CoalPlan, CoalSet } from '../../coals/coal-plan.ts';
import type { DishPlan, LoadPlan, MealDay } from '../../meal.ts';
import { type FloorContact, floorOf } from '../../menu/index.ts';
import type { OvenLoad } from '../../menu/load.ts';
import { kelvin } from '../../quantity/unit.ts';
import type { BigFigure, Block } from '../document.ts';
import { curveDrawing } from '../drawing/curve.ts';
import { sideDrawing } from '../drawing/side.ts';
import type { Say } from '../say.ts';
import { fraction } from '../speak-number.ts';
import { axisClock } from '../speak-time.ts';
import { isBakedAtOnce } from './baked-at-once.ts';
import { asDone } from './check-colours.ts';
import { checksBlocks } from './check-phrases.ts';
import { cutBlocks } from './cut-part.ts';
import { fromAboveBlocks } from './from-above-part.ts';
import { coalsOnAt, minuteOnSheet } from './load-jobs.ts';
import { isLined, loadNoun, momentsOf } from './moments.ts';
import type { Where } from './phrases.ts';
import { isWood, lidSet, placementLine, sentenceCase } from './phrases.ts';
import { rescueBlocks } from './rescue-part.ts';
import { roastBlocks } from './roast-part.ts';
import { turnBlocks } from './turn-part.ts';
import { happenings, whenRows } from './when.ts';
import { chartBlocks } from './why-part.ts';

export interface OvenPart {
  readonly plan: MealDay;
  readonly dish: DishPlan;
  readonly part: LoadPlan;
  readonly say: Say;
}

/** What is read at the fire. */
export function ovenBlocks({ plan, dish, part, say }: OvenPart): readonly Block[] {
  const wood = isWood(part.coals);
  const oven = ovenOf(plan, part);
  return [
    { type: 'figures', figures: coalFigures(part, wood, say) },
    ...fromAbove({ plan, dish, part, say }, oven),
    {
      type: 'placement',
      lines: [
        placementLine(lidSet(part.coals), 'above', wood),
        placementLine(part.coals.below, 'below', wood),
      ],
    },
    ...chartBlocks(part.coals, say),
    { type: 'heading', text: 'When: minutes from "coals on"', half: true },
    { type: 'steps', rows: whenRows(plan, dish, part, say) },
    ...turnBlocks(part.coals, say),
    ...checks({ plan, dish, part, say }, wood),
    ...rescueBlocks(dish, part.coals, say),
  ];
}

/** What is looked at before the fire is lit: the oven cut open, and how hot it will be when. */
export function ovenKitchenBlocks({ plan, dish, part, say }: OvenPart): readonly Block[] {
  const wood = isWood(part.coals);
  return [
    { type: 'heading', text: 'From the side', half: true },
    { type: 'drawing', wide: true, ...side({ plan, dish, part, say }, ovenOf(plan, part), wood) },
    ...curvePart({ plan, dish, part, say }),
    ...cutBlocks(part, say),
    ...roastBlocks(part, say),
  ];
}

export function ovenOf(plan: MealDay, part: LoadPlan): CampOven {
  const oven = plan.camp.ovens.find(({ id }) => id === part.load.oven);
  if (oven === undefined) throw new RangeError(`load ${part.load.id} lies in no oven of the camp`);
  return oven;
}

export const isScreened = (plan: MealDay) => plan.camp.gear.windScreens > 0;

function coalFigures({ coals }: LoadPlan, wood: boolean, say: Say): readonly BigFigure[] {
  const figure = (set: CoalSet, where: Where): BigFigure =>
    wood
      ? {
          figure: fraction(set.shovels ?? set.rings, set.shovels === undefined ? 4 : 2),
          label: `${woodUnit(set)} ${where}`,
        }
      : { figure: String(set.pieces), label: where };
  const { browning } = coals;
  const later =
    browning === undefined
      ? {}
      : { note: `from ${say.minutes(browning.until)} on; lid off while it browns` };
  return [{ ...figure(lidSet(coals), 'above'), ...later }, figure(coals.below, 'below')];
}

function woodUnit(set: CoalSet): string {
  const amount = set.shovels ?? set.rings;
  const unit = set.shovels === undefined ? 'ring' : 'shovel';
  return amount > 1 ? `${unit}s` : unit;
}

function fromAbove(card: OvenPart, oven: CampOven): readonly Block[] {
  const { plan, part, say } = card;
  const { coals, air } = part;
  const minuteOf = (planned: number) => minuteOnSheet(plan, part, { kind: 'add-coals', planned });
  return fromAboveBlocks({ oven, coals, air, screened: isScreened(plan), minuteOf }, say);
}

/** A dough that is baked at once has risen, and is not proved once it is shaped. */
const heightWord = ({ recipe }: DishPlan, load: OvenLoad) =>
  load.provedHeight !== undefined && !isBakedAtOnce(recipe)
    ? 'proved, as the bake begins'
    : 'as it goes in';

function side({ plan, dish, part, say }: OvenPart, oven: CampOven, wood: boolean) {
  const { load, coals } = part;
  const hearth = plan.camp.place.hearth;
  const noun = loadNoun(dish);
  const height = load.provedHeight ?? load.thickness;
  const rises = load.risenHeight > height * 1.05;
  const labels = {
    lid: `Lid ${say.length(oven.depth)} above the floor, coals inside its flange`,
    food: `${sentenceCase(noun)} ${say.length(height)} high ${heightWord(dish, load)}${restsOn(load)}; ${floorWord(oven, say)}`,
    ...(rises
      ? { risen: `Risen ${say.length(load.risenHeight)}, ${say.length(load.headroom)} to the lid` }
      : {}),
    below: belowLabel(coals.below, wood),
    hearth: HEARTH[hearth],
  };
  const alt = `Oven cut open from the side on ${HEARTH[hearth].toLowerCase()}. ${Object.values(labels).join('. ')}. ${CUT}`;
  const view = {
    oven,
    load,
    fuel: coals.fuel,
    above: lidSet(coals),
    below: coals.below,
    hearth,
    isLined: isLined(dish),
    labels,
    alt,
  };
  return { svg: sideDrawing(view), phone: sideDrawing(view, 'phone'), alt };
}

const RESTS_ON: Readonly<Partial<Record<FloorContact, string>>> = {
  rack: ', on a rack',
  tin: ', in its tin on a rack',
  meal: ', on coarse meal',
};

const restsOn = ({ shape, inOven }: OvenLoad): string =>
  shape === 'pot' || inOven === undefined ? '' : (RESTS_ON[inOven.contact] ?? '');

/** The size on the lid is not that of the floor; which of them was reckoned with is always said. */
const floorWord = (oven: CampOven, say: Say): string =>
  `floor ${oven.floorDiameter === undefined ? 'about ' : ''}${say.length(floorOf(oven))} wide`;

const CUT = 'Coals in the cut are whole; those before and behind it are outlines.';

function belowLabel(set: CoalSet, wood: boolean): string {
  if (set.pieces === 0) return 'No coals below';
  return set.spread === 0 || wood
    ? 'Coals under the rim of the floor, none under its middle'
    : 'Coals under the floor, ring and inside';
}

const HEARTH = {
  ground: 'Bare ground, cleared',
  'fire-pan': 'Fire pan with a lip, off the ground',
  'fire-table': 'Fire table',
} as const;

function checks({ plan, dish, part, say }: OvenPart, wood: boolean): readonly Block[] {
  const zero = coalsOnAt(plan, part);
  const whenOf = ({ minute: planned }: Check) => {
    const minute = minuteOnSheet(plan, part, { kind: 'check', planned });
    return { minute, clock: zero === undefined ? '' : say.clock(zero + minute) };
  };
  const kit = {
    flour: flourFor(dish, ovenOf(plan, part)),
    hasThermometer: plan.camp.gear.thermometer,
  };
  return [
    { type: 'heading', text: 'Checks: every count is only a start', half: true },
    ...checksBlocks(asDone(part), { wood, noun: loadNoun(dish), whenOf, ...kit }, say),
  ];
}

const WHEAT: ReadonlySet<string> = new Set(['gluten', 'wheat']);

/** No wheat in an oven that is kept free of it; other meals brown much alike (no source). */
const flourFor = ({ safety }: DishPlan, { keptFreeOf }: CampOven) =>
  [...safety.freeFrom, ...keptFreeOf].some((each) => WHEAT.has(each))
    ? 'cornmeal or rice flour'
    : 'flour';

function curvePart({ plan, dish, part, say }: OvenPart): readonly Block[] {
  const { coals } = part;
  if (coals.curve.length < 2) return [];
  const moments = momentsOf(plan, dish, part);
  const unit = say.measures === 'us' ? '°F' : '°C';
  const wanted = `${say.oven(coals.wanted.low)} to ${say.oven(coals.wanted.high)}`;
  const events = happenings(plan, dish, part, say);
  const alt = `Temperature in the oven over ${say.minutes(coals.outMinute)} from coals on, wanted ${wanted}. ${events.map(({ minute, brief }) => `${say.minutes(minute)} ${brief}`).join('; ')}.`;
  const drawing = {
    coals,
    measures: say.measures,
    // A job of the day sheet may slip a minute past the last point of the curve.
    events: events.map(({ minute, brief }) => ({
      minute: Math.min(minute, coals.outMinute),
      text: `${say.minutes(minute)}  ${brief}`,
    })),
    clockAt: (minute: number) =>
      moments.zero === undefined ? '' : axisClock(moments.zero + minute, say.clock),
    words: { axis: `Oven, ${unit}`, wanted: `wanted ${wanted}`, band: 'eight times in ten' },
    alt,
  };
  return [
    { type: 'heading', text: 'Temperature in the oven', half: true },
    {
      type: 'drawing',
      wide: true,
      alt,
      svg: curveDrawing(drawing),
      phone: curveDrawing(drawing, 'phone'),
    },
    ...(coals.answer === undefined ? [] : [belowWanted(coals, say)]),
  ];
}

/** Why bread browns in an oven that reads too cool. */
function belowWanted({ curve }: CoalPlan, say: Say): Block {
  const hottest = (part: 'lid' | 'oven') => kelvin(Math.max(...curve.map((point) => point[part])));
  const text = `Wanted is what a printed chart means. Cold dough pulls the oven below it, most in the first twenty minutes; the minutes of the bake count on that. The line is the middle of the oven, at most ${say.oven(hottest('oven'))}; the lid above it gets to ${say.oven(hottest('lid'))}, and what shines down from there browns the top.`;
  return { type: 'paragraph', parts: [{ text }] };
}
