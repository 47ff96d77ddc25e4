// When is a bread done? When its middle is baked and its top has colour, whichever comes last.

import type { CurvePoint } from '../coals/coal-plan.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { kelvin, toCelsius } from '../quantity/unit.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { colourRateUnder } from './colour-minutes.ts';
import {
  crumbMinutesFor,
  crumbRateAt,
  doughBodyOf,
  heightLengthening,
  isWithinEvidence,
} from './crumb-minutes.ts';
import { minutesUntil, type Pace } from './pace.ts';

/** With most coals above, the lid's face is this much hotter than the inside: a judgement. */
const LID_OVER_OVEN_KELVIN = 50;
/**
 * Nobody leaves a baked bread in for colour longer than this: a judgement. It bounds what a pale
 * lid can add, and the notice says so.
 */
const MOST_FOR_COLOUR = 1.6;
/**
 * An 80 % band by judgement: the law reads 20 … 30 % short of biscuit recipes and up to 30 % over
 * soda bread's, so the truth is looked for from 20 % under to 30 % over.
 */
const BAND = { least: 0.8, most: 1.3 };
/** Longest search on a curve, and what is said where the oven never bakes it through. */
const LONGEST_MINUTES = 360;

/** Minutes for a dough. */
export function breadTime(asked: BakeRequest): CookTime {
  const body = doughBodyOf(asked.load);
  const wholeMinutes = crumbMinutesFor(body) * heightLengthening(asked.air.boiling);
  const pace = paceOf(asked);
  const crumb = minutesUntil(pace, (point) => crumbRateAt(point.oven) / wholeMinutes);
  const colour = minutesUntil(pace, (point) => colourRateUnder(point.lid));
  const baked = crumb ?? LONGEST_MINUTES;
  const browned = colour ?? LONGEST_MINUTES;
  const done = Math.max(baked, Math.min(browned, baked * MOST_FOR_COLOUR));
  const notices = [
    ...(isWithinEvidence(body) ? [] : [thicknessNotice(body)]),
    ...(crumb === undefined ? [notice('BAKE_OVEN_TOO_COOL', 'stop')] : []),
    ...(done < browned ? [paleNotice(baked, browned)] : []),
    ...ovenNotices(asked),
  ];
  return { minutes: done, least: done * BAND.least, most: done * BAND.most, notices };
}

function paceOf(asked: BakeRequest): Pace {
  const { curve, wanted } = asked;
  if (curve !== undefined && curve.length > 0) {
    return { curve, from: asked.loadInMinute ?? 0, longest: LONGEST_MINUTES };
  }
  const steady: Pick<CurvePoint, 'oven' | 'lid'> = {
    oven: wanted,
    lid: kelvin(wanted + LID_OVER_OVEN_KELVIN),
  };
  return { steady, longest: LONGEST_MINUTES };
}

const thicknessNotice = (body: { rawMillimetres: number; risenMillimetres: number }): Notice =>
  notice(
    'BAKE_THICKNESS_OUTSIDE_EVIDENCE',
    'doubt',
    {},
    {
      rawMetres: body.rawMillimetres / 1000,
      risenMetres: body.risenMillimetres / 1000,
    },
  );

const paleNotice = (baked: number, browned: number): Notice =>
  notice('BAKE_TOP_STAYS_PALE', 'note', {}, { bakedMinutes: baked, brownedMinutes: browned });

/** The rows behind the law are for 200 … 230 C; 150 … 260 C is what camp ovens are asked for. */
function ovenNotices(asked: BakeRequest): readonly Notice[] {
  const celsius = toCelsius(asked.wanted);
  if (150 <= celsius && celsius <= 260) return [];
  return [notice('BAKE_OVEN_OUTSIDE_EVIDENCE', 'doubt', {}, { ovenKelvin: asked.wanted })];
}
