// Why this count? The chart's, ours, and a whole number for everything that moved it.
//
// Each thing is switched on in turn on the steady network and its change rounded; the rounding line
// takes up what is left, so the lines add up exactly. Source: chartReprinted for the chart's count.

import type { CampOven } from '../camp/camp.ts';
import { burnoutMinutes } from './burn.ts';
import { chartCount, charts, usualOven } from './charts.ts';
import type { ChartCount, CoalRequest, CountReason, Reckoning } from './coal-plan.ts';
import { floorFactor, groundFactor } from './conditions.ts';
import { type Counted, countCoals } from './count.ts';
import { HOT_IRON_KELVIN } from './first-set.ts';
import { fuelPiece, thinAirStrength } from './fuel.ts';
import { ovenBody } from './geometry.ts';
import { coalsToHold, type HoldCase } from './hold.ts';
import { ageFactor, firstCoals, heldSink } from './need.ts';
import { parameter } from './parameters.ts';
import type { RunSetting } from './run.ts';
import { isBaked, isOpenMethod, isPotMethod } from './split.ts';

type Cause = CountReason['cause'];

export const reckoningFor = (asked: CoalRequest, site: RunSetting, counted: Counted): Reckoning => {
  const request = asCounted(asked);
  const setting = { ...site, load: request.load };
  const { chart, others } = chartsSaying(request);
  const { above, below } = counted.counts;
  const steps = stepsFrom(request, setting, counted, chart ? chart.above + chart.below : undefined);
  return {
    ...(chart ? { chart } : {}),
    above,
    below,
    because: reasons(steps, above + below),
    others,
  };
};

interface Said {
  /** The most reprinted chart, where it reaches so far. */
  readonly chart: ChartCount | undefined;
  readonly others: readonly ChartCount[];
}

// A chart counts briquettes for baking; for wood or a pot no chart is quoted.
const chartsSaying = (request: CoalRequest): Said => {
  if (request.fuel.kind === 'wood-coals' || !isBaked(request.wish.method))
    return { chart: undefined, others: [] };
  const wish = { diameterMetres: request.oven.diameter, heat: request.wish.wanted };
  const [chart, ...rest] = charts.map((each) => chartCount(each, wish));
  return { chart, others: rest.filter((count): count is ChartCount => count !== undefined) };
};

interface Step {
  readonly cause: Cause;
  /** Coals in all once this is switched on. */
  readonly coals: number;
}

const ALWAYS_SHOWN: readonly Cause[] = ['wind', 'cold', 'height'];

const reasons = (steps: readonly Step[], total: number): readonly CountReason[] => {
  const lines = steps.slice(1).map((step, index) => ({
    cause: step.cause,
    coals: Math.round(step.coals - (steps[index]?.coals ?? 0)) + 0,
  }));
  const base = Math.round(steps[0]?.coals ?? 0);
  const left = total - base - lines.reduce((sum, line) => sum + line.coals, 0);
  return [...lines, { cause: 'rounding' as const, coals: left }].filter(
    (line) => line.coals !== 0 || ALWAYS_SHOWN.includes(line.cause),
  );
};

const MOST_SHOWN = 200; // a wish that no count holds still needs a number in its line

