// What a baker would change: each figure that lies apart from published ones, in a sentence.

import type { Balance, BalancedFigure, Remedy } from '../../../formula/bench/balance.ts';
import type { FigureName } from '../../../formula/bench/character.ts';
import { withGrams } from '../../../formula/bench/line.ts';
import type { FormulaKind } from '../../../formula/bench/published.ts';
import type { Block } from '../../document.ts';
import { noticeText } from '../../notice-text.ts';
import type { Say } from '../../say.ts';
import { listed, sentenceCase } from '../phrases.ts';
import { gramsText, kindWords, shareText } from './figures-part.ts';

/** Nothing where no published formula stands for it. */
export function adviceBlocks({ figures, kind }: Balance, say: Say): readonly Block[] {
  if (kind === undefined) return [];
  const apart = figures.filter(({ verdict }) => verdict !== 'inside');
  if (apart.length === 0) {
    const text = `All of it lies where published ${kindWords[kind]} lie: nothing to change.`;
    return [{ type: 'paragraph', parts: [{ text }] }];
  }
  return [
    { type: 'heading', text: 'What a baker would look at' },
    { type: 'list', items: apart.map((each) => adviceText(each, kind, say)), tick: false },
  ];
}

/** `drier than`, in the word of each figure. */
const APART: Readonly<Record<FigureName, readonly [below: string, above: string]>> = {
  hydration: ['drier', 'wetter'],
  fat: ['leaner', 'fatter'],
  salt: ['less salty', 'saltier'],
  sugar: ['less sweet', 'sweeter'],
  powder: ['less powder', 'more powder'],
  soda: ['less soda', 'more soda'],
  yeast: ['less yeast', 'more yeast'],
};

/** Salt and sugar are there for the tongue: outside is not wrong. */
const TASTE: readonly FigureName[] = ['salt', 'sugar'];

/** More than twice the most that was ever printed, and no pinch: nobody meant that. Ours. */
const SLIP_TIMES = 2;
const LEAST_SLIP = 0.03;

function adviceText(balanced: BalancedFigure, kind: FormulaKind, say: Say): string {
  const { figure, verdict, value, least, most, published, remedies, effect } = balanced;
  const isBelow = value.share < least;
  const word = APART[figure][isBelow ? 0 : 1];
  const end = shareText(isBelow ? least : most);
  const than =
    published.length === 1
      ? `the one published among ${kindWords[kind]}`
      : `any of the published ${kindWords[kind]}`;
  const unsure =
    verdict === 'unsure' ? ' By cups that is no certain thing: weigh before you change it.' : '';
  const isSlip = LEAST_SLIP < value.share && SLIP_TIMES * most < value.share;
  const slip = isSlip ? ' Look for a slipped spoon or a wrong unit.' : '';
  const taste = TASTE.includes(figure) && !isSlip ? ' That is a matter of taste.' : '';
  const slow = figure === 'yeast' && isBelow ? ' It only rises slower.' : '';
  const said = effect === undefined ? '' : ` ${noticeText(effect, say)}`;
  return (
    `${sentenceCase(word)} than ${than}: ${shareText(value.share)}, not ${end}.${taste}${slow}${slip}${unsure} ` +
    `${remedyText(remedies, end)}${said}`
  );
}

/** `12 g (1 tbsp) more water makes it 62 %.` */
function remedyText(remedies: readonly Remedy[], end: string): string {
  const last = remedies.at(-1);
  if (last === undefined) return 'No one line of it can mend that: begin with another recipe.';
  const gone = remedies.slice(0, -1).map(({ line }) => `the ${line.ingredient.name}`);
  const without = gone.length === 0 ? '' : `Without ${listed(gone)}, `;
  return `${without}${changeText(last)} makes it ${end}.`;
}

function changeText({ line, was, now, isNew }: Remedy): string {
  const change = Math.abs(now - was);
  const measure = withGrams(line, change).ingredient.asWritten;
  const spoons = /^[\d.]+ g$|\(/.test(measure) ? '' : ` (${measure})`;
  const more = isNew ? 'of' : now < was ? 'less' : 'more';
  return `${gramsText(change)}${spoons} ${more} ${line.ingredient.name}`;
}
