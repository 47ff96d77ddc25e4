// When is the middle of a roast or of baked fruit hot? Conduction into a ball, first term only.

import { notice } from '../notice/notice.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { minutesUntil, paceOf } from './pace.ts';

/** Meat and fruit: conductivity [W/(m K)], diffusivity [m2/s]; ASHRAE-like values, from memory. */
const CONDUCTIVITY = 0.48;
const DIFFUSIVITY = 1.35e-7;
/** Oven to food [W/(m2 K)]: 20 … 48 measured in a tunnel oven (baik1999). */
const PASSAGE = 30;
const BAND = { least: 0.75, most: 1.4 };
const LONGEST_MINUTES = 720;

/** Minutes until the core stands at its target, along the oven's curve where there is one. */
export function roastTime(asked: BakeRequest, coreKelvin: number): CookTime {
  const { air } = asked;
  const found = minutesUntil(paceOf(asked, LONGEST_MINUTES), (now) => {
    const seconds = ballSeconds({
      radiusMetres: pieceRadiusOf(asked),
      startKelvin: air.temperature,
      coreKelvin,
      ovenKelvin: now.oven,
    });
    return seconds === undefined ? 0 : 60 / Math.max(60, seconds);
  });
  const minutes = found ?? LONGEST_MINUTES;
  return {
    minutes,
    least: minutes * BAND.least,
    most: minutes * BAND.most,
    notices: [
      notice('BAKE_ROAST_BY_PROBE', 'note', {}, { leastMinutes: minutes * BAND.least }),
      ...(found === undefined ? [notice('BAKE_OVEN_TOO_COOL', 'stop')] : []),
    ],
  };
}

/** A whole apple or pear of 150 to 180 g; a judgement. */
const FRUIT_RADIUS_METRES = 0.034;

const MEAT_GRAMS_PER_CUBIC_METRE = 1.05e6;
/** A joint is longer than it is thick; thickness over that of a ball of its mass, a judgement. */
const JOINT_OVER_BALL = 0.85;

/** A joint is taken as one, however menu/ has spread it; too long for chops, so they are probed. */
function pieceRadiusOf({ load, recipe }: BakeRequest): number {
  if (recipe.kind === 'fruit') return FRUIT_RADIUS_METRES;
  if (load.shape === 'pieces') return load.thickness / 2;
  const ball = ((3 * load.mass) / (4 * Math.PI * MEAT_GRAMS_PER_CUBIC_METRE)) ** (1 / 3);
  return Math.max(load.thickness / 2, JOINT_OVER_BALL * ball);
}

/**
 * Seconds until the middle of a ball is hot.
 *
 * One-term series of the heated sphere: theta = A exp(-l^2 Fo), l cot l = 1 - Bi.
 *
 * @source  heated-sphere (textbook relation, from memory)
 * @valid   Fo > 0.2; below it the middle is reached sooner than this says
 */
export function ballSeconds(ball: {
  readonly radiusMetres: number;
  readonly startKelvin: number;
  readonly coreKelvin: number;
  readonly ovenKelvin: number;
}): number | undefined {
  const { radiusMetres, startKelvin, coreKelvin, ovenKelvin } = ball;
  if (ovenKelvin <= coreKelvin + 1) return undefined;
  if (coreKelvin <= startKelvin) return 0;
  const left = (ovenKelvin - coreKelvin) / (ovenKelvin - startKelvin);
  const root = sphereRoot((PASSAGE * radiusMetres) / CONDUCTIVITY);
  const amplitude =
    (4 * (Math.sin(root) - root * Math.cos(root))) / (2 * root - Math.sin(2 * root));
  const fourier = Math.log(amplitude / left) / root ** 2;
  return Math.max(0, (fourier * radiusMetres ** 2) / DIFFUSIVITY);
}

/** First root of l cot l = 1 - Bi between 0 and pi; bisection, 60 halvings. */
function sphereRoot(biot: number): number {
  let low = 1e-6;
  let high = Math.PI - 1e-9;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (middle / Math.tan(middle) > 1 - biot) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
