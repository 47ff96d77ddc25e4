// When is the middle of baked fruit hot? Conduction into a ball, first term only.
// Source: heated-sphere (textbook relation, from memory).

import { notice } from '../notice/notice.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { minutesUntil, paceOf } from './pace.ts';

/** Fruit: conductivity [W/(m K)], diffusivity [m2/s]; ASHRAE-like values, from memory. */
const CONDUCTIVITY = 0.48;
const DIFFUSIVITY = 1.35e-7;
/** Oven to food [W/(m2 K)]: 20 … 48 measured in a tunnel oven (baik1999). */
const PASSAGE = 30;
const BAND = { least: 0.75, most: 1.4 };
const LONGEST_MINUTES = 720;

/** Minutes until the core stands at its target, along the oven's curve where there is one. */
export function fruitTime(asked: BakeRequest, coreKelvin: number): CookTime {
  const { air } = asked;
  const found = minutesUntil(paceOf(asked, LONGEST_MINUTES), (now) => {
    const seconds = ballSeconds({
      radiusMetres: FRUIT_RADIUS_METRES,
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
