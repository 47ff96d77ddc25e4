// Will my own layout do? One line first, then the heat it gives from now on.

import type { LayoutJudgement } from '../../coals/judge-layout.ts';
import { isPotMethod } from '../../coals/split.ts';
import type { AssumedAge } from '../../coals/usual-fire.ts';
import type { HeatMethod } from '../../menu/recipe.ts';
import type { Kelvin } from '../../quantity/unit.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeText } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { lookQuestion } from './assumed-age.ts';
import { curveTable, type Door, doorSheet, laidPhrase, wideLine } from './door.ts';

export interface LayoutAsked {
  readonly door: Door;
  readonly above: number;
  readonly below: number;
  readonly wanted: Kelvin;
  readonly judgement: LayoutJudgement;
  /** Left out, a bake. */
  readonly method?: HeatMethod;
  /** Where nobody said how old the coals are. */
  readonly ageAssumed?: AssumedAge | undefined;
}

export function layoutSheet(asked: LayoutAsked, say: Say): SheetDocument {
  const { door, judgement, wanted } = asked;
  const [verdict, ...others] = judgement.notices;
  const counted = countedMinutes(judgement);
  const blocks: readonly Block[] = [
    {
      type: 'lead',
      parts: verdict === undefined ? [] : [{ text: noticeText(verdict, say), strong: true }],
    },
    ...lookQuestion(asked.ageAssumed, say),
    {
      type: 'facts',
      rows: [
        { label: 'Wanted', value: say.oven(wanted) },
        { label: 'On the whole', value: say.oven(judgement.mean) },
        {
          label: 'Within a step of it',
          value: `${say.minutes(judgement.heldMinutes)} of ${say.minutes(counted)}`,
        },
        ...(judgement.chartHeat === undefined
          ? []
          : [
              {
                label: 'So many by the most reprinted chart',
                value: say.oven(judgement.chartHeat),
                note: 'in still, mild air, oven and coals at their best; here air, ground, age, dough and fading count',
              },
            ]),
      ],
    },
    curveTable(judgement.curve, { from: 'now', hasPot: isPotMethod(asked.method ?? 'bake') }, say),
    ...wideLine(judgement.curve, judgement.factorRuns, door.fuel === 'wood-coals'),
  ];
  const title = sentence(laidPhrase(asked, door.fuel));
  return doorSheet(door, { kind: 'layout-judged', title, blocks, notices: others }, say);
}

const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** Minutes that count: those after the food is in, else all after now; as judgeLayout counts. */
function countedMinutes({ curve }: LayoutJudgement): number {
  const loadIn = curve.find(({ load }) => load !== undefined)?.minute ?? 0;
  return Math.max(0, (curve.at(-1)?.minute ?? 0) - loadIn);
}
