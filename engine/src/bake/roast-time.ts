// When is the middle of a roast hot? A ball in its oven, slice by slice, along the coals' curve; its
// skin boils and dries as it does. Its core minute by minute is kept, for safety/ to weigh germs with.
// Source: bake/inside. Fruit keeps its own sum (fruit-time.ts): the model bakes an apple twice too slow.

import { notice } from '../notice/notice.ts';
import { kelvin, minutes as minutesOf } from '../quantity/unit.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { physicsAt } from './bread-inside.ts';
import { bakeInside, type FacesAt, minuteReached } from './inside/index.ts';
import { type OvenAt, ovenCourse } from './oven-course.ts';

/** Water to one of dry: 0.7 of its mass (sr28, rounded). */
const WATER = 2.33;
const KILOGRAMS_PER_CUBIC_METRE = 1050; // a little air in it: common practice, no source
/** Air round it stirs as in a kitchen oven (bread-study2025); iron shines on all of it. */
const FILM = 10;
const EMISSIVITY = 0.9; // common practice, no source
/** Juice keeps the air under a lid moist: a judgement. */
const STEAM_SHARE = 0.3;
const BAND = { least: 0.75, most: 1.4 };
const LONGEST_MINUTES = 720;
const ROUGH_LONGEST_MINUTES = 360;

/** Minutes until the core stands at its target, along the oven's curve where there is one. */
export function roastTime(asked: BakeRequest, coreKelvin: number): CookTime {
  const run = bakeInside({
    body: {
      shape: 'sphere',
      metres: pieceRadiusOf(asked),
      density: KILOGRAMS_PER_CUBIC_METRE,
      water: WATER,
      rise: 1,
      startKelvin: asked.air.temperature,
    },
    physics: physicsAt(asked.air.pressure),
    faces: roundIn(asked),
    minutes: asked.isRough ? ROUGH_LONGEST_MINUTES : LONGEST_MINUTES,
    isRough: true,
    until: (now) => coreKelvin <= now.coreKelvin,
  });
  const found = minuteReached(run.moments, (now) => now.coreKelvin, coreKelvin);
  const minutes = found ?? LONGEST_MINUTES;
  const readings = run.moments.map((now) => ({
    minute: minutesOf(now.minute),
    core: kelvin(now.coreKelvin),
  }));
  return {
    minutes,
    least: minutes * BAND.least,
    most: minutes * BAND.most,
    coreReadings: readings,
    notices: [
      notice('BAKE_ROAST_BY_PROBE', 'note', {}, { leastMinutes: minutes * BAND.least }),
      ...(found === undefined ? [notice('BAKE_OVEN_TOO_COOL', 'stop')] : []),
    ],
  };
}

/** All round it: lid above, floor below, wall at its sides, by their thirds. */
function roundIn(asked: BakeRequest): FacesAt {
  const course = ovenCourse(asked);
  const now: OvenAt = { oven: 0, lid: 0, wall: 0, floor: 0 };
  return (seconds, _, skin) => {
    course.at(seconds / 60, now);
    skin.film = FILM;
    skin.airKelvin = now.oven;
    skin.emissivity = EMISSIVITY;
    skin.shiningFourth = (now.lid ** 4 + now.wall ** 4 + now.floor ** 4) / 3;
    skin.steamShare = STEAM_SHARE;
    skin.isOpen = true;
  };
}

const MEAT_GRAMS_PER_CUBIC_METRE = 1.05e6;
/** Nothing that is roasted is smaller. */
const LEAST_RADIUS_METRES = 0.004;
/** A joint is longer than it is thick; thickness over that of a ball of its mass, a judgement. */
const JOINT_OVER_BALL = 0.85;

/** A joint is taken as one, however menu/ has spread it; too long for chops, so they are probed. */
function pieceRadiusOf({ load }: BakeRequest): number {
  if (load.shape === 'pieces') return Math.max(LEAST_RADIUS_METRES, load.thickness / 2);
  const ball = ((3 * load.mass) / (4 * Math.PI * MEAT_GRAMS_PER_CUBIC_METRE)) ** (1 / 3);
  return Math.max(LEAST_RADIUS_METRES, load.thickness / 2, JOINT_OVER_BALL * ball);
}
