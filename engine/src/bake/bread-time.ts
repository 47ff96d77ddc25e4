// When is a bread done? When its middle is baked and its top has colour, whichever comes last.
// Source: trial-bake-model, published-bake-times (the band), common practice (the rest).

import { type Notice, notice } from '../notice/notice.ts';
import { toCelsius } from '../quantity/unit.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { colourRateUnder } from './colour-minutes.ts';
import {
  crumbMinutesFor,
  crumbRateAt,
  type DoughBody,
  doughBodyOf,
  heightLengthening,
  isWithinEvidence,
  sidesHelp,
} from './crumb-minutes.ts';
import { minutesUntil, paceOf } from './pace.ts';

/**
 * Nobody leaves a baked bread in for colour longer than this: a judgement. It bounds what a pale
 * lid can add, and the notice says so.
 */
const MOST_FOR_COLOUR = 2;
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
  const wholeMinutes =
    (crumbMinutesFor(body) * heightLengthening(asked.air.boiling)) / sidesOf(asked, body);
  const pace = paceOf(asked, LONGEST_MINUTES);
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

/** Only a single round has sides of its own; rolls and biscuits shade each other. */
function sidesOf({ load }: BakeRequest, body: DoughBody): number {
  if (load.shape !== 'disc') return 1;
  const diameterMillimetres = 2000 * Math.sqrt(load.planArea / Math.PI);
  return sidesHelp(Math.min(1, body.risenMillimetres / diameterMillimetres));
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
