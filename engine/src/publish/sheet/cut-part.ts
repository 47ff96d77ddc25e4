// The cut through a bread on its dish card: what happens inside, and which face would burn first.

import { colourWord } from '../../bake/inside/index.ts';
import type { LoadPlan } from '../../meal.ts';
import type { OvenLoad } from '../../menu/load.ts';
import type { Block } from '../document.ts';
import { cutDrawing } from '../drawing/cut.ts';
import type { Say } from '../say.ts';

/** Nothing for what is not baked as a bread. */
export function cutBlocks({ load, bake, coals }: LoadPlan, say: Say): readonly Block[] {
  const { inside, minutes } = bake;
  if (inside === undefined || inside.cuts.length === 0) return [];
  const alt = altOf({ bake }, say);
  const drawing = {
    inside,
    done: minutes,
    ...(load.profile === undefined ? {} : { profile: load.profile }),
    widthMetres: widthOf(load),
    words: { minutes: say.minutes, degrees: say.degrees, length: say.length },
    alt,
  };
  const [svg, phone] = [cutDrawing(drawing), cutDrawing(drawing, 'phone')];
  return [
    { type: 'heading', text: 'Inside the bread', half: true },
    { type: 'drawing', wide: true, svg, phone, alt },
    { type: 'paragraph', parts: [{ text: burnPhrase({ bake }, say) }] },
    ...(coals.answer === 'first' ? [firstAnswer] : []),
  ];
}

/** Of one piece, grown. */
const widthOf = ({ planArea, pieces }: OvenLoad) =>
  2 * Math.sqrt(planArea / Math.max(1, pieces.length) / Math.PI);

const firstAnswer: Block = {
  type: 'paragraph',
  parts: [
    {
      text: 'A first answer: coals by the charts and the usual split. The settled answer lets the bake choose them.',
    },
  ],
};

function altOf({ bake }: Pick<LoadPlan, 'bake'>, say: Say): string {
  const { inside, minutes } = bake;
  const said = (inside?.cuts ?? []).map(({ minute }) => {
    const at = inside?.moments[Math.min(inside.moments.length - 1, Math.round(minute))];
    if (at === undefined) return '';
    return `after ${say.minutes(minute)} middle ${say.degrees(at.core)}, top ${colourWord(at.topColour)}, bottom ${colourWord(at.bottomColour)}`;
  });
  return `Cut through the bread: ${said.join('; ')}. Done after ${say.minutes(minutes)}.`;
}

function burnPhrase({ bake }: Pick<LoadPlan, 'bake'>, say: Say): string {
  const { inside, minutes } = bake;
  const last = inside?.moments[Math.min(inside.moments.length - 1, Math.round(minutes))];
  const crusts =
    last === undefined
      ? ''
      : `Crust ${say.length(last.topCrust)} on top, ${say.length(last.bottomCrust)} below when it is done. `;
  const first = inside?.firstToBurn;
  const burn =
    first === undefined
      ? 'Neither face burns soon after.'
      : `Left in, the ${first.face} burns first, after ${say.minutes(first.minute)}.`;
  return `${crusts}${burn}`;
}
