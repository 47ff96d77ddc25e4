// What does a crust look like at the minute of a check, where nobody said what bakes? A usual dough is
// baked along the coals' own curve, and the colour of its top is what the look then asks for.
// Sources: bake/inside (zanoni1995 for the colour); the dough is coals/usual-load.ts, twice as high as
// raw (common practice, no source). Weak spot: another dough browns sooner or later. No colour of the
// bottom: the curve's floor met the plain load that charts count on, not a bread that cools it; and
// none of meat, which has no model of its colour.

import type { Air, CampOven } from '../camp/camp.ts';
import type { Check, CheckWay, CoalPlan } from '../coals/coal-plan.ts';
import { ovenBody } from '../coals/geometry.ts';
import type { StackPlan, StackRequest } from '../coals/stack.ts';
import { USUAL_BREAD_SHARE, usualAmount } from '../coals/usual-load.ts';
import { type Kelvin, type Minutes, metres, minutes, squareMetres } from '../quantity/unit.ts';
import { physicsAt } from './bread-inside.ts';
import { bakeInside, COLOUR_MARKS, colourWord, type InsideMoment } from './inside/index.ts';
import { facesIn, ovenCourse } from './oven-course.ts';

export interface UsualLooks {
  readonly checks: readonly Check[];
  /** The top of a usual dough burns then, before it is to come out; from "coals on". */
  readonly burns?: Minutes;
  /** The top as it comes out: what this heat comes to. */
  readonly atEnd?: LookWord;
}

type LookWord = 'pale' | 'straw' | 'brown' | 'dark';

export interface BakedAlong extends Pick<CoalPlan, 'checks' | 'curve' | 'loadInMinute'> {
  readonly method: CoalPlan['method'];
  readonly outMinute: Minutes;
  readonly wanted: Kelvin;
  readonly oven: CampOven;
  readonly air: Air;
}

const PROVED_KILOGRAMS_PER_CUBIC_METRE = 550; // doubled from 1100 (trial-bake-model)
const WATER = 0.65; // to one of dry, a usual bread (common practice, no source)
const SPRING = 1.3; // data/rise.json

/** The checks with the colours that this curve gives; those of other methods as they are. */
export function usualLooks(along: BakedAlong): UsualLooks {
  if (along.method === 'roast') return { checks: along.checks.map(withoutColour).filter(hasWays) };
  if (along.method !== 'bake') return { checks: along.checks };
  const moments = crustOf(along);
  const at = (minute: number) => moments[Math.min(moments.length - 1, minute)];
  const checks = along.checks.map((check) =>
    check.oven === 'empty' ? check : coloured(check, at(check.minute - along.loadInMinute)),
  );
  const last = moments.at(-1);
  const burnt = moments.find(({ topColour }) => isBurnt(topColour));
  return {
    checks: checks.filter(hasWays),
    ...(last === undefined ? {} : { atEnd: shown(last.topColour) }),
    ...(burnt === undefined ? {} : { burns: minutes(along.loadInMinute + burnt.minute) }),
  };
}

/** A stack with the looks of either oven along its own curve. */
export function withUsualLooks(stack: StackPlan, { lower, upper }: StackRequest): StackPlan {
  const of = (which: 'lower' | 'upper', { oven, air, wish }: StackRequest['lower']) =>
    usualLooks({
      ...{ oven, air, wanted: wish.wanted, method: wish.method, checks: stack.checks[which] },
      curve: which === 'lower' ? stack.lowerCurve : stack.upperCurve,
      loadInMinute: stack.loadInMinute[which],
      outMinute: stack.outMinute[which],
    }).checks;
  return { ...stack, checks: { lower: of('lower', lower), upper: of('upper', upper) } };
}

function crustOf(along: BakedAlong): readonly InsideMoment[] {
  const { oven, air } = along;
  const planArea = squareMetres(USUAL_BREAD_SHARE * ovenBody(oven).mouthArea);
  const kilograms = usualAmount(oven, 'bake').massGrams / 1000;
  const height = kilograms / (PROVED_KILOGRAMS_PER_CUBIC_METRE * planArea);
  const headroom = metres(Math.max(0, oven.depth - SPRING * height));
  return bakeInside({
    body: {
      shape: 'slab',
      metres: height,
      density: PROVED_KILOGRAMS_PER_CUBIC_METRE,
      water: WATER,
      rise: SPRING,
      startKelvin: air.temperature,
    },
    physics: physicsAt(air.pressure),
    faces: facesIn(ovenCourse(along), { planArea, headroom }, oven.diameter / 2),
    minutes: Math.max(1, Math.ceil(along.outMinute - along.loadInMinute)),
  }).moments;
}

const isBurnt = (colour: number) => colour >= COLOUR_MARKS.burnt;

/** A look has no word past dark. */
const shown = (colour: number): LookWord => {
  const word = colourWord(colour);
  return word === 'burnt' ? 'dark' : word;
};

function coloured(check: Check, now: InsideMoment | undefined): Check {
  if (now === undefined) return check;
  const ways = check.ways
    .filter(({ by }) => by !== 'bottom-corner' && (by !== 'nose' || !isBurnt(now.topColour)))
    .map(
      (way): CheckWay => (way.by === 'top-colour' ? { ...way, colour: shown(now.topColour) } : way),
    );
  return { ...check, ways };
}

const withoutColour = (check: Check): Check => ({
  ...check,
  ways: check.ways.filter(({ by }) => by !== 'top-colour' && by !== 'bottom-corner'),
});

const hasWays = ({ ways }: Check) => ways.length > 0;
