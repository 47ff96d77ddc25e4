// When is a bread done? When its middle is baked and its top has colour, whichever comes last.
// Source: bake/inside for both; published-bake-times (the band), common practice (the rest).

import { type Notice, notice } from '../notice/notice.ts';
import { toCelsius } from '../quantity/unit.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import {
  type BreadOutcome,
  breadOutcome,
  LONGEST_MINUTES,
  latestForColour,
} from './bread-inside.ts';
import { doughBodyOf, isWithinEvidence } from './dough-body.ts';
import { heatTaken } from './heat-taken.ts';
import { COLOUR_MARKS } from './inside/index.ts';
import { insidePlan } from './inside-plan.ts';
import { figuresOfKind } from './kinds.ts';
import { ovenCourse, touchOf } from './oven-course.ts';

/**
 * An 80 % band by judgement: printed times lie from a quarter under ours (biscuits) to a half over
 * (soda bread patted thin), so the truth is looked for from 20 % under to 30 % over.
 */
const BAND = { least: 0.8, most: 1.3 };

/** Minutes for a dough, with all that happens inside it. */
export function breadTime(asked: BakeRequest, coreKelvin: number): CookTime {
  const course = ovenCourse(asked);
  const found = breadOutcome({
    asked,
    course,
    coreKelvin,
    top: figuresOfKind(asked.recipe.kind).top ?? 'brown',
    isRough: asked.isRough === true,
    ...(asked.isRough ? {} : { cutsAt: EVERY_MINUTE }),
  });
  const baked = found.through ?? LONGEST_MINUTES;
  const browned = found.topBrown ?? LONGEST_MINUTES;
  const done = Math.max(baked, Math.min(browned, latestForColour(baked)));
  const body = doughBodyOf(asked.load);
  const notices = [
    ...(isWithinEvidence(body) ? [] : [thicknessNotice(body)]),
    ...(found.through === undefined ? [notice('BAKE_OVEN_TOO_COOL', 'stop')] : []),
    ...(done < browned ? [paleNotice(baked, browned)] : []),
    ...burnNotices(found, done),
    ...darkNotices(asked, found, done),
    ...wetNotices(asked),
    ...ovenNotices(asked),
  ];
  return {
    minutes: done,
    least: done * BAND.least,
    most: done * BAND.most,
    soonest: Math.min(done, baked) * BAND.least,
    notices,
    taken: heatTaken(found, course, touchOf(asked.load)),
    ...(asked.isRough ? {} : { inside: insidePlan(found, done, coreKelvin) }),
  };
}

/** A cut can be asked for at any of them. */
const EVERY_MINUTE = Array.from({ length: LONGEST_MINUTES + 1 }, (_, minute) => minute);

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

/** The face that burns first, where it does so before the bread is done. */
function burnNotices({ topBurnt, bottomBurnt }: BreadOutcome, done: number): readonly Notice[] {
  const top = topBurnt ?? Number.POSITIVE_INFINITY;
  const bottom = bottomBurnt ?? Number.POSITIVE_INFINITY;
  const first = Math.min(top, bottom);
  if (done <= first) return [];
  const face = bottom <= top ? 'bottom' : 'top';
  return [notice('BAKE_FACE_BURNS', 'doubt', {}, { face, burnMinutes: first, doneMinutes: done })];
}

/** A face that is dark when the bread is done; of a burnt one that is said already. */
function darkNotices({ load }: BakeRequest, { run }: BreadOutcome, done: number) {
  const last = run.moments[Math.min(run.moments.length - 1, Math.round(done))];
  const contact = load.inOven?.contact ?? 'iron';
  const colours = { top: last?.topColour ?? 0, bottom: last?.bottomColour ?? 0 };
  return (['bottom', 'top'] as const)
    .filter((face) => isDark(colours[face]))
    .map((face) => notice('BAKE_FACE_DARK', 'doubt', {}, { face, contact, doneMinutes: done }));
}

const isDark = (colour: number) => COLOUR_MARKS.dark <= colour && colour < COLOUR_MARKS.burnt;

/**
 * Water to flour of what no longer stands: a yeast dough past a drop batter's (battersAndDoughs), a
 * quick one from a pour batter's on, since bannocks are printed with as much water as flour.
 */
const MOST_STANDING = { 'yeast-bread': 0.95, 'quick-bread': 1.1, biscuit: 0.95 } as const;

function wetNotices({ recipe, load, formula }: BakeRequest): readonly Notice[] {
  const most = MOST_STANDING[recipe.kind as keyof typeof MOST_STANDING];
  const hydration = formula.percentages?.hydration ?? 0;
  if (most === undefined || hydration <= most || load.inOven?.contact === 'tin') return [];
  const values = { hydrationRatio: hydration, mostGrams: Math.floor(most * formula.flour) };
  return [notice('BAKE_TOO_WET_TO_STAND', 'doubt', {}, values)];
}

/** The rows behind the law are for 200 … 230 C; 150 … 260 C is what camp ovens are asked for. */
function ovenNotices(asked: BakeRequest): readonly Notice[] {
  const celsius = toCelsius(asked.wanted);
  if (150 <= celsius && celsius <= 260) return [];
  return [notice('BAKE_OVEN_OUTSIDE_EVIDENCE', 'doubt', {}, { ovenKelvin: asked.wanted })];
}
