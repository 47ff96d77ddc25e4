// How well does a bread come out of an oven's curve? In minutes that a cook would as soon lose.
// Source: ours, a judgement in every weight; the colours are those of inside/colour.ts.

import type { BakeJudge } from '../coals/settle.ts';
import { minutes as minutesOf } from '../quantity/unit.ts';
import type { BakePlan } from './bake-plan.ts';
import type { BakeRequest } from './bake-request.ts';
import { breadOutcome, LONGEST_MINUTES, latestForColour } from './bread-inside.ts';
import { COLOUR_MARKS } from './inside/index.ts';
import { figuresOfKind, isBread } from './kinds.ts';
import { ovenCourse } from './oven-course.ts';

/** Minutes that one step of colour is worth when a face is too pale or too dark. */
const WEIGHTS = { palerTop: 3, darkerTop: 0.7, palerBottom: 1, darkerBottom: 0.7 } as const;
/** A minute that a baked crumb waits for its top dries it a little; thin breads always wait. */
const WAITING = 0.2;
/** A burnt face is not worth the fuel; a bake that takes longer is a little worse. */
const BURNT_MINUTES = 15;
const SLOWER = 0.15;
/** A face at the very edge of dark is dark in a fire that is a little hotter than reckoned. */
const SAFE_DARK = COLOUR_MARKS.dark - 5;

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
    const minutes = Math.max(through, Math.min(browned, latestForColour(through)));
    const at = found.run.moments[Math.min(found.run.moments.length - 1, Math.round(minutes))];
    const colours = { top: at?.topColour ?? 0, bottom: at?.bottomColour ?? 0 };
    const wait = minutes - through;
    return {
      minutes,
      fault: WAITING * wait + SLOWER * minutes + colourFault(colours, COLOUR_MARKS[top]),
      faces: {
        top: offBy(colours.top, COLOUR_MARKS[top]) - wait / 4,
        bottom: offBy(colours.bottom, COLOUR_MARKS.brown),
      },
    };
  };
}

/** A crumb that waits has a top that browns too slowly, whatever it looks like in the end. */
const offBy = (colour: number, wanted: number) =>
  Math.max(0, colour - SAFE_DARK) - Math.max(0, wanted - colour);

function colourFault(at: { readonly top: number; readonly bottom: number }, wanted: number) {
  const { brown, burnt } = COLOUR_MARKS;
  const over = (value: number, limit: number) => Math.max(0, value - limit);
  return (
    WEIGHTS.palerTop * over(wanted, at.top) +
    WEIGHTS.darkerTop * over(at.top, SAFE_DARK) +
    WEIGHTS.palerBottom * over(brown, at.bottom) +
    WEIGHTS.darkerBottom * over(at.bottom, SAFE_DARK) +
    (Math.max(at.top, at.bottom) >= burnt ? BURNT_MINUTES : 0)
  );
}