/** Coals in all after each thing is switched on, the chart (or ours in mild air) first. */
const stepsFrom = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
  chartTotal: number | undefined,
): readonly Step[] => {
  const usual = usualCase(request, counted.need.shareAbove);
  const { airKelvin, pressurePascals } = setting.outside;
  const still = { ...usual.outside, airKelvin, pressurePascals };
  const piece = fuelPiece(request.fuel).strength;
  const thin = piece * thinAirStrength(pressurePascals);
  const held = (change: Partial<HoldCase>) =>
    Math.min(MOST_SHOWN, coalsToHold({ ...usual, ...change }));
  const body = setting.body;
  const made = ovenBody(withoutMeasures(request.oven));
  const charcoal = { body, strengthAbove: piece, strengthBelow: piece };
  const height = {
    body,
    strengthAbove: thin,
    strengthBelow: thin,
    outside: { ...usual.outside, pressurePascals },
  };
  const cold = { ...height, outside: still };
  const { rainMillimetresPerHour: _, sunRatio: __, ...dry } = setting.outside;
  const { sunRatio: ___, ...rainy } = setting.outside;
  const wind = { ...cold, outside: dry };
  const rain = { ...wind, outside: rainy };
  const sun = { ...wind, outside: setting.outside };
  const laidOn = { ...sun, strengthBelow: thin * groundFactor(request.place, request.conditions) };
  const ground = { ...sun, strengthBelow: thin * floorFactor(request, body) };
  const ageing = windAgeing(request, setting);
  const ours = held({});
  const steps: Step[] = [
    chartTotal === undefined
      ? { cause: 'our-oven-model', coals: ours }
      : { cause: 'our-oven-model', coals: chartTotal },
    { cause: 'our-oven-model', coals: ours },
    { cause: 'depth', coals: held({ body: made }) },
    { cause: 'own-measures', coals: held({ body }) },
    { cause: 'charcoal', coals: held(charcoal) },
    { cause: 'height', coals: held(height) },
    { cause: 'cold', coals: held(cold) },
    { cause: 'wind', coals: held(wind) * ageing },
    { cause: 'rain', coals: held(rain) * ageing },
    { cause: 'sun', coals: held(sun) * ageing },
    { cause: 'ground', coals: held(laidOn) * ageing },
    { cause: 'riser', coals: held(ground) * ageing },
  ];
  // A chart counts on a full floor of dough; a pot wants to come up before it is only held.
  const load = isPotMethod(request.wish.method)
    ? firstCoals(request, setting, counted.need)
    : held({ ...ground, ...heldSink(request) }) * ageing;
  const withLoad: Step = { cause: 'load', coals: Math.min(MOST_SHOWN, load) };
  return [...steps, withLoad, ...lastSteps(request, setting, counted, withLoad.coals)];
};

/** As an oven of this size and depth is made, whatever its owner measured beside. */
const withoutMeasures = ({ floorDiameter: _, ...made }: CampOven): CampOven => made;

const lastSteps = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
  held: number,
): readonly Step[] => {
  const { above, below } = counted.counts;
  const isHot = request.ironAtStart > setting.outside.airKelvin + HOT_IRON_KELVIN;
  // What a cold oven would want is searched again, so that this line holds the hot iron alone.
  const fromCool = isHot ? countCoals(cooled(request), setting).wished : counted.wished;
  const isPinned = request.pins.above !== undefined || request.pins.below !== undefined;
  const wished = Math.min(MOST_SHOWN, counted.wished);
  const byChart = counted.byChart ?? above + below;
  const isFull = !isPinned && (counted.lidIsFull || counted.floorIsFull);
  const fitting = isFull ? byChart : wished;
  // Where lid or floor is full nobody lays more for fading: it is made up for as coals are added.
  const most = isFull ? Math.max(held, byChart) : MOST_SHOWN;
  return [
    { cause: 'first-set', coals: Math.min(most, fromCool) },
    { cause: 'hot-oven', coals: Math.min(most, wished) },
    { cause: 'lid-full', coals: fitting },
    { cause: 'bake', coals: fitting + above + below - byChart },
    ...(isPinned ? [{ cause: 'pin' as const, coals: above + below }] : []),
  ];
};

/** The load that the count was searched with. */
const asCounted = (request: CoalRequest): CoalRequest => {
  const { chartLoad, ...asked } = request;
  return chartLoad === undefined ? request : { ...asked, load: chartLoad };
};

const cooled = (request: CoalRequest): CoalRequest => ({
  ...request,
  ironAtStart: request.air.temperature,
});

// What a chart means: see charts.ts.
const usualCase = (request: CoalRequest, shareAbove: number): HoldCase => {
  const body = ovenBody(usualOven(request.oven.diameter));
  const chartLoad = parameter('chartLoadWattsPerSquareMetre') * body.mouthArea;
  return {
    body,
    outside: {
      airKelvin: parameter('chartAirKelvin'),
      pressurePascals: parameter('chartPressurePascals'),
      windMetresPerSecond: 0,
    },
    strengthAbove: 1,
    strengthBelow: 1,
    shareAbove,
    sinkWatts: isBaked(request.wish.method) ? chartLoad : heldSink(request).sinkWatts,
    targetKelvin: request.wish.wanted,
    ...(isOpenMethod(request.wish.method) ? { isOpen: true } : {}),
  };
};

// Wind ages the coals faster: part of the wind's line, though the steady network can't see it.
const windAgeing = (request: CoalRequest, setting: RunSetting): number => {
  const still = burnoutMinutes(fuelPiece(request.fuel), {
    windMetresPerSecond: 0,
    pressurePascals: setting.outside.pressurePascals,
  });
  return ageFactor(request, setting.burnoutMinutes) / ageFactor(request, still);
};
