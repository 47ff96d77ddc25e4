// Targets as a sheet: what goes in, old beside new, to weigh or to spoon, and what rounding costs.

import { type FigureName, figureNames } from '../../../formula/bench/character.ts';
import { type RoundingCost, roundedFormula } from '../../../formula/target/round.ts';
import type { TargetAnswer, TargetRefusal } from '../../../formula/target/solve.ts';
import { type Filled, floorOf } from '../../../menu/index.ts';
import type { Block, FactRow, SheetDocument } from '../../document.ts';
import { refusalText } from '../../notice-text.ts';
import type { Say } from '../../say.ts';
import { decimal, NO_BREAK } from '../../speak-number.ts';
import { measureWord } from '../phrases.ts';
import { drawnWord } from '../rolled-word.ts';
import { figureWords, gramsText, shareText, weighedText } from './figures-part.ts';

/** @param filled  the oven that this is to fill, where one was named */
export function targetSheet(
  title: string,
  outcome: TargetAnswer | TargetRefusal,
  say: Say,
  filled?: Filled,
): SheetDocument {
  const fill = filled === undefined ? [] : [fillBlock(filled, say)];
  if (!('refused' in outcome)) {
    return { kind: 'bench-target', title, blocks: [...fill, ...answerBlocks(outcome, say)] };
  }
  const blocks: readonly Block[] = [
    ...fill,
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

/** What fills the oven, how thick, and by whose word. */
function fillBlock(filled: Filled, say: Say): Block {
  const { oven, mass, pieces, risenHeight, headroom } = filled;
  const each = 1 < pieces ? `${say.count(pieces)} of ${say.mass(mass / pieces)} each` : '';
  const rows: readonly FactRow[] = [
    {
      label: `Fills ${/^the /i.test(oven.name) ? '' : 'the '}${oven.name}`,
      value: say.mass(mass),
      ...(each === '' ? {} : { note: each }),
    },
    ...thicknessRows(filled, say),
    { label: 'Risen', value: say.length(risenHeight), note: `${say.length(headroom)} to the lid` },
    {
      label: 'Floor',
      value: say.length(floorOf(oven)),
      note: filled.isFloorMeasured ? 'as you measured it' : 'usual for its size; measure yours',
    },
  ];
  return { type: 'facts', rows };
}

/** Nothing of what takes its own shape: a loaf, rolls; there the risen height says it. */
function thicknessRows(filled: Filled, say: Say): readonly FactRow[] {
  const { thickness, rolledTo, thicknessBy, takesOwnShape } = filled;
  if (takesOwnShape) return [];
  const lies = say.length(thickness);
  const by = {
    cook: 'as you said',
    recipe: 'as the recipe has it',
    usual: 'usual for its kind; no thickness is written',
  }[thicknessBy];
  if (rolledTo === undefined || thickness <= 1.05 * rolledTo) {
    return [{ label: 'Thick, raw', value: lies, note: by }];
  }
  const [one, second] = filled.placed;
  const across = one !== undefined && second === undefined ? { across: one.diameter } : {};
  const note = `${by}; it ${drawnWord({ rolledTo, thickness, ...across }, say)}`;
  return [{ label: 'Rolled to', value: say.length(rolledTo), note }];
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

/** Nothing has no sign. */
function signed(number: number, places: number): string {
  const size = decimal(Math.abs(number), places);
  if (Number(size) === 0) return size;
  return `${number < 0 ? '−' : '+'}${size}`;
}
