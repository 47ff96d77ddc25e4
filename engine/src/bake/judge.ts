// How well does a bread come out of an oven's curve? In minutes that a cook would as soon lose.
// Source: ours, a judgement in every weight, tried on the seeded breads of the settle benchmark; the
// colours are those of inside/colour.ts. What a cook calls right is written down in decision 017.

import type { BakeJudge } from '../coals/settle.ts';
import { minutes as minutesOf } from '../quantity/unit.ts';
import type { BakePlan } from './bake-plan.ts';
import type { BakeRequest } from './bake-request.ts';
import { breadOutcome, LONGEST_MINUTES, latestForColour } from './bread-inside.ts';
import { COLOUR_MARKS, minuteReached } from './inside/index.ts';
import { figuresOfKind, isBread } from './kinds.ts';
import { ovenCourse } from './oven-course.ts';

/** Minutes that one step of colour is worth when a face is too pale or too dark. */
const WEIGHTS = { palerTop: 1.5, darkerTop: 1.5, palerBottom: 1.5, darkerBottom: 1.5 } as const;
/** A minute that a baked crumb waits for its top dries it a little; thin breads always wait. */
const WAITING = 0.2;
/** A burnt face is not worth the fuel; a bake that takes longer is a little worse. */
const BURNT_MINUTES = 15;
const SLOWER = 0.2;
/**
 * A face at the very edge of brown or dark is pale or dark in a fire that is a little off: between these
 * it is safe, and outside them a step costs a little.
 */
const SAFE = { least: COLOUR_MARKS.brown + 4, most: COLOUR_MARKS.dark - 7 } as const;
const EDGE_MINUTES = 0.25;

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
    const dark = minuteReached(found.run.moments, (now) => now.bottomColour, COLOUR_MARKS.dark);
    return {
      minutes,
      fault: WAITING * wait + SLOWER * minutes + colourFault(colours, COLOUR_MARKS[top]),
      faces: {
        top: offBy(colours.top, COLOUR_MARKS[top]) - wait / 4,
        bottom: offBy(colours.bottom, SAFE.least),
      },
      ...(dark === undefined || minutes <= dark ? {} : { darkBottom: dark }),
    };
  };
}

/** A crumb that waits has a top that browns too slowly, whatever it looks like in the end. */
const offBy = (colour: number, wanted: number) =>
  Math.max(0, colour - SAFE.most) - Math.max(0, wanted - colour);

function colourFault(at: { readonly top: number; readonly bottom: number }, wanted: number) {
  const { brown, dark, burnt } = COLOUR_MARKS;
  const over = (value: number, limit: number) => Math.max(0, value - limit);
  return (
    WEIGHTS.palerTop * over(wanted, at.top) +
    WEIGHTS.darkerTop * over(at.top, dark) +
    WEIGHTS.palerBottom * over(brown, at.bottom) +
    WEIGHTS.darkerBottom * over(at.bottom, dark) +
    EDGE_MINUTES * (over(at.bottom, SAFE.most) + over(SAFE.least, at.bottom)) +
    EDGE_MINUTES * over(at.top, SAFE.most) +
    (Math.max(at.top, at.bottom) >= burnt ? BURNT_MINUTES : 0)
  );
}
