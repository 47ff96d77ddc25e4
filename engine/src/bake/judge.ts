// How well does a bread come out of an oven's curve? In minutes that a cook would as soon lose.
// Source: ours, a judgement in every weight; the colours are those of inside/colour.ts.

import type { BakeJudge } from '../coals/settle.ts';
import { minutes as minutesOf } from '../quantity/unit.ts';
import type { BakePlan } from './bake-plan.ts';
import type { BakeRequest } from './bake-request.ts';
import { breadOutcome, LONGEST_MINUTES, MOST_FOR_COLOUR } from './bread-inside.ts';
import { COLOUR_MARKS } from './inside/index.ts';
import { figuresOfKind, isBread } from './kinds.ts';
import { ovenCourse } from './oven-course.ts';

/** Minutes that one step of colour is worth when a face is too pale or too dark. */
const WEIGHTS = { palerTop: 1, darkerTop: 0.4, palerBottom: 0.7, darkerBottom: 0.5 } as const;
/** A burnt face is not worth the fuel; a bake that takes longer is a little worse. */
const BURNT_MINUTES = 15;
const SLOWER = 0.15;

/**
 * The judge of a bread, or undefined for what is not judged by core and colour.
 *
 * @param target  the plan of an earlier bake of it: what core it is taken to
 */
export function bakeJudge(
  asked: BakeRequest,
  { done }: Pick<BakePlan, 'done'>,
): BakeJudge | undefined {
  const { recipe } = asked;
  if (!isBread(recipe) || recipe.method !== 'bake') return undefined;
  const coreKelvin = done.core ?? done.wantedCore ?? asked.air.boiling - done.margin;
  const top = figuresOfKind(recipe.kind).top ?? 'brown';
  return ({ curve, loadInMinute }) => {
    const along = { ...asked, curve, loadInMinute: minutesOf(loadInMinute) };
    const found = breadOutcome({
      asked: along,
      course: ovenCourse(along),
      coreKelvin,
      top,
      isRough: true,
    });
    const through = found.through ?? LONGEST_MINUTES;
    const browned = found.topBrown ?? LONGEST_MINUTES;
    const minutes = Math.max(through, Math.min(browned, MOST_FOR_COLOUR * through));
    const at = found.run.moments[Math.min(found.run.moments.length - 1, Math.round(minutes))];
    const colours = { top: at?.topColour ?? 0, bottom: at?.bottomColour ?? 0 };
    const wait = minutes - through;
    return { minutes, fault: wait + SLOWER * minutes + colourFault(colours, COLOUR_MARKS[top]) };
  };
}

function colourFault(at: { readonly top: number; readonly bottom: number }, wanted: number) {
  const { brown, dark, burnt } = COLOUR_MARKS;
  const over = (value: number, limit: number) => Math.max(0, value - limit);
  return (
    WEIGHTS.palerTop * over(wanted, at.top) +
    WEIGHTS.darkerTop * over(at.top, dark) +
    WEIGHTS.palerBottom * over(brown, at.bottom) +
    WEIGHTS.darkerBottom * over(at.bottom, dark) +
    (Math.max(at.top, at.bottom) >= burnt ? BURNT_MINUTES : 0)
  );
}
