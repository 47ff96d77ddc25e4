// Targets as a sheet: what goes in, old beside new, to weigh or to spoon, and what rounding costs.

import { type FigureName, figureNames } from '../../../formula/bench/character.ts';
import { type RoundingCost, roundedFormula } from '../../../formula/target/round.ts';
import type { TargetAnswer, TargetRefusal } from '../../../formula/target/solve.ts';
import type { Block, SheetDocument } from '../../document.ts';
import { refusalText } from '../../notice-text.ts';
import type { Say } from '../../say.ts';
import { decimal, NO_BREAK } from '../../speak-number.ts';
import { measureWord } from '../phrases.ts';
import { figureWords, gramsText, shareText, weighedText } from './figures-part.ts';

export function targetSheet(
  title: string,
  outcome: TargetAnswer | TargetRefusal,
  say: Say,
): SheetDocument {
  if (!('refused' in outcome)) {
    return { kind: 'bench-target', title, blocks: answerBlocks(outcome, say) };
  }
  const blocks: readonly Block[] = [
    { type: 'notice', level: 'stop', text: refusalText(outcome, say), code: outcome.code },
    ...(outcome.nearest === undefined
      ? []
      : [
          { type: 'heading', text: 'The nearest that works' } as const,
          ...answerBlocks(outcome.nearest, say),
        ]),
  ];
  return { kind: 'bench-target', title, blocks };
}

function answerBlocks(answer: TargetAnswer, say: Say): readonly Block[] {
  const { lines, was, character } = answer;
  const rounded = roundedFormula(lines, character);
  return [
    {
      type: 'table',
      caption: `Whole dough ${say.mass(character.batch)}, ${shareText(character.figures.hydration.share)} water.`,
      head: ['', 'was', 'weigh, or measure'],
      rows: rounded.lines.map(({ line, weighed, measure }, at) => [
        line.ingredient.name,
        was[at] === 0 ? '–' : gramsText(was[at]!),
        weighedText(weighed, measure === undefined ? '' : measureWord(measure)),
      ]),
      numeric: [false, true, true],
    },
    {
      type: 'facts',
      rows: [
        { label: 'What rounding costs, weighed', value: costText(rounded.weighed) },
        { label: 'By cups and spoons', value: costText(rounded.spooned) },
      ],
    },
  ];
}

/** Only what changes by a tenth of a percent is worth a word. */
function costText({ batch, figures }: RoundingCost): string {
  const changed = figureNames.filter((name) => 0.0005 <= Math.abs(figures[name]));
  const words = changed.map(
    (name: FigureName) => `${figureWords[name].toLowerCase()} ${signed(100 * figures[name], 1)} %`,
  );
  return [`${signed(batch, 0)}${NO_BREAK}g in all`, ...words].join(', ');
}

const signed = (number: number, places: number) =>
  `${number < 0 ? '−' : '+'}${decimal(Math.abs(number), places)}`;
